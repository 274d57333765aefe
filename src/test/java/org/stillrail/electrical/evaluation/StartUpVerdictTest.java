package org.stillrail.electrical.evaluation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;
import org.stillrail.electrical.bank.Distance;
import org.stillrail.electrical.bank.Node;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.capacitor.Technology;
import org.stillrail.electrical.requirement.BleedResistor;
import org.stillrail.electrical.requirement.ControlFigures;
import org.stillrail.electrical.requirement.ConverterFigures;
import org.stillrail.electrical.requirement.InputRange;
import org.stillrail.electrical.requirement.Outcome;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.requirement.Requirement;
import org.stillrail.electrical.requirement.StartUpRamp;
import org.stillrail.electrical.requirement.Topology;
import org.stillrail.electrical.requirement.Verdict;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

/** Coming up, reversal and what is stored, with parts of a constant capacitance, whose figures are those of any textbook. */
class StartUpVerdictTest {

    private static final double C = 220e-6;
    private static final double HALF_RIPPLE_A = Rails.OUTPUT_V * (1 - Rails.OUTPUT_V / 12) / (2.2e-6 * Rails.SWITCHING_HZ) / 2;
    private static final double LIMIT_A = 15;
    private static final Source TEXTBOOK = Source.fromMemory("I = C dV/dt, Q = C V, E = C V^2 / 2 and t = R C ln(V / Vsafe), any textbook");

    private static BranchInput bulk() {
        return Rails.part("bulk", 1, Technology.POLYMER_ALUMINIUM, 6.3, new SeriesRlc(C, 0.012, 3e-9));
    }

    private static Verdict startUp(double rampS, Double loadA) {
        return Rails.verdicts(Rails.input(Rails.with(Rails.rippleOnly(0.5), new StartUpRamp(rampS, loadA, Rails.CITATION)), bulk()))
                .on(Requirement.START_UP);
    }

    @Test
    void startUpOnBothSidesOfTheCurrentLimit() {
        double shortest = C * Rails.OUTPUT_V / (LIMIT_A - 2 - HALF_RIPPLE_A);
        assertThat(startUp(shortest * 1.001, 2.0).outcome()).isEqualTo(Outcome.MET);
        Verdict over = startUp(shortest * 0.999, 2.0);
        assertThat(over.outcome()).isEqualTo(Outcome.NOT_MET);
        assertThat(over.value()).isCloseTo(LIMIT_A, withPercentage(0.2));
        Check.that(Topic.STRESS, "Start-up verdict of 220 uF to 3.3 V in 1 ms beside 2 A of load: C V / t and load and half the inductor's ripple").source(TEXTBOOK)
                .expected("A", C * Rails.OUTPUT_V / 1e-3 + 2 + HALF_RIPPLE_A).relative(1e-6).got(startUp(1e-3, 2.0).value());
        assertThat(over.citation()).isEqualTo(Rails.CITATION);
    }

    /** The largest bank on a ramp: (limit - load - half the ripple) t / V. */
    @Test
    void theLargestBankIsSaid() {
        double largest = (LIMIT_A - 2 - HALF_RIPPLE_A) * 1e-3 / Rails.OUTPUT_V;
        assertThat(startUp(1e-3, 2.0).sentence()).contains("could start into " + Words.quantity(largest, "F"));
    }

    @Test
    void withoutALoadTheNominalCurrentCounts() {
        assertThat(startUp(1e-3, null).value() - startUp(1e-3, 0.0).value()).isCloseTo(5, withPercentage(1e-6));
    }

    @Test
    void whatTheRailDoesNotSayIsNotAskedOrUnknown() {
        assertThat(Rails.verdicts(Rails.input(Rails.rippleOnly(0.5), bulk())).on(Requirement.START_UP).outcome()).isEqualTo(Outcome.NOT_ASKED);
        RailFigures asked = Rails.with(Rails.rippleOnly(0.5), new StartUpRamp(1e-3, 1.0, Rails.CITATION));
        ConverterFigures unlimited = new ConverterFigures(Topology.BUCK, 2.2e-6, 0, 0.01, 1, Rails.SWITCHING_HZ, 0, null, null);
        Verdict unknown = Rails.verdicts(Rails.input(Rails.with(asked, unlimited), bulk())).on(Requirement.START_UP);
        assertThat(unknown.outcome()).isEqualTo(Outcome.UNKNOWN);
        assertThat(unknown.sentence()).contains("current limit is not stated");
        assertThat(Rails.verdicts(Rails.input(Rails.with(asked, Rails.converter(Topology.INVERTING_BUCK_BOOST)), bulk())).on(Requirement.START_UP).outcome())
                .isEqualTo(Outcome.NOT_MODELLED);
    }

