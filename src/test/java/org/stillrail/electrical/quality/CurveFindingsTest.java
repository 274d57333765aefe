package org.stillrail.electrical.quality;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.capacitor.ValidRange;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.electrical.curve.Thinning;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

/** Each fault is put into an exact R-L-C curve by hand, so what must be found, and where, is known. */
class CurveFindingsTest {

    private static final SeriesRlc PART = new SeriesRlc(22e-6, 4e-3, 1.2e-9);
    private static final FrequencyGrid FINE = FrequencyGrid.logSpaced(100, 10e6, 301);

    @Test
    void aCleanSweepHasNoFindings() {
        assertThat(CurveFindings.of(curve(FINE, i -> 0), 20)).isEmpty();
    }

    @Test
    void negativeResistanceIsNamedWithItsSpan() {
        Curve curve = curve(FINE, i -> i >= 100 && i <= 103 ? -0.02 : 0);
        Finding finding = only(curve, FindingKind.NEGATIVE_RESISTANCE);
        assertThat(finding.where()).containsExactly(new FrequencySpan(FINE.hz(100), FINE.hz(103)));
        assertThat(finding.text()).contains("4 of 301 points");
        assertThat(finding.advice()).isNotBlank();
    }

    @Test
    void aGapAndTooFewPointsAreToldApart() {
        double[] hz = Arrays.stream(FINE.toArray()).filter(f -> f < 5e3 || f > 20e3).toArray();
        Finding gap = only(curve(FrequencyGrid.of(hz), i -> 0), FindingKind.GAP);
        assertThat(gap.where()).hasSize(1);
        assertThat(gap.where().get(0).fromHz()).isLessThan(5e3);
        assertThat(gap.where().get(0).toHz()).isGreaterThan(20e3);

        Curve coarse = curve(FrequencyGrid.logSpaced(100, 10e6, 91), i -> 0);
        assertThat(kinds(coarse)).contains(FindingKind.FEW_POINTS).doesNotContain(FindingKind.GAP);
        Curve enough = curve(FrequencyGrid.logSpaced(100, 10e6, 101), i -> 0);
        assertThat(kinds(enough)).doesNotContain(FindingKind.FEW_POINTS);
    }

    @Test
    void noiseIsFoundAboveItsLimitAndNotBelow() {
        assertThat(kinds(noisy(0.03))).contains(FindingKind.NOISE);
        assertThat(kinds(noisy(0.002))).doesNotContain(FindingKind.NOISE, FindingKind.KRAMERS_KRONIG);
    }

    @Test
    void aStepInTheResistanceBreaksKramersKronig() {
        // A range switch: the resistance jumps, the reactance does not.
        Curve curve = curve(FINE, i -> i > 150 ? 0.08 : 0);
        Finding finding = only(curve, FindingKind.KRAMERS_KRONIG);
        assertThat(finding.where()).anyMatch(span -> span.fromHz() <= FINE.hz(155) && span.toHz() >= FINE.hz(146));
    }

    @Test
    void driftIsFoundWhereTheRepeatDiffers() {
        Curve sweep = curve(FINE, i -> 0);
        Curve same = curve(FrequencyGrid.logSpaced(200, 5e6, 171), i -> 0);
        Curve other = new Curve(FINE, scaled(sweep.reals(), 1.1), scaled(sweep.imaginaries(), 1.1));
        assertThat(RepeatFindings.drift(sweep, same, "a.s2p")).isEmpty();
        assertThat(RepeatFindings.drift(sweep, other, "a.s2p").orElseThrow().text()).contains("a.s2p").contains("9.09 %");
    }

    @Test
    void calibrationIsStaleAfterADay() {
        LocalDate day = LocalDate.of(2026, 3, 10);
        assertThat(CalibrationFinding.of(day.minusDays(1), day)).isEmpty();
        assertThat(CalibrationFinding.of(null, day)).isEmpty();
        assertThat(CalibrationFinding.of(day.minusDays(2), day).orElseThrow().text()).contains("2 days old");
        assertThat(CalibrationFinding.of(day.plusDays(1), day)).isPresent();
    }

