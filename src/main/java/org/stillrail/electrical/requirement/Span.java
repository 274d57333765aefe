package org.stillrail.electrical.requirement;

/** A range of frequency. */
public record Span(double fromHz, double toHz) {

    public boolean contains(double hz) {
        return hz >= fromHz && hz <= toHz;
    }
}
