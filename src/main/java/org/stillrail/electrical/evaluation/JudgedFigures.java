package org.stillrail.electrical.evaluation;

import java.util.ArrayList;
import java.util.List;
import org.stillrail.electrical.requirement.Verdict;
import org.stillrail.electrical.spread.DrawnFigure;
import org.stillrail.electrical.spread.FurtherFigures;

/** Further figures with the limits of the verdicts on them; subclasses fill the lists as they are made. */
abstract class JudgedFigures implements FurtherFigures {

    final List<DrawnFigure> figures = new ArrayList<>();
    final List<LimitSpread> limits = new ArrayList<>();
    private final List<String> unknown = new ArrayList<>();

    /** Says why there is no verdict. */
    final void addUnknown(Verdict verdict) {
        unknown.add(verdict.sentence().endsWith(".") ? verdict.sentence() : verdict.sentence() + ".");
    }

    @Override
    public final List<DrawnFigure> figures() {
        return List.copyOf(figures);
    }

    final List<LimitSpread> limits() {
        return List.copyOf(limits);
    }

    /** What cannot be judged, and why, in sentences. */
    final List<String> unknown() {
        return List.copyOf(unknown);
    }
}
