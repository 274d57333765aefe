package org.stillrail.project;

import java.util.ArrayList;
import java.util.List;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.web.Quantity;

/**
 * The four figures by which rails resemble each other.
 *
 * @param loadStepA null where no load step is asked
 */
public record RailTraits(double voltageV, double currentA, double switchingHz, Double loadStepA) {

    /** In octaves; what a candidate without a load step is short of one that is asked. */
    private static final double WITHOUT_STEP = 1;

    /** Ratios nearer to 1 than this read as equal. */
    private static final double EQUAL = 0.005;

    public static RailTraits of(RailFigures rail) {
        return new RailTraits(rail.nominalVoltageV(), rail.nominalCurrentA(), rail.converter().switchingHz(),
                rail.loadStep() == null ? null : (Double) Math.abs(rail.loadStep().toA() - rail.loadStep().fromA()));
    }

    /**
     * How far another rail is from this one, in octaves: {@code d = sqrt(sum of log2(other / this)^2)} over output voltage, load
     * current, switching frequency and size of the load step. 0 is the same rail, 1 is twice or half in one figure. A load step
     * that this one does not ask leaves its term out; one that only the other lacks counts as an octave. A rule of our own, as
     * impedances and ripple scale with ratios of these figures.
     *
     * @return 0 or above; infinite where a figure of only one of them is 0
     */
    public double distanceTo(RailTraits other) {
        double sum = square(octaves(voltageV, other.voltageV)) + square(octaves(currentA, other.currentA))
                + square(octaves(switchingHz, other.switchingHz));
        if (loadStepA != null) {
            sum += square(other.loadStepA == null ? WITHOUT_STEP : octaves(loadStepA, other.loadStepA));
        }
        return Math.sqrt(sum);
    }

    /** What is different there, a phrase for each figure; empty where all are the same. */
    public List<String> differencesTo(RailTraits other) {
        List<String> phrases = new ArrayList<>();
        phrase(phrases, "output", voltageV, other.voltageV, "V");
        phrase(phrases, "load", currentA, other.currentA, "A");
        phrase(phrases, "switching at", switchingHz, other.switchingHz, "Hz");
        if (loadStepA != null && other.loadStepA != null) {
            phrase(phrases, "load step", loadStepA, other.loadStepA, "A");
        } else if (loadStepA != null) {
            phrases.add("no load step was asked there");
        } else if (other.loadStepA != null) {
            phrases.add("a load step of " + Quantity.format(other.loadStepA, "A") + " was asked there");
        }
        return phrases;
    }

    private static void phrase(List<String> phrases, String name, double here, double there, String unit) {
        double ratio = there / here;
        if (Math.abs(ratio - 1) < EQUAL || here == there) {
            return;
        }
        String factor = ratio > 1 ? Quantity.format(ratio, "", 2) + " times as much" : Quantity.format(100 * ratio, "%", 2);
        phrases.add(name + " " + Quantity.format(there, unit) + " instead of " + Quantity.format(here, unit)
                + (Double.isFinite(ratio) ? " (" + factor + ")" : ""));
    }

    private static double octaves(double here, double there) {
        return here == there ? 0 : Math.log(there / here) / Math.log(2);
    }

    private static double square(double x) {
        return x * x;
    }
}
