package org.stillrail.electrical.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.curve.FrequencyGrid;

class KramersKronigCheckTest {

    private static final FrequencyGrid GRID = FrequencyGrid.logSpaced(1e3, 1e8, 300);

    @Test
    void cleanPartsAreConsistent() {
        for (var part : java.util.List.of(Synthetic.ceramic(), Synthetic.polymer(), Synthetic.wetAluminium(),
                Synthetic.wetAluminiumInTheCold())) {
            KramersKronigCheck.Result result = KramersKronigCheck.of(Synthetic.sampled(part, GRID));
            assertThat(result.consistent(1)).isTrue();
            assertThat(result.rmsPercent()).isLessThan(0.1);
        }
    }

    @Test
    void anInnerResonanceIsNoOffence() {
        Curve curve = Synthetic.sampled(w -> Synthetic.resistor(0.002).plus(Synthetic.inductor(0.4e-9, w)).plus(Synthetic.capacitor(1e-6, w))
                .plus(Synthetic.parallel(Synthetic.inductor(1e-9, w), Synthetic.resistor(0.05).plus(Synthetic.capacitor(1e-8, w)))), GRID);
        KramersKronigCheck.Result result = KramersKronigCheck.of(curve);
        assertThat(result.consistent(1)).isTrue();
    }

    @Test
    void noiseIsMeasuredAndIsNoOffence() {
        KramersKronigCheck.Result result = KramersKronigCheck.of(Synthetic.noisy(Synthetic.polymer(), GRID, 0.01, 4));
        assertThat(result.noisePercent()).isCloseTo(0.5, within(0.1));
        assertThat(result.rmsPercent()).isBetween(0.5, 0.9);
        assertThat(result.consistent(1)).isTrue();
        assertThat(result.realPercent()).hasSize(300);
        assertThat(result.imaginaryPercent()).hasSize(300);
    }

    /** 0.2 % in the middle, several per cent at the low end, as a shunt measurement of a large reactance has it. */
    @Test
    void noiseThatRisesTowardsAnEndIsNoOffence() {
        Curve curve = Synthetic.sampled(Synthetic.polymer(), GRID);
        java.util.Random random = new java.util.Random(8);
        double[] re = curve.reals();
        double[] im = curve.imaginaries();
        for (int i = 0; i < re.length; i++) {
            double deviation = curve.magnitude(i) * (0.002 + 30 / GRID.hz(i));
            re[i] += deviation * random.nextGaussian();
            im[i] += deviation * random.nextGaussian();
        }
        KramersKronigCheck.Result result = KramersKronigCheck.of(new Curve(GRID, re, im));
        assertThat(result.worstPercent()).isGreaterThan(3);
        assertThat(result.suspects(1)).hasSizeLessThanOrEqualTo(1);
    }

    @Test
    void randomNumbersAreNotExcusedAsNoise() {
        java.util.Random random = new java.util.Random(3);
        Curve curve = new Curve(GRID, random.doubles(300, -1, 1).toArray(), random.doubles(300, -1, 1).toArray());
        assertThat(KramersKronigCheck.of(curve).consistent(1)).isFalse();
    }

    /** A range switch in the middle of the sweep that scales everything above it by 5 %. */
    @Test
    void aStepInTheMiddleShowsWhereItIs() {
        Curve curve = Synthetic.sampled(Synthetic.wetAluminium(), GRID);
        double[] re = curve.reals();
        double[] im = curve.imaginaries();
        for (int i = 150; i < re.length; i++) {
            re[i] *= 1.05;
            im[i] *= 1.05;
        }
        KramersKronigCheck.Result result = KramersKronigCheck.of(new Curve(GRID, re, im));
        assertThat(result.consistent(1)).isFalse();
        assertThat(Math.abs(Math.log(result.worstHz() / GRID.hz(150)))).isLessThan(Math.log(2));
        assertThat(result.suspects(1)).contains(149, 150, 151);
    }

    /** Reactance of the wrong sign, as a swapped reference direction makes it. */
    @Test
    void aMirroredReactanceIsFound() {
        Curve curve = Synthetic.sampled(Synthetic.polymer(), GRID);
        double[] im = curve.imaginaries();
        for (int i = 0; i < im.length; i++) {
            im[i] = -im[i];
        }
        KramersKronigCheck.Result result = KramersKronigCheck.of(new Curve(GRID, curve.reals(), im));
        assertThat(result.consistent(1)).isFalse();
        assertThat(result.worstPercent()).isGreaterThan(5);
    }

    /** A resistance that is 30 % too high in one octave, with the reactance left alone. */
    @Test
    void aBumpInTheResistanceAloneIsFound() {
        Curve curve = Synthetic.sampled(Synthetic.wetAluminium(), GRID);
        double[] re = curve.reals();
        for (int i = 100; i < 120; i++) {
            re[i] *= 1.3;
        }
        assertThat(KramersKronigCheck.of(new Curve(GRID, re, curve.imaginaries())).consistent(1)).isFalse();
    }
}
