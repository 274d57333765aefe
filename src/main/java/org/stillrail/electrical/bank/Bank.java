package org.stillrail.electrical.bank;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import org.stillrail.electrical.capacitor.ImpedancePoint;
import org.stillrail.electrical.capacitor.ValidRange;
import org.stillrail.electrical.curve.Extrema;
import org.stillrail.electrical.curve.Extremum;
import org.stillrail.electrical.curve.FrequencyGrid;

/** Branches in parallel at one node: {@code 1 / Z = sum of 1 / Zbranch}. The order of branches has no meaning. */
public record Bank(List<Branch> branches) {

    public Bank {
        branches = List.copyOf(branches);
        if (branches.isEmpty()) {
            throw new IllegalArgumentException("A bank needs at least one branch");
        }
    }

    /**
     * Impedance of the bank and of every branch on a grid.
     *
     * @throws LosslessResonanceException where a branch or the bank has no finite, non-zero impedance on a grid point
     */
    public BankCurves on(FrequencyGrid grid) {
        return BankCurves.of(this, grid);
    }

    /** Impedance and slope of the bank at one frequency. */
    public ImpedancePoint at(double hz) {
        double g = 0;
        double b = 0;
        double gSlope = 0;
        double bSlope = 0;
        for (Branch branch : branches) {
            ImpedancePoint z = branch.at(hz);
            double squared = squared(z.resistanceOhm(), z.reactanceOhm());
            double yRe = z.resistanceOhm() / squared;
            double yIm = -z.reactanceOhm() / squared;
            // dY = -Y^2 dZ
            double y2Re = yRe * yRe - yIm * yIm;
            double y2Im = 2 * yRe * yIm;
            g += yRe;
            b += yIm;
            gSlope -= y2Re * z.resistanceOhmPerHz() - y2Im * z.reactanceOhmPerHz();
            bSlope -= y2Re * z.reactanceOhmPerHz() + y2Im * z.resistanceOhmPerHz();
        }
        double squared = squared(g, b);
        double r = g / squared;
        double x = -b / squared;
        double z2Re = r * r - x * x;
        double z2Im = 2 * r * x;
        return new ImpedancePoint(r, x, -(z2Re * gSlope - z2Im * bSlope), -(z2Re * bSlope + z2Im * gSlope));
    }

    /** Every local minimum and maximum of |Z| strictly inside the range, ascending in frequency. */
    public List<Extremum> extrema(double fromHz, double toHz) {
        return Extrema.between(fromHz, toHz, knotsHz(), this::at);
    }

    /** The points of all tables in the bank, in no particular order. */
    public double[] knotsHz() {
        return branches.stream().flatMapToDouble(branch -> DoubleStream.of(branch.part().knotsHz())).toArray();
    }

    /** The inductance that the bank tends to at high frequency, in H; 0 as soon as one branch has none. */
    public double inductanceAtInfinityH() {
        double perHenry = 0;
        for (Branch branch : branches) {
            perHenry += 1 / branch.inductanceAtInfinityH();
        }
        return 1 / perHenry;
    }

    /** Where every branch rests on data; empty (from above to) when they have no frequency in common. */
    public ValidRange validRange() {
        return branches.stream().map(branch -> branch.part().validRange()).reduce(ValidRange.EVERYWHERE, ValidRange::intersect);
    }

    /** The bank with one branch replaced. */
    public Bank with(int index, Branch branch) {
        List<Branch> changed = new ArrayList<>(branches);
        changed.set(index, branch);
        return new Bank(changed);
    }

    /** The bank with one branch left out; there must be another. */
    public Bank without(int index) {
        List<Branch> changed = new ArrayList<>(branches);
        changed.remove(index);
        return new Bank(changed);
    }

    /** What a reader of figures between two frequencies should know of the models behind them, branch by branch. */
    public List<String> warnings(double fromHz, double toHz) {
        List<String> found = new ArrayList<>();
        for (Branch branch : branches) {
            String prefix = "Branch '" + branch.label() + "': ";
            branch.part().warnings().forEach(warning -> found.add(prefix + warning));
            ValidRange range = branch.part().validRange();
            if (fromHz < range.fromHz()) {
                found.add(prefix + "below " + range.fromHz() + " Hz the model is extrapolated.");
            }
            if (toHz > range.toHz()) {
                found.add(prefix + "above " + range.toHz() + " Hz the model is extrapolated.");
            }
        }
        return found;
    }

    private static double squared(double re, double im) {
        return re * re + im * im;
    }
}
