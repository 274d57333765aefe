package org.stillrail.calculation;

import org.junit.jupiter.api.Test;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;
import tools.jackson.databind.JsonNode;

/** Whole answers of the API for awkward requests, against scripts that share nothing with the program but the definitions. */
class OutsideFiguresTest {

    private static final Source HARMONICS = Source.independent("200 000 harmonics summed in Python, the step of the inductance added at the kinks");
    private static final Source DENSE_GRID = Source.independent("T written out in Python on 4 000 001 frequencies from 1 mHz, crossings by Brent's method");
    private static final Source FOURIER = Source.independent("closed-loop impedance inverted from frequency to time in Python, damped Fourier integral of 2 097 152 points");

    private static final Api API = new Api();

    private static final String SHEET_BULK = "{'kind': 'datasheet', 'capacitanceF': 220e-6, 'lossTangent': 0.14, 'lossTangentFrequencyHz': 120, ";
    private static final String BULK_AND_CERAMIC = "{'branches': ["
            + "{'count': 2, 'model': {'kind': 'series-rlc', 'capacitanceF': 470e-6, 'resistanceOhm': 0.009, 'inductanceH': 3e-9}}, "
            + "{'count': 6, 'model': {'kind': 'series-rlc', 'capacitanceF': 22e-6, 'resistanceOhm': 0.003, 'inductanceH': 0.5e-9}}]}";
    private static final String EDGES =
            "{'kind': 'piecewise-linear', 'periodS': 2.5e-6, 'timeS': [0, 5e-9, 1e-6, 1.01e-6], 'currentA': [0, 5, 4, 0]}";
    private static final String GRID = "{'startHz': 100, 'stopHz': 5e6, 'points': 801}";

    @Test
    void rippleOfFourPhasesWithMountingAndSharedPath() {
        String bank = BULK_AND_CERAMIC.replace("'count': 2,", "'count': 2, 'mounting': {'resistanceOhm': 1e-3, 'inductanceH': 1e-9},")
                .replace("'count': 6,", "'count': 6, 'shared': {'resistanceOhm': 2e-4, 'inductanceH': 0.1e-9},");
        ripple("Four phases, 12 V to 3.3 V, with mounting and shared path", bank,
                "{'kind': 'buck', 'inputV': 12, 'outputV': 3.3, 'inductanceH': 0.47e-6, 'switchingHz': 600e3, 'phases': 4}",
                0.004885805, 0.00123747117);
    }

    @Test
    void rippleOfADatasheetModelThatKnowsOnlyItsLossTangent() {
        ripple("Datasheet model with a loss tangent only, edges of 5 ns", "{'branches': [{'count': 1, 'model': " + SHEET_BULK + "'inductanceH': 15e-9}}, "
                + "{'count': 1, 'model': {'kind': 'series-rlc', 'capacitanceF': 10e-6, 'resistanceOhm': 0.003, 'inductanceH': 1e-9}}]}", EDGES,
                2.309196, 0.512054597);
    }

    @Test
    void rippleOfATableOfFivePointsExtrapolated() {
        ripple("Table of one point a decade that ends at 10 MHz", "{'branches': [{'count': 1, 'model': {'kind': 'table', "
                + "'frequencyHz': [1e3, 1e4, 1e5, 1e6, 1e7], 'resistanceOhm': [0.01, 0.01, 0.01, 0.01, 0.01], "
                + "'reactanceOhm': [-1.591424, -0.159029, -0.0146589, 0.0109749, 0.125505]}}, "
                + "{'count': 1, 'model': {'kind': 'series-rlc', 'capacitanceF': 10e-6, 'resistanceOhm': 0.005, 'inductanceH': 1e-9}}]}",
                "{'kind': 'buck', 'inputV': 12, 'outputV': 3.3, 'inductanceH': 4.7e-6, 'switchingHz': 500e3}", 0.0110868221, 0.0030568463);
    }

