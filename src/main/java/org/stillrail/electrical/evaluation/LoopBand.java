package org.stillrail.electrical.evaluation;

import java.util.Comparator;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.converter.Converter;
import org.stillrail.electrical.converter.Loop;
import org.stillrail.electrical.converter.LoopResult;
import org.stillrail.electrical.curve.Extremum;
import org.stillrail.electrical.curve.FrequencyGrid;

/**
 * What the damping verdict looks at, from a third of to three times the crossover.
 *
 * @param crossoverHz     null where the loop gain does not cross 1
 * @param sensitivityPeak largest 1 / |1 + T| in the band, on {@value #POINTS_PER_DECADE} points a decade and the parabola through
 *                        the highest three; 0 without a crossover
 * @param peakHz          where
 * @param worstRing       the maximum of |Zbank| in the band with the largest Q, null where there is none
 * @param esrAtCrossoverOhm Re Zbank, null without a crossover
 */
record LoopBand(
        Double crossoverHz, Double phaseMarginDeg, Double gainMarginDb, boolean stable, double sensitivityPeak, double peakHz,
        Extremum worstRing, Double esrAtCrossoverOhm) {

    static final double SPREAD = 3;
    private static final int POINTS_PER_DECADE = 100;
    private static final double LOWEST_SHARE = 1e-4;

    static LoopBand of(Bank bank, Converter converter) {
        double switchingHz = converter.stage().switchingHz();
        double from = LOWEST_SHARE * switchingHz;
        double to = SPREAD * switchingHz;
        int points = (int) Math.ceil(POINTS_PER_DECADE * Math.log10(to / from));
        LoopResult loop = Loop.of(bank, converter, FrequencyGrid.logSpaced(from, to, points));
        Double crossover = loop.crossoverHz();
        if (crossover == null) {
            return new LoopBand(null, null, loop.gainMarginDb(), loop.stable(), 0, 0, null, null);
        }
        double low = crossover / SPREAD;
        double high = crossover * SPREAD;
        Extremum ring = bank.extrema(low, high).stream()
                .filter(extremum -> extremum.kind() == Extremum.Kind.MAXIMUM)
                .max(Comparator.comparing(Extremum::qualityFactor))
                .orElse(null);
        double[] peak = peak(loop, low, high);
        return new LoopBand(crossover, loop.phaseMarginDeg(), loop.gainMarginDb(), loop.stable(), peak[0], peak[1], ring, loop.esrAtCrossoverOhm());
    }

    private static double[] peak(LoopResult loop, double low, double high) {
        double[] sensitivity = sensitivities(loop);
        FrequencyGrid grid = loop.grid();
        int best = -1;
        for (int i = 0; i < sensitivity.length; i++) {
            if (grid.hz(i) >= low && grid.hz(i) <= high && (best < 0 || sensitivity[i] > sensitivity[best])) {
                best = i;
            }
        }
        if (best < 0) {
            return new double[] {0, loop.crossoverHz()};
        }
        if (best == 0 || best == sensitivity.length - 1) {
            return new double[] {sensitivity[best], grid.hz(best)};
        }
        double left = Math.log(sensitivity[best - 1]);
        double middle = Math.log(sensitivity[best]);
        double right = Math.log(sensitivity[best + 1]);
        double bend = left - 2 * middle + right;
        boolean top = bend < 0 && left <= middle && right <= middle;
        double raised = top ? middle - (right - left) * (right - left) / (8 * bend) : middle;
        return new double[] {Math.exp(raised), grid.hz(best)};
    }

    /** 1 / |1 + T| at each frequency of the loop's grid. */
    static double[] sensitivities(LoopResult loop) {
        double[] open = loop.openImpedanceOhm();
        double[] closed = loop.closedImpedanceOhm();
        double[] sensitivity = new double[open.length];
        for (int i = 0; i < open.length; i++) {
            sensitivity[i] = closed[i] / open[i];
        }
        return sensitivity;
    }
}
