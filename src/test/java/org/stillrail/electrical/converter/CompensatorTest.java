package org.stillrail.electrical.converter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stillrail.electrical.curve.Complex;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

class CompensatorTest {

    private static final Source VENABLE = Source.fromMemory("H. D. Venable, The K factor, Powercon 10, 1983; whole network recomputed in Python");

    @Test
    void partsWithOneZeroAreThoseOfTheKFactorsDesignRules() {
        // Row LP-06: boost 60 deg, 10 kHz, gain 5, R1 10 kohm.
        double k = Math.tan(Math.toRadians(60 / 2.0 + 45));
        Compensator compensator = scaled(5, 10e3, List.of(10e3 / k), List.of(10e3 * k));
        CompensatorParts parts = CompensatorParts.of(compensator, 10e3);
        Check.that(Topic.LOOP, "Parts with one zero, boost 60 deg, 10 kHz, gain 5, R1 10 kohm: C1, C2")
                .source(VENABLE).expected("F", 1.102657790843584e-09, 8.529087694578928e-11).relative(1e-9).got(parts.c1F(), parts.c2F());
        Check.that(Topic.LOOP, "Parts with one zero, boost 60 deg, 10 kHz, gain 5, R1 10 kohm: R2")
                .source(VENABLE).expected("ohm", 53867.51345948129).relative(1e-9).got(parts.r2Ohm());
    }

    @Test
    void partsWithTwoZerosAreThoseOfTheKFactorsDesignRules() {
        // Row LP-07: boost 120 deg, 50 kHz, gain 2, R1 10 kohm.
        double spread = Math.tan(Math.toRadians(120 / 4.0 + 45));
        Compensator compensator = scaled(2, 50e3, List.of(50e3 / spread, 50e3 / spread), List.of(50e3 * spread, 50e3 * spread));
        CompensatorParts parts = CompensatorParts.of(compensator, 10e3);
        Check.that(Topic.LOOP, "Parts with two zeros, boost 120 deg, 50 kHz, gain 2, R1 10 kohm: C1, C2, C3")
                .source(VENABLE).expected("F", 2.057587449394957e-09, 1.5915494309189535e-10, 1.1026577908435843e-09).relative(1e-9)
                .got(parts.c1F(), parts.c2F(), parts.c3F());
        Check.that(Topic.LOOP, "Parts with two zeros, boost 120 deg, 50 kHz, gain 2, R1 10 kohm: R2, R3")
                .source(VENABLE).expected("ohm", 5773.502691896257, 773.5026918962575).relative(1e-9).got(parts.r2Ohm(), parts.r3Ohm());
    }

    @Test
    void partsMakeTheNetworksTransferFunction() {
        CompensatorParts parts = new CompensatorParts(10e3, 4.7e3, 2.2e-9, 150e-12, 820.0, 1e-9);
        Compensator compensator = parts.compensator();
        for (double hz : new double[] {10, 3e3, 47e3, 2e6}) {
            Complex s = new Complex(0, 2 * Math.PI * hz);
            Complex c1 = s.times(parts.c1F()).reciprocal().plus(new Complex(parts.r2Ohm(), 0));
            Complex feedback = c1.reciprocal().plus(s.times(parts.c2F())).reciprocal();
            Complex c3 = s.times(parts.c3F()).reciprocal().plus(new Complex(parts.r3Ohm(), 0));
            Complex input = c3.reciprocal().plus(new Complex(1 / parts.r1Ohm(), 0));
            Complex expected = feedback.times(input);
            Complex got = compensator.at(hz);
            Check.that(Topic.LOOP, "Compensator of six parts: error of its transfer function over its magnitude")
                    .source(Source.independent("nodal equations of the operational amplifier's network")).expected("the same complex gain at 4 frequencies")
                    .absolute(1e-12).compare("", 0, got.minus(expected).magnitude() / expected.magnitude());
        }
        CompensatorParts back = CompensatorParts.of(compensator, 10e3);
        assertEquals(0, back.compensator().at(50e3).minus(compensator.at(50e3)).magnitude() / compensator.magnitudeAt(50e3), 1e-12);
    }

