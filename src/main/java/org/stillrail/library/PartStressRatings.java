package org.stillrail.library;

import org.stillrail.electrical.capacitor.CharacteristicCurve;
import org.stillrail.electrical.capacitor.RippleRating;
import org.stillrail.electrical.evaluation.RatingInput;
import org.stillrail.electrical.stress.LifeRating;
import org.stillrail.electrical.stress.ThermalResistance;

/** From a part's document to what an evaluation judges its stress by. */
public final class PartStressRatings {

    private PartStressRatings() {
    }

    /** The thermal resistance is estimated from the case where the datasheet has none and the size is known. */
    public static RatingInput of(PartDocument part) {
        PartDocument.Stress stress = part.stress();
        return new RatingInput(stress == null ? null : stress.reverseVoltageV(), part.temperatureMaxC(), ripple(part),
                part.rippleRating() == null ? null : part.rippleRating().temperatureC(), thermal(part), life(part));
    }

    /** At the curves' own references, so that the stated frequency and temperature count wherever the curves are drawn from. */
    private static RippleRating ripple(PartDocument part) {
        PartDocument.RippleRating rating = part.rippleRating();
        if (rating == null) {
            return null;
        }
        CharacteristicCurve overFrequency = part.characteristics().rippleOverFrequency();
        CharacteristicCurve overTemperature = part.characteristics().rippleOverTemperature();
        return new RippleRating(rating.currentA() / at(overFrequency, rating.frequencyHz()) / at(overTemperature, rating.temperatureC()),
                overFrequency, overTemperature);
    }

    private static double at(CharacteristicCurve curve, Double x) {
        return curve == null || x == null ? 1 : curve.at(x);
    }

    private static ThermalResistance thermal(PartDocument part) {
        if (part.stress() != null && part.stress().thermalResistanceKPerW() != null) {
            return ThermalResistance.given(part.stress().thermalResistanceKPerW(), "datasheet");
        }
        if (part.lengthM() == null || part.widthM() == null || part.heightM() == null) {
            return null;
        }
        boolean can = switch (part.technology()) {
            case WET_ALUMINIUM, POLYMER_ALUMINIUM, HYBRID, DOUBLE_LAYER -> part.lengthM().equals(part.widthM());
            case TANTALUM_MNO2, TANTALUM_POLYMER, CERAMIC_CLASS_1, CERAMIC_CLASS_2, FILM -> false;
        };
        return can ? ThermalResistance.ofCan(part.widthM(), part.heightM())
                : ThermalResistance.ofBlock(part.lengthM(), part.widthM(), part.heightM());
    }

    private static LifeRating life(PartDocument part) {
        if (part.endurance() == null) {
            return null;
        }
        Double rise = part.stress() == null ? null : part.stress().enduranceRiseK();
        LifeRating.VoltageTerm overVoltage = part.stress() == null ? null : part.stress().lifeOverVoltage();
        return new LifeRating(part.endurance().hours(), part.endurance().temperatureC(), rise == null ? 0 : rise,
                overVoltage == null ? LifeRating.VoltageTerm.NONE : overVoltage);
    }
}
