package org.stillrail.electrical.bank;

import java.util.List;
import org.stillrail.electrical.capacitor.ImpedancePoint;
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

    private static double squared(double re, double im) {
        return re * re + im * im;
    }
}
