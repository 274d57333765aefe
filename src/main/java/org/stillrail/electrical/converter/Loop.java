package org.stillrail.electrical.converter;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.LosslessResonanceException;
import org.stillrail.electrical.bank.TwoNodePoint;
import org.stillrail.electrical.capacitor.ImpedancePoint;
import org.stillrail.electrical.curve.Complex;
import org.stillrail.electrical.curve.FrequencyGrid;

/**
 * Loop gain, margins and closed-loop output impedance of a buck converter on a bank.
 *
 * <pre>
 * T = C(s) * inputV / rampV * Zbank / (Zbank + sL + R) * exp(-s delayS)      Zopen = Zbank || (sL + R)      voltage mode
 * T = C(s) / senseOhm * Zbank * H(s)                                         Zopen = Zbank                  current mode
 * Zclosed = Zopen / (1 + T)
 * </pre>
 *
 * With a load line R the set-point falls with the inductor's current: T is multiplied by {@code 1 + R / Zbank}, and
 * {@code Zclosed = (Zopen + R T / (1 + R / Zbank)) / (1 + T)}, which is R where T is large. Derived.
 *
 * In a bank at two nodes Zbank is what the converter sees, {@link RemoteSense} comes into T where the load is sensed, and Zopen and
 * Zclosed are what the load sees ({@link TwoNodePoint}). With a load line the sensed voltage and what the inductor's current takes off add up
 * ({@link SensedDroop}).
 *
 * The averaged model: it says nothing near and above half the switching frequency.
 */
public final class Loop {

    private static final double NEPER_DB = 20 / Math.log(10);
    /** A crossover above this share of the switching frequency is warned about. */
    private static final double CROSSOVER_SHARE = 0.2;
    /** A crossover is the one that was asked for within this share. */
    private static final double MET = 1e-6;

    private Loop() {
    }

    /**
     * @throws LosslessResonanceException where the bank, or bank and inductor, resonate without loss on a grid point
     */
    public static LoopResult of(Bank bank, Converter converter, FrequencyGrid grid) {
        LoopGain gain = new LoopGain(bank, converter);
        return onGrid(bank, converter, grid, gain, margins(bank, converter, gain, grid.startHz(), grid.stopHz()));
    }

    /**
     * Crossover, margins and stability without any curve, as they are in a {@link LoopResult} of a grid from {@code startHz} to
     * {@code stopHz}.
     */
    public static LoopMargins margins(Bank bank, Converter converter, double startHz, double stopHz) {
        return margins(bank, converter, new LoopGain(bank, converter), startHz, stopHz);
    }

    /**
     * The closed loop at each frequency, without the rest of a {@link LoopResult}.
     *
     * @throws LosslessResonanceException where bank and inductor resonate without loss on a grid point
     */
    public static ClosedLoop closed(Bank bank, Converter converter, FrequencyGrid grid) {
        LoopGain gain = new LoopGain(bank, converter);
        double[] sensitivity = new double[grid.size()];
        double[] impedanceOhm = new double[grid.size()];
        for (int i = 0; i < sensitivity.length; i++) {
            Seen seen = seen(bank, converter, finite(gain, grid.hz(i)));
            sensitivity[i] = seen.sensitivity;
            impedanceOhm[i] = seen.closedOhm;
        }
        return new ClosedLoop(grid, sensitivity, impedanceOhm);
    }

    private static LoopMargins margins(Bank bank, Converter converter, LoopGain gain, double startHz, double stopHz) {
        LoopScan scan = new LoopScan(gain, bank, converter, startHz, stopHz);
        List<String> warnings = new ArrayList<>();
        LoopScan.Crossing crossover = crossover(scan, startHz, stopHz);
        boolean stable = stable(converter, scan, warnings);
        Double gainMarginDb = gainMarginDb(scan, startHz, stopHz, warnings);
        if (crossover == null) {
            warnings.add("The loop gain does not cross 1 between " + hz(startHz) + " and " + hz(stopHz)
                    + "; there is no crossover and no phase margin");
            return new LoopMargins(null, null, gainMarginDb, stable, null, warnings);
        }
        double crossoverHz = crossover.point().hz();
        if (crossoverHz > CROSSOVER_SHARE * converter.stage().switchingHz()) {
            warnings.add("The crossover of " + hz(crossoverHz) + " is above a fifth of the switching frequency,"
                    + " where the averaged model flatters");
        }
        if (converter.target() != null) {
            compareWithTarget(converter.target(), crossover.point(), warnings);
        }
        return new LoopMargins(crossoverHz, crossover.point().marginDeg(), gainMarginDb, stable, resistanceOhm(bank, crossoverHz), warnings);
    }

    /** The crossover between two frequencies as in {@link LoopResult#crossoverHz()}, null if there is none. */
    public static Double crossoverHz(Bank bank, Converter converter, double startHz, double stopHz) {
        LoopScan scan = new LoopScan(new LoopGain(bank, converter), bank, converter, startHz, stopHz);
        LoopScan.Crossing crossing = crossover(scan, startHz, stopHz);
        return crossing == null ? null : (Double) crossing.point().hz();
    }

