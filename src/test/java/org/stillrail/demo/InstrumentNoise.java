package org.stillrail.demo;

/** Normally distributed noise of an instrument: SplitMix64 numbers through the Box-Muller transform, fixed by the seed. */
final class InstrumentNoise {

    private static final double UNIT = 1.0 / (1L << 53);

    private long state;

    InstrumentNoise(long seed) {
        state = seed;
    }

    /** Mean 0, standard deviation 1. */
    double next() {
        double radius = Math.sqrt(-2 * StrictMath.log(1 - uniform()));
        return radius * StrictMath.cos(2 * Math.PI * uniform());
    }

    /** Both parts with the standard deviation given. */
    Phasor next(double deviation) {
        return new Phasor(deviation * next(), deviation * next());
    }

    private double uniform() {
        state += 0x9E3779B97F4A7C15L;
        long z = state;
        z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return ((z ^ (z >>> 31)) >>> 11) * UNIT;
    }
}
