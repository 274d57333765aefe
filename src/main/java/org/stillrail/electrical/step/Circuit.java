package org.stillrail.electrical.step;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.stillrail.electrical.converter.Converter;
import org.stillrail.electrical.converter.CurrentMode;
import org.stillrail.electrical.converter.PowerStage;
import org.stillrail.electrical.converter.VoltageMode;

/**
 * Bank, inductor and compensator as {@code dz/dt = M z}, one matrix for each regime. Every quantity is a deviation from the
 * steady state before the step.
 *
 * <p>The state vector holds the branches' states; the output voltage if anything capacitive sits on it without resistance; the
 * inductor current (in current mode with its slope); the integrator and the other compensator states; the load's deviation and
 * its slope; a constant 1; and with a delay the duty as a cubic in time, {@code p0' = p1} and so on.
 *
 * <p>The node's law is {@code iL - iLoad = c x + d v + e dv/dt}, summed over the branches:
 * <ul>
 * <li>e above 0: v is a state;</li>
 * <li>e = 0, d above 0: {@code v = (iL - iLoad - c x) / d};</li>
 * <li>both 0, every branch has inductance: the law binds the currents, so it is differentiated once; with
 * {@code diL/dt = (u - R iL - v) / L}, or in current mode with the slope's state, it gives v, and the inductor current is
 * {@code iLoad + c x}, no state of its own.</li>
 * </ul>
 * Where d is small beside inductive branches, v would be a small difference of currents times a large resistance; the law is then
 * differentiated too, with v as the state and {@code iL = iLoad + c x + d v}.
 *
 * <p>With two nodes this is the converter's; the path and what stands at the load are one more branch ({@link FarNode}), which
 * passes on the load's current or a share of it. The output is then the load's voltage.
 */
final class Circuit {

    /** Below this conductance in S the voltage of a node with inductive branches is a state. */
    static final double WEAK_S = 0.01;

    private final int n;
    private final int branchStates;
    private final int voltageAt;
    private final int inductorAt;
    private final int slopeAt;
    private final int integratorAt;
    private final int lagsAt;
    private final int loadAt;
    private final int oneAt;
    private final int dutyAt;

    private final double[][] a;
    private final double[] b;
    private final double[] c;
    /** What the branches' states get of the load's current and of its slope: only beyond a path. */
    private final double[] ofLoad;
    private final double[] ofLoadSlope;
    private final FarNode far;
    private final int farAt;
    private final double conductance;
    private final double capacitance;
    private final boolean weak;

    private final boolean voltageMode;
    private final PowerStage stage;
    private final CompensatorStates compensator;
    private final double delayS;
    private final double loadLineOhm;
    private final double lowest;
    private final double highest;
    private final double samplingOmega;
    private final double inverseSamplingQ;
    private final Propagators propagators;
    private final Map<Regime, Mode> modes = new HashMap<>();

    /** A bank at one node. @param converter null for the bank alone */
    Circuit(List<AdmittanceStateSpace> branches, Converter converter, double fromA) {
        this(branches, null, converter, fromA, new Propagators());
    }

