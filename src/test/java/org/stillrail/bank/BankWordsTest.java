package org.stillrail.bank;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stillrail.electrical.bank.Distance;
import org.stillrail.electrical.bank.Node;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.evaluation.BranchInput;
import org.stillrail.electrical.evaluation.Evaluation;
import org.stillrail.electrical.evaluation.EvaluationInput;
import org.stillrail.electrical.evaluation.PartInput;
import org.stillrail.electrical.requirement.ControlFigures;
import org.stillrail.electrical.requirement.ConverterFigures;
import org.stillrail.electrical.requirement.InputRange;
import org.stillrail.electrical.requirement.LoadStep;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.requirement.Topology;
import org.stillrail.web.ChartData;

/** What the page says of a bank, and what its ribbon shows of the same. */
class BankWordsTest {

    private static Evaluation evaluation(Distance distance, BranchInput... branches) {
        ConverterFigures buck = new ConverterFigures(Topology.BUCK, 2.2e-6, 0, 0.01, 1, 500e3, 0, null, null);
        RailFigures rail = new RailFigures(3.3, 5, InputRange.fixed(12), buck, null, null, null, null, null, null, null);
        EvaluationInput input = new EvaluationInput(EvaluationInput.METHOD_VERSION, rail, List.of(branches));
        return Evaluation.evaluate(distance == null ? input : input.withDistance(distance));
    }

    private static BranchInput branch(String label, double capacitanceF, double resistanceOhm, double inductanceH) {
        return new BranchInput(label, 1, null, null, null, PartInput.fixed(new SeriesRlc(capacitanceF, resistanceOhm, inductanceH)),
                SeriesPath.NONE, SeriesPath.NONE, "typed", false);
    }

    @Test
    void twoBranchesThatRingAreNamedInWordsAndOnTheRibbon() {
        Evaluation evaluation = evaluation(null, branch("small", 1e-7, 0.02, 5e-10), branch("large", 1e-5, 0.005, 1e-9));
        assertThat(new BankWords(evaluation).reasons()).anyMatch(reason -> reason.startsWith("'large' and 'small' ring at 12.9\u00a0MHz"));
        assertThat(RibbonData.of(evaluation).knots()).singleElement().satisfies(knot -> {
            assertThat(knot.a()).isEqualTo("b1");
            assertThat(knot.b()).isEqualTo("b0");
            assertThat(knot.labelB()).isEqualTo("small");
        });
    }

    /** 2.2 nH of ceramic and path against 20 nF of the load. */
    @Test
    void theLoadsCapacitanceIsNamedAsThePartner() {
        Evaluation evaluation = evaluation(new Distance(new SeriesPath(0.002, 1.5e-9), Node.LOAD, new SeriesRlc(2e-8, 0, 0)),
                branch("ceramic", 2.2e-5, 0.003, 7e-10));
        assertThat(new BankWords(evaluation).reasons()).anyMatch(reason -> reason.startsWith("'ceramic' and the load's capacitance ring at 24"));
        assertThat(RibbonData.of(evaluation).knots()).singleElement().satisfies(knot -> {
            assertThat(knot.a()).isEqualTo("b0");
            assertThat(knot.b()).as("no branch, so no colour of one").isNull();
            assertThat(knot.labelB()).isEqualTo("the load's capacitance");
        });
        assertThat(BankCharts.of(evaluation, null).impedance().points()).singleElement();
    }

    /** With a least ESR of a quarter the two ring harder than as shown. */
    @Test
    void harderRingingAtAnotherCornerIsSaidWithTheCorner() {
        List<String> reasons = new BankWords(evaluation(null, spread("large", 47e-6, 0.008, 1e-9), spread("small", 4.7e-6, 0.008, 0.7e-9))).reasons();
        assertThat(reasons).anySatisfy(reason -> assertThat(reason)
                .matches("In the quiet band 'large' and 'small' ring harder with .*ESR low.*: at [0-9.]+\\h?MHz \\|Z\\| peaks at .*, Q [0-9.]+, the largest of \\d+ corners;"
                        + " at the corner shown (it is [0-9.]+|nothing rings there)\\."));
    }

    @Test
    void theLinearResponseIsDrawnOnlyBesideAStepThatMeetsALimit() {
        BranchInput bulk = branch("bulk", 470e-6, 0.01, 3e-9);
        assertThat(stepSeries(bulk, new LoadStep(1, 15, 100e6, 0.1, null)))
                .contains("step", "release", "step without duty limits", "release without duty limits");
        assertThat(stepSeries(bulk, new LoadStep(1, 1.2, 1e4, 0.1, null))).contains("step", "release")
                .noneMatch(label -> label.contains("without duty limits"));
    }

    private static List<String> stepSeries(BranchInput branch, LoadStep step) {
        ControlFigures control = new ControlFigures(ControlFigures.Kind.VOLTAGE_MODE, 1.0, null, null, null, null, null, null, 40e3, 60.0);
        ConverterFigures buck = new ConverterFigures(Topology.BUCK, 2.2e-6, 0, 0.01, 1, 500e3, 0, control, null);
        RailFigures rail = new RailFigures(3.3, 5, InputRange.fixed(12), buck, null, null, step, null, null, null, null);
        Evaluation evaluation = Evaluation.picturesOnly(new EvaluationInput(EvaluationInput.METHOD_VERSION, rail, List.of(branch)), null);
        return BankCharts.of(evaluation, null).step().series().stream().map(ChartData.Series::label).toList();
    }

    private static BranchInput spread(String label, double capacitanceF, double resistanceOhm, double inductanceH) {
        PartInput whole = PartInput.fixed(new SeriesRlc(capacitanceF, resistanceOhm, inductanceH));
        PartInput part = new PartInput(whole.members(), 1e3, capacitanceF, false, null, -0.2, 0.2, 0.25, 2.0);
        return new BranchInput(label, 1, null, null, null, part, SeriesPath.NONE, SeriesPath.NONE, "typed", false);
    }
}
