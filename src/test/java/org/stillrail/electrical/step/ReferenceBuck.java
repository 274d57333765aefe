package org.stillrail.electrical.step;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;

/**
 * The same circuit written a second time for an explicit Runge-Kutta integrator, in absolute volts and amperes: branches as
 * (C, R, L) with R above 0, a compensator with one zero and one pole, duty limits as plain clamps. Independent of the product's code.
 */
final class ReferenceBuck {

    final double inputV;
    final double outputV;
    final double inductanceH;
    final double resistanceOhm;
    final double rampV;
    final double gain;
    final double zeroHz;
    final double poleHz;
    final double[][] crl;
    double fromA;
    double toA;
    double slew;
    boolean limited;
    private Double delayedDuty;

    ReferenceBuck(double inputV, double outputV, double inductanceH, double resistanceOhm, double rampV, double gain, double zeroHz,
            double poleHz, double[]... crl) {
        this.inputV = inputV;
        this.outputV = outputV;
        this.inductanceH = inductanceH;
        this.resistanceOhm = resistanceOhm;
        this.rampV = rampV;
        this.gain = gain;
        this.zeroHz = zeroHz;
        this.poleHz = poleHz;
        this.crl = crl;
    }

    ReferenceBuck load(double from, double to, double slewAPerS, boolean withLimits) {
        fromA = from;
        toA = to;
        slew = slewAPerS;
        limited = withLimits;
        return this;
    }

    /** Lowest and highest deviation and when, then the deviation and inductor current at the end. */
    record Outcome(double lowestV, double lowestAtS, double highestV, double highestAtS, double endV, double endA, List<double[]> points) {
    }

    // y = per branch capacitor voltage and current, then inductor current, integrator, lag
    Outcome run(double durationS, double longestStepS) {
        int m = crl.length;
        double[] y = new double[2 * m + 3];
        for (int k = 0; k < m; k++) {
            y[2 * k] = outputV;
        }
        y[2 * m] = fromA;
        y[2 * m + 1] = (outputV + resistanceOhm * fromA) / inputV * rampV;
        double rampS = Math.abs(toA - fromA) / slew;
        List<double[]> points = new ArrayList<>();
        points.add(new double[] {0, 0, fromA});
        double[] cuts = {0, Math.min(rampS, durationS), durationS};
        for (int part = 0; part < 2; part++) {
            double a = cuts[part];
            double b = cuts[part + 1];
            if (b <= a) {
                continue;
            }
            double slope = part == 0 ? Math.copySign(slew, toA - fromA) : 0;
            OrdinaryDifferentialEquation equations = new OrdinaryDifferentialEquation() {
                @Override
                public int getDimension() {
                    return 2 * m + 3;
                }

                @Override
                public double[] computeDerivatives(double t, double[] state) {
                    return rates(t, state, slope);
                }
            };
            DormandPrince853Integrator integrator = new DormandPrince853Integrator(1e-18, longestStepS, 1e-11, 1e-10);
            integrator.addStepHandler(interpolator -> {
                for (int i = 0; i <= 4; i++) {
                    double t = interpolator.getPreviousState().getTime()
                            + i / 4.0 * (interpolator.getCurrentState().getTime() - interpolator.getPreviousState().getTime());
                    double[] state = interpolator.getInterpolatedState(t).getPrimaryState();
                    points.add(new double[] {t, output(t, state, slope) - outputV, state[2 * m]});
                }
            });
            ODEStateAndDerivative last = integrator.integrate(equations, new ODEState(a, y), b);
            y = last.getPrimaryState();
        }
        double[] low = {0, 0};
        double[] high = {0, 0};
        for (double[] p : points) {
            if (p[1] < low[1]) {
                low = p;
            }
            if (p[1] > high[1]) {
                high = p;
            }
        }
        double[] end = points.get(points.size() - 1);
        return new Outcome(low[1], low[0], high[1], high[0], end[1], end[2], points);
    }