    /**
     * @param branches  at the converter's node
     * @param far       null for one node
     * @param converter null for the bank alone
     */
    Circuit(List<AdmittanceStateSpace> branches, FarNode far, Converter converter, double fromA, Propagators propagators) {
        this.propagators = propagators;
        this.far = far;
        this.farAt = branches.stream().mapToInt(AdmittanceStateSpace::states).sum();
        this.branchStates = farAt + (far == null ? 0 : far.states());
        this.ofLoad = new double[branchStates];
        this.ofLoadSlope = new double[branchStates];
        this.a = new double[branchStates][branchStates];
        this.b = new double[branchStates];
        this.c = new double[branchStates];
        double d = 0;
        double e = 0;
        boolean inductiveBranch = false;
        int at = 0;
        for (AdmittanceStateSpace branch : branches) {
            for (int row = 0; row < branch.states(); row++) {
                for (int column = 0; column < branch.states(); column++) {
                    a[at + row][at + column] = branch.a(row, column);
                }
                b[at + row] = branch.b(row);
                c[at + row] = branch.c(row);
            }
            at += branch.states();
            d += branch.conductance();
            e += branch.capacitance();
            inductiveBranch |= branch.conductance() == 0 && branch.capacitance() == 0;
        }
        if (far != null) {
            for (int row = 0; row < far.states(); row++) {
                for (int column = 0; column < far.states(); column++) {
                    a[at + row][at + column] = far.a(row, column);
                }
                b[at + row] = far.b(row);
                c[at + row] = far.c(row);
                ofLoad[at + row] = far.load(row);
                ofLoadSlope[at + row] = far.loadSlope(row);
            }
            d += far.conductance();
            inductiveBranch |= far.conductance() == 0;
        }
        this.conductance = d;
        this.capacitance = e;
        this.weak = e == 0 && d > 0 && d < WEAK_S && inductiveBranch;
        this.loadLineOhm = converter == null ? 0 : converter.loadLineOhm();
        this.stage = converter == null ? null : converter.stage();
        if (converter != null && converter.control() instanceof VoltageMode voltage) {
            this.voltageMode = true;
            this.delayS = voltage.delayS();
            this.compensator = new CompensatorStates(converter.compensator(), 1 / voltage.rampV());
            double duty = steadyDuty(fromA);
            this.lowest = -duty;
            this.highest = 1 - duty;
            this.samplingOmega = 0;
            this.inverseSamplingQ = 0;
        } else if (converter != null && converter.control() instanceof CurrentMode current) {
            this.voltageMode = false;
            this.delayS = 0;
            this.compensator = new CompensatorStates(converter.compensator(), 1 / current.senseOhm());
            this.lowest = -stage.steepestFallAPerS();
            this.highest = stage.steepestRiseAPerS();
            this.samplingOmega = current.samplingOmega(stage);
            this.inverseSamplingQ = current.inverseSamplingQ(stage);
        } else {
            this.voltageMode = false;
            this.delayS = 0;
            this.compensator = null;
            this.lowest = 0;
            this.highest = 0;
            this.samplingOmega = 0;
            this.inverseSamplingQ = 0;
        }
        int next = branchStates;
        this.voltageAt = capacitance > 0 || weak ? next++ : -1;
        this.inductorAt = compensator != null && !inductive() && !weak ? next++ : -1;
        this.slopeAt = compensator != null && !voltageMode ? next++ : -1;
        this.integratorAt = compensator != null ? next++ : -1;
        this.lagsAt = next;
        next += compensator != null ? compensator.lags() : 0;
        this.loadAt = next;
        next += 2;
        this.oneAt = next++;
        this.dutyAt = delayS > 0 ? next : -1;
        this.n = delayS > 0 ? next + 4 : next;
    }

    int size() {
        return n;
    }

    boolean hasConverter() {
        return compensator != null;
    }

    boolean isVoltageMode() {
        return voltageMode;
    }

    double delayS() {
        return delayS;
    }

    /** Duty before the step, {@code (outputV + R fromA) / inputV}; where the load is sensed, R with the path's. */
    double steadyDuty(double fromA) {
        double resistanceOhm = stage.combinedResistanceOhm() + (far != null && far.sensed() ? far.resistanceOhm() : 0);
        return (stage.outputV() + resistanceOhm * fromA) / stage.inputV();
    }

    /** Lower limit of the duty's deviation, or in current mode of the inductor's slope in A/s. */
    double lowest() {
        return lowest;
    }

    double highest() {
        return highest;
    }

    /** What {@link Mode#push} is at the upper (+1) or lower (-1) limit. */
    double pushAtLimit(Regime regime, int side) {
        if (!voltageMode && regime.side() != 0) {
            return 0;
        }
        return side > 0 ? highest : lowest;
    }

    /** The unit in which {@link Mode#push} is to be judged as small. */
    double pushScale(Regime regime) {
        double span = highest - lowest;
        return voltageMode || regime.side() == 0 ? span : span * samplingOmega;
    }

    double integratorGain() {
        return compensator.integratorGain();
    }

    /**
     * Loop gain at infinite frequency: above 0 where a jump of the command is at once in the output, and the output's in the
     * command.
     */
    double gainAtInfinity() {
        return voltageMode && inductive()
                ? compensator.feedthrough() * stage.inputV() / (stage.combinedInductanceH() * inverseInductance())
                        * (far != null && far.sensed() ? far.feedthrough() : 1)
                : 0;
    }

