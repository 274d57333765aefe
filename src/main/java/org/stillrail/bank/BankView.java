package org.stillrail.bank;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import org.stillrail.electrical.bank.BranchEffect;
import org.stillrail.electrical.bank.FigureEffect;
import org.stillrail.electrical.bank.Node;
import org.stillrail.electrical.evaluation.BranchInput;
import org.stillrail.electrical.evaluation.Claim;
import org.stillrail.electrical.evaluation.Corner;
import org.stillrail.electrical.evaluation.Evaluation;
import org.stillrail.electrical.evaluation.Evidence;
import org.stillrail.electrical.evaluation.Reading;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.ripple.BranchRipple;
import org.stillrail.web.Quantity;

/**
 * What a bank page says, in words and in the JSON of its pictures. A picture that the rail asks nothing for is null.
 *
 * @param conduction  what the figures hold for; null where the ripple is not modelled
 * @param rippleTable null with the pictures only, and where the ripple is not modelled
 * @param compensator null where no loop is closed
 * @param stress      null with the pictures only
 * @param corners     names of the corners that the verdicts look at
 * @param shownCorner the one that the pictures are of
 * @param fit {@code fit}, {@code unfit} or {@code unasked}: how the claim is dressed
 */
record BankView(
        String phrase,
        String fit,
        String claim,
        List<String> reasons,
        EvidenceLine evidence,
        String conduction,
        List<VerdictLine> verdicts,
        List<RemedyLine> remedies,
        RippleTable rippleTable,
        StressView stress,
        List<ReadingLine> readings,
        List<DynamicLine.Group> dynamics,
        CompensatorView compensator,
        List<EffectLine> effects,
        List<BranchFacts> branches,
        List<String> warnings,
        List<String> corners,
        String shownCorner,
        Pictures pictures) {

    /** The weakest thing that the claim rests on. */
    record EvidenceLine(String sentence, Integer branch) {
    }

    /** The bank at one frequency, with each branch's share. */
    record ReadingLine(String name, String frequency, String magnitude, String resistance, String carriers) {
    }

    /** What one part more, one fewer and none of a branch do to one figure. */
    record EffectLine(int branch, String label, String figure, String now, String more, String fewer, String none) {
    }

    /** What is known of one branch under this converter. */
    record BranchFacts(
            String label, int count, String source, String samples, String mounting, String node, String capacitance, String resistance, String atCrossover, String atSwitching,
            String current, String heat) {
    }

    /** @param neighbour null for none */
    static BankView of(Evaluation evaluation, Evaluation neighbour) {
        BankWords words = new BankWords(evaluation);
        Claim claim = evaluation.claim();
        boolean asked = claim.asked() > 0 && setsLimits(evaluation.input().rail());
        Evidence weakest = evaluation.weakestEvidence();
        return new BankView(words.phrase(),
                asked ? claim.fits() ? "fit" : "unfit" : "unasked",
                asked ? claim.sentence() : words.whatItDoes(),
                words.reasons(),
                new EvidenceLine(weakest.sentence(), weakest.branch()),
                evaluation.conduction(), VerdictLine.of(evaluation), RemedyLine.of(evaluation), RippleTable.of(evaluation), StressView.of(evaluation),
                readings(evaluation), DynamicLine.of(evaluation), CompensatorView.of(evaluation), effects(evaluation), branches(evaluation), evaluation.warnings(),
                evaluation.corners().stream().map(Corner::name).toList(), evaluation.shown().name(), Pictures.of(evaluation, neighbour));
    }

    /** A scratch bank is only read; its parts' ratings alone make no claim. */
    private static boolean setsLimits(RailFigures rail) {
        return rail.ripple() != null || rail.window() != null || rail.loadStep() != null || rail.esrWindow() != null || rail.space() != null;
    }

    private static List<ReadingLine> readings(Evaluation evaluation) {
        String where = evaluation.input().distance() == null ? "" : ", " + Node.LOAD.label();
        return List.of(
                reading("crossover" + where, evaluation.atCrossover(), evaluation.input().branches()),
                reading("switching" + where, evaluation.atSwitching(), evaluation.input().branches()));
    }

    private static ReadingLine reading(String name, Reading at, List<BranchInput> branches) {
        List<String> carriers = new ArrayList<>();
        for (int k = 0; k < branches.size(); k++) {
            carriers.add(branches.get(k).label() + " " + percent(at.shares().get(k)));
        }
        return new ReadingLine(name, Quantity.format(at.frequencyHz(), "Hz"), Quantity.format(at.magnitudeOhm(), "ohm"),
                Quantity.format(at.resistanceOhm(), "ohm"), String.join(", ", carriers));
    }

    private static List<EffectLine> effects(Evaluation evaluation) {
        List<EffectLine> lines = new ArrayList<>();
        for (int k = 0; k < evaluation.effects().size(); k++) {
            BranchEffect effect = evaluation.effects().get(k);
            for (FigureEffect figure : effect.figures()) {
                lines.add(new EffectLine(k, effect.label(), figure.name(), show(figure.now(), figure.unit()), show(figure.oneMore(), figure.unit()),
                        show(figure.oneFewer(), figure.unit()), show(figure.none(), figure.unit())));
            }
        }
        return lines;
    }

    private static List<BranchFacts> branches(Evaluation evaluation) {
        List<BranchFacts> facts = new ArrayList<>();
        for (int k = 0; k < evaluation.input().branches().size(); k++) {
            BranchInput branch = evaluation.input().branches().get(k);
            BranchRipple ripple = evaluation.ripple() == null ? null : evaluation.ripple().branches().get(k);
            Integer samples = branch.evidence().samples();
            facts.add(new BranchFacts(branch.label(), branch.count(), branch.source(),
                    samples == null ? "none measured" : samples == 1 ? "one measured" : samples + " measured",
                    Places.mounting(branch), evaluation.input().distance() == null ? null : branch.node().label(),
                    capacitance(evaluation, k), resistance(evaluation, k),
                    share(evaluation, evaluation.atCrossover(), k), share(evaluation, evaluation.atSwitching(), k),
                    ripple == null ? "not modelled" : Quantity.format(ripple.perPartRmsA(), "A") + " rms",
                    ripple == null ? "not modelled" : Quantity.format(ripple.perPartDissipationW(), "W")));
        }
        return facts;
    }

    /** At two nodes of either current that may enter. */
    private static String share(Evaluation evaluation, Reading at, int branch) {
        String share = percent(at.shares().get(branch));
        return evaluation.input().distance() == null ? share : share + " of the load's current, "
                + percent(evaluation.shown().bank().response(Node.CONVERTER, Node.LOAD).share(branch, at.frequencyHz())) + " of the converter's";
    }

    /** What is left of one part's capacitance at the shown corner, and the least and most over all corners. */
    private static String capacitance(Evaluation evaluation, int branch) {
        DoubleSummaryStatistics all = evaluation.corners().stream()
                .mapToDouble(corner -> corner.parts().get(branch).capacitanceF()).summaryStatistics();
        return Quantity.format(evaluation.shown().parts().get(branch).capacitanceF(), "F", 3) + span(all, "F");
    }

    /** Re Z of one part at the switching frequency, likewise. */
    private static String resistance(Evaluation evaluation, int branch) {
        double hz = evaluation.frequencies().switchingHz();
        DoubleSummaryStatistics all = evaluation.corners().stream()
                .mapToDouble(corner -> corner.parts().get(branch).model().at(hz).resistanceOhm()).summaryStatistics();
        return Quantity.format(evaluation.shown().parts().get(branch).model().at(hz).resistanceOhm(), "ohm", 3) + span(all, "ohm");
    }

    private static String span(DoubleSummaryStatistics all, String unit) {
        return all.getMax() - all.getMin() < 1e-9 * all.getMax() ? ""
                : " (" + Quantity.format(all.getMin(), unit, 3) + " to " + Quantity.format(all.getMax(), unit, 3) + ")";
    }

    static String percent(double share) {
        return Quantity.format(100 * share, "%", 2);
    }

    static String show(Double value, String unit) {
        return value == null ? "\u2013" : Quantity.format(value, unit);
    }
}
