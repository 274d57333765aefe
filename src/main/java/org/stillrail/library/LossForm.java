package org.stillrail.library;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.stillrail.web.Form;
import org.stillrail.web.Quantity;

/** The loss figures of the part form: a row each, with kind, value, frequency and bound; a row without a value is not used. */
final class LossForm {

    static final int MOST_ROWS = 24;
    private static final int BLANK_ROWS = 2;
    private static final int FEWEST_ROWS = 3;

    private LossForm() {
    }

    static List<LossFigure> read(Form form) {
        List<LossFigure> losses = new ArrayList<>();
        for (int i = 0; i < MOST_ROWS; i++) {
            String row = "loss" + i;
            String label = "Loss figure " + (i + 1);
            boolean given = !form.isBlank(row + "Value");
            LossFigure.Kind kind = form.read(row + "Kind", label + ", kind", given, text -> choice(LossFigure.Kind.class, text));
            Double value = form.positive(row + "Value", label, kind == LossFigure.Kind.LOSS_TANGENT ? "" : "ohm", false);
            Double frequencyHz = form.positive(row + "Frequency", label + ", frequency", "Hz", given);
            LossFigure.Bound bound = form.read(row + "Bound", label + ", bound", given, text -> choice(LossFigure.Bound.class, text));
            if (!given && frequencyHz != null) {
                form.errors().add(row + "Value", label + " is missing for the frequency given");
            }
            if (kind != null && value != null && frequencyHz != null && bound != null) {
                losses.add(new LossFigure(kind, value, frequencyHz, bound));
            }
        }
        return losses;
    }

    static void fill(Form form, List<LossFigure> losses) {
        for (int i = 0; i < losses.size(); i++) {
            LossFigure loss = losses.get(i);
            form.with("loss" + i + "Kind", loss.kind().name())
                    .with("loss" + i + "Value", Quantity.entry(loss.value(), loss.kind() == LossFigure.Kind.ESR ? "ohm" : ""))
                    .with("loss" + i + "Frequency", Quantity.entry(loss.frequencyHz(), "Hz"))
                    .with("loss" + i + "Bound", loss.bound().name());
        }
    }

    /** Rows to show: those in use and a few blank ones. */
    static List<Integer> rows(Form form) {
        int used = (int) IntStream.range(0, MOST_ROWS).filter(i -> !form.isBlank("loss" + i + "Value")).count();
        return IntStream.range(0, Math.min(MOST_ROWS, Math.max(FEWEST_ROWS, used + BLANK_ROWS))).boxed().toList();
    }

    static Map<String, String> kinds() {
        Map<String, String> choices = new LinkedHashMap<>();
        choices.put("ESR", "ESR (\u03a9)");
        choices.put("LOSS_TANGENT", "loss tangent");
        return choices;
    }

    static Map<String, String> bounds() {
        Map<String, String> choices = new LinkedHashMap<>();
        choices.put("MAXIMUM", "maximum");
        choices.put("TYPICAL", "typical");
        choices.put("MINIMUM", "minimum");
        return choices;
    }

    private static <E extends Enum<E>> E choice(Class<E> type, String text) {
        try {
            return Enum.valueOf(type, text);
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException("Choose one of the list", e);
        }
    }
}
