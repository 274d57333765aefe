package org.stillrail.electrical.evaluation;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.requirement.Requirement;
import org.stillrail.electrical.requirement.Topology;
import org.stillrail.electrical.requirement.Verdict;

/**
 * All verdicts on a bank, each the worst over the ways to fit it and over the corners of each. The compensator is placed once, for
 * the bank with its named parts: a board is not tuned again for an alternate.
 *
 * @param fittings the named parts first
 * @param compensation of the named parts; null without a control, and where the loop of the converter is not modelled
 * @param verdicts worst first
 * @param fits     of the models of all branches, as far as they were needed
 */
record Judgement(EvaluationInput input, Tried<Compensation> compensation, List<Verdicts> fittings, List<Verdict> verdicts, Fits fits) {

    /** One way to fit the bank, and the corners to look at it under, nominal first. */
    record Looked(Fitting fitting, List<Corner> corners) {

        /** Only what a picture of one corner needs: that corner, and the nominal one that the others lean on. */
        Looked only(Corner shown) {
            return new Looked(fitting, corners.stream().filter(corner -> corner == corners.get(0) || corner == shown).toList());
        }
    }

    /** @param shown the corner whose steps are drawn */
    static Judgement of(EvaluationInput input, List<Looked> looked, Corner shown) {
        Tried<Compensation> compensation = compensation(input.rail(), looked.get(0).corners().get(0).bank());
        Fits fits = Fits.none();
        List<Verdicts> fittings = looked.stream().map(each -> Verdicts.of(each.fitting(), each.corners(), shown, compensation, fits)).toList();
        return new Judgement(input, compensation, fittings, worst(fittings), fits);
    }

    /** The first of equals, so that of the named parts where the alternates make no difference. */
    private static List<Verdict> worst(List<Verdicts> fittings) {
        Map<Requirement, Verdict> worst = new EnumMap<>(Requirement.class);
        for (Verdicts each : fittings) {
            for (Verdict verdict : each.verdicts()) {
                Verdict named = verdict.corner() == null && each.fitting().name() != null ? verdict.withCorner(each.fitting().name()) : verdict;
                worst.merge(verdict.requirement(), named, (before, now) -> Verdict.WORST_FIRST.compare(now, before) < 0 ? now : before);
            }
        }
        return worst.values().stream().sorted(Verdict.WORST_FIRST).toList();
    }

    /** Figures of all corners that were looked at. */
    List<CornerFigures> figures() {
        return fittings.stream().flatMap(each -> each.figures().stream()).toList();
    }

    Verdict on(Requirement requirement) {
        return verdicts.stream().filter(verdict -> verdict.requirement() == requirement).findFirst().orElseThrow();
    }

    /** The figures of the corner that sets a verdict. */
    CornerFigures setting(Requirement requirement) {
        return decisive(requirement).setting(requirement);
    }

    /**
     * The verdicts with another count in one branch, in the order of the requirements: each with the parts and at the corner that set it now.
     *
     * @param count 0 takes the branch away
     */
    List<Verdict> withCount(int branch, int count) {
        Tried<Compensation> changed =
                compensation(input.rail(), Verdicts.changed(fittings.get(0).figures().get(0).bank(), branch, count));
        List<Verdict> after = new ArrayList<>();
        for (Verdicts each : fittings) {
            Set<Requirement> its = EnumSet.noneOf(Requirement.class);
            verdicts.stream().map(Verdict::requirement).filter(requirement -> decisive(requirement) == each).forEach(its::add);
            if (!its.isEmpty()) {
                after.addAll(each.withCount(branch, count, its, changed));
            }
        }
        return after;
    }

    /** The fitting that sets a verdict. */
    private Verdicts decisive(Requirement requirement) {
        Verdicts decisive = fittings.get(0);
        for (Verdicts each : fittings) {
            if (Verdict.WORST_FIRST.compare(each.on(requirement), decisive.on(requirement)) < 0) {
                decisive = each;
            }
        }
        return decisive;
    }

    /** Placed for the nominal bank; null without a control, and where the loop of the converter is not modelled. */
    static Tried<Compensation> compensation(RailFigures rail, Bank nominal) {
        boolean looped = rail.converter().control() != null && rail.converter().topology() == Topology.BUCK;
        return looped ? Compensation.of(rail, nominal) : null;
    }
}
