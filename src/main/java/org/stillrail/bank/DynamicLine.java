package org.stillrail.bank;

import java.util.Arrays;
import java.util.List;
import org.stillrail.electrical.evaluation.DynamicFigure;
import org.stillrail.electrical.evaluation.Evaluation;

/** A figure of loop, load step or damping as the page lists it. */
record DynamicLine(String name, String shown, String worst, String corner, String note) {

    /** @param equation anchor in the method's page */
    record Group(String label, String equation, List<DynamicLine> lines) {
    }

    /** Without groups that hold nothing. */
    static List<Group> of(Evaluation evaluation) {
        return Arrays.stream(DynamicFigure.Section.values()).map(section -> new Group(section.label(), section.equation(),
                evaluation.dynamics().stream().filter(figure -> figure.section() == section).map(DynamicLine::of).toList()))
                .filter(group -> !group.lines().isEmpty()).toList();
    }

    private static DynamicLine of(DynamicFigure figure) {
        return new DynamicLine(figure.name(), BankView.show(figure.shown(), figure.unit()), BankView.show(figure.worst(), figure.unit()),
                figure.corner() == null ? "" : figure.corner(), figure.note());
    }
}
