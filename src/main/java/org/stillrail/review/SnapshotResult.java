package org.stillrail.review;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.stillrail.electrical.evaluation.Evaluation;
import org.stillrail.electrical.evaluation.Reading;
import org.stillrail.electrical.requirement.Outcome;
import org.stillrail.electrical.requirement.Requirement;
import org.stillrail.electrical.requirement.Verdict;
import org.stillrail.electrical.ripple.BranchRipple;
import org.stillrail.web.Quantity;

/**
 * What an evaluation gave, in the figures that a reviewer reads.
 *
 * @param claim    fit or not, in a sentence
 * @param verdicts worst first
 */
record SnapshotResult(String claim, List<Judged> verdicts, List<Figure> figures) {

    /**
     * Largest relative difference between a stored figure and the same one computed again that counts as the same. Mathematical
     * functions of two Java releases differ in their last digits; integrating a load step makes some 1e-9 of that.
     */
    static final double TOLERANCE = 1e-6;

    private static final int DIGITS = 9;

    SnapshotResult {
        verdicts = List.copyOf(verdicts);
        figures = List.copyOf(figures);
    }

    /** A verdict's figures; null where it has none. */
    record Judged(
            Requirement requirement, Outcome outcome, Double limit, Double value, String unit, Double margin, String corner, String sentence) {

        static Judged of(Verdict verdict) {
            return new Judged(verdict.requirement(), verdict.outcome(), verdict.limit(), verdict.value(), verdict.unit(), verdict.margin(),
                    verdict.corner(), verdict.sentence());
        }
    }

    /** @param unit SI symbol */
    record Figure(String name, double value, String unit) {
    }

    /**
     * A figure or an outcome that came out otherwise.
     *
     * @param stored null where it was not there then
     * @param now    null where it is not there now
     */
    record Difference(String name, Object stored, Object now, String unit) {

        /** Enough digits to see the difference. */
        public String show(Object value) {
            return value == null ? "none" : value instanceof Double number ? Quantity.format(number, unit, DIGITS) : value.toString();
        }
    }

    static SnapshotResult of(Evaluation evaluation) {
        List<Figure> figures = new ArrayList<>();
        add(figures, "crossover", evaluation.atCrossover());
        add(figures, "switching frequency", evaluation.atSwitching());
        if (evaluation.ripple() != null) {
            figures.add(new Figure("ripple, peak to peak", evaluation.ripple().peakToPeakV(), "V"));
            for (BranchRipple branch : evaluation.ripple().branches()) {
                figures.add(new Figure("ripple current of each part of '" + branch.label() + "'", branch.perPartRmsA(), "A"));
                figures.add(new Figure("heat in each part of '" + branch.label() + "'", branch.perPartDissipationW(), "W"));
            }
        }
        if (evaluation.steps() != null) {
            figures.add(new Figure("undershoot", evaluation.steps().undershootV(), "V"));
            figures.add(new Figure("overshoot", evaluation.steps().overshootV(), "V"));
        }
        return new SnapshotResult(evaluation.claim().sentence(), evaluation.verdicts().stream().map(Judged::of).toList(), figures);
    }

    private static void add(List<Figure> figures, String where, Reading reading) {
        figures.add(new Figure(where, reading.frequencyHz(), "Hz"));
        figures.add(new Figure("|Z| at the " + where, reading.magnitudeOhm(), "ohm"));
        figures.add(new Figure("ESR at the " + where, reading.resistanceOhm(), "ohm"));
    }

    /** Figures and verdicts in which another result differs from this one by more than {@link #TOLERANCE}. */
    List<Difference> differences(SnapshotResult other) {
        List<Difference> differences = new ArrayList<>();
        Map<String, Figure> mine = byName(this);
        Map<String, Figure> others = byName(other);
        mine.forEach((name, figure) -> compare(name, figure.value(), value(others.get(name)), figure.unit(), differences));
        others.forEach((name, figure) -> {
            if (!mine.containsKey(name)) {
                differences.add(new Difference(name, null, figure.value(), figure.unit()));
            }
        });
        for (Requirement requirement : Requirement.values()) {
            compare(requirement, judged(requirement), other.judged(requirement), differences);
        }
        return differences;
    }

    private static void compare(Requirement requirement, Judged stored, Judged now, List<Difference> differences) {
        Outcome outcomeThen = stored == null ? null : stored.outcome();
        Outcome outcomeNow = now == null ? null : now.outcome();
        if (outcomeThen != outcomeNow) {
            differences.add(new Difference("verdict on " + requirement.label(), label(outcomeThen), label(outcomeNow), ""));
        }
        if (stored != null && now != null) {
            compare("value of " + requirement.label(), stored.value(), now.value(), stored.unit(), differences);
            compare("limit of " + requirement.label(), stored.limit(), now.limit(), stored.unit(), differences);
        }
    }

    private static String label(Outcome outcome) {
        return outcome == null ? null : outcome.label();
    }

    private static void compare(String name, Double stored, Double now, String unit, List<Difference> differences) {
        boolean same = stored == null || now == null ? Objects.equals(stored, now)
                : Math.abs(stored - now) <= TOLERANCE * Math.max(Math.abs(stored), Math.abs(now)) || stored.equals(now);
        if (!same) {
            differences.add(new Difference(name, stored, now, unit));
        }
    }

    private Judged judged(Requirement requirement) {
        return verdicts.stream().filter(each -> each.requirement() == requirement).findFirst().orElse(null);
    }

    private static Double value(Figure figure) {
        return figure == null ? null : figure.value();
    }

    /** Two branches may have one label: the second's figures get a number. */
    private static Map<String, Figure> byName(SnapshotResult result) {
        Map<String, Figure> figures = new LinkedHashMap<>();
        for (Figure figure : result.figures()) {
            String name = figure.name();
            for (int again = 2; figures.containsKey(name); again++) {
                name = figure.name() + " (" + again + ")";
            }
            figures.put(name, figure);
        }
        return figures;
    }
}
