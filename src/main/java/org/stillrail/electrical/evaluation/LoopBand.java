package org.stillrail.electrical.evaluation;

import java.util.Arrays;
import java.util.Comparator;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.converter.ClosedLoop;
import org.stillrail.electrical.converter.Converter;
import org.stillrail.electrical.converter.CrossoverBand;
import org.stillrail.electrical.converter.Loop;
import org.stillrail.electrical.converter.LoopMargins;
import org.stillrail.electrical.curve.Extremum;
import org.stillrail.electrical.curve.FrequencyGrid;

/**
 * What the damping verdict looks at, from a third of to three times the crossover. Where the loop crosses 1 more than once, so
 * that its crossover is not the one that it was placed for, the band reaches round both.
 *
 * @param crossoverHz     null where the loop gain does not cross 1
 * @param fromHz          the band, with {@code toHz}; 0 without a crossover
 * @param sensitivityPeak largest 1 / |1 + T| in the band, on {@value #POINTS_PER_DECADE} points a decade and the parabola through
 *                        the highest three; 0 without a crossover
 * @param peakHz          where
 * @param worstRing       the maximum of |Zbank| in the band with the largest Q, null where there is none
 * @param esrAtCrossoverOhm Re Zbank, null without a crossover
 * @param closedPeakOhm   largest |Z| that the load sees of the closed loop in the band, found likewise; 0 without a crossover
 */
record LoopBand(
        Double crossoverHz, double fromHz, double toHz, Double phaseMarginDeg, Double gainMarginDb, boolean stable, double sensitivityPeak, double peakHz,
        Extremum worstRing, Double esrAtCrossoverOhm, double closedPeakOhm) {

    static final double SPREAD = 3;
    private static final int POINTS_PER_DECADE = 100;
    private static final double LOWEST_SHARE = 1e-4;

    /** @param wantedHz the crossover that the compensator is placed for, null where it is given */
    static LoopBand of(Bank bank, Converter converter, Double wantedHz) {
        double switchingHz = converter.stage().switchingHz();
        double from = LOWEST_SHARE * switchingHz;
        double to = SPREAD * switchingHz;
        int points = (int) Math.ceil(POINTS_PER_DECADE * Math.log10(to / from));
        LoopMargins loop = Loop.margins(bank, converter, from, to);
        Double crossover = loop.crossoverHz();
        if (crossover == null) {
            return new LoopBand(null, 0, 0, null, loop.gainMarginDb(), loop.stable(), 0, 0, null, null, 0);
        }
        CrossoverBand band = CrossoverBand.of(crossover, wantedHz, SPREAD);
        double low = band.lowHz();
        double high = band.highHz();
        Extremum ring = bank.extrema(low, high).stream()
                .filter(extremum -> extremum.kind() == Extremum.Kind.MAXIMUM)
                .max(Comparator.comparing(Extremum::qualityFactor))
                .orElse(null);
        FrequencyGrid grid = round(FrequencyGrid.logSpaced(from, to, points), low, high);
        ClosedLoop closed = Loop.closed(bank, converter, grid);
        double[] peak = peak(grid, closed.sensitivity(), crossover, low, high);
        double[] impedancePeak = peak(grid, closed.impedanceOhm(), crossover, low, high);
        return new LoopBand(crossover, low, high, loop.phaseMarginDeg(), loop.gainMarginDb(), loop.stable(), peak[0], peak[1], ring, loop.esrAtCrossoverOhm(),
                impedancePeak[0]);
    }

    /** Crossover, margins and stability alone, which is all that the load step needs of it. */
    static LoopBand crossing(Bank bank, Converter converter) {
        double switchingHz = converter.stage().switchingHz();
        LoopMargins loop = Loop.margins(bank, converter, LOWEST_SHARE * switchingHz, SPREAD * switchingHz);
        return new LoopBand(loop.crossoverHz(), 0, 0, loop.phaseMarginDeg(), loop.gainMarginDb(), loop.stable(), 0, 0, null, loop.esrAtCrossoverOhm(), 0);
    }

    /** The points of the band, and the neighbour beyond each end. */
    private static FrequencyGrid round(FrequencyGrid all, double low, double high) {
        int first = 0;
        int last = all.size() - 1;
        while (first + 1 < last && all.hz(first + 1) < low) {
            first++;
        }
        while (last - 1 > first && all.hz(last - 1) > high) {
            last--;
        }
        return FrequencyGrid.of(Arrays.copyOfRange(all.toArray(), first, last + 1));
    }

    /** The largest value and its frequency: of the points inside the band, and of the straight line in log-log at its ends. */
    private static double[] peak(FrequencyGrid grid, double[] values, double crossoverHz, double low, double high) {
        double[] best = {0, crossoverHz};
        for (int i = 1; i < values.length; i++) {
            for (double end : new double[] {low, high}) {
                if (grid.hz(i - 1) <= end && end <= grid.hz(i)) {
                    double part = Math.log(end / grid.hz(i - 1)) / Math.log(grid.hz(i) / grid.hz(i - 1));
                    take(best, values[i - 1] * Math.pow(values[i] / values[i - 1], part), end);
                }
            }
            if (grid.hz(i) >= low && grid.hz(i) <= high) {
                boolean top = i + 1 < values.length && values[i] >= values[i - 1] && values[i] >= values[i + 1];
                take(best, top ? vertex(values[i - 1], values[i], values[i + 1]) : values[i], grid.hz(i));
            }
        }
        return best;
    }

    private static void take(double[] best, double value, double hz) {
        if (value > best[0]) {
            best[0] = value;
            best[1] = hz;
        }
    }

    /** Height of the parabola through the logarithms of three points whose middle one is the highest. */
    private static double vertex(double a, double b, double c) {
        double left = Math.log(a);
        double middle = Math.log(b);
        double right = Math.log(c);
        double bend = left - 2 * middle + right;
        return bend < 0 ? Math.exp(middle - (right - left) * (right - left) / (8 * bend)) : b;
    }
}
