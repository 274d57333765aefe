package org.stillrail.bank.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleBiFunction;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.Branch;
import org.stillrail.electrical.bank.Node;
import org.stillrail.electrical.bench.BandError;
import org.stillrail.electrical.bench.BenchComparison;
import org.stillrail.electrical.bench.FittedMounting;
import org.stillrail.electrical.bench.MountingBounds;
import org.stillrail.electrical.bench.MountingFit;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.curve.Thinning;
import org.stillrail.electrical.evaluation.EvaluationInput;
import org.stillrail.electrical.evaluation.KeyFrequencies;
import org.stillrail.library.SweepDocument;
import org.stillrail.library.SweepIntake;
import org.stillrail.library.SweepTrust;
import org.stillrail.web.ChartData;
import org.stillrail.web.ChartData.Axis;
import org.stillrail.web.ChartData.Band;
import org.stillrail.web.ChartData.Mark;
import org.stillrail.web.ChartData.Series;
import org.stillrail.web.Quantity;

/** A measured impedance of the assembled bank against its prediction, for the page. */
record ImpedanceView(
        BenchRecord record, boolean met, String verdict, List<BandLine> bands, List<MountingLine> mountings, String fitSentence,
        List<String> trust, String magnitude, String resistance, String error) {

    private static final int MOST_POINTS = 3000;
    private static final double LEAST_PERCENT = 0.01;
    /** A smaller error is rounding. */
    private static final double LEAST_SIGMA = 1e-6;

    /** One band in words. @param state met, missed or not measured */
    record BandLine(String name, String range, String state, String rms, String worst, String resistance) {
    }

    /** What the fit did to one branch. */
    record MountingLine(String label, String resistance, String inductance, String remark) {
    }

    /**
     * The mountings that bring the prediction nearest to what the instrument can tell.
     *
     * @param trust of all points of the record
     * @throws IllegalArgumentException where too few points are trusted
     */
    static MountingFit fit(BenchRecord record, EvaluationInput input, SweepTrust trust) {
        SweepDocument sweep = record.document().sweep();
        return MountingFit.of(Predicted.bank(input, sweep.provenance().biasV(), sweep.provenance().temperatureC()),
                Thinning.where(sweep.impedance(), trust::isMagnitudeKnown), MountingBounds.BELIEVABLE);
    }

    static ImpedanceView of(BenchRecord record, EvaluationInput input, KeyFrequencies frequencies, SweepIntake intake) {
        BenchDocument document = record.document();
        Curve whole = document.sweep().impedance();
        // Long sweeps are compared and drawn thinned.
        Curve measured = Thinning.keepingPeaks(whole, MOST_POINTS);
        SweepTrust trust = intake.trust(document.sweep(), measured);
        Bank bank = Predicted.bank(input, document.sweep().provenance().biasV(), document.sweep().provenance().temperatureC());
        BenchComparison comparison = BenchComparison.of(bank, measured,
                Predicted.bands(bank, frequencies, measured.grid().startHz(), measured.grid().stopHz()),
                trust::isMagnitudeKnown, trust::isResistanceKnown);
        MountingFit fit = fit(record, input, intake.trust(document.sweep(), whole));
        String where = bank.distance() == null ? null : Node.LOAD.label();
        Curve fitted = mounted(bank, fit).on(measured.grid()).bank();
        List<BandLine> lines = comparison.bands().stream().map(band -> line(band, document)).toList();
        boolean met = comparison.bands().stream().noneMatch(band -> Boolean.FALSE.equals(band.within(document.tolerancePercent(), document.resistancePercent())));
        return new ImpedanceView(record, met, verdict(met, lines, document), lines, fit.mountings().stream().map(ImpedanceView::line).toList(),
                sentence(fit), trust.words(),
                chart("|Z| of the assembled bank, predicted and measured", Axis.log("|Z|", "\u03a9"), comparison, fitted, frequencies, trust, true).at(where).json(),
                chart("ESR of the assembled bank, predicted and measured", Axis.log("ESR", "\u03a9"), comparison, fitted, frequencies, trust, false).at(where).json(),
                error(comparison, fitted, frequencies).json());
    }

    private static Bank mounted(Bank bank, MountingFit fit) {
        List<Branch> branches = new ArrayList<>();
        for (int k = 0; k < bank.branches().size(); k++) {
            Branch branch = bank.branches().get(k);
            branches.add(branch.withMounting(fit.mountings().get(k).after()));
        }
        return new Bank(branches, bank.distance());
    }

    private static String verdict(boolean met, List<BandLine> lines, BenchDocument document) {
        String tolerance = percent(document.tolerancePercent()) + " of |Z| and " + percent(document.resistancePercent()) + " of the ESR";
        if (met) {
            return "The prediction is within " + tolerance + " wherever the bench tells.";
        }
        return "The prediction misses " + tolerance + " in: "
                + String.join(", ", lines.stream().filter(line -> line.state().equals("missed")).map(BandLine::name).toList()) + ".";
    }

    private static BandLine line(BandError error, BenchDocument document) {
        String range = Quantity.format(error.band().fromHz(), "Hz", 3) + " \u2013 " + Quantity.format(error.band().toHz(), "Hz", 3);
        Boolean within = error.within(document.tolerancePercent(), document.resistancePercent());
        if (within == null) {
            return new BandLine(error.band().name(), range, error.passedOver() > 0 ? "not told by this measurement" : "not measured", "", "", "");
        }
        return new BandLine(error.band().name(), range, within ? "met" : "missed",
                percent(error.rmsPercent()) + (error.passedOver() > 0 ? " where it is trusted" : ""),
                signed(error.worstPercent()) + " at " + Quantity.format(error.worstHz(), "Hz", 3),
                error.resistanceWorstPercent() == null ? "not known from this measurement"
                        : percent(error.resistanceRmsPercent()) + ", at worst " + signed(error.resistanceWorstPercent())
                                + (error.resistancePoints() < error.points() ? " where it is known" : ""));
    }

    private static MountingLine line(FittedMounting mounting) {
        String remark = (mounting.atBound() ? "At an end of what is believable. " : "")
                + (mounting.resistanceTold() ? "" : "This sweep does not tell the resistance. ")
                + (mounting.inductanceTold() ? "" : "This sweep does not tell the inductance.");
        return new MountingLine(mounting.label(),
                moved(mounting.before().resistanceOhm(), mounting.after().resistanceOhm(), mounting.resistanceSigmaOhm(), "ohm"),
                moved(mounting.before().inductanceH(), mounting.after().inductanceH(), mounting.inductanceSigmaH(), "H"), remark.strip());
    }

    private static String moved(double before, double after, double sigma, String unit) {
        double by = after - before;
        return Quantity.format(before, unit, 3) + " \u2192 " + Quantity.format(after, unit, 3)
                + (Double.isFinite(sigma) && sigma > LEAST_SIGMA * Math.abs(after) ? " \u00b1" + Quantity.format(sigma, unit, 2) : "")
                + ", moved by " + (by > 0 ? "+" : "") + Quantity.format(by, unit, 2);
    }

    private static String sentence(MountingFit fit) {
        return "With these mountings the rms error falls from " + percent(fit.before()) + " to " + percent(fit.after()) + " of |Z|.";
    }

    private static ChartData chart(
            String summary, Axis y, BenchComparison comparison, Curve fitted, KeyFrequencies frequencies, SweepTrust trust, boolean magnitude) {
        ToDoubleBiFunction<Curve, Integer> value = magnitude ? Curve::magnitude : (curve, i) -> curve.real(i) > 0 ? curve.real(i) : Double.NaN;
        double[] hz = comparison.measured().grid().toArray();
        List<Series> series = new ArrayList<>(List.of(
                Series.of("measured", "measured", "measured", hz, values(comparison.measured(), value)).drawnAs(null, "measured").between(
                        magnitude ? trust.uncertainty().lowestMagnitudeOhm() : trust.uncertainty().lowestResistanceOhm(),
                        magnitude ? trust.uncertainty().highestMagnitudeOhm() : trust.uncertainty().highestResistanceOhm()),
                Series.of("bank", "predicted", "bank", hz, values(comparison.predicted(), value)),
                Series.of("fitted", "with fitted mountings", "reference", hz, values(fitted, value)).drawnAs(null, "fitted")));
        List<Band> bands = new ArrayList<>(bands(frequencies));
        if (magnitude) {
            bands.addAll(trust.untrusted());
            if (trust.shieldErrorOhm() != null) {
                series.add(Series.of("shields", "error of the shields", "limit", hz, trust.shieldErrorOhm()));
            }
        }
        return new ChartData(summary, Axis.FREQUENCY, y, series, marks(frequencies), bands);
    }

    private static ChartData error(BenchComparison comparison, Curve fitted, KeyFrequencies frequencies) {
        double[] hz = comparison.measured().grid().toArray();
        return new ChartData("Prediction over measurement, in per cent of |Z|", Axis.FREQUENCY, Axis.linear("Error of |Z|", "%"), List.of(
                Series.of("bank", "as composed", "bank", hz, ratio(comparison.predicted(), comparison.measured())),
                Series.of("fitted", "with fitted mountings", "reference", hz, ratio(fitted, comparison.measured()))),
                marks(frequencies), bands(frequencies));
    }

    private static double[] ratio(Curve predicted, Curve measured) {
        return values(predicted, (curve, i) -> 100 * (curve.magnitude(i) / measured.magnitude(i) - 1));
    }

    private static double[] values(Curve curve, ToDoubleBiFunction<Curve, Integer> value) {
        double[] values = new double[curve.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = value.applyAsDouble(curve, i);
        }
        return values;
    }

    static List<Mark> marks(KeyFrequencies frequencies) {
        return List.of(new Mark(frequencies.crossoverHz(), "crossover"), new Mark(frequencies.switchingHz(), "switching"));
    }

    static List<Band> bands(KeyFrequencies frequencies) {
        return List.of(new Band(frequencies.dampingFromHz(), frequencies.dampingToHz(), "damping band", "damping"),
                new Band(frequencies.quietFromHz(), frequencies.quietToHz(), "quiet band", "quiet"));
    }

    private static String percent(double percent) {
        return percent != 0 && Math.abs(percent) < LEAST_PERCENT ? "under " + Quantity.format(LEAST_PERCENT, "%", 1)
                : Quantity.format(percent, "%", 2);
    }

    private static String signed(double percent) {
        return (percent >= LEAST_PERCENT ? "+" : "") + percent(percent);
    }
}
