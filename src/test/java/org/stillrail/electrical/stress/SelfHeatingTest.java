package org.stillrail.electrical.stress;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillrail.electrical.capacitor.CharacteristicCurve;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

/** Steady temperature of a part whose losses go with it. */
class SelfHeatingTest {

    private static final Source BY_HAND = Source.independent("closed form worked out by hand");

    private static ThermalResistance kelvinPerWatt(double k) {
        return ThermalResistance.given(k, "test");
    }

    @Test
    void constantLossesRaiseItByLossTimesResistance() {
        SelfHeating heat = SelfHeating.of(40, kelvinPerWatt(50), t -> 0.3);
        assertThat(heat.coreC()).isCloseTo(55, within(1e-9));
        assertThat(heat.riseK()).isCloseTo(15, within(1e-9));
        assertThat(heat.feedback()).isCloseTo(0, within(1e-9));
        assertThat(heat.estimated()).isFalse();
    }

    @Test
    void smallWarmthIsToldInPlainNumbers() {
        assertThat(SelfHeating.of(55, kelvinPerWatt(2613), t -> 62.6e-6).sentence())
                .isEqualTo("0.0626 mW through 2610 K/W make the core 0.2 K warmer than the 55.0 \u00b0C round it.");
        assertThat(SelfHeating.of(60, kelvinPerWatt(55), t -> 323e-6).sentence()).contains("the core less than 0.1 K warmer");
        assertThat(SelfHeating.of(40, kelvinPerWatt(50), t -> 1.5).sentence()).startsWith("1.5 W through 50 K/W make the core 75.0 K warmer");
    }

    /** P = P0 (1 + a (T - Ta)): rise = Rth P0 / (1 - Rth P0 a). */
    @ParameterizedTest
    @CsvSource({"0.5, 0.02", "0.5, -0.01", "0.9, 0.0105", "0.2, 0.05"})
    void lossesInProportionToTemperature(double wattsAtAmbient, double perKelvin) {
        double step = 40 * wattsAtAmbient;
        SelfHeating heat = SelfHeating.of(30, kelvinPerWatt(40), t -> wattsAtAmbient * (1 + perKelvin * (t - 30)));
        Check.that(Topic.STRESS, "Losses of %s W that change by %s a kelvin, 40 K/W: rise Rth P / (1 - Rth P a)".formatted(wattsAtAmbient, perKelvin))
                .source(BY_HAND).expected("K", step / (1 - step * perKelvin)).relative(1e-8).got(heat.riseK());
        assertThat(heat.feedback()).isCloseTo(step * perKelvin, within(1e-6));
    }

    /** Rth dP/dT of 1 is the border: just below there is a steady state, above there is none. */
    @Test
    void runawayBeginsWhereTheFeedbackReachesOne() {
        SelfHeating below = SelfHeating.of(25, kelvinPerWatt(10), t -> 1 + 0.09 * (t - 25));
        assertThat(below.runsAway()).isFalse();
        assertThat(below.riseK()).isCloseTo(100, withPercentage(1e-8));
        assertThat(below.sentence()).contains("near thermal runaway");
        SelfHeating above = SelfHeating.of(25, kelvinPerWatt(10), t -> 1 + 0.1001 * (t - 25));
        assertThat(above.runsAway()).isTrue();
        assertThat(above.coreC()).isNull();
        assertThat(above.riseK()).isNull();
        assertThat(above.sentence()).startsWith("Thermal runaway");
    }

    /** Of two steady states the cooler one is what a part warming up comes to: 0.1 K^-1 (T - 25)^2 / 10 + 1 K meets the diagonal twice. */
    @Test
    void coolerOfTwoSteadyStatesIsTaken() {
        SelfHeating heat = SelfHeating.of(25, kelvinPerWatt(1), t -> 4 + 0.04 * (t - 25) * (t - 25));
        // 0.04 x^2 - x + 4 = 0: x = 5 or 20.
        Check.that(Topic.STRESS, "Losses that grow with the square of the rise: the cooler of two steady states").source(BY_HAND)
                .expected("K", 5).relative(1e-8).got(heat.riseK());
        assertThat(heat.feedback()).isCloseTo(0.4, within(1e-5));
    }

    @Test
    void wetAluminiumCalmsItself() {
        CharacteristicCurve esr = CharacteristicCurve.linear(-40, 8, 25, 1, 105, 0.5);
        SelfHeating cold = SelfHeating.of(-40, kelvinPerWatt(30), t -> 0.4 * esr.at(t));
        assertThat(cold.coreC() + 40).isCloseTo(30 * 0.4 * esr.at(cold.coreC()), withPercentage(1e-8));
        assertThat(cold.feedback()).isNegative();
        assertThat(cold.riseK()).isLessThan(30 * 0.4 * 8);
    }

    @Test
    void noLossesNoWarming() {
        SelfHeating heat = SelfHeating.of(25, kelvinPerWatt(30), t -> 0);
        assertThat(heat.coreC()).isEqualTo(25);
    }
}
