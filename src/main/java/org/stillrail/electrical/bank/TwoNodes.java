package org.stillrail.electrical.bank;

import java.util.ArrayList;
import java.util.List;
import org.stillrail.electrical.capacitor.ImpedancePoint;
import org.stillrail.electrical.curve.Complex;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.electrical.curve.Sloped;

/**
 * A bank at two nodes, current entering at one and voltage read at one. With the admittances Ya at the converter and Yb at the load
 * and the path's impedance Zp, {@code D = Ya + Yb + Ya Yb Zp}: {@code Zcc = (1 + Yb Zp) / D}, {@code Zll = (1 + Ya Zp) / D},
 * {@code Zcl = 1 / D}. Circuit theory.
 *
 * @param bank with a distance
 */
record TwoNodes(Bank bank, Node into, Node read) implements BankResponse {

    @Override
    public List<Branch> branches() {
        return bank.branches();
    }

    @Override
    public ImpedancePoint at(double hz) {
        return transfer(hz, read);
    }

    @Override
    public double squaredVoltageAcross(int branch, double hz) {
        return transfer(hz, bank.branches().get(branch).node()).squaredMagnitude();
    }

    private ImpedancePoint transfer(double hz, Node to) {
        Sloped near = admittance(Node.CONVERTER, hz);
        Sloped far = admittance(Node.LOAD, hz);
        Sloped path = path(hz);
        Sloped transfer = near.plus(far).plus(near.times(far).times(path)).reciprocal();
        Sloped z = to != into ? transfer : Sloped.ONE.plus((into == Node.LOAD ? near : far).times(path)).times(transfer);
        return new ImpedancePoint(z.re(), z.im(), z.rePerHz(), z.imPerHz());
    }

    private Sloped path(double hz) {
        SeriesPath path = bank.distance().path();
        double ohmPerHz = 2 * Math.PI * path.inductanceH();
        return new Sloped(path.resistanceOhm(), ohmPerHz * hz, 0, ohmPerHz);
    }

    private Sloped admittance(Node node, double hz) {
        Sloped sum = Sloped.ZERO;
        for (Branch branch : bank.connectedTo(node)) {
            sum = sum.plus(Sloped.of(branch.at(hz)).reciprocal());
        }
        return sum;
    }

    @Override
    public BankCurves on(FrequencyGrid grid) {
        int n = grid.size();
        List<Curve> branches = new ArrayList<>();
        List<double[][]> admittances = new ArrayList<>();
        double[][] near = new double[2][n];
        double[][] far = new double[2][n];
        for (Branch branch : bank.branches()) {
            double[][] z = impedance(branch, grid);
            branches.add(Curve.takingOver(grid, z[0], z[1]));
            admittances.add(addAdmittance(z, branch.node() == Node.LOAD ? far : near));
        }
        double[][] sameNode = new double[2][n];
        double[][] otherNode = new double[2][n];
        for (int i = 0; i < n; i++) {
            TwoNodePoint point = bank.distance().at(grid.hz(i), new Complex(near[0][i], near[1][i]), new Complex(far[0][i], far[1][i]));
            sameNode[0][i] = (into == Node.LOAD ? point.atLoad() : point.atConverter()).re();
            sameNode[1][i] = (into == Node.LOAD ? point.atLoad() : point.atConverter()).im();
            otherNode[0][i] = point.transfer().re();
            otherNode[1][i] = point.transfer().im();
        }
        List<Curve> shares = new ArrayList<>();
        for (int k = 0; k < branches.size(); k++) {
            double[][] voltage = bank.branches().get(k).node() == into ? sameNode : otherNode;
            shares.add(product(grid, admittances.get(k), voltage));
        }
        double[][] shown = read == into ? sameNode : otherNode;
        return new BankCurves(Curve.takingOver(grid, shown[0], shown[1]), List.copyOf(branches), List.copyOf(shares));
    }

    private static double[][] impedance(Branch branch, FrequencyGrid grid) {
        double[][] z = new double[2][grid.size()];
        branch.addImpedanceTo(grid, z[0], z[1]);
        return z;
    }

    private static double[][] addAdmittance(double[][] z, double[][] sum) {
        int n = z[0].length;
        double[][] y = new double[2][n];
        for (int i = 0; i < n; i++) {
            double squared = z[0][i] * z[0][i] + z[1][i] * z[1][i];
            y[0][i] = z[0][i] / squared;
            y[1][i] = -z[1][i] / squared;
            sum[0][i] += y[0][i];
            sum[1][i] += y[1][i];
        }
        return y;
    }

    private static Curve product(FrequencyGrid grid, double[][] a, double[][] b) {
        int n = grid.size();
        double[] re = new double[n];
        double[] im = new double[n];
        for (int i = 0; i < n; i++) {
            re[i] = a[0][i] * b[0][i] - a[1][i] * b[1][i];
            im[i] = a[0][i] * b[1][i] + a[1][i] * b[0][i];
        }
        return Curve.takingOver(grid, re, im);
    }

    /** With 1/L of either side in place of its admittance and the path's inductance in place of its impedance. */
    @Override
    public double inductanceAtInfinityH() {
        double near = perHenry(Node.CONVERTER);
        double far = perHenry(Node.LOAD);
        double path = bank.distance().path().inductanceH();
        if (read != into) {
            return Double.isInfinite(near) || Double.isInfinite(far) ? 0 : 1 / (near + far + near * far * path);
        }
        double here = into == Node.LOAD ? far : near;
        double there = into == Node.LOAD ? near : far;
        double beyond = there == 0 ? Double.POSITIVE_INFINITY : path + 1 / there;
        return beyond == 0 ? 0 : 1 / (here + 1 / beyond);
    }

    private double perHenry(Node node) {
        return bank.connectedTo(node).stream().mapToDouble(branch -> 1 / branch.inductanceAtInfinityH()).sum();
    }
}
