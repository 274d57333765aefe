package org.stillrail.sweepfile;

import org.stillrail.electrical.curve.Complex;

/**
 * The impedance of a part from one S parameter and back, by fixture; plain two-port circuit theory. R is the reference.
 * <pre>
 * reflection      Z = R (1 + S11) / (1 - S11)       S11 = (Z - R) / (Z + R)
 * shunt-through   Z = (R / 2) S21 / (1 - S21)       S21 = 2 Z / (2 Z + R)
 * series-through  Z = 2 R (1 - S21) / S21           S21 = 2 R / (2 R + Z)
 * </pre>
 */
public final class ScatteringImpedance {

    private ScatteringImpedance() {
    }

    /** Infinite or NaN where the fixture cannot tell: S11 = 1, S21 = 1 (shunt), S21 = 0 (series). */
    public static Complex impedance(Fixture fixture, Complex s, double referenceOhm) {
        Complex oneMinus = Complex.ONE.minus(s);
        return switch (fixture) {
            case REFLECTION -> Complex.ONE.plus(s).over(oneMinus).times(referenceOhm);
            case SHUNT_THROUGH -> s.over(oneMinus).times(referenceOhm / 2);
            case SERIES_THROUGH -> oneMinus.over(s).times(2 * referenceOhm);
            case IMPEDANCE -> throw noScattering();
        };
    }

    /** S11 or S21 that an impedance in ohm shows in the fixture. */
    public static Complex scattering(Fixture fixture, Complex z, double referenceOhm) {
        Complex reference = new Complex(referenceOhm, 0);
        return switch (fixture) {
            case REFLECTION -> z.minus(reference).over(z.plus(reference));
            case SHUNT_THROUGH -> z.times(2).over(z.times(2).plus(reference));
            case SERIES_THROUGH -> reference.times(2).over(reference.times(2).plus(z));
            case IMPEDANCE -> throw noScattering();
        };
    }

    private static IllegalArgumentException noScattering() {
        return new IllegalArgumentException("The fixture 'impedance' has no S parameter");
    }
}
