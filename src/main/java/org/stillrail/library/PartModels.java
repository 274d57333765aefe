package org.stillrail.library;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;
import org.stillrail.electrical.capacitor.DatasheetModel;
import org.stillrail.electrical.capacitor.Estimates;
import org.stillrail.electrical.capacitor.ImpedanceModel;
import org.stillrail.electrical.capacitor.LossFigures;
import org.stillrail.electrical.capacitor.OperatingPoint;
import org.stillrail.electrical.capacitor.TableModel;
import org.stillrail.web.Quantity;

/** From a stored part to the model that the calculation uses. */
@Component
public class PartModels {

    private final Sweeps sweeps;

    PartModels(Sweeps sweeps) {
        this.sweeps = sweeps;
    }

    /** The model that a revision of a part has chosen, at an operating point. */
    public PartModel of(PartDocument part, OperatingPoint point) {
        if (part.model().kind() == ModelChoice.Kind.SWEEP) {
            return ofSweep(sweeps.find(part.model().sweepId()).orElseThrow());
        }
        return ofDatasheet(part);
    }

    /** A measured curve as it is. */
    PartModel ofSweep(Sweep sweep) {
        SweepDocument document = sweep.document();
        ImpedanceModel model = TableModel.of(document.frequencyHz(), document.resistanceOhm(), document.reactanceOhm());
        SweepProvenance provenance = document.provenance();
        String sample = provenance.sample() == null ? "" : ", sample " + provenance.sample();
        return new PartModel(model, true, "measured: " + sweep.fileName() + sample, List.of());
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
        return new PartModel(DatasheetModel.of(figures, inductanceH), false, source, List.copyOf(estimates));
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
