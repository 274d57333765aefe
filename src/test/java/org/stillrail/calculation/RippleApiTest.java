package org.stillrail.calculation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;

/** {@code ripple} against the closed form of a triangular current in R and C in series. */
class RippleApiTest {

    private static final Api API = new Api();

    private static String request(String bank, String current, String more) {
        return Json.of("{'bank': " + bank + ", 'current': " + current + more + "}");
    }

    private static String buck(double inputV, double outputV, double inductanceH, double switchingHz) {
        return Json.of("{'kind': 'buck', 'inputV': " + inputV + ", 'outputV': " + outputV + ", 'inductanceH': " + inductanceH
                + ", 'switchingHz': " + switchingHz + "}");
    }

    /**
     * Rows BR-01 of the references: peak-to-peak voltage of a triangle of dI in R and C, derived from the waveform (from
     * memory). The inductance is chosen to give the row's dI = Vo (1 - D) / (L f) at an input of 10 V.
     */
    @ParameterizedTest
    @CsvSource({
        "2, 500000, 0.25, 0.0001, 0, 0.005",
        "2, 500000, 0.25, 0.0001, 0.001, 0.00526666667",
        "2, 500000, 0.25, 0.0001, 0.0025, 0.00666666667",
        "2, 500000, 0.25, 0.0001, 0.005, 0.0104166667",
        "2, 500000, 0.25, 0.0001, 0.01, 0.02",
        "3, 300000, 0.5, 4.7e-05, 0.008, 0.0320101447",
        "1, 1000000, 0.1, 2.2e-05, 0.004, 0.00730919192"
    })
    void triangleInResistanceAndCapacitanceHasItsClosedForm(
            double swingA, double switchingHz, double duty, double capacitanceF, double resistanceOhm, double expectedV) {
        double outputV = 10 * duty;
        double inductanceH = outputV * (1 - duty) / (swingA * switchingHz);
        JsonNode answer = API.answer("ripple", request(
                Json.bank(Json.rlc(capacitanceF, resistanceOhm, 0)), buck(10, outputV, inductanceH, switchingHz), ""));
        assertThat(answer.get("inductorPeakToPeakA").doubleValue()).isCloseTo(swingA, Percentage.withPercentage(1e-9));
        assertThat(answer.get("peakToPeakV").doubleValue()).isCloseTo(expectedV, Percentage.withPercentage(0.01));
    }

    /** All current goes through one branch: I rms of a triangle is dI / sqrt(12), and heat is I^2 R, path by path. */
    @Test
    void heatIsSplitByWhereTheResistanceIs() {
        String bank = Json.of("{'branches': [{'label': 'a', 'count': 2, 'model': " + Json.rlc(1e-4, 0.01, 0) + ","
                + "'mounting': {'resistanceOhm': 0.002}, 'shared': {'resistanceOhm': 0.003}}]}");
        JsonNode answer = API.answer("ripple", request(bank, buck(12, 3.3, 4.7e-6, 5e5), ""));
        double rms = 3.3 * (1 - 3.3 / 12) / (4.7e-6 * 5e5) / Math.sqrt(12);
        JsonNode branch = answer.get("branches").get(0);
        assertThat(branch.get("rmsA").doubleValue()).isCloseTo(rms, Percentage.withPercentage(0.01));
        assertThat(branch.get("perPartRmsA").doubleValue()).isCloseTo(rms / 2, Percentage.withPercentage(0.01));
        assertThat(branch.get("perPartDissipationW").doubleValue()).isCloseTo(rms * rms / 4 * 0.01, Percentage.withPercentage(0.01));
        assertThat(branch.get("mountingDissipationW").doubleValue()).isCloseTo(rms * rms / 2 * 0.002, Percentage.withPercentage(0.01));
        assertThat(branch.get("sharedDissipationW").doubleValue()).isCloseTo(rms * rms * 0.003, Percentage.withPercentage(0.01));
    }

    @Test
    void waveformCoversOnePeriodWithZeroMean() {
        JsonNode answer = API.answer("ripple", request(Json.bank(Json.rlc(1e-4, 0.01, 0)), buck(12, 3.3, 4.7e-6, 5e5), ", 'samples': 400"));
        double[] time = Api.numbers(answer.get("timeS"));
        double[] voltage = Api.numbers(answer.get("voltageV"));
        assertThat(time).hasSize(400);
        assertThat(voltage).hasSize(400);
        assertThat(time[0]).isZero();
        assertThat(time[399]).isCloseTo(2e-6 * 399 / 400, within(1e-12));
        assertThat(Arrays.stream(voltage).average().orElseThrow()).isCloseTo(0, within(1e-5));
    }

    @Test
    void samplesAreTwoThousandUnlessSaid() {
        JsonNode answer = API.answer("ripple", request(Json.bank(Json.rlc(1e-4, 0.01, 0)), buck(12, 3.3, 4.7e-6, 5e5), ""));
        assertThat(answer.get("timeS")).hasSize(2000);
        assertThat(answer.propertyNames()).containsExactlyInAnyOrder(
                "peakToPeakV", "rmsV", "timeS", "voltageV", "inductorPeakToPeakA", "branches", "warnings");
        assertThat(answer.get("branches").get(0).propertyNames()).containsExactlyInAnyOrder("label", "rmsA", "perPartRmsA",
                "perPartDissipationW", "mountingDissipationW", "sharedDissipationW");
        assertThat(answer.get("warnings")).isEmpty();
    }

    @Test
    void mostSamplesAreTakenAndOneMoreIsNot() {
        String current = buck(12, 3.3, 4.7e-6, 5e5);
        String bank = Json.bank(Json.rlc(1e-4, 0.01, 0));
        assertThat(API.answer("ripple", request(bank, current, ", 'samples': " + Limits.SAMPLES)).get("timeS")).hasSize(Limits.SAMPLES);
        assertThat(API.errors("ripple", request(bank, current, ", 'samples': " + (Limits.SAMPLES + 1)))).containsOnlyKeys("samples");
    }

    /** A triangle by its corners is the same current as the buck's, with its mean taken out. */
    @Test
    void cornersGiveTheSameRippleAsTheConverter() {
        String bank = Json.bank(Json.rlc(1e-4, 0.005, 1e-9));
        double swing = 3 * 0.75 / (4.5e-6 * 5e5);
        JsonNode byConverter = API.answer("ripple", request(bank, buck(12, 3, 4.5e-6, 5e5), ""));
        JsonNode byCorners = API.answer("ripple", request(bank, Json.of("{'kind': 'piecewise-linear', 'periodS': 2e-6, "
                + "'timeS': [0, 5e-7], 'currentA': [7, " + (7 + swing) + "]}"), ""));
        assertThat(byCorners.get("peakToPeakV").doubleValue())
                .isCloseTo(byConverter.get("peakToPeakV").doubleValue(), Percentage.withPercentage(1e-6));
        assertThat(byCorners.get("inductorPeakToPeakA").isNull()).isTrue();
    }

    @Test
    void shortTableWarnsOfItsExtrapolatedInductance() {
        String table = Json.of("{'kind': 'table', 'frequencyHz': [1000, 1000000], 'resistanceOhm': [0.01, 0.01], 'reactanceOhm': [-1, -0.001]}");
        JsonNode answer = API.answer("ripple", request(Json.bank(table), buck(12, 3.3, 4.7e-6, 5e5), ""));
        assertThat(answer.get("warnings").toString()).contains("20 times the switching frequency").contains("ESL");
    }
}
