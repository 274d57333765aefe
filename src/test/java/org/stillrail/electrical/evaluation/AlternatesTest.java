package org.stillrail.electrical.evaluation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.stillrail.document.CanonicalJson;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.capacitor.Technology;
import org.stillrail.electrical.requirement.Requirement;
import org.stillrail.electrical.requirement.Space;
import org.stillrail.electrical.requirement.Verdict;

/** Verdicts over the named parts and all alternates. */
class AlternatesTest {

    private static BranchInput alternate(BranchInput of, String partNumber, double resistanceOhm, double ratedV, double areaM2) {
        return new BranchInput(of.label(), of.count(), partNumber, Technology.POLYMER_ALUMINIUM, ratedV,
                PartInput.fixed(new SeriesRlc(180e-6, resistanceOhm, 4e-9)), SeriesPath.NONE, SeriesPath.NONE, "datasheet: test figures", false)
                .withSize(2e-3, areaM2, null);
    }

    private static BranchInput with(BranchInput branch, BranchInput... alternates) {
        return branch.withAlternates(List.of(alternates), null);
    }

    /** The bank with the alternate as its named part, on its own. */
    private static EvaluationInput swapped(BranchInput alternate) {
        return Rails.input(Rails.everything(), alternate, Rails.ceramic(4));
    }

    @Test
    void everyVerdictIsTheWorstOfTheNamedPartsAndTheAlternates() {
        BranchInput slow = alternate(Rails.polymer(2), "SLOW", 0.012, 6.3, 10e-6);
        BranchInput lossy = alternate(Rails.polymer(2), "LOSSY", 0.1, 6.3, 10e-6);
        Evaluation both = Evaluation.evaluate(Rails.input(Rails.everything(), with(Rails.polymer(2), slow, lossy), Rails.ceramic(4)));
        List<Evaluation> alone = List.of(Evaluation.evaluate(Rails.sound()), Evaluation.evaluate(swapped(slow)), Evaluation.evaluate(swapped(lossy)));
        // These do not look at the compensator, which in a bank with alternates is that of the named parts.
        for (Requirement requirement : List.of(Requirement.RIPPLE, Requirement.QUIET_BAND, Requirement.VOLTAGE_RATING)) {
            Verdict expected = alone.stream().map(each -> each.verdict(requirement)).min(Verdict.WORST_FIRST).orElseThrow();
            assertThat(both.verdict(requirement).outcome()).isEqualTo(expected.outcome());
            assertThat(both.verdict(requirement).value()).as(requirement.label()).isCloseTo(expected.value(), within(1e-3 * expected.value()));
        }
        assertThat(both.verdict(Requirement.RIPPLE).value()).isGreaterThan(1.05 * alone.get(0).verdict(Requirement.RIPPLE).value());
        assertThat(both.verdict(Requirement.RIPPLE).corner()).as("more ESL and less C ring with the ceramics").endsWith("SLOW in 'polymer'");
    }

    @Test
    void cornersOfAllFittingsAreCountedAndTheNamedPartsAreShownFirst() {
        Evaluation one = Evaluation.evaluate(Rails.sound());
        Evaluation three = Evaluation.evaluate(Rails.input(Rails.everything(), with(Rails.polymer(2), alternate(Rails.polymer(2), "A", 0.012, 6.3, 1e-5),
                alternate(Rails.polymer(2), "B", 0.013, 6.3, 1e-5)), Rails.ceramic(4)));
        assertThat(three.corners()).hasSize(3 * one.corners().size());
        assertThat(three.corners().stream().map(Corner::name).distinct()).hasSize(three.corners().size());
        assertThat(three.claim().corners()).isEqualTo(three.corners().size());
        assertThat(three.shown().name()).isEqualTo("nominal");
        assertThat(three.ripple().peakToPeakV()).isEqualTo(one.ripple().peakToPeakV());
        assertThat(three.evidence()).anySatisfy(evidence -> assertThat(evidence.sentence()).contains("'polymer' with A"));
    }

    @Test
    void aCornerOfAnAlternateCanBeShownAndPicturedAlone() {
        BranchInput worse = alternate(Rails.polymer(2), "WORSE", 0.03, 6.3, 10e-6);
        EvaluationInput input = Rails.input(Rails.everything(), with(Rails.polymer(2), worse), Rails.ceramic(4));
        double expected = Evaluation.evaluate(swapped(worse)).ripple().peakToPeakV();
        for (Evaluation shown : List.of(Evaluation.evaluate(input, "WORSE in 'polymer'"), Evaluation.picturesOnly(input, "WORSE in 'polymer'"))) {
            assertThat(shown.shown().branches().get(0).partNumber()).isEqualTo("WORSE");
            assertThat(shown.ripple().peakToPeakV()).isCloseTo(expected, within(1e-12));
        }
    }