    /** gm k into R2 and C1 in series, C2 across both: 1 mS and 0.18, 22 kohm, 1 nF, 47 pF. */
    @Test
    void partsAtATransconductanceAmplifierMakeTheirTransferFunctionBothWays() {
        Transconductance amplifier = new Transconductance(1e-3, 0.18);
        Compensator compensator = amplifier.network(22e3, 1e-9, 47e-12).compensator();
        for (double hz : new double[] {10, 3e3, 47e3, 2e6}) {
            Complex s = new Complex(0, 2 * Math.PI * hz);
            Complex series = s.times(1e-9).reciprocal().plus(new Complex(22e3, 0));
            Complex expected = series.reciprocal().plus(s.times(47e-12)).reciprocal().times(1e-3 * 0.18);
            Check.that(Topic.LOOP, "Compensator of a transconductance amplifier: error of its transfer function over its magnitude")
                    .source(Source.independent("nodal equations of the network at the amplifier's output")).expected("the same complex gain at 4 frequencies")
                    .absolute(1e-12).compare("", 0, compensator.at(hz).minus(expected).magnitude() / expected.magnitude());
        }
        assertEquals(1e-3 * 0.18 / 1.047e-9, compensator.gain(), 1e-9 * compensator.gain());
        CompensatorParts back = amplifier.network(compensator);
        assertEquals(22e3, back.r2Ohm(), 1e-9 * 22e3);
        assertEquals(1e-9, back.c1F(), 1e-18);
        assertEquals(47e-12, back.c2F(), 1e-19);
    }

    @Test
    void aTransconductanceAmplifierMakesOneZeroAndOnePoleOnly() {
        Transconductance amplifier = new Transconductance(1e-3, 0.18);
        IllegalArgumentException refused = assertThrows(IllegalArgumentException.class,
                () -> amplifier.network(new Compensator(1e4, List.of(1e3, 2e3), List.of(1e5, 2e5))));
        assertTrue(refused.getMessage().contains("one zero and one pole"));
        assertThrows(IllegalArgumentException.class, () -> amplifier.network(new Compensator(1e4, List.of(1e4), List.of(1e3))));
        assertThrows(IllegalArgumentException.class, () -> new Transconductance(1e-3, 1.1));
        assertThrows(IllegalArgumentException.class, () -> new Transconductance(0, 0.5));
    }

    /** CP-01: phase = (1 / pi) integral of (ln M(w e^u) - ln M(w e^-u)) / sinh u du over u > 0, by the midpoint rule. */
    @Test
    void phaseFollowsFromMagnitudeAlone() {
        Compensator compensator = new Compensator(3e4, List.of(6e3, 8e3), List.of(250e3));
        double[] hz = {1e3, 3e4, 1e6};
        double[] phase = new double[hz.length];
        double[] fromMagnitude = new double[hz.length];
        int steps = 200_000;
        double width = 40.0 / steps;
        for (int k = 0; k < hz.length; k++) {
            double sum = 0;
            for (int i = 0; i < steps; i++) {
                double u = (i + 0.5) * width;
                sum += Math.log(compensator.magnitudeAt(hz[k] * Math.exp(u)) / compensator.magnitudeAt(hz[k] * Math.exp(-u))) / Math.sinh(u) * width;
            }
            fromMagnitude[k] = Math.toDegrees(sum / Math.PI);
            phase[k] = Math.toDegrees(Math.atan2(compensator.at(hz[k]).im(), compensator.at(hz[k]).re()));
        }
        Check.that(Topic.LOOP, "Phase of a compensator at 1 kHz, 30 kHz and 1 MHz from its magnitude alone")
                .source(Source.fromMemory("minimum-phase rule, H. W. Bode, Network Analysis and Feedback Amplifier Design, 1945; quadrature"))
                .expected("deg", fromMagnitude).absolute(1e-4).got(phase);
    }

    @Test
    void moreZerosThanPolesAndOneAreRefusedByName() {
        IllegalArgumentException refused = assertThrows(IllegalArgumentException.class,
                () -> new Compensator(1, List.of(1e3, 2e3), List.of()));
        assertTrue(refused.getMessage().startsWith("zerosHz"));
        new Compensator(1, List.of(1e3), List.of());
    }

    @Test
    void aNetworkCannotMakePolesBelowItsZeros() {
        assertThrows(IllegalArgumentException.class, () -> CompensatorParts.of(new Compensator(1, List.of(1e4), List.of(1e3)), 10e3));
        assertThrows(IllegalArgumentException.class, () -> CompensatorParts.of(new Compensator(1, List.of(), List.of()), 10e3));
    }

    /** A compensator with a given magnitude at a frequency. */
    private static Compensator scaled(double magnitude, double hz, List<Double> zerosHz, List<Double> polesHz) {
        return new Compensator(magnitude / new Compensator(1, zerosHz, polesHz).magnitudeAt(hz), zerosHz, polesHz);
    }
}
