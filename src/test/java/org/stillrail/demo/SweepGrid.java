package org.stillrail.demo;

/** Log-spaced frequencies from start to stop, each rounded to four digits. */
record SweepGrid(double startHz, double stopHz, int pointsPerDecade) {

    double[] frequenciesHz() {
        int intervals = (int) Math.round(StrictMath.log10(stopHz / startHz) * pointsPerDecade);
        double[] hz = new double[intervals + 1];
        for (int i = 0; i <= intervals; i++) {
            hz[i] = Decimals.fourDigits(startHz * StrictMath.pow(10, StrictMath.log10(stopHz / startHz) * i / intervals));
        }
        return hz;
    }
}
