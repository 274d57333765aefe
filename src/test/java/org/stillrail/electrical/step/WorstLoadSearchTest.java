package org.stillrail.electrical.step;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.Branch;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.converter.Compensator;
import org.stillrail.electrical.converter.Converter;
import org.stillrail.electrical.converter.PowerStage;
import org.stillrail.electrical.converter.VoltageMode;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

class WorstLoadSearchTest {

    private static final double DURATION = 400e-6;

    @Test
    void aSecondOrderResponseAddsUpAsAGeometricSeries() {
        // The deviation is the impulse response of a damped oscillation: each swing is rho = exp(-pi / sqrt(4 Q^2 - 1)) times the last,
        // so half the total variation is the first peak times 1 / (1 - rho).
        double q = 2;
        double w2 = 2 * Math.PI * 20e3;
        double resistance = 1 / (w2 * 100e-6);
        Converter converter = new Converter(new PowerStage(12, 1.2, 1e-15, resistance, 500e3, 1), new VoltageMode(12, 0),
                new Compensator(q * q * w2, List.of(), List.of()));
        WorstLoad worst = WorstLoadSearch.of(bank(new SeriesRlc(100e-6, 0, 0)), converter, new Load(0, 3, 1e12), DURATION, new SeriesEquivalent());
        double rho = Math.exp(-Math.PI / Math.sqrt(4 * q * q - 1));
        Check.that(Topic.STEP, "Worst load pattern over the single step, second-order response of Q 2: 1 / (1 - exp(-pi / sqrt(4 Q^2 - 1)))")
                .source(Source.fromMemory("derived: half the total variation of a damped oscillation is a geometric series"))
                .expected("", 1 / (1 - rho)).absolute(1e-4).got(worst.deviationV() / worst.singleStepV());
    }

    @Test
    void thePatternKeepsItsLimitsAndDoesWhatIsClaimed() {
        Bank bank = bank(new SeriesRlc(470e-6, 9e-3, 0), new SeriesRlc(88e-6, 0.8e-3, 0));
        for (double slew : new double[] {1e9, 1e7, 1e6, 3e5}) {
            Load load = new Load(2, 12, slew);
            WorstLoad worst = WorstLoadSearch.of(bank, converter(), load, DURATION, new SeriesEquivalent());
            double[] timeS = worst.course().timeS();
            double[] loadA = worst.course().loadA();
            for (int i = 0; i < timeS.length; i++) {
                assertTrue(loadA[i] > 2 - 1e-9 && loadA[i] < 12 + 1e-9);
                if (i > 0) {
                    assertTrue(Math.abs(loadA[i] - loadA[i - 1]) <= slew * (timeS[i] - timeS[i - 1]) * (1 + 1e-6) + 1e-9);
                }
            }
            double[] ramp = rampResponse(bank);
            double replayed = deviation(timeS, loadA, ramp, worst.deviationAtS());
            Check.that(Topic.STEP, "Worst load pattern at " + slew + " A/s, replayed through the ramp response")
                    .source(Source.independent("superposition of ramp responses at the pattern's corners")).expected("V", -worst.deviationV()).relative(2e-3)
                    .got(replayed);
            assertTrue(worst.deviationV() >= worst.singleStepV() * (1 - 1e-6));
        }
    }

    /** With a jump of the response at the end of the edge, which only an edge of the pattern's own can meet. */
    @Test
    void thePatternRunAsALoadDoesWhatIsClaimedOfAnInductiveBankToo() {
        Bank bank = bank(new SeriesRlc(470e-6, 9e-3, 3e-9), new SeriesRlc(88e-6, 0.8e-3, 0.25e-9));
        for (double slew : new double[] {2e8, 1e7, 1e6}) {
            Load load = new Load(2, 12, slew);
            WorstLoad worst = WorstLoadSearch.of(bank, converter(), load, DURATION, new SeriesEquivalent());
            StepResult run = LoadStep.along(worst.course(),
                    StepRequest.of(bank, converter(), load, 1.1 * worst.course().endS()).unlimited(), new SeriesEquivalent());
            Check.that(Topic.STEP, "Worst load pattern of an inductive bank at " + slew + " A/s, run as a load")
                    .source(Source.independent("simulation of the drawn pattern, without superposition")).expected("V", worst.deviationV()).relative(0.01)
                    .got(run.undershootV());
        }
    }

    /** The output rests lower at the higher current, so all falls of the response count and not half of its variation. */
    @Test
    void withALoadLineThePatternFallsFromTheRestAtTheLowerCurrent() {
        Bank bank = bank(new SeriesRlc(470e-6, 9e-3, 0), new SeriesRlc(88e-6, 0.8e-3, 0));
        double loadLineOhm = 2e-3;
        Converter drooping = converter().withLoadLineOhm(loadLineOhm);
        for (double slew : new double[] {1e7, 3e5}) {
            Load load = new Load(2, 12, slew);
            WorstLoad worst = WorstLoadSearch.of(bank, drooping, load, DURATION, new SeriesEquivalent());
            StepResult run = LoadStep.along(worst.course(),
                    StepRequest.of(bank, drooping, load, 1.1 * worst.course().endS()).unlimited(), new SeriesEquivalent());
            assertTrue(worst.warnings().isEmpty(), worst.warnings()::toString);
            assertTrue(worst.deviationV() > 10 * loadLineOhm);
            Check.that(Topic.STEP, "Worst load pattern with a load line of 2 mohm at " + slew + " A/s, run as a load")
                    .source(Source.independent("simulation of the drawn pattern, without superposition")).expected("V", worst.deviationV()).relative(0.01)
                    .got(run.undershootV() + loadLineOhm * (worst.course().fromA() - 2));
        }
    }

