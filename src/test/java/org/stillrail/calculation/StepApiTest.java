package org.stillrail.calculation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;

/** {@code step}: the contract's names, the bank alone in closed form, and a converter that brings the voltage back. */
class StepApiTest {

    private static final Api API = new Api();
    private static final String BANK = Json.bank(Json.rlc(1e-3, 0.01, 0));
    private static final String LOAD = "{'fromA': 1, 'toA': 6, 'slewAPerS': 1e9}";
    private static final String CONVERTER = """
            {'inputV': 12, 'outputV': 3.3, 'inductanceH': 4.7e-6, 'inductorResistanceOhm': 0.01, 'switchingHz': 500000,
            'control': {'kind': 'voltage-mode', 'rampV': 1, 'delayS': 1e-6,
            'design': {'crossoverHz': 40000, 'phaseMarginDeg': 60}}}""";

    private static String request(String load, String more) {
        return Json.of("{'bank': " + BANK + ", 'load': " + load + ", 'durationS': 1e-3" + more + "}");
    }

    /** Current I out of R and C in series: the voltage falls by I R at once and by I t / C from there. */
    @Test
    void bankAloneFallsAsItsClosedForm() {
        JsonNode answer = API.answer("step", request(LOAD, ", 'samples': 101"));
        double[] time = Api.numbers(answer.get("timeS"));
        double[] deviation = Api.numbers(answer.get("deviationV"));
        assertThat(time).hasSize(101);
        double ramp = 5e-9;
        for (int i = 1; i < time.length; i++) {
            assertThat(deviation[i]).isCloseTo(-5 * 0.01 - 5 * (time[i] - ramp / 2) / 1e-3, within(1e-6));
        }
        assertThat(answer.get("undershootV").doubleValue()).isCloseTo(5 * 0.01 + 5 * 1e-3 / 1e-3, Percentage.withPercentage(0.01));
        assertThat(answer.get("overshootV").doubleValue()).isZero();
        assertThat(answer.get("overshootAtS").isNull()).isTrue();
        assertThat(Api.numbers(answer.get("inductorA"))).containsOnly(1);
        assertThat(answer.get("fitErrorPercent").isNull()).isTrue();
        assertThat(answer.get("warnings").toString()).contains("durationS");
    }

    @Test
    void converterBringsTheVoltageBack() {
        JsonNode answer = API.answer("step", request(LOAD, ", 'converter': " + CONVERTER + ", 'settleBandV': 0.005"));
        assertThat(answer.propertyNames()).containsExactlyInAnyOrder("timeS", "deviationV", "inductorA", "undershootV", "overshootV",
                "undershootAtS", "overshootAtS", "settledAtS", "fitErrorPercent", "warnings");
        double[] deviation = Api.numbers(answer.get("deviationV"));
        double[] inductor = Api.numbers(answer.get("inductorA"));
        assertThat(deviation[deviation.length - 1]).isCloseTo(0, within(0.002));
        assertThat(inductor[0]).isCloseTo(1, within(1e-6));
        assertThat(inductor[inductor.length - 1]).isCloseTo(6, within(0.1));
        assertThat(answer.get("undershootV").doubleValue()).isGreaterThan(0.049);
        assertThat(answer.get("settledAtS").doubleValue()).isBetween(0.0, 1e-3);
    }

    @Test
    void dutyLimitsHoldTheInductorBack() {
        String with = request(LOAD, ", 'converter': " + CONVERTER);
        double limited = API.answer("step", with).get("undershootV").doubleValue();
        double linear = API.answer("step", with.substring(0, with.length() - 1) + ", \"dutyLimits\": false}").get("undershootV").doubleValue();
        assertThat(limited).isGreaterThanOrEqualTo(linear);
    }

    /** A table of the same circuit goes through its rational fit and must give the same step. */
    @Test
    void tableOfTheSameCircuitGivesTheSameStep() {
        int points = 161;
        double[] hz = new double[points];
        double[] r = new double[points];
        double[] x = new double[points];
        for (int i = 0; i < points; i++) {
            hz[i] = Math.pow(10, 1 + i / 20.0);
            r[i] = 0.01;
            x[i] = 2 * Math.PI * hz[i] * 2e-9 - 1 / (2 * Math.PI * hz[i] * 3e-4);
        }
        String table = Json.bank(Json.of("{'kind': 'table', 'frequencyHz': " + Arrays.toString(hz) + ", 'resistanceOhm': "
                + Arrays.toString(r) + ", 'reactanceOhm': " + Arrays.toString(x) + "}"));
        String exact = Json.bank(Json.rlc(3e-4, 0.01, 2e-9));
        String rest = Json.of(", 'load': {'fromA': 1, 'toA': 6, 'slewAPerS': 1e7}, 'durationS': 2e-4, 'converter': " + CONVERTER + "}");
        JsonNode fitted = API.answer("step", "{\"bank\": " + table + rest);
        JsonNode known = API.answer("step", "{\"bank\": " + exact + rest);
        assertThat(known.get("fitErrorPercent").isNull()).isTrue();
        assertThat(fitted.get("fitErrorPercent").doubleValue()).isLessThan(1);
        assertThat(fitted.get("undershootV").doubleValue())
                .isCloseTo(known.get("undershootV").doubleValue(), Percentage.withPercentage(1));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "{'fromA': 1, 'toA': 6} | '' | load.slewAPerS",
        "{'fromA': 1, 'toA': 6, 'slewAPerS': 0} | '' | load.slewAPerS",
        "{'fromA': 'x', 'toA': 6, 'slewAPerS': 1} | '' | load.fromA",
        "{'fromA': 1, 'toA': 6, 'slewAPerS': 1} | , 'samples': 1 | samples",
        "{'fromA': 1, 'toA': 6, 'slewAPerS': 1} | , 'samples': 100001 | samples",
        "{'fromA': 1, 'toA': 6, 'slewAPerS': 1} | , 'dutyLimits': 1 | dutyLimits",
        "{'fromA': 1, 'toA': 6, 'slewAPerS': 1} | , 'settleBandV': 0 | settleBandV",
        "{'fromA': 1, 'toA': 6, 'slewAPerS': 1} | , 'converter': {} | converter.control",
        "null | '' | load"
    })
    void stepsAreChecked(String load, String more, String field) {
        assertThat(API.errors("step", request(load, more))).containsKey(field);
    }

    @Test
    void aLoadWithoutSteadyStateIsRefused() {
        assertThat(API.errors("step", request("{'fromA': 2000, 'toA': 2001, 'slewAPerS': 1e6}", ", 'converter': " + CONVERTER)))
                .containsOnlyKeys("load.fromA");
    }
}
