package org.stillrail.bank;

import java.util.List;
import org.stillrail.electrical.evaluation.DynamicFigure;
import org.stillrail.electrical.evaluation.Evaluation;

/** A figure of loop, load step or damping as the page lists it. */
record DynamicLine(String name, String shown, String worst, String corner, String note) {

    static List<DynamicLine> of(Evaluation evaluation) {
        return evaluation.dynamics().stream().map(DynamicLine::of).toList();
    }

    private static DynamicLine of(DynamicFigure figure) {
        return new DynamicLine(figure.name(), BankView.show(figure.shown(), figure.unit()), BankView.show(figure.worst(), figure.unit()),
                figure.corner() == null ? "" : figure.corner(), figure.note());
    }
}
