package org.stillrail.calculation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;

/** {@code loop} against the contract's own formulas, evaluated here in complex numbers. */
class LoopApiTest {

    private static final Api API = new Api();
    private static final double C = 200e-6;
    private static final double ESR = 0.005;
    private static final String BANK = Json.bank(Json.rlc(C, ESR, 0));
    private static final String COMPENSATOR = "{'gain': 20000, 'zerosHz': [4000, 6000], 'polesHz': [150000, 250000]}";

    private static String voltageMode(String compensation) {
        return "{'kind': 'voltage-mode', 'rampV': 1.5, 'delayS': 5e-7, " + compensation + "}";
    }

    private static String request(String control) {
        return Json.of("{'bank': " + BANK + ", 'grid': {'startHz': 100, 'stopHz': 1000000, 'points': 81}, 'converter': {"
                + "'inputV': 12, 'outputV': 3.3, 'inductanceH': 4e-6, 'inductorResistanceOhm': 0.02, 'switchingHz': 500000,"
                + "'phases': 2, 'control': " + control + "}}");
    }

    @Test
    void voltageModeGainIsTheContractsFormula() {
        JsonNode answer = API.answer("loop", request(voltageMode("'compensator': " + COMPENSATOR)));
        for (int i = 0; i < 81; i++) {
            double f = answer.get("frequencyHz").get(i).doubleValue();
            double w = 2 * Math.PI * f;
            double x = -1 / (w * C);
            double l = w * 2e-6;
            double magnitude = 20000 / w * Math.hypot(1, f / 4000) * Math.hypot(1, f / 6000)
                    / Math.hypot(1, f / 150_000) / Math.hypot(1, f / 250_000)
                    * 12 / 1.5 * Math.hypot(ESR, x) / Math.hypot(ESR + 0.01, x + l);
            double phase = Math.toDegrees(-Math.PI / 2 + Math.atan(f / 4000) + Math.atan(f / 6000) - Math.atan(f / 150_000)
                    - Math.atan(f / 250_000) + Math.atan2(x, ESR) - Math.atan2(x + l, ESR + 0.01) - w * 5e-7);
            assertThat(answer.get("gainDb").get(i).doubleValue()).isCloseTo(20 * Math.log10(magnitude), within(1e-6));
            assertThat(answer.get("phaseDeg").get(i).doubleValue()).isCloseTo(phase, within(1e-6));
        }
        assertThat(answer.get("stable").booleanValue()).isTrue();
        assertThat(answer.get("esrAtSwitchingOhm").doubleValue()).isCloseTo(ESR, within(1e-12));
        assertThat(answer.get("compensator").get("gain").doubleValue()).isEqualTo(20000);
    }

    @Test
    void answerHasExactlyTheFieldsOfTheContract() {
        assertThat(API.answer("loop", request(voltageMode("'compensator': " + COMPENSATOR))).propertyNames()).containsExactlyInAnyOrder(
                "frequencyHz", "gainDb", "phaseDeg", "closedImpedanceOhm", "phaseMarginDeg", "crossoverHz", "gainMarginDb",
                "sensitivityPeak", "stable", "esrAtCrossoverOhm", "esrAtSwitchingOhm", "compensator", "warnings");
    }

    @Test
    void designIsReachedAndHandedBack() {
        JsonNode answer = API.answer("loop", request(voltageMode("'design': {'crossoverHz': 40000, 'phaseMarginDeg': 55}")));
        assertThat(answer.get("crossoverHz").doubleValue()).isCloseTo(40000, Percentage.withPercentage(0.01));
        assertThat(answer.get("phaseMarginDeg").doubleValue()).isCloseTo(55, within(0.01));
        JsonNode placed = answer.get("compensator");
        JsonNode again = API.answer("loop", request(voltageMode("'compensator': " + placed)));
        assertThat(again.get("phaseMarginDeg").doubleValue()).isCloseTo(55, within(0.01));
    }

    @Test
    void currentModeStartsAtMinus180AndSaysUnstableWithoutSlope() {
        String control = "{'kind': 'current-mode', 'senseOhm': 0.02, 'slopeAPerS': 0, 'compensator': {'gain': 2000}}";
        String highDuty = request(control).replace("\"outputV\": 3.3", "\"outputV\": 8");
        assertThat(API.answer("loop", highDuty).get("stable").booleanValue()).isFalse();
        JsonNode lowDuty = API.answer("loop", request(control));
        assertThat(lowDuty.get("phaseDeg").get(0).doubleValue()).isCloseTo(-180, within(1.0));
    }

    @Test
    void noCrossoverIsNullWithAWarning() {
        JsonNode answer = API.answer("loop", request(voltageMode("'compensator': {'gain': 0.001}")));
        assertThat(answer.get("crossoverHz").isNull()).isTrue();
        assertThat(answer.get("phaseMarginDeg").isNull()).isTrue();
        assertThat(answer.get("warnings").toString()).contains("does not cross");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "{'kind': 'voltage-mode', 'rampV': 1} | converter.control",
        "{'kind': 'voltage-mode', 'rampV': 1, 'compensator': {'gain': 1}, 'design': {'crossoverHz': 1000, 'phaseMarginDeg': 50}} | converter.control",
        "{'kind': 'voltage-mode', 'compensator': {'gain': 1}} | converter.control.rampV",
        "{'kind': 'voltage-mode', 'rampV': 1, 'delayS': -1e-6, 'compensator': {'gain': 1}} | converter.control.delayS",
        "{'kind': 'voltage-mode', 'rampV': 1, 'compensator': {'zerosHz': []}} | converter.control.compensator.gain",
        "{'kind': 'voltage-mode', 'rampV': 1, 'compensator': {'gain': 1, 'zerosHz': [1, 2]}} | converter.control.compensator.zerosHz",
        "{'kind': 'voltage-mode', 'rampV': 1, 'compensator': {'gain': 1, 'polesHz': [0]}} | converter.control.compensator.polesHz[0]",
        "{'kind': 'voltage-mode', 'rampV': 1, 'design': {'crossoverHz': 400000, 'phaseMarginDeg': 50}} | converter.control.design",
        "{'kind': 'voltage-mode', 'rampV': 1, 'design': {'crossoverHz': 40000}} | converter.control.design.phaseMarginDeg",
        "{'kind': 'current-mode', 'slopeAPerS': 0, 'compensator': {'gain': 1}} | converter.control.senseOhm",
        "{'kind': 'hysteretic'} | converter.control.kind",
        "null | converter.control"
    })
    void controlsAreChecked(String control, String field) {
        assertThat(API.errors("loop", request(control))).containsOnlyKeys(field);
    }

    @Test
    void missingFiguresOfTheConverterAreAllNamed() {
        Map<String, String> errors = API.errors("loop", Json.of("{'bank': " + BANK + ", 'grid': {'frequencyHz': [1000]}, 'converter': {}}"));
        assertThat(errors).containsOnlyKeys("converter.inputV", "converter.outputV", "converter.inductanceH",
                "converter.inductorResistanceOhm", "converter.switchingHz", "converter.control");
    }
}
