package org.stillrail.electrical.step;

/**
 * Which linear equations hold.
 *
 * @param side       0 within the limits, +1 at the upper limit, -1 at the lower
 * @param integrator what the compensator's integrator does
 */
record Regime(int side, Integrator integrator) {

    /** The integrator runs, holds, or moves just so much that the command stays on the limit. */
    enum Integrator { RUNS, HOLDS, FOLLOWS }

    static final Regime FREE = new Regime(0, Integrator.RUNS);
}
