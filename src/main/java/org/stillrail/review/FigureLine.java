package org.stillrail.review;

import java.util.ArrayList;
import java.util.List;
import org.stillrail.electrical.evaluation.EvaluationFigures;
import org.stillrail.electrical.evaluation.Reading;
import org.stillrail.web.Quantity;

/** One figure of a snapshot for its page. */
record FigureLine(String name, String value) {

    /** Those that the evaluation has, without the verdicts. */
    static List<FigureLine> of(EvaluationFigures figures) {
        List<FigureLine> lines = new ArrayList<>();
        add(lines, "Crossover", figures.crossoverHz(), "Hz");
        add(lines, "Phase margin", figures.phaseMarginDeg(), "deg");
        add(lines, "Gain margin", figures.gainMarginDb(), "dB");
        add(lines, "Sensitivity peak", figures.sensitivityPeak(), "");
        reading(lines, "crossover", figures.atCrossover());
        reading(lines, "switching frequency", figures.atSwitching());
        add(lines, "Ripple, peak to peak", figures.ripplePeakToPeakV(), "V");
        add(lines, "Ripple, rms", figures.rippleRmsV(), "V");
        add(lines, "Undershoot", figures.undershootV(), "V");
        add(lines, "Overshoot", figures.overshootV(), "V");
        return lines;
    }

    private static void reading(List<FigureLine> lines, String where, Reading reading) {
        add(lines, "|Z| at the " + where, reading.magnitudeOhm(), "ohm");
        add(lines, "ESR at the " + where, reading.resistanceOhm(), "ohm");
    }

    private static void add(List<FigureLine> lines, String name, Double value, String unit) {
        if (value != null) {
            lines.add(new FigureLine(name, Quantity.format(value, unit)));
        }
    }
}
