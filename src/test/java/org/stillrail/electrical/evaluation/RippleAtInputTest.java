package org.stillrail.electrical.evaluation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stillrail.electrical.requirement.InputRange;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.requirement.Requirement;
import org.stillrail.electrical.requirement.Topology;
import org.stillrail.electrical.ripple.BranchRipple;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

class RippleAtInputTest {

    private static final double INDUCTANCE_H = 2.2e-6;
    private static final Source TEXTBOOK = Source.fromMemory("steady-state waveforms of a buck, any textbook");

    private static final RailFigures RAIL = Rails.with(Rails.rippleOnly(0.05), new InputRange(9, 12, 15));

    private static double rippleA(double inputV) {
        return Rails.OUTPUT_V * (1 - Rails.OUTPUT_V / inputV) / (INDUCTANCE_H * Rails.SWITCHING_HZ);
    }

    /** A capacitance so large that it makes nothing leaves resistance and inductance, whose closed forms are simple. */
    @Test
    void eachPartOfTheRippleFollowsTheInput() {
        double resistance = 0.01;
        double inductance = 2e-9;
        List<RippleAtInput> inputs = Evaluation.evaluate(Rails.input(RAIL, Rails.inline("r", 2, 10, resistance, inductance))).rippleOverInput();
        assertThat(inputs).extracting(RippleAtInput::place).containsExactly("least", "nominal", "most");
        for (RippleAtInput each : inputs) {
            double currentA = rippleA(each.inputV());
            String from = " of a buck from " + each.inputV() + " V";
            Check.that(Topic.RIPPLE, "ESR of two parts of 10 mohm under the ripple" + from + ": R dI / 2").source(TEXTBOOK)
                    .expected("V", resistance / 2 * currentA).relative(1e-4).got(each.ripple().fromResistance().peakToPeakV());
            Check.that(Topic.RIPPLE, "ESL of two parts of 2 nH under the ripple" + from + ": (ESL / 2) Vin / L").source(TEXTBOOK)
                    .expected("V", inductance / 2 * each.inputV() / INDUCTANCE_H).relative(1e-6).got(each.ripple().fromInductance().peakToPeakV());
            BranchRipple branch = each.ripple().branches().get(0);
            double rmsA = currentA / Math.sqrt(12);
            Check.that(Topic.RIPPLE, "Two parts of 10 mohm under the ripple" + from + ": rms of both dI / sqrt 12, of each half of it").source(TEXTBOOK)
                    .expected("A", rmsA, rmsA / 2).relative(1e-4).got(branch.rmsA(), branch.perPartRmsA());
            Check.that(Topic.RIPPLE, "Two parts of 10 mohm under the ripple" + from + ": heat in each, R (dI / 2)^2 / 12").source(TEXTBOOK)
                    .expected("W", resistance * rmsA * rmsA / 4).relative(1e-4).got(branch.perPartDissipationW());
            assertThat(each.continuousAboveA()).isCloseTo(currentA / 2, withPercentage(1e-6));
        }
    }

    /** The corner of the highest input differs from the nominal one in nothing else. */
    @Test
    void theMostIsTheVerdictsCornerAndTheShownCornerStaysOtherwise() {
        EvaluationInput input = Rails.input(RAIL, Rails.polymer(2), Rails.ceramic(4));
        Evaluation nominal = Evaluation.evaluate(input);
        assertThat(nominal.verdict(Requirement.RIPPLE).corner()).isEqualTo("highest input (15 V)");
        assertThat(nominal.rippleOverInput().get(2).ripple().peakToPeakV())
                .isCloseTo(nominal.verdict(Requirement.RIPPLE).value(), withPercentage(1e-9));
        assertThat(nominal.rippleOverInput().get(1).ripple().peakToPeakV()).isCloseTo(nominal.ripple().peakToPeakV(), withPercentage(1e-9));
        Evaluation highest = Evaluation.evaluate(input, "highest input (15 V)");
        assertThat(highest.rippleOverInput().get(2).ripple().peakToPeakV()).isCloseTo(highest.ripple().peakToPeakV(), withPercentage(1e-9));
        assertThat(highest.rippleOverInput().get(0).ripple().peakToPeakV())
                .isCloseTo(nominal.rippleOverInput().get(0).ripple().peakToPeakV(), withPercentage(1e-9));
    }

    @Test
    void aFixedInputIsOneColumnAndPicturesNone() {
        EvaluationInput input = Rails.input(Rails.rippleOnly(0.05), Rails.polymer(2));
        assertThat(Evaluation.evaluate(input).rippleOverInput()).extracting(RippleAtInput::place).containsExactly("nominal");
        assertThat(Evaluation.picturesOnly(input, null).rippleOverInput()).isEmpty();
    }

    /** A boost cannot make 3.3 V from 4 V; its other inputs are shown all the same. */
    @Test
    void anInputThatCannotMakeTheOutputSaysSo() {
        RailFigures boost = Rails.with(Rails.with(RAIL, Rails.converter(Topology.BOOST)), new InputRange(1.8, 2.5, 4));
        List<RippleAtInput> inputs = Evaluation.evaluate(Rails.input(boost, Rails.polymer(2))).rippleOverInput();
        assertThat(inputs.get(1).ripple()).isNotNull();
        assertThat(inputs.get(2).ripple()).isNull();
        assertThat(inputs.get(2).refusal()).contains("boost");
        assertThat(inputs.get(0).ripple().peakToPeakV()).isGreaterThan(inputs.get(1).ripple().peakToPeakV());
    }
}
