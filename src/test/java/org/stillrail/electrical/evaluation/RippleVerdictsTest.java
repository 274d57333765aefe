package org.stillrail.electrical.evaluation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.stillrail.electrical.requirement.InputRange;
import org.stillrail.electrical.requirement.LoadStep;
import org.stillrail.electrical.requirement.Outcome;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.requirement.Requirement;
import org.stillrail.electrical.requirement.RippleLimit;
import org.stillrail.electrical.requirement.Verdict;
import org.stillrail.electrical.ripple.BuckCurrent;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

/** Ripple and quiet band against closed forms. */
class RippleVerdictsTest {

    private static final double INPUT_V = 12;
    private static final double INDUCTANCE_H = 2.2e-6;
    private static final double CAPACITANCE_F = 100e-6;
    private static final double DUTY = Rails.OUTPUT_V / INPUT_V;
    private static final double CURRENT_A = Rails.OUTPUT_V * (1 - DUTY) / (INDUCTANCE_H * Rails.SWITCHING_HZ);

    private static Verdict on(Requirement requirement, RailFigures rail, BranchInput... branches) {
        return Evaluation.evaluate(Rails.input(rail, branches)).verdict(requirement);
    }

    /** Triangle of peak-to-peak dI: {@code In = dI |sin(n pi D)| / (n^2 pi^2 D (1 - D))}. */
    private static double amplitudeA(int n) {
        return CURRENT_A * Math.abs(Math.sin(n * Math.PI * DUTY)) / (n * n * Math.PI * Math.PI * DUTY * (1 - DUTY));
    }

    @Test
    void rippleOnBothSidesOfItsLimit() {
        double ripple = CURRENT_A / (8 * Rails.SWITCHING_HZ * CAPACITANCE_F);
        BranchInput capacitance = Rails.inline("c", 1, CAPACITANCE_F, 0, 0);
        Verdict met = on(Requirement.RIPPLE, Rails.rippleOnly(ripple * 1.0005), capacitance);
        Verdict notMet = on(Requirement.RIPPLE, Rails.rippleOnly(ripple * 0.9995), capacitance);
        Check.that(Topic.RIPPLE, "Ripple verdict of a capacitance alone: dI / (8 f C)").source(Source.fromMemory("steady-state waveforms of a buck, any textbook"))
                .expected("V", ripple).relative(1e-4).got(met.value());
        assertThat(met.outcome()).isEqualTo(Outcome.MET);
        assertThat(met.margin()).isPositive();
        assertThat(notMet.outcome()).isEqualTo(Outcome.NOT_MET);
        assertThat(notMet.margin()).isNegative();
        assertThat(notMet.sentence()).contains("'c'").contains("nominal");
        assertThat(notMet.citation()).isEqualTo(Rails.CITATION);
    }

    @Test
    void rippleIsWorstAtTheHighestInput() {
        RailFigures rail = Rails.with(Rails.rippleOnly(0.01), new InputRange(9, 12, 15));
        Verdict verdict = on(Requirement.RIPPLE, rail, Rails.inline("c", 1, CAPACITANCE_F, 0, 0));
        double duty = Rails.OUTPUT_V / 15;
        double expected = Rails.OUTPUT_V * (1 - duty) / (INDUCTANCE_H * Rails.SWITCHING_HZ) / (8 * Rails.SWITCHING_HZ * CAPACITANCE_F);
        assertThat(verdict.corner()).isEqualTo("highest input (15 V)");
        Check.that(Topic.RIPPLE, "Ripple verdict at the highest of three inputs: dI / (8 f C) with its duty")
                .source(Source.fromMemory("steady-state waveforms of a buck, any textbook")).expected("V", expected).relative(1e-4).got(verdict.value());
    }

    @Test
    void harmonicsOfTheConverterFollowTheFourierSeries() {
        List<QuietHarmonic> harmonics = QuietHarmonic.of(Rails.sound().bank(),
                new BuckCurrent(INPUT_V, Rails.OUTPUT_V, INDUCTANCE_H, Rails.SWITCHING_HZ, 1), 0.01);
        assertThat(harmonics).hasSize(10);
        for (QuietHarmonic harmonic : harmonics) {
            Check.that(Topic.RIPPLE, "Harmonics 1 to 10 in the quiet band: dI |sin n pi D| / (n^2 pi^2 D (1 - D))")
                    .source(Source.fromMemory("Fourier series of a triangle with unequal slopes")).expected("the closed form of each harmonic").absolute(1e-9)
                    .compare("A", amplitudeA(harmonic.order()), harmonic.currentA());
        }
    }

