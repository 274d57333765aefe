package org.stillrail.electrical.evaluation;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import org.stillrail.electrical.capacitor.Technology;
import org.stillrail.electrical.converter.BankPhase;
import org.stillrail.electrical.converter.PowerStage;
import org.stillrail.electrical.converter.TargetImpedance;
import org.stillrail.electrical.damping.OptimalDamping;
import org.stillrail.electrical.damping.PresentDamping;
import org.stillrail.electrical.requirement.LoadStep;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.requirement.Topology;
import org.stillrail.electrical.step.ChargeBalance;

/**
 * One figure of loop, load step or damping beside the verdicts.
 *
 * @param section of the method that holds its equations
 * @param shown  at the shown corner, null where there is none
 * @param worst  over all corners; null where only the shown one was looked at
 * @param corner that gives it, null likewise
 * @param note   what a reader should know, or empty
 */
public record DynamicFigure(Section section, String name, String unit, Double shown, Double worst, String corner, String note) {

    /** Figures that belong together, in the order of the page. */
    public enum Section {
        LOOP("Loop", "loop"), LOAD_STEP("Load step", "load-step"), DAMPING("Damping", "damping-optimum");

        private final String label;
        private final String equation;

        Section(String label, String equation) {
            this.label = label;
            this.equation = equation;
        }

        public String label() {
            return label;
        }

        /** Heading of its equations in docs/method.md. */
        public String equation() {
            return equation;
        }
    }

    private static final double FAR = 100;
    /** The bulk's resistance is about the best one within this factor. */
    private static final double NEAR = 1.25;

    /** Whether the least or the most of a figure over the corners is the worst. */
    private enum Worst { LEAST, MOST }

    /**
     * Empty for a converter whose loop is not modelled.
     *
     * @param corners the figures of all corners that were looked at
     * @param dynamics of the shown corner
     * @param pattern null where there is no step at the shown corner
     */
    static List<DynamicFigure> of(RailFigures rail, List<BranchInput> branches, CornerFigures shown, List<CornerFigures> corners,
            Dynamics dynamics, Tried<LoadPattern> pattern) {
        if (rail.converter().topology() != Topology.BUCK) {
            return List.of();
        }
        List<DynamicFigure> figures = new ArrayList<>();
        if (shown.loop() != null && shown.loop().answered()) {
            figures.add(loop(corners, shown, "Crossover", "Hz", LoopBand::crossoverHz, Worst.MOST, "the highest; the averaged model flatters above a fifth"
                    + " of the switching frequency"));
            figures.add(loop(corners, shown, "Phase margin", "deg", LoopBand::phaseMarginDeg, Worst.LEAST, ""));
            figures.add(loop(corners, shown, "Gain margin", "dB", LoopBand::gainMarginDb, Worst.LEAST, ""));
            figures.add(loop(corners, shown, "Peak of 1 / |1 + T|", "", band -> band.crossoverHz() == null ? null : (Double) band.sensitivityPeak(),
                    Worst.MOST, "round the crossover"));
            figures.add(loop(corners, shown, "Peak of the output impedance, loop closed", "ohm",
                    band -> band.crossoverHz() == null ? null : (Double) band.closedPeakOhm(), Worst.MOST, "round the crossover, as the load sees it"));
            phase(shown, figures);
        }
        if (rail.loadStep() != null) {
            step(rail, shown, corners, dynamics, pattern, figures);
        }
        damping(branches, shown, corners, rail, figures);
        return List.copyOf(figures);
    }

    /** Of a loop that is known at the shown corner. */
    private static DynamicFigure loop(List<CornerFigures> corners, CornerFigures shown, String name, String unit, Function<LoopBand, Double> figure,
            Worst kind, String note) {
        return over(Section.LOOP, corners, name, unit, figure.apply(shown.loop().value()),
                each -> each.loop() == null || !each.loop().answered() ? null : figure.apply(each.loop().value()), kind, note);
    }

    private static DynamicFigure over(Section section, List<CornerFigures> corners, String name, String unit, Double shown, Function<CornerFigures, Double> figure,
            Worst kind, String note) {
        Double worst = null;
        String at = null;
        for (CornerFigures each : corners) {
            Double value = figure.apply(each);
            if (value != null && (worst == null || (kind == Worst.LEAST ? value < worst : value > worst))) {
                worst = value;
                at = each.corner().name();
            }
        }
        return new DynamicFigure(section, name, unit, shown, worst, at, note);
    }

