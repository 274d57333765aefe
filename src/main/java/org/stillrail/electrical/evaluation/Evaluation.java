package org.stillrail.electrical.evaluation;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.BankCurves;
import org.stillrail.electrical.bank.BankFigure;
import org.stillrail.electrical.bank.BranchEffect;
import org.stillrail.electrical.bank.CarrierRibbon;
import org.stillrail.electrical.bank.Node;
import org.stillrail.electrical.converter.LoopResult;
import org.stillrail.electrical.curve.Extremum;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.requirement.Requirement;
import org.stillrail.electrical.requirement.Topology;
import org.stillrail.electrical.requirement.Verdict;
import org.stillrail.electrical.ripple.PeriodicCurrent;
import org.stillrail.electrical.ripple.Ripple;

/**
 * Every figure of a bank on its rail, a pure function of the input.
 *
 * @param corners      looked at by the verdicts, those of every way to fit the bank, the nominal one of the named parts first
 * @param curves       as the load sees it, with the shares of a current there, on the grid of the charts
 * @param fromConverter with the converter's current instead: to the load, with its shares; null at one node, where it is the same
 * @param extrema      of |Z| on the grid of the charts
 * @param atCrossover  the bank at the crossover
 * @param atSwitching  the bank at the switching frequency
 * @param ripple       at the load under the converter's current at that corner; null for a flyback of unknown turns
 * @param rippleAtConverter at the converter's node; null likewise, and at one node
 * @param rippleOverInput the ripple at the load from each of the rail's inputs at the shown corner; empty with the pictures only, and for a
 *                     flyback of unknown turns
 * @param quiet        the harmonics against the quiet band's mask; empty where no ripple limit is set
 * @param loop         on the grid of the charts; null where the rail has no control, it is not
 *                     modelled, or it was refused (then the verdicts say why)
 * @param steps        at the nominal corner, with the loop; null likewise, and where no load step is asked
 * @param stepsUnlimited as {@code steps} would be without duty limits, that is linear; null where neither way meets a limit, or it runs away
 * @param stepsAlone   the bank alone under the same steps, for one period of the crossover; null where no load step is asked
 * @param pattern      the load that does worst; null where there is no step, it cannot be had, or only pictures are asked for
 * @param dynamics     figures of loop, load step and damping beside the verdicts; empty where only pictures are asked for
 * @param compensator  that closes the loop; null without a control and for a converter whose loop is not modelled
 * @param window       the shares of the voltage window at the corner of its verdict; null where not asked or not known
 * @param stress       what the parts bear and the bank holds; null with the pictures only
 * @param verdicts     one for each {@link Requirement}, worst first
 * @param evidence     what the claim rests on, weakest first
 * @param remedies     one part more and one fewer in each branch
 * @param brackets     what the bank has to do where
 * @param effects      what one part more, one fewer and none does
 * @param idle         branches that do next to nothing where it matters
 * @param sharperRings anti-resonances of the bands that are notably sharper at another corner; empty with the pictures only
 * @param conduction   that the figures are for continuous conduction, and down to which load it lasts; null for a flyback of unknown turns and for a drawn current
 */
