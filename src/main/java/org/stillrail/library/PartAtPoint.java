package org.stillrail.library;

import org.stillrail.electrical.capacitor.BentPart;
import org.stillrail.electrical.capacitor.OperatingPoint;
import org.stillrail.electrical.capacitor.PlaceInBand;
import org.stillrail.web.Form;
import org.stillrail.web.Quantity;

/** A part at the operating point that somebody asked for on its page. */
record PartAtPoint(OperatingPoint point, BentPart bent) {

    /** Null where a field is wrong; the form then says which. */
    static PartAtPoint read(Form form, PartModel model) {
        Double biasV = form.quantity("atBias", "Bias", "V", true);
        Double temperatureC = form.quantity("atTemperature", "Temperature", "degC", true);
        Double ageHours = form.positive("atAge", "Age", "h", false);
        if (!form.errors().none()) {
            return null;
        }
        OperatingPoint point = new OperatingPoint(biasV, temperatureC, ageHours);
        try {
            return new PartAtPoint(point, model.at(point, PlaceInBand.AS_MODELLED));
        } catch (IllegalArgumentException e) {
            form.errors().add("atBias", e.getMessage());
            return null;
        }
    }

    String label() {
        return "at " + Quantity.format(point.biasV(), "V") + ", " + Quantity.format(point.temperatureC(), "degC")
                + (point.ageHours() == null ? "" : ", " + Quantity.format(point.ageHours(), "h"));
    }

    /** The same point as the parameters of an address. */
    public String query() {
        return "?atBias=" + point.biasV() + "&atTemperature=" + point.temperatureC() + (point.ageHours() == null ? "" : "&atAge=" + point.ageHours());
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
