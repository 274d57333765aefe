package org.stillrail.sweepfile;

import java.util.ArrayList;
import java.util.List;

/**
 * Where a sweep begins anew in a list of frequencies: a step against the direction of the sweep that leads back to near its
 * first frequency or beyond. A sweep that turns and runs back over its points is one sweep.
 */
final class FrequencyRestart {

    /** Of the span of the sweep on a log axis, how near to its first frequency counts as back. */
    private static final double NEAR = 0.1;

    private FrequencyRestart() {
    }

    /** Indices at which the second and later sweeps begin. */
    static List<Integer> starts(double[] hz, int size) {
        List<Integer> starts = new ArrayList<>();
        double firstHz = 0;
        double lastHz = 0;
        int direction = 0;
        int zeros = 0;
        for (int i = 0; i < size; i++) {
            if (hz[i] == 0) {
                zeros++;
                continue;
            }
            if (lastHz == 0) {
                firstHz = hz[i];
            } else if (direction == 0) {
                direction = Double.compare(hz[i], lastHz);
            } else if (direction * Double.compare(hz[i], lastHz) < 0 && isBack(direction, firstHz, lastHz, hz[i])) {
                // Rows of 0 Hz between two sweeps begin a rising one and close a falling one.
                starts.add(direction > 0 ? i - zeros : i);
                firstHz = hz[i];
                direction = 0;
            }
            lastHz = hz[i];
            zeros = 0;
        }
        return starts;
    }

    private static boolean isBack(int direction, double firstHz, double lastHz, double hz) {
        double span = Math.abs(Math.log(lastHz / firstHz));
        return direction * Math.log(hz / firstHz) <= NEAR * span;
    }
}
