package org.stillrail.electrical.step;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/** The propagators of one bank's circuits, each worked out once: a step and its way back obey the same equations. For one thread. */
public final class Propagators {

    private final Map<Equations, Propagator> known = new HashMap<>();

    /** A matrix, equal to another of the same numbers. */
    private record Equations(double[] m) {

        @Override
        public boolean equals(Object other) {
            return other instanceof Equations equations && Arrays.equals(m, equations.m);
        }

        @Override
        public int hashCode() {
            return Arrays.hashCode(m);
        }
    }

    /** @param m n rows of n, row by row; kept */
    Propagator of(double[] m, int n) {
        return known.computeIfAbsent(new Equations(m), equations -> new Propagator(equations.m(), n));
    }
}
