package org.stillrail.electrical.evaluation;

import java.util.List;
import org.stillrail.electrical.capacitor.Band;
import org.stillrail.electrical.capacitor.BentPart;
import org.stillrail.electrical.capacitor.CharacteristicCurve;
import org.stillrail.electrical.capacitor.Characteristics;
import org.stillrail.electrical.capacitor.ImpedanceModel;
import org.stillrail.electrical.capacitor.ModelBasis;
import org.stillrail.electrical.capacitor.OperatingPoint;
import org.stillrail.electrical.capacitor.PlaceInBand;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.capacitor.SweepFamily;

/**
 * A part frozen with all that bends its model, so that it can be had at any operating point years later. What nobody knows
 * is null.
 *
 * @param members             the model, or the sweeps of one sample at several biases and temperatures; the chosen one first
 * @param testFrequencyHz     where the capacitance is stated
 * @param nominalCapacitanceF of the datasheet
 * @param measured            whether it rests on sweeps, which stand at their own bias, temperature and age
 * @param leastDeviation      of the capacitance at delivery, such as -0.2; with {@code mostDeviation}
 * @param leastResistance     smallest ESR over that of the model
 * @param mostResistance      largest ESR over that of the model
 */
public record PartInput(
        List<Member> members, double testFrequencyHz, double nominalCapacitanceF, boolean measured, Characteristics characteristics,
        Double leastDeviation, Double mostDeviation, Double leastResistance, Double mostResistance) {

    /** A frozen model and where it stands. */
    public record Member(OperatingPoint point, ModelInput model) {
    }

    public PartInput {
        members = List.copyOf(members);
        characteristics = characteristics == null ? Characteristics.NONE : characteristics;
    }

    /** A model that nothing bends and that has no tolerance: figures typed on a page. */
    public static PartInput fixed(ImpedanceModel model) {
        double capacitanceF = model instanceof SeriesRlc rlc ? rlc.capacitanceF() : 1;
        return new PartInput(List.of(new Member(OperatingPoint.REFERENCE, ModelInput.of(model))), 1, capacitanceF, false,
                Characteristics.NONE, null, null, 1.0, 1.0);
    }

    /** The part as its datasheet or its chosen sweep has it, nothing bent. */
    public ImpedanceModel asModelled() {
        return members.get(0).model().model();
    }

    /** The part at an operating point and a place in its tolerance band. */
    public BentPart at(OperatingPoint point, PlaceInBand place) {
        SweepFamily family = new SweepFamily(members.stream()
                .map(member -> new SweepFamily.Member(member.point(), member.model().model())).toList());
        SweepFamily.Member near = family.near(point);
        boolean fromNominal = place.deviation() != null;
        return (fromNominal ? asSwept(family, point, place.change()) : characteristics).bend(near.model(), basis(near), point, place);
    }

    private ModelBasis basis(SweepFamily.Member near) {
        return measured
                ? ModelBasis.sweep(near.model(), testFrequencyHz, nominalCapacitanceF, near.point())
                : ModelBasis.datasheet(nominalCapacitanceF);
    }

    /**
     * With what sweeps at several biases and temperatures show where no curve is known: a place in the band refers to nominal, so that what the
     * interpolated sweeps have lost by bias and temperature has to be taken off nominal too. Their ESR over temperature is in the model already.
     */
    private Characteristics asSwept(SweepFamily family, OperatingPoint point, Band.Bound change) {
        return withSweptBias(family, point).withOverTemperature(overTemperature(family, point.temperatureC(), change));
    }

    private Characteristics withSweptBias(SweepFamily family, OperatingPoint point) {
        double biasV = Math.abs(point.biasV());
        if (characteristics.overBias() != null || biasV == 0 || sweptBiasesV().length < 2) {
            return characteristics;
        }
        double unbiasedF = otherwiseUnchangedF(family.near(new OperatingPoint(0, point.temperatureC(), point.ageHours())));
        return characteristics.withOverBias(CharacteristicCurve.linear(0, unbiasedF, biasV, otherwiseUnchangedF(family.near(point))));
    }

    /** As known, or as the sweeps without bias show between the reference temperature and another one; null where neither tells. */
    private CharacteristicCurve overTemperature(SweepFamily family, double temperatureC, Band.Bound change) {
        if (characteristics.overTemperature() != null || members.size() < 2) {
            return characteristics.overTemperature();
        }
        SweepFamily.Member reference = family.near(OperatingPoint.REFERENCE);
        SweepFamily.Member there = family.near(new OperatingPoint(0, temperatureC, null));
        double referenceC = reference.point().temperatureC();
        double thereC = there.point().temperatureC();
        if (thereC == referenceC) {
            return null;
        }
        double share = withinPromise(otherwiseUnchangedF(there) / otherwiseUnchangedF(reference), temperatureC, change);
        return thereC < referenceC ? CharacteristicCurve.linear(thereC, share, referenceC, 1) : CharacteristicCurve.linear(referenceC, 1, thereC, share);
    }

    /** The sweeps are of one sample, a class code promises for all: where its bound is farther out, that counts. */
    private double withinPromise(double share, double temperatureC, Band.Bound change) {
        if (characteristics.code() == null) {
            return share;
        }
        double promised = characteristics.code().shareAt(temperatureC).at(change);
        return switch (change) {
            case LEAST -> Math.min(share, promised);
            case TYPICAL -> share;
            case MOST -> Math.max(share, promised);
        };
    }

    /** Capacitance of a sweep without what the known curves make of its own point, so that nothing they know of counts twice. */
    private double otherwiseUnchangedF(SweepFamily.Member near) {
        return basis(near).capacitanceF() / characteristics.withoutCode().capacitanceShare(near.point(), Band.Bound.TYPICAL);
    }

    /** The sizes of the biases of its sweeps, each once, ascending. */
    double[] sweptBiasesV() {
        return members.stream().mapToDouble(member -> Math.abs(member.point().biasV())).sorted().distinct().toArray();
    }

    /**
     * Whether its own warmth changes its impedance as far as is known. A class code alone promises a band and no course within it,
     * so a part that is known by nothing else stays at the temperature of the air.
     */
    boolean followsTemperature() {
        boolean codeAlone = characteristics.overTemperature() == null && characteristics.code() != null;
        boolean sweptOverTemperature = members.stream().mapToDouble(member -> member.point().temperatureC()).distinct().count() > 1;
        return !codeAlone && (characteristics.overTemperature() != null || characteristics.resistance() != null || sweptOverTemperature);
    }
}
