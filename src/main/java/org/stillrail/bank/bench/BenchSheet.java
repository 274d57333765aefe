package org.stillrail.bank.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.Branch;
import org.stillrail.electrical.capacitor.ImpedancePoint;
import org.stillrail.electrical.curve.Extremum;
import org.stillrail.electrical.evaluation.Corner;
import org.stillrail.electrical.evaluation.Evaluation;
import org.stillrail.electrical.evaluation.KeyFrequencies;
import org.stillrail.electrical.spread.SpreadCorner;
import org.stillrail.web.Quantity;

/**
 * What to take to the bench before anyone solders: the bank as composed and with one part more and one fewer of each branch, the
 * frequencies to read, and what to expect there, from the lowest to the highest of all corners.
 *
 * @param conditions bias and temperature that the expected values hold at
 * @param atLoad     whether the bank has two nodes, of which the load's is to be probed
 */
record BenchSheet(List<Mix> mixes, int corners, String conditions, boolean atLoad) {

    private static final int MOST_RESONANCES = 4;

    /** @param lines one for each frequency */
    record Mix(String name, List<Line> lines) {
    }

    /** What to expect at one frequency. */
    record Line(String frequency, String why, String magnitude, String magnitudeRange, String resistance, String resistanceRange) {
    }

    static BenchSheet of(Evaluation evaluation) {
        List<Corner> corners = evaluation.corners();
        List<Mix> mixes = new ArrayList<>();
        mixes.add(mix("as composed", corners.stream().map(Corner::bank).toList(), evaluation.frequencies()));
        List<Branch> branches = corners.get(0).bank().branches();
        for (int k = 0; k < branches.size(); k++) {
            for (int more : new int[] {1, -1}) {
                int count = branches.get(k).count() + more;
                if (count > 0 || branches.size() > 1) {
                    int branch = k;
                    mixes.add(mix(count == 0 ? "without " + branches.get(k).label() : "with " + count + " \u00d7 " + branches.get(k).label(),
                            corners.stream().map(corner -> changed(corner.bank(), branch, count)).toList(), evaluation.frequencies()));
                }
            }
        }
        SpreadCorner nominal = corners.get(0).conditions();
        return new BenchSheet(mixes, corners.size(),
                Quantity.format(nominal.outputV(), "V", 3) + " of bias and " + Quantity.format(nominal.ambientC(), "degC", 3), evaluation.input().distance() != null);
    }

    private static Bank changed(Bank bank, int branch, int count) {
        return count == 0 ? bank.without(branch) : bank.with(branch, bank.branches().get(branch).withCount(count));
    }

    /** @param banks the same mix at every corner, the nominal one first */
    private static Mix mix(String name, List<Bank> banks, KeyFrequencies frequencies) {
        TreeMap<Double, String> reads = new TreeMap<>();
        banks.get(0).extrema(frequencies.dampingFromHz() / 10, 3 * frequencies.quietToHz()).stream().limit(MOST_RESONANCES)
                .forEach(extremum -> reads.put(extremum.frequencyHz(), extremum.kind() == Extremum.Kind.MINIMUM ? "resonance, lowest" : "anti-resonance"));
        reads.put(frequencies.dampingFromHz(), "damping band begins");
        reads.put(frequencies.dampingToHz(), "damping band ends");
        reads.put(frequencies.crossoverHz(), "crossover");
        reads.put(frequencies.switchingHz(), "switching");
        reads.put(3 * frequencies.switchingHz(), "third harmonic");
        return new Mix(name, reads.entrySet().stream().map(read -> line(read.getKey(), read.getValue(), banks)).toList());
    }

    private static Line line(double hz, String why, List<Bank> banks) {
        double[] magnitude = new double[banks.size()];
        double[] resistance = new double[banks.size()];
        for (int i = 0; i < banks.size(); i++) {
            ImpedancePoint z = banks.get(i).at(hz);
            magnitude[i] = Math.hypot(z.resistanceOhm(), z.reactanceOhm());
            resistance[i] = z.resistanceOhm();
        }
        return new Line(Quantity.format(hz, "Hz", 3), why, Quantity.format(magnitude[0], "ohm", 3), range(magnitude),
                Quantity.format(resistance[0], "ohm", 3), range(resistance));
    }

    private static String range(double[] values) {
        double least = values[0];
        double most = values[0];
        for (double value : values) {
            least = Math.min(least, value);
            most = Math.max(most, value);
        }
        return Quantity.format(least, "ohm", 3) + " \u2013 " + Quantity.format(most, "ohm", 3);
    }
}
