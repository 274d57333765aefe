package org.stillrail.electrical.quality;

import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.curve.FrequencyGrid;

/** A curve read between its points: real and imaginary part linear over log f, as the model of a table is. */
public final class OnGrid {

    private OnGrid() {
    }

    /** |Z| at a frequency; NaN outside the curve. */
    static double magnitudeAt(Curve curve, double hz) {
        double[] z = at(curve, hz);
        return Math.hypot(z[0], z[1]);
    }

    /** Real and imaginary part; NaN outside the curve. */
    public static double[] at(Curve curve, double hz) {
        FrequencyGrid grid = curve.grid();
        if (hz < grid.startHz() || hz > grid.stopHz()) {
            return new double[] {Double.NaN, Double.NaN};
        }
        int low = 0;
        int high = grid.size() - 1;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (grid.hz(middle) <= hz) {
                low = middle;
            } else {
                high = middle;
            }
        }
        if (grid.size() == 1 || hz == grid.hz(low)) {
            return new double[] {curve.real(low), curve.imaginary(low)};
        }
        double share = Math.log(hz / grid.hz(low)) / Math.log(grid.hz(high) / grid.hz(low));
        return new double[] {
            curve.real(low) + share * (curve.real(high) - curve.real(low)),
            curve.imaginary(low) + share * (curve.imaginary(high) - curve.imaginary(low))};
    }
}
