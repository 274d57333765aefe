package org.stillrail.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
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

class ReportChartsTest {

    /** 0.3 V over 10 uH is too little for a step of 4 A; on the release 3.3 V drive the current down fast enough of their own. */
    @ParameterizedTest
    @CsvSource({"3.6, true", "24, false"})
    void theStepThatADutyLimitHoldsBackStandsBesideItselfWithoutOne(double inputV, boolean meets) {
        ControlFigures control = new ControlFigures(ControlFigures.Kind.VOLTAGE_MODE, 1.0, null, null, null, null, null, null, 10e3, 60.0);
        ConverterFigures converter = new ConverterFigures(Topology.BUCK, 10e-6, 0, 0.01, 1, 500e3, 0, control, null);
        RailFigures rail = new RailFigures(3.3, 5, InputRange.fixed(inputV), converter, null, null, new LoadStep(1, 5, 1e7, 0.5, null), null, null, null, null);
        BranchInput bulk = new BranchInput("bulk", 1, null, null, null, PartInput.fixed(new SeriesRlc(470e-6, 0.02, 3e-9)), SeriesPath.NONE, SeriesPath.NONE,
                "figures typed", false);
        Evaluation evaluation = Evaluation.evaluate(new EvaluationInput(EvaluationInput.METHOD_VERSION, rail, List.of(bulk)));
        List<String> names = ReportCharts.step(evaluation).stream().map(ReportChart.Line::label).toList();
        assertThat(names).contains("step", "release", "allowed above", "allowed below");
        assertThat(names.contains("step without duty limits")).isEqualTo(meets);
    }
}
