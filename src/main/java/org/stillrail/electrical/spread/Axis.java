package org.stillrail.electrical.spread;

/** Where on one axis of a corner: at the least, at nominal or at the most. */
public enum Axis {
    LOW, NOMINAL, HIGH;

    double of(double low, double nominal, double high) {
        return switch (this) {
            case LOW -> low;
            case NOMINAL -> nominal;
            case HIGH -> high;
        };
    }
}
