/** Converters that feed a bank: power stage, control, compensator, loop gain and margins, closed-loop output impedance. */
package org.stillrail.electrical.converter;
