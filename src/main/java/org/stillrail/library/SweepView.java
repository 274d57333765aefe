package org.stillrail.library;

import java.util.List;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.quality.Finding;
import org.stillrail.electrical.quality.SweepFigure;

/** What a page says of a sweep, stored or only read. */
record SweepView(
        List<Finding> findings, List<FigureLine> figures, List<String> trust, List<String> fit, List<PartCharts.PartChart> charts,
        String problem) {

    /**
     * @param earlier sweeps of the part from before this one
     * @param sheet   the datasheet's model on a grid of its own
     */
    static SweepView of(SweepFit fit, SweepDocument document, PartDocument part, List<Sweep> earlier, Curve sheet) {
        Trust trust = Trust.of(document, fit.curve());
        List<SweepFigure> figures = SweepFindings.figures(fit, part, trust);
        List<Finding> findings = SweepFindings.of(fit, figures, document, part, earlier);
        return new SweepView(findings, FigureLine.of(part, figures), trust.words(), fit.words(),
                SweepCharts.of(part, fit, trust, sheet, findings), fit.problem());
    }
}
