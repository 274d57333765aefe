package org.stillrail.electrical.step;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.Branch;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.converter.Compensator;
import org.stillrail.electrical.converter.Converter;
import org.stillrail.electrical.converter.CurrentMode;
import org.stillrail.electrical.converter.PowerStage;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

/** Peak current mode against an independent Runge-Kutta integration of the equations in the calculation's definition. */
class CurrentModeStepTest {

    private static final double C1 = 470e-6;
    private static final double R1 = 6e-3;
    private static final double C2 = 100e-6;
    private static final double R2 = 1e-3;
    private static final double INPUT = 12;
    private static final double OUTPUT = 1.8;
    private static final double INDUCTANCE = 0.5e-6;
    private static final double SWITCHING = 600e3;
    private static final double SENSE = 5e-3;
    private static final double GAIN = 2e4;
    private static final double ZERO = 5e3;
    private static final double POLE = 200e3;
    private static final double SLOPE = 5e6;

    @Test
    void linearStepAndRelease() {
        compare("Peak current mode, step 1 A to 11 A, linear", 1, 11, 5e6, false, 0.005);
        compare("Peak current mode, release 11 A to 1 A, linear", 11, 1, 5e6, false, 0.005);
    }

    @Test
    void theInductorsSlewStaysWithinWhatTheDutyAllows() {
        compare("Peak current mode, step 0 A to 60 A within the inductor's slew", 0, 60, 200e6, true, 0.01);
        compare("Peak current mode, release 60 A to 0 A within the inductor's slew", 60, 0, 200e6, true, 0.01);
        StepResult release = LoadStep.of(request(new Load(60, 0, 200e6), true));
        double[] timeS = release.timeS();
        double[] inductorA = release.inductorA();
        for (int i = 1; i < timeS.length; i++) {
            double slew = (inductorA[i] - inductorA[i - 1]) / (timeS[i] - timeS[i - 1]);
            assertTrue(slew > -OUTPUT / INDUCTANCE * (1 + 1e-6) && slew < (INPUT - OUTPUT) / INDUCTANCE * (1 + 1e-6), "slew " + slew);
        }
    }

    private static void compare(String name, double fromA, double toA, double slew, boolean limited, double tolerance) {
        double[] expected = extremes(fromA, toA, slew, limited);
        StepResult got = LoadStep.of(request(new Load(fromA, toA, slew), limited));
        Check.that(Topic.STEP, name + ": undershoot, overshoot")
                .source(Source.independent("equations integrated by a Runge-Kutta of order 8 (Hipparchus, Dormand-Prince)"))
                .expected("V", -expected[0], expected[1]).relativeToLargest(tolerance).got(got.undershootV(), got.overshootV());
    }

    private static StepRequest request(Load load, boolean limited) {
        Bank bank = new Bank(List.of(new Branch("bulk", 1, new SeriesRlc(C1, R1, 0), SeriesPath.NONE, SeriesPath.NONE),
                new Branch("ceramic", 1, new SeriesRlc(C2, R2, 0), SeriesPath.NONE, SeriesPath.NONE)));
        Converter converter = new Converter(new PowerStage(INPUT, OUTPUT, INDUCTANCE, 2e-3, SWITCHING, 1), new CurrentMode(SENSE, SLOPE),
                new Compensator(GAIN, List.of(ZERO), List.of(POLE)));
        StepRequest request = StepRequest.of(bank, converter, load, 200e-6);
        return limited ? request : request.unlimited();
    }

    /** y = both capacitor voltages, inductor current, its slope, integrator, lag. */
    private static double[] extremes(double fromA, double toA, double slew, boolean limited) {
        double rise = (INPUT - OUTPUT) / INDUCTANCE;
        double fall = -OUTPUT / INDUCTANCE;
        double wn = Math.PI * SWITCHING;
        double qn = 1 / (Math.PI * ((1 + SLOPE / rise) * (1 - OUTPUT / INPUT) - 0.5));
        double wz = 2 * Math.PI * ZERO;
        double wp = 2 * Math.PI * POLE;
        double rampS = Math.abs(toA - fromA) / slew;
        double[] extremes = new double[2];
        double[] y = {OUTPUT, OUTPUT, fromA, 0, fromA * SENSE, 0};
        double[] cuts = {0, rampS, 200e-6};
        for (int part = 0; part < 2; part++) {
            boolean ramping = part == 0;
            OrdinaryDifferentialEquation equations = new OrdinaryDifferentialEquation() {
                @Override
                public int getDimension() {
                    return 6;
                }

                @Override
                public double[] computeDerivatives(double t, double[] s) {
                    double v = output(t, s);
                    double error = OUTPUT - v;
                    double current = limited ? Math.min(rise, Math.max(fall, s[3])) : s[3];
                    double push = wn * wn * ((s[4] + s[5]) / SENSE - s[2]) - wn / qn * current;
                    boolean up = limited && s[3] >= rise && push > 0;
                    boolean down = limited && s[3] <= fall && push < 0;
                    boolean held = up && error > 0 || down && error < 0;
                    return new double[] {(v - s[0]) / R1 / C1, (v - s[1]) / R2 / C2, current, up || down ? 0 : push,
                        held ? 0 : GAIN * error, wp * (GAIN * (1 / wz - 1 / wp) * error - s[5])};
                }

                private double output(double t, double[] s) {
                    double load = ramping ? fromA + (toA - fromA) * t / rampS : toA;
                    return (s[2] - load + s[0] / R1 + s[1] / R2) / (1 / R1 + 1 / R2);
                }
            };
            DormandPrince853Integrator integrator = new DormandPrince853Integrator(1e-18, 1e-9, 1e-10, 1e-9);
            integrator.addStepHandler(interpolator -> {
                double t = interpolator.getCurrentState().getTime();
                double[] s = interpolator.getCurrentState().getPrimaryState();
                double load = ramping ? fromA + (toA - fromA) * t / rampS : toA;
                double v = (s[2] - load + s[0] / R1 + s[1] / R2) / (1 / R1 + 1 / R2) - OUTPUT;
                extremes[0] = Math.min(extremes[0], v);
                extremes[1] = Math.max(extremes[1], v);
            });
            y = integrator.integrate(equations, new ODEState(cuts[part], y), cuts[part + 1]).getPrimaryState();
        }
        return extremes;
    }
}
