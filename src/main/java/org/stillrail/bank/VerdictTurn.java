package org.stillrail.bank;

import java.util.ArrayList;
import java.util.List;
import org.stillrail.electrical.evaluation.Evaluation;
import org.stillrail.electrical.requirement.Outcome;
import org.stillrail.electrical.requirement.Verdict;

/**
 * One requirement under two evaluations.
 *
 * @param before outcome with its value, for example 'met, 18 mV'
 * @param turned whether the outcome is another one
 */
record VerdictTurn(String requirement, String before, String beforeCss, String after, String afterCss, boolean turned) {

    /** Relative; smaller changes are last digits. */
    private static final double SAME = 1e-6;

    /** Requirements whose outcome or value differs, those that turned first. */
    static List<VerdictTurn> between(Evaluation before, Evaluation after) {
        List<VerdictTurn> turns = new ArrayList<>();
        for (Verdict now : after.verdicts()) {
            Verdict old = before.verdict(now.requirement());
            boolean asked = old.outcome() != Outcome.NOT_ASKED || now.outcome() != Outcome.NOT_ASKED;
            if (asked && (old.outcome() != now.outcome() || !same(old.value(), now.value()))) {
                turns.add(of(old, now));
            }
        }
        turns.sort((a, b) -> Boolean.compare(b.turned, a.turned));
        return List.copyOf(turns);
    }

    private static VerdictTurn of(Verdict old, Verdict now) {
        return new VerdictTurn(now.requirement().label(), words(old), css(old), words(now), css(now), old.outcome() != now.outcome());
    }

    static String words(Verdict verdict) {
        return verdict.outcome().label() + (verdict.value() == null ? "" : ", " + BankView.show(verdict.value(), verdict.unit()));
    }

    static String css(Verdict verdict) {
        return verdict.outcome().label().replace(' ', '-');
    }

    private static boolean same(Double a, Double b) {
        if (a == null || b == null) {
            return a == null && b == null;
        }
        return Math.abs(a - b) <= SAME * Math.max(Math.abs(a), Math.abs(b));
    }
}
