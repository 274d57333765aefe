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

    /** The same at another temperature of the parts. */
    public BranchCorner at(double temperatureC) {
        return new BranchCorner(new OperatingPoint(point.biasV(), temperatureC, point.ageHours()), place);
    }
}
