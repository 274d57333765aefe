package org.stillrail.electrical.bank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;
import org.stillrail.electrical.capacitor.ImpedancePoint;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.ripple.PiecewiseLinearCurrent;
import org.stillrail.electrical.ripple.Ripple;

/**
 * A worked example of the trade, with figures as an engineer would say them; common practice, no source, so held to 10 %.
 * A 220 uF wet aluminium part whose ESR is 200 mohm from 1 kHz to 10 MHz; its ESL is taken as 3 nH.
 */
class TradeExampleTest {

    private static final Branch ELECTROLYTIC = Banks.branch(220e-6, 0.2, 3e-9);
    /** 100 nF with its resonance at 25 MHz. */
    private static final Branch SMALL_CERAMIC = Banks.branch(100e-9, 0.02, 1 / (square(2 * Math.PI * 25e6) * 100e-9));
    /** 2 x 22 uF with their resonance at 800 kHz. */
    private static final Branch LARGE_CERAMIC =
            Banks.branch("2 x 22 uF", 2, new SeriesRlc(22e-6, 0.004, 1 / (square(2 * Math.PI * 800e3) * 22e-6)));

    private static double square(double x) {
        return x * x;
    }

    @Test
    void rippleOfOneAmpereMakesTheVoltageOfTheResistance() {
        PiecewiseLinearCurrent triangle = PiecewiseLinearCurrent.of(4e-6, new double[] {0, 2e-6}, new double[] {0, 1});
        assertThat(Ripple.of(Banks.of(ELECTROLYTIC), triangle, 100).peakToPeakV()).isCloseTo(0.2, withPercentage(10));
    }

    @Test
    void smallCeramicHelpsOnlyFarAboveTheSwitchingFrequency() {
        Bank pair = Banks.of(ELECTROLYTIC, SMALL_CERAMIC);
        for (double hz = 1e3; hz <= 2e6; hz *= 1.5) {
            assertThat(magnitude(pair.at(hz))).isCloseTo(magnitude(ELECTROLYTIC.at(hz)), withPercentage(10));
            assertThat(pair.at(hz).resistanceOhm()).isCloseTo(0.2, withPercentage(10));
        }
        assertThat(pair.at(5e6).resistanceOhm()).isCloseTo(0.2, withPercentage(10));
        assertThat(pair.at(10e6).resistanceOhm()).isLessThan(0.11);
        assertThat(pair.at(20e6).resistanceOhm()).isLessThan(0.03);
    }

    @Test
    void largeCeramicsKeepResistanceForTheLoopAndTakeItFromTheRipple() {
        Bank pair = Banks.of(ELECTROLYTIC, LARGE_CERAMIC);
        assertThat(LARGE_CERAMIC.at(10e3).resistanceOhm()).isLessThan(0.005);
        assertThat(pair.at(10e3).resistanceOhm()).isCloseTo(0.12, withPercentage(10));
        for (double hz = 200e3; hz <= 1e6; hz += 100e3) {
            assertThat(pair.at(hz).resistanceOhm()).isLessThan(0.005);
        }
    }

    private static double magnitude(ImpedancePoint z) {
        return Math.sqrt(z.squaredMagnitude());
    }
}