    /** A resistance is nearest to the mask at the fundamental, where the mask is lowest. */
    @Test
    void quietBandOnBothSidesOfItsLimit() {
        double resistance = 0.005;
        double weighted = 0;
        for (int n = 1; n <= 10; n++) {
            weighted += Math.sqrt(n) * amplitudeA(n);
        }
        double rippleV = resistance * 2 * weighted;
        BranchInput branch = Rails.inline("r", 1, 1, resistance, 0);
        Verdict met = on(Requirement.QUIET_BAND, Rails.rippleOnly(rippleV * 1.001), branch);
        Verdict notMet = on(Requirement.QUIET_BAND, Rails.rippleOnly(rippleV * 0.999), branch);
        assertThat(met.outcome()).isEqualTo(Outcome.MET);
        assertThat(met.limit()).isCloseTo(resistance * 1.001, within(1e-8));
        assertThat(notMet.outcome()).isEqualTo(Outcome.NOT_MET);
        assertThat(notMet.sentence()).contains("harmonic 1").contains("'r'");
    }

    @Test
    void quietBandFindsAnInductiveBankAtItsHighHarmonics() {
        BranchInput inductive = Rails.inline("l", 1, 1e-3, 0.0005, 5e-9);
        Verdict verdict = on(Requirement.QUIET_BAND, Rails.rippleOnly(0.05), inductive);
        assertThat(verdict.sentence()).contains("harmonic 10");
        assertThat(verdict.explanation().whatWouldChange()).contains("inductance");
    }

    /** So a bank that keeps the mask keeps the ripple limit, whatever the phases of its harmonics are. */
    @Test
    void harmonicsAtTheMaskTogetherReachTheRippleLimit() {
        double rippleV = 0.02;
        double sum = 0;
        for (QuietHarmonic harmonic : QuietHarmonic.of(Rails.sound().bank(),
                new BuckCurrent(INPUT_V, Rails.OUTPUT_V, INDUCTANCE_H, Rails.SWITCHING_HZ, 1), rippleV)) {
            sum += 2 * harmonic.currentA() * harmonic.limitOhm();
        }
        assertThat(sum).isCloseTo(rippleV, within(1e-12));
    }

    /** Interleaved phases leave only harmonics of their number. */
    @ParameterizedTest
    @ValueSource(ints = {2, 3, 4})
    void onlyHarmonicsWithACurrentAreJudged(int phases) {
        List<QuietHarmonic> harmonics = QuietHarmonic.of(Rails.sound().bank(),
                new BuckCurrent(INPUT_V, Rails.OUTPUT_V, INDUCTANCE_H, Rails.SWITCHING_HZ, phases), 0.01);
        assertThat(harmonics).isNotEmpty().allMatch(harmonic -> harmonic.order() % phases == 0);
    }

    @Test
    void withoutARippleLimitNeitherIsAsked() {
        RailFigures rail = Rails.with(Rails.everything(), (RippleLimit) null);
        assertThat(on(Requirement.RIPPLE, rail, Rails.polymer(2)).outcome()).isEqualTo(Outcome.NOT_ASKED);
        assertThat(on(Requirement.QUIET_BAND, rail, Rails.polymer(2)).outcome()).isEqualTo(Outcome.NOT_ASKED);
    }

    /**
     * Half the ripple of the inductor is the load where conduction stops being continuous, 3.3 V (1 - 3.3 / Vin) / (2 L f): 1.0875 A at
     * 12 V, and 1.17 A at the highest input of 15 V. The lightest load counts, which is where the step begins.
     */
    @ParameterizedTest
    @CsvSource({"1.16, true", "1.18, false"})
    void aLoadUnderHalfTheInductorsRippleIsWarnedAboutAtItsWorstCorner(double fromA, boolean warned) {
        RailFigures rail = Rails.with(Rails.everything(), new LoadStep(fromA, 5, 10e6, 0.1, Rails.CITATION));
        Evaluation evaluation = Evaluation.evaluate(Rails.input(rail, Rails.polymer(2), Rails.ceramic(4)));
        List<String> warnings = evaluation.warnings();
        assertThat(evaluation.conduction()).startsWith("All figures are for continuous conduction, which ends below a load of 1.17 A with highest input (15 V), the worst of ")
                .endsWith(warned ? "; the rail's lightest load of 1.16 A is under that." : " corners.");
        assertThat(warnings.stream().filter(warning -> warning.contains("continuous conduction")).toList()).hasSize(warned ? 1 : 0)
                .allMatch(warning -> warning.startsWith("The load of 1.16 A is under the 1.17 A with highest input (15 V)"));
    }
}
