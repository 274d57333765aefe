package org.stillrail.electrical.bank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;
import org.stillrail.electrical.capacitor.ImpedancePoint;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.ripple.PiecewiseLinearCurrent;
import org.stillrail.electrical.ripple.Ripple;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

/**
 * A worked example of the trade, with figures as an engineer would say them, so held to 10 %.
 * A 220 uF wet aluminium part whose ESR is 200 mohm from 1 kHz to 10 MHz; its ESL is taken as 3 nH.
 */
class TradeExampleTest {

    private static final Branch ELECTROLYTIC = Banks.branch(220e-6, 0.2, 3e-9);
    /** 100 nF with its resonance at 25 MHz. */
    private static final Branch SMALL_CERAMIC = Banks.branch(100e-9, 0.02, 1 / (square(2 * Math.PI * 25e6) * 100e-9));
    /** 2 x 22 uF with their resonance at 800 kHz. */
    private static final Branch LARGE_CERAMIC =
            Banks.branch("2 x 22 uF", 2, new SeriesRlc(22e-6, 0.004, 1 / (square(2 * Math.PI * 800e3) * 22e-6)));

    private static final Source PRACTICE = Source.commonPractice("a worked example of the trade, figures as an engineer would say them");

    private static double square(double x) {
        return x * x;
    }

    @Test
    void rippleOfOneAmpereMakesTheVoltageOfTheResistance() {
        PiecewiseLinearCurrent triangle = PiecewiseLinearCurrent.of(4e-6, new double[] {0, 2e-6}, new double[] {0, 1});
        Check.that(Topic.RIPPLE, "1 A peak to peak at 250 kHz in a wet electrolytic of 200 mohm: ripple")
                .source(PRACTICE).expected("V", 0.2).relative(0.1).got(Ripple.of(Banks.of(ELECTROLYTIC), triangle, 100).peakToPeakV());
    }

    @Test
    void smallCeramicHelpsOnlyFarAboveTheSwitchingFrequency() {
        Bank pair = Banks.of(ELECTROLYTIC, SMALL_CERAMIC);
        for (double hz = 1e3; hz <= 2e6; hz *= 1.5) {
            Check.that(Topic.IMPEDANCE, "100 nF beside 220 uF, 200 mohm, 1 kHz to 2 MHz: |Z|")
                    .source(PRACTICE).expected("that of the electrolytic alone").relative(0.1)
                    .compare("ohm", magnitude(ELECTROLYTIC.at(hz)), magnitude(pair.at(hz)));
            Check.that(Topic.IMPEDANCE, "100 nF beside 220 uF, 200 mohm, 1 kHz to 2 MHz: ESR")
                    .source(PRACTICE).expected("0.2 ohm").relative(0.1).compare("ohm", 0.2, pair.at(hz).resistanceOhm());
        }
        assertThat(pair.at(5e6).resistanceOhm()).isCloseTo(0.2, withPercentage(10));
        assertThat(pair.at(10e6).resistanceOhm()).isLessThan(0.11);
        assertThat(pair.at(20e6).resistanceOhm()).isLessThan(0.03);
    }

    @Test
    void largeCeramicsKeepResistanceForTheLoopAndTakeItFromTheRipple() {
        Bank pair = Banks.of(ELECTROLYTIC, LARGE_CERAMIC);
        assertThat(LARGE_CERAMIC.at(10e3).resistanceOhm()).isLessThan(0.005);
        Check.that(Topic.IMPEDANCE, "2 x 22 uF ceramic beside 220 uF, 200 mohm: ESR left at 10 kHz")
                .source(PRACTICE).expected("ohm", 0.12).relative(0.1).got(pair.at(10e3).resistanceOhm());
        for (double hz = 200e3; hz <= 1e6; hz += 100e3) {
            assertThat(pair.at(hz).resistanceOhm()).isLessThan(0.005);
        }
    }

    private static double magnitude(ImpedancePoint z) {
        return Math.sqrt(z.squaredMagnitude());
    }
}
