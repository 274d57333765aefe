package org.stillrail.electrical.quality;

import java.util.List;
import java.util.Optional;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.curve.FrequencyGrid;

/** Whether a sweep tells the same as an earlier one of the same sample under the same conditions. */
public final class RepeatFindings {

    /** Of |Z|; what reconnecting a sample changes. Common practice, no source. */
    public static final double DRIFT_PERCENT = 3;

    private RepeatFindings() {
    }

    /**
     * @param earlier on any grid; compared where both were measured
     * @param name    of the earlier sweep, for the sentence
     */
    public static Optional<Finding> drift(Curve sweep, Curve earlier, String name) {
        FrequencyGrid grid = sweep.grid();
        double[] missPercent = new double[grid.size()];
        double worst = 0;
        for (int i = 0; i < missPercent.length; i++) {
            double other = OnGrid.magnitudeAt(earlier, grid.hz(i));
            missPercent[i] = Double.isNaN(other) || other == 0 ? 0 : 100 * Math.abs(sweep.magnitude(i) / other - 1);
            worst = Math.max(worst, missPercent[i]);
        }
        List<FrequencySpan> spans = FrequencySpan.ofPoints(grid, i -> missPercent[i] > DRIFT_PERCENT);
        return spans.isEmpty() ? Optional.empty() : Optional.of(new Finding(FindingKind.DRIFT,
                "|Z| differs from the earlier sweep " + name + " of the same sample by up to " + Words.percent(worst) + ", more than "
                        + Words.percent(DRIFT_PERCENT) + " " + Words.spans(spans) + ".", spans));
    }
}
