package org.stillrail.bank;

import org.stillrail.electrical.evaluation.Evaluation;
import org.stillrail.web.ChartData;

/** The JSON of every picture of a bank page; null where the rail asks nothing that it would show. */
record Pictures(
        String ruler, String ribbon, String impedance, String resistance, String share, String ripple, String step, String gain, String phase,
        String sensitivity, String pattern, String underPattern) {

    static Pictures of(Evaluation evaluation, Evaluation neighbour) {
        BankCharts charts = BankCharts.of(evaluation, neighbour);
        return new Pictures(
                evaluation.window() == null ? null : RulerData.of(evaluation.window(), evaluation.input().rail().nominalVoltageV()).json(),
                RibbonData.of(evaluation).json(),
                charts.impedance().json(), charts.resistance().json(), charts.share().json(),
                json(charts.ripple()), json(charts.step()), json(charts.gain()), json(charts.phase()), json(charts.sensitivity()),
                json(charts.pattern()), json(charts.underPattern()));
    }

    private static String json(ChartData chart) {
        return chart == null ? null : chart.json();
    }
}