    /** A board is not tuned again for an alternate, so the margin differs from a design for the alternate alone. */
    @Test
    void theCompensatorStaysThatOfTheNamedParts() {
        BranchInput other = alternate(Rails.polymer(2), "OTHER", 0.02, 6.3, 10e-6);
        Evaluation both = Evaluation.evaluate(Rails.input(Rails.everything(), with(Rails.polymer(2), other), Rails.ceramic(4)), "OTHER in 'polymer'");
        assertThat(both.loop().compensator()).isEqualTo(Evaluation.evaluate(Rails.sound()).loop().compensator());
        assertThat(both.loop().compensator()).isNotEqualTo(Evaluation.evaluate(swapped(other)).loop().compensator());
    }

    @Test
    void anAlternateWithALowerRatingFailsTheBank() {
        Evaluation low = Evaluation.evaluate(Rails.input(Rails.everything(), with(Rails.polymer(2), alternate(Rails.polymer(2), "LOW", 0.012, 3.4, 1e-5)),
                Rails.ceramic(4)));
        assertThat(Evaluation.evaluate(Rails.sound()).verdict(Requirement.VOLTAGE_RATING).met()).isTrue();
        assertThat(low.verdict(Requirement.VOLTAGE_RATING).met()).isFalse();
        assertThat(low.claim().fits()).isFalse();
        assertThat(low.remedies()).allSatisfy(remedy -> assertThat(remedy.changes()).hasSameSizeAs(low.verdicts()));
    }

    @Test
    void areaCountsTheLargestAlternateAndTheEmptyPlaces() {
        EvaluationInput input = Rails.input(Rails.with(Rails.rippleOnly(1), new Space(null, 100e-6, null, Rails.CITATION)),
                Rails.polymer(2).withAlternates(List.of(alternate(Rails.polymer(2), "WIDE", 0.012, 6.3, 25e-6)), 1));
        Verdict area = Evaluation.evaluate(input).verdict(Requirement.AREA);
        assertThat(area.value()).isCloseTo(3 * 25e-6, within(1e-12));
        assertThat(area.corner()).isEqualTo("WIDE in 'polymer'");
        assertThat(area.sentence()).contains("one empty place");
    }

    @Test
    void upToSixteenCombinationsAreAllLookedAtAndThenABoundedChoice() {
        assertThat(names(1, 1)).containsExactly(null, "b1.1 in 'b1'", "b0.1 in 'b0'", "b0.1 in 'b0' and b1.1 in 'b1'");
        assertThat(names(3, 3)).hasSize(16);
        List<String> some = names(3, 3, 1);
        assertThat(some).hasSize(1 + 7 + 3).doesNotHaveDuplicates().startsWith((String) null)
                .contains("b2.1 in 'b2'", "b0.1 in 'b0' and b1.1 in 'b1' and b2.1 in 'b2'", "b0.3 in 'b0' and b1.3 in 'b1'");
        EvaluationInput input = input(3, 3, 1);
        assertThat(Fitting.note(input, Fitting.of(input))).startsWith("Of 32 combinations").contains("11 were looked at");
        assertThat(Fitting.note(input(3, 3), Fitting.of(input(3, 3)))).isNull();
        assertThatThrownBy(() -> Evaluation.evaluate(input(4, 4, 4, 1))).isInstanceOf(EvaluationRefusedException.class)
                .hasMessageContaining("at most 12 alternates, not 13");
    }

    @Test
    void aBankWithoutAlternatesKeepsItsBytesAndOneWithThemIsReadBack() {
        assertThat(CanonicalJson.write(Rails.sound())).doesNotContain("alternates", "unfitted");
        EvaluationInput with = Rails.input(Rails.everything(), Rails.polymer(2).withAlternates(List.of(alternate(Rails.polymer(2), "A", 0.02, 6.3, 1e-5)), 2));
        String stored = CanonicalJson.write(with);
        EvaluationInput read = CanonicalJson.read(stored, EvaluationInput.class);
        assertThat(CanonicalJson.write(read)).isEqualTo(stored);
        assertThat(EvaluationFigures.of(Evaluation.evaluate(read))).isEqualTo(EvaluationFigures.of(Evaluation.evaluate(with)));
    }

    private static List<String> names(int... alternates) {
        return new ArrayList<>(Fitting.of(input(alternates)).stream().map(Fitting::name).toList());
    }

    /** Branches b0, b1 ... with so many alternates each. */
    private static EvaluationInput input(int... alternates) {
        BranchInput[] branches = IntStream.range(0, alternates.length).mapToObj(k -> {
            BranchInput named = Rails.part("b" + k, 1, Technology.POLYMER_ALUMINIUM, 6.3, new SeriesRlc(220e-6, 0.012, 3e-9));
            return named.withAlternates(IntStream.rangeClosed(1, alternates[k])
                    .mapToObj(i -> alternate(named, "b" + k + "." + i, 0.01 + 0.001 * i, 6.3, 1e-5)).toList(), null);
        }).toArray(BranchInput[]::new);
        return Rails.input(Rails.rippleOnly(1), Arrays.copyOf(branches, branches.length));
    }
}
