package org.stillrail.sweepfile.accuracy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

/** The reference: source and receiver of 50 ohm, two coaxial cables, a part of 1 mohm; S21 turned into Z as a shunt, less the part. */
class ShieldLoopTest {

    @ParameterizedTest
    @CsvSource({
        "1,0.006666665495431944,-2.794453451232043e-06", "100,0.006654974800202578,-0.00027895535256221825",
        "1e3,0.005670434491944617,-0.0023769027657724704", "1e4,0.00035849200670936003,-0.0015050625925085508"
    })
    void theDropOfTheShieldsAddsToTheImpedance(double hz, double re, double im) {
        ShieldLoop loop = new ShieldLoop(0.02, 0.01, 2e-6);
        // The formula leaves out the current into the receiver: a thousandth of the error, or 1e-6 ohm.
        Check.that(Topic.FILES, "Shunt-through of 1 mohm with shields of 20 and 10 mohm, cables of 1 uH, at " + hz + " Hz: what the shields add, R and X")
                .source(Source.independent("nodal solution with numpy: source, receiver, two cables as fully coupled inductors"))
                .expected("ohm", re, im).relativeToLargest(1e-3).got(loop.errorOhm(hz).re(), loop.errorOhm(hz).im());
    }

    @Test
    void atLowFrequencyTheShieldsAreInParallelAndAChokeLowersTheCorner() {
        ShieldLoop loop = new ShieldLoop(0.02, 0.02, 100e-6);
        Curve error = loop.errorOn(FrequencyGrid.of(1e-3, loop.cornerHz()));
        assertThat(error.magnitude(0)).isCloseTo(0.01, Percentage.withPercentage(1e-6));
        assertThat(error.magnitude(1)).isCloseTo(0.01 / Math.sqrt(2), Percentage.withPercentage(1e-9));
        assertThat(loop.cornerHz()).isCloseTo(63.662, Percentage.withPercentage(1e-3));
        assertThat(new ShieldLoop(0.02, 0.02, 0).cornerHz()).isInfinite();
    }

    @Test
    void figuresOutOfRangeAreRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new ShieldLoop(0, 0.01, 0)).withMessageContaining("sourceShieldOhm");
        assertThatIllegalArgumentException().isThrownBy(() -> new ShieldLoop(0.01, 0.01, -1)).withMessageContaining("loopInductanceH");
    }
}
