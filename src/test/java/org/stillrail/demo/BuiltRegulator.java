package org.stillrail.demo;

/**
 * The invented buck converter as it stands on the bench, with the parts that were soldered in and not those of the schematic.
 * Textbook averages of a voltage-mode buck: no part of the product is used, so that what the demo calls measured is not its own
 * prediction.
 *
 * <pre>
 * T(s)   = gain / s (1 + s/wz1)(1 + s/wz2) / ((1 + s/wp1)(1 + s/wp2)) Vin / ramp Z / (Z + s L + R) exp(-s delay)
 * Zout   = Z (s L + R) / (Z + s L + R) / (1 + T)
 * </pre>
 *
 * @param zerosHz two, likewise {@code polesHz}
 */
record BuiltRegulator(
        double inputV, double outputV, double inductanceH, double resistanceOhm, double switchingHz, double rampV, double delayS,
        double gain, double[] zerosHz, double[] polesHz) {

    /** The loop with a board on its output. */
    Phasor loop(Specimen board, double hz) {
        Phasor s = new Phasor(0, 2 * Math.PI * hz);
        Phasor loop = new Phasor(gain * inputV / rampV, 0).over(s);
        for (int i = 0; i < zerosHz.length; i++) {
            loop = loop.times(new Phasor(1, hz / zerosHz[i])).over(new Phasor(1, hz / polesHz[i]));
        }
        Phasor z = board.impedance(hz);
        return loop.times(z).over(z.plus(inductor(hz))).times(Phasor.polar(1, -2 * Math.PI * hz * delayS));
    }

    /** What a load sees. */
    Phasor outputImpedance(Specimen board, double hz) {
        Phasor z = board.impedance(hz);
        Phasor inductor = inductor(hz);
        return z.times(inductor).over(z.plus(inductor)).over(Phasor.ONE.plus(loop(board, hz)));
    }

    /** Harmonic n of the inductor's current, a triangle: its peak is twice the magnitude. */
    Phasor currentHarmonic(int n) {
        double duty = outputV / inputV;
        double swing = (inputV - outputV) * duty / (inductanceH * switchingHz);
        Phasor step = Phasor.ONE.minus(Phasor.polar(1, -2 * Math.PI * n * duty));
        return step.times(-swing / (duty * (1 - duty) * 4 * Math.PI * Math.PI * n * n));
    }

    private Phasor inductor(double hz) {
        return new Phasor(resistanceOhm, 2 * Math.PI * hz * inductanceH);
    }
}
