package org.stillrail.electrical.converter;

import java.util.List;
import org.stillrail.electrical.capacitor.Require;
import org.stillrail.electrical.curve.Complex;

/**
 * An integrator with real zeros and poles: {@code C(s) = gain / s * product(1 + s / wz) / product(1 + s / wp)}.
 *
 * @param gain    in rad/s, positive, any divider included; the integrator alone has gain 1 at {@code gain} rad/s
 * @param zerosHz positive, at most one more than the poles
 * @param polesHz positive
 */
public record Compensator(double gain, List<Double> zerosHz, List<Double> polesHz) {

    public Compensator {
        Require.positive("gain", gain);
        zerosHz = List.copyOf(zerosHz);
        polesHz = List.copyOf(polesHz);
        for (int i = 0; i < zerosHz.size(); i++) {
            Require.positive("zerosHz[" + i + "]", zerosHz.get(i));
        }
        for (int i = 0; i < polesHz.size(); i++) {
            Require.positive("polesHz[" + i + "]", polesHz.get(i));
        }
        if (zerosHz.size() > polesHz.size() + 1) {
            throw new IllegalArgumentException("zerosHz may hold at most one zero more than polesHz has poles, not "
                    + zerosHz.size() + " zeros with " + polesHz.size() + " poles");
        }
    }

    /** |C| at a positive frequency. */
    public double magnitudeAt(double hz) {
        double magnitude = gain / (2 * Math.PI * hz);
        for (double zero : zerosHz) {
            magnitude *= Math.hypot(1, hz / zero);
        }
        for (double pole : polesHz) {
            magnitude /= Math.hypot(1, hz / pole);
        }
        return magnitude;
    }

    /** Phase of C in degrees, continuous from -90 at 0 Hz. */
    public double phaseDegAt(double hz) {
        double radians = -Math.PI / 2;
        for (double zero : zerosHz) {
            radians += Math.atan(hz / zero);
        }
        for (double pole : polesHz) {
            radians -= Math.atan(hz / pole);
        }
        return Math.toDegrees(radians);
    }

    public Complex at(double hz) {
        return Complex.polar(magnitudeAt(hz), Math.toRadians(phaseDegAt(hz)));
    }
}
