package org.stillrail.electrical.step;

/**
 * Which regime holds at a state, and how far a state is from leaving it. The integrator stands still where it would push a
 * limited quantity further beyond its limit; where holding lets the command come back but running drives it out again, it follows
 * the limit.
 */
final class Limiter {

    /** Share of the limited range within which a state counts as on the limit. */
    private static final double ON_LIMIT = 1e-9;
    /** Slack on errors and rates, as a share of their largest value so far. */
    private static final double SLACK = 1e-7;
    private static final double WIDER = 20;

    private final Circuit circuit;

    Limiter(Circuit circuit) {
        this.circuit = circuit;
    }

    /**
     * The regime that holds from this state on. In current mode the slope is put onto the limit that it has reached.
     *
     * @param z modified
     */
    Regime select(double[] z) {
        Mode free = circuit.mode(Regime.FREE);
        double push = free.push().of(z);
        double slack = WIDER * ON_LIMIT * circuit.pushScale(Regime.FREE);
        for (int side = 1; side >= -1; side -= 2) {
            double beyond = side * (push - circuit.pushAtLimit(Regime.FREE, side));
            if (beyond > slack || beyond >= -slack && leaves(side, z, free)) {
                circuit.setSlope(z, side);
                return beyondLimit(side, z, beyond <= slack);
            }
        }
        return Regime.FREE;
    }

    /** Whether a state on the limit would go beyond it if nothing held it. */
    private boolean leaves(int side, double[] z, Mode free) {
        double rate = side * free.pushRate().of(z);
        if (circuit.isVoltageMode()) {
            return rate > 0;
        }
        circuit.setSlope(z, side);
        Regime runs = new Regime(side, Regime.Integrator.RUNS);
        rate = side * free.pushRate().of(z);
        if (Math.abs(rate) > WIDER * ON_LIMIT * circuit.pushScale(runs)) {
            return rate > 0;
        }
        return side * circuit.mode(runs).pushRate().of(z) > 0;
    }

    private Regime beyondLimit(int side, double[] z, boolean onLimit) {
        Regime runs = new Regime(side, Regime.Integrator.RUNS);
        if (side * circuit.mode(runs).error().of(z) <= 0) {
            return runs;
        }
        Regime holds = new Regime(side, Regime.Integrator.HOLDS);
        Mode held = circuit.mode(holds);
        boolean onEdge = onLimit && (circuit.isVoltageMode()
                || Math.abs(held.push().of(z)) <= WIDER * ON_LIMIT * circuit.pushScale(holds));
        if (onEdge && side * held.pushRate().of(z) < 0) {
            return new Regime(side, Regime.Integrator.FOLLOWS);
        }
        return holds;
    }

    /**
     * How far a state is beyond the validity of a regime: 0 or less while it holds.
     *
     * @param largestError largest |error| so far
     */
    double violation(Regime regime, Mode mode, double[] z, double largestError) {
        double push = mode.push().of(z);
        double tolerance = ON_LIMIT * circuit.pushScale(regime);
        if (regime.side() == 0) {
            return Math.max(push - circuit.pushAtLimit(regime, 1), circuit.pushAtLimit(regime, -1) - push) / tolerance - 1;
        }
        int side = regime.side();
        double errorSlack = SLACK * largestError;
        double error = side * mode.error().of(z);
        switch (regime.integrator()) {
            case FOLLOWS -> {
                double rate = side * mode.followRate().of(z);
                double run = error * circuit.integratorGain();
                double slack = circuit.integratorGain() * errorSlack;
                return slack == 0 ? 0 : Math.max(-rate, rate - run) / slack - 1;
            }
            case HOLDS -> {
                double inside = side * (circuit.pushAtLimit(regime, side) - push) / tolerance;
                return Math.max(inside, errorSlack == 0 ? 0 : -error / errorSlack) - 1;
            }
            default -> {
                double inside = side * (circuit.pushAtLimit(regime, side) - push) / tolerance;
                return Math.max(inside, errorSlack == 0 ? 0 : error / errorSlack) - 1;
            }
        }
    }
}
