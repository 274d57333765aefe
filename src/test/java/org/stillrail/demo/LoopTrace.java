package org.stillrail.demo;

/** A loop gain as an injection transformer and an analyser give it: frequency in kHz, gain in dB, phase of the loop in degrees. */
final class LoopTrace {

    private static final SweepGrid GRID = new SweepGrid(200, 150e3, 30);
    private static final long SEED = 6001;
    /** Of a gain of 1; the smaller of the two signals drowns away from the crossover. */
    private static final double DEVIATION = 0.002;

    private LoopTrace() {
    }

    static String of(BuiltRegulator regulator, Specimen board) {
        InstrumentNoise noise = new InstrumentNoise(SEED);
        StringBuilder text = new StringBuilder("# " + DemoSweep.ORIGIN + "\n# Logic 5V0, board 1, 24 V in, 1.5 A out, 23 degC\n"
                + "Frequency (kHz),Gain (dB),Phase (deg)\n");
        double before = 0;
        for (double hz : GRID.frequenciesHz()) {
            Phasor loop = regulator.loop(board, hz);
            Phasor seen = loop.times(Phasor.ONE.plus(noise.next(DEVIATION * (1 + loop.magnitude() / 30 + 1 / (30 * loop.magnitude())))));
            // From the integrator's -90 degrees on, without jumps.
            double phase = seen.angleRad() * 180 / Math.PI;
            while (phase > before + 180) {
                phase -= 360;
            }
            before = phase;
            text.append(Decimals.fixed(hz / 1e3, 4)).append(',')
                    .append(Decimals.fixed(20 * StrictMath.log10(seen.magnitude()), 2)).append(',').append(Decimals.fixed(phase, 1)).append('\n');
        }
        return text.toString();
    }
}
