package org.stillrail.electrical.quality;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One figure over several samples of a part; repeats of a sample count as one, by their mean.
 *
 * @param samples        behind the figure
 * @param repeats        sweeps behind the samples together
 * @param spreadPercent  from lowest to highest over the median; 0 for one sample
 * @param repeatPercent  largest distance between repeats of one sample over that sample's mean; null without repeats
 * @param outliers       names of samples far off the others
 */
public record SampleSpread(
        String name, String unit, int samples, int repeats, double median, double lowest, double highest, double spreadPercent,
        Double repeatPercent, List<String> outliers) {

    /** Fewer samples do not tell which of them is off. */
    public static final int FEWEST_FOR_OUTLIERS = 4;

    /**
     * Modified z-score {@code 0.6745 |x - median| / MAD} above 3.5 (B. Iglewicz, D. Hoaglin, How to Detect and Handle Outliers, 1993;
     * from memory), and off by more than instruments are.
     */
    private static final double OUTLYING = 3.5;
    private static final double NORMAL_MAD = 0.6745;
    private static final double LEAST_SHARE = 0.05;

    public SampleSpread {
        outliers = List.copyOf(outliers);
    }

    /** @param bySample figures of each sample's sweeps, none of them empty; at least one sample */
    public static SampleSpread of(String name, String unit, Map<String, List<Double>> bySample) {
        Map<String, Double> means = new LinkedHashMap<>();
        int repeats = 0;
        Double worstRepeat = null;
        for (Map.Entry<String, List<Double>> sample : bySample.entrySet()) {
            double[] values = sample.getValue().stream().mapToDouble(Double::doubleValue).sorted().toArray();
            double mean = Arrays.stream(values).average().orElseThrow();
            means.put(sample.getKey(), mean);
            repeats += values.length;
            if (values.length > 1) {
                double apart = 100 * (values[values.length - 1] - values[0]) / Math.abs(mean);
                worstRepeat = worstRepeat == null ? apart : Math.max(worstRepeat, apart);
            }
        }
        double[] sorted = means.values().stream().mapToDouble(Double::doubleValue).sorted().toArray();
        double median = median(sorted);
        return new SampleSpread(name, unit, sorted.length, repeats, median, sorted[0], sorted[sorted.length - 1],
                100 * (sorted[sorted.length - 1] - sorted[0]) / Math.abs(median), worstRepeat, outliers(means, median));
    }

    private static List<String> outliers(Map<String, Double> means, double median) {
        if (means.size() < FEWEST_FOR_OUTLIERS) {
            return List.of();
        }
        double mad = median(means.values().stream().mapToDouble(value -> Math.abs(value - median)).sorted().toArray());
        return means.entrySet().stream()
                .filter(sample -> {
                    double off = Math.abs(sample.getValue() - median);
                    return off > LEAST_SHARE * Math.abs(median) && NORMAL_MAD * off > OUTLYING * mad;
                })
                .map(Map.Entry::getKey).toList();
    }

    private static double median(double[] sorted) {
        int n = sorted.length;
        return n % 2 == 1 ? sorted[n / 2] : (sorted[n / 2 - 1] + sorted[n / 2]) / 2;
    }
}
