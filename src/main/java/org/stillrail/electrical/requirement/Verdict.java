package org.stillrail.electrical.requirement;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;

/**
 * A limit of a rail and how a bank stands to it. Numbers are null where there are none.
 *
 * @param bound       on which side of the limit the value must stay
 * @param unit        SI symbol, empty for a ratio
 * @param margin      {@link Bound#margin}: positive where the limit is kept
 * @param corner      name of the corner that gives the least margin, null where no corner matters
 * @param branch      index of the branch that sets it, null where none does
 * @param sentence    the verdict in one sentence, naming the branch that sets it
 * @param explanation three short sentences for whoever asks why
 * @param citation    where the limit comes from
 * @param span        the frequencies that explain it, or null
 * @param series      the curves, bars and tables that explain it
 */
public record Verdict(
        Requirement requirement,
        Outcome outcome,
        Bound bound,
        Double limit,
        Double value,
        String unit,
        Double margin,
        String corner,
        Integer branch,
        String sentence,
        Explanation explanation,
        Citation citation,
        Span span,
        List<ExplainingSeries> series) {

    /** Not met before unknown before met, then the least margin first. Without a margin, a failure comes first and a success last. */
    public static final Comparator<Verdict> WORST_FIRST = Comparator.comparing(Verdict::outcome)
            .thenComparing(Verdict::sortingMargin)
            .thenComparing(Verdict::requirement);

    /** What happens, which branch does it, what would change it. */
    public record Explanation(String whatHappens, String whichBranch, String whatWouldChange) {

        public static final Explanation NONE = new Explanation("", "", "");
    }

    public Verdict {
        Objects.requireNonNull(requirement, "requirement");
        Objects.requireNonNull(outcome, "outcome");
        series = List.copyOf(series);
    }

    /** Heading of its equations in docs/method.md. */
    public String equation() {
        return requirement.equation();
    }

    public boolean met() {
        return outcome == Outcome.MET;
    }

    private double sortingMargin() {
        if (margin != null) {
            return margin;
        }
        return outcome.needsConcession() ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
    }

    public Verdict withWhatWouldChange(String whatWouldChange) {
        return new Verdict(requirement, outcome, bound, limit, value, unit, margin, corner, branch, sentence,
                new Explanation(explanation.whatHappens(), explanation.whichBranch(), whatWouldChange), citation, span, series);
    }

    public Verdict withCorner(String newCorner) {
        return new Verdict(requirement, outcome, bound, limit, value, unit, margin, newCorner, branch, sentence, explanation, citation, span, series);
    }
}
