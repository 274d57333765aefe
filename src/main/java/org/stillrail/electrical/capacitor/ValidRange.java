package org.stillrail.electrical.capacitor;

/** A closed range of frequencies in Hz. */
public record ValidRange(double fromHz, double toHz) {

    public static final ValidRange EVERYWHERE = new ValidRange(0, Double.POSITIVE_INFINITY);

    public boolean contains(double hz) {
        return hz >= fromHz && hz <= toHz;
    }

    public ValidRange intersect(ValidRange other) {
        return new ValidRange(Math.max(fromHz, other.fromHz), Math.min(toHz, other.toHz));
    }
}
