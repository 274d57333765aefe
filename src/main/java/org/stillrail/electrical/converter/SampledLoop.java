package org.stillrail.electrical.converter;

import org.stillrail.electrical.curve.Complex;
import org.stillrail.electrical.curve.FrequencyGrid;

/**
 * The loop of a bank that is told by its admittance at many frequencies, for very many banks that differ little. Between the frequencies logarithms run
 * straight; nothing is looked for beyond them, and nothing is said of stability.
 *
 * @param crossoverHz     of several crossings the one with the least phase margin, as in {@link LoopResult}; null where there is none
 * @param phaseMarginDeg  there, null likewise
 * @param sensitivityPeak largest 1 / |1 + T| in the band round crossover and wanted crossover; null likewise
 */
public record SampledLoop(Double crossoverHz, Double phaseMarginDeg, Double sensitivityPeak) {

    private static final SampledLoop NONE = new SampledLoop(null, null, null);

    /**
     * @param conductance of the bank in S, at each frequency
     * @param susceptance likewise
     * @param wantedHz    a crossover that the band takes in too, or null
     * @param spread      the band goes from the lower over this to the higher times this
     */
    public static SampledLoop of(Converter converter, FrequencyGrid grid, double[] conductance, double[] susceptance, Double wantedHz, double spread) {
        Plant plant = new Plant(converter.stage(), converter.control(), converter.loadLineOhm());
        double[] logMagnitude = new double[grid.size()];
        double[] phaseDeg = new double[grid.size()];
        Double crossoverHz = null;
        double marginDeg = Double.POSITIVE_INFINITY;
        for (int i = 0; i < grid.size(); i++) {
            double hz = grid.hz(i);
            Plant.Point point = plant.on(hz, conductance[i], susceptance[i]);
            logMagnitude[i] = Math.log(point.magnitude() * converter.compensator().magnitudeAt(hz));
            phaseDeg[i] = point.phaseDeg() + converter.compensator().phaseDegAt(hz);
            if (i > 0 && logMagnitude[i - 1] > 0 != logMagnitude[i] > 0) {
                double part = logMagnitude[i - 1] / (logMagnitude[i - 1] - logMagnitude[i]);
                double margin = 180 + phaseDeg[i - 1] + part * (phaseDeg[i] - phaseDeg[i - 1]);
                if (margin < marginDeg) {
                    marginDeg = margin;
                    crossoverHz = grid.hz(i - 1) * Math.pow(hz / grid.hz(i - 1), part);
                }
            }
        }
        if (crossoverHz == null) {
            return NONE;
        }
        double low = (wantedHz == null ? crossoverHz : Math.min(crossoverHz, wantedHz)) / spread;
        double high = (wantedHz == null ? crossoverHz : Math.max(crossoverHz, wantedHz)) * spread;
        double peak = 0;
        for (int i = 0; i < grid.size(); i++) {
            if (grid.hz(i) >= low && grid.hz(i) <= high) {
                Complex loopGain = Complex.polar(Math.exp(logMagnitude[i]), Math.toRadians(phaseDeg[i]));
                peak = Math.max(peak, 1 / Math.max(Complex.ONE.plus(loopGain).magnitude(), Double.MIN_NORMAL));
            }
        }
        return new SampledLoop(crossoverHz, marginDeg, peak);
    }
}
