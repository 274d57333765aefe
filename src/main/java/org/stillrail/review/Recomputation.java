package org.stillrail.review;

import java.util.List;
import org.stillrail.electrical.evaluation.Evaluation;
import org.stillrail.electrical.evaluation.EvaluationFigures;
import org.stillrail.electrical.evaluation.EvaluationInput;
import org.stillrail.electrical.evaluation.EvaluationRefusedException;
import org.stillrail.electrical.evaluation.FigureComparison;

/**
 * A stored input evaluated again, beside the figures that were stored with it.
 *
 * @param differences   beyond {@link FigureComparison#TOLERANCE}; empty where all is the same
 * @param storedMethod  version of the method then
 * @param presentMethod version of the method now
 * @param refused       why the input is refused today, or null
 */
record Recomputation(List<FigureComparison.Difference> differences, int storedMethod, int presentMethod, String refused) {

    static Recomputation of(SnapshotDocument document) {
        int stored = document.input().methodVersion();
        try {
            EvaluationFigures now = EvaluationFigures.of(Evaluation.evaluate(document.input()));
            return new Recomputation(FigureComparison.compare(document.result(), now, FigureComparison.TOLERANCE), stored,
                    EvaluationInput.METHOD_VERSION, null);
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

    /** For the page. */
    public String tolerance() {
        return "a millionth (" + FigureComparison.TOLERANCE + ")";
    }
}
