package org.stillrail.electrical.stress;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.stillrail.electrical.capacitor.CharacteristicCurve;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

/** Start-up and bleeding. */
class StartUpTest {

    private static final Source TEXTBOOK = Source.fromMemory("I = C dV/dt and t = R C ln(V / Vsafe), any textbook");
    private static final Source INTEGRAL = Source.independent("integral over the bias curve by hand");
    private static final Source SAFETY_PAGE = Source.seen("public electrical safety page of a laboratory: 100 V and 10 J, or above 100 J below 100 V");

    private static final BankCharge CONSTANT = new BankCharge(List.of(new BiasCharge(2, 5e-4, null)));
    private static final BankCharge CERAMIC =
            new BankCharge(List.of(new BiasCharge(10, 1e-4, CharacteristicCurve.linear(0, 1, 5, 0.4))));

    @Test
    void rampOfAConstantCapacitance() {
        StartUp start = StartUp.of(CONSTANT, 5, 1e-3, 8.0, 2, 0.5);
        Check.that(Topic.STRESS, "1 mF charged to 5 V in 1 ms: largest and mean current").source(TEXTBOOK).expected("A", 5, 5).relative(1e-9)
                .got(start.peakChargingA(), start.meanChargingA());
        assertThat(start.chargeC()).isCloseTo(5e-3, withPercentage(1e-9));
        assertThat(start.energyJ()).isCloseTo(12.5e-3, withPercentage(1e-9));
        assertThat(start.availableA()).isCloseTo(5.5, within(1e-12));
        assertThat(start.largestBankShare()).isCloseTo(1.1, withPercentage(1e-9));
        Check.that(Topic.STRESS, "Largest bank for 5.5 A to spare, 5 V in 1 ms").source(TEXTBOOK).expected("F", 1.1e-3).relative(1e-9)
                .got(start.largestCapacitanceF());
        assertThat(start.atLimitS()).isCloseTo(5e-3 / 5.5, withPercentage(1e-9));
        assertThat(start.starts()).isTrue();
    }

    /** A ceramic bank takes most at the very start, where it has no bias. */
    @Test
    void ceramicsTakeMostWithoutBias() {
        StartUp start = StartUp.of(CERAMIC, 5, 1e-3, null, 0, 0);
        assertThat(start.peakAtV()).isZero();
        Check.that(Topic.STRESS, "Ceramics that fall to 40 % at 5 V, charged in 1 ms: largest and mean current").source(INTEGRAL)
                .expected("A", 5, 3.5).relative(1e-9).got(start.peakChargingA(), start.meanChargingA());
        assertThat(start.starts()).isNull();
        assertThat(start.notes()).singleElement().asString().contains("No current limit");
    }

    @Test
    void largestCapacitanceMayLieAtAKnot() {
        BankCharge humped = new BankCharge(List.of(new BiasCharge(1, 1e-3, CharacteristicCurve.linear(0, 1, 2, 1.5, 5, 0.5))));
        StartUp start = StartUp.of(humped, 5, 1e-3, null, 0, 0);
        assertThat(start.peakAtV()).isEqualTo(2);
        assertThat(start.peakChargingA()).isCloseTo(7.5, withPercentage(1e-9));
    }

    @Test
    void bothSidesOfTheCurrentLimit() {
        assertThat(StartUp.of(CONSTANT, 5, 1e-3, 7.001, 2, 0).starts()).isTrue();
        StartUp tooLarge = StartUp.of(CONSTANT, 5, 1e-3, 6.999, 2, 0);
        assertThat(tooLarge.starts()).isFalse();
        assertThat(tooLarge.shortestRampS()).isCloseTo(5e-3 / 4.999, withPercentage(1e-9));
        assertThat(StartUp.of(CONSTANT, 5, tooLarge.shortestRampS() * 1.0001, 6.999, 2, 0).starts()).isTrue();
        StartUp nothingLeft = StartUp.of(CONSTANT, 5, 1e-3, 2.0, 2, 0);
        assertThat(nothingLeft.starts()).isFalse();
        assertThat(nothingLeft.shortestRampS()).isNull();
        assertThat(nothingLeft.notes()).singleElement().asString().contains("nothing is left");
    }

    @Test
    void constantCapacitanceBleedsExponentially() {
        Bleed bleed = Bleed.of(CONSTANT, 12, 1000, new SafeVoltage(3, "test"));
        Check.that(Topic.STRESS, "1 mF bled by 1 kohm from 12 V to 3 V").source(TEXTBOOK).expected("s", Math.log(4)).relative(1e-9).got(bleed.timeS());
        assertThat(bleed.bleederPeakW()).isCloseTo(0.144, withPercentage(1e-9));
        assertThat(bleed.energyJ()).isCloseTo(0.072, withPercentage(1e-9));
        assertThat(bleed.notes()).last().isEqualTo(Bleed.CAUTION);
    }

    /** Straight curve: t = R C0 (ln(V / Vs) - 0.12 (V - Vs)). */
    @Test
    void ceramicBleedsSooner() {
        Check.that(Topic.STRESS, "Ceramics that fall straight with bias, bled by 1 kohm from 5 V to 1 V").source(INTEGRAL)
                .expected("s", Math.log(5) - 0.12 * 4).relative(1e-9).got(Bleed.of(CERAMIC, 5, 1000, null).timeS());
    }

    @Test
    void defaultSafeVoltageNamesItsSource() {
        assertThat(SafeVoltage.defaultFrom(50).volts()).isEqualTo(1);
        assertThat(SafeVoltage.defaultFrom(50).source()).contains("common practice");
        assertThat(SafeVoltage.defaultFrom(50.1).volts()).isEqualTo(50);
        assertThat(SafeVoltage.defaultFrom(50.1).source()).contains("460.6");
        assertThat(Bleed.of(CONSTANT, 0.8, 1000, null).timeS()).isZero();
    }

    @Test
    void hazardIsNamedOnBothSidesOfItsThresholds() {
        Check.that(Topic.STRESS, "Stored energy at 100 V, 9.95 J and 10.05 J, then 9.85 J at 99 V").source(SAFETY_PAGE)
                .expected("no hazard, shock hazard, no hazard").gotText(hazards(new double[] {100, 100, 99}, new double[] {0.00199, 0.00201, 0.00201}));
        Check.that(Topic.STRESS, "Stored energy at 10 V, 99.5 J and 100.5 J").source(SAFETY_PAGE)
                .expected("no hazard, burn hazard").gotText(hazards(new double[] {10, 10}, new double[] {1.99, 2.01}));
    }

    private static String hazards(double[] v, double[] farad) {
        return IntStream.range(0, v.length).mapToObj(i -> hazard(v[i], farad[i]))
                .map(note -> note.contains("shock") ? "shock hazard" : note.contains("burn") ? "burn hazard" : "no hazard")
                .collect(Collectors.joining(", "));
    }

    private static String hazard(double v, double farad) {
        return Bleed.of(new BankCharge(List.of(new BiasCharge(1, farad, null))), v, 1e3, null).notes().stream()
                .filter(note -> note.contains("hazard")).findFirst().orElse("");
    }
}
