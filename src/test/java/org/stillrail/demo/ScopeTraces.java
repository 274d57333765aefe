package org.stillrail.demo;

/** What an oscilloscope stored of the ripple and of a load step: sums of harmonics through its bandwidth, and its noise. */
final class ScopeTraces {

    private static final double BANDWIDTH_HZ = 20e6;

    private static final int RIPPLE_HARMONICS = 150;
    private static final int RIPPLE_SAMPLES = 1500;
    private static final double RIPPLE_SAMPLE_S = 5e-9;
    private static final double RIPPLE_NOISE_V = 120e-6;

    private static final double STEP_FROM_A = 0.5;
    private static final double STEP_TO_A = 2.5;
    private static final double STEP_RISE_S = 1e-6;
    /** The load switches to and fro, slowly enough to settle. */
    private static final double STEP_REPEATS_HZ = 500;
    private static final int STEP_HARMONICS = 6000;
    private static final int STEP_SAMPLES = 1200;
    private static final double STEP_SAMPLE_S = 0.5e-6;
    private static final double STEP_START_S = -100e-6;
    private static final double STEP_NOISE_V = 0.8e-3;
    private static final double RESTING_V = 5.012;

    private ScopeTraces() {
    }

    /** Time in microseconds, voltage in millivolts, AC coupled; the trigger is somewhere in the period. */
    static String ripple(BuiltRegulator regulator, Specimen board) {
        InstrumentNoise noise = new InstrumentNoise(7001);
        StringBuilder text = head("24 V in, 1.5 A out, 23 degC; AC coupled, 20 MHz", "Time (us),Voltage (mV)");
        Phasor[] harmonics = new Phasor[RIPPLE_HARMONICS];
        for (int n = 1; n <= RIPPLE_HARMONICS; n++) {
            double hz = n * regulator.switchingHz();
            harmonics[n - 1] = regulator.currentHarmonic(n).times(board.impedance(hz)).times(scope(hz));
        }
        for (int i = 0; i < RIPPLE_SAMPLES; i++) {
            double volts = RIPPLE_NOISE_V * noise.next();
            double cycles = (i * RIPPLE_SAMPLE_S + 0.7e-6) * regulator.switchingHz();
            for (int n = 1; n <= RIPPLE_HARMONICS; n++) {
                volts += 2 * harmonics[n - 1].times(Phasor.polar(1, 2 * Math.PI * n * cycles)).re();
            }
            text.append(Decimals.fixed(i * RIPPLE_SAMPLE_S * 1e6, 3)).append(',').append(Decimals.fixed(volts * 1e3, 3)).append('\n');
        }
        return text.toString();
    }

    /** Time in microseconds from the edge of the load, voltage in volts. */
    static String step(BuiltRegulator regulator, Specimen board) {
        InstrumentNoise noise = new InstrumentNoise(8001);
        StringBuilder text = head("24 V in, load 0.5 A to 2.5 A in 1 us, 23 degC; DC coupled, 20 MHz", "Time (us),Voltage (V)");
        double[] hz = new double[STEP_HARMONICS];
        Phasor[] harmonics = new Phasor[STEP_HARMONICS];
        for (int k = 0; k < STEP_HARMONICS; k++) {
            int n = 2 * k + 1;
            hz[k] = n * STEP_REPEATS_HZ;
            double half = Math.PI * hz[k] * STEP_RISE_S;
            double size = 2 * (STEP_TO_A - STEP_FROM_A) / (Math.PI * n) * StrictMath.sin(half) / half;
            harmonics[k] = regulator.outputImpedance(board, hz[k]).times(-size).times(scope(hz[k])).times(Phasor.polar(1, -half));
        }
        double resting = sum(harmonics, hz, STEP_START_S);
        for (int i = 0; i < STEP_SAMPLES; i++) {
            double time = STEP_START_S + i * STEP_SAMPLE_S;
            double volts = RESTING_V + sum(harmonics, hz, time) - resting + STEP_NOISE_V * noise.next();
            text.append(Decimals.fixed(time * 1e6, 1)).append(',').append(Decimals.fixed(volts, 4)).append('\n');
        }
        return text.toString();
    }

    /** A square wave is a sum of sines: each is the imaginary part. */
    private static double sum(Phasor[] harmonics, double[] hz, double time) {
        double sum = 0;
        for (int k = 0; k < harmonics.length; k++) {
            double angle = 2 * Math.PI * hz[k] * time;
            sum += harmonics[k].re() * StrictMath.sin(angle) + harmonics[k].im() * StrictMath.cos(angle);
        }
        return sum;
    }

    private static Phasor scope(double hz) {
        return Phasor.ONE.over(new Phasor(1, hz / BANDWIDTH_HZ));
    }

    private static StringBuilder head(String remark, String headings) {
        return new StringBuilder("# " + DemoSweep.ORIGIN + "\n# Logic 5V0, board 1, " + remark + "\n" + headings + "\n");
    }
}