public record Evaluation(
        EvaluationInput input,
        List<Corner> corners,
        Corner shown,
        KeyFrequencies frequencies,
        BankCurves curves,
        BankCurves fromConverter,
        List<Extremum> extrema,
        CarrierRibbon ribbon,
        Reading atCrossover,
        Reading atSwitching,
        Ripple ripple,
        Ripple rippleAtConverter,
        List<RippleAtInput> rippleOverInput,
        List<QuietHarmonic> quiet,
        LoopResult loop,
        StepPair steps,
        StepPair stepsUnlimited,
        StepPair stepsAlone,
        LoadPattern pattern,
        List<DynamicFigure> dynamics,
        CompensatorInUse compensator,
        WindowShares window,
        BankStress stress,
        List<Verdict> verdicts,
        Claim claim,
        List<Evidence> evidence,
        List<Remedy> remedies,
        List<Bracket> brackets,
        List<BranchEffect> effects,
        List<IdleBranch> idle,
        List<SharperRing> sharperRings,
        String conduction,
        List<String> warnings) {

    private static final double LOWEST_HZ = 100;
    private static final double HIGHEST_HZ = 100e6;
    private static final int POINTS = 1000;
    private static final double NEXT_TO_NOTHING = 0.1;
    private static final double HALF = 0.5;
    /** Most of the ripple current is below this multiple of the switching frequency. */
    private static final double FIRST_HARMONICS = 3;

    /**
     * @throws EvaluationRefusedException where not even the impedance can be had, saying why; nothing else is thrown for any input,
     *                                    but an interrupted thread gets a CancellationException
     */
    public static Evaluation evaluate(EvaluationInput input) {
        return evaluate(input, null);
    }

    /**
     * The same with curves, ripple, loop and load step of another corner; the verdicts are always over all corners.
     *
     * @param shownCorner name of the corner to show; null, or a name that this bank does not have, for the nominal one
     */
    public static Evaluation evaluate(EvaluationInput input, String shownCorner) {
        return evaluate(input, shownCorner, false);
    }

    /**
     * Only the shown corner, for pictures that follow someone's typing at once: {@code verdicts} and {@code claim} are not over
     * all corners and must not be shown; {@code remedies} and {@code effects} are empty.
     */
    public static Evaluation picturesOnly(EvaluationInput input, String shownCorner) {
        return evaluate(input, shownCorner, true);
    }

    private static Evaluation evaluate(EvaluationInput input, String shownCorner, boolean picturesOnly) {
        try {
            return evaluateAll(input, shownCorner, picturesOnly);
        } catch (IllegalArgumentException | ArithmeticException e) {
            throw new EvaluationRefusedException(e.getMessage(), e);
        }
    }

    private static Evaluation evaluateAll(EvaluationInput input, String shownCorner, boolean picturesOnly) {
        RailFigures rail = input.rail();
        List<Fitting> fittings = Fitting.of(input);
        List<Judgement.Looked> looked = fittings.stream()
                .filter(fitting -> !picturesOnly || fitting.name() == null || shownCorner != null && shownCorner.endsWith(fitting.name()))
                .map(fitting -> new Judgement.Looked(fitting, Corner.of(fitting))).toList();
        List<Corner> corners = looked.stream().flatMap(each -> each.corners().stream()).toList();
        Corner shown = corners.stream().filter(corner -> corner.name().equals(shownCorner)).findFirst().orElse(corners.get(0));
        Bank bank = shown.bank();
        Judgement judged = Judgement.of(input, picturesOnly ? looked.stream().map(each -> each.only(shown)).toList() : looked, shown);
        CornerFigures figures = judged.figures().stream().filter(each -> each.corner() == shown).findFirst().orElseThrow();
        KeyFrequencies frequencies = figures.frequencies(rail);
        FrequencyGrid grid = FrequencyGrid.logSpaced(
                Math.min(LOWEST_HZ, frequencies.dampingFromHz() / 3), Math.max(HIGHEST_HZ, 3 * frequencies.quietToHz()), POINTS);
        BankCurves curves = bank.on(grid);
        BankCurves fromConverter = bank.distance() == null ? null : bank.response(Node.CONVERTER, Node.LOAD).on(grid);
        List<Extremum> extrema = bank.extrema(grid.startHz(), grid.stopHz());
        Set<String> warnings = new LinkedHashSet<>();
        PeriodicCurrent current = shown.current(rail);
        Ripple ripple = current == null ? null : Ripple.of(bank, current, Ripple.DEFAULT_SAMPLES);
        Ripple rippleAtConverter = current == null || bank.distance() == null ? null
                : Ripple.atConverter(bank, current, Ripple.DEFAULT_SAMPLES);
        Optional<Continuity> continuity = Continuity.of(rail, corners);
        Dynamics dynamics = Dynamics.of(input, figures, judged.compensation(), frequencies, grid, judged.fits().proper());
        if (ripple != null) {
            warnings.addAll(ripple.warnings());
            warnings.addAll(currentWarnings(rail, continuity));
        }
        if (!frequencies.crossoverGiven()) {
            warnings.add("No crossover is stated; a tenth of the switching frequency stands in for it.");
        }
        warnings.addAll(dynamics.warnings());
        warnings.addAll(AveragedModel.warnings(rail, judged.figures()));
        List<TakenAsFlat> parts = TakenAsFlat.all(input, corners);
        parts.forEach(part -> warnings.addAll(part.sentences()));
        String combinations = Fitting.note(input, fittings);
        if (combinations != null) {
            warnings.add(combinations);
        }
        Tried<LoadPattern> pattern = picturesOnly ? null : LoadPattern.of(rail, figures, judged.compensation(), judged.fits().proper());
        List<Remedy> remedies = picturesOnly ? List.of() : Remedy.of(judged);
        List<Verdict> verdicts = judged.verdicts().stream().map(verdict -> Remedy.advise(verdict, remedies)).toList();
        return new Evaluation(input, corners, shown, frequencies, curves, fromConverter, extrema, CarrierRibbon.of(bank, curves, extrema),
                reading(bank, frequencies.crossoverHz()), reading(bank, frequencies.switchingHz()), ripple, rippleAtConverter,
                picturesOnly ? List.of() : RippleAtInput.of(rail, shown), figures.quiet(),
                dynamics.loop(), dynamics.steps(), dynamics.stepsUnlimited(), dynamics.stepsAlone(),
                pattern == null ? null : pattern.value(),
                picturesOnly ? List.of() : DynamicFigure.of(rail, input.branches(), figures, judged.figures(), dynamics,
                        pattern),
                CompensatorInUse.of(rail, judged.compensation()), window(rail, judged), picturesOnly ? null : BankStress.of(judged), verdicts, Claim.of(verdicts, corners.size()),
                Evidence.of(parts, looked.get(0).corners().contains(shown) ? bank : corners.get(0).bank(), frequencies, verdicts), remedies,
                Bracket.of(frequencies, grid.startHz()),
                picturesOnly ? List.of() : effects(bank, frequencies, current),
                idle(fromConverter == null ? List.of(curves) : List.of(curves, fromConverter), frequencies),
                picturesOnly ? List.of() : SharperRing.of(judged.figures(), figures, frequencies),
                continuity.map(Continuity::sentence).orElse(null), List.copyOf(warnings));
    }

    /** The verdict on one requirement. */
    public Verdict verdict(Requirement requirement) {
        return verdicts.stream().filter(verdict -> verdict.requirement() == requirement).findFirst().orElseThrow();
    }

    /** The weakest evidence that the claim rests on. */
    public Evidence weakestEvidence() {
        return evidence.get(0);
    }

    private static List<String> currentWarnings(RailFigures rail, Optional<Continuity> continuity) {
        List<String> warnings = new ArrayList<>();
        continuity.flatMap(Continuity::warning).ifPresent(warnings::add);
        if (rail.converter().topology() == Topology.DRAWN) {
            warnings.add("The converter's current is the one that the rail draws: the same from every input, at every load and age; only its period "
                    + "follows the switching frequency.");
        } else if (rail.converter().topology() != Topology.BUCK) {
            Double statedS = rail.converter().edgeS();
            warnings.add("The edges of the rectifier's current are " + (statedS == null ? "taken as " : "stated as ")
                    + Words.quantity(rail.converter().edgeOrUsualS(), "s") + " long; the spike across the bank's inductance goes with the reciprocal of that.");
        }
        return warnings;
    }

    private static WindowShares window(RailFigures rail, Judgement judged) {
        if (rail.window() == null || rail.loadStep() != null && rail.converter().topology() != Topology.BUCK) {
            return null;
        }
        return WindowJudge.shares(rail, judged.setting(Requirement.WINDOW)).value();
    }

    private static Reading reading(Bank bank, double hz) {
        return Reading.of(bank.on(FrequencyGrid.of(hz)));
    }

    private static List<BranchEffect> effects(Bank bank, KeyFrequencies frequencies, PeriodicCurrent current) {
        List<BankFigure> figures = new ArrayList<>(List.of(
                new BankFigure("ESR at crossover", "ohm", changed -> changed.at(frequencies.crossoverHz()).resistanceOhm()),
                new BankFigure("|Z| at switching", "ohm", changed -> Math.sqrt(changed.at(frequencies.switchingHz()).squaredMagnitude()))));
        if (current != null) {
            figures.add(new BankFigure("Ripple", "V", changed -> Ripple.quickPeakToPeakV(changed, current)));
        }
        return BranchEffect.of(bank, figures);
    }

    /** @param curves of each current that may enter: a branch that works for none of them is idle */
    private static List<IdleBranch> idle(List<BankCurves> curves, KeyFrequencies frequencies) {
        List<IdleBranch> idle = new ArrayList<>();
        FrequencyGrid grid = curves.get(0).bank().grid();
        for (int k = 0; k < curves.get(0).shares().size(); k++) {
            double largest = 0;
            Double worksFrom = null;
            for (int i = 0; i < grid.size(); i++) {
                double hz = grid.hz(i);
                double size = 0;
                for (BankCurves each : curves) {
                    size = Math.max(size, each.shares().get(k).magnitude(i));
                }
                boolean matters = hz >= frequencies.dampingFromHz() && hz <= frequencies.dampingToHz()
                        || hz >= frequencies.quietFromHz() && hz <= FIRST_HARMONICS * frequencies.switchingHz();
                if (matters) {
                    largest = Math.max(largest, size);
                }
                if (worksFrom == null && size >= HALF) {
                    worksFrom = hz;
                }
            }
            if (largest < NEXT_TO_NOTHING) {
                idle.add(new IdleBranch(k, largest, worksFrom));
            }
        }
        return List.copyOf(idle);
    }
}