    /** Half the ripple across 4 ohm is more than the rail's voltage: the polar part is reversed. */
    @Test
    void reverseVoltageOnBothSides() {
        Verdict kept = Rails.verdicts(Rails.input(Rails.rippleOnly(50), bulk())).on(Requirement.REVERSE_VOLTAGE);
        assertThat(kept.outcome()).isEqualTo(Outcome.MET);
        assertThat(kept.limit()).isEqualTo(Rails.OUTPUT_V);
        BranchInput lossy = Rails.part("lossy", 1, Technology.POLYMER_ALUMINIUM, 50, new SeriesRlc(C, 4, 3e-9));
        Verdict reversed = Rails.verdicts(Rails.input(Rails.rippleOnly(50), lossy)).on(Requirement.REVERSE_VOLTAGE);
        assertThat(reversed.outcome()).isEqualTo(Outcome.NOT_MET);
        assertThat(reversed.value()).isCloseTo(4 * HALF_RIPPLE_A, withPercentage(1));
        BranchInput tolerant = lossy.withRatings(new RatingInput(2.0, null, null, null, null, null));
        assertThat(Rails.verdicts(Rails.input(Rails.rippleOnly(50), tolerant)).on(Requirement.REVERSE_VOLTAGE).outcome())
                .as("its datasheet allows 2 V backwards").isEqualTo(Outcome.MET);
        assertThat(Rails.verdicts(Rails.input(Rails.rippleOnly(50), Rails.ceramic(1))).on(Requirement.REVERSE_VOLTAGE).outcome())
                .isEqualTo(Outcome.NOT_ASKED);
    }

    /** C V, C V^2 / 2 and R C ln(V / 1 V). */
    @Test
    void storedFiguresOfAConstantCapacitance() {
        RailFigures bled = Rails.with(Rails.rippleOnly(0.5), new BleedResistor(1000, null, Rails.CITATION));
        StoredCharge stored = Evaluation.evaluate(Rails.input(bled, bulk())).stress().stored();
        Check.that(Topic.STRESS, "A bank of 220 uF on a rail of 3.3 V: stored charge C V").source(TEXTBOOK).expected("C", C * Rails.OUTPUT_V).relative(1e-9)
                .got(stored.chargeC());
        Check.that(Topic.STRESS, "A bank of 220 uF on a rail of 3.3 V: stored energy C V^2 / 2").source(TEXTBOOK)
                .expected("J", C * Rails.OUTPUT_V * Rails.OUTPUT_V / 2).relative(1e-9).got(stored.energyJ());
        Check.that(Topic.STRESS, "A bank of 220 uF on a rail of 3.3 V: bled through 1 kohm to 1 V, R C ln(V / 1 V)").source(TEXTBOOK)
                .expected("s", 1000 * C * Math.log(Rails.OUTPUT_V)).relative(1e-8).got(stored.bleed().timeS());
        Check.that(Topic.STRESS, "Voltage that counts as safe for a bank of 3.3 V").source(Source.commonPractice("1 V for rails of 50 V and below"))
                .expected("V", 1).absolute(1e-12).got(stored.bleed().safe().volts());
        BranchInput can = Rails.part("can", 1, Technology.WET_ALUMINIUM, 100, new SeriesRlc(C, 0.1, 10e-9));
        RailFigures high = new RailFigures(60, 1, InputRange.fixed(80), Rails.converter((ControlFigures) null), null, null, null, null, null, null, null,
                null, new BleedResistor(1000, null, Rails.CITATION));
        StoredCharge above = Evaluation.evaluate(Rails.input(high, can)).stress().stored();
        Check.that(Topic.STRESS, "Bank of 220 uF on a rail of 60 V, bled through 1 kohm: down to 50 V in R C ln(60 / 50)")
                .source(Source.seenSecondHand("U.S. National Electrical Code 460.6: residual voltage of 50 V or less")).expected("s", 1000 * C * Math.log(1.2))
                .relative(1e-8).got(above.bleed().timeS());
        assertThat(stored.bleed().notes()).last().asString().contains("qualified people");
    }

    /** At two nodes: 100 uF of the load itself are charged with the bank and hold as much as a part of that size. */
    @Test
    void theLoadsOwnCapacitanceIsChargedAndHolds() {
        double load = 100e-6;
        RailFigures bled = Rails.with(Rails.with(Rails.rippleOnly(0.5), new StartUpRamp(1e-3, 2.0, Rails.CITATION)), new BleedResistor(1000, null, Rails.CITATION));
        EvaluationInput two = Rails.input(bled, bulk().withPlace(Node.CONVERTER, null))
                .withDistance(new Distance(new SeriesPath(1e-3, 1e-9), Node.CONVERTER, new SeriesRlc(load, 1e-3, 0)));
        BankStress stress = Evaluation.evaluate(two).stress();
        Check.that(Topic.STRESS, "220 uF and 100 uF of the load beyond a path to 3.3 V in 1 ms: C V / t and load and half the inductor's ripple").source(TEXTBOOK)
                .expected("A", (C + load) * Rails.OUTPUT_V / 1e-3 + 2 + HALF_RIPPLE_A).relative(1e-6).got(stress.startVerdict().value());
        Check.that(Topic.STRESS, "220 uF and 100 uF of the load beyond a path on 3.3 V: stored charge C V").source(TEXTBOOK)
                .expected("C", (C + load) * Rails.OUTPUT_V).relative(1e-9).got(stress.stored().chargeC());
        Check.that(Topic.STRESS, "220 uF and 100 uF of the load beyond a path on 3.3 V: stored energy C V^2 / 2").source(TEXTBOOK)
                .expected("J", (C + load) * Rails.OUTPUT_V * Rails.OUTPUT_V / 2).relative(1e-9).got(stress.stored().energyJ());
        assertThat(stress.stored().bleed().timeS()).isCloseTo(1000 * (C + load) * Math.log(Rails.OUTPUT_V), withPercentage(1e-6));
    }
}
