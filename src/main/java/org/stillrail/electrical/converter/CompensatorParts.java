package org.stillrail.electrical.converter;

import java.util.List;
import java.util.Locale;
import org.stillrail.electrical.capacitor.Require;

/**
 * The parts of an op-amp compensator: input resistor R1 (with R3 and C3 in series across it where there are two zeros),
 * and as feedback R2 with C1 in series, C2 across both. With an ideal amplifier, sign left out:
 *
 * <pre>
 * gain = 1 / (R1 (C1 + C2))     zeros: 1 / (R2 C1), 1 / ((R1 + R3) C3)     poles: (C1 + C2) / (R2 C1 C2), 1 / (R3 C3)   rad/s
 * </pre>
 *
 * Source: the network's transfer function; the same values as the K factor's design rules.
 *
 * @param r3Ohm null in the network with one zero
 * @param c3F   null in the network with one zero
 */
public record CompensatorParts(double r1Ohm, double r2Ohm, double c1F, double c2F, Double r3Ohm, Double c3F) {

    public CompensatorParts {
        Require.positive("r1Ohm", r1Ohm);
        Require.positive("r2Ohm", r2Ohm);
        Require.positive("c1F", c1F);
        Require.positive("c2F", c2F);
        if ((r3Ohm == null) != (c3F == null)) {
            throw new IllegalArgumentException("r3Ohm and c3F belong together: give both or neither");
        }
        if (r3Ohm != null) {
            Require.positive("r3Ohm", r3Ohm);
            Require.positive("c3F", c3F);
        }
    }

    /** The network with one zero and one pole (type II). */
    public static CompensatorParts oneZero(double r1Ohm, double r2Ohm, double c1F, double c2F) {
        return new CompensatorParts(r1Ohm, r2Ohm, c1F, c2F, null, null);
    }

    /**
     * The parts that make a compensator with one zero and one pole, or two of each, for a chosen input resistor.
     *
     * @throws IllegalArgumentException where the network cannot make it: another number of zeros and poles, or a pole not above
     * its zero
     */
    public static CompensatorParts of(Compensator compensator, double r1Ohm) {
        Require.positive("r1Ohm", r1Ohm);
        List<Double> zeros = compensator.zerosHz().stream().sorted().toList();
        List<Double> poles = compensator.polesHz().stream().sorted().toList();
        int order = zeros.size();
        if (order != poles.size() || order < 1 || order > 2) {
            throw new IllegalArgumentException("Parts are given for one zero and one pole or for two of each, not for " + order
                    + " zeros and " + poles.size() + " poles");
        }
        for (int i = 0; i < order; i++) {
            if (poles.get(i) <= zeros.get(i)) {
                throw new IllegalArgumentException(String.format(Locale.ROOT, "The network makes poles above its zeros only; the pole at %.3f kHz"
                        + " is not above the zero at %.3f kHz", poles.get(i) / 1000, zeros.get(i) / 1000));
            }
        }
        double firstZero = 2 * Math.PI * zeros.get(0);
        double firstPole = 2 * Math.PI * poles.get(0);
        double bothF = 1 / (compensator.gain() * r1Ohm);
        double c2F = bothF * firstZero / firstPole;
        double c1F = bothF - c2F;
        double r2Ohm = 1 / (firstZero * c1F);
        if (order == 1) {
            return oneZero(r1Ohm, r2Ohm, c1F, c2F);
        }
        double secondZero = 2 * Math.PI * zeros.get(1);
        double secondPole = 2 * Math.PI * poles.get(1);
        double c3F = (1 / secondZero - 1 / secondPole) / r1Ohm;
        return new CompensatorParts(r1Ohm, r2Ohm, c1F, c2F, 1 / (secondPole * c3F), c3F);
    }

    /** What the parts make. */
    public Compensator compensator() {
        double gain = 1 / (r1Ohm * (c1F + c2F));
        double zero = hz(r2Ohm * c1F);
        double pole = hz(r2Ohm * c1F * c2F / (c1F + c2F));
        if (r3Ohm == null) {
            return new Compensator(gain, List.of(zero), List.of(pole));
        }
        return new Compensator(gain, List.of(zero, hz((r1Ohm + r3Ohm) * c3F)), List.of(pole, hz(r3Ohm * c3F)));
    }

    private static double hz(double seconds) {
        return 1 / (2 * Math.PI * seconds);
    }
}
