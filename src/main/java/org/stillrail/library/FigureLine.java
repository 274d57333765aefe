package org.stillrail.library;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.stillrail.electrical.quality.SweepFigure;
import org.stillrail.web.Quantity;

/** A figure drawn from a sweep beside the datasheet's, in words. */
record FigureLine(String name, String measured, String uncertainty, String readAt, String datasheet) {

    static List<FigureLine> of(PartDocument part, List<SweepFigure> figures) {
        List<FigureLine> lines = new ArrayList<>();
        for (SweepFigure figure : figures) {
            lines.add(new FigureLine(figure.name(),
                    figure.value() == null ? "not in the sweep" : Quantity.format(figure.value(), figure.unit()),
                    uncertainty(figure),
                    figure.frequencyHz() == null ? "" : Quantity.format(figure.frequencyHz(), "Hz", 3),
                    SheetFigure.of(part, figure).orElse("\u2013")));
        }
        return lines;
    }

    private static String uncertainty(SweepFigure figure) {
        if (figure.value() == null || figure.uncertainty() == null) {
            return "";
        }
        return figure.known() ? "\u00b1" + Quantity.format(figure.uncertainty(), figure.unit(), 2) : "not known: the error is larger";
    }

    /** What the datasheet says about the same thing. */
    private static final class SheetFigure {

        private SheetFigure() {
        }

        static Optional<String> of(PartDocument part, SweepFigure figure) {
            return switch (figure.unit()) {
                case "F" -> Optional.of(Quantity.format(part.capacitanceF(), "F") + (part.tolerancePercent() == null ? ""
                        : " \u2212" + percent(part.tolerancePercent().minusPercent()) + " +" + percent(part.tolerancePercent().plusPercent())));
                case "H" -> Optional.ofNullable(part.inductanceH()).map(henry -> Quantity.format(henry, "H"));
                case "Hz" -> Optional.ofNullable(part.selfResonanceHz()).map(hz -> Quantity.format(hz, "Hz"));
                default -> part.losses().stream().filter(loss -> loss.kind() == LossFigure.Kind.ESR).findFirst()
                        .map(loss -> Quantity.format(loss.value(), "ohm") + " " + loss.bound().name().toLowerCase(Locale.ROOT) + " at "
                                + Quantity.format(loss.frequencyHz(), "Hz", 3));
            };
        }

        private static String percent(double percent) {
            return Quantity.format(percent, "%", 3);
        }
    }
}
