package org.stillrail.calculation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.mock.web.MockHttpServletResponse;

/** Every rule of the contract for bad input: status 400, and the JSON path of the field that is wrong. */
class BadInputTest {

    private static final String BRANCH = "bank.branches[0]";
    private static final String GOOD_RLC = Json.rlc(1e-5, 0.01, 1e-9);
    private static final String GRID = Json.grid(1e3, 1e6, 10);

    private static final Api API = new Api();

    private Map<String, String> errorsOfModel(String model) {
        return API.errors("impedance", Json.impedance(Json.bank(model), GRID));
    }

    private Map<String, String> errorsOfBranch(String branch) {
        return API.errors("impedance", Json.impedance(Json.of("{'branches': [" + branch + "]}"), GRID));
    }

    private Map<String, String> errorsOfGrid(String grid) {
        return API.errors("impedance", Json.impedance(Json.bank(GOOD_RLC), grid));
    }

    private Map<String, String> errorsOfCurrent(String current) {
        return API.errors("ripple", Json.of("{'bank': " + Json.bank(GOOD_RLC) + ", 'current': " + current + "}"));
    }

    @ParameterizedTest
    @CsvSource({
        "capacitanceF, -1e-6, above 0",
        "capacitanceF, 0, above 0",
        "resistanceOhm, -0.01, 0 or above",
        "inductanceH, -1e-9, 0 or above",
        "capacitanceF, NaN, finite",
        "resistanceOhm, Infinity, finite",
        "inductanceH, -Infinity, finite",
        "capacitanceF, 1e999, finite",
        "capacitanceF, '\"1e-6\"', must be a number",
        "capacitanceF, '\"NaN\"', must be a number",
        "resistanceOhm, true, must be a number",
        "resistanceOhm, '[0.1]', must be a number",
        "capacitanceF, null, required"
    })
    void figuresOfAModelAreNamed(String field, String value, String message) {
        Map<String, String> figures = new LinkedHashMap<>(
                Map.of("capacitanceF", "1e-5", "resistanceOhm", "0.01", "inductanceH", "1e-9"));
        figures.put(field, value);
        String model = "{\"kind\": \"series-rlc\", " + figures.entrySet().stream()
                .map(figure -> "\"" + figure.getKey() + "\": " + figure.getValue())
                .collect(Collectors.joining(", ")) + "}";
        String request = "{\"bank\": {\"branches\": [{\"count\": 1, \"model\": " + model + "}]}, \"grid\": " + GRID + "}";
        Map<String, String> errors = API.errors("impedance", request);
        assertThat(errors).containsOnlyKeys(BRANCH + ".model." + field);
        assertThat(errors.get(BRANCH + ".model." + field)).contains(message);
    }

    @ParameterizedTest
    @CsvSource({"0, 1 or above", "-2, 1 or above", "2.7, whole number", "'\"2\"', must be a number", "1e12, whole number", "null, required"})
    void countIsAWholeNumberAboveZero(String count, String message) {
        Map<String, String> errors = errorsOfBranch("{\"count\": " + count + ", \"model\": " + GOOD_RLC + "}");
        assertThat(errors).containsOnlyKeys(BRANCH + ".count");
        assertThat(errors.get(BRANCH + ".count")).contains(message);
    }

    @Test
    void missingNumbersAreNamedAllAtOnce() {
        Map<String, String> errors = errorsOfBranch(Json.of("{'model': {'kind': 'series-rlc'}}"));
        assertThat(errors).containsOnlyKeys(BRANCH + ".count", BRANCH + ".model.capacitanceF", BRANCH + ".model.resistanceOhm",
                BRANCH + ".model.inductanceH");
        assertThat(errors.values()).containsOnly("is required");
    }

    @Test
    void wrongFieldsInDifferentPlacesAreAllReported() {
        Map<String, String> errors = API.errors("impedance", Json.of("""
                {'bank': {'branches': [
                  {'count': 0, 'model': {'kind': 'series-rlc', 'capacitanceF': 'x', 'resistanceOhm': -1, 'inductanceH': 0}},
                  {'count': 1, 'model': {'kind': 'triangle'}, 'colour': 'red'}]},
                 'grid': {'startHz': 100, 'stopHz': 10, 'points': 2.5}}"""));
        assertThat(errors).containsOnlyKeys("bank.branches[0].count", "bank.branches[0].model.capacitanceF",
                "bank.branches[0].model.resistanceOhm", "bank.branches[1].model.kind", "bank.branches[1].colour", "grid.points",
                "grid.stopHz");
    }