    private static void phase(CornerFigures shown, List<DynamicFigure> figures) {
        Double crossoverHz = shown.loop().value().crossoverHz();
        if (crossoverHz != null) {
            figures.add(only(Section.LOOP, "Phase that the bank adds at the crossover", "deg", BankPhase.leadDeg(shown.bank(), crossoverHz),
                    "over an ideal capacitance"));
            Double zeroHz = BankPhase.esrZeroHz(shown.bank(), crossoverHz / FAR, crossoverHz * FAR);
            figures.add(only(Section.LOOP, "ESR zero", "Hz", zeroHz, zeroHz == null ? "none within two decades of the crossover"
                    : "where Re Z, as it is there, equals the reactance"));
        }
    }

    private static void step(RailFigures rail, CornerFigures shown, List<CornerFigures> corners, Dynamics dynamics, Tried<LoadPattern> pattern,
            List<DynamicFigure> figures) {
        LoadStep step = rail.loadStep();
        PowerStage stage = shown.corner().stage(rail);
        double crossoverHz = shown.crossoverHz(rail);
        figures.add(target(step));
        if (shown.steps() != null && shown.steps().answered()) {
            StepPair pair = shown.steps().value();
            figures.add(stepped(corners, "Undershoot", "V", pair, StepPair::undershootV, "at the load step or its release"));
            unlimited("Undershoot without duty limits", pair, dynamics.stepsUnlimited(), StepPair::undershootV, figures);
            figures.add(stepped(corners, "Overshoot", "V", pair, StepPair::overshootV, "at the load step or its release"));
            unlimited("Overshoot without duty limits", pair, dynamics.stepsUnlimited(), StepPair::overshootV, figures);
            figures.add(only(Section.LOAD_STEP, "Lowest after the step", "s", pair.step().undershootAtS(), "time from the start of the edge"));
            StepPair alone = dynamics.stepsAlone();
            if (alone != null && pair.step().undershootAtS() != null) {
                Double fallenV = alone.step().deviationAt(pair.step().undershootAtS());
                figures.add(only(Section.LOAD_STEP, "Fall of the bank alone by then", "V", fallenV == null ? null : (Double) (-fallenV),
                        "without the loop; the one to read where the lowest comes within one switching period, " + Words.quantity(1 / stage.switchingHz(), "s")));
            }
            figures.add(only(Section.LOAD_STEP, "Highest after the release", "s", pair.release().overshootAtS(), "time from the start of its edge"));
            figures.add(settled(corners, "Settled after the step", rail, pair, each -> each.step().settledAtS()));
            figures.add(settled(corners, "Settled after the release", rail, pair, each -> each.release().settledAtS()));
            figures.add(only(Section.LOAD_STEP, "Worst load pattern", "V", pattern.answered() ? (Double) pattern.value().worst().deviationV() : null, pattern.answered()
                    ? "the most that any load between the same currents and within the same slew can do, without duty limits; one step alone makes "
                            + Words.quantity(pattern.value().worst().singleStepV(), "V") : pattern.refusal()));
        }
        double capacitanceF = ChargeNeed.capacitanceF(shown.bank(), crossoverHz / LoopBand.SPREAD);
        if (capacitanceF > 0) {
            figures.add(only(Section.LOAD_STEP, "Overshoot by the inductor's energy on release", "V", ChargeBalance.energyOvershootV(stage.combinedInductanceH(), capacitanceF,
                    stage.outputV(), Math.max(step.fromA(), step.toA()), Math.min(step.fromA(), step.toA())), "ESR left out; no loop can do better"));
        }
    }

    /** Beside the figure with them; nothing where no limit is met. */
    private static void unlimited(String name, StepPair limited, StepPair unlimited, Function<StepPair, Double> figure, List<DynamicFigure> figures) {
        if (!limited.metLimit()) {
            return;
        }
        String met = "the duty meets a limit " + (!limited.release().metLimit() ? "after the step" : !limited.step().metLimit() ? "after the release"
                : "after the step and after the release");
        figures.add(only(Section.LOAD_STEP, name, "V", unlimited == null ? null : figure.apply(unlimited),
                unlimited == null ? met + "; without limits the response could not be followed" : met + "; what the loop alone would do"));
    }

    private static DynamicFigure target(LoadStep step) {
        TargetImpedance target = targetOf(step);
        return only(Section.LOAD_STEP, "Target impedance", "ohm", target.impedanceOhm(), "the allowed deviation over the step"
                + (Double.isFinite(target.cornerHz()) ? ", up to " + Words.quantity(target.cornerHz(), "Hz") + "; beyond, it rises with the frequency" : "")
                + "; the mask on the chart of the output impedance");
    }

