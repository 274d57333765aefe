package org.stillrail.electrical.curve;

import java.util.Arrays;
import java.util.TreeSet;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/** Fewer points of a long curve: for a screen without losing a peak, or for a calculation without choosing by value. */
public final class Thinning {

    /** Lowest and highest |Z|, lowest and highest resistance of each stretch. */
    private static final int KEPT_OF_EACH = 4;

    private Thinning() {
    }

    /**
     * Of each of equally many points, those with the lowest and the highest |Z| and resistance; the ends stay.
     *
     * @param most 8 or more
     * @return the curve itself where it has no more points than that
     */
    public static Curve keepingPeaks(Curve curve, int most) {
        int n = curve.size();
        if (n <= most) {
            return curve;
        }
        double[] magnitude = curve.magnitudes();
        double[] resistance = curve.reals();
        int stretches = (most - 2) / KEPT_OF_EACH;
        TreeSet<Integer> kept = new TreeSet<>(Arrays.asList(0, n - 1));
        for (int s = 0; s < stretches; s++) {
            int from = (int) ((long) s * n / stretches);
            int to = (int) ((long) (s + 1) * n / stretches);
            for (double[] values : new double[][] {magnitude, resistance}) {
                int low = from;
                int high = from;
                for (int i = from; i < to; i++) {
                    low = values[i] < values[low] ? i : low;
                    high = values[i] > values[high] ? i : high;
                }
                kept.add(low);
                kept.add(high);
            }
        }
        return take(curve, kept.stream().mapToInt(Integer::intValue).toArray());
    }

    /** Points at equal distances in the order of the curve; the ends stay. The curve itself where it has no more than {@code most}. */
    public static Curve everySo(Curve curve, int most) {
        int n = curve.size();
        if (n <= most) {
            return curve;
        }
        int[] kept = new int[most];
        for (int k = 0; k < most; k++) {
            kept[k] = (int) ((long) k * (n - 1) / (most - 1));
        }
        return take(curve, kept);
    }

    /**
     * The points for which a condition on the index holds.
     *
     * @throws IllegalArgumentException where it holds for none
     */
    public static Curve where(Curve curve, IntPredicate condition) {
        int[] kept = IntStream.range(0, curve.size()).filter(condition).toArray();
        if (kept.length == 0) {
            throw new IllegalArgumentException("None of the " + curve.size() + " points can be used");
        }
        return kept.length == curve.size() ? curve : take(curve, kept);
    }

    private static Curve take(Curve curve, int[] kept) {
        double[] hz = new double[kept.length];
        double[] re = new double[kept.length];
        double[] im = new double[kept.length];
        for (int k = 0; k < kept.length; k++) {
            hz[k] = curve.grid().hz(kept[k]);
            re[k] = curve.real(kept[k]);
            im[k] = curve.imaginary(kept[k]);
        }
        return new Curve(FrequencyGrid.of(hz), re, im);
    }
}