    private static void ripple(String name, String bank, String current, double peakToPeakV, double rmsV) {
        JsonNode answer = API.answer("ripple", Json.of("{'bank': " + bank + ", 'current': " + current + "}"));
        Check.that(Topic.RIPPLE, "API, " + name + ": ripple, peak to peak").source(HARMONICS).expected("V", peakToPeakV).relative(1e-4)
                .got(answer.get("peakToPeakV").doubleValue());
        Check.that(Topic.RIPPLE, "API, " + name + ": ripple, rms").source(HARMONICS).expected("V", rmsV).relative(1e-4)
                .got(answer.get("rmsV").doubleValue());
    }

    @Test
    void loopOfFourPhasesWithDelay() {
        loop("Four phases in voltage mode with delay", BULK_AND_CERAMIC,
                voltageMode(12, 1.2, 0.47e-6, 4, "4e-7", "{'gain': 6e3, 'zerosHz': [5e3, 7e3], 'polesHz': [200e3, 400e3]}"),
                114272.0375, 87.580009, 6.46883, 2.0521803);
    }

    /** mc D' = 0.6: the sampling pole pair is hardly damped, and |T| crosses 1 three times, up as well as down. */
    @Test
    void loopOfCurrentModeNearItsSubharmonicLimit() {
        loop("Current mode with mc D' = 0.6, three crossings", BULK_AND_CERAMIC, currentMode(1, "7e5", "{'gain': 2e4, 'zerosHz': [5e3], 'polesHz': [200e3]}"),
                247152.8846, 9.9124886, 0.35952, 20.333871);
    }

    @Test
    void loopThatRingsAboveItsCrossover() {
        loop("Ringing bank, three crossings, unstable", "{'branches': ["
                + "{'count': 1, 'model': {'kind': 'series-rlc', 'capacitanceF': 470e-6, 'resistanceOhm': 0.0005, 'inductanceH': 15e-9}}, "
                + "{'count': 4, 'model': {'kind': 'series-rlc', 'capacitanceF': 10e-6, 'resistanceOhm': 0.0005, 'inductanceH': 0.3e-9}}]}",
                voltageMode(12, 1.2, 0.47e-6, 1, "4e-7", "{'gain': 2e4, 'zerosHz': [5e3, 7e3], 'polesHz': [900e3, 900e3]}"),
                664261.8638, -78.050551, 32.11371, 1.0360407);
    }

    @Test
    void loopOfADatasheetModel() {
        loop("Datasheet model of a wet electrolytic", "{'branches': [{'count': 2, 'model': " + SHEET_BULK
                + "'resistanceOhm': 0.02, 'resistanceFrequencyHz': 1e5, 'inductanceH': 15e-9}}]}",
                voltageMode(12, 3.3, 4.7e-6, 1, "4e-7", "{'gain': 3e3, 'zerosHz': [5e3, 5e3], 'polesHz': [200e3, 400e3]}")
                        .replace("'inductorResistanceOhm': 0.002", "'inductorResistanceOhm': 0.01"),
                6701.490705, 40.787509, 33.4929, 1.4610743);
    }

    private static void loop(String name, String bank, String converter, double crossoverHz, double marginDeg, double gainMarginDb, double peak) {
        JsonNode answer = API.answer("loop", Json.of("{'bank': " + bank + ", 'grid': " + GRID + ", 'converter': " + converter + "}"));
        Check.that(Topic.LOOP, "API, " + name + ": crossover with the least margin").source(DENSE_GRID).expected("Hz", crossoverHz).relative(1e-8)
                .got(answer.get("crossoverHz").doubleValue());
        Check.that(Topic.LOOP, "API, " + name + ": phase margin").source(DENSE_GRID).expected("deg", marginDeg).absolute(1e-5)
                .got(answer.get("phaseMarginDeg").doubleValue());
        Check.that(Topic.LOOP, "API, " + name + ": gain margin").source(DENSE_GRID).expected("dB", gainMarginDb).absolute(1e-3)
                .got(answer.get("gainMarginDb").doubleValue());
        Check.that(Topic.LOOP, "API, " + name + ": peak of 1 / |1 + T| on the grid").source(DENSE_GRID).expected("", peak).relative(1e-6)
                .got(answer.get("sensitivityPeak").doubleValue());
    }

