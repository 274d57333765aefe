package org.stillrail.electrical.evaluation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stillrail.document.CanonicalJson;
import org.stillrail.electrical.requirement.Ambient;
import org.stillrail.electrical.requirement.ConverterFigures;
import org.stillrail.electrical.requirement.DrawnCurrent;
import org.stillrail.electrical.requirement.InputRange;
import org.stillrail.electrical.requirement.LoadStep;
import org.stillrail.electrical.requirement.Outcome;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.requirement.Requirement;
import org.stillrail.electrical.requirement.RippleLimit;
import org.stillrail.electrical.requirement.Topology;

/** A rail that draws the current of its converter. */
class DrawnCurrentVerdictsTest {

    private static RailFigures rail(ConverterFigures converter) {
        return new RailFigures(Rails.OUTPUT_V, 5, new InputRange(9, 12, 15), converter, new RippleLimit(0.03, Rails.CITATION), null,
                new LoadStep(1, 5, 10e6, 0.1, Rails.CITATION), null, new Ambient(-20, 25, 60, Rails.CITATION), null, null);
    }

    /** The triangle of a buck's inductor from 12 V: V_out (1 - D) / (L f) from end to end, rising during D. */
    private static DrawnCurrent triangle(ConverterFigures buck) {
        double duty = Rails.OUTPUT_V / 12;
        double wholeA = Rails.OUTPUT_V * (1 - duty) / (buck.inductanceH() * buck.switchingHz());
        return new DrawnCurrent(List.of(new DrawnCurrent.Point(0, 0), new DrawnCurrent.Point(duty / buck.switchingHz(), wholeA)));
    }

    private static Evaluation evaluate(ConverterFigures converter) {
        return Evaluation.evaluate(Rails.input(rail(converter), Rails.polymer(2), Rails.inline("ceramics", 4, 22e-6, 3e-3, 0.6e-9)));
    }

    @Test
    void theTriangleOfABuckMakesTheRippleOfABuckWhateverItsMean() {
        ConverterFigures buck = Rails.converter(Topology.BUCK);
        Evaluation drawn = evaluate(ConverterFigures.drawn(triangle(buck), buck.switchingHz(), 0, null));
        Evaluation same = evaluate(buck);
        assertThat(drawn.ripple().peakToPeakV()).isCloseTo(same.ripple().peakToPeakV(), withPercentage(1e-6));
        assertThat(drawn.ripple().branches().get(0).rmsA()).isCloseTo(same.ripple().branches().get(0).rmsA(), withPercentage(1e-6));
        assertThat(drawn.rippleOverInput()).singleElement().satisfies(only -> {
            assertThat(only.inputV()).isEqualTo(12);
            assertThat(only.continuousAboveA()).isNull();
        });
    }

    @Test
    void rippleAndStressAreJudgedAndLoopAndStepAreNotModelled() {
        ConverterFigures converter = ConverterFigures.drawn(triangle(Rails.converter(Topology.BUCK)), Rails.SWITCHING_HZ, 10, null);
        Evaluation drawn = Evaluation.evaluate(Rails.input(rail(converter), Rails.polymer(2)));
        for (Requirement judged : List.of(Requirement.RIPPLE, Requirement.RIPPLE_CURRENT, Requirement.TEMPERATURE, Requirement.VOLTAGE_RATING)) {
            assertThat(drawn.verdict(judged).outcome()).as(judged.name()).isIn(Outcome.MET, Outcome.NOT_MET);
        }
        for (Requirement left : List.of(Requirement.DAMPING, Requirement.DEVIATION, Requirement.BULK_CHARGE)) {
            assertThat(drawn.verdict(left).outcome()).as(left.name()).isEqualTo(Outcome.NOT_MODELLED);
            assertThat(drawn.verdict(left).sentence()).contains("drawn-current converter is not modelled");
        }
        assertThat(drawn.verdict(Requirement.RIPPLE).explanation().whatHappens()).startsWith("The current that the rail draws makes ");
        assertThat(drawn.conduction()).isNull();
        assertThat(drawn.warnings()).anyMatch(warning -> warning.contains("the same from every input"));
        assertThat(drawn.corners()).as("nothing of the input or an inductor strays").noneMatch(corner -> corner.name().contains("input") || corner.name().contains("induct"))
                .anyMatch(corner -> corner.name().contains("switching"));
    }

    /** The shape keeps its shares of a period that is longer at the slowest switching: a capacitance ripples by as much more. */
    @Test
    void thePeriodFollowsTheSwitchingFrequency() {
        DrawnCurrent square = new DrawnCurrent(List.of(new DrawnCurrent.Point(0, 0), new DrawnCurrent.Point(1e-9, 1), new DrawnCurrent.Point(1e-6, 1),
                new DrawnCurrent.Point(1.001e-6, 0)));
        BranchInput capacitance = Rails.inline("c", 1, 100e-6, 0, 0);
        ConverterFigures converter = ConverterFigures.drawn(square, Rails.SWITCHING_HZ, 10, null);
        Evaluation at = Evaluation.evaluate(Rails.input(rail(converter), capacitance));
        // A charge of 1 A through half a period of 2 us, less its mean: a peak to peak of I T / (4 C).
        assertThat(at.ripple().peakToPeakV()).isCloseTo(1 * 2e-6 / 4 / 100e-6, withPercentage(0.1));
        assertThat(at.verdict(Requirement.RIPPLE).value()).isCloseTo(at.ripple().peakToPeakV() / 0.9, withPercentage(1e-3));
    }

    /** What was stored before a rail could draw a current keeps its bytes. */
    @Test
    void aConverterWithoutADrawnCurrentIsWrittenAsBefore() {
        assertThat(CanonicalJson.write(Rails.converter(Topology.BUCK))).doesNotContain("drawnCurrent");
        ConverterFigures drawn = ConverterFigures.drawn(triangle(Rails.converter(Topology.BUCK)), Rails.SWITCHING_HZ, 0, null);
        assertThat(CanonicalJson.read(CanonicalJson.write(drawn), ConverterFigures.class)).isEqualTo(drawn);
    }
}
