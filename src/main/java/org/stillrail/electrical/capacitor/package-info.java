/** What the calculation uses for one part: its impedance at an operating point, and where that stops being valid. */
package org.stillrail.electrical.capacitor;
