package org.stillrail.electrical.stress;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stillrail.electrical.capacitor.CharacteristicCurve;

/** Start-up and bleeding, all by hand: I = C dV/dt, t = R C ln(V / Vsafe). */
class StartUpTest {

    private static final BankCharge CONSTANT = new BankCharge(List.of(new BiasCharge(2, 5e-4, null)));
    private static final BankCharge CERAMIC =
            new BankCharge(List.of(new BiasCharge(10, 1e-4, CharacteristicCurve.linear(0, 1, 5, 0.4))));

    @Test
    void rampOfAConstantCapacitance() {
        StartUp start = StartUp.of(CONSTANT, 5, 1e-3, 8.0, 2, 0.5);
        assertThat(start.peakChargingA()).isCloseTo(5, withPercentage(1e-9));
        assertThat(start.meanChargingA()).isCloseTo(5, withPercentage(1e-9));
        assertThat(start.chargeC()).isCloseTo(5e-3, withPercentage(1e-9));
        assertThat(start.energyJ()).isCloseTo(12.5e-3, withPercentage(1e-9));
        assertThat(start.availableA()).isCloseTo(5.5, within(1e-12));
        assertThat(start.largestBankShare()).isCloseTo(1.1, withPercentage(1e-9));
        assertThat(start.largestCapacitanceF()).isCloseTo(1.1e-3, withPercentage(1e-9));
        assertThat(start.atLimitS()).isCloseTo(5e-3 / 5.5, withPercentage(1e-9));
        assertThat(start.starts()).isTrue();
    }

    /** A ceramic bank takes most at the very start, where it has no bias. */
    @Test
    void ceramicsTakeMostWithoutBias() {
        StartUp start = StartUp.of(CERAMIC, 5, 1e-3, null, 0, 0);
        assertThat(start.peakAtV()).isZero();
        assertThat(start.peakChargingA()).isCloseTo(5, withPercentage(1e-9));
        assertThat(start.meanChargingA()).isCloseTo(3.5, withPercentage(1e-9));
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
        assertThat(bleed.timeS()).isCloseTo(Math.log(4), withPercentage(1e-9));
        assertThat(bleed.bleederPeakW()).isCloseTo(0.144, withPercentage(1e-9));
        assertThat(bleed.energyJ()).isCloseTo(0.072, withPercentage(1e-9));
        assertThat(bleed.notes()).last().isEqualTo(Bleed.CAUTION);
    }

    /** Straight curve: t = R C0 (ln(V / Vs) - 0.12 (V - Vs)). */
    @Test
    void ceramicBleedsSooner() {
        assertThat(Bleed.of(CERAMIC, 5, 1000, null).timeS()).isCloseTo(Math.log(5) - 0.12 * 4, withPercentage(1e-9));
    }

    @Test
    void defaultSafeVoltageNamesItsSource() {
        assertThat(SafeVoltage.defaultFrom(50).volts()).isEqualTo(1);
        assertThat(SafeVoltage.defaultFrom(50).source()).contains("common practice");
        assertThat(SafeVoltage.defaultFrom(50.1).volts()).isEqualTo(50);
        assertThat(SafeVoltage.defaultFrom(50.1).source()).contains("460.6");
        assertThat(Bleed.of(CONSTANT, 0.8, 1000, null).timeS()).isZero();
    }

    /** Thresholds of a laboratory's public safety page, seen: 100 V and 10 J, or above 100 J below 100 V. */
    @Test
    void hazardIsNamedOnBothSidesOfItsThresholds() {
        assertThat(hazard(100, 0.00201)).contains("shock hazard");
        assertThat(hazard(100, 0.00199)).isEmpty();
        assertThat(hazard(99, 0.00201)).isEmpty();
        assertThat(hazard(10, 2.01)).contains("burn hazard");
        assertThat(hazard(10, 1.99)).isEmpty();
    }

    private static String hazard(double v, double farad) {
        return Bleed.of(new BankCharge(List.of(new BiasCharge(1, farad, null))), v, 1e3, null).notes().stream()
                .filter(note -> note.contains("hazard")).findFirst().orElse("");
    }
}
