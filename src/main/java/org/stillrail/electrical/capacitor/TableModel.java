package org.stillrail.electrical.capacitor;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.electrical.curve.Hertz;

/**
 * Impedance known point by point, usually measured: R and X are linear over log f between points.
 *
 * <p>Outside the points R keeps the value of the nearest point, and X goes on as the one element that the nearest point
 * shows: a negative X as a capacitance (X in proportion to 1/f), a positive X as an inductance (in proportion to f).
 */
public final class TableModel implements ImpedanceModel {

    private static final double POINTS_PER_DECADE = 20;
    private static final double WIDEST_STEP = Math.log(10) / 19;

    private final double[] hz;
    private final double[] logHz;
    private final double[] resistance;
    private final double[] reactance;
    private final List<String> warnings;

    private TableModel(double[] hz, double[] resistance, double[] reactance) {
        this.hz = hz;
        this.resistance = resistance;
        this.reactance = reactance;
        this.logHz = Arrays.stream(hz).map(Math::log).toArray();
        this.warnings = findWarnings();
    }

    /**
     * @param frequencyHz   at least 2, positive, strictly increasing; copied
     * @param resistanceOhm same length; noise may make a measured value negative, which is kept and warned about
     * @param reactanceOhm  same length
     * @throws IllegalArgumentException naming the array and the index that break a rule
     */
    public static TableModel of(double[] frequencyHz, double[] resistanceOhm, double[] reactanceOhm) {
        int n = frequencyHz.length;
        if (resistanceOhm.length != n || reactanceOhm.length != n) {
            throw new IllegalArgumentException("frequencyHz, resistanceOhm and reactanceOhm must be equally long, not "
                    + n + ", " + resistanceOhm.length + " and " + reactanceOhm.length);
        }
        if (n < 2) {
            throw new IllegalArgumentException("frequencyHz must hold at least 2 points, not " + n);
        }
        double[] hz = FrequencyGrid.of(frequencyHz).toArray();
        for (int i = 0; i < n; i++) {
            Require.finite("resistanceOhm[" + i + "]", resistanceOhm[i]);
            Require.finite("reactanceOhm[" + i + "]", reactanceOhm[i]);
        }
        return new TableModel(hz, resistanceOhm.clone(), reactanceOhm.clone());
    }

    private List<String> findWarnings() {
        List<String> found = new ArrayList<>();
        int widest = 1;
        for (int i = 1; i < logHz.length; i++) {
            if (logHz[i] - logHz[i - 1] > logHz[widest] - logHz[widest - 1]) {
                widest = i;
            }
        }
        double decades = (logHz[logHz.length - 1] - logHz[0]) / Math.log(10);
        if (hz.length < POINTS_PER_DECADE * decades || logHz[widest] - logHz[widest - 1] > WIDEST_STEP) {
            found.add("The table has fewer than 20 points a decade, widest apart between " + Hertz.words(hz[widest - 1]) + " and "
                    + Hertz.words(hz[widest]) + "; between its points the impedance is a straight line over log frequency.");
        }
        long negative = Arrays.stream(resistance).filter(r -> r < 0).count();
        if (negative > 0) {
            found.add("The table has a negative resistance at " + negative + " of " + hz.length + " points.");
        }
        return List.copyOf(found);
    }

    public int size() {
        return hz.length;
    }

    public double resistanceOhm(int index) {
        return resistance[index];
    }

    public double reactanceOhm(int index) {
        return reactance[index];
    }

    @Override
    public void addImpedanceTo(FrequencyGrid grid, double[] resistanceOhm, double[] reactanceOhm) {
        int last = hz.length - 1;
        int k = 0;
        for (int i = 0; i < resistanceOhm.length; i++) {
            double f = grid.hz(i);
            if (f < hz[0]) {
                resistanceOhm[i] += resistance[0];
                reactanceOhm[i] += beyond(0, f);
            } else if (f >= hz[last]) {
                resistanceOhm[i] += resistance[last];
                reactanceOhm[i] += beyond(last, f);
            } else {
                while (hz[k + 1] <= f) {
                    k++;
                }
                double share = (grid.logHz(i) - logHz[k]) / (logHz[k + 1] - logHz[k]);
                resistanceOhm[i] += resistance[k] + share * (resistance[k + 1] - resistance[k]);
                reactanceOhm[i] += reactance[k] + share * (reactance[k + 1] - reactance[k]);
            }
        }
    }

    @Override
    public ImpedancePoint at(double f) {
        int last = hz.length - 1;
        if (f < hz[0] || f >= hz[last]) {
            int end = f < hz[0] ? 0 : last;
            double x = beyond(end, f);
            return new ImpedancePoint(resistance[end], x, 0, Math.abs(x) / f);
        }
        int found = Arrays.binarySearch(hz, f);
        int k = found >= 0 ? found : -found - 2;
        double width = logHz[k + 1] - logHz[k];
        double share = (Math.log(f) - logHz[k]) / width;
        double risesR = resistance[k + 1] - resistance[k];
        double risesX = reactance[k + 1] - reactance[k];
        return new ImpedancePoint(
                resistance[k] + share * risesR, reactance[k] + share * risesX, risesR / (width * f), risesX / (width * f));
    }

    private double beyond(int end, double f) {
        return reactance[end] < 0 ? reactance[end] * (hz[end] / f) : reactance[end] * (f / hz[end]);
    }

    /** The inductance of the last point where its X is positive, otherwise 0. */
    @Override
    public double inductanceAtInfinityH() {
        int last = hz.length - 1;
        return Math.max(0, reactance[last]) / (2 * Math.PI * hz[last]);
    }

    @Override
    public double[] knotsHz() {
        return hz.clone();
    }

    @Override
    public ValidRange validRange() {
        return new ValidRange(hz[0], hz[hz.length - 1]);
    }

    @Override
    public List<String> warnings() {
        return warnings;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof TableModel table && Arrays.equals(hz, table.hz)
                && Arrays.equals(resistance, table.resistance) && Arrays.equals(reactance, table.reactance);
    }

    @Override
    public int hashCode() {
        return 31 * (31 * Arrays.hashCode(hz) + Arrays.hashCode(resistance)) + Arrays.hashCode(reactance);
    }

    @Override
    public String toString() {
        return "table of " + hz.length + " points from " + hz[0] + " Hz to " + hz[hz.length - 1] + " Hz";
    }
}
