package org.stillrail.library;

import java.util.List;
import org.stillrail.web.Form;
import org.stillrail.web.FormShape;

/** Which figures of a part stand or fall together, and how its choices read. */
final class PartShape implements FormShape<PartDocument> {

    /** Beginnings of the names of fields that belong together: a figure with the conditions that it holds at. */
    private static final List<String> GROUPS = List.of("loss", "rippleOverFrequency", "rippleOverTemperature", "ripple", "endurance", "datasheet",
            "esrOverTemperature", "endOfLife");

    @Override
    public Form fill(PartDocument document) {
        return PartForm.fill(document);
    }

    @Override
    public PartDocument read(Form form) {
        return PartForm.read(form);
    }

    @Override
    public String group(String field) {
        return switch (field) {
            case "selfResonance" -> "inductance";
            case "refereeHours" -> "ageing";
            default -> GROUPS.stream().filter(field::startsWith).findFirst().orElse(field);
        };
    }

    @Override
    public String words(String field, String value) {
        if (field.equals("technology")) {
            return PartForm.technologies().getOrDefault(value, value);
        }
        if (field.equals("lifeOverVoltage")) {
            return PartForm.livesOverVoltage().getOrDefault(value, value);
        }
        if (field.startsWith("loss")) {
            return LossForm.kinds().getOrDefault(value, LossForm.bounds().getOrDefault(value, value));
        }
        return value;
    }
}
