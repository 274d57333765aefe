package org.stillrail.library;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.stillrail.electrical.capacitor.Band;
import org.stillrail.electrical.capacitor.BentPart;
import org.stillrail.electrical.capacitor.OperatingPoint;
import org.stillrail.electrical.capacitor.PlaceInBand;
import org.stillrail.web.Form;
import org.stillrail.web.Quantity;

/**
 * A part at an operating point that somebody asked for on its page.
 *
 * @param old whether the drift to the end of life has happened
 */
record PartAtPoint(OperatingPoint point, boolean old, BentPart bent) {

    /** As many as a page draws at once; their fields begin with {@code at}, {@code at2}, {@code at3}. */
    static final List<String> PREFIXES = List.of("at", "at2", "at3");

    private static final String END_OF_LIFE = "end";

    /** Those whose bias is given; empty where a field is wrong, which the form then says. */
    static List<PartAtPoint> readAll(Form form, PartModel model) {
        List<PartAtPoint> points = new ArrayList<>();
        for (String prefix : PREFIXES) {
            if (!form.isBlank(prefix + "Bias") || !form.isBlank(prefix + "Temperature")) {
                points.add(read(form, prefix, model));
            }
        }
        return form.errors().none() ? points : List.of();
    }

    /** Null where a field is wrong; the form then says which. */
    static PartAtPoint read(Form form, String prefix, PartModel model) {
        Double biasV = form.quantity(prefix + "Bias", "Bias", "V", true);
        Double temperatureC = form.quantity(prefix + "Temperature", "Temperature", "degC", true);
        Double ageHours = form.positive(prefix + "Age", "Age", "h", false);
        boolean old = END_OF_LIFE.equals(form.get(prefix + "Life"));
        if (!form.errors().none()) {
            return null;
        }
        OperatingPoint point = new OperatingPoint(biasV, temperatureC, ageHours);
        try {
            return new PartAtPoint(point, old, model.at(point, new PlaceInBand(null, 1, Band.Bound.TYPICAL, old)));
        } catch (IllegalArgumentException e) {
            form.errors().add(prefix + "Bias", e.getMessage());
            return null;
        }
    }

    /** Choices for the part's life. */
    static Map<String, String> lives() {
        Map<String, String> choices = new LinkedHashMap<>();
        choices.put("", "new");
        choices.put(END_OF_LIFE, "end of life");
        return choices;
    }

    public String label() {
        return "at " + Quantity.format(point.biasV(), "V") + ", " + Quantity.format(point.temperatureC(), "degC")
                + (point.ageHours() == null ? "" : ", " + Quantity.format(point.ageHours(), "h"))
                + (old ? ", end of life" : "");
    }

    /** The same point as the parameters of an address. */
    public String query() {
        return "?atBias=" + point.biasV() + "&atTemperature=" + point.temperatureC() + (point.ageHours() == null ? "" : "&atAge=" + point.ageHours())
                + (old ? "&atLife=" + END_OF_LIFE : "");
    }

    public String capacitance() {
        return Quantity.format(bent.capacitanceF(), "F");
    }

    public String share() {
        return Quantity.format(100 * bent.nominalShare(), "%", 3);
    }

    public String resistanceFactor() {
        return Quantity.format(bent.resistanceFactor(), "", 3);
    }
}
