package org.stillrail.electrical.step;

import static org.junit.jupiter.api.Assertions.assertEquals;
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

/** Against an independent integration of the same circuit: 0.5 % of the deviation linear, 1 % of the first extremum with limits. */
class LoadStepTest {

    private static final double[] BULK = {470e-6, 9e-3, 3e-9};
    private static final double[] CERAMIC = {88e-6, 0.8e-3, 0.25e-9};

    @Test
    void linearStepOfAnAllInductiveBankFollowsTheIndependentIntegration() {
        compare(buck(BULK, CERAMIC).load(2, 12, 10e6, false), 200e-6, 0.005);
    }

    @Test
    void linearReleaseFollowsToo() {
        compare(buck(BULK, CERAMIC).load(12, 2, 10e6, false), 200e-6, 0.005);
    }

    @Test
    void aBranchWithoutInductanceSetsTheNodeVoltage() {
        compare(buck(BULK, new double[] {88e-6, 0.8e-3, 0}).load(2, 12, 10e6, false), 200e-6, 0.005);
        compare(buck(new double[] {470e-6, 9e-3, 0}, new double[] {88e-6, 0.8e-3, 0}).load(2, 12, 10e6, false), 200e-6, 0.005);
    }

    @Test
    void dutyLimitsBoundTheStepAndTheRelease() {
        compare(buck(BULK, CERAMIC).load(0, 30, 100e6, true), 200e-6, 0.01);
        compare(buck(BULK, CERAMIC).load(30, 0, 100e6, true), 200e-6, 0.01);
        compare(buck(BULK, new double[] {88e-6, 0.8e-3, 0}).load(30, 0, 100e6, true), 200e-6, 0.01);
    }

    private static ReferenceBuck buck(double[]... crl) {
        return new ReferenceBuck(12, 1.2, 0.33e-6, 1e-3, 1.5, 6e4, 6e3, 250e3, crl);
    }

    private static void compare(ReferenceBuck reference, double durationS, double tolerance) {
        ReferenceBuck.Outcome expected = reference.run(durationS, 2e-9);
        StepResult got = LoadStep.of(request(reference, durationS));
        double scale = Math.max(-expected.lowestV(), expected.highestV());
        assertEquals(-expected.lowestV(), got.undershootV(), tolerance * scale);
        assertEquals(expected.highestV(), got.overshootV(), tolerance * scale);
        double[] timeS = got.timeS();
        double[] deviationV = got.deviationV();
        double worst = 0;
        int at = 0;
        for (int i = 1; i < timeS.length; i++) {
            while (at < expected.points().size() - 1 && expected.points().get(at)[0] < timeS[i]) {
                at++;
            }
            double[] b = expected.points().get(at);
            double[] a = expected.points().get(at - 1);
            double fraction = b[0] > a[0] ? (timeS[i] - a[0]) / (b[0] - a[0]) : 1;
            worst = Math.max(worst, Math.abs(deviationV[i] - a[1] - fraction * (b[1] - a[1])));
        }
        assertTrue(worst < tolerance * scale, "worst sample " + worst / scale);
    }

    private static StepRequest request(ReferenceBuck reference, double durationS) {
        List<Branch> branches = new ArrayList<>();
        for (double[] crl : reference.crl) {
            branches.add(new Branch("b", 1, new SeriesRlc(crl[0], crl[1], crl[2]), SeriesPath.NONE, SeriesPath.NONE));
        }
        Converter converter = new Converter(new PowerStage(reference.inputV, reference.outputV, reference.inductanceH, reference.resistanceOhm, 500e3, 1),
                new VoltageMode(reference.rampV, 0), new Compensator(reference.gain, List.of(reference.zeroHz), List.of(reference.poleHz)));
        StepRequest request = StepRequest.of(new Bank(branches), converter, new Load(reference.fromA, reference.toA, reference.slew), durationS);
        return reference.limited ? request : request.unlimited();
    }
}
