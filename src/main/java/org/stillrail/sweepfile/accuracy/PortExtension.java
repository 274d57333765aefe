package org.stillrail.sweepfile.accuracy;

import org.stillrail.electrical.curve.Complex;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.sweepfile.Fixture;
import org.stillrail.sweepfile.ScatteringImpedance;

/**
 * Moves the plane of measurement along a matched line without loss: the wave is late by {@code exp(-j w t)} for each passage, twice in
 * reflection. Plain line theory.
 */
public final class PortExtension {

    private PortExtension() {
    }

    /**
     * Takes a delay out of a measured impedance.
     *
     * @param fixture      reflection, shunt-through or series-through
     * @param referenceOhm of the line and the measurement
     * @param delayS       one way: of the line in reflection, of both lines together in a through measurement
     * @return impedance in ohm at the part
     */
    public static Curve remove(Curve impedance, Fixture fixture, double referenceOhm, double delayS) {
        if (!Double.isFinite(delayS)) {
            throw new IllegalArgumentException("delayS must be a finite number, not " + delayS);
        }
        double passages = fixture == Fixture.REFLECTION ? 2 : 1;
        double[] r = new double[impedance.size()];
        double[] x = new double[impedance.size()];
        for (int i = 0; i < r.length; i++) {
            Complex z = new Complex(impedance.real(i), impedance.imaginary(i));
            Complex s = ScatteringImpedance.scattering(fixture, z, referenceOhm);
            Complex turned = s.times(Complex.polar(1, passages * impedance.grid().omega(i) * delayS));
            Complex moved = ScatteringImpedance.impedance(fixture, turned, referenceOhm);
            r[i] = moved.re();
            x[i] = moved.im();
        }
        return new Curve(impedance.grid(), r, x);
    }
}
