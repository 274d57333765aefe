package org.stillrail.calculation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

/** {@code impedance} against closed forms of series and parallel circuits, written out here. */
class ImpedanceApiTest {

    private static final Api API = new Api();

    @Test
    void seriesCircuitHasItsClosedForm() {
        double c = 220e-6;
        double r = 0.2;
        double l = 3e-9;
        JsonNode answer = API.answer("impedance", Json.impedance(Json.bank(Json.rlc(c, r, l)), Json.grid(10, 1e8, 71)));
        double[] hz = Api.numbers(answer.get("frequencyHz"));
        assertThat(hz).hasSize(71);
        assertThat(hz[0]).isEqualTo(10);
        assertThat(hz[70]).isEqualTo(1e8);
        for (int i = 0; i < hz.length; i++) {
            double x = 2 * Math.PI * hz[i] * l - 1 / (2 * Math.PI * hz[i] * c);
            assertThat(answer.get("resistanceOhm").get(i).doubleValue()).isCloseTo(r, Percentage.withPercentage(1e-10));
            assertThat(answer.get("reactanceOhm").get(i).doubleValue()).isCloseTo(x, within(1e-12 * (1 + Math.abs(x))));
            assertThat(answer.get("magnitudeOhm").get(i).doubleValue()).isCloseTo(Math.hypot(r, x), Percentage.withPercentage(1e-9));
            assertThat(answer.get("phaseDeg").get(i).doubleValue()).isCloseTo(Math.toDegrees(Math.atan2(x, r)), within(1e-9));
        }
        JsonNode branch = answer.get("branches").get(0);
        assertThat(branch.get("label").stringValue()).isEqualTo("a");
        assertThat(Api.numbers(branch.get("currentShare"))).usingComparatorWithPrecision(1e-12).containsOnly(1);
        assertThat(Api.numbers(branch.get("currentSharePhaseDeg"))).usingComparatorWithPrecision(1e-9).containsOnly(0);
        assertThat(answer.get("warnings")).isEmpty();
    }

    /** Of a series circuit: |Z| = R at 1 / (2 pi sqrt(LC)), and Q = sqrt(L / C) / R by the phase slope. */
    @Test
    void resonanceIsTheOnlyExtremumWithTheTextbookQ() {
        double c = 10e-6;
        double r = 0.004;
        double l = 2e-9;
        JsonNode extrema = API.answer("impedance", Json.impedance(Json.bank(Json.rlc(c, r, l)), Json.grid(1e3, 1e8, 20)))
                .get("extrema");
        assertThat(extrema).hasSize(1);
        assertThat(extrema.get(0).get("kind").stringValue()).isEqualTo("minimum");
        assertThat(extrema.get(0).get("frequencyHz").doubleValue())
                .isCloseTo(1 / (2 * Math.PI * Math.sqrt(l * c)), Percentage.withPercentage(1e-3));
        assertThat(extrema.get(0).get("magnitudeOhm").doubleValue()).isCloseTo(r, Percentage.withPercentage(1e-6));
        assertThat(extrema.get(0).get("qualityFactor").doubleValue())
                .isCloseTo(Math.sqrt(l / c) / r, Percentage.withPercentage(1e-4));
    }

    @Test
    void countMountingAndSharedPathFollowTheBranchFormula() {
        String bank = Json.of("""
                {'branches': [{'count': 3, 'model': {'kind': 'series-rlc', 'capacitanceF': 1e-5, 'resistanceOhm': 0.006,
                'inductanceH': 1e-9}, 'mounting': {'resistanceOhm': 0.003, 'inductanceH': 2e-9},
                'shared': {'inductanceH': 5e-10}}]}""");
        JsonNode answer = API.answer("impedance", Json.impedance(bank, Json.of("{'frequencyHz': [2000000]}")));
        double w = 2 * Math.PI * 2e6;
        assertThat(answer.get("resistanceOhm").get(0).doubleValue()).isCloseTo(0.003, Percentage.withPercentage(1e-9));
        assertThat(answer.get("reactanceOhm").get(0).doubleValue())
                .isCloseTo((w * 1e-9 - 1 / (w * 1e-5) + w * 2e-9) / 3 + w * 5e-10, Percentage.withPercentage(1e-9));
        assertThat(answer.get("branches").get(0).get("label").stringValue()).isEqualTo("branch 1");
        assertThat(answer.get("extrema")).as("one point has no inside").isEmpty();
    }

    @Test
    void tableIsLinearOverLogFrequency() {
        String table = Json.of("""
                {'kind': 'table', 'frequencyHz': [100, 10000], 'resistanceOhm': [0.4, 0.2], 'reactanceOhm': [-3, -1]}""");
        JsonNode answer = API.answer("impedance", Json.impedance(Json.bank(table), Json.of("{'frequencyHz': [1000, 100000]}")));
        assertThat(answer.get("resistanceOhm").get(0).doubleValue()).isCloseTo(0.3, within(1e-12));
        assertThat(answer.get("reactanceOhm").get(0).doubleValue()).isCloseTo(-2, within(1e-12));
        String warnings = answer.get("warnings").toString();
        assertThat(warnings).contains("20 points a decade").contains("extrapolated");
    }

