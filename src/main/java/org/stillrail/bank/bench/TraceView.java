package org.stillrail.bank.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.stillrail.electrical.evaluation.Evaluation;
import org.stillrail.web.ChartData;
import org.stillrail.web.ChartData.Axis;
import org.stillrail.web.ChartData.Series;
import org.stillrail.web.Quantity;

/**
 * A record that is drawn over a prediction of the bank page: loop gain, ripple or load step.
 *
 * @param words  what the two say, in sentences
 * @param charts JSON of each, one or two
 * @param group  charts of one record share their axis
 */
record TraceView(BenchRecord record, List<String> words, List<Titled> charts, String group) {

    private static final int MOST_POINTS = 4000;
    private static final int SHIFTS = 400;
    /** An octave of the prediction is drawn beyond either end of a measured loop. */
    private static final double BEYOND = 2;

    /** A chart with its title. */
    record Titled(String title, String json) {
    }

    static TraceView of(BenchRecord record, Evaluation evaluation) {
        return switch (record.kind()) {
            case LOOP -> loop(record, evaluation);
            case RIPPLE -> ripple(record, evaluation);
            case STEP -> step(record, evaluation);
            case IMPEDANCE -> throw new IllegalArgumentException("An impedance is no trace");
        };
    }

    private static TraceView loop(BenchRecord record, Evaluation evaluation) {
        BenchLoop loop = record.document().loop();
        List<Series> gain = new ArrayList<>(List.of(Series.of("measured", "measured", "measured", loop.frequencyHz(), loop.gainDb()).drawnAs(null, "measured")));
        List<Series> phase = new ArrayList<>(List.of(Series.of("measured", "measured", "measured", loop.frequencyHz(), loop.phaseDeg()).drawnAs(null, "measured")));
        List<String> words = new ArrayList<>();
        Margin measured = Margin.of(loop.frequencyHz(), loop.gainDb(), loop.phaseDeg());
        words.add("Measured: " + (measured == null ? "the gain does not cross 0 dB in the file." : measured.words()));
        if (evaluation.loop() == null) {
            words.add("There is no prediction of the loop: the rail says nothing of its control.");
        } else {
            double[] all = evaluation.loop().grid().toArray();
            // Far beyond what was measured the predicted phase would flatten everything else.
            int[] shown = IntStream.range(0, all.length).filter(i -> all[i] >= loop.frequencyHz()[0] / BEYOND
                    && all[i] <= loop.frequencyHz()[loop.frequencyHz().length - 1] * BEYOND).toArray();
            double[] hz = taken(all, shown);
            gain.add(Series.of("bank", "predicted", "bank", hz, taken(evaluation.loop().gainDb(), shown)));
            phase.add(Series.of("bank", "predicted", "bank", hz, taken(evaluation.loop().phaseDeg(), shown)));
            Margin predicted = evaluation.loop().crossoverHz() == null ? null
                    : new Margin(evaluation.loop().crossoverHz(), evaluation.loop().phaseMarginDeg());
            words.add("Predicted: " + (predicted == null ? "the gain does not cross 0 dB." : predicted.words()));
            if (measured != null && predicted != null) {
                words.add("The crossover is off by " + signed(100 * (measured.hz() / predicted.hz() - 1), "%") + ", the phase margin by "
                        + signed(measured.phaseMarginDeg() - predicted.phaseMarginDeg(), "deg") + ".");
            }
        }
        return new TraceView(record, words, List.of(
                new Titled("Gain of the loop", new ChartData("Gain of the loop, predicted and measured", Axis.FREQUENCY, Axis.linear("|T|", "dB"), gain,
                        ImpedanceView.marks(evaluation.frequencies()), List.of()).json()),
                new Titled("Phase of the loop", new ChartData("Phase of the loop, predicted and measured", Axis.FREQUENCY, Axis.linear("Phase of T", "\u00b0"), phase,
                        ImpedanceView.marks(evaluation.frequencies()), List.of()).json())), "bench-loop");
    }

    /** Where the gain falls through 0 dB. */
    private record Margin(double hz, double phaseMarginDeg) {