    @Test
    void aCourseOfTwoCornersIsTheStep() {
        Bank bank = bank(new SeriesRlc(470e-6, 9e-3, 0));
        Load load = new Load(2, 12, 1e7);
        StepRequest request = StepRequest.of(bank, converter(), load, DURATION);
        StepResult along = LoadStep.along(new LoadCourse(new double[] {0, 1e-6, 50e-6}, new double[] {2, 12, 12}), request, new SeriesEquivalent());
        assertEquals(LoadStep.of(request).undershootV(), along.undershootV(), 1e-7);
        assertThrows(IllegalArgumentException.class, () -> new LoadCourse(new double[] {0, 0}, new double[] {1, 2}));
        assertThrows(IllegalArgumentException.class, () -> new LoadCourse(new double[] {1, 2}, new double[] {1, 2}));
    }

    @Test
    void noRandomPatternWithinTheLimitsDoesMore() {
        Bank bank = bank(new SeriesRlc(470e-6, 9e-3, 0), new SeriesRlc(88e-6, 0.8e-3, 0));
        double[] ramp = rampResponse(bank);
        Random random = new Random(7);
        for (double slew : new double[] {1e7, 1e6, 3e5}) {
            double worst = WorstLoadSearch.of(bank, converter(), new Load(2, 12, slew), DURATION, new SeriesEquivalent()).deviationV();
            for (int run = 0; run < 200; run++) {
                List<double[]> corners = new ArrayList<>(List.of(new double[] {0, 2 + 10 * random.nextInt(2)}));
                while (corners.get(corners.size() - 1)[0] < DURATION * 0.9) {
                    double[] last = corners.get(corners.size() - 1);
                    double target = random.nextInt(3) == 0 ? 2 + 10 * random.nextDouble() : 2 + 10 * random.nextInt(2);
                    double at = last[0] + 1e-9 + Math.abs(target - last[1]) / slew;
                    corners.add(new double[] {at, target});
                    corners.add(new double[] {at + random.nextDouble() * 15e-6, target});
                }
                double[] timeS = corners.stream().mapToDouble(corner -> corner[0]).toArray();
                double[] loadA = corners.stream().mapToDouble(corner -> corner[1]).toArray();
                for (double at = 1e-6; at < DURATION; at += 1e-6) {
                    assertTrue(Math.abs(deviation(timeS, loadA, ramp, at)) < worst * 1.002);
                }
            }
        }
    }

    @Test
    void theEdgeOfAnInductiveBankCounts() {
        Bank bank = bank(new SeriesRlc(470e-6, 9e-3, 3e-9), new SeriesRlc(88e-6, 0.8e-3, 0.25e-9));
        WorstLoad worst = WorstLoadSearch.of(bank, converter(), new Load(2, 12, 2e8), DURATION, new SeriesEquivalent());
        double jump = 2e8 / (1 / 3e-9 + 1 / 0.25e-9 + 1 / 0.33e-6);
        assertTrue(worst.deviationV() > jump + 0.05, worst.deviationV() + " V with a jump of " + jump + " V");
        double[] loadA = worst.course().loadA();
        assertEquals(12, loadA[loadA.length - 1], 1e-9);
    }

    private static Converter converter() {
        return new Converter(new PowerStage(12, 1.2, 0.33e-6, 1e-3, 500e3, 1), new VoltageMode(1.5, 0), new Compensator(6e4, List.of(6e3), List.of(250e3)));
    }

    /** Deviation to a load that rises without end at 1 A/s, at every 10 ns. */
    private static double[] rampResponse(Bank bank) {
        return LoadStep.of(StepRequest.of(bank, converter(), new Load(0, DURATION, 1), DURATION).unlimited().withSamples(40_001)).deviationV();
    }

    /** Superposition of ramps at the corners of a piecewise-linear load. */
    private static double deviation(double[] timeS, double[] loadA, double[] ramp, double atS) {
        double sum = 0;
        double slope = 0;
        for (int i = 0; i < timeS.length && timeS[i] < atS; i++) {
            double next = i + 1 < timeS.length ? (loadA[i + 1] - loadA[i]) / (timeS[i + 1] - timeS[i]) : 0;
            double position = (atS - timeS[i]) / 10e-9;
            int at = Math.min((int) position, ramp.length - 2);
            double fraction = Math.min(position - at, 1);
            sum += (next - slope) * (ramp[at] + fraction * (ramp[at + 1] - ramp[at]));
            slope = next;
        }
        return sum;
    }

    private static Bank bank(SeriesRlc... parts) {
        return new Bank(Arrays.stream(parts).map(part -> new Branch("c", 1, part, SeriesPath.NONE, SeriesPath.NONE)).toList());
    }
}