    @Test
    void datasheetModelMeetsItsOwnFigures() {
        String sheet = Json.of("""
                {'kind': 'datasheet', 'capacitanceF': 2.2e-4, 'lossTangent': 0.14, 'lossTangentFrequencyHz': 120,
                'resistanceOhm': 0.08, 'resistanceFrequencyHz': 100000, 'inductanceH': 0}""");
        JsonNode answer = API.answer("impedance", Json.impedance(Json.bank(sheet), Json.of("{'frequencyHz': [120, 100000]}")));
        double x = 1 / (2 * Math.PI * 120 * 2.2e-4);
        assertThat(answer.get("reactanceOhm").get(0).doubleValue()).isCloseTo(-x, Percentage.withPercentage(1e-7));
        assertThat(answer.get("resistanceOhm").get(0).doubleValue()).isCloseTo(0.14 * x, Percentage.withPercentage(1e-7));
        assertThat(answer.get("resistanceOhm").get(1).doubleValue()).isCloseTo(0.08, Percentage.withPercentage(1e-7));
    }

    @Test
    void datasheetLossFigureMayBeLeftOut() {
        String sheet = Json.of("""
                {'kind': 'datasheet', 'capacitanceF': 1e-6, 'lossTangent': null, 'lossTangentFrequencyHz': null,
                'resistanceOhm': 0.01, 'resistanceFrequencyHz': 100000, 'inductanceH': 1e-9}""");
        JsonNode answer = API.answer("impedance", Json.impedance(Json.bank(sheet), Json.of("{'frequencyHz': [1000]}")));
        assertThat(answer.get("resistanceOhm").get(0).doubleValue()).isCloseTo(0.01, Percentage.withPercentage(1e-9));
    }

    @Test
    void libraryPartIsTakenAtTheOperatingPoint() {
        String request = Json.of("""
                {'bank': {'branches': [{'label': 'bulk', 'count': 1, 'part': 'TEST-47U'}]}, 'grid': {'frequencyHz': [100]},
                'operatingPoint': {'biasV': 10}}""");
        JsonNode answer = API.answer("impedance", request);
        double w = 2 * Math.PI * 100;
        assertThat(answer.get("reactanceOhm").get(0).doubleValue())
                .isCloseTo(w * 1e-9 - 1 / (w * 47e-6 * 0.9), Percentage.withPercentage(1e-9));
        assertThat(answer.get("warnings").toString()).contains("bulk").contains("ESL is an estimate").doesNotContain("inline");
    }

    @Test
    void operatingPointOfInlineModelsIsIgnoredWithAWarning() {
        String plain = Json.impedance(Json.bank(Json.rlc(1e-5, 0.01, 1e-9)), Json.of("{'frequencyHz': [1000]}"));
        String biased = plain.substring(0, plain.length() - 1) + Json.of(", 'operatingPoint': {'biasV': 5, 'temperatureC': 85}}");
        JsonNode without = API.answer("impedance", plain);
        JsonNode with = API.answer("impedance", biased);
        assertThat(with.get("reactanceOhm")).isEqualTo(without.get("reactanceOhm"));
        assertThat(without.get("warnings")).isEmpty();
        assertThat(with.get("warnings").toString()).contains("operating point");
    }

    @Test
    void answerHasExactlyTheFieldsOfTheContract() {
        String two = Json.of("{'branches': [{'label': 'bulk', 'count': 1, 'model': " + Json.rlc(1e-4, 0.1, 5e-9)
                + "}, {'label': 'ceramic', 'count': 2, 'model': " + Json.rlc(1e-6, 0.005, 5e-10) + "}]}");
        JsonNode answer = API.answer("impedance", Json.impedance(two, Json.grid(1e3, 1e8, 200)));
        assertThat(answer.propertyNames()).containsExactlyInAnyOrder(
                "frequencyHz", "resistanceOhm", "reactanceOhm", "magnitudeOhm", "phaseDeg", "branches", "extrema", "warnings");
        assertThat(answer.get("branches")).hasSize(2).allSatisfy(branch -> assertThat(branch.propertyNames())
                .containsExactlyInAnyOrder("label", "resistanceOhm", "reactanceOhm", "currentShare", "currentSharePhaseDeg"));
        assertThat(answer.get("extrema")).isNotEmpty().allSatisfy(extremum -> assertThat(extremum.propertyNames())
                .containsExactlyInAnyOrder("kind", "frequencyHz", "magnitudeOhm", "qualityFactor"));
        for (String array : List.of("resistanceOhm", "reactanceOhm", "magnitudeOhm", "phaseDeg")) {
            assertThat(answer.get(array)).hasSize(200);
        }
    }

    @Test
    void losslessResonanceBesideTheGridHasNoQAndSaysSo() {
        JsonNode answer = API.answer("impedance", Json.impedance(Json.bank(Json.rlc(1e-6, 0, 1e-9)), Json.grid(1e3, 1e8, 50)));
        JsonNode extremum = answer.get("extrema").get(0);
        assertThat(extremum.get("qualityFactor").isNull()).isTrue();
        assertThat(extremum.get("magnitudeOhm").doubleValue()).isCloseTo(0, within(1e-6));
        assertThat(answer.get("warnings").toString()).contains("Nothing damps");
    }
}
