package org.stillrail.electrical.step;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.stillrail.electrical.bank.Branch;
import org.stillrail.electrical.bank.Node;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.capacitor.SeriesRlc;

/**
 * A buck in voltage mode on a bank at two nodes, written a second time for an explicit Runge-Kutta integrator in absolute volts and
 * amperes. Independent of the product's code: the two node voltages come from Kirchhoff's current law, differentiated once at a node
 * where every branch has inductance. The path has inductance; every branch has resistance.
 */
record TwoNodeReference(
        List<Branch> branches, SeriesPath path, Node sense, double inputV, double outputV, double inductanceH, double resistanceOhm, double rampV,
        double gain, double zeroHz, double poleHz, double fromA, double toA, double slewAPerS, boolean limited) {

    /** Time, deviation at the load, inductor current. */
    List<double[]> run(double durationS) {
        int m = branches.size();
        double loadV = sense == Node.LOAD ? outputV : outputV - path.resistanceOhm() * fromA;
        double converterV = loadV + path.resistanceOhm() * fromA;
        // Per branch capacitor voltage and current, then inductor, path, integrator, lag.
        double[] y = new double[2 * m + 4];
        for (int k = 0; k < m; k++) {
            y[2 * k] = branches.get(k).node() == Node.LOAD ? loadV : converterV;
        }
        y[2 * m] = fromA;
        y[2 * m + 1] = fromA;
        y[2 * m + 2] = (converterV + resistanceOhm * fromA) / inputV * rampV;
        double rampS = Math.abs(toA - fromA) / slewAPerS;
        List<double[]> points = new ArrayList<>();
        points.add(new double[] {0, 0, fromA});
        double[] cuts = {0, rampS, durationS};
        for (int part = 0; part < 2; part++) {
            double slope = part == 0 ? Math.copySign(slewAPerS, toA - fromA) : 0;
            Equations equations = new Equations(slope);
            if (part == 1) {
                // The load's slope jumps, and with it the voltage of a node where every branch has inductance.
                points.add(new double[] {cuts[1], equations.nodes(cuts[1], y)[1] - loadV, y[2 * m]});
            }
            DormandPrince853Integrator integrator = new DormandPrince853Integrator(1e-18, 20e-9, 1e-9, 1e-9);
            integrator.addStepHandler(step -> {
                ODEStateAndDerivative at = step.getCurrentState();
                points.add(new double[] {at.getTime(), equations.nodes(at.getTime(), at.getPrimaryState())[1] - loadV, at.getPrimaryState()[2 * m]});
            });
            y = integrator.integrate(equations, new ODEState(cuts[part], y), cuts[part + 1]).getPrimaryState();
        }
        return points;
    }

    private final class Equations implements OrdinaryDifferentialEquation {

        private final double loadSlope;

        Equations(double loadSlope) {
            this.loadSlope = loadSlope;
        }

        @Override
        public int getDimension() {
            return 2 * branches.size() + 4;
        }

        private double loadA(double t) {
            return loadSlope == 0 ? toA : fromA + loadSlope * t;
        }

        private double switchV(double[] y) {
            int m = branches.size();
            double weight = gain * (1 / (2 * Math.PI * zeroHz) - 1 / (2 * Math.PI * poleHz));
            double duty = (y[2 * m + 2] + weight * y[2 * m + 3]) / rampV;
            return inputV * (limited ? Math.min(1, Math.max(0, duty)) : duty);
        }

        /** Both node voltages from two linear equations. */
        double[] nodes(double t, double[] y) {
            int m = branches.size();
            double inductorA = y[2 * m];
            double pathA = y[2 * m + 1];
            double[][] a = new double[2][2];
            double[] right = new double[2];
            for (Node node : Node.values()) {
                int row = node.ordinal();
                boolean inductive = true;
                for (int k = 0; k < m; k++) {
                    inductive &= branches.get(k).node() != node || rlc(k).inductanceH() > 0;
                }
                for (int k = 0; k < m; k++) {
                    SeriesRlc part = rlc(k);
                    if (branches.get(k).node() != node) {
                        continue;
                    }
                    if (inductive) {
                        a[row][row] += 1 / part.inductanceH();
                        right[row] += (part.resistanceOhm() * y[2 * k + 1] + y[2 * k]) / part.inductanceH();
                    } else if (part.inductanceH() > 0) {
                        right[row] -= y[2 * k + 1];
                    } else {
                        a[row][row] += 1 / part.resistanceOhm();
                        right[row] += y[2 * k] / part.resistanceOhm();
                    }
                }
                if (inductive) {
                    double sign = node == Node.CONVERTER ? 1 : -1;
                    a[row][0] += sign / path.inductanceH();
                    a[row][1] -= sign / path.inductanceH();
                    right[row] += sign * path.resistanceOhm() * pathA / path.inductanceH();
                    if (node == Node.CONVERTER) {
                        a[row][0] += 1 / inductanceH;
                        right[row] += (switchV(y) - resistanceOhm * inductorA) / inductanceH;
                    } else {
                        right[row] -= loadSlope;
                    }
                } else {
                    right[row] += node == Node.CONVERTER ? inductorA - pathA : pathA - loadA(t);
                }
            }
            double determinant = a[0][0] * a[1][1] - a[0][1] * a[1][0];
            return new double[] {
                (right[0] * a[1][1] - a[0][1] * right[1]) / determinant, (a[0][0] * right[1] - a[1][0] * right[0]) / determinant};
        }

        private SeriesRlc rlc(int k) {
            return (SeriesRlc) branches.get(k).part();
        }

        @Override
        public double[] computeDerivatives(double t, double[] y) {
            int m = branches.size();
            double[] v = nodes(t, y);
            double[] rate = new double[y.length];
            for (int k = 0; k < m; k++) {
                SeriesRlc part = rlc(k);
                double nodeV = v[branches.get(k).node().ordinal()];
                double current = part.inductanceH() > 0 ? y[2 * k + 1] : (nodeV - y[2 * k]) / part.resistanceOhm();
                rate[2 * k] = current / part.capacitanceF();
                rate[2 * k + 1] = part.inductanceH() > 0 ? (nodeV - y[2 * k] - part.resistanceOhm() * current) / part.inductanceH() : 0;
            }
            double error = outputV - v[sense.ordinal()];
            double duty = switchV(y) / inputV;
            boolean pushes = limited && (duty == 1 && error > 0 || duty == 0 && error < 0);
            rate[2 * m] = (switchV(y) - resistanceOhm * y[2 * m] - v[0]) / inductanceH;
            rate[2 * m + 1] = (v[0] - v[1] - path.resistanceOhm() * y[2 * m + 1]) / path.inductanceH();
            rate[2 * m + 2] = pushes ? 0 : gain * error;
            rate[2 * m + 3] = 2 * Math.PI * poleHz * (error - y[2 * m + 3]);
            return rate;
        }
    }
}
