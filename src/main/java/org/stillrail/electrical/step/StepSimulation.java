package org.stillrail.electrical.step;

import java.util.PriorityQueue;
import org.stillrail.electrical.Interruption;

/**
 * Walks a circuit through a load step, or any course of the load. Within a regime the solution is exact; the length of a step is chosen only so that cubics
 * between its ends show the voltage, the current and the command truly, since extrema, limits and the delayed command are read
 * from them. Limits are met by halving a step. Instants where something jumps (the load's slope, a regime, and with a delay their
 * echoes) end a step.
 */
final class StepSimulation {

    /** A cubic may miss a curve's middle by this share of the curve's largest value so far. */
    private static final double RESOLUTION = 1e-6;
    /** With a delay the cubics are fed back, so they are held closer. */
    private static final double RESOLUTION_WITH_DELAY = 1e-7;
    /** What one call may spend, in about a nanosecond each. */
    private static final double BUDGET = 1.2e9;
    /** A long ringing is followed ten times less closely after a quarter of the budget, and again after a half. */
    private static final double COARSER = 10;
    /** A step is not made shorter than so many units in the last place of the time. */
    private static final double LEAST_STEPS = 16;
    private static final int MOST_REGIMES = 50_000;
    private static final int HALVINGS = 60;
    /** Share of the range between the limits. */
    private static final double ROOM_TO_LIMITS = 0.01;
    private static final int DELAY_ROUNDS = 8;
    /** A kink of the delayed command loses one order at each turn round the loop; after so many it no longer matters. */
    private static final int ECHOES = 4;
    /** The delay and the inductor smooth an echo, so steps go on from this part of their length before it. */
    private static final double ECHO_SLOWER = 16;
    /** A jump that comes through whole loses the loop gain at infinity at each turn; below this it no longer matters. */
    private static final double FAINT = 1e-9;
    /** A deviation of so many times the output voltage, or the load edge's own jump, grows without bounds. */
    private static final double RUNAWAY = 1e6;

    /** @param corner of the load's course, or {@link #NO_CORNER} */
    private record Break(double atS, int echo, int corner) implements Comparable<Break> {
        @Override
        public int compareTo(Break other) {
            return Double.compare(atS, other.atS);
        }
    }

    private static final int NO_CORNER = -1;

    private final Circuit circuit;
    private final LoadCourse load;
    private final double durationS;
    private final boolean limited;
    private final Trace trace;
    private final double inductorOffsetA;
    private final double nominalV;
    private final int echoes;
    private final Limiter limiter;
    private final DutyHistory history;
    private double resolution;
    private final PriorityQueue<Break> breaks = new PriorityQueue<>();
    private final double[] z;
    private final double[] inside;
    private final double[] end;

    private Regime regime = Regime.FREE;
    private Mode mode;
    private double t;
    private double largestVoltage;
    private double largestInductor;
    private double largestCommand;
    private double largestJump;
    private double forgiven;
    private int regimes;
    private double longestS = Double.POSITIVE_INFINITY;
    private double spent;
    private boolean met;
    private double lowestPush;
    private double highestPush;
    /** The share of the step tried that has gone by at {@code inside}. */
    private double insideAt;

    /**
     * @param nominalV a voltage against which the deviation is judged to run away
     * @param looser   how many times less closely than usual the curves are followed, 1 or more
     */
    StepSimulation(Circuit circuit, LoadCourse load, double durationS, boolean limited, double nominalV, double looser, Trace trace) {
        this.circuit = circuit;
        this.load = load;
        this.durationS = durationS;
        this.limited = limited && circuit.hasConverter();
        this.trace = trace;
        this.inductorOffsetA = load.fromA();
        this.nominalV = nominalV;
        this.limiter = new Limiter(circuit);
        double lowest = this.limited ? circuit.lowest() : Double.NEGATIVE_INFINITY;
        double highest = this.limited ? circuit.highest() : Double.POSITIVE_INFINITY;
        this.history = circuit.delayS() > 0 ? new DutyHistory(circuit.delayS(), lowest, highest) : null;
        double jumps = circuit.gainAtInfinity();
        int untilFaint = jumps == 0 ? 0 : (int) Math.ceil(Math.log(FAINT) / Math.log(jumps));
        this.echoes = jumps < 1 ? ECHOES + untilFaint : Integer.MAX_VALUE;
        this.resolution = looser * (history == null ? RESOLUTION : RESOLUTION_WITH_DELAY);
        this.z = circuit.steadyState();
        this.inside = new double[z.length];
        this.end = new double[z.length];
    }

