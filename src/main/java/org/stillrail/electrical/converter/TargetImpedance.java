package org.stillrail.electrical.converter;

import org.stillrail.electrical.capacitor.Require;

/**
 * The impedance that a load step of finite slew allows: the allowed deviation over the step, up to where the spectrum of the
 * step's edge begins to fall, and rising with frequency beyond:
 *
 * <pre>
 * limit(f) = dV / dI * max(1, f / fk)          fk = 1 / (pi rise time),  rise time = dI / slew
 * </pre>
 *
 * Meeting it everywhere is a sound aim, not a proof: resonances at several frequencies can add up (the worst load pattern says by
 * how much). Sources: L. D. Smith and others, Power distribution system design methodology and capacitor selection for modern
 * CMOS technology, 1999 (the ratio, from memory); the corner of a trapezoidal edge's spectrum, common practice.
 *
 * @param impedanceOhm  dV / dI, positive
 * @param cornerHz      fk, positive infinity for an instant step
 */
public record TargetImpedance(double impedanceOhm, double cornerHz) {

    public TargetImpedance {
        Require.positive("impedanceOhm", impedanceOhm);
        if (!(cornerHz > 0)) {
            throw new IllegalArgumentException("cornerHz must be above 0, not " + cornerHz);
        }
    }

    /**
     * @param allowedV   deviation allowed, positive
     * @param stepA      size of the step, positive
     * @param slewAPerS  positive, positive infinity for an instant step
     */
    public static TargetImpedance of(double allowedV, double stepA, double slewAPerS) {
        Require.positive("allowedV", allowedV);
        Require.positive("stepA", stepA);
        return new TargetImpedance(allowedV / stepA, slewAPerS / (Math.PI * stepA));
    }

    /** The most that |Z| may be at a frequency, in ohm. */
    public double limitOhm(double hz) {
        return impedanceOhm * Math.max(1, hz / cornerHz);
    }
}