    private static final String TYPE_THREE = "{'gain': 6e3, 'zerosHz': [5e3, 7e3], 'polesHz': [200e3, 400e3]}";
    private static final String STEP = "{'fromA': 2, 'toA': 22, 'slewAPerS': 20e6}";

    @Test
    void stepOfFourPhasesWithAnExactDelay() {
        step("Four phases with an exact delay of 400 ns, 2 A to 22 A", BULK_AND_CERAMIC, voltageMode(12, 1.2, 1.47e-6, 4, "4e-7", TYPE_THREE), STEP,
                0.099587, 0.0377127, 1e-5);
    }

    @Test
    void stepOfALoadThatIsSlowerThanTheLoop() {
        step("The same with a release of 22 A to 2 A at 0.2 A/us, slower than the loop", BULK_AND_CERAMIC,
                voltageMode(12, 1.2, 1.47e-6, 4, "4e-7", TYPE_THREE), "{'fromA': 22, 'toA': 2, 'slewAPerS': 2e5}", 0.01543, 0.0207542, 1e-5);
    }

    @Test
    void stepOfTwoPhasesInCurrentMode() {
        step("Two phases in current mode, 2 A to 22 A", BULK_AND_CERAMIC, currentMode(2, "8e6", "{'gain': 1e4, 'zerosHz': [5e3], 'polesHz': [200e3]}"), STEP,
                0.18942632, 0.009142862, 1e-5);
    }

    /** Through rational fits within 1 % of |Z|; the contract allows 1 %. */
    @Test
    void stepOfDatasheetModels() {
        step("Two datasheet models through their fits, 2 A to 22 A", "{'branches': [{'count': 3, 'model': " + SHEET_BULK
                + "'resistanceOhm': 0.02, 'resistanceFrequencyHz': 1e5, 'inductanceH': 5e-9}}, {'count': 4, 'model': {'kind': 'datasheet', "
                + "'capacitanceF': 22e-6, 'lossTangent': 0.05, 'lossTangentFrequencyHz': 1e3, 'resistanceOhm': 0.003, 'resistanceFrequencyHz': 1e6, "
                + "'inductanceH': 0.5e-9}}]}", voltageMode(12, 1.2, 0.47e-6, 1, "2e-7", TYPE_THREE), STEP, 0.15144689, 0.029809992, 0.005);
    }

    private static void step(String name, String bank, String converter, String load, double undershootV, double overshootV, double tolerance) {
        JsonNode answer = API.answer("step", Json.of("{'bank': " + bank + ", 'converter': " + converter + ", 'load': " + load
                + ", 'durationS': 300e-6, 'dutyLimits': false}"));
        Check.that(Topic.STEP, "API, " + name + ": undershoot, overshoot").source(FOURIER).expected("V", undershootV, overshootV).relativeToLargest(tolerance)
                .got(answer.get("undershootV").doubleValue(), answer.get("overshootV").doubleValue());
    }

    private static String voltageMode(double inputV, double outputV, double inductanceH, int phases, String delayS, String compensator) {
        return "{'inputV': " + inputV + ", 'outputV': " + outputV + ", 'inductanceH': " + inductanceH + ", 'inductorResistanceOhm': 0.002, "
                + "'switchingHz': 500e3, 'phases': " + phases + ", 'control': {'kind': 'voltage-mode', 'rampV': 1.5, 'delayS': " + delayS
                + ", 'compensator': " + compensator + "}}";
    }

    private static String currentMode(int phases, String slopeAPerS, String compensator) {
        return "{'inputV': 12, 'outputV': 5.5, 'inductanceH': 1e-6, 'inductorResistanceOhm': 0.002, 'switchingHz': 500e3, 'phases': " + phases
                + ", 'control': {'kind': 'current-mode', 'senseOhm': 5e-3, 'slopeAPerS': " + slopeAPerS + ", 'compensator': " + compensator + "}}";
    }
}
