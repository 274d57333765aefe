package org.stillrail.electrical.damping;

import org.stillrail.electrical.capacitor.Require;

/**
 * A capacitance C fed by an inductance L, damped by a resistance R in series with {@code n C} across it. Of all R one makes the
 * peak of the impedance least. With {@code R0 = sqrt(L / C)}:
 * {@code R = R0 sqrt((4 + 3 n) (2 + n) / (2 n^2 (4 + n)))}, peak {@code R0 sqrt(2 (2 + n)) / n} at {@code f0 sqrt(2 / (2 + n))}.
 * R. W. Erickson, Optimal single resistor damping of input filters, APEC 1999, after R. D. Middlebrook 1978; from memory, checked
 * against a search over R and frequency.
 *
 * @param inductanceH     L
 * @param capacitanceF    C, the ceramics
 * @param ratio           n, bulk over ceramic
 * @param bulkF           n C
 * @param resistanceOhm   the best ESR of the bulk
 * @param peakOhm         peak impedance with it
 * @param peakHz          where it is
 * @param characteristicOhm R0
 */
public record OptimalDamping(
        double inductanceH, double capacitanceF, double ratio, double bulkF, double resistanceOhm, double peakOhm, double peakHz,
        double characteristicOhm) {

    /** The best resistance for a bulk that is given. */
    public static OptimalDamping ofRatio(double inductanceH, double capacitanceF, double n) {
        Require.positive("inductanceH", inductanceH);
        Require.positive("capacitanceF", capacitanceF);
        Require.positive("ratio", n);
        double r0 = Math.sqrt(inductanceH / capacitanceF);
        double f0 = 1 / (2 * Math.PI * Math.sqrt(inductanceH * capacitanceF));
        return new OptimalDamping(
                inductanceH, capacitanceF, n, n * capacitanceF,
                r0 * Math.sqrt((4 + 3 * n) * (2 + n) / (2 * n * n * (4 + n))),
                r0 * Math.sqrt(2 * (2 + n)) / n,
                f0 * Math.sqrt(2 / (2 + n)),
                r0);
    }

    /**
     * The least bulk, with its best resistance, that keeps the peak at a wanted value Zm:
     * {@code n = (R0 / Zm)^2 (1 + sqrt(1 + 4 (Zm / R0)^2))}.
     */
    public static OptimalDamping ofPeak(double inductanceH, double capacitanceF, double peakOhm) {
        Require.positive("inductanceH", inductanceH);
        Require.positive("capacitanceF", capacitanceF);
        Require.positive("peakOhm", peakOhm);
        double squared = inductanceH / capacitanceF / (peakOhm * peakOhm);
        return ofRatio(inductanceH, capacitanceF, squared * (1 + Math.sqrt(1 + 4 / squared)));
    }
}