    /** Whether something was held at a limit so far. */
    boolean metLimit() {
        return met;
    }

    /**
     * Whether the way back from this walk's load, whose limits are the given ones, is the mirror image: neither meets a limit. The limits are looked
     * at only where steps end, so some distance is asked for.
     */
    boolean mirrorsWithin(double backLowest, double backHighest) {
        double room = ROOM_TO_LIMITS * (backHighest - backLowest);
        return !limited || !met && -highestPush > backLowest + room && -lowestPush < backHighest - room;
    }

    void run() {
        breaks.add(new Break(durationS, 0, NO_CORNER));
        for (int corner = 1; corner < load.corners(); corner++) {
            breaks.add(new Break(load.atS(corner), 0, corner));
        }
        circuit.setLoadSlope(z, load.slope(0));
        echo(0, 0);
        enter();
        double h = cautious();
        while (t < durationS) {
            Break next = breaks.peek();
            if (next.atS() <= t) {
                breaks.poll();
                meet(next);
                h = next.echo() == 0 ? cautious() : Math.max(cautious(), h / ECHO_SLOWER);
                continue;
            }
            h = step(h, next.atS());
        }
    }

    /** Something jumps at an instant that was foreseen. */
    private void meet(Break met) {
        if (met.corner() != NO_CORNER) {
            circuit.setLoad(z, load.deviationA(met.corner()));
            circuit.setLoadSlope(z, load.slope(met.corner()));
        }
        if (met.atS() < durationS) {
            echo(met.atS(), met.echo());
            loadHistory(Math.ulp(met.atS()) * 64);
            enter();
        }
    }

    private void echo(double atS, int echo) {
        if (history != null && echo < echoes && atS + circuit.delayS() < durationS) {
            breaks.add(new Break(atS + circuit.delayS(), echo + 1, NO_CORNER));
        }
    }

    private void enter() {
        regime = limited ? limiter.select(z) : Regime.FREE;
        met |= regime.side() != 0;
        mode = circuit.mode(regime);
        largestJump = largest(largestJump, mode.voltage().of(z));
        forgiven = limited ? Math.max(0, limiter.violation(regime, mode, z, largestVoltage)) : 0;
    }

    /** Puts the delayed command at the present instant into the state, so that the regime is chosen with it. */
    private void loadHistory(double lengthS) {
        if (history != null) {
            circuit.setDuty(z, history.cubic(t, Math.min(lengthS, circuit.delayS()), null));
        }
    }

    /** After a jump the fastest mode may ring, so steps grow again from its time constant. */
    private double cautious() {
        return Math.min(durationS / 16, mode.propagator().fastestS());
    }

    /** One step; returns the length to try next. */
    private double step(double tried, double untilS) {
        double least = LEAST_STEPS * Math.ulp(t);
        double h = Math.scalb(1.0, Math.getExponent(Math.min(tried, longestS)));
        for (;;) {
            boolean reaches = t + h >= untilS - least;
            if (reaches) {
                h = untilS - t;
            }
            boolean converged = advance(h);
            double miss = converged ? miss(h) : Double.POSITIVE_INFINITY;
            if (miss > 1 && h > least) {
                h = Math.scalb(1.0, Math.getExponent(h) - (miss > 256 ? 2 : 1));
                continue;
            }
            double next = reaches ? tried : miss < 1.0 / 32 ? 2 * h : h;
            if (limited && meetsLimit(h)) {
                return cautious();
            }
            accept(h, end, reaches ? untilS : t + h);
            return next;
        }
    }

