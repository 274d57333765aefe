package org.stillrail.electrical.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.curve.Curve;

/**
 * A predicted bank at the frequencies of a measured sweep.
 *
 * @param predicted on the grid of the measured curve
 * @param bands     errors by band, in the order asked
 */
public record BenchComparison(Curve measured, Curve predicted, List<BandError> bands) {

    public BenchComparison {
        bands = List.copyOf(bands);
    }

    /**
     * @param magnitudeKnown  whether the instrument tells |Z| at a point of the measured curve; where it does not, nothing is compared
     * @param resistanceKnown whether it tells the resistance there
     */
    public static BenchComparison of(
            Bank bank, Curve measured, List<ErrorBand> bands, IntPredicate magnitudeKnown, IntPredicate resistanceKnown) {
        Curve predicted = bank.on(measured.grid()).bank();
        return new BenchComparison(measured, predicted,
                bands.stream().map(band -> error(band, measured, predicted, magnitudeKnown, resistanceKnown)).toList());
    }

    private static BandError error(
            ErrorBand band, Curve measured, Curve predicted, IntPredicate magnitudeKnown, IntPredicate resistanceKnown) {
        int passedOver = 0;
        List<Double> magnitude = new ArrayList<>();
        List<Double> resistance = new ArrayList<>();
        double worstHz = 0;
        double worst = 0;
        for (int i = 0; i < measured.size(); i++) {
            double hz = measured.grid().hz(i);
            if (hz < band.fromHz() || hz > band.toHz() || measured.magnitude(i) == 0) {
                continue;
            }
            if (!magnitudeKnown.test(i)) {
                passedOver++;
                continue;
            }
            double percent = 100 * (predicted.magnitude(i) / measured.magnitude(i) - 1);
            magnitude.add(percent);
            if (magnitude.size() == 1 || Math.abs(percent) > Math.abs(worst)) {
                worst = percent;
                worstHz = hz;
            }
            if (measured.real(i) > 0 && resistanceKnown.test(i)) {
                resistance.add(100 * (predicted.real(i) / measured.real(i) - 1));
            }
        }
        if (magnitude.isEmpty()) {
            return new BandError(band, 0, passedOver, null, null, null, 0, null, null);
        }
        return new BandError(band, magnitude.size(), passedOver, rms(magnitude), worst, worstHz, resistance.size(),
                resistance.isEmpty() ? null : rms(resistance), resistance.isEmpty() ? null : largest(resistance));
    }

    private static Double rms(List<Double> values) {
        return Math.sqrt(values.stream().mapToDouble(value -> value * value).average().orElse(0));
    }

    private static Double largest(List<Double> values) {
        return values.stream().max((a, b) -> Double.compare(Math.abs(a), Math.abs(b))).orElseThrow();
    }
}
