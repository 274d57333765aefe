package org.stillrail.electrical.quality;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import org.stillrail.electrical.curve.FrequencyGrid;

/** A range of frequencies, both ends included; the ends may be the same. */
public record FrequencySpan(double fromHz, double toHz) {

    /** The runs of points for which a condition holds, ascending. */
    static List<FrequencySpan> ofPoints(FrequencyGrid grid, IntPredicate condition) {
        return runs(grid, grid.size(), condition, 0);
    }

    /** The runs of steps from a point to the next for which a condition on the index of the lower point holds. */
    static List<FrequencySpan> ofSteps(FrequencyGrid grid, IntPredicate condition) {
        return runs(grid, grid.size() - 1, condition, 1);
    }

    private static List<FrequencySpan> runs(FrequencyGrid grid, int count, IntPredicate condition, int reach) {
        List<FrequencySpan> spans = new ArrayList<>();
        int start = -1;
        for (int i = 0; i <= count; i++) {
            boolean holds = i < count && condition.test(i);
            if (holds && start < 0) {
                start = i;
            } else if (!holds && start >= 0) {
                spans.add(new FrequencySpan(grid.hz(start), grid.hz(i - 1 + reach)));
                start = -1;
            }
        }
        return spans;
    }
}