    /** From z over h to {@code inside} and {@code end}; false where the delayed command within the step does not settle. */
    private boolean advance(double h) {
        spend();
        if (history == null) {
            propagate(h);
            return true;
        }
        if (h <= circuit.delayS()) {
            circuit.setDuty(z, history.cubic(t, h, null));
            propagate(h);
            return true;
        }
        // The step is longer than the delay, so the end of its own command comes back within it.
        double y = mode.command().of(z);
        double rate = mode.commandRate().of(z);
        Segment guess = new Segment(t, h, y, rate, y + h * rate, rate);
        double last = Double.POSITIVE_INFINITY;
        for (int round = 0; round < DELAY_ROUNDS; round++) {
            circuit.setDuty(z, history.cubic(t, h, guess));
            propagate(h);
            guess = command(h, end);
            double change = Math.abs(guess.value1() - last);
            if (change <= resolution * largest(largestCommand, guess.value0(), guess.value1()) / 16) {
                return true;
            }
            last = guess.value1();
            spend();
        }
        longestS = h / 2;
        return false;
    }

    /** To the end by way of a power of two of a second, from a quarter to a half of the step: a length that the propagator keeps. */
    private void propagate(double h) {
        double first = Math.scalb(1.0, Math.getExponent(h) - 1);
        insideAt = first / h;
        System.arraycopy(z, 0, inside, 0, z.length);
        mode.propagator().advance(inside, first);
        System.arraycopy(inside, 0, end, 0, z.length);
        mode.propagator().advance(end, h - first);
    }

    /** The worst miss of the cubics within the step, as a multiple of what is allowed. */
    private double miss(double h) {
        Segment voltage = voltage(h, end);
        double insideV = mode.voltage().of(inside);
        if (runsAway(voltage.value1())) {
            // Within limits a trial may run away only because it goes on beyond them.
            if (limited && h > LEAST_STEPS * Math.ulp(t)) {
                return Double.POSITIVE_INFINITY;
            }
            throw runaway();
        }
        double closeness = resolution * Segment.missShownAt(insideAt);
        double allowedV = closeness * largest(largestVoltage, voltage.value0(), voltage.value1(), insideV, nominalV * 1e-12);
        double worst = Math.abs(insideV - voltage.at(insideAt)) / allowedV;
        if (!circuit.hasConverter()) {
            return worst;
        }
        Segment inductor = inductor(h, end);
        double insideA = mode.inductor().of(inside);
        double stepA = load.largestA();
        worst = Math.max(worst, ratio(Math.abs(insideA - inductor.at(insideAt)),
                closeness * largest(largestInductor, inductor.value0(), inductor.value1(), insideA, stepA * 1e-6)));
        if (history != null || limited && circuit.isVoltageMode()) {
            Segment command = command(h, end);
            double insideCommand = mode.command().of(inside);
            double largest = largest(largestCommand, command.value0(), command.value1(), insideCommand, 1e-9);
            worst = Math.max(worst, Math.abs(insideCommand - command.at(insideAt)) / (closeness * largest));
            if (history != null) {
                worst = Math.max(worst, Math.abs(dutyMiss(h, command)) / (resolution * largest));
            }
        } else if (limited) {
            Segment push = segment(h, end, mode.push(), mode.pushRate());
            double allowed = closeness * largest(circuit.pushScale(regime), push.value0(), push.value1());
            worst = Math.max(worst, Math.abs(mode.push().of(inside) - push.at(insideAt)) / allowed);
        }
        return worst;
    }

    private double dutyMiss(double h, Segment command) {
        Segment current = h > circuit.delayS() ? command : null;
        double worst = 0;
        double[] cubic = history.cubic(t, h, current);
        for (double fraction : new double[] {0.3, 0.5, 0.7}) {
            double x = fraction * h;
            double held = cubic[0] + x * (cubic[1] + x / 2 * (cubic[2] + x / 3 * cubic[3]));
            worst = Math.max(worst, Math.abs(held - history.valueAt(t + x, current)));
        }
        return worst;
    }

