package org.stillrail.calculation;

/** What one call may ask for at most. */
final class Limits {

    static final int BRANCHES = 16;
    static final int GRID_POINTS = 20_000;
    /** In all tables of a call together. */
    static final int TABLE_POINTS = 200_000;
    static final int SAMPLES = 100_000;
    static final int PHASES = 64;
    static final int COMPENSATOR_ROOTS = 20;
    /** Three numbers of 25 characters at each of the table points fit. */
    static final int BODY_MIB = 16;
    static final int BODY_BYTES = BODY_MIB << 20;

    private Limits() {
    }
}
