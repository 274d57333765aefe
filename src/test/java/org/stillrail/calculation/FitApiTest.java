package org.stillrail.calculation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

/** {@code fit}: a table of a known circuit comes back as a function that gives the same impedance. */
class FitApiTest {

    private static final Api API = new Api();

    @Test
    void answerReproducesTheTableItWasMadeFrom() {
        int n = 121;
        double[] hz = new double[n];
        double[] r = new double[n];
        double[] x = new double[n];
        for (int i = 0; i < n; i++) {
            hz[i] = Math.pow(10, 2 + i / 20.0);
            double w = 2 * Math.PI * hz[i];
            // 0.01 ohm + 2 nH + 22 uF, and 0.05 ohm with 10 nH in parallel, all in series.
            double q = w * 10e-9 / 0.05;
            r[i] = 0.01 + 0.05 * q * q / (1 + q * q);
            x[i] = w * 2e-9 - 1 / (w * 22e-6) + 0.05 * q / (1 + q * q);
        }
        JsonNode answer = API.answer("fit", Json.of("{'model': {'kind': 'table', 'frequencyHz': " + Arrays.toString(hz)
                + ", 'resistanceOhm': " + Arrays.toString(r) + ", 'reactanceOhm': " + Arrays.toString(x) + "}}"));
        assertThat(answer.propertyNames()).containsExactlyInAnyOrder("of", "polesRadPerS", "residues", "constant", "proportional",
                "worstRelativeErrorPercent", "rmsRelativeErrorPercent", "worstResistanceErrorPercent", "passive", "stable", "warnings");
        assertThat(answer.get("of").stringValue()).isEqualTo("impedance");
        assertThat(answer.get("stable").booleanValue()).isTrue();
        assertThat(answer.get("passive").booleanValue()).isTrue();
        assertThat(answer.get("residues")).hasSameSizeAs(answer.get("polesRadPerS"));
        double worst = 0;
        for (int i = 0; i < n; i++) {
            double[] z = evaluate(answer, 2 * Math.PI * hz[i]);
            worst = Math.max(worst, 100 * Math.hypot(z[0] - r[i], z[1] - x[i]) / Math.hypot(r[i], x[i]));
        }
        assertThat(worst).isLessThan(1);
        assertThat(answer.get("worstRelativeErrorPercent").doubleValue()).isBetween(worst * 0.99 - 1e-9, worst * 1.01 + 1e-9);
    }

    /** {@code constant + j w proportional + sum of residue / (j w - pole)}. */
    private static double[] evaluate(JsonNode fit, double w) {
        double re = fit.get("constant").doubleValue();
        double im = w * fit.get("proportional").doubleValue();
        for (int k = 0; k < fit.get("polesRadPerS").size(); k++) {
            JsonNode pole = fit.get("polesRadPerS").get(k);
            JsonNode residue = fit.get("residues").get(k);
            double a = -pole.get("re").doubleValue();
            double b = w - pole.get("im").doubleValue();
            double rr = residue.get("re").doubleValue();
            double ri = residue.get("im").doubleValue();
            re += (rr * a + ri * b) / (a * a + b * b);
            im += (ri * a - rr * b) / (a * a + b * b);
        }
        return new double[] {re, im};
    }

    @Test
    void orderCanBeLimited() {
        assertThat(API.errors("fit", Json.of("{'model': {'kind': 'table', 'frequencyHz': [1, 2], 'resistanceOhm': [1, 1], "
                + "'reactanceOhm': [1, 1]}, 'maxOrder': 0}"))).containsKey("maxOrder");
    }
}
