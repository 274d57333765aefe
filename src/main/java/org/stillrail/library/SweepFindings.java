package org.stillrail.library;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.stillrail.electrical.capacitor.ImpedanceModel;
import org.stillrail.electrical.capacitor.ValidRange;
import org.stillrail.electrical.quality.CalibrationFinding;
import org.stillrail.electrical.quality.Finding;
import org.stillrail.electrical.quality.RepeatFindings;
import org.stillrail.electrical.quality.SheetFindings;
import org.stillrail.electrical.quality.SweepFigure;
import org.stillrail.electrical.quality.SweepFigures;

/** Everything that is found wrong with a sweep, stored or only read: its points, the datasheet, earlier repeats, the calibration. */
final class SweepFindings {

    private static final double SHEET_FREQUENCY_SLACK = 1.01;
    /** Capacitance hardly changes within an octave. */
    private static final double CAPACITANCE_SLACK = 2;
    private static final double SAME_TEMPERATURE_C = 2;

    private SweepFindings() {
    }

    static List<SweepFigure> figures(SweepFit fit, PartDocument part, Trust trust) {
        ImpedanceModel model = fit.model();
        return model == null ? List.of()
                : SweepFigures.of(model, new ValidRange(fit.curve().grid().startHz(), fit.curve().grid().stopHz()), PartModels.testFrequencyHz(part), trust::errorOhmAt);
    }

    /** @param earlier sweeps of the same part; only repeats among them count */
    static List<Finding> of(SweepFit fit, List<SweepFigure> figures, SweepDocument document, PartDocument part, List<Sweep> earlier) {
        List<Finding> findings = new ArrayList<>(fit.findings());
        SweepProvenance provenance = document.provenance();
        if (atSheetConditions(provenance)) {
            findings.addAll(sheet(figures, part));
        }
        CalibrationFinding.of(document.setup().calibratedOn(), provenance.measuredOn()).ifPresent(findings::add);
        earlier.stream().filter(other -> isRepeat(provenance, other.provenance())).reduce((first, second) -> second)
                .flatMap(other -> RepeatFindings.drift(fit.curve(), other.document().impedance(), other.fileName())).ifPresent(findings::add);
        return findings;
    }

    /** A datasheet speaks of an unbiased part at room temperature. */
    private static boolean atSheetConditions(SweepProvenance provenance) {
        return provenance.biasV() == 0 && Math.abs(provenance.temperatureC() - Sweep.ROOM_C) <= Sweep.ROOM_SPAN_C;
    }

    private static List<Finding> sheet(List<SweepFigure> figures, PartDocument part) {
        SheetFindings findings = new SheetFindings();
        PartDocument.Tolerance tolerance = part.tolerancePercent();
        double least = tolerance == null ? 0 : part.capacitanceF() * (1 - tolerance.minusPercent() / 100);
        double most = tolerance == null ? Double.POSITIVE_INFINITY : part.capacitanceF() * (1 + tolerance.plusPercent() / 100);
        double testHz = PartModels.testFrequencyHz(part);
        figures.stream().filter(figure -> figure.unit().equals("F") && figure.value() != null)
                .filter(figure -> Math.abs(Math.log(figure.frequencyHz() / testHz)) < Math.log(CAPACITANCE_SLACK)).findFirst()
                .ifPresent(figure -> findings.capacitance(figure, least, most));
        for (LossFigure loss : part.losses()) {
            if (loss.kind() != LossFigure.Kind.ESR) {
                continue;
            }
            Optional<SweepFigure> same = figures.stream()
                    .filter(figure -> figure.name().startsWith("ESR at") && figure.value() != null)
                    .filter(figure -> Math.abs(Math.log(figure.frequencyHz() / loss.frequencyHz())) < Math.log(SHEET_FREQUENCY_SLACK)).findFirst();
            same.ifPresent(figure -> hold(findings, figure, loss));
        }
        if (part.selfResonanceHz() != null) {
            figures.stream().filter(figure -> figure.unit().equals("Hz") && figure.value() != null).findFirst()
                    .ifPresent(figure -> findings.typical(figure, part.selfResonanceHz()));
        }
        if (part.inductanceH() != null && part.inductanceH() > 0) {
            figures.stream().filter(figure -> figure.unit().equals("H") && figure.value() != null).findFirst()
                    .ifPresent(figure -> findings.typical(figure, part.inductanceH()));
        }
        return findings.findings();
    }

    private static void hold(SheetFindings findings, SweepFigure figure, LossFigure loss) {
        switch (loss.bound()) {
            case MAXIMUM -> findings.maximum(figure, loss.value());
            case TYPICAL -> findings.typical(figure, loss.value());
            case MINIMUM -> { }
        }
    }

    /** The same sample under the same conditions. */
    static boolean isRepeat(SweepProvenance one, SweepProvenance other) {
        return one.sample() != null && one.sample().equals(other.sample()) && one.biasV() == other.biasV()
                && Math.abs(one.temperatureC() - other.temperatureC()) <= SAME_TEMPERATURE_C;
    }
}
