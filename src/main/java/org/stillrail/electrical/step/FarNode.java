package org.stillrail.electrical.step;

import java.util.List;
import org.stillrail.electrical.bank.SeriesPath;

/**
 * The path with what stands at the load's node, as the converter's node meets it: a branch whose states also hang on the load.
 *
 * <pre>
 * dx/dt = A x + b vc + p iLoad + q diLoad/dt      iPath = c x + d vc + g iLoad      vLoad = form of the same
 * </pre>
 *
 * The load's node has the law of {@link Circuit}, with the path in the place of the inductor: {@code iPath - iLoad = c x + d v +
 * e dv/dt}, {@code vc - v = R iPath + L diPath/dt}. The voltage is a state where it is held by a capacitance, or by a small
 * conductance beside inductive branches; the path's current is one where the path has inductance and the law does not bind it.
 */
final class FarNode {

    private final int own;
    private final Row[] rates;
    private final Row current;
    private final Row voltage;
    private final double resistanceOhm;
    private final boolean sensed;

    /**
     * @param branches at the load's node, may be empty
     * @param path     not nothing
     * @param sensed   whether the converter senses this node
     */
    FarNode(List<AdmittanceStateSpace> branches, SeriesPath path, boolean sensed) {
        this.resistanceOhm = path.resistanceOhm();
        this.sensed = sensed;
        int states = branches.stream().mapToInt(AdmittanceStateSpace::states).sum();
        double d = branches.stream().mapToDouble(AdmittanceStateSpace::conductance).sum();
        double e = branches.stream().mapToDouble(AdmittanceStateSpace::capacitance).sum();
        boolean inductiveBranch = branches.stream().anyMatch(branch -> branch.conductance() == 0 && branch.capacitance() == 0);
        double l = path.inductanceH();
        double r = path.resistanceOhm();
        boolean weak = l > 0 && e == 0 && d > 0 && d < Circuit.WEAK_S && inductiveBranch;
        boolean held = e > 0 || weak;
        boolean free = l > 0 && (e > 0 || d > 0 && !weak);
        this.own = states + (held ? 1 : 0) + (free ? 1 : 0);
        int n = own + 3;
        Row heldV = held ? Row.unit(n, states) : null;
        Row converterV = Row.unit(n, own);
        Row load = Row.unit(n, own + 1);
        Row loadSlope = Row.unit(n, own + 2);

        Row branchCurrent = Row.zero(n);
        int at = 0;
        for (AdmittanceStateSpace branch : branches) {
            for (int k = 0; k < branch.states(); k++) {
                branchCurrent = branchCurrent.plus(branch.c(k), Row.unit(n, at + k));
            }
            at += branch.states();
        }
        Row drawn = load.plus(branchCurrent);
        if (l > 0) {
            this.current = free ? Row.unit(n, own - 1) : weak ? drawn.plus(d, heldV) : drawn;
            this.voltage = held ? heldV : d > 0 ? current.minus(drawn).over(d)
                    : inductive(branches, n).plus(loadSlope).times(-1).plus(converterV.plus(-r, current).over(l))
                            .over(1 / l + perHenry(branches));
        } else {
            this.voltage = held ? heldV : converterV.over(r).minus(drawn).over(d + 1 / r);
            this.current = converterV.minus(voltage).over(r);
        }
        this.rates = new Row[own];
        at = 0;
        for (AdmittanceStateSpace branch : branches) {
            for (int k = 0; k < branch.states(); k++) {
                rates[at + k] = through(branch, k, at, n).plus(branch.b(k), voltage);
            }
            at += branch.states();
        }
        Row slope = l > 0 ? converterV.minus(voltage).plus(-r, current).over(l) : null;
        if (free) {
            rates[own - 1] = slope;
        }
        if (weak) {
            Row branchSlope = Row.zero(n);
            for (int k = 0; k < states; k++) {
                branchSlope = branchSlope.plus(branchCurrent.weight(k), rates[k]);
            }
            rates[states] = slope.minus(loadSlope).minus(branchSlope).over(d);
        } else if (held) {
            rates[states] = current.minus(drawn).plus(-d, voltage).over(e);
        }
    }

    /** {@code c A x} of all branches. */
    private static Row inductive(List<AdmittanceStateSpace> branches, int n) {
        Row sum = Row.zero(n);
        int at = 0;
        for (AdmittanceStateSpace branch : branches) {
            for (int k = 0; k < branch.states(); k++) {
                sum = sum.plus(branch.c(k), through(branch, k, at, n));
            }
            at += branch.states();
        }
        return sum;
    }

    private static Row through(AdmittanceStateSpace branch, int row, int at, int n) {
        Row sum = Row.zero(n);
        for (int column = 0; column < branch.states(); column++) {
            if (branch.a(row, column) != 0) {
                sum = sum.plus(branch.a(row, column), Row.unit(n, at + column));
            }
        }
        return sum;
    }

    private static double perHenry(List<AdmittanceStateSpace> branches) {
        double sum = 0;
        for (AdmittanceStateSpace branch : branches) {
            for (int k = 0; k < branch.states(); k++) {
                sum += branch.c(k) * branch.b(k);
            }
        }
        return sum;
    }

    int states() {
        return own;
    }

    /** A, by row and column. */
    double a(int row, int column) {
        return rates[row].weight(column);
    }

    double b(int row) {
        return rates[row].weight(own);
    }

    /** p. */
    double load(int row) {
        return rates[row].weight(own + 1);
    }

    /** q. */
    double loadSlope(int row) {
        return rates[row].weight(own + 2);
    }

    double c(int column) {
        return current.weight(column);
    }

    double conductance() {
        return current.weight(own);
    }

    /** g: how much of the load's current the converter's node delivers at once. */
    double loadShare() {
        return current.weight(own + 1);
    }

    /** The load's voltage as a form over the circuit's states, of which this node's begin at {@code at}. */
    Row voltage(Row[] unit, int at, Row converterV, Row load, Row loadSlope) {
        Row sum = converterV.times(voltage.weight(own)).plus(voltage.weight(own + 1), load).plus(voltage.weight(own + 2), loadSlope);
        for (int k = 0; k < own; k++) {
            sum = sum.plus(voltage.weight(k), unit[at + k]);
        }
        return sum;
    }

    /** How much of a jump of the converter's voltage is at once in the load's. */
    double feedthrough() {
        return voltage.weight(own);
    }

    boolean sensed() {
        return sensed;
    }

    double resistanceOhm() {
        return resistanceOhm;
    }
}
