package org.stillrail.sweepfile;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Collects points in the order of the file and puts them in order: what lies at 0 Hz or where the impedance is out of reach of the
 * fixture is dropped, frequencies are sorted, and of points at one frequency the first is kept. All of it is said in warnings.
 */
final class ImpedancePoints {

    /** Above this the fixture's formula divides by a rounding error; no part on a bench has such an impedance. */
    private static final double INFINITE_OHM = 1e12;

    private final double[] hz;
    private final double[] r;
    private final double[] x;
    private final String infiniteWhen;
    private int size;
    private int direct;
    private double[] lostHz = new double[4];
    private int lost;

    /** @param infiniteWhen what makes the impedance infinite, for the warning */
    ImpedancePoints(int capacity, String infiniteWhen) {
        hz = new double[capacity];
        r = new double[capacity];
        x = new double[capacity];
        this.infiniteWhen = infiniteWhen;
    }

    /** @param frequencyHz zero or positive */
    void add(double frequencyHz, double resistanceOhm, double reactanceOhm) {
        if (frequencyHz == 0) {
            direct++;
        } else if (!(Math.hypot(resistanceOhm, reactanceOhm) <= INFINITE_OHM)) {
            if (lost == lostHz.length) {
                lostHz = Arrays.copyOf(lostHz, 2 * lost);
            }
            lostHz[lost++] = frequencyHz;
        } else {
            hz[size] = frequencyHz;
            // Adding zero turns a negative zero into a plain one.
            r[size] = resistanceOhm + 0.0;
            x[size] = reactanceOhm + 0.0;
            size++;
        }
    }

    /** @param warnings what was said before; what is said here is added to it */
    ReadSweep toSweep(Double referenceOhm, String format, List<String> warnings) {
        sayWhatWasDropped(warnings);
        if (size == 0) {
            throw SweepFileException.ofFile("No point is left to read"
                    + (lost > 0 ? ": " + infiniteWhen + " throughout, where the impedance cannot be told" : ""));
        }
        sort(warnings);
        dropRepeated(warnings);
        sayWhatLooksWrong(warnings);
        return new ReadSweep(Arrays.copyOf(hz, size), Arrays.copyOf(r, size), Arrays.copyOf(x, size), referenceOhm, format, warnings);
    }

    private void sayWhatWasDropped(List<String> warnings) {
        if (direct > 0) {
            warnings.add("Dropped " + Phrase.count(direct, "point") + " at 0 Hz.");
        }
        if (lost > 0 && size > 0) {
            warnings.add("Dropped " + Phrase.count(lost, "point") + " where " + infiniteWhen
                    + " and the impedance cannot be told: " + Phrase.frequencies(lostHz, lost) + ".");
        }
    }

    private void sort(List<String> warnings) {
        boolean rising = true;
        boolean falling = true;
        for (int i = 1; i < size; i++) {
            rising &= hz[i] >= hz[i - 1];
            falling &= hz[i] <= hz[i - 1];
        }
        if (rising) {
            return;
        }
        warnings.add(falling ? "The frequencies fall in the file; they were turned round."
                : "The frequencies are not in order in the file; they were sorted.");
        int[] order = IntStream.range(0, size).boxed()
                .sorted(Comparator.comparingDouble(i -> hz[i])).mapToInt(Integer::intValue).toArray();
        double[][] sorted = new double[3][size];
        for (int i = 0; i < size; i++) {
            sorted[0][i] = hz[order[i]];
            sorted[1][i] = r[order[i]];
            sorted[2][i] = x[order[i]];
        }
        System.arraycopy(sorted[0], 0, hz, 0, size);
        System.arraycopy(sorted[1], 0, r, 0, size);
        System.arraycopy(sorted[2], 0, x, 0, size);
    }

    private void dropRepeated(List<String> warnings) {
        double[] repeatedHz = new double[size];
        int repeated = 0;
        int kept = 1;
        for (int i = 1; i < size; i++) {
            if (hz[i] == hz[kept - 1]) {
                repeatedHz[repeated++] = hz[i];
            } else {
                hz[kept] = hz[i];
                r[kept] = r[i];
                x[kept] = x[i];
                kept++;
            }
        }
        size = kept;
        if (repeated > 0) {
            warnings.add("Dropped " + Phrase.count(repeated, "point") + " at a frequency that stood in the file before: "
                    + Phrase.frequencies(repeatedHz, repeated) + "; the first value was kept.");
        }
    }

    private void sayWhatLooksWrong(List<String> warnings) {
        double[] negativeHz = new double[size];
        double[] zeroHz = new double[size];
        int negative = 0;
        int zero = 0;
        for (int i = 0; i < size; i++) {
            if (r[i] < 0) {
                negativeHz[negative++] = hz[i];
            } else if (r[i] == 0 && x[i] == 0) {
                zeroHz[zero++] = hz[i];
            }
        }
        if (negative > 0) {
            warnings.add("The resistance is negative at " + negative + " of " + Phrase.count(size, "point") + ": "
                    + Phrase.frequencies(negativeHz, negative) + ".");
        }
        if (zero > 0) {
            warnings.add("The impedance is exactly zero at " + Phrase.count(zero, "point") + ": "
                    + Phrase.frequencies(zeroHz, zero) + ".");
        }
    }
}
