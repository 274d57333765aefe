package org.stillrail.library;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.stillrail.electrical.capacitor.BentPart;
import org.stillrail.electrical.capacitor.OperatingPoint;
import org.stillrail.electrical.capacitor.PlaceInBand;
import org.stillrail.web.Quantity;

/** How much capacitance is left at a bias, at 25 degC and the referee age. */
record CapacitanceLeft(String bias, String capacitance, String share) {

    private static final double[] SHARES_OF_RATED = {0, 0.25, 0.5, 0.75, 1};

    /** At shares of the rated voltage; empty where nothing is known of bias. */
    static List<CapacitanceLeft> of(PartDocument part, PartModel model) {
        boolean known = part.characteristics().capacitanceOverBias() != null || model.family().members().size() > 1;
        List<CapacitanceLeft> left = new ArrayList<>();
        for (double share : known ? SHARES_OF_RATED : new double[0]) {
            left.add(at(share * part.ratedVoltageV(), model));
        }
        return left;
    }

    /** At the voltages of the rails that use the part, each once, ascending. */
    static List<CapacitanceLeft> atRails(List<PartUse> uses, PartModel model) {
        return uses.stream().map(PartUse::railV).filter(Objects::nonNull).distinct().sorted().map(volt -> at(volt, model)).toList();
    }

    private static CapacitanceLeft at(double biasV, PartModel model) {
        BentPart bent = model.at(new OperatingPoint(biasV, OperatingPoint.REFERENCE.temperatureC(), null), PlaceInBand.AS_MODELLED);
        return new CapacitanceLeft(Quantity.format(biasV, "V"), Quantity.format(bent.capacitanceF(), "F"),
                Quantity.format(100 * bent.nominalShare(), "%", 3));
    }
}
