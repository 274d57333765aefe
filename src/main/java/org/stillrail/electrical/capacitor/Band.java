package org.stillrail.electrical.capacitor;

/** A figure with the least and the most that it may be. */
public record Band(double least, double typical, double most) {

    public static final Band ONE = exactly(1);

    public Band {
        if (!(least <= typical && typical <= most)) {
            throw new IllegalArgumentException("A band needs least <= typical <= most, not " + least + ", " + typical + ", " + most);
        }
    }

    public static Band exactly(double value) {
        return new Band(value, value, value);
    }

    public double at(Bound bound) {
        return switch (bound) {
            case LEAST -> least;
            case TYPICAL -> typical;
            case MOST -> most;
        };
    }

    /** Which figure of a band is meant. */
    public enum Bound { LEAST, TYPICAL, MOST }
}
