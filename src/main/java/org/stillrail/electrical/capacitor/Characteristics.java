package org.stillrail.electrical.capacitor;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * How a part changes with bias, temperature, age and to the end of its life, and how that bends a model. Each may be null:
 * not known, so left out.
 *
 * <p>Everything is relative to where the model was taken: with {@code K = kV kT kA} the shares of the capacitance that are
 * left, a sweep of C0 at its own point becomes {@code C0 K(wanted) / K(own)}; nothing is applied twice. A place in the
 * tolerance band refers to nominal instead: {@code Cnominal (1 + deviation) K(wanted)}. The model is then
 * {@link BentModel}, with the ESR by {@link ResistanceCurve}.
 *
 * @param overBias        capacitance over DC bias in V (its size), any reference
 * @param overTemperature capacitance over temperature in degC, any reference; overrides the code
 * @param code            bounds over temperature where no curve is known
 * @param ageing          the law of class 2 ceramics
 * @param resistance      ESR over temperature
 * @param endOfLife       drift to the end of life
 */
public record Characteristics(
        CharacteristicCurve overBias,
        CharacteristicCurve overTemperature,
        CeramicCode code,
        Ageing ageing,
        ResistanceCurve resistance,
        Drift endOfLife) {

    public static final Characteristics NONE = new Characteristics(null, null, null, null, null, null);

    /** The ESR of a part without a curve of its own is scaled where ESR is mostly stated. */
    public static final double USUAL_RESISTANCE_HZ = 100e3;

    public Characteristics withOverBias(CharacteristicCurve curve) {
        return new Characteristics(curve, overTemperature, code, ageing, resistance, endOfLife);
    }

    /** A curve overrides a class code. */
    public Characteristics withOverTemperature(CharacteristicCurve curve) {
        return new Characteristics(overBias, curve, code, ageing, resistance, endOfLife);
    }

    public Characteristics withoutCode() {
        return new Characteristics(overBias, overTemperature, null, ageing, resistance, endOfLife);
    }

    /** K: the capacitance at a point over that of the same part without bias, at 25 degC and the referee age. */
    public double capacitanceShare(OperatingPoint point, Band.Bound bound) {
        double share = ageing == null ? 1 : ageing.share(point.ageHours());
        if (overBias != null) {
            share *= overBias.at(Math.abs(point.biasV())) / overBias.at(0);
        }
        if (overTemperature != null) {
            share *= overTemperature.at(point.temperatureC()) / overTemperature.at(OperatingPoint.REFERENCE.temperatureC());
        } else if (code != null) {
            share *= code.shareAt(point.temperatureC()).at(bound);
        }
        return share;
    }

    /** The part that a model stands for, at another operating point and a place in its band. */
    public BentPart bend(ImpedanceModel model, ModelBasis basis, OperatingPoint wanted, PlaceInBand place) {
        Objects.requireNonNull(model, "model");
        double there = capacitanceShare(wanted, place.change());
        double capacitance = place.deviation() == null
                ? basis.capacitanceF() * sameWhere(basis.point(), wanted, there)
                : basis.nominalCapacitanceF() * (1 + place.deviation()) * there;
        double resistanceFactor = place.resistanceFactor();
        if (resistance != null) {
            resistanceFactor *= resistance.ratio(wanted.temperatureC(), basis.point().temperatureC());
        }
        if (place.endOfLife() && endOfLife != null) {
            capacitance *= endOfLife.capacitanceShare();
            resistanceFactor *= endOfLife.resistanceFactor();
        }
        double remaining = capacitance / basis.capacitanceF();
        ImpedanceModel bent = remaining == 1 ? model : new BentModel(model, basis.capacitanceF(), remaining);
        double hz = resistance == null ? USUAL_RESISTANCE_HZ : resistance.frequencyHz();
        return new BentPart(
                ResistanceCurve.scaled(bent, resistanceFactor, hz),
                capacitance,
                capacitance / basis.nominalCapacitanceF(),
                resistanceFactor,
                notes(basis.point(), wanted, place));
    }

    /** K(wanted) / K(own); where nothing but a class code tells, the same temperature is no change at all. */
    private double sameWhere(OperatingPoint own, OperatingPoint wanted, double there) {
        if (overTemperature == null && code != null && own.temperatureC() == wanted.temperatureC()) {
            return capacitanceShare(wanted, Band.Bound.TYPICAL) / capacitanceShare(own, Band.Bound.TYPICAL);
        }
        return there / capacitanceShare(own, Band.Bound.TYPICAL);
    }

    private List<BendNote> notes(OperatingPoint own, OperatingPoint wanted, PlaceInBand place) {
        List<BendNote> notes = new ArrayList<>();
        if (Math.abs(wanted.biasV()) != Math.abs(own.biasV())) {
            note(notes, BendNote.Kind.BIAS_FLAT, overBias, Math.abs(wanted.biasV()), "capacitance over bias", "V");
        }
        if (wanted.temperatureC() != own.temperatureC()) {
            if (overTemperature == null && code != null) {
                notes.add(BendNote.known(BendNote.Kind.CODE_ALONE, "Over temperature only the class code " + code.code() + " is known"
                        + (code.covers(wanted.temperatureC()) ? "." : ", which promises nothing at " + wanted.temperatureC() + " degC.")));
            } else {
                note(notes, BendNote.Kind.TEMPERATURE_FLAT, overTemperature, wanted.temperatureC(), "capacitance over temperature", "degC");
            }
            note(notes, BendNote.Kind.ESR_FLAT, resistance == null ? null : resistance.factor(), wanted.temperatureC(), "ESR over temperature", "degC");
        }
        if (ageing == null && !Objects.equals(wanted.ageHours(), own.ageHours())) {
            notes.add(BendNote.flat(BendNote.Kind.UNAGED, "no ageing rate", "the capacitance is taken as unchanged by age"));
        }
        if (place.endOfLife() && endOfLife == null) {
            notes.add(BendNote.flat(BendNote.Kind.UNDRIFTED, "no drift to the end of life", "the part is taken as new"));
        }
        return notes;
    }

    private static void note(List<BendNote> notes, BendNote.Kind flat, CharacteristicCurve curve, double x, String name, String unit) {
        if (curve == null) {
            notes.add(BendNote.flat(flat, "no curve of " + name, "it is taken as flat to " + x + " " + unit));
        } else if (!curve.covers(x)) {
            notes.add(BendNote.known(BendNote.Kind.HELD, "The curve of " + name + " does not reach " + x + " " + unit + "; its last value is held."));
        }
    }
}
