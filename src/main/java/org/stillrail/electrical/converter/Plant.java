package org.stillrail.electrical.converter;

import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.Branch;
import org.stillrail.electrical.capacitor.ImpedancePoint;

/**
 * All of the loop but the compensator, at single frequencies, with its phase on the one branch that is continuous from
 * 0 Hz. Bank and inductor are passive, so the phases of Zbank and of Zbank + sL + R each stay within -90 .. 90 deg and
 * no unwrapping over a grid is needed, wherever the grid starts.
 *
 * <pre>
 * voltage mode:  inputV / rampV * Zbank / (Zbank + sL + R) * exp(-s delayS)      phase 0 at 0 Hz
 * current mode:  1 / senseOhm * Zbank * H(s)                                     phase -90 at 0 Hz
 * </pre>
 *
 * Times {@code 1 + loadLine / Zbank} where the set-point falls with the inductor's current, whose share through the bank that is: passive
 * and real at least 1, so its angle too stays within -90 .. 90 deg.
 *
 * Zbank is what the converter sees. Where a bank at two nodes is sensed at the load, the divider of {@link RemoteSense} follows; with a load
 * line {@link SensedDroop} does.
 */
final class Plant {

    /**
     * @param magnitude         0 where the bank is a short; infinite where a lossless resonance makes it so
     * @param phaseDeg          continuous from 0 Hz
     * @param bank              admittance of the bank
     * @param bankSusceptance   Im Ybank; changes sign at the bank's resonances
     * @param filterImaginary   Im (1 + Ybank (sL + R)); changes sign at the resonance of inductor and bank
     * @param dividerImaginary  of {@link RemoteSense.Point}; 0 where the converter's node is sensed
     */
    record Point(
            double hz, double magnitude, double phaseDeg, double bankConductance, double bankSusceptance, double filterImaginary,
            double dividerImaginary) {

        /** A shorted bank has no voltage but its current: the limit is worked out where it is met. */
        private Point drooping(double loadLineOhm) {
            if (loadLineOhm == 0 || Double.isInfinite(bankConductance)) {
                return this;
            }
            double re = 1 + loadLineOhm * bankConductance;
            double im = loadLineOhm * bankSusceptance;
            return new Point(hz, magnitude * Math.hypot(re, im), phaseDeg + Math.toDegrees(Math.atan2(im, re)), bankConductance, bankSusceptance,
                    filterImaginary, dividerImaginary);
        }

        /** A shorted bank has no voltage but its current, which {@link Plant#shorted} has counted. */
        private Point shifted(SensedDroop.Point droop) {
            double share = Double.isInfinite(bankConductance) ? 1 : droop.magnitude();
            return new Point(hz, magnitude * share, phaseDeg + droop.phaseDeg(), bankConductance, bankSusceptance, filterImaginary, droop.imaginary());
        }

        private Point sensed(RemoteSense.Point remote) {
            return new Point(hz, magnitude * remote.magnitude(), phaseDeg + remote.phaseDeg(), bankConductance, bankSusceptance, filterImaginary,
                    remote.imaginary());
        }
    }

    /** A resonance without loss shows as a residue of rounding: this many ulps of the parts that cancel. */
    private static final double CANCELLED = 64 * Math.ulp(1.0);

    private final Bank bank;
    private final RemoteSense remote;
    private final SensedDroop droop;
    private final double inductanceH;
    private final double resistanceOhm;
    private final double gain;
    private final double delayS;
    private final boolean currentMode;
    private final double inverseSamplingQ;
    private final double samplingOmega;
    private final double loadLineOhm;

    Plant(Bank bank, PowerStage stage, Control control, double loadLineOhm) {
        this(bank.seenByConverter(), RemoteSense.of(bank), stage, control, loadLineOhm);
    }

    /** Of banks that are told by their admittance, see {@link #on}. */
    Plant(PowerStage stage, Control control, double loadLineOhm) {
        this(null, null, stage, control, loadLineOhm);
    }