    @Test
    void figuresAreThoseOfTheClosedForm() {
        List<SweepFigure> figures = SweepFigures.of(PART, new ValidRange(50, 100e6), 120, hz -> 1e-3);
        double resonance = 1 / (2 * Math.PI * Math.sqrt(22e-6 * 1.2e-9));
        // -1/(wX) of the whole part is C / (1 - (f/f0)^2), worked out by hand.
        Source closedForm = Source.independent("closed form of a series R-L-C by hand");
        Check.that(Topic.QUALITY, "C of a sweep at 120 Hz, -1 / (w X) of a series R-L-C: C / (1 - (f / f0)^2)").source(closedForm)
                .expected("F", 22e-6 / (1 - Math.pow(120 / resonance, 2))).absolute(1e-15).got(figures.get(0).value());
        assertThat(figures.get(2).value()).isEqualTo(4e-3);
        assertThat(figures.get(2).uncertainty()).isEqualTo(1e-3);
        assertThat(figures.get(4).value()).isCloseTo(1.2e-9, within(1e-15));
        Check.that(Topic.QUALITY, "Self-resonance of a sweep: 1 / (2 pi sqrt(L C))").source(closedForm).expected("Hz", resonance).absolute(1e-3)
                .got(figures.get(5).value());
        // dX/df at resonance is 4 pi L.
        Check.that(Topic.QUALITY, "Uncertainty of the self-resonance for 1 mohm: 1 mohm / (4 pi L)").source(closedForm)
                .expected("Hz", 1e-3 / (4 * Math.PI * 1.2e-9)).absolute(1).got(figures.get(5).uncertainty());
    }

    @Test
    void whatTheSweepDoesNotReachIsNotGiven() {
        List<SweepFigure> figures = SweepFigures.of(PART, new ValidRange(500, 50e3), 120, null);
        assertThat(figures.get(0).value()).isNull();
        assertThat(figures.get(1).value()).isNotNull();
        assertThat(figures.get(2).value()).isNull();
        assertThat(figures.get(5).value()).isNull();
    }

    @Test
    void theSheetIsHeldAgainstTheFigureWithItsUncertainty() {
        SweepFigure c = new SweepFigure("C at 1 kHz", "F", 17e-6, 1e3, 0.1e-6);
        assertThat(new SheetFindings().capacitance(c, 17.6e-6, 26.4e-6).findings()).hasSize(1);
        assertThat(new SheetFindings().capacitance(c, 17.05e-6, 26.4e-6).findings()).isEmpty();
        SweepFigure esr = new SweepFigure("ESR at 100 kHz", "ohm", 6e-3, 100e3, 0.5e-3);
        assertThat(new SheetFindings().maximum(esr, 5e-3).findings()).hasSize(1);
        assertThat(new SheetFindings().maximum(esr, 5.6e-3).findings()).isEmpty();
        SweepFigure unknown = new SweepFigure("ESR at 100 kHz", "ohm", 6e-3, 100e3, 7e-3);
        assertThat(new SheetFindings().maximum(unknown, 1e-3).findings()).isEmpty();
    }

    @Test
    void thinningKeepsEveryPeak() {
        double[] hz = FrequencyGrid.logSpaced(1e3, 1e6, 100_000).toArray();
        double[] r = new double[hz.length];
        Arrays.fill(r, 1);
        r[31_234] = 50;
        r[77_777] = 0.01;
        Curve thinned = Thinning.keepingPeaks(new Curve(FrequencyGrid.of(hz), r, new double[hz.length]), 2000);
        assertThat(thinned.size()).isLessThanOrEqualTo(2000);
        assertThat(thinned.reals()).contains(50, 0.01);
        assertThat(thinned.grid().startHz()).isEqualTo(hz[0]);
        assertThat(thinned.grid().stopHz()).isEqualTo(hz[hz.length - 1]);
    }

    private static Finding only(Curve curve, FindingKind kind) {
        List<Finding> found = CurveFindings.of(curve, 20).stream().filter(finding -> finding.kind() == kind).toList();
        assertThat(found).as(kind.label()).hasSize(1);
        return found.get(0);
    }

    private static List<FindingKind> kinds(Curve curve) {
        return CurveFindings.of(curve, 20).stream().map(Finding::kind).toList();
    }

    private static Curve curve(FrequencyGrid grid, IntToDoubleFunction addedOhm) {
        double[] r = new double[grid.size()];
        double[] x = new double[grid.size()];
        PART.addImpedanceTo(grid, r, x);
        for (int i = 0; i < r.length; i++) {
            r[i] += addedOhm.applyAsDouble(i);
        }
        return new Curve(grid, r, x);
    }

    private static Curve noisy(double share) {
        Random random = new Random(7);
        Curve clean = curve(FINE, i -> 0);
        double[] r = clean.reals();
        double[] x = clean.imaginaries();
        for (int i = 0; i < r.length; i++) {
            double size = share * clean.magnitude(i);
            // The resistance stays positive, so that only the noise is found.
            r[i] = Math.abs(r[i] + size * random.nextGaussian());
            x[i] += size * random.nextGaussian();
        }
        return new Curve(FINE, r, x);
    }

    private static double[] scaled(double[] values, double factor) {
        return Arrays.stream(values).map(value -> factor * value).toArray();
    }
}
