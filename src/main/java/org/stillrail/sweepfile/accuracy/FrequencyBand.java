package org.stillrail.sweepfile.accuracy;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import org.stillrail.electrical.curve.FrequencyGrid;

/** A range of frequencies, both ends included. */
public record FrequencyBand(double startHz, double stopHz) {

    /** The runs of grid points for which a condition holds, ascending. */
    static List<FrequencyBand> where(FrequencyGrid grid, IntPredicate condition) {
        List<FrequencyBand> bands = new ArrayList<>();
        int start = -1;
        for (int i = 0; i <= grid.size(); i++) {
            boolean holds = i < grid.size() && condition.test(i);
            if (holds && start < 0) {
                start = i;
            } else if (!holds && start >= 0) {
                bands.add(new FrequencyBand(grid.hz(start), grid.hz(i - 1)));
                start = -1;
            }
        }
        return bands;
    }
}
