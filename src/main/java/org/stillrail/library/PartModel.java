package org.stillrail.library;

import java.util.List;
import org.stillrail.electrical.capacitor.BentPart;
import org.stillrail.electrical.capacitor.Characteristics;
import org.stillrail.electrical.capacitor.ImpedanceModel;
import org.stillrail.electrical.capacitor.ModelBasis;
import org.stillrail.electrical.capacitor.OperatingPoint;
import org.stillrail.electrical.capacitor.PlaceInBand;
import org.stillrail.electrical.capacitor.SweepFamily;
import org.stillrail.electrical.evaluation.ModelInput;
import org.stillrail.electrical.evaluation.PartInput;

/**
 * The model that a part lends to a bank, with where it comes from.
 *
 * @param family              the datasheet's model alone, or the chosen sweep with those of the same sample at other biases
 *                            and temperatures
 * @param testFrequencyHz     where the capacitance is stated
 * @param nominalCapacitanceF of the datasheet
 * @param measured            whether it rests on a sweep rather than on a datasheet
 * @param samples             of the part that were measured, null where it rests on the datasheet
 * @param source              in words: which sweep or which page
 * @param estimates           what was assumed because the datasheet is silent, in sentences
 */
public record PartModel(
        SweepFamily family, double testFrequencyHz, double nominalCapacitanceF, Characteristics characteristics, boolean measured,
        Integer samples, String source, List<String> estimates) {

    /** The part as it stands in its sweep or its datasheet, nothing bent. */
    public ImpedanceModel model() {
        return family.members().get(0).model();
    }

    /** Frozen for an evaluation. */
    public PartInput frozen(PartDocument part) {
        EsrBounds bounds = EsrBounds.of(part, this);
        return new PartInput(
                family.members().stream().map(member -> new PartInput.Member(member.point(), ModelInput.of(member.model()))).toList(),
                testFrequencyHz, nominalCapacitanceF, measured, characteristics,
                part.tolerancePercent() == null ? null : (Double) (-part.tolerancePercent().minusPercent() / 100),
                part.tolerancePercent() == null ? null : (Double) (part.tolerancePercent().plusPercent() / 100),
                bounds.least(), bounds.most());
    }

    /** The part at an operating point and a place in its tolerance band. */
    public BentPart at(OperatingPoint point, PlaceInBand place) {
        SweepFamily.Member near = family.near(point);
        ModelBasis basis = measured
                ? ModelBasis.sweep(near.model(), testFrequencyHz, nominalCapacitanceF, near.point())
                : ModelBasis.datasheet(nominalCapacitanceF);
        return characteristics.bend(near.model(), basis, point, place);
    }
}