    /**
     * The same with an exact delay between command and duty: classic Runge-Kutta at a fixed step, the command's past kept at every
     * step and interpolated by a cubic through four of them at the half steps.
     */
    Outcome runDelayed(double durationS, double stepS, int stepsOfDelay) {
        int m = crl.length;
        int n = (int) Math.round(durationS / stepS);
        double start = (outputV + resistanceOhm * fromA) / inputV;
        double[] y = new double[2 * m + 3];
        for (int k = 0; k < m; k++) {
            y[2 * k] = outputV;
        }
        y[2 * m] = fromA;
        y[2 * m + 1] = start * rampV;
        int offset = stepsOfDelay + 2;
        double[] duty = new double[n + 1 + offset];
        Arrays.fill(duty, 0, offset + 1, start);
        double rampS = Math.abs(toA - fromA) / slew;
        List<double[]> points = new ArrayList<>();
        double[] low = {0, 0};
        double[] high = {0, 0};
        for (int i = 0; i < n; i++) {
            double t = i * stepS;
            double slope = t + stepS / 2 < rampS ? Math.copySign(slew, toA - fromA) : 0;
            int at = i + offset - stepsOfDelay;
            delayedDuty = duty[at];
            double v = output(t, y, slope) - outputV;
            double[] point = {t, v, y[2 * m]};
            points.add(point);
            low = v < low[1] ? point : low;
            high = v > high[1] ? point : high;
            double[] k1 = rates(t, y, slope);
            delayedDuty = (9 * (duty[at] + duty[at + 1]) - duty[at - 1] - duty[Math.min(at + 2, i + offset)]) / 16;
            double[] k2 = rates(t + stepS / 2, moved(y, k1, stepS / 2), slope);
            double[] k3 = rates(t + stepS / 2, moved(y, k2, stepS / 2), slope);
            delayedDuty = duty[at + 1];
            double[] k4 = rates(t + stepS, moved(y, k3, stepS), slope);
            for (int k = 0; k < y.length; k++) {
                y[k] += stepS / 6 * (k1[k] + 2 * k2[k] + 2 * k3[k] + k4[k]);
            }
            double next = command(y) / rampV;
            duty[i + 1 + offset] = limited ? Math.min(1, Math.max(0, next)) : next;
        }
        delayedDuty = null;
        double[] end = points.get(points.size() - 1);
        return new Outcome(low[1], low[0], high[1], high[0], end[1], end[2], points);
    }

    private static double[] moved(double[] y, double[] rates, double h) {
        double[] moved = y.clone();
        for (int k = 0; k < y.length; k++) {
            moved[k] += h * rates[k];
        }
        return moved;
    }

    private double load(double t) {
        double rampS = Math.abs(toA - fromA) / slew;
        return t >= rampS ? toA : fromA + (toA - fromA) * t / rampS;
    }

    private double command(double[] y) {
        return y[y.length - 2] + y[y.length - 1];
    }

    private double duty(double[] y) {
        if (delayedDuty != null) {
            return delayedDuty;
        }
        double duty = command(y) / rampV;
        return limited ? Math.min(1, Math.max(0, duty)) : duty;
    }

    private double output(double t, double[] y, double slope) {
        int m = crl.length;
        double conductance = 0;
        double inflow = y[2 * m] - load(t);
        for (int k = 0; k < m; k++) {
            if (crl[k][2] > 0) {
                inflow -= y[2 * k + 1];
            } else {
                conductance += 1 / crl[k][1];
                inflow += y[2 * k] / crl[k][1];
            }
        }
        if (conductance > 0) {
            return inflow / conductance;
        }
        double right = (duty(y) * inputV - resistanceOhm * y[2 * m]) / inductanceH - slope;
        double left = 1 / inductanceH;
        for (int k = 0; k < m; k++) {
            right += (y[2 * k] + crl[k][1] * y[2 * k + 1]) / crl[k][2];
            left += 1 / crl[k][2];
        }
        return right / left;
    }

    private double[] rates(double t, double[] y, double slope) {
        int m = crl.length;
        double v = output(t, y, slope);
        double[] d = new double[y.length];
        for (int k = 0; k < m; k++) {
            double c = crl[k][0];
            double r = crl[k][1];
            double l = crl[k][2];
            if (l > 0) {
                d[2 * k] = y[2 * k + 1] / c;
                d[2 * k + 1] = (v - y[2 * k] - r * y[2 * k + 1]) / l;
            } else {
                d[2 * k] = (v - y[2 * k]) / r / c;
            }
        }
        d[2 * m] = (duty(y) * inputV - resistanceOhm * y[2 * m] - v) / inductanceH;
        double error = outputV - v;
        double command = command(y);
        boolean held = limited && (command > rampV && error > 0 || command < 0 && error < 0);
        d[2 * m + 1] = held ? 0 : gain * error;
        double wp = 2 * Math.PI * poleHz;
        double wz = 2 * Math.PI * zeroHz;
        // gain (1 + s/wz) / (s (1 + s/wp)) = gain / s + gain (1/wz - 1/wp) / (1 + s/wp)
        d[2 * m + 2] = wp * (gain * (1 / wz - 1 / wp) * error - y[2 * m + 2]);
        return d;
    }
}
