package org.stillrail.library;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
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
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.electrical.quality.CurveAverage;
import org.stillrail.web.Quantity;

/** From a stored part to the model that the calculation uses. */
@Component
public class PartModels {

    /** Straight lines between points so close are within 1e-4 of the fit. */
    private static final int FIT_POINTS_A_DECADE = 200;

    private final Sweeps sweeps;
    private final SweepFits fits;

    PartModels(Sweeps sweeps, SweepFits fits) {
        this.sweeps = sweeps;
        this.fits = fits;
    }

    /** The model that a revision of a part has chosen, from the sweeps there were then: a later one changes no revision. */
    public PartModel of(Part part) {
        return of(part.document(), part.revision().madeAt());
    }

    private PartModel of(PartDocument part, OffsetDateTime until) {
        ModelChoice choice = part.model();
        return switch (choice.kind()) {
            case DATASHEET -> ofDatasheet(part);
            case SWEEP -> ofSweep(part, sweeps.find(choice.sweepId()).orElseThrow(), until);
            case FIT -> ofFit(part, sweeps.find(choice.sweepId()).orElseThrow(), until);
            case AVERAGE -> ofAverage(part, choice.sweepIds().stream().map(id -> sweeps.find(id).orElseThrow()).toList());
        };
    }

    /**
     * The fit of a sweep in place of its points, at all frequencies that were measured.
     *
     * @throws IllegalArgumentException where the sweep has no fit
     */
    private PartModel ofFit(PartDocument part, Sweep chosen, OffsetDateTime until) {
        SweepFit fit = fits.of(chosen);
        if (fit.fit() == null) {
            throw new IllegalArgumentException("The sweep " + chosen.fileName() + " has no fit: " + fit.problem());
        }
        int points = 2 + (int) Math.ceil(FIT_POINTS_A_DECADE * Math.log10(chosen.stopHz() / chosen.startHz()));
        Curve curve = SweepCharts.on(fit.fit().model(), FrequencyGrid.logSpaced(chosen.startHz(), chosen.stopHz(), points));
        PartModel measured = ofSweep(part, chosen, until);
        List<SweepFamily.Member> members = new ArrayList<>(measured.family().members());
        members.set(0, new SweepFamily.Member(members.get(0).point(), table(curve)));
        return new PartModel(new SweepFamily(members), measured.testFrequencyHz(), measured.nominalCapacitanceF(), measured.characteristics(),
                true, measured.samples(), "fit of order " + fit.fit().order() + " to " + chosen.fileName(), List.of());
    }

    /**
     * The mean of samples: repeats of a sample first, then the samples.
     *
     * @throws IllegalArgumentException where they were measured under different conditions, or have no range in common
     */
    private static PartModel ofAverage(PartDocument part, List<Sweep> chosen) {
        Sweep first = chosen.get(0);
        Map<String, List<Curve>> bySample = new LinkedHashMap<>();
        for (Sweep sweep : chosen) {
            if (!Samples.alike(first, sweep)) {
                throw new IllegalArgumentException("Sweeps at one bias and one temperature can be averaged; " + sweep.fileName()
                        + " was measured elsewhere than " + first.fileName());
            }
            bySample.computeIfAbsent(Samples.sample(sweep), name -> new ArrayList<>()).add(sweep.document().impedance());
        }
        Curve mean = CurveAverage.of(bySample.values().stream().map(CurveAverage::of).toList());
        SweepFamily.Member member = new SweepFamily.Member(member(first).point(), table(mean));
        return new PartModel(new SweepFamily(List.of(member)), testFrequencyHz(part), part.capacitanceF(), characteristics(part), true,
                bySample.size(), "average of " + bySample.size() + (bySample.size() == 1 ? " sample: " : " samples: ")
                        + String.join(", ", bySample.keySet()), List.of());
    }

    private static TableModel table(Curve curve) {
        return TableModel.of(curve.grid().toArray(), curve.reals(), curve.imaginaries());
    }

    /**
     * Tries a choice before it is made.
     *
     * @throws IllegalArgumentException where it gives no model
     */
    PartModel usable(Part part, ModelChoice choice) {
        for (UUID id : choice.sweeps()) {
            if (sweeps.find(id).filter(sweep -> sweep.partId().equals(part.id())).isEmpty()) {
                throw new IllegalArgumentException("This part has no such sweep");
            }
        }
        return of(part.document().withModel(choice), OffsetDateTime.MAX);
    }

    /** A measured curve, with the other sweeps of the same sample to interpolate between. */
    private PartModel ofSweep(PartDocument part, Sweep chosen, OffsetDateTime until) {
        List<Sweep> all = sweeps.ofPart(chosen.partId()).stream().filter(sweep -> !sweep.importedAt().isAfter(until)).toList();
        List<SweepFamily.Member> members = new ArrayList<>();
        members.add(member(chosen));
        if (chosen.provenance().sample() != null) {
            all.stream()
                    .filter(other -> chosen.provenance().sample().equals(other.provenance().sample()))
                    .map(PartModels::member)
                    .filter(other -> members.stream().noneMatch(known -> sameBiasAndTemperature(known, other)))
                    .forEach(members::add);
        }
        String sample = chosen.provenance().sample() == null ? "" : ", sample " + chosen.provenance().sample();
        return new PartModel(new SweepFamily(members), testFrequencyHz(part), part.capacitanceF(), characteristics(part), true, samples(all),
                "measured: " + chosen.fileName() + sample, List.of());
    }

    /** How many sweeps of the model's sample came after the revision, so that only choosing the model anew takes them in. */
    static long later(Part part, List<Sweep> all) {
        UUID chosen = part.document().model().sweepId();
        String sample = chosen == null ? null : all.stream().filter(sweep -> sweep.id().equals(chosen)).findFirst()
                .map(sweep -> sweep.provenance().sample()).orElse(null);
        return sample == null ? 0 : all.stream()
                .filter(sweep -> sample.equals(sweep.provenance().sample()) && sweep.importedAt().isAfter(part.revision().madeAt())).count();
    }

    /** How many samples of the part were measured at all: they back the chosen one. */
    private static int samples(List<Sweep> all) {
        return (int) Math.max(1, all.stream()
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
    static double testFrequencyHz(PartDocument part) {
        return figure(part, LossFigure.Kind.LOSS_TANGENT).map(LossFigure::frequencyHz)
                .orElse(Estimates.lossTangentFrequencyHz(part.technology()));
    }

    /** Drawn curves first, then what the class code promises. */
    private static Characteristics characteristics(PartDocument part) {
        PartCharacteristics known = part.characteristics();
        CeramicCode code = CeramicCode.find(part.dielectricCode()).orElse(null);
        Ageing usual = code == null ? null : Ageing.ofPercentPerDecade(code.usualAgeingPercent().typical());
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