        static Margin of(double[] hz, double[] gainDb, double[] phaseDeg) {
            for (int i = 1; i < hz.length; i++) {
                if (gainDb[i - 1] > 0 && gainDb[i] <= 0) {
                    double share = gainDb[i - 1] / (gainDb[i - 1] - gainDb[i]);
                    return new Margin(hz[i - 1] * Math.pow(hz[i] / hz[i - 1], share), 180 + phaseDeg[i - 1] + share * (phaseDeg[i] - phaseDeg[i - 1]));
                }
            }
            return null;
        }

        String words() {
            return "crossover " + Quantity.format(hz, "Hz", 3) + ", phase margin " + Quantity.format(phaseMarginDeg, "deg", 3) + ".";
        }
    }

    private static TraceView ripple(BenchRecord record, Evaluation evaluation) {
        BenchTrace trace = record.document().trace();
        List<Series> series = new ArrayList<>();
        List<String> words = new ArrayList<>();
        double[] centred = added(trace.voltageV(), -Arrays.stream(trace.voltageV()).average().orElse(0));
        words.add("Measured through " + Quantity.format(trace.bandwidthHz(), "Hz", 3) + ": " + peakToPeak(trace.voltageV()) + " peak to peak over the whole trace.");
        if (evaluation.ripple() == null) {
            words.add("There is no prediction of the ripple: the rail does not state the turns ratio of its flyback.");
            series.add(measured(trace.timeS(), centred));
        } else {
            double period = evaluation.ripple().voltage().periodS();
            double[] time = evaluation.ripple().voltage().timesS();
            double[] whole = evaluation.ripple().voltage().voltagesV();
            double[] seen = LowPass.ofPeriod(time, whole, trace.bandwidthHz());
            words.add("Predicted: " + Quantity.format(evaluation.ripple().voltage().peakToPeakV(), "V", 3) + " peak to peak, "
                    + peakToPeak(seen) + " of it through this bandwidth; measured is " + share(swing(trace.voltageV()), swing(seen)) + " of that.");
            words.add("The trace is laid over the prediction by the shift in time that fits best: the size and shape can be judged, not the timing.");
            Piece piece = Piece.onePeriod(trace.timeS(), centred, time, seen, period);
            series.add(measured(piece.time(), piece.value()));
            series.add(Series.of("bank", "predicted", "bank", time, whole));
            series.add(Series.of("seen", "predicted, filtered", "reference", time, seen));
        }
        return new TraceView(record, words, List.of(new Titled("Ripple over one period",
                new ChartData("Ripple, predicted and measured", Axis.TIME, Axis.linear("Voltage", "V"), series, List.of(), List.of()).json())), "bench-ripple");
    }

    /** A stretch of a trace, moved in time to lie over a period of the prediction. */
    private record Piece(double[] time, double[] value) {

        static Piece onePeriod(double[] time, double[] value, double[] predictedTime, double[] predicted, double period) {
            double span = Math.min(period, time[time.length - 1] - time[0]);
            double best = time[0];
            double least = Double.POSITIVE_INFINITY;
            for (int s = 0; s < SHIFTS; s++) {
                double start = time[0] + period * s / SHIFTS;
                if (start + span > time[time.length - 1] + period / SHIFTS) {
                    break;
                }
                double miss = 0;
                for (int i = 0; i < predictedTime.length; i += Math.max(1, predictedTime.length / SHIFTS)) {
                    double at = at(time, value, start + Math.min(span, predictedTime[i]));
                    miss += Math.pow(at - predicted[i], 2);
                }
                if (miss < least) {
                    least = miss;
                    best = start;
                }
            }
            double from = best;
            int[] kept = IntStream.range(0, time.length).filter(i -> time[i] >= from && time[i] <= from + span).toArray();
            return new Piece(Arrays.stream(kept).mapToDouble(i -> time[i] - from).toArray(), Arrays.stream(kept).mapToDouble(i -> value[i]).toArray());
        }

        private static double at(double[] time, double[] value, double wanted) {
            int found = Arrays.binarySearch(time, wanted);
            int above = found >= 0 ? found : Math.min(time.length - 1, -found - 1);
            if (above == 0 || time[above] == wanted) {
                return value[above];
            }
            double share = Math.min(1, (wanted - time[above - 1]) / (time[above] - time[above - 1]));
            return value[above - 1] + share * (value[above] - value[above - 1]);
        }
    }

