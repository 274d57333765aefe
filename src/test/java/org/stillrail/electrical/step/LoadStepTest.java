package org.stillrail.electrical.step;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.Branch;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.converter.Compensator;
import org.stillrail.electrical.converter.Converter;
import org.stillrail.electrical.converter.PowerStage;
import org.stillrail.electrical.converter.VoltageMode;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

/** Against an independent integration of the same circuit: 0.5 % of the deviation linear, 1 % of the first extremum with limits. */
class LoadStepTest {

    private static final Source ORDER_8 = Source.independent("circuit integrated by a Runge-Kutta of order 8 (Hipparchus, Dormand-Prince)");
    private static final Source FIXED_STEP = Source.independent("circuit integrated by the classic Runge-Kutta at a fixed step, the duty's past kept");

    private static final double[] BULK = {470e-6, 9e-3, 3e-9};
    private static final double[] CERAMIC = {88e-6, 0.8e-3, 0.25e-9};

    @Test
    void linearStepOfAnAllInductiveBankFollowsTheIndependentIntegration() {
        compare("Step 2 A to 12 A, both branches inductive, linear", buck(BULK, CERAMIC).load(2, 12, 10e6, false), 200e-6, 0.005);
    }

    @Test
    void linearReleaseFollowsToo() {
        compare("Release 12 A to 2 A, both branches inductive, linear", buck(BULK, CERAMIC).load(12, 2, 10e6, false), 200e-6, 0.005);
    }

    @Test
    void aBranchWithoutInductanceSetsTheNodeVoltage() {
        compare("Step 2 A to 12 A, one branch without inductance, linear",
                buck(BULK, new double[] {88e-6, 0.8e-3, 0}).load(2, 12, 10e6, false), 200e-6, 0.005);
        compare("Step 2 A to 12 A, both branches without inductance, linear",
                buck(new double[] {470e-6, 9e-3, 0}, new double[] {88e-6, 0.8e-3, 0}).load(2, 12, 10e6, false), 200e-6, 0.005);
    }

    @Test
    void dutyLimitsBoundTheStepAndTheRelease() {
        compare("Step 0 A to 30 A within the duty's limits", buck(BULK, CERAMIC).load(0, 30, 100e6, true), 200e-6, 0.01);
        compare("Release 30 A to 0 A within the duty's limits", buck(BULK, CERAMIC).load(30, 0, 100e6, true), 200e-6, 0.01);
        compare("Release 30 A to 0 A within the duty's limits, one branch without inductance",
                buck(BULK, new double[] {88e-6, 0.8e-3, 0}).load(30, 0, 100e6, true), 200e-6, 0.01);
    }

    /** A duty of 0.1 has little room below: the release meets a limit, the step does not and is the same without. */
    @Test
    void withoutItsLimitsAReleaseFollowsTheLinearCircuit() {
        compare("Release 30 A to 0 A, linear", buck(BULK, CERAMIC).load(30, 0, 100e6, false), 200e-6, 0.005);
        ThereAndBack limited = respond(buck(BULK, CERAMIC).load(0, 30, 100e6, true));
        ThereAndBack linear = respond(buck(BULK, CERAMIC).load(0, 30, 100e6, false));
        assertFalse(limited.there().metLimit());
        assertArrayEquals(linear.there().deviationV(), limited.there().deviationV(), 1e-6);
        assertTrue(limited.back().metLimit());
        assertFalse(linear.back().metLimit());
        assertTrue(limited.back().overshootV() > linear.back().overshootV());
    }

    private static ThereAndBack respond(ReferenceBuck asked) {
        return LoadStep.thereAndBack(request(asked, 0, 200e-6), new SeriesEquivalent(), Closeness.FULL);
    }

    @Test
    void anExactDelayFollowsAFixedStepIntegrationThatKeepsThePast() {
        ReferenceBuck linear = buck(BULK, CERAMIC).load(2, 12, 10e6, false);
        compare("Step 2 A to 12 A with an exact delay of 500 ns, linear", FIXED_STEP, linear, linear.runDelayed(100e-6, 2e-9, 250), 500e-9, 100e-6, 0.005);
        ReferenceBuck clamped = buck(BULK, CERAMIC).load(30, 0, 100e6, true);
        compare("Release 30 A to 0 A with an exact delay of 200 ns and the duty's limits", FIXED_STEP, clamped, clamped.runDelayed(100e-6, 1e-9, 200), 200e-9,
                100e-6, 0.01);
    }

    private static ReferenceBuck buck(double[]... crl) {
        return new ReferenceBuck(12, 1.2, 0.33e-6, 1e-3, 1.5, 6e4, 6e3, 250e3, crl);
    }

    private static void compare(String name, ReferenceBuck reference, double durationS, double tolerance) {
        compare(name, ORDER_8, reference, reference.run(durationS, 2e-9), 0, durationS, tolerance);
    }

    private static void compare(String name, Source source, ReferenceBuck reference, ReferenceBuck.Outcome expected, double delayS, double durationS,
            double tolerance) {
        StepResult got = LoadStep.of(request(reference, delayS, durationS));
        double scale = Math.max(-expected.lowestV(), expected.highestV());
        Check.that(Topic.STEP, name + ": undershoot, overshoot").source(source).expected("V", -expected.lowestV(), expected.highestV())
                .relativeToLargest(tolerance).got(got.undershootV(), got.overshootV());
        assertEquals(expected.lowestAtS(), got.undershootAtS(), 0.005 * durationS);
        assertEquals(expected.highestAtS(), got.overshootAtS(), 0.005 * durationS);
        double[] timeS = got.timeS();
        double[] deviationV = got.deviationV();
        double[] inductorA = got.inductorA();
        List<double[]> points = expected.points();
        double stepA = Math.abs(reference.toA - reference.fromA);
        int at = 1;
        for (int i = 1; i < timeS.length && timeS[i] <= points.get(points.size() - 1)[0]; i++) {
            while (points.get(at)[0] < timeS[i]) {
                at++;
            }
            double[] a = points.get(at - 1);
            double[] b = points.get(at);
            double fraction = b[0] > a[0] ? (timeS[i] - a[0]) / (b[0] - a[0]) : 1;
            Check.that(Topic.STEP, name + ": error of the waveforms over the extremum and over the step").source(source)
                    .expected("the same deviation and inductor current at every sample").absolute(tolerance)
                    .compare("", 0, Math.max(Math.abs(a[1] + fraction * (b[1] - a[1]) - deviationV[i]) / scale,
                            Math.abs(a[2] + fraction * (b[2] - a[2]) - inductorA[i]) / stepA));
        }
    }

    private static StepRequest request(ReferenceBuck reference, double delayS, double durationS) {
        List<Branch> branches = new ArrayList<>();
        for (double[] crl : reference.crl) {
            branches.add(new Branch("b", 1, new SeriesRlc(crl[0], crl[1], crl[2]), SeriesPath.NONE, SeriesPath.NONE));
        }
        PowerStage stage = new PowerStage(reference.inputV, reference.outputV, reference.inductanceH, reference.resistanceOhm, 500e3, 1);
        Converter converter = new Converter(stage, new VoltageMode(reference.rampV, delayS),
                new Compensator(reference.gain, List.of(reference.zeroHz), List.of(reference.poleHz)));
        StepRequest request = StepRequest.of(new Bank(branches), converter, new Load(reference.fromA, reference.toA, reference.slew), durationS);
        return reference.limited ? request : request.unlimited();
    }
}
