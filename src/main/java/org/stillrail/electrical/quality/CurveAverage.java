package org.stillrail.electrical.quality;

import java.util.Arrays;
import java.util.List;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.curve.FrequencyGrid;

/**
 * The mean impedance of several sweeps: of resistance and of reactance at each frequency, where all were measured. That is a
 * piece whose resistance is the mean resistance, and whose capacitance below resonance is the harmonic mean.
 */
public final class CurveAverage {

    private CurveAverage() {
    }

    /**
     * @param curves on any grids; read at the frequencies of the one with most points inside the common range
     * @throws IllegalArgumentException where they have fewer than two points in common
     */
    public static Curve of(List<Curve> curves) {
        double from = curves.stream().mapToDouble(curve -> curve.grid().startHz()).max().orElseThrow();
        double to = curves.stream().mapToDouble(curve -> curve.grid().stopHz()).min().orElseThrow();
        double[] hz = curves.stream()
                .map(curve -> Arrays.stream(curve.grid().toArray()).filter(f -> f >= from && f <= to).toArray())
                .reduce((a, b) -> b.length > a.length ? b : a).orElseThrow();
        if (hz.length < 2) {
            throw new IllegalArgumentException("The sweeps have no range of frequencies in common");
        }
        double[] r = new double[hz.length];
        double[] x = new double[hz.length];
        for (Curve curve : curves) {
            for (int i = 0; i < hz.length; i++) {
                double[] z = OnGrid.at(curve, hz[i]);
                r[i] += z[0] / curves.size();
                x[i] += z[1] / curves.size();
            }
        }
        return new Curve(FrequencyGrid.of(hz), r, x);
    }
}
