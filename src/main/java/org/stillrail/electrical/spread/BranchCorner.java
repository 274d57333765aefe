package org.stillrail.electrical.spread;

import org.stillrail.electrical.capacitor.BentPart;
import org.stillrail.electrical.capacitor.Characteristics;
import org.stillrail.electrical.capacitor.ImpedanceModel;
import org.stillrail.electrical.capacitor.ModelBasis;
import org.stillrail.electrical.capacitor.OperatingPoint;
import org.stillrail.electrical.capacitor.PlaceInBand;

/** Where one branch's parts stand at a corner. */
public record BranchCorner(OperatingPoint point, PlaceInBand place) {

    /** The part that a model stands for, at this corner. */
    public BentPart bend(Characteristics characteristics, ImpedanceModel model, ModelBasis basis) {
        return characteristics.bend(model, basis, point, place);
    }

    /** With parts that are off by these shares of their capacitance, where a nominal one is known, and of their ESR. */
    BranchCorner straying(double capacitance, double resistance) {
        Double deviation = place.deviation() == null ? null : (Double) ((1 + place.deviation()) * (1 + capacitance) - 1);
        return new BranchCorner(point, new PlaceInBand(deviation, place.resistanceFactor() * (1 + resistance), place.change(), place.endOfLife()));
    }

    /** The same at another temperature of the parts. */
    public BranchCorner at(double temperatureC) {
        return new BranchCorner(new OperatingPoint(point.biasV(), temperatureC, point.ageHours()), place);
    }
}
