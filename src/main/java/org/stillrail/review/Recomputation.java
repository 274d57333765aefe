package org.stillrail.review;

import java.util.List;
import org.stillrail.electrical.evaluation.Evaluation;
import org.stillrail.electrical.evaluation.EvaluationInput;
import org.stillrail.electrical.evaluation.EvaluationRefusedException;

/**
 * A stored input evaluated again, beside the result that was stored with it.
 *
 * @param differences     beyond {@link SnapshotResult#TOLERANCE}; empty where all is the same
 * @param storedMethod    version of the method then
 * @param presentMethod   version of the method now
 * @param refused         why the input is refused today, or null
 */
record Recomputation(List<SnapshotResult.Difference> differences, int storedMethod, int presentMethod, String refused) {

    static Recomputation of(SnapshotDocument document) {
        int stored = document.input().methodVersion();
        try {
            SnapshotResult now = SnapshotResult.of(Evaluation.evaluate(document.input()));
            return new Recomputation(document.result().differences(now), stored, EvaluationInput.METHOD_VERSION, null);
        } catch (EvaluationRefusedException e) {
            return new Recomputation(List.of(), stored, EvaluationInput.METHOD_VERSION, e.getMessage());
        }
    }

    public boolean same() {
        return refused == null && differences.isEmpty();
    }

    public boolean otherMethod() {
        return storedMethod != presentMethod;
    }

    public double tolerance() {
        return SnapshotResult.TOLERANCE;
    }
}
