package org.stillrail.library;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.springframework.stereotype.Component;
import org.stillrail.electrical.capacitor.Ageing;
import org.stillrail.electrical.capacitor.CeramicCode;
import org.stillrail.electrical.capacitor.Characteristics;
import org.stillrail.electrical.capacitor.DatasheetModel;
import org.stillrail.electrical.capacitor.Estimates;
import org.stillrail.electrical.capacitor.ImpedanceModel;
import org.stillrail.electrical.capacitor.LossFigures;
import org.stillrail.electrical.capacitor.OperatingPoint;
import org.stillrail.electrical.capacitor.SweepFamily;
import org.stillrail.electrical.capacitor.TableModel;
import org.stillrail.web.Quantity;

/** From a stored part to the model that the calculation uses. */
@Component
public class PartModels {

    private final Sweeps sweeps;

    PartModels(Sweeps sweeps) {
        this.sweeps = sweeps;
    }

    /** The model that a revision of a part has chosen. */
    public PartModel of(PartDocument part) {
        if (part.model().kind() == ModelChoice.Kind.SWEEP) {
            return ofSweep(part, sweeps.find(part.model().sweepId()).orElseThrow());
        }
        return ofDatasheet(part);
    }

    /** A measured curve, with the other sweeps of the same sample to interpolate between. */
    PartModel ofSweep(PartDocument part, Sweep chosen) {
        List<SweepFamily.Member> members = new ArrayList<>();
        members.add(member(chosen));
        if (chosen.provenance().sample() != null) {
            sweeps.ofPart(chosen.partId()).stream()
                    .filter(other -> chosen.provenance().sample().equals(other.provenance().sample()))
                    .map(PartModels::member)
                    .filter(other -> members.stream().noneMatch(known -> sameBiasAndTemperature(known, other)))
                    .forEach(members::add);
        }
        String sample = chosen.provenance().sample() == null ? "" : ", sample " + chosen.provenance().sample();
        return new PartModel(new SweepFamily(members), testFrequencyHz(part), part.capacitanceF(), characteristics(part), true, samples(chosen),
                "measured: " + chosen.fileName() + sample, List.of());
    }

    /** How many samples of the part were measured at all: they back the chosen one. */
    private int samples(Sweep chosen) {
        return (int) Math.max(1, sweeps.ofPart(chosen.partId()).stream()
                .map(sweep -> sweep.provenance().sample()).filter(Objects::nonNull).distinct().count());
    }

    private static boolean sameBiasAndTemperature(SweepFamily.Member a, SweepFamily.Member b) {
        return Math.abs(a.point().biasV()) == Math.abs(b.point().biasV()) && a.point().temperatureC() == b.point().temperatureC();
    }

    private static SweepFamily.Member member(Sweep sweep) {
        SweepDocument document = sweep.document();
        SweepProvenance provenance = document.provenance();
        ImpedanceModel model = TableModel.of(document.frequencyHz(), document.resistanceOhm(), document.reactanceOhm());
        return new SweepFamily.Member(
                new OperatingPoint(provenance.biasV(), provenance.temperatureC(), provenance.hoursSinceSoldering()), model);
    }

    /** The capacitance is stated where the loss tangent is, or where it usually is for the technology. */
    private static double testFrequencyHz(PartDocument part) {
        return figure(part, LossFigure.Kind.LOSS_TANGENT).map(LossFigure::frequencyHz)
                .orElse(Estimates.lossTangentFrequencyHz(part.technology()));
    }

    /** Drawn curves first, then what the class code promises. */
    private static Characteristics characteristics(PartDocument part) {
        PartCharacteristics known = part.characteristics();
        CeramicCode code = CeramicCode.find(part.dielectricCode()).orElse(null);
        Ageing usual = code == null ? null : code.usualAgeingPercent().map(band -> Ageing.ofPercentPerDecade(band.typical())).orElse(null);
        return new Characteristics(known.capacitanceOverBias(), known.capacitanceOverTemperature(), code,
                known.ageing() == null ? usual : known.ageing(), known.resistance(), known.endOfLife());
    }

    /** What the datasheet's figures say, with estimates where it is silent. */
    PartModel ofDatasheet(PartDocument part) {
        List<String> estimates = new ArrayList<>();
        double inductanceH = inductance(part, estimates);
        Optional<LossFigure> tangent = figure(part, LossFigure.Kind.LOSS_TANGENT);
        Optional<LossFigure> esr = figure(part, LossFigure.Kind.ESR);
        double tangentHz = tangent.map(LossFigure::frequencyHz).orElse(Estimates.lossTangentFrequencyHz(part.technology()));
        Double lossTangent = tangent.map(LossFigure::value).orElse(null);
        if (tangent.isEmpty() && esr.isEmpty()) {
            lossTangent = Estimates.lossTangent(part.technology());
            estimates.add("No loss figure is given: loss tangent taken as " + lossTangent + " at "
                    + Quantity.format(tangentHz, "Hz") + ", usual for " + part.technology().label() + ".");
        }
        LossFigures figures = new LossFigures(part.capacitanceF(), lossTangent, tangentHz,
                esr.map(LossFigure::value).orElse(null), esr.map(LossFigure::frequencyHz).orElse(null));
        String source = part.datasheet() == null ? "datasheet figures without a reference" : "datasheet: " + part.datasheet();
        SweepFamily.Member sheet = new SweepFamily.Member(OperatingPoint.REFERENCE, DatasheetModel.of(figures, inductanceH));
        return new PartModel(new SweepFamily(List.of(sheet)), tangentHz, part.capacitanceF(), characteristics(part), false, null, source,
                List.copyOf(estimates));
    }

    private static double inductance(PartDocument part, List<String> estimates) {
        if (part.inductanceH() != null) {
            return part.inductanceH();
        }
        if (part.selfResonanceHz() != null) {
            double omega = 2 * Math.PI * part.selfResonanceHz();
            return 1 / (omega * omega * part.capacitanceF());
        }
        double estimate = Estimates.inductanceH(part.technology());
        estimates.add("ESL is not given: taken as " + Quantity.format(estimate, "H") + ", usual for " + part.technology().label() + ".");
        return estimate;
    }

    /** The loss figure that a datasheet's model rests on: its ESR, or its loss tangent where no ESR is stated. */
    public static Optional<LossFigure> esrFigure(PartDocument part) {
        return figure(part, LossFigure.Kind.ESR).or(() -> figure(part, LossFigure.Kind.LOSS_TANGENT));
    }

    /** The figure that a design rests on: a typical one before a maximum, and a minimum only where nothing else is given. */
    private static Optional<LossFigure> figure(PartDocument part, LossFigure.Kind kind) {
        List<LossFigure> figures = part.losses().stream().filter(loss -> loss.kind() == kind).toList();
        return figures.stream()
                .min(Comparator.comparing(loss -> switch (loss.bound()) {
                    case TYPICAL -> 0;
                    case MAXIMUM -> 1;
                    case MINIMUM -> 2;
                }));
    }
}
