package org.stillrail.library;

import java.util.List;
import java.util.UUID;
import org.stillrail.web.Form;

/** From the fields under 'Model for banks' to a choice. */
final class ModelChoiceForm {

    static final String FIT = "fit:";

    private ModelChoiceForm() {
    }

    /**
     * The field {@code model} is {@code datasheet}, {@code average}, a sweep's id, or {@code fit:} and one.
     *
     * @param averaged ids of the sweeps that are ticked
     * @return null where anything is wrong; the form then says what
     */
    static ModelChoice read(Form form, List<String> averaged) {
        String reason = form.text("modelReason", "The reason", true);
        ModelChoice choice = form.read("model", "Model", true, text -> switch (text) {
            case "datasheet" -> new ModelChoice(ModelChoice.Kind.DATASHEET, null, reason);
            case "average" -> average(averaged, reason);
            default -> text.startsWith(FIT)
                    ? new ModelChoice(ModelChoice.Kind.FIT, id(text.substring(FIT.length())), reason)
                    : new ModelChoice(ModelChoice.Kind.SWEEP, id(text), reason);
        });
        return form.errors().none() ? choice : null;
    }

    private static ModelChoice average(List<String> averaged, String reason) {
        if (averaged.isEmpty()) {
            throw new IllegalArgumentException("Tick the sweeps that are averaged");
        }
        return ModelChoice.average(averaged.stream().map(ModelChoiceForm::id).distinct().toList(), reason);
    }

    private static UUID id(String text) {
        try {
            return UUID.fromString(text);
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException("This part has no such sweep", e);
        }
    }
}
