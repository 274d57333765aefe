package org.stillrail.electrical.step;

import static org.junit.jupiter.api.Assertions.assertEquals;

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

/** Rows LS-01 to LS-05, and the simulation driven into its limits meets them. */
class ChargeBalanceTest {

    private static final Source REDL = Source.fromMemory(
            "R. Redl and others, Optimizing the load transient response of the buck converter, APEC 1998; derived and recomputed over a fine time grid");
    private static final Source ENERGY = Source.fromMemory("derived: L (i - I0)^2 / 2 + C v^2 / 2 is kept while the inductor freewheels");
    private static final Source AREA = Source.fromMemory("derived: area between the ramps of load and inductor");

    // input V, output V, L, step A, C, r, then undershoot and overshoot
    private static final double[][] LS_01 = {
        {12, 1.2, 3.3e-07, 20, 0.001, 0.0005, 0.010202020202020202, 0.05545454545454546},
        {12, 1.2, 3.3e-07, 20, 0.001, 0, 0.006111111111111111, 0.055},
        {5, 1, 4.7e-07, 6, 0.0002, 0.002, 0.0139792553, 0.0431510638},
        {12, 3.3, 2.2e-06, 10, 0.00047, 0.01, 0.1, 0.106171986}};
    // L, C, Vo, I1, I0, overshoot
    private static final double[][] LS_03 = {
        {3.3e-07, 0.001, 1.2, 20, 0, 0.05379424149259848},
        {2.2e-06, 0.00047, 3.3, 12, 2, 0.07017582722073712},
        {1e-06, 0.0001, 1, 10, 5, 0.1180339887498949}};

    @Test
    void firstSwingOfLoadingAndUnloading() {
        for (double[] row : LS_01) {
            PowerStage stage = new PowerStage(row[0], row[1], row[2], 0, 500e3, 1);
            Check.that(Topic.STEP, "First swing of a buck %s V to %s V, %s uH, %s A, %s uF, %s mohm: loading, unloading"
                            .formatted(row[0], row[1], (float) (1e6 * row[2]), row[3], (float) (1e6 * row[4]), 1e3 * row[5]))
                    .source(REDL).expected("V", row[6], row[7]).relative(1e-8)
                    .got(ChargeBalance.deviationV(row[3], stage.steepestRiseAPerS(), row[4], row[5]),
                            ChargeBalance.deviationV(row[3], stage.steepestFallAPerS(), row[4], row[5]));
        }
    }

    @Test
    void criticalCapacitanceIsWhereBothFormsMeet() {
        double slope = 1.2 / 3.3e-7;
        double critical = ChargeBalance.criticalCapacitanceF(20, slope, 0.0005);
        Check.that(Topic.STEP, "Critical capacitance dI / (m r) of three cases, unloading").source(REDL)
                .expected("F", 0.011, 0.0014099999999999998, 0.0006666666666666668).relative(1e-9)
                .got(critical, ChargeBalance.criticalCapacitanceF(6, 1 / 4.7e-7, 0.002),
                        ChargeBalance.criticalCapacitanceF(10, 3.3 / 2.2e-6, 0.01));
        assertEquals(20 * 0.0005, ChargeBalance.deviationV(20, slope, critical * 0.999999, 0.0005), 1e-9);
        assertEquals(20 * 0.0005, ChargeBalance.deviationV(20, slope, critical * 1.000001, 0.0005), 1e-12);
    }

    @Test
    void freewheelingEnergyAndItsInverse() {
        for (double[] row : LS_03) {
            Check.that(Topic.STEP, "Unloading %s A to %s A without ESR, %s uH, %s uF, %s V: sqrt(Vo^2 + L (I1 - I0)^2 / C) - Vo"
                            .formatted(row[3], row[4], (float) (1e6 * row[0]), (float) (1e6 * row[1]), row[2]))
                    .source(ENERGY).expected("V", row[5]).relative(1e-9)
                    .got(ChargeBalance.energyOvershootV(row[0], row[1], row[2], row[3], row[4]));
            assertEquals(row[1], ChargeBalance.capacitanceForOvershootF(row[0], row[2], row[3], row[4], row[5]), 1e-9 * row[1]);
        }
        Check.that(Topic.STEP, "Smallest C for 60 mV of overshoot, 0.33 uH, 20 A, 1.2 V: L dI^2 / ((Vo + dV)^2 - Vo^2)").source(ENERGY)
                .expected("F", 0.0008943089430894299).relative(1e-9).got(ChargeBalance.capacitanceForOvershootF(3.3e-7, 1.2, 20, 0, 0.06));
    }

    @Test
    void finiteEdgeLeavesLessCharge() {
        double slope = 10.8 / 3.3e-7;
        Check.that(Topic.STEP, "Missing charge of 20 A with an edge of 100 A/us: dI^2 / (2 m) - dI^2 / (2 ks)").source(AREA)
                .expected("C", 4.111111111111111e-06).relative(1e-9).got(ChargeBalance.chargeC(20, slope, 100e6));
        assertEquals(0, ChargeBalance.chargeC(20, slope, 1e7));
    }

    @Test
    void aReleaseWithTheDutyAtZeroConservesTheEnergy() {
        for (double[] row : LS_03) {
            StepResult got = atItsLimits(new PowerStage(4 * row[2], row[2], row[0], 0, 500e3, 1), new SeriesRlc(row[1], 0, 0),
                    new Load(row[3], row[4], 1e15));
            Check.that(Topic.STEP, "Simulated release of %s A with the duty held at zero: overshoot".formatted(row[3] - row[4]))
                    .source(ENERGY).expected("V", row[5]).relative(1e-6).got(got.overshootV());
        }
    }

    @Test
    void aLoadingStepWithTheDutyAtOneMeetsTheChargeBalance() {
        // The closed form takes the output as constant; it falls by 10 mV of the 10.8 V across the inductor, a part in a thousand.
        double[] row = LS_01[0];
        StepResult got = atItsLimits(new PowerStage(row[0], row[1], row[2], 0, 500e3, 1), new SeriesRlc(row[4], row[5], 0), new Load(0, row[3], 1e15));
        Check.that(Topic.STEP, "Simulated step of 20 A with the duty held at one: undershoot (the closed form takes the output as constant)")
                .source(REDL).expected("V", row[6]).relative(2e-3).got(got.undershootV());
    }

    @Test
    void theEdgeShowsTheInductanceOfTheBank() {
        Bank bank = new Bank(List.of(new Branch("c", 1, new SeriesRlc(1e-3, 0, 2e-10), SeriesPath.NONE, SeriesPath.NONE)));
        StepResult got = LoadStep.of(StepRequest.of(bank, null, new Load(0, 20, 100e6), 1e-9));
        // L k at once, and the charge of the ramp, k t^2 / (2 C)
        Check.that(Topic.STEP, "Edge of 100 A/us through 0.2 nH: L k at once and k t^2 / (2 C) after 1 ns").source(Source.fromMemory("v = L di/dt"))
                .expected("V", 0.02 + 100e6 * 1e-18 / 2e-3).absolute(1e-12).got(got.undershootV());
    }

    /** A gain so high that the duty is at its limit from the first instant to beyond the peak. */
    private static StepResult atItsLimits(PowerStage stage, SeriesRlc part, Load load) {
        Bank bank = new Bank(List.of(new Branch("c", 1, part, SeriesPath.NONE, SeriesPath.NONE)));
        Converter converter = new Converter(stage, new VoltageMode(1, 0), new Compensator(1e13, List.of(10e3), List.of()));
        return LoadStep.of(StepRequest.of(bank, converter, load, 20e-6));
    }
}
