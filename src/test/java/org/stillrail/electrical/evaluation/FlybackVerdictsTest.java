package org.stillrail.electrical.evaluation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillrail.document.CanonicalJson;
import org.stillrail.electrical.requirement.Ambient;
import org.stillrail.electrical.requirement.ConverterFigures;
import org.stillrail.electrical.requirement.InputRange;
import org.stillrail.electrical.requirement.LoadStep;
import org.stillrail.electrical.requirement.Outcome;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.requirement.Requirement;
import org.stillrail.electrical.requirement.RippleLimit;
import org.stillrail.electrical.requirement.StartUpRamp;
import org.stillrail.electrical.requirement.Topology;
import org.stillrail.electrical.requirement.Verdict;
import org.stillrail.electrical.requirement.VoltageWindow;
import org.stillrail.electrical.ripple.Ripple;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

/** A flyback of 24 V to 5 V at 3 A, and what its rail may state of the rectifier's current. */
class FlybackVerdictsTest {

    private static final double LOAD_A = 3;
    private static final double OUTPUT_V = 5;
    private static final double TURNS = 4;
    private static final double SHORT_EDGE_S = 1e-12;

    private static RailFigures rail(ConverterFigures converter) {
        return new RailFigures(OUTPUT_V, LOAD_A, new InputRange(18, 24, 32), converter, new RippleLimit(0.2, Rails.CITATION), null, null, null,
                new Ambient(0, 25, 60, Rails.CITATION), null, null);
    }

    /** rms of the secondary's trapezoid less its mean, which is the load. */
    private static double capacitorA(double inputV) {
        double duty = TURNS * OUTPUT_V / (inputV + TURNS * OUTPUT_V);
        double half = TURNS * inputV * duty / (60e-6 * 200e3) / 2;
        double mean = LOAD_A / (1 - duty);
        double first = mean + half;
        double last = mean - half;
        return Math.sqrt((1 - duty) * (first * first + first * last + last * last) / 3 - LOAD_A * LOAD_A);
    }

    @Test
    void rippleCurrentIsThatOfTheTrapezoidAndWorstFromTheLowestInput() {
        EvaluationInput input = Rails.input(rail(Rails.flyback(TURNS, SHORT_EDGE_S)), Rails.polymer(2));
        Evaluation evaluation = Evaluation.evaluate(input);
        for (RippleAtInput each : evaluation.rippleOverInput()) {
            Check.that(Topic.RIPPLE, "Output bank of a flyback of 4:1 turns from " + each.inputV() + " V: rms of the secondary's trapezoid less its mean")
                    .source(Source.fromMemory("mean square of a trapezoid, R. W. Erickson, D. Maksimovic, Fundamentals of Power Electronics, appendix"))
                    .expected("A", capacitorA(each.inputV())).relative(1e-4).got(each.ripple().branches().get(0).rmsA());
        }
        Verdict current = evaluation.verdict(Requirement.RIPPLE_CURRENT);
        assertThat(current.corner()).isEqualTo("lowest input (18 V)");
        Check.that(Topic.STRESS, "Ripple current verdict of a flyback's bank of two, rating flat over frequency: the rms of each part")
                .source(Source.fromMemory("mean square of a trapezoid, R. W. Erickson, D. Maksimovic, Fundamentals of Power Electronics, appendix"))
                .expected("A", capacitorA(18) / 2).relative(1e-4).got(current.value());
        for (Requirement requirement : List.of(Requirement.RIPPLE, Requirement.QUIET_BAND, Requirement.TEMPERATURE, Requirement.VOLTAGE_RATING)) {
            assertThat(evaluation.verdict(requirement).outcome()).as(requirement.name()).isIn(Outcome.MET, Outcome.NOT_MET);
        }
        assertThat(evaluation.verdict(Requirement.RIPPLE).corner()).isEqualTo("lowest input (18 V)");
        assertThat(evaluation.verdict(Requirement.RIPPLE).explanation().whatHappens()).startsWith("The rectifier's current");
    }

    @Test
    void loopStepAndStartUpAreNotModelled() {
        RailFigures asked = Rails.with(Rails.with(Rails.with(rail(Rails.flyback(TURNS, null)), new LoadStep(1, 3, 1e6, 0.2, Rails.CITATION)),
                new VoltageWindow(0.25, 0.25, 0.05, 0.01, Rails.CITATION)), new StartUpRamp(5e-3, null, Rails.CITATION));
        Evaluation evaluation = Evaluation.evaluate(Rails.input(asked, Rails.polymer(2)));
        for (Requirement requirement : List.of(Requirement.DAMPING, Requirement.DEVIATION, Requirement.BULK_CHARGE, Requirement.WINDOW,
                Requirement.START_UP)) {
            assertThat(evaluation.verdict(requirement).outcome()).as(requirement.name()).isEqualTo(Outcome.NOT_MODELLED);
            assertThat(evaluation.verdict(requirement).sentence()).contains("flyback");
        }
        assertThat(evaluation.ripple()).isNotNull();
    }