    double[] steadyState() {
        double[] z = new double[n];
        z[oneAt] = 1;
        return z;
    }

    void setLoad(double[] z, double deviationA) {
        z[loadAt] = deviationA;
    }

    void setLoadSlope(double[] z, double slopeAPerS) {
        z[loadAt + 1] = slopeAPerS;
    }

    /** Sets the delayed duty to a cubic: its value and first three rates of change at the start of a step. */
    void setDuty(double[] z, double[] cubic) {
        System.arraycopy(cubic, 0, z, dutyAt, 4);
    }

    /** Current mode: the inductor's slope is put onto the limit that it has reached. */
    void setSlope(double[] z, int side) {
        if (slopeAt >= 0) {
            z[slopeAt] = side > 0 ? highest : lowest;
        }
    }

    Mode mode(Regime regime) {
        return modes.computeIfAbsent(regime, this::build);
    }

    /** The part of the load's current that the converter's node has to deliver beside what its branches take. */
    private Row atNode(Row load) {
        return far == null ? load : load.times(far.loadShare());
    }

    /** What the load sees. */
    private Row output(Row[] unit, Row voltage) {
        return far == null ? voltage : far.voltage(unit, farAt, voltage, unit[loadAt], unit[loadAt + 1]);
    }

    private Row sensed(Row[] unit, Row voltage) {
        return far != null && far.sensed() ? output(unit, voltage) : voltage;
    }

    private boolean inductive() {
        return capacitance == 0 && conductance == 0;
    }

    private Mode build(Regime regime) {
        Row[] rates = new Row[n];
        Row[] unit = new Row[n];
        for (int k = 0; k < n; k++) {
            rates[k] = Row.zero(n);
            unit[k] = Row.unit(n, k);
        }
        Row zero = Row.zero(n);
        Row load = atNode(unit[loadAt]);
        Row loadSlope = atNode(unit[loadAt + 1]);
        rates[loadAt] = unit[loadAt + 1];
        if (dutyAt >= 0) {
            for (int k = 0; k < 3; k++) {
                rates[dutyAt + k] = unit[dutyAt + k + 1];
            }
        }
        Row branchCurrent = zero;
        for (int k = 0; k < branchStates; k++) {
            branchCurrent = branchCurrent.plus(c[k], unit[k]);
        }
        Row inductor = inductorAt >= 0 ? unit[inductorAt] : zero;
        if (hasConverter() && inductorAt < 0) {
            inductor = branchCurrent.plus(load);
            inductor = weak ? inductor.plus(conductance, unit[voltageAt]) : inductor;
        }
        Row compensatorRest = zero;
        if (hasConverter()) {
            for (int m = 0; m < compensator.lags(); m++) {
                compensatorRest = compensatorRest.plus(compensator.weight(m), unit[lagsAt + m]);
            }
        }
        Row source = sourceVoltage(regime, unit, compensatorRest, inductor, branchCurrent);
        Row voltage = voltage(unit, source, inductor, branchCurrent);

        for (int k = 0; k < branchStates; k++) {
            Row rate = zero;
            for (int column = 0; column < branchStates; column++) {
                if (a[k][column] != 0) {
                    rate = rate.plus(a[k][column], unit[column]);
                }
            }
            rates[k] = rate.plus(b[k], voltage);
            if (k >= farAt) {
                rates[k] = rates[k].plus(ofLoad[k], unit[loadAt]).plus(ofLoadSlope[k], unit[loadAt + 1]);
            }
        }
        Row output = output(unit, voltage);
        Row inductorSlope = zero;
        if (voltageMode) {
            inductorSlope = source.plus(-stage.combinedResistanceOhm(), inductor).minus(voltage).over(stage.combinedInductanceH());
        } else if (hasConverter()) {
            inductorSlope = unit[slopeAt];
        }
        if (weak) {
            rates[voltageAt] = inductorSlope.minus(loadSlope).minus(branchCurrent.rate(rates)).over(conductance);
        } else if (voltageAt >= 0) {
            rates[voltageAt] = inductor.minus(load).minus(branchCurrent).plus(-conductance, voltage).over(capacitance);
        }
        if (!hasConverter()) {
            Propagator propagator = propagators.of(Row.matrix(rates), n);
            return new Mode(propagator, output, output.rate(rates), zero, zero, zero, zero, zero, zero, zero, zero);
        }
        Row error = sensed(unit, voltage).times(-1).plus(-loadLineOhm, inductor);
        Row lagged = error;
        for (int m = 0; m < compensator.lags(); m++) {
            rates[lagsAt + m] = lagged.minus(unit[lagsAt + m]).times(compensator.pole(m));
            lagged = unit[lagsAt + m];
        }
        Row rest = compensatorRest.plus(compensator.feedthrough(), error);
        Row command = unit[integratorAt].plus(rest);
        if (regime.integrator() == Regime.Integrator.RUNS) {
            rates[integratorAt] = error.times(compensator.integratorGain());
        }
        Row freePush = zero;
        if (inductorAt >= 0) {
            rates[inductorAt] = inductorSlope;
        }
        if (!voltageMode) {
            freePush = command.minus(inductor).times(samplingOmega * samplingOmega)
                    .plus(-samplingOmega * inverseSamplingQ, unit[slopeAt]);
            if (regime.side() == 0) {
                rates[slopeAt] = freePush;
            }
        }
        // What is at the limit does not hang on the integrator, so these rates hold whatever it does.
        Row limitRate = voltageMode || regime.side() == 0 ? zero : unit[slopeAt];
        Row followRate = regime.side() == 0 ? zero : limitRate.minus(rest.rate(rates));
        if (regime.integrator() == Regime.Integrator.FOLLOWS) {
            rates[integratorAt] = followRate;
        }
        Row push = voltageMode ? command : regime.side() == 0 ? unit[slopeAt] : freePush;
        return new Mode(propagators.of(Row.matrix(rates), n), output, output.rate(rates), inductor, inductor.rate(rates),
                command, command.rate(rates), error, push, push.rate(rates), followRate);
    }

