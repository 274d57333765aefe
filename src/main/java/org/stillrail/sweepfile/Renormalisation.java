package org.stillrail.sweepfile;

import org.stillrail.electrical.curve.Complex;

/**
 * Brings the S parameters of two ports with unequal references to the reference of port 1. From the wave definitions of the
 * Touchstone specification, {@code a = (V + R I) / (2 sqrt R)} and {@code b = (V - R I) / (2 sqrt R)} at each port: with
 * {@code r = (R1 - R2) / (R1 + R2)} and {@code k = (R1 + R2) / (2 sqrt(R1 R2))},
 * <pre>
 * S11' = S11 + r S12 S21 / (1 - r S22)      S12' = S12 / (k (1 - r S22))
 * S22' = (S22 - r) / (1 - r S22)            S21' = S21 / (k (1 - r S22))
 * </pre>
 */
final class Renormalisation {

    private Renormalisation() {
    }

    static NetworkData toFirstPort(NetworkData data) {
        double[] from = data.referenceOhm();
        if (data.ports() == 1 || data.parameter() != NetworkData.Parameter.S || from[0] == from[1]) {
            return data;
        }
        double r = (from[0] - from[1]) / (from[0] + from[1]);
        double k = (from[0] + from[1]) / (2 * Math.sqrt(from[0] * from[1]));
        int n = data.size();
        double[][] re = new double[4][n];
        double[][] im = new double[4][n];
        for (int i = 0; i < n; i++) {
            Complex s11 = entry(data, NetworkData.N11, i);
            Complex s21 = entry(data, NetworkData.N21, i);
            Complex s12 = entry(data, NetworkData.N12, i);
            Complex s22 = entry(data, NetworkData.N22, i);
            Complex inverse = Complex.ONE.minus(s22.times(r)).reciprocal();
            put(re, im, NetworkData.N11, i, s11.plus(s12.times(s21).times(inverse).times(r)));
            put(re, im, NetworkData.N21, i, s21.times(inverse).times(1 / k));
            put(re, im, NetworkData.N12, i, s12.times(inverse).times(1 / k));
            put(re, im, NetworkData.N22, i, s22.minus(new Complex(r, 0)).times(inverse));
        }
        return new NetworkData(data.parameter(), data.frequencyHz(), re, im, new double[] {from[0], from[0]}, data.orderKnown());
    }

    private static Complex entry(NetworkData data, int entry, int i) {
        return new Complex(data.re()[entry][i], data.im()[entry][i]);
    }

    private static void put(double[][] re, double[][] im, int entry, int i, Complex value) {
        re[entry][i] = value.re();
        im[entry][i] = value.im();
    }
}
