package org.stillrail.electrical.evaluation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.capacitor.Band;
import org.stillrail.electrical.capacitor.CharacteristicCurve;
import org.stillrail.electrical.capacitor.Characteristics;
import org.stillrail.electrical.capacitor.OperatingPoint;
import org.stillrail.electrical.capacitor.PlaceInBand;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.capacitor.Technology;
import org.stillrail.electrical.requirement.StartUpRamp;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

/** A part that was swept at several biases: 10 uF without bias, 5 uF at 5 V, 1 / C straight between them. */
class SweptBiasTest {

    private static final double NOMINAL_F = 10e-6;
    private static final double PER_F = 1 / NOMINAL_F;
    private static final double PER_F_V = (1 / 5e-6 - PER_F) / 5;
    private static final Source BY_HAND = Source.independent("integrals of C dv and C v dv with C = 1 / (a + k v) worked out by hand");

    private static PartInput swept(CharacteristicCurve typed, Double deviation, double... biasAndFarad) {
        List<PartInput.Member> members = new ArrayList<>();
        for (int i = 0; i < biasAndFarad.length; i += 2) {
            members.add(new PartInput.Member(new OperatingPoint(biasAndFarad[i], 25, null), ModelInput.of(new SeriesRlc(biasAndFarad[i + 1], 2e-3, 0))));
        }
        return new PartInput(members, 1e3, NOMINAL_F, true, Characteristics.NONE.withOverBias(typed), deviation == null ? null : (Double) (-deviation),
                deviation, 1.0, 1.0);
    }

    private static EvaluationInput bank(PartInput part) {
        return Rails.input(Rails.with(Rails.rippleOnly(0.5), new StartUpRamp(1e-3, 1.0, Rails.CITATION)),
                new BranchInput("swept", 3, null, Technology.CERAMIC_CLASS_2, 10.0, part, SeriesPath.NONE, SeriesPath.NONE, "test", true));
    }

    private static double chargeC(double v) {
        return Math.log1p(PER_F_V * v / PER_F) / PER_F_V;
    }

    private static double energyJ(double v) {
        return v / PER_F_V - PER_F * chargeC(v) / PER_F_V;
    }

    @Test
    void storedChargeIsTheIntegralOverTheSweeps() {
        StoredCharge stored = Evaluation.evaluate(bank(swept(null, null, 0, 10e-6, 5, 5e-6))).stress().stored();
        assertThat(stored.chargedV()).isEqualTo(Rails.OUTPUT_V);
        Check.that(Topic.STRESS, "3 parts swept at 0 V (10 uF) and 5 V (5 uF) on a rail of 3.3 V: stored charge").source(BY_HAND)
                .expected("C", 3 * chargeC(Rails.OUTPUT_V)).relative(1e-9).got(stored.chargeC());
        Check.that(Topic.STRESS, "3 parts swept at 0 V (10 uF) and 5 V (5 uF) on a rail of 3.3 V: stored energy").source(BY_HAND)
                .expected("J", 3 * energyJ(Rails.OUTPUT_V)).relative(1e-9).got(stored.energyJ());
        assertThat(stored.unbiasedF()).isCloseTo(30e-6, withPercentage(1e-9));
        assertThat(stored.capacitanceF()).isCloseTo(3 / (PER_F + PER_F_V * Rails.OUTPUT_V), withPercentage(1e-9));
    }

    /** Past 5 V the sweep there holds. */
    @Test
    void startUpChargesTheSameCurve() {
        assertThat(Evaluation.evaluate(bank(swept(null, null, 0, 10e-6, 2, 5e-6))).stress().startUp().chargeC())
                .isCloseTo(3 * (2 * Math.log(2) / (1 / 5e-6 - 1 / 10e-6) + 1.3 * 5e-6), withPercentage(1e-7));
    }

    /** Swept to 2 V; from there a typed curve takes over, 1 at 0 V straight to 0.2 at 10 V, followed in pieces: within 0.1 %. */
    @Test
    void typedCurveGoesOnWhereTheSweepsEnd() {
        CharacteristicCurve typed = CharacteristicCurve.linear(0, 1, 10, 0.2);
        double within = 2 * Math.log(10.0 / 8) / (1 / 8e-6 - 1 / 10e-6);
        double beyond = 8e-6 * (1.3 - 0.08 * (3.3 * 3.3 - 4) / 2) / 0.84;
        assertThat(Evaluation.evaluate(bank(swept(typed, null, 0, 10e-6, 2, 8e-6))).stress().stored().chargeC())
                .isCloseTo(3 * (within + beyond), withPercentage(0.1));
    }

    /** The tolerance is one of nominal, and nominal is without bias: at 5 V half of it is left. */
    @Test
    void placeInTheToleranceBandLosesWhatTheSweepsLose() {
        PartInput part = swept(null, 0.2, 0, 10e-6, 5, 5e-6);
        PlaceInBand low = new PlaceInBand(-0.2, 1, Band.Bound.TYPICAL, false);
        assertThat(part.at(new OperatingPoint(5, 25, null), low).capacitanceF()).isCloseTo(4e-6, withPercentage(1e-9));
        assertThat(part.at(new OperatingPoint(0, 25, null), low).capacitanceF()).isCloseTo(8e-6, withPercentage(1e-9));
        assertThat(swept(null, 0.2, 0, 10e-6).at(new OperatingPoint(5, 25, null), low).capacitanceF())
                .as("one sweep alone tells nothing over bias").isCloseTo(8e-6, withPercentage(1e-9));
        StoredCharge most = Evaluation.evaluate(bank(part)).stress().stored();
        assertThat(most.corner()).contains("capacitances high");
        assertThat(most.energyJ()).isCloseTo(1.2 * 3 * energyJ(most.chargedV()), withPercentage(1e-6));
    }
}