    private Plant(Bank bank, RemoteSense remote, PowerStage stage, Control control, double loadLineOhm) {
        this.loadLineOhm = loadLineOhm;
        this.bank = bank;
        this.remote = remote;
        this.inductanceH = stage.combinedInductanceH();
        this.resistanceOhm = stage.combinedResistanceOhm();
        if (control instanceof VoltageMode voltage) {
            this.gain = stage.inputV() / voltage.rampV();
            this.delayS = voltage.delayS();
            this.currentMode = false;
            this.inverseSamplingQ = 0;
            this.samplingOmega = 1;
        } else {
            CurrentMode current = (CurrentMode) control;
            this.gain = 1 / current.senseOhm();
            this.delayS = 0;
            this.currentMode = true;
            this.inverseSamplingQ = current.inverseSamplingQ(stage);
            this.samplingOmega = current.samplingOmega(stage);
        }
        this.droop = remote == null || loadLineOhm == 0 ? null : SensedDroop.of(this, remote, loadLineOhm);
    }

    Point at(double hz) {
        Point point = atConverter(hz);
        if (remote == null) {
            return point.drooping(loadLineOhm);
        }
        return droop == null ? point.sensed(remote.at(hz)) : point.shifted(droop.at(hz, point.bankConductance(), point.bankSusceptance()));
    }

    /** With a bank of this admittance at one node. */
    Point on(double hz, double conductance, double susceptance) {
        return with(hz, conductance, susceptance).drooping(loadLineOhm);
    }

    /** With the converter's node sensed and no load line. */
    Point atConverter(double hz) {
        double omega = 2 * Math.PI * hz;
        double g = 0;
        double b = 0;
        for (Branch branch : bank.branches()) {
            ImpedancePoint z = branch.at(hz);
            double r = z.resistanceOhm();
            double x = z.reactanceOhm();
            double squared = r * r + x * x;
            if (squared == 0) {
                return shorted(hz, omega);
            }
            g += r / squared;
            b -= x / squared;
        }
        return with(hz, g, b);
    }

    private Point with(double hz, double g, double b) {
        double omega = 2 * Math.PI * hz;
        double filterIm = g * omega * inductanceH + b * resistanceOhm;
        double bankPhase = -Math.atan2(b, g);
        if (currentMode) {
            double real = 1 - omega / samplingOmega * (omega / samplingOmega);
            double imaginary = omega / samplingOmega * inverseSamplingQ;
            double samplingMagnitude = 1 / Math.max(Math.hypot(real, imaginary), CANCELLED);
            double phase = bankPhase - Math.atan2(imaginary, real);
            return new Point(hz, gain * samplingMagnitude / Math.hypot(g, b), Math.toDegrees(phase), g, b, filterIm, 0);
        }
        double filterRe = 1 + g * resistanceOhm - b * omega * inductanceH;
        double squared = g * g + b * b;
        double filterPhase = squared == 0 ? 0
                : bankPhase - Math.atan2(omega * inductanceH - b / squared, resistanceOhm + g / squared);
        double phase = Math.toDegrees(filterPhase) - 360 * hz * delayS;
        return new Point(hz, gain / Math.hypot(filterRe, filterIm), phase, g, b, filterIm, 0);
    }

    /** Whether the inductor and the bank resonate without loss here, which leaves the loop gain without a value. */
    boolean losslessAt(Point point) {
        if (currentMode) {
            return false;
        }
        double product = point.bankSusceptance() * 2 * Math.PI * point.hz() * inductanceH;
        double filterReal = 1 + point.bankConductance() * resistanceOhm - product;
        return point.filterImaginary() == 0 && Math.abs(filterReal) <= CANCELLED * product;
    }

    /** The bank is a short at a series resonance without loss: the limit for a vanishing loss. */
    private Point shorted(double hz, double omega) {
        double phase = currentMode
                ? -Math.atan2(omega / samplingOmega * inverseSamplingQ, 1 - omega / samplingOmega * (omega / samplingOmega))
                : -Math.atan2(omega * inductanceH, resistanceOhm);
        double magnitude = loadLineOhm == 0 ? 0 : gain * loadLineOhm / (currentMode
                ? Math.hypot(1 - omega / samplingOmega * (omega / samplingOmega), omega / samplingOmega * inverseSamplingQ)
                : Math.hypot(resistanceOhm, omega * inductanceH));
        return new Point(hz, magnitude, Math.toDegrees(phase) - 360 * hz * delayS, Double.POSITIVE_INFINITY, 0, Double.POSITIVE_INFINITY, 0);
    }
}
