package org.stillrail.electrical.spread;

/**
 * How a figure strays from nominal, as a share of it: at random between two bounds.
 *
 * @param least above -1
 * @param most  at least {@code least}
 */
public record Tolerance(double least, double most, Shape shape) {

    /** Which deviations are likely. */
    public enum Shape {
        /** All alike: the cautious choice where nothing is known. Its sigma is the half width over the root of 3. */
        UNIFORM,
        /** The middle most of all, falling in straight lines to nothing at both bounds. Its sigma is the half width over the root of 6. */
        TRIANGULAR,
        /** A bell whose sigma is a third of the half width, cut off at both bounds: as where production is centred and sorted. */
        NORMAL
    }

    private static final double SIGMAS = 3;
    /** Chance of a standard normal variable below -3. */
    private static final double CUT_OFF = 0.0013498980316300946;

    public static final Tolerance NONE = new Tolerance(0, 0, Shape.UNIFORM);

    public Tolerance {
        if (!(least > -1 && least <= most) || Double.isInfinite(most)) {
            throw new IllegalArgumentException("A tolerance needs -1 < least <= most, not " + least + " and " + most);
        }
        if (shape == null) {
            throw new IllegalArgumentException("shape must be given");
        }
    }

    /** Plus and minus the same. */
    public static Tolerance uniform(double share) {
        return new Tolerance(-share, share, Shape.UNIFORM);
    }

    public static Tolerance triangular(double share) {
        return new Tolerance(-share, share, Shape.TRIANGULAR);
    }

    /** The deviation that belongs to an even random number from 0 to 1: the inverse of the distribution function. */
    double at(double u) {
        double place = switch (shape) {
            case UNIFORM -> u;
            case TRIANGULAR -> u < 0.5 ? Math.sqrt(u / 2) : 1 - Math.sqrt((1 - u) / 2);
            case NORMAL -> (1 + NormalQuantile.of(CUT_OFF + u * (1 - 2 * CUT_OFF)) / SIGMAS) / 2;
        };
        return least + (most - least) * place;
    }
}