    @Test
    void unknownFieldsAreNamedWithThoseThatExist() {
        assertThat(API.errors("impedance", Json.of("{'bank': " + Json.bank(GOOD_RLC) + ", 'grid': " + GRID + ", 'gird': 1}")))
                .containsOnlyKeys("gird").extractingByKey("gird").asString().contains("operatingPoint");
        assertThat(errorsOfModel(GOOD_RLC.replace("}", Json.of(", 'esr': 1}")))).containsOnlyKeys(BRANCH + ".model.esr");
        assertThat(errorsOfBranch(Json.of("{'count': 1, 'model': " + GOOD_RLC + ", 'mounting': {'ohm': 1}}")))
                .containsOnlyKeys(BRANCH + ".mounting.ohm");
    }

    @Test
    void unknownKindNamesTheKnownOnes() {
        assertThat(errorsOfModel(Json.of("{'kind': 'ideal', 'capacitanceF': 1}")))
                .containsExactlyEntriesOf(Map.of(BRANCH + ".model.kind", "must be one of series-rlc, table, datasheet"));
        assertThat(errorsOfModel(Json.of("{'capacitanceF': 1}"))).containsOnlyKeys(BRANCH + ".model.kind");
        assertThat(errorsOfModel(Json.of("{'kind': 3}"))).containsOnlyKeys(BRANCH + ".model.kind");
        assertThat(errorsOfCurrent(Json.of("{'kind': 'boost'}"))).containsOnlyKeys("current.kind");
    }

    @Test
    void partAndModelExcludeEachOther() {
        assertThat(errorsOfBranch(Json.of("{'count': 1, 'part': 'TEST-47U', 'model': " + GOOD_RLC + "}"))).containsOnlyKeys(BRANCH);
        assertThat(errorsOfBranch(Json.of("{'count': 1}"))).containsOnlyKeys(BRANCH);
    }

