package org.stillrail.electrical.evaluation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.capacitor.Characteristics;
import org.stillrail.electrical.capacitor.OperatingPoint;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.capacitor.Technology;
import org.stillrail.electrical.curve.Extremum;
import org.stillrail.electrical.curve.FrequencyGrid;

/** Anti-resonances that only another corner than the shown one brings out. */
class SharperRingTest {

    private static BranchInput part(String label, double capacitanceF, double resistanceOhm, double inductanceH) {
        PartInput part = new PartInput(List.of(new PartInput.Member(OperatingPoint.REFERENCE, ModelInput.of(new SeriesRlc(capacitanceF, resistanceOhm, inductanceH)))),
                1e3, capacitanceF, false, Characteristics.NONE, -0.2, 0.2, 0.25, 2.0);
        return new BranchInput(label, 1, null, Technology.CERAMIC_CLASS_1, 10.0, part, SeriesPath.NONE, SeriesPath.NONE, "test", false);
    }

    /** The first two ring near 1.6 MHz, in the quiet band, the first and the bulk near 60 kHz, in the damping band. */
    private static EvaluationInput ringing() {
        return Rails.input(Rails.everything(), part("bulk", 220e-6, 0.02, 150e-9), part("large", 47e-6, 0.008, 1e-9), part("small", 4.7e-6, 0.008, 0.7e-9));
    }

    private static SharperRing in(String band, Evaluation evaluation) {
        return evaluation.sharperRings().stream().filter(ring -> ring.band().equals(band)).findFirst().orElse(null);
    }

    @Test
    void sharpestOfTheQuietBandIsFoundOverAllCorners() {
        Evaluation evaluation = Evaluation.evaluate(ringing());
        SharperRing found = sharpestOfAll(evaluation);
        assertThat(found.qualityFactor()).isGreaterThan(1.25 * found.shownQ());
        assertThat(List.of(found.inductive(), found.capacitive())).containsExactly("'large'", "'small'");
        assertThat(found.shownQ()).isPositive().isCloseTo(evaluation.extrema().stream().filter(extremum -> extremum.kind() == Extremum.Kind.MAXIMUM
                && extremum.frequencyHz() > Rails.SWITCHING_HZ).mapToDouble(Extremum::qualityFactor).max().orElse(0), withPercentage(1e-6));
    }

    /** 45 mohm, 2 nH and 1 uF with little ESR beside 5 nH near 2 MHz: |Z| has a peak, and the reactance stays positive. */
    @Test
    void peakOfABankThatStaysInductiveIsFoundToo() {
        EvaluationInput input = Rails.input(Rails.everything(), part("bulk", 470e-6, 0.008, 5e-9), part("small", 1e-6, 0.18, 2e-9));
        Evaluation evaluation = Evaluation.evaluate(input);
        SharperRing found = sharpestOfAll(evaluation);
        assertThat(List.of(found.inductive(), found.capacitive())).containsExactly("'bulk'", "'small'");
        Corner there = evaluation.corners().stream().filter(each -> each.name().equals(found.corner())).findFirst().orElseThrow();
        FrequencyGrid quiet = FrequencyGrid.logSpaced(Rails.SWITCHING_HZ, 10 * Rails.SWITCHING_HZ, 2000);
        for (int i = 0; i < quiet.size(); i++) {
            assertThat(there.bank().at(quiet.hz(i)).reactanceOhm()).isPositive();
        }
    }

    /** What is told of the quiet band is the sharpest of every extremum at every corner. */
    private static SharperRing sharpestOfAll(Evaluation evaluation) {
        double sharpest = 0;
        String corner = null;
        for (Corner each : evaluation.corners()) {
            for (Extremum extremum : each.bank().extrema(Rails.SWITCHING_HZ, 10 * Rails.SWITCHING_HZ)) {
                if (extremum.kind() == Extremum.Kind.MAXIMUM && extremum.qualityFactor() > sharpest) {
                    sharpest = extremum.qualityFactor();
                    corner = each.name();
                }
            }
        }
        SharperRing found = in("quiet band", evaluation);
        assertThat(found.qualityFactor()).isCloseTo(sharpest, withPercentage(1e-6));
        assertThat(found.corner()).isEqualTo(corner).contains("ESR low");
        return found;
    }

    @Test
    void sharpestOfTheDampingBandIsTheWorstThatTheVerdictSees() {
        Evaluation evaluation = Evaluation.evaluate(ringing());
        double sharpest = Rails.verdicts(ringing()).figures().stream().map(each -> each.loop().value().worstRing())
                .mapToDouble(ring -> ring == null ? 0 : ring.qualityFactor()).max().orElseThrow();
        SharperRing found = in("damping band", evaluation);
        assertThat(found.qualityFactor()).isEqualTo(sharpest);
        assertThat(List.of(found.inductive(), found.capacitive())).containsExactly("'bulk'", "'large'");
    }

    @Test
    void nothingIsSaidWhereTheShownCornerIsTheSharpest() {
        String corner = in("quiet band", Evaluation.evaluate(ringing())).corner();
        assertThat(in("quiet band", Evaluation.evaluate(ringing(), corner))).isNull();
        assertThat(Evaluation.evaluate(Rails.input(Rails.everything(), Rails.polymer(2))).sharperRings()).isEmpty();
    }
}
