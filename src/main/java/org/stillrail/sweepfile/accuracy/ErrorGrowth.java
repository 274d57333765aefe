package org.stillrail.sweepfile.accuracy;

import org.stillrail.electrical.curve.Complex;
import org.stillrail.sweepfile.Fixture;
import org.stillrail.sweepfile.ScatteringImpedance;

/**
 * How an error of the instrument grows on its way to the impedance, to first order: the derivative of the fixture's formula.
 * <pre>
 * reflection      dZ / Z = (Z + R)^2 / (2 Z R)  dS11          least, 2, at Z = R
 * shunt-through   dZ / Z = (1 + 2 Z / R)  dS21 / S21          near 1 for Z well under R / 2
 * series-through  dZ / Z = -(1 + 2 R / Z)  dS21 / S21         near 1 for Z well over 2 R
 * </pre>
 */
final class ErrorGrowth {

    private ErrorGrowth() {
    }

    /** Largest error in ohm of an impedance that is not 0. */
    static double errorOhm(Fixture fixture, Complex z, double referenceOhm, InstrumentAccuracy accuracy) {
        return z.magnitude() * factor(fixture, z, referenceOhm) * instrumentError(fixture, z, referenceOhm, accuracy);
    }

    /** Relative error of |Z| for a unit of error of S11, relative error of S21, or relative error of Z. */
    static double factor(Fixture fixture, Complex z, double referenceOhm) {
        Complex reference = new Complex(referenceOhm, 0);
        return switch (fixture) {
            case REFLECTION -> Math.pow(z.plus(reference).magnitude(), 2) / (2 * z.magnitude() * referenceOhm);
            case SHUNT_THROUGH -> Complex.ONE.plus(z.times(2 / referenceOhm)).magnitude();
            case SERIES_THROUGH -> Complex.ONE.plus(reference.times(2).over(z)).magnitude();
            case IMPEDANCE -> 1;
        };
    }

    private static double instrumentError(Fixture fixture, Complex z, double referenceOhm, InstrumentAccuracy accuracy) {
        return switch (fixture) {
            case REFLECTION -> accuracy.reflection();
            case IMPEDANCE -> accuracy.impedance();
            case SHUNT_THROUGH, SERIES_THROUGH -> accuracy.transmission()
                    + accuracy.transmissionFloor() / ScatteringImpedance.scattering(fixture, z, referenceOhm).magnitude();
        };
    }
}
