package org.stillrail.electrical.step;

import org.stillrail.electrical.capacitor.Require;

/**
 * A load current along straight lines from corner to corner, as it was before the first and after the last.
 *
 * @param timeS ascending from 0
 * @param loadA at these times, same length
 */
public record LoadCourse(double[] timeS, double[] loadA) {

    /** A load that moves by less than this share of its largest move stands still. */
    private static final double STILL = 1e-9;

    public LoadCourse {
        timeS = timeS.clone();
        loadA = loadA.clone();
        if (timeS.length == 0 || timeS.length != loadA.length || timeS[0] != 0) {
            throw new IllegalArgumentException("A course of the load needs as many currents as times, the first at 0 s");
        }
        for (int i = 0; i < timeS.length; i++) {
            Require.finite("loadA", loadA[i]);
            if (i > 0 && !(timeS[i] > timeS[i - 1])) {
                throw new IllegalArgumentException("The times of a load's course must ascend: " + timeS[i - 1] + " s, " + timeS[i] + " s");
            }
        }
    }

    static LoadCourse of(Load load) {
        return load.stepA() == 0 ? new LoadCourse(new double[] {0}, new double[] {load.fromA()})
                : new LoadCourse(new double[] {0, load.rampS()}, new double[] {load.fromA(), load.toA()});
    }

    @Override
    public double[] timeS() {
        return timeS.clone();
    }

    @Override
    public double[] loadA() {
        return loadA.clone();
    }

    int corners() {
        return timeS.length;
    }

    double atS(int corner) {
        return timeS[corner];
    }

    /** Before the first corner. */
    public double fromA() {
        return loadA[0];
    }

    /** From the current at the beginning. */
    double deviationA(int corner) {
        return loadA[corner] - loadA[0];
    }

    /** From a corner on, in A/s; 0 after the last. */
    double slope(int corner) {
        return corner + 1 < timeS.length ? (loadA[corner + 1] - loadA[corner]) / (timeS[corner + 1] - timeS[corner]) : 0;
    }

    /** Largest distance from the current at the beginning. */
    double largestA() {
        double largest = 0;
        for (int i = 1; i < loadA.length; i++) {
            largest = Math.max(largest, Math.abs(deviationA(i)));
        }
        return largest;
    }

    /** Time of the last corner. */
    public double endS() {
        return timeS[timeS.length - 1];
    }

    /** Without the wait before its first edge, but for this share of the rest. */
    LoadCourse fromItsFirstEdge(double lead) {
        int edge = 0;
        while (edge + 1 < loadA.length && Math.abs(deviationA(edge + 1)) < STILL * largestA()) {
            edge++;
        }
        double startS = timeS[edge] - lead * (endS() - timeS[edge]);
        if (edge == 0 || startS <= 0) {
            return this;
        }
        double[] laterS = new double[timeS.length - edge + 1];
        double[] laterA = new double[laterS.length];
        laterA[0] = loadA[0];
        for (int i = 1; i < laterS.length; i++) {
            laterS[i] = timeS[edge + i - 1] - startS;
            laterA[i] = loadA[edge + i - 1];
        }
        return new LoadCourse(laterS, laterA);
    }
}
