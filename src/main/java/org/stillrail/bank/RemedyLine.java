package org.stillrail.bank;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.stillrail.electrical.evaluation.Evaluation;
import org.stillrail.electrical.evaluation.Remedy;
import org.stillrail.electrical.evaluation.VerdictChange;

/**
 * One small change that can be tried in place.
 *
 * @param branch index in the bank
 * @param count  parts in that branch then
 * @param mends  requirements that it turns to met, in words
 * @param breaks requirements that it turns away from met, in words
 */
record RemedyLine(int branch, int count, String sentence, String mends, String breaks) {

    /** Those that turn a verdict, the menders first. */
    static List<RemedyLine> of(Evaluation evaluation) {
        return evaluation.remedies().stream()
                .filter(remedy -> !remedy.turned().isEmpty())
                .map(RemedyLine::of)
                .sorted(Comparator.comparing(line -> line.mends().isEmpty()))
                .toList();
    }

    private static RemedyLine of(Remedy remedy) {
        return new RemedyLine(remedy.branch(), remedy.count(), remedy.sentence(), names(remedy.mended()), names(remedy.broken()));
    }

    private static String names(List<VerdictChange> changes) {
        return changes.stream().map(change -> change.requirement().label().toLowerCase(Locale.ROOT)).collect(Collectors.joining(", "));
    }
}
