package org.stillrail.electrical.bench;

/** A range of frequencies in which prediction and measurement are compared. @param name as in 'damping band' */
public record ErrorBand(String name, double fromHz, double toHz) {
}
