package org.stillrail.electrical.quality;

import java.util.ArrayList;
import java.util.List;

/** Whether a sweep agrees with the datasheet: the capacitance within its tolerance, the resistance on the right side of its bound. */
public final class SheetFindings {

    /** A typical figure is met within a factor. Common practice, no source. */
    private static final double TYPICAL_FACTOR = 2;

    private final List<Finding> findings = new ArrayList<>();

    /**
     * Notes a capacitance out of its tolerance.
     *
     * @param measured     with its uncertainty, which is given to the part
     * @param leastF and {@code mostF} the datasheet's band
     */
    public SheetFindings capacitance(SweepFigure measured, double leastF, double mostF) {
        if (measured.known()) {
            double slack = measured.uncertainty() == null ? 0 : measured.uncertainty();
            if (measured.value() + slack < leastF || measured.value() - slack > mostF) {
                boolean low = measured.value() < leastF;
                add(measured, "is " + Words.percent(100 * Math.abs(measured.value() / (low ? leastF : mostF) - 1))
                        + (low ? " below the least" : " above the most") + " that the datasheet's tolerance allows");
            }
        }
        return this;
    }

    /** Notes a figure above a datasheet's maximum. */
    public SheetFindings maximum(SweepFigure measured, double most) {
        if (measured.known() && measured.value() - slack(measured) > most) {
            add(measured, "is " + Words.percent(100 * measured.value() / most) + " of the datasheet's maximum");
        }
        return this;
    }

    /** Notes a figure off a typical one by more than a factor of two either way. */
    public SheetFindings typical(SweepFigure measured, double typical) {
        boolean high = measured.known() && measured.value() - slack(measured) > TYPICAL_FACTOR * typical;
        boolean low = measured.known() && measured.value() + slack(measured) < typical / TYPICAL_FACTOR;
        if (high || low) {
            add(measured, "is " + Words.percent(100 * measured.value() / typical) + " of the datasheet's typical figure");
        }
        return this;
    }

    public List<Finding> findings() {
        return List.copyOf(findings);
    }

    private static double slack(SweepFigure measured) {
        return measured.uncertainty() == null ? 0 : measured.uncertainty();
    }

    private void add(SweepFigure figure, String text) {
        findings.add(new Finding(FindingKind.DATASHEET, "The measured " + figure.name() + " " + text + ".",
                List.of(new FrequencySpan(figure.frequencyHz(), figure.frequencyHz()))));
    }
}