    private static LoopResult onGrid(Bank bank, Converter converter, FrequencyGrid grid, LoopGain gain, LoopMargins margins) {
        int n = grid.size();
        double[] gainDb = new double[n];
        double[] phaseDeg = new double[n];
        double[] open = new double[n];
        double[] closed = new double[n];
        double[] sensitivity = new double[n];
        double sensitivityPeak = 0;
        for (int i = 0; i < n; i++) {
            LoopGain.Point point = finite(gain, grid.hz(i));
            Seen seen = seen(bank, converter, point);
            gainDb[i] = NEPER_DB * point.logMagnitude();
            phaseDeg[i] = point.phaseDeg();
            open[i] = seen.openOhm;
            closed[i] = seen.closedOhm;
            sensitivity[i] = seen.sensitivity;
            sensitivityPeak = Math.max(sensitivityPeak, sensitivity[i]);
        }
        return new LoopResult(grid, gainDb, phaseDeg, open, closed, sensitivity, margins.crossoverHz(), margins.phaseMarginDeg(),
                margins.gainMarginDb(), sensitivityPeak, margins.stable(), margins.esrAtCrossoverOhm(),
                resistanceOhm(bank, converter.stage().switchingHz()), converter.compensator(), margins.warnings());
    }

    private static LoopGain.Point finite(LoopGain gain, double hz) {
        LoopGain.Point point = gain.at(hz);
        if (gain.losslessAt(point)) {
            throw new LosslessResonanceException("The bank with the inductor", hz);
        }
        return point;
    }

    /** What the load sees at one frequency. */
    private record Seen(double openOhm, double closedOhm, double sensitivity) {
    }

    private static Seen seen(Bank bank, Converter converter, LoopGain.Point point) {
        PowerStage stage = converter.stage();
        Complex inductor = converter.control() instanceof CurrentMode ? null
                : new Complex(stage.combinedResistanceOhm(), 2 * Math.PI * point.hz() * stage.combinedInductanceH());
        Complex loopGain = point.value();
        double returnDifference = point.returnDifference();
        if (bank.distance() != null) {
            TwoNodePoint nodes = bank.nodesAt(point.hz());
            return new Seen(nodes.openAtLoad(inductor).magnitude(), nodes.closedAtLoad(bank.distance().sense(), loopGain, inductor,
                    converter.loadLineOhm()).magnitude(),
                    1 / returnDifference);
        }
        Complex z = Complex.ONE.over(new Complex(point.plant().bankConductance(), point.plant().bankSusceptance()));
        if (!(z.magnitude() > 0 && Double.isFinite(z.magnitude()))) {
            throw new LosslessResonanceException("The bank", point.hz());
        }
        Complex open = inductor == null ? z : z.times(inductor).over(z.plus(inductor));
        double loadLineOhm = converter.loadLineOhm();
        double closedOhm = loadLineOhm == 0 ? open.magnitude() / returnDifference
                : open.plus(loopGain.times(new Complex(loadLineOhm, 0)).over(Complex.ONE.plus(new Complex(loadLineOhm, 0).over(z)))).magnitude()
                        / returnDifference;
        return new Seen(open.magnitude(), closedOhm, 1 / returnDifference);
    }

    private static LoopScan.Crossing crossover(LoopScan scan, double startHz, double stopHz) {
        LoopScan.Crossing least = null;
        for (LoopScan.Crossing crossing : scan.crossings()) {
            double hz = crossing.point().hz();
            if (hz >= startHz && hz <= stopHz
                    && (least == null || crossing.point().marginDeg() < least.point().marginDeg())) {
                least = crossing;
            }
        }
        return least;
    }

    private static Double gainMarginDb(LoopScan scan, double startHz, double stopHz, List<String> warnings) {
        Double least = null;
        Double conditionalHz = null;
        for (LoopGain.Point point : scan.phaseCrossings(startHz, stopHz)) {
            if (point.logMagnitude() < 0) {
                double marginDb = -NEPER_DB * point.logMagnitude();
                least = least == null ? (Double) marginDb : (Double) Math.min(least, marginDb);
            } else {
                conditionalHz = point.hz();
            }
        }
        if (conditionalHz != null) {
            warnings.add("The phase passes -180 deg at " + hz(conditionalHz) + " where the loop gain is above 1: less gain may"
                    + " make it unstable, and the gain margin does not say so");
        }
        return least;
    }

    /** The compensator makes the wanted crossing, but another one may have less margin. */
    private static void compareWithTarget(LoopTarget target, LoopGain.Point point, List<String> warnings) {
        if (Math.abs(point.hz() / target.crossoverHz() - 1) > MET) {
            warnings.add(String.format(Locale.ROOT,
                    "The compensator was placed for a crossover of %.4g Hz with %.4g deg, but the loop gain also crosses 1 at"
                    + " %.4g Hz, with %.4g deg",
                    target.crossoverHz(), target.phaseMarginDeg(), point.hz(), point.marginDeg()));
        }
    }

    private static boolean stable(Converter converter, LoopScan scan, List<String> warnings) {
        if (converter.control() instanceof CurrentMode current && current.inverseSamplingQ(converter.stage()) <= 0) {
            warnings.add("The current loop itself is unstable at this duty: give it more slope compensation");
            return false;
        }
        boolean stable = scan.turnsAroundOrigin() == 0;
        if (!stable) {
            warnings.add("The closed loop is unstable");
        }
        return stable;
    }

    /** Re Zbank, null where a lossless resonance leaves it without a value. */
    private static Double resistanceOhm(Bank bank, double hz) {
        ImpedancePoint z = bank.at(hz);
        return Double.isFinite(z.resistanceOhm()) ? (Double) z.resistanceOhm() : null;
    }

    private static String hz(double hz) {
        return String.format(Locale.ROOT, "%.4g Hz", hz);
    }
}
