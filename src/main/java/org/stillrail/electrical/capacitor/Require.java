package org.stillrail.electrical.capacitor;

/** Checks of constructor arguments; the message names the argument as the API does. */
public final class Require {

    private Require() {
    }

    public static void positive(String name, double value) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(name + " must be a finite number above 0, not " + value);
        }
    }

    public static void notNegative(String name, double value) {
        if (!(value >= 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(name + " must be a finite number, 0 or above, not " + value);
        }
    }

    public static void finite(String name, double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(name + " must be a finite number, not " + value);
        }
    }
}
