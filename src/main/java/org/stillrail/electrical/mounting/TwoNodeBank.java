package org.stillrail.electrical.mounting;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.Branch;
import org.stillrail.electrical.bank.Node;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.capacitor.ImpedancePoint;
import org.stillrail.electrical.capacitor.Require;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.curve.Complex;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.curve.FrequencyGrid;

/**
 * A bank at two nodes, at the converter and at the load, joined by a path: plane, bead or second inductor.
 *
 * @param atConverter      branches there, may be empty
 * @param atLoad           branches there, may be empty, but not both lists with no load capacitance
 * @param path             between the two nodes, there and back
 * @param loadCapacitanceF fixed and without loss, at the load; 0 for none
 */
public record TwoNodeBank(List<Branch> atConverter, List<Branch> atLoad, SeriesPath path, double loadCapacitanceF) {

    private static final String PATH_LABEL = "beyond the path";
    private static final String LOAD_LABEL = "load capacitance";

    public TwoNodeBank {
        atConverter = List.copyOf(atConverter);
        atLoad = List.copyOf(atLoad);
        Objects.requireNonNull(path, "path");
        Require.notNegative("loadCapacitanceF", loadCapacitanceF);
        if (atConverter.isEmpty() && atLoad.isEmpty() && loadCapacitanceF == 0) {
            throw new IllegalArgumentException("A bank needs at least one branch or a load capacitance");
        }
    }

    /** The open-circuit impedances of both nodes; see {@link TwoNodePoint}. */
    public TwoNodePoint at(double hz) {
        double omega = 2 * Math.PI * hz;
        Complex near = admittance(atConverter, hz);
        Complex far = admittance(atLoad, hz).plus(new Complex(0, omega * loadCapacitanceF));
        return TwoNodePoint.of(hz, near, far, new Complex(path.resistanceOhm(), omega * path.inductanceH()));
    }

    private static Complex admittance(List<Branch> branches, double hz) {
        Complex sum = Complex.ZERO;
        for (Branch branch : branches) {
            ImpedancePoint z = branch.at(hz);
            sum = sum.plus(new Complex(z.resistanceOhm(), z.reactanceOhm()).reciprocal());
        }
        return sum;
    }

    /** The three open-circuit impedances on a grid. */
    public TwoNodeCurves on(FrequencyGrid grid) {
        int n = grid.size();
        double[][] parts = new double[6][n];
        for (int i = 0; i < n; i++) {
            TwoNodePoint point = at(grid.hz(i));
            put(parts, 0, i, point.atConverter());
            put(parts, 2, i, point.atLoad());
            put(parts, 4, i, point.transfer());
        }
        return new TwoNodeCurves(
                Curve.takingOver(grid, parts[0], parts[1]),
                Curve.takingOver(grid, parts[2], parts[3]),
                Curve.takingOver(grid, parts[4], parts[5]));
    }

    private static void put(double[][] parts, int row, int i, Complex z) {
        parts[row][i] = z.re();
        parts[row + 1][i] = z.im();
    }

    /**
     * The same circuit seen from one node as a bank at one node: the branches there, and one more that is the path with everything at
     * its far end. It has all that banks have: extrema, ripple, the step of the bank alone; with the sense point at the converter, also
     * the loop. What is beyond the path appears as the branch '{@value #PATH_LABEL}'.
     */
    public Bank seenFrom(Node node) {
        List<Branch> near = new ArrayList<>(node == Node.LOAD ? loadBranches() : atConverter);
        List<Branch> far = node == Node.LOAD ? atConverter : loadBranches();
        if (!far.isEmpty()) {
            near.add(new Branch(PATH_LABEL, 1, new BankAsPart(new Bank(far)), SeriesPath.NONE, path));
        }
        if (near.isEmpty()) {
            throw new IllegalArgumentException("Nothing is connected to the node of the " + (node == Node.LOAD ? "load" : "converter"));
        }
        return new Bank(near);
    }

    private List<Branch> loadBranches() {
        List<Branch> branches = new ArrayList<>(atLoad);
        if (loadCapacitanceF > 0) {
            branches.add(new Branch(LOAD_LABEL, 1, new SeriesRlc(loadCapacitanceF, 0, 0), SeriesPath.NONE, SeriesPath.NONE));
        }
        return branches;
    }
}