    /** The largest over the corners that went through the fits, as the verdicts have it. */
    private static DynamicFigure stepped(List<CornerFigures> corners, String name, String unit, StepPair shown, Function<StepPair, Double> figure, String note) {
        return over(Section.LOAD_STEP, corners, name, unit, figure.apply(shown), each -> fitted(each) ? figure.apply(each.steps().value()) : null, Worst.MOST, note);
    }

    private static boolean fitted(CornerFigures each) {
        return each.steps() != null && each.steps().answered() && each.stepsFinal();
    }

    /** From the start of the edge, for good. */
    private static DynamicFigure settled(List<CornerFigures> corners, String name, RailFigures rail, StepPair shown, Function<StepPair, Double> atS) {
        long unsettled = corners.stream().filter(each -> fitted(each) && atS.apply(each.steps().value()) == null).count();
        return stepped(corners, name, "s", shown, atS, "from the start of its edge, for good within \u00b1"
                + Words.quantity(rail.loadStep().settledWithinV(), "V")
                + (unsettled == 0 ? "" : "; at " + unsettled + " of " + corners.size() + " corners not within the time that is looked at"));
    }

    private static void damping(List<BranchInput> branches, CornerFigures shown, List<CornerFigures> corners, RailFigures rail,
            List<DynamicFigure> figures) {
        Set<Integer> ceramics = new TreeSet<>();
        for (int k = 0; k < branches.size(); k++) {
            Technology technology = branches.get(k).technology();
            if (technology == Technology.CERAMIC_CLASS_1 || technology == Technology.CERAMIC_CLASS_2) {
                ceramics.add(k);
            }
        }
        if (ceramics.isEmpty() || ceramics.size() == branches.size()) {
            return;
        }
        Tried<PresentDamping> now = present(shown, ceramics, rail);
        if (!now.answered()) {
            figures.add(only(Section.DAMPING, "Peak of bank and inductor, loop open", "ohm", null, now.refusal()));
            return;
        }
        PresentDamping present = now.value();
        figures.add(over(Section.DAMPING, corners, "Peak of bank and inductor, loop open", "ohm", present.peakOhm(), each -> {
            Tried<PresentDamping> there = present(each, ceramics, rail);
            return there.answered() ? there.value().peakOhm() : null;
        }, Worst.MOST, standing(present)));
        figures.add(only(Section.DAMPING, "Best peak of this bulk", "ohm", present.optimum().peakOhm(), "with the ESR of the next line"));
        figures.add(only(Section.DAMPING, "Best ESR of the bulk", "ohm", present.optimum().resistanceOhm(), "of all its parts together, at that peak"));
        figures.add(only(Section.DAMPING, "Bulk over ceramics", "", present.optimum().ratio(), "more lowers the best peak"));
        if (rail.loadStep() != null) {
            figures.add(leastBulk(present.optimum(), rail.loadStep()));
        }
    }

    private static TargetImpedance targetOf(LoadStep step) {
        return TargetImpedance.of(step.allowedDeviationV(), Math.abs(step.toA() - step.fromA()), step.slewAPerS());
    }

    /** So that the peak without the loop stays at what the load step allows. */
    private static DynamicFigure leastBulk(OptimalDamping present, LoadStep step) {
        double targetOhm = targetOf(step).impedanceOhm();
        OptimalDamping least = OptimalDamping.ofPeak(present.inductanceH(), present.capacitanceF(), targetOhm);
        return only(Section.DAMPING, "Least bulk over ceramics for the target impedance", "", least.ratio(), Words.quantity(least.bulkF(), "F") + " with an ESR of "
                + Words.quantity(least.resistanceOhm(), "\u03a9") + " in all would keep the peak at " + Words.quantity(targetOhm, "\u03a9")
                + ", the allowed deviation over the step, without any help of the loop; the bank has " + Words.quantity(present.ratio(), "")
                + " times its ceramics");
    }

    private static String standing(PresentDamping present) {
        String beside = present.timesBest() > NEAR ? "more than" : present.timesBest() < 1 / NEAR ? "less than" : "about";
        return "with " + Words.quantity(present.optimum().ratio(), "") + " times as much bulk as ceramics "
                + Words.quantity(present.optimum().resistanceOhm(), "Ω") + " would damp best; the bulk has "
                + Words.quantity(present.bulkOhm(), "Ω") + ", " + beside + " that";
    }

    private static Tried<PresentDamping> present(CornerFigures at, Set<Integer> ceramics, RailFigures rail) {
        return Tried.of(() -> PresentDamping.of(at.bank(), ceramics, at.corner().stage(rail).combinedInductanceH()));
    }

    private static DynamicFigure only(Section section, String name, String unit, Double value, String note) {
        return new DynamicFigure(section, name, unit, value, null, null, note);
    }
}
