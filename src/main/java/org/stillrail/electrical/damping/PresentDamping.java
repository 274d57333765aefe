package org.stillrail.electrical.damping;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.Branch;
import org.stillrail.electrical.capacitor.ImpedancePoint;
import org.stillrail.electrical.capacitor.Require;
import org.stillrail.electrical.curve.Extrema;
import org.stillrail.electrical.curve.Extremum;
import org.stillrail.electrical.curve.Hertz;
import org.stillrail.electrical.curve.Sloped;

/**
 * A bank with an inductance across it, beside the best that its own bulk could do. Capacitances and the bulk's resistance are
 * read from the models at the frequency of the optimal peak; the peak is that of the whole bank, mountings and all.
 *
 * @param optimum       for the bank's own ratio of bulk to ceramic
 * @param bulkOhm       what the bulk has in series at that frequency: Re Z of its branches in parallel
 * @param peakOhm       largest maximum of the impedance of bank and inductance within a decade of the optimal peak; null where
 *                      there is none
 * @param peakHz        null likewise
 * @param qualityFactor null likewise
 */
public record PresentDamping(
        OptimalDamping optimum, double bulkOhm, Double peakOhm, Double peakHz, Double qualityFactor) {

    private static final double DECADE = 10;
    private static final int ROUNDS = 3;

    /**
     * @param inductanceH of the converter's inductor, or of the path that feeds the ceramics
     * @param ceramics    indices of the branches that are to be damped; all others are the bulk
     * @throws IllegalArgumentException where one of the two groups is empty or not capacitive there, in words
     */
    public static PresentDamping of(Bank bank, Set<Integer> ceramics, double inductanceH) {
        Require.positive("inductanceH", inductanceH);
        Bank ceramic = group(bank, ceramics, true);
        Bank bulk = group(bank, ceramics, false);
        double hz = 1 / (2 * Math.PI * Math.sqrt(inductanceH * capacitanceF(ceramic, 1)));
        OptimalDamping optimum = null;
        for (int round = 0; round < ROUNDS; round++) {
            double c = capacitanceF(ceramic, hz);
            optimum = OptimalDamping.ofRatio(inductanceH, c, capacitanceF(bulk, hz) / c);
            hz = optimum.peakHz();
        }
        double bulkOhm = bulk.at(hz).resistanceOhm();
        Extremum peak = peak(bank, inductanceH, hz);
        return new PresentDamping(optimum, bulkOhm, peak == null ? null : (Double) peak.magnitudeOhm(),
                peak == null ? null : (Double) peak.frequencyHz(), peak == null ? null : (Double) peak.qualityFactor());
    }

    private static Bank group(Bank bank, Set<Integer> ceramics, boolean wanted) {
        List<Branch> chosen = IntStream.range(0, bank.branches().size())
                .filter(index -> ceramics.contains(index) == wanted)
                .mapToObj(bank.branches()::get)
                .toList();
        if (chosen.isEmpty()) {
            throw new IllegalArgumentException(wanted
                    ? "The bank has no ceramics to damp" : "The bank has no bulk beside its ceramics");
        }
        return new Bank(chosen);
    }

    /** Series capacitance of each branch, added up. */
    private static double capacitanceF(Bank bank, double hz) {
        double sum = 0;
        for (Branch branch : bank.branches()) {
            double reactance = branch.part().at(hz).reactanceOhm();
            if (!(reactance < 0)) {
                throw new IllegalArgumentException("Branch '" + branch.label() + "' is not capacitive at " + Hertz.words(hz));
            }
            sum += branch.count() / (-2 * Math.PI * hz * reactance);
        }
        return sum;
    }

    private static Extremum peak(Bank bank, double inductanceH, double aroundHz) {
        return Extrema.between(aroundHz / DECADE, aroundHz * DECADE, bank.knotsHz(), hz -> withInductance(bank.at(hz), hz, inductanceH))
                .stream()
                .filter(extremum -> extremum.kind() == Extremum.Kind.MAXIMUM)
                .max(Comparator.comparingDouble(Extremum::magnitudeOhm))
                .orElse(null);
    }

    /** Z in parallel with j w L, with its slope: dY = -Y^2 dZ, and back. */
    private static ImpedancePoint withInductance(ImpedancePoint z, double hz, double inductanceH) {
        Sloped y = Sloped.of(z).reciprocal();
        double x = 2 * Math.PI * hz * inductanceH;
        Sloped sum = new Sloped(y.re(), y.im() - 1 / x, y.rePerHz(), y.imPerHz() + 1 / (x * hz));
        Sloped both = sum.reciprocal();
        return new ImpedancePoint(both.re(), both.im(), both.rePerHz(), both.imPerHz());
    }

    /** The resistance that the bulk has over the best one. */
    public double timesBest() {
        return bulkOhm / optimum.resistanceOhm();
    }
}
