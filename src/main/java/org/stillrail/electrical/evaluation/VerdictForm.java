package org.stillrail.electrical.evaluation;

import java.util.List;
import org.stillrail.electrical.requirement.Bound;
import org.stillrail.electrical.requirement.Citation;
import org.stillrail.electrical.requirement.ExplainingSeries;
import org.stillrail.electrical.requirement.Outcome;
import org.stillrail.electrical.requirement.Requirement;
import org.stillrail.electrical.requirement.Span;
import org.stillrail.electrical.requirement.Verdict;
import org.stillrail.electrical.requirement.Verdict.Explanation;

/** What all verdicts on one requirement have in common, whatever they say. */
record VerdictForm(Requirement requirement, Bound bound, String unit, Citation citation, List<ExplainingSeries> series) {

    Verdict notAsked() {
        return bare(Outcome.NOT_ASKED, null, null, "The rail sets no such limit.");
    }

    Verdict notAsked(String why) {
        return bare(Outcome.NOT_ASKED, null, null, why);
    }

    Verdict notModelled(String why) {
        return bare(Outcome.NOT_MODELLED, null, null, why);
    }

    Verdict unknown(Double limit, String corner, String why) {
        return bare(Outcome.UNKNOWN, limit, corner, sentence(why));
    }

    /** Met whatever the limit, so that there is no margin. */
    Verdict metAnyway(String corner, String why) {
        return bare(Outcome.MET, null, corner, why);
    }

    /** Not met, without a value that could be set beside the limit. */
    Verdict notMet(Double limit, String corner, Integer branch, String why, Explanation explanation, Span span) {
        return new Verdict(requirement, Outcome.NOT_MET, bound, limit, null, unit, null, corner, branch, why, explanation, citation, span, series);
    }

    Verdict judged(double limit, double value, String corner, Integer branch, String sentence, Explanation explanation, Span span) {
        if (!Double.isFinite(value)) {
            return unknown(limit, corner, "The value cannot be computed: a resonance without loss stands in the way.");
        }
        double margin = bound.margin(limit, value);
        return new Verdict(requirement, margin >= 0 ? Outcome.MET : Outcome.NOT_MET, bound, limit, value, unit, margin, corner, branch,
                sentence, explanation, citation, span, series);
    }

    private Verdict bare(Outcome outcome, Double limit, String corner, String why) {
        return new Verdict(requirement, outcome, bound, limit, null, unit, null, corner, null, why, Explanation.NONE, citation, null, series);
    }

    private static String sentence(String words) {
        return words.endsWith(".") ? words : words + ".";
    }
}
