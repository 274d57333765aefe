package org.stillrail.electrical.requirement;

/** How long the bank must serve, in hours of operation. */
public record Life(double hours, Citation citation) {
}