    @Test
    void unknownPartsAreNamed() {
        Map<String, String> errors = API.errors("impedance", Json.impedance(Json.of("""
                {'branches': [{'count': 1, 'part': 'TEST-47U'}, {'count': 1, 'part': 'NOPE'}, {'count': 1, 'part': 'NEITHER'}]}"""), GRID));
        assertThat(errors).containsOnlyKeys("bank.branches[1].part", "bank.branches[2].part");
        assertThat(errors.get("bank.branches[1].part")).contains("NOPE");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "[100, 100, 200] | [1, 1, 1] | [1, 1, 1] | frequencyHz[1]",
        "[100, 300, 200] | [1, 1, 1] | [1, 1, 1] | frequencyHz[2]",
        "[0, 100, 200] | [1, 1, 1] | [1, 1, 1] | frequencyHz[0]",
        "[-5, 100, 200] | [1, 1, 1] | [1, 1, 1] | frequencyHz[0]",
        "[100, 200, 300] | [1, 1] | [1, 1, 1] | resistanceOhm",
        "[100, 200, 300] | [1, 1, 1] | [1, 1, 1, 1] | reactanceOhm",
        "[100, 200, 300] | [1, -1, 1] | [1, 1, 1] | resistanceOhm[1]",
        "[100, 200, 300] | [1, NaN, 1] | [1, 1, 1] | resistanceOhm[1]",
        "[100, 200, 300] | [1, 1, 1] | [1, 1, null] | reactanceOhm[2]",
        "[100, '200', 300] | [1, 1, 1] | [1, 1, 1] | frequencyHz[1]",
        "[100, 200, 1e400] | [1, 1, 1] | [1, 1, 1] | frequencyHz[2]",
        "[100] | [1] | [1] | frequencyHz",
        "[] | [] | [] | frequencyHz",
        "5 | [1, 1] | [1, 1] | frequencyHz"
    })
    void tablesAreChecked(String hz, String r, String x, String field) {
        String table = Json.of("{'kind': 'table', 'frequencyHz': " + hz + ", 'resistanceOhm': " + r + ", 'reactanceOhm': " + x + "}");
        assertThat(errorsOfModel(table)).containsKey(BRANCH + ".model." + field);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "{'startHz': 0, 'stopHz': 10, 'points': 5} | grid.startHz",
        "{'startHz': 10, 'stopHz': 10, 'points': 5} | grid.stopHz",
        "{'startHz': 10, 'stopHz': 100, 'points': 1} | grid.points",
        "{'startHz': 10, 'stopHz': 100, 'points': 20001} | grid.points",
        "{'startHz': 10, 'stopHz': 100} | grid.points",
        "{} | grid.startHz",
        "{'frequencyHz': []} | grid.frequencyHz",
        "{'frequencyHz': [1, 2, 2]} | grid.frequencyHz[2]",
        "{'frequencyHz': [0, 2]} | grid.frequencyHz[0]",
        "{'frequencyHz': [1, 2], 'points': 5} | grid",
        "[] | grid",
        "null | grid",
        "7 | grid"
    })
    void gridsAreChecked(String grid, String field) {
        assertThat(errorsOfGrid(grid)).containsKey(field);
    }

    @Test
    void losslessResonanceOnTheGridNamesTheFrequency() {
        double hz = 1 / (2 * Math.PI * Math.sqrt(1e-6 * 1e-9));
        Map<String, String> errors = API.errors("impedance",
                Json.impedance(Json.bank(Json.rlc(1e-6, 0, 1e-9)), Json.of("{'frequencyHz': [1000, " + hz + ", 1e8]}")));
        assertThat(errors).containsOnlyKeys("grid");
        assertThat(errors.get("grid")).contains(String.valueOf(hz));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "{'kind': 'buck', 'inputV': 5, 'outputV': 12, 'inductanceH': 1e-6, 'switchingHz': 1e6} | current.outputV",
        "{'kind': 'buck', 'inputV': 12, 'outputV': 0, 'inductanceH': 1e-6, 'switchingHz': 1e6} | current.outputV",
        "{'kind': 'buck', 'inputV': 12, 'outputV': 1, 'inductanceH': 0, 'switchingHz': 1e6} | current.inductanceH",
        "{'kind': 'buck', 'inputV': 12, 'outputV': 1, 'inductanceH': 1e-6} | current.switchingHz",
        "{'kind': 'buck', 'inputV': 12, 'outputV': 1, 'inductanceH': 1e-6, 'switchingHz': 1e6, 'phases': 0} | current.phases",
        "{'kind': 'piecewise-linear', 'periodS': 1, 'timeS': [0, 0.5, 0.5], 'currentA': [0, 1, 2]} | current.timeS[2]",
        "{'kind': 'piecewise-linear', 'periodS': 1, 'timeS': [0.1, 0.5], 'currentA': [0, 1]} | current.timeS[0]",
        "{'kind': 'piecewise-linear', 'periodS': 1, 'timeS': [0, 0.5], 'currentA': [0, 1, 2]} | current.currentA",
        "{'kind': 'piecewise-linear', 'periodS': 1, 'timeS': [0, 1], 'currentA': [0, 1]} | current.timeS[1]",
        "{'kind': 'piecewise-linear', 'periodS': 1, 'timeS': [0, 1.5], 'currentA': [0, 1]} | current.timeS[1]",
        "{'kind': 'piecewise-linear', 'periodS': 0, 'timeS': [0, 1], 'currentA': [0, 1]} | current.periodS"
    })
    void currentsAreChecked(String current, String field) {
        assertThat(errorsOfCurrent(current)).containsKey(field);
    }

    @Test
    void losslessResonanceOnAHarmonicIsRefusedToo() {
        double l = 1 / (4 * Math.PI * Math.PI * 1e12 * 1e-6);
        Map<String, String> errors = API.errors("ripple", Json.of("{'bank': " + Json.bank(Json.rlc(1e-6, 0, l)) + """
                , 'current': {'kind': 'buck', 'inputV': 12, 'outputV': 5, 'inductanceH': 1e-5, 'switchingHz': 1e6}}"""));
        assertThat(errors).containsOnlyKeys("bank");
        assertThat(errors.get("bank")).contains("resonance without loss");
    }

    @Test
    void fitNeedsATable() {
        assertThat(API.errors("fit", Json.of("{'model': " + GOOD_RLC + "}"))).containsOnlyKeys("model.kind");
        assertThat(API.errors("fit", Json.of("{'model': {'kind': 'table', 'frequencyHz': [1, 2], 'resistanceOhm': [1, 1],"
                + " 'reactanceOhm': [1, 1]}}"))).containsOnlyKeys("model.frequencyHz");
        assertThat(API.errors("fit", "{}")).containsOnlyKeys("model");
    }

    @Test
    void sixteenBranchesPassAndSeventeenDoNot() {
        String branch = Json.of("{'count': 1, 'model': " + GOOD_RLC + "}");
        String sixteen = IntStream.range(0, 16).mapToObj(i -> branch).collect(Collectors.joining(","));
        assertThat(API.answer("impedance", Json.impedance(Json.of("{'branches': [" + sixteen + "]}"), GRID)).get("branches")).hasSize(16);
        assertThat(errorsOfBranch(sixteen + "," + branch)).containsOnlyKeys("bank.branches")
                .extractingByKey("bank.branches").asString().contains("16");
        assertThat(API.errors("impedance", Json.impedance(Json.of("{'branches': []}"), GRID))).containsOnlyKeys("bank.branches");
    }

    @Test
    void tablesOfACallTogetherHaveALimit() {
        String frequencies = IntStream.rangeClosed(1, 100_001).mapToObj(Integer::toString).collect(Collectors.joining(",", "[", "]"));
        String ones = IntStream.rangeClosed(1, 100_001).mapToObj(i -> "1").collect(Collectors.joining(",", "[", "]"));
        String branch = Json.of("{'count': 1, 'model': {'kind': 'table', 'frequencyHz': " + frequencies + ", 'resistanceOhm': " + ones
                + ", 'reactanceOhm': " + ones + "}}");
        assertThat(errorsOfBranch(branch + "," + branch)).containsOnlyKeys("bank.branches")
                .extractingByKey("bank.branches").asString().contains("200002").contains("200000");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "   ", "[]", "7", "\"bank\"", "null", "true", "{", "{]", "{'bank': }", "not json", "{} {}", "{} x",
        "\u0000", "{'bank': 1,}", "{'a' 1}"})
    void whatIsNoSingleJsonObjectIsRefused(String body) {
        assertThat(API.errors("impedance", Json.of(body))).isNotEmpty();
    }

    @Test
    void whatFollowsTheObjectIsNamedInPlainWords() {
        assertThat(API.errors("impedance", "{} {}")).containsExactly(Map.entry("body", "goes on after the end of the JSON object"));
    }

    @Test
    void malformedJsonIsPlacedByLineAndColumn() {
        assertThat(API.errors("impedance", Json.of("{'bank':\n {'branches': [{'count': 1,, }]}}")))
                .containsKey("bank.branches[0].count").extractingByKey("bank.branches[0].count").asString().contains("line 2");
    }

    @Test
    void duplicateKeysAreNamed() {
        Map<String, String> errors = errorsOfBranch(Json.of("{'count': 1, 'count': 2, 'model': " + GOOD_RLC + "}"));
        assertThat(errors).containsOnlyKeys(BRANCH + ".count");
        assertThat(errors.get(BRANCH + ".count")).containsIgnoringCase("duplicate");
    }

    @Test
    void deepNestingIsRefused() {
        int depth = 5000;
        assertThat(API.errors("impedance", Json.of("{'bank': " + "[".repeat(depth) + "]".repeat(depth) + "}"))).hasSize(1);
        assertThat(API.errors("impedance", "{\"bank\": ".repeat(depth) + "1" + "}".repeat(depth))).hasSize(1);
    }

    @Test
    void hugeNumbersAreRefused() {
        assertThat(errorsOfModel("{\"kind\": \"series-rlc\", \"capacitanceF\": " + "9".repeat(500) + ", \"resistanceOhm\": 1, \"inductanceH\": 0}"))
                .containsOnlyKeys(BRANCH + ".model.capacitanceF");
        assertThat(errorsOfModel("{\"kind\": \"series-rlc\", \"capacitanceF\": " + "9".repeat(5000) + ", \"resistanceOhm\": 1, \"inductanceH\": 0}"))
                .containsOnlyKeys(BRANCH + ".model.capacitanceF");
    }

    @ParameterizedTest
    @ValueSource(strings = {"1e-320", "1e-300", "1e300"})
    void finiteButAbsurdFiguresNeverLeadToNotANumber(String capacitance) {
        MockHttpServletResponse response = API.send("impedance", Json.impedance(
                Json.bank(Json.of("{'kind': 'series-rlc', 'capacitanceF': " + capacitance + ", 'resistanceOhm': 1e200, 'inductanceH': 1e200}")),
                Json.grid(1e-200, 1e200, 20)));
        assertThat(response.getStatus()).isIn(200, 400);
        assertThat(Api.text(response)).doesNotContain("NaN").doesNotContain("Infinity");
    }

    @Test
    void listsOfManyWrongEntriesAreCutShort() {
        String hundreds = Arrays.toString(new int[1000]).replace("0", "\"x\"");
        String table = "{\"kind\": \"table\", \"frequencyHz\": " + hundreds + ", \"resistanceOhm\": [1, 2], \"reactanceOhm\": [1, 2]}";
        assertThat(errorsOfModel(table)).hasSizeLessThanOrEqualTo(100).containsKey(BRANCH + ".model.frequencyHz[0]");
    }
}
