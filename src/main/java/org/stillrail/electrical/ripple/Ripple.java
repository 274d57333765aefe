package org.stillrail.electrical.ripple;

import java.util.ArrayList;
import java.util.List;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.BankResponse;
import org.stillrail.electrical.bank.Branch;
import org.stillrail.electrical.bank.LosslessResonanceException;
import org.stillrail.electrical.bank.Node;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.electrical.curve.Hertz;

/**
 * The ripple of a bank under a periodic current, in steady state. In a bank at two nodes the current enters at the converter's; the
 * parts of the voltage are then those of the transfer impedance to the node that is read.
 *
 * @param voltage             the whole ripple voltage, zero mean
 * @param fromCapacitance     its part by the reactance less the series inductance at high frequency
 * @param fromResistance      its part by Re Z
 * @param fromInductance      its part by the series inductance at high frequency: that inductance times the slope. The three
 *                            add up to the whole at every moment; their peak-to-peak values do not
 * @param rmsV                mean excluded
 * @param inductorPeakToPeakA of one inductor, null where the current does not tell
 * @param branches            in the bank's order
 * @param harmonics           how many harmonics were summed one by one
 * @param truncationV         upper bound of the error by what lies above them
 * @param warnings            what a reader should know, in sentences
 */
public record Ripple(
        Waveform voltage,
        Waveform fromCapacitance,
        Waveform fromResistance,
        Waveform fromInductance,
        double rmsV,
        Double inductorPeakToPeakA,
        List<BranchRipple> branches,
        int harmonics,
        double truncationV,
        List<String> warnings) {

    public static final int DEFAULT_SAMPLES = 2000;
    public static final int MOST_SAMPLES = 100_000;

    private static final double ACCURACY = 1e-5;
    private static final double QUICK_ACCURACY = 1e-3;
    private static final double WORTH_A_WARNING = 1e-3;

    public Ripple {
        branches = List.copyOf(branches);
        warnings = List.copyOf(warnings);
    }

    public double peakToPeakV() {
        return voltage.peakToPeakV();
    }

    /**
     * The ripple that the load sees.
     *
     * @param samples points of each waveform in a period, 2 to 100 000
     * @throws LosslessResonanceException where a resonance without loss falls on a harmonic
     */
    public static Ripple of(Bank bank, PeriodicCurrent current, int samples) {
        return of(bank.response(Node.CONVERTER, Node.LOAD), current, samples);
    }

    /** The ripple at the converter's node; that of the load in a bank at one node. */
    public static Ripple atConverter(Bank bank, PeriodicCurrent current, int samples) {
        return of(bank.response(Node.CONVERTER, Node.CONVERTER), current, samples);
    }

    private static Ripple of(BankResponse bank, PeriodicCurrent current, int samples) {
        if (samples < 2 || samples > MOST_SAMPLES) {
            throw new IllegalArgumentException("samples must be 2 to " + MOST_SAMPLES + ", not " + samples);
        }
        RippleSum sum = new RippleSum(bank, current.waveform(), ACCURACY);
        return new Ripple(
                draw(sum.total(), current, samples),
                draw(sum.fromCapacitance(), current, samples),
                draw(sum.fromResistance(), current, samples),
                draw(sum.fromInductance(), current, samples),
                sum.rmsV(),
                current.inductorPeakToPeakA().isPresent() ? current.inductorPeakToPeakA().getAsDouble() : null,
                branches(bank, current.waveform(), sum),
                sum.plan().harmonics(),
                sum.plan().truncationV(),
                warnings(bank, current, sum.plan()));
    }

    /** Peak-to-peak ripple voltage at the load alone, to a thousandth: for the many variations of a bank. */
    public static double quickPeakToPeakV(Bank bank, PeriodicCurrent current) {
        return new RippleSum(bank.response(Node.CONVERTER, Node.LOAD), current.waveform(), QUICK_ACCURACY).total().peakToPeak();
    }

    /** Likewise at the converter's node. */
    public static double quickAtConverterV(Bank bank, PeriodicCurrent current) {
        return new RippleSum(bank.response(Node.CONVERTER, Node.CONVERTER), current.waveform(), QUICK_ACCURACY).total().peakToPeak();
    }

    private static Waveform draw(ExactVoltage voltage, PeriodicCurrent current, int samples) {
        return new Waveform(current.periodS(), voltage.peakToPeak(), voltage.samples(samples));
    }

    private static List<BranchRipple> branches(BankResponse bank, PiecewiseLinear current, RippleSum sum) {
        List<HarmonicCurrents> currents = PartCurrents.of(bank, current, sum.squaredCurrents(), sum.curves());
        List<BranchRipple> branches = new ArrayList<>();
        for (int k = 0; k < bank.branches().size(); k++) {
            branches.add(heat(bank.branches().get(k), sum.curves().bank().grid(), currents.get(k)));
        }
        return branches;
    }

    private static BranchRipple heat(Branch branch, FrequencyGrid harmonics, HarmonicCurrents currents) {
        double[] r = new double[harmonics.size()];
        double[] x = new double[harmonics.size()];
        branch.part().addImpedanceTo(harmonics, r, x);
        double dissipation = currents.tailA2() == 0 ? 0 : currents.tailA2() * branch.part().at(currents.tailHz()).resistanceOhm();
        for (int i = r.length - 1; i >= 0; i--) {
            dissipation += currents.squareA2(i + 1) * r[i];
        }
        double perPartRms = currents.rmsA();
        double rms = perPartRms * branch.count();
        return new BranchRipple(
                branch.label(),
                rms,
                perPartRms,
                dissipation,
                rms * perPartRms * branch.mounting().resistanceOhm(),
                rms * rms * branch.shared().resistanceOhm(),
                currents);
    }

    private static List<String> warnings(BankResponse bank, PeriodicCurrent current, HarmonicPlan plan) {
        double hz = current.frequencyHz();
        List<String> warnings = new ArrayList<>(current.warnings());
        for (Branch branch : bank.branches()) {
            String prefix = "Branch '" + branch.label() + "': ";
            branch.part().warnings().forEach(warning -> warnings.add(prefix + warning));
            double from = branch.part().validRange().fromHz();
            double to = branch.part().validRange().toHz();
            if (hz < from) {
                warnings.add(prefix + "the impedance at the switching frequency is extrapolated, it is known only from "
                        + Hertz.words(from) + ".");
            }
            if (to < 20 * hz) {
                warnings.add(prefix + "the impedance is known only up to " + Hertz.words(to) + ", under 20 times the switching frequency, "
                        + "so the step of its ESL is extrapolated.");
            }
        }
        if (plan.truncationV() > WORTH_A_WARNING * plan.leastPeakToPeakV()) {
            warnings.add("Resonances far above the switching frequency were cut off after " + plan.harmonics()
                    + " harmonics; the peak-to-peak ripple may be wrong by " + plan.truncationV() + " V.");
        }
        return warnings;
    }
}
