package org.stillrail.electrical.bank;

import java.util.Objects;
import org.stillrail.electrical.capacitor.ImpedanceModel;
import org.stillrail.electrical.capacitor.ImpedancePoint;
import org.stillrail.electrical.curve.FrequencyGrid;

/**
 * Equal parts, each with its own mounting, then one path that they share:
 * {@code Z = (Zpart + Zmounting) / count + Zshared}.
 *
 * @param count    1 or more
 * @param mounting per part
 * @param shared   once for the branch
 * @param node     where it stands in a bank with a {@link Distance}; of no account in a bank at one node
 */
public record Branch(String label, int count, ImpedanceModel part, SeriesPath mounting, SeriesPath shared, Node node) {

    public Branch {
        Objects.requireNonNull(label, "label");
        Objects.requireNonNull(part, "part");
        node = node == null ? Node.CONVERTER : node;
        if (count < 1) {
            throw new IllegalArgumentException("count must be 1 or more, not " + count);
        }
    }

    /** At the converter, or at the one node. */
    public Branch(String label, int count, ImpedanceModel part, SeriesPath mounting, SeriesPath shared) {
        this(label, count, part, mounting, shared, Node.CONVERTER);
    }

    public Branch withCount(int newCount) {
        return new Branch(label, newCount, part, mounting, shared, node);
    }

    public Branch withMounting(SeriesPath newMounting) {
        return new Branch(label, count, part, newMounting, shared, node);
    }

    /** The same impedance as one part without mounting and shared path. */
    public Branch asOne(ImpedanceModel whole) {
        return new Branch(label, 1, whole, SeriesPath.NONE, SeriesPath.NONE, node);
    }

    /** Adds the branch's impedance in ohm to {@code r + jx}, which must both be zero or hold what is in series with it. */
    public void addImpedanceTo(FrequencyGrid grid, double[] resistanceOhm, double[] reactanceOhm) {
        int n = grid.size();
        double[] r = new double[n];
        double[] x = new double[n];
        part.addImpedanceTo(grid, r, x);
        double seriesR = mounting.resistanceOhm() / count + shared.resistanceOhm();
        double seriesL = seriesInductanceH();
        for (int i = 0; i < n; i++) {
            resistanceOhm[i] += r[i] / count + seriesR;
            reactanceOhm[i] += x[i] / count + grid.omega(i) * seriesL;
        }
    }

    /** Impedance and slope at one frequency. */
    public ImpedancePoint at(double hz) {
        double seriesR = mounting.resistanceOhm() / count + shared.resistanceOhm();
        double ohmPerHz = 2 * Math.PI * seriesInductanceH();
        return part.at(hz).over(count).plus(new ImpedancePoint(seriesR, ohmPerHz * hz, 0, ohmPerHz));
    }

    /** The inductance that the branch tends to at high frequency, in H. */
    public double inductanceAtInfinityH() {
        return part.inductanceAtInfinityH() / count + seriesInductanceH();
    }

    private double seriesInductanceH() {
        return mounting.inductanceH() / count + shared.inductanceH();
    }
}
