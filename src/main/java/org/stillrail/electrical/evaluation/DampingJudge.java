package org.stillrail.electrical.evaluation;

import java.util.List;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.CarrierRibbon.Ring;
import org.stillrail.electrical.curve.Extremum;
import org.stillrail.electrical.requirement.Bound;
import org.stillrail.electrical.requirement.ExplainingSeries;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.requirement.Requirement;
import org.stillrail.electrical.requirement.Span;
import org.stillrail.electrical.requirement.TeamSettings;
import org.stillrail.electrical.requirement.Topology;
import org.stillrail.electrical.requirement.Verdict;
import org.stillrail.electrical.requirement.Verdict.Explanation;

/**
 * From a third of to three times the crossover: the peak of 1 / |1 + T| at most the team's, and no maximum of |Zbank| with
 * Q above 1. The one with less margin gives the numbers.
 */
final class DampingJudge implements Judge {

    private static final double LARGEST_Q = 1;
    private static final double SHARE_THAT_COUNTS = 0.1;

    private final RailFigures rail;
    private final double largestPeak;
    private final List<BranchInput> branches;
    private final VerdictForm form;

    DampingJudge(EvaluationInput input) {
        this.rail = input.rail();
        this.largestPeak = input.settings().largestSensitivityPeak();
        this.branches = input.branches();
        this.form = new VerdictForm(Requirement.DAMPING, Bound.AT_MOST, "", null,
                List.of(ExplainingSeries.SENSITIVITY, ExplainingSeries.LOOP_GAIN, ExplainingSeries.BANK_IMPEDANCE, ExplainingSeries.BANK_ESR));
    }

    @Override
    public Verdict at(CornerFigures figures) {
        if (rail.converter().topology() != Topology.BUCK) {
            return form.notModelled("The loop of a " + rail.converter().topology().label() + " converter is not modelled.");
        }
        if (rail.converter().control() == null) {
            return form.notAsked("The converter's control is not stated, so there is no loop to damp.");
        }
        String corner = figures.corner().name();
        if (!figures.loop().answered()) {
            return form.unknown(largestPeak, corner, figures.loop().refusal());
        }
        LoopBand band = figures.loop().value();
        if (!band.stable()) {
            return unstable(figures, band, corner);
        }
        if (band.crossoverHz() == null) {
            return form.unknown(largestPeak, corner, "The loop gain does not cross 1, so there is no band round a crossover");
        }
        double peakMargin = (largestPeak - band.sensitivityPeak()) / largestPeak;
        boolean rings = band.worstRing() != null && (LARGEST_Q - band.worstRing().qualityFactor()) / LARGEST_Q < peakMargin;
        Verdict verdict = rings ? ring(figures.bank(), band, corner) : peak(figures.bank(), band, corner);
        Integer unbounded = verdict.met() ? withoutLeastResistance(branches, figures.bank(), band.crossoverHz()) : null;
        return unbounded == null ? verdict : form.unknown(verdict.limit(), corner, "No smallest ESR is known of "
                + Carrier.name(figures.bank(), unbounded) + ", so nobody can say how little it may damp");
    }

    /** The first branch with a share in the current at the crossover whose smallest ESR is not known, or null. */
    static Integer withoutLeastResistance(List<BranchInput> branches, Bank bank, double crossoverHz) {
        for (int k = 0; k < branches.size(); k++) {
            if (branches.get(k).part().leastResistance() == null && Carrier.share(bank, k, crossoverHz) > SHARE_THAT_COUNTS) {
                return k;
            }
        }
        return null;
    }

    private Verdict unstable(CornerFigures figures, LoopBand band, String corner) {
        double hz = figures.crossoverHz(rail);
        Carrier carrier = Carrier.at(figures.bank(), hz);
        return form.notMet(largestPeak, corner, carrier.index(), "The closed loop is unstable" + Corner.at(corner) + ".",
                new Explanation("The loop gain encircles -1, so the output oscillates.",
                        carrier.name() + " carries most of the current at the crossover and sets the bank's phase there.",
                        "A lower crossover, or a bank with more phase at the crossover, is needed."),
                new Span(hz / LoopBand.SPREAD, hz * LoopBand.SPREAD));
    }

    private Verdict peak(Bank bank, LoopBand band, String corner) {
        Carrier carrier = Carrier.at(bank, band.peakHz());
        String sentence = "The loop amplifies disturbances " + Words.beside(band.sensitivityPeak(), largestPeak, "") + " times at "
                + Words.quantity(band.peakHz(), "Hz") + ", " + Words.quantity(largestPeak, "") + " allowed," + Corner.at(corner)
                + "; the bank's ESR at the crossover is " + Words.quantity(band.esrAtCrossoverOhm(), "Ω") + ", and " + carrier.name()
                + " carries most of the current.";
        Explanation explanation = new Explanation(
                "The phase margin is " + Words.quantity(band.phaseMarginDeg(), "") + "° at the crossover of "
                        + Words.quantity(band.crossoverHz(), "Hz") + ".",
                carrier.name() + " carries " + Words.percent(carrier.share()) + " of the current at the peak.",
                "A larger phase margin, a lower crossover, or more ESR round the crossover lowers the peak.");
        return form.judged(largestPeak, band.sensitivityPeak(), corner, carrier.index(), sentence, explanation, span(band));
    }

    private Verdict ring(Bank bank, LoopBand band, String corner) {
        Extremum ring = band.worstRing();
        Ring named = Ring.of(bank, ring);
        String who = named == null ? "the bank rings" : named.inductive().name(bank) + " rings against " + named.capacitive().name(bank);
        String sentence = "In the damping band " + who + " at " + Words.quantity(ring.frequencyHz(), "Hz") + " with a Q of "
                + Words.beside(ring.qualityFactor(), LARGEST_Q, "") + ", " + Words.quantity(LARGEST_Q, "") + " allowed," + Corner.at(corner)
                + "; the bank's ESR at the crossover is " + Words.quantity(band.esrAtCrossoverOhm(), "Ω") + ".";
        Explanation explanation = new Explanation(
                "|Z| has a maximum of " + Words.quantity(ring.magnitudeOhm(), "Ω") + " at " + Words.quantity(ring.frequencyHz(), "Hz") + ".",
                named == null ? "No two branches can be named."
                        : named.inductive().name(bank) + " is the inductor there and " + named.capacitive().name(bank) + " the capacitor.",
                "ESR in one of the two, or values further apart in frequency, damps it.");
        return form.judged(LARGEST_Q, ring.qualityFactor(), corner, named == null ? null : branchOf(named), sentence, explanation, span(band));
    }

    /** The capacitor of the two, or its partner where that is the load's own. */
    private static Integer branchOf(Ring ring) {
        return ring.capacitive().isLoad() ? ring.inductive().branch() : ring.capacitive().branch();
    }

    private static Span span(LoopBand band) {
        return new Span(band.fromHz(), band.toHz());
    }
}