    /** The averaged switch node's deviation: {@code inputV} times the duty's; zero in current mode. */
    private Row sourceVoltage(Regime regime, Row[] unit, Row compensatorRest, Row inductor, Row branchCurrent) {
        if (!voltageMode) {
            return Row.zero(n);
        }
        double inputV = stage.inputV();
        if (dutyAt >= 0) {
            return unit[dutyAt].times(inputV);
        }
        if (regime.side() != 0) {
            return unit[oneAt].times(inputV * (regime.side() > 0 ? highest : lowest));
        }
        // With feedthrough the command hangs on v, and in an inductive node v on the command: one linear equation.
        Row withoutSource = voltage(unit, Row.zero(n), inductor, branchCurrent);
        Row openError = sensed(unit, withoutSource).times(-1).plus(-loadLineOhm, inductor);
        Row openCommand = unit[integratorAt].plus(compensatorRest).plus(compensator.feedthrough(), openError);
        return openCommand.times(inputV / (1 + gainAtInfinity()));
    }

    private Row voltage(Row[] unit, Row source, Row inductor, Row branchCurrent) {
        if (voltageAt >= 0) {
            return unit[voltageAt];
        }
        Row load = atNode(unit[loadAt]);
        if (conductance > 0) {
            return inductor.minus(load).minus(branchCurrent).over(conductance);
        }
        Row through = Row.zero(n);
        for (int column = 0; column < branchStates; column++) {
            double sum = 0;
            for (int k = 0; k < branchStates; k++) {
                sum += c[k] * a[k][column];
            }
            through = through.plus(sum, unit[column]);
        }
        for (int k = farAt; k < branchStates; k++) {
            through = through.plus(c[k] * ofLoad[k], unit[loadAt]).plus(c[k] * ofLoadSlope[k], unit[loadAt + 1]);
        }
        Row known = through.plus(atNode(unit[loadAt + 1])).times(-1);
        if (voltageMode) {
            double inductanceH = stage.combinedInductanceH();
            known = known.plus(1 / inductanceH, source).plus(-stage.combinedResistanceOhm() / inductanceH, inductor);
        } else if (hasConverter()) {
            known = known.plus(unit[slopeAt]);
        }
        return known.over(inverseInductance());
    }

    /** Sum of 1/L over the branches, and the inductor where its voltage is what drives it. */
    private double inverseInductance() {
        double sum = voltageMode ? 1 / stage.combinedInductanceH() : 0;
        for (int k = 0; k < branchStates; k++) {
            sum += c[k] * b[k];
        }
        return sum;
    }
}
