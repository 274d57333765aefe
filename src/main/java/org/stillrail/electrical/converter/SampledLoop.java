package org.stillrail.electrical.converter;

import java.util.ArrayList;
import java.util.List;
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
        LoopGain gain = new LoopGain(converter);
        List<LoopGain.Point> points = new ArrayList<>(grid.size());
        Double crossoverHz = null;
        double marginDeg = Double.POSITIVE_INFINITY;
        LoopGain.Point before = null;
        for (int i = 0; i < grid.size(); i++) {
            LoopGain.Point point = gain.on(grid.hz(i), conductance[i], susceptance[i]);
            if (before != null && before.logMagnitude() > 0 != point.logMagnitude() > 0) {
                double part = before.logMagnitude() / (before.logMagnitude() - point.logMagnitude());
                double margin = before.marginDeg() + part * (point.marginDeg() - before.marginDeg());
                if (margin < marginDeg) {
                    marginDeg = margin;
                    crossoverHz = before.hz() * Math.pow(point.hz() / before.hz(), part);
                }
            }
            points.add(point);
            before = point;
        }
        if (crossoverHz == null) {
            return NONE;
        }
        CrossoverBand band = CrossoverBand.of(crossoverHz, wantedHz, spread);
        double peak = 0;
        for (LoopGain.Point point : points) {
            if (band.holds(point.hz())) {
                peak = Math.max(peak, 1 / point.returnDifference());
            }
        }
        return new SampledLoop(crossoverHz, marginDeg, peak);
    }
}
