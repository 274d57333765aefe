package org.stillrail.sweepfile;

import java.util.ArrayList;
import java.util.List;

/**
 * Where a sweep begins anew in a list of frequencies: at a step against the direction that leaps over more than half of what was
 * swept, on a log axis. It only counts where every sweep so found runs one way; else the list is one sweep in disorder, or one
 * that runs there and back.
 */
final class FrequencyRestart {

    private static final double LEAP = 0.5 + 1e-9;

    private FrequencyRestart() {
    }

    /** Indices at which the second and later sweeps begin. Rows of 0 Hz belong to the sweep before them. */
    static List<Integer> starts(double[] hz, int size) {
        List<Integer> starts = new ArrayList<>();
        double firstHz = 0;
        double lastHz = 0;
        int direction = 0;
        for (int i = 0; i < size; i++) {
            if (hz[i] == 0) {
                continue;
            }
            int step = lastHz == 0 ? 0 : Double.compare(hz[i], lastHz);
            if (firstHz == 0) {
                firstHz = hz[i];
            } else if (direction == 0) {
                direction = step;
            } else if (step == -direction) {
                if (Math.abs(Math.log(hz[i] / lastHz)) <= LEAP * Math.abs(Math.log(lastHz / firstHz))) {
                    return List.of();
                }
                starts.add(i);
                firstHz = hz[i];
                direction = 0;
            }
            lastHz = hz[i];
        }
        return starts;
    }
}