    /** Where the regime ends within the step, goes to just beyond that instant and changes it. */
    private boolean meetsLimit(double h) {
        if (violation(inside) <= 0 && violation(end) <= 0) {
            return false;
        }
        double[] before = z.clone();
        double[] trial = new double[z.length];
        double done = 0;
        double beyond = h;
        double part = h / 2;
        for (int k = 0; k < HALVINGS && done + part > done; k++) {
            System.arraycopy(before, 0, trial, 0, trial.length);
            mode.propagator().advance(trial, part);
            if (violation(trial) > 0) {
                System.arraycopy(trial, 0, end, 0, end.length);
                beyond = done + part;
            } else {
                System.arraycopy(trial, 0, before, 0, before.length);
                done += part;
            }
            part /= 2;
            if (t + done + part == t + done) {
                break;
            }
        }
        accept(beyond, end, t + beyond);
        echo(t, 0);
        enter();
        if (++regimes > MOST_REGIMES) {
            throw new StepBudgetException("The duty meets its limits too often to follow; shorten durationS or lower the loop's"
                    + " gain");
        }
        return true;
    }

    private double violation(double[] state) {
        return limiter.violation(regime, mode, state, largestVoltage) - forgiven;
    }

    private void accept(double h, double[] state, double atS) {
        Segment voltage = voltage(h, state);
        Segment inductor = inductor(h, state);
        trace.add(voltage, inductor, inductorOffsetA);
        largestVoltage = largest(largestVoltage, voltage.value0(), voltage.value1());
        largestInductor = largest(largestInductor, inductor.value0(), inductor.value1());
        if (circuit.hasConverter()) {
            Segment command = command(h, state);
            largestCommand = largest(largestCommand, command.value0(), command.value1());
            if (history != null) {
                history.add(command);
            }
        }
        System.arraycopy(state, 0, z, 0, z.length);
        double push = mode.push().of(z);
        lowestPush = Math.min(lowestPush, push);
        highestPush = Math.max(highestPush, push);
        t = atS;
    }

    private Segment voltage(double h, double[] state) {
        return segment(h, state, mode.voltage(), mode.voltageRate());
    }

    private Segment inductor(double h, double[] state) {
        return segment(h, state, mode.inductor(), mode.inductorRate());
    }

    private Segment command(double h, double[] state) {
        return segment(h, state, mode.command(), mode.commandRate());
    }

    /** One quantity from the present state to another one, h later. */
    private Segment segment(double h, double[] state, Row value, Row rate) {
        return new Segment(t, h, value.of(z), rate.of(z), value.of(state), rate.of(state));
    }

    private void spend() {
        Interruption.check();
        double before = spent;
        spent += 2.0 * z.length * z.length + 40.0 * z.length + (history == null ? 500 : 2500);
        if (before < BUDGET / 4 && spent >= BUDGET / 4 || before < BUDGET / 2 && spent >= BUDGET / 2) {
            resolution *= COARSER;
        }
        if (spent > BUDGET) {
            throw new StepBudgetException("The response rings too fast for its length to be followed within one call (after "
                    + t + " s of " + durationS + " s); shorten durationS, or give the branches some resistance");
        }
    }

    private boolean runsAway(double v) {
        return !Double.isFinite(v) || circuit.hasConverter() && Math.abs(v) > RUNAWAY * Math.max(nominalV, largestJump);
    }

    private static StepRefusedException runaway() {
        return new StepRefusedException("The deviation grows without bounds within durationS: the closed loop is unstable");
    }

    private static double ratio(double value, double allowed) {
        return allowed == 0 ? 0 : value / allowed;
    }

    private static double largest(double first, double... values) {
        double largest = first;
        for (double value : values) {
            largest = Math.max(largest, Math.abs(value));
        }
        return largest;
    }
}