    @Test
    void aStatedEdgeReplacesTheUsualOne() {
        BranchInput branch = Rails.inline("l", 1, 1e-3, 1e-3, 2e-9);
        Ripple usual = Evaluation.evaluate(Rails.input(rail(Rails.flyback(TURNS, null)), branch)).ripple();
        Ripple same = Evaluation.evaluate(Rails.input(rail(Rails.flyback(TURNS, ConverterFigures.USUAL_EDGE_S)), branch)).ripple();
        Evaluation stated = Evaluation.evaluate(Rails.input(rail(Rails.flyback(TURNS, 40e-9)), branch));
        assertThat(same.peakToPeakV()).isEqualTo(usual.peakToPeakV());
        assertThat(stated.ripple().fromInductance().peakToPeakV()).isCloseTo(usual.fromInductance().peakToPeakV() / 2, withPercentage(1e-6));
        assertThat(stated.warnings()).anyMatch(warning -> warning.startsWith("The edges of the rectifier's current are stated as 40 ns long"));
    }

    /** What was stored before a rail could say either. */
    @Test
    void aConverterOfBeforeIsReadAndWrittenAsItWas() {
        String before = CanonicalJson.write(Rails.converter(Topology.BOOST));
        assertThat(before).doesNotContain("edgeS").doesNotContain("turnsRatio");
        ConverterFigures read = CanonicalJson.read(before, ConverterFigures.class);
        assertThat(read.edgeS()).isNull();
        assertThat(read.edgeOrUsualS()).isEqualTo(20e-9);
        assertThat(CanonicalJson.write(read)).isEqualTo(before);
        ConverterFigures flyback = Rails.flyback(TURNS, 40e-9);
        assertThat(CanonicalJson.read(CanonicalJson.write(flyback), ConverterFigures.class)).isEqualTo(flyback);
    }

    /**
     * Boundary conduction, where the mean of the inductor's current is half its ripple: dI / 2 of the load of a buck, (1 - D) dI / 2 of a
     * boost and an inverting converter, n (1 - D) dI / 2 of a flyback, each with the input among its corners that makes it largest.
     */
    @ParameterizedTest
    @CsvSource({"BUCK, 9, 15, 3.3, highest input (15 V)", "BOOST, 1.8, 2.3, 3.3, highest input (2.3 V)",
            "INVERTING_BUCK_BOOST, 9, 15, 3.3, highest input (15 V)", "FLYBACK, 18, 32, 5, highest input (32 V)"})
    void everyTopologyWarnsUnderHalfTheInductorsRipple(Topology topology, double leastV, double mostV, double outputV, String corner) {
        ConverterFigures converter = topology == Topology.FLYBACK ? Rails.flyback(TURNS, null) : Rails.converter(topology);
        double turns = topology == Topology.FLYBACK ? TURNS : 1;
        double duty = switch (topology) {
            case BUCK -> outputV / mostV;
            case BOOST -> 1 - mostV / outputV;
            case INVERTING_BUCK_BOOST, FLYBACK -> turns * outputV / (mostV + turns * outputV);
            case DRAWN -> throw new IllegalArgumentException("has no duty");
        };
        double half = (topology == Topology.BUCK ? outputV * (1 - duty) : turns * mostV * duty)
                / (converter.inductanceH() * converter.switchingHz()) / 2;
        double boundaryA = topology == Topology.BUCK ? half : (1 - duty) * half;
        assertThat(warnings(topology, converter, leastV, mostV, outputV, boundaryA * 1.001)).isEmpty();
        assertThat(warnings(topology, converter, leastV, mostV, outputV, boundaryA * 0.999)).hasSize(1).allMatch(warning -> warning.contains(corner));
    }

    private static List<String> warnings(Topology topology, ConverterFigures converter, double leastV, double mostV, double outputV, double loadA) {
        RailFigures rail = new RailFigures(outputV, loadA, new InputRange(leastV, (leastV + mostV) / 2, mostV), converter, null, null, null, null, null,
                null, null);
        return Evaluation.evaluate(Rails.input(rail, Rails.polymer(2))).warnings().stream()
                .filter(warning -> warning.contains("continuous conduction and do not hold")).toList();
    }
}
