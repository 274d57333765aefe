/** How good a measured impedance is, as named findings, and the figures that are drawn from it. Plain Java. */
package org.stillrail.electrical.quality;
