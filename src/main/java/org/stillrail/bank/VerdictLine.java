package org.stillrail.bank;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.stillrail.electrical.evaluation.Evaluation;
import org.stillrail.electrical.requirement.ExplainingSeries;
import org.stillrail.electrical.requirement.Outcome;
import org.stillrail.electrical.requirement.Verdict;
import org.stillrail.web.Quantity;

/**
 * One verdict as the page lists it, with what its button points at.
 *
 * @param css      the outcome as a style name
 * @param why      what happens, which branch does it, what would change it
 * @param series   keys of the curves that explain it, separated by blanks
 * @param charts   ids of the charts that they stand in, separated by blanks
 * @param places   what else on the page explains it
 * @param fromHz   with {@code toHz}: the span that explains it, or null
 * @param equation anchor in the method's page
 */
record VerdictLine(
        String id, String label, String outcome, String css, String limit, String value, String margin, String corner, String sentence,
        List<String> why, String source, String series, String charts, List<Place> places, Double fromHz, Double toHz, String equation) {

    /** @param href of the place on the page */
    record Place(String href, String label) {
    }

    /** Worst first; what the rail does not ask is left out. */
    static List<VerdictLine> of(Evaluation evaluation) {
        return evaluation.verdicts().stream()
                .filter(verdict -> verdict.outcome() != Outcome.NOT_ASKED)
                .map(verdict -> of(verdict, evaluation))
                .toList();
    }

    private static VerdictLine of(Verdict verdict, Evaluation evaluation) {
        List<String> why = List.of(
                verdict.explanation().whatHappens(), verdict.explanation().whichBranch(), verdict.explanation().whatWouldChange()).stream()
                .filter(sentence -> sentence != null && !sentence.isBlank())
                .toList();
        return new VerdictLine(verdict.requirement().id(), verdict.requirement().label(), verdict.outcome().label(),
                VerdictTurn.css(verdict),
                BankView.show(verdict.limit(), verdict.unit()), BankView.show(verdict.value(), verdict.unit()),
                verdict.margin() == null ? "\u2013" : Quantity.format(100 * verdict.margin(), "%", 3),
                corner(verdict, evaluation.corners().size()),
                verdict.sentence(), why, verdict.citation() == null ? "" : verdict.citation().toString(),
                joined(verdict.series(), VerdictLine::key), joined(verdict.series(), VerdictLine::chart),
                places(verdict, evaluation.window() != null),
                verdict.span() == null ? null : verdict.span().fromHz(), verdict.span() == null ? null : verdict.span().toHz(),
                verdict.equation());
    }

    /** Most sentences name their corner themselves. */
    private static String corner(Verdict verdict, int corners) {
        if (verdict.corner() == null) {
            return "";
        }
        if (!verdict.sentence().contains(verdict.corner())) {
            return "Corner: " + verdict.corner() + (corners > 1 ? ", worst of " + corners + " corners." : ".");
        }
        return corners > 1 ? "Worst of " + corners + " corners." : "";
    }

    private static List<Place> places(Verdict verdict, boolean windowed) {
        List<Place> places = new ArrayList<>();
        Integer branch = verdict.branch();
        for (ExplainingSeries each : verdict.series()) {
            switch (each) {
                case VOLTAGE_RULER -> {
                    if (windowed) {
                        places.add(new Place("#ruler", "See the voltage window"));
                    }
                }
                case STRESS_TABLE -> places.add(new Place(branch == null ? "#stress" : "#stress-" + branch, "See it in the stress table"));
                case BRANCH_CARDS -> places.add(new Place(branch == null ? "#cards" : "#card-" + branch, branch == null ? "See the branches" : "See its branch"));
                default -> {
                    // A curve: the button points at it.
                }
            }
        }
        return places;
    }

    private static String joined(List<ExplainingSeries> series, Function<ExplainingSeries, String> word) {
        return series.stream().map(word).filter(each -> !each.isEmpty()).distinct().collect(Collectors.joining(" "));
    }

    private static String key(ExplainingSeries series) {
        return switch (series) {
            case BANK_IMPEDANCE, BANK_ESR -> "bank";
            case QUIET_LIMIT -> "quiet-limit";
            case RIPPLE -> "ripple";
            case SENSITIVITY -> "sensitivity";
            case LOOP_GAIN -> "gain";
            case STEP -> "step";
            case RELEASE -> "release";
            case BANK_ALONE -> "step-alone";
            case WORST_LOAD -> "pattern";
            case VOLTAGE_RULER, STRESS_TABLE, BRANCH_CARDS -> "";
        };
    }

    private static String chart(ExplainingSeries series) {
        return switch (series) {
            case BANK_IMPEDANCE, QUIET_LIMIT -> "impedance";
            case BANK_ESR -> "esr";
            case RIPPLE -> "ripple";
            case SENSITIVITY -> "sensitivity";
            case LOOP_GAIN -> "gain phase";
            case STEP, RELEASE, BANK_ALONE -> "step";
            case WORST_LOAD -> "pattern under-pattern";
            case VOLTAGE_RULER, STRESS_TABLE, BRANCH_CARDS -> "";
        };
    }
}
