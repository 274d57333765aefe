package org.stillrail.electrical.spread;

/**
 * Random numbers that depend on a seed, the number of the draw and the number of the variable only, not on what was drawn before:
 * so any number of threads gets the same ones. Two rounds of the finaliser that java.util.SplittableRandom uses too (D. Stafford's
 * variant 13), over a counter in steps of the golden ratio.
 */
final class CounterRandom {

    private static final long GOLDEN = 0x9E3779B97F4A7C15L;
    private static final double UNIT = 0x1.0p-53;

    private final long key;

    CounterRandom(long seed, long draw) {
        this.key = mix(mix(seed + GOLDEN) + GOLDEN * (draw + 1));
    }

    /** Even from 0 to below 1. */
    double uniform(int variable) {
        return (mix(key + GOLDEN * (variable + 1L)) >>> 11) * UNIT;
    }

    private static long mix(long z) {
        long a = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        long b = (a ^ (a >>> 27)) * 0x94D049BB133111EBL;
        return b ^ (b >>> 31);
    }
}