    private static TraceView step(BenchRecord record, Evaluation evaluation) {
        BenchTrace trace = record.document().trace();
        double before = restingVoltage(trace);
        double[] deviation = added(trace.voltageV(), -before);
        List<Series> series = new ArrayList<>();
        List<String> words = new ArrayList<>();
        words.add("Measured through " + Quantity.format(trace.bandwidthHz(), "Hz", 3) + ": " + extremes(deviation) + " from the voltage before the step.");
        series.add(measured(trace.timeS(), deviation));
        if (evaluation.steps() == null) {
            words.add("There is no prediction of the load step: the rail asks none, or its control is not known.");
        } else {
            double[] time = evaluation.steps().step().timeS();
            double[] whole = evaluation.steps().step().deviationV();
            double[] seen = LowPass.of(time, whole, trace.bandwidthHz());
            words.add("Predicted: " + extremes(whole) + "; through this bandwidth " + extremes(seen) + ". The larger of the two measured is "
                    + share(largest(deviation), largest(seen)) + " of the larger predicted.");
            series.add(Series.of("bank", "predicted", "bank", time, whole));
            series.add(Series.of("seen", "predicted, filtered", "reference", time, seen));
        }
        return new TraceView(record, words, List.of(new Titled("Load step",
                new ChartData("Load step, predicted and measured", Axis.TIME, Axis.linear("Deviation", "V"), series, List.of(), List.of()).json())), "bench-step");
    }

    /** Mean of what lies before the step; the first sample where nothing does. */
    private static double restingVoltage(BenchTrace trace) {
        double sum = 0;
        int count = 0;
        for (int i = 0; i < trace.timeS().length && trace.timeS()[i] < 0; i++) {
            sum += trace.voltageV()[i];
            count++;
        }
        return count == 0 ? trace.voltageV()[0] : sum / count;
    }

    private static Series measured(double[] time, double[] value) {
        int every = Math.max(1, (int) Math.ceil(time.length / (double) MOST_POINTS));
        // Highest and lowest of every stretch, so that no spike is lost.
        List<Integer> kept = new ArrayList<>();
        for (int from = 0; from < time.length; from += 2 * every) {
            int low = from;
            int high = from;
            for (int i = from; i < Math.min(time.length, from + 2 * every); i++) {
                low = value[i] < value[low] ? i : low;
                high = value[i] > value[high] ? i : high;
            }
            kept.add(Math.min(low, high));
            if (low != high) {
                kept.add(Math.max(low, high));
            }
        }
        return Series.of("measured", "measured", "measured", kept.stream().mapToDouble(i -> time[i]).toArray(),
                kept.stream().mapToDouble(i -> value[i]).toArray()).drawnAs(null, "measured");
    }

    private static String peakToPeak(double[] values) {
        return Quantity.format(swing(values), "V", 3);
    }

    private static double swing(double[] values) {
        return Arrays.stream(values).max().orElse(0) - Arrays.stream(values).min().orElse(0);
    }

    private static double largest(double[] values) {
        return Arrays.stream(values).map(Math::abs).max().orElse(0);
    }

    private static String share(double measured, double predicted) {
        return predicted == 0 ? "not to be had as a share" : Quantity.format(100 * measured / predicted, "%", 3);
    }

    private static String signed(double value, String unit) {
        return (value > 0 ? "+" : "") + Quantity.format(value, unit, 2);
    }

    private static double[] taken(double[] values, int[] indices) {
        return Arrays.stream(indices).mapToDouble(i -> values[i]).toArray();
    }

    private static String extremes(double[] values) {
        return "down " + Quantity.format(Math.max(0, -Arrays.stream(values).min().orElse(0)), "V", 3) + ", up "
                + Quantity.format(Math.max(0, Arrays.stream(values).max().orElse(0)), "V", 3);
    }

    private static double[] added(double[] values, double offset) {
        return Arrays.stream(values).map(value -> value + offset).toArray();
    }
}
