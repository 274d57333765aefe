package org.stillrail.electrical.converter;

import org.stillrail.electrical.capacitor.Require;

/**
 * A transconductance amplifier as error amplifier: a divider gives its input a share k of the output, and its current gm k v flows to ground through
 * R2 with C1 in series and C2 across both. Its own output resistance and bandwidth are left out. Sign left out:
 *
 * <pre>
 * C(s) = gm k Z(s),   gain = gm k / (C1 + C2)   zero: 1 / (R2 C1)   pole: (C1 + C2) / (R2 C1 C2)   rad/s
 * </pre>
 *
 * So the network is that of an op-amp whose R1 is 1 / (gm k), and {@link CompensatorParts} hold it so.
 *
 * <p>Source: the network's transfer function; C. Basso, Designing Control Loops for Linear and Switching Power Supplies, 2012 (from memory).
 *
 * @param gmS         in S
 * @param outputShare k: reference voltage over output voltage, above 0, at most 1
 */
public record Transconductance(double gmS, double outputShare) {

    public Transconductance {
        Require.positive("gmS", gmS);
        Require.positive("outputShare", outputShare);
        if (outputShare > 1) {
            throw new IllegalArgumentException("outputShare must be at most 1, not " + outputShare);
        }
    }

    /** The R1 of an op-amp network with the same R2, C1 and C2. */
    public double inputOhm() {
        return 1 / (gmS * outputShare);
    }

    /** The network of R2, C1 and C2 at its output. */
    public CompensatorParts network(double r2Ohm, double c1F, double c2F) {
        return CompensatorParts.oneZero(inputOhm(), r2Ohm, c1F, c2F);
    }

    /**
     * The network that makes a compensator.
     *
     * @throws IllegalArgumentException where it cannot: another number than one zero and one pole, or a pole not above its zero
     */
    public CompensatorParts network(Compensator compensator) {
        int zeros = compensator.zerosHz().size();
        int poles = compensator.polesHz().size();
        if (zeros != 1 || poles != 1) {
            throw new IllegalArgumentException("A transconductance amplifier is modelled with one zero and one pole, not with " + zeros + " and " + poles);
        }
        return CompensatorParts.of(compensator, inputOhm());
    }

    /** Whether parts are of its network, with its own R1 in them. */
    public boolean has(CompensatorParts parts) {
        return parts.r3Ohm() == null && Math.abs(parts.r1Ohm() / inputOhm() - 1) < 1e-9;
    }
}
