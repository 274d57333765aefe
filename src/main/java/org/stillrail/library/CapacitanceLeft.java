package org.stillrail.library;

import java.util.ArrayList;
import java.util.List;
import org.stillrail.electrical.capacitor.BentPart;
import org.stillrail.electrical.capacitor.OperatingPoint;
import org.stillrail.electrical.capacitor.PlaceInBand;
import org.stillrail.web.Quantity;

/** How much capacitance is left at a share of the rated voltage, at 25 degC. */
record CapacitanceLeft(String bias, String capacitance, String share) {

    private static final double[] SHARES_OF_RATED = {0, 0.25, 0.5, 0.75, 1};

    /** Empty where nothing is known of bias. */
    static List<CapacitanceLeft> of(PartDocument part, PartModel model) {
        boolean known = part.characteristics().capacitanceOverBias() != null || model.family().members().size() > 1;
        List<CapacitanceLeft> left = new ArrayList<>();
        for (double share : known ? SHARES_OF_RATED : new double[0]) {
            BentPart bent = model.at(new OperatingPoint(share * part.ratedVoltageV(), 25, null), PlaceInBand.AS_MODELLED);
            left.add(new CapacitanceLeft(Quantity.format(share * part.ratedVoltageV(), "V"), Quantity.format(bent.capacitanceF(), "F"),
                    Quantity.format(100 * bent.nominalShare(), "%", 3)));
        }
        return left;
    }
}
