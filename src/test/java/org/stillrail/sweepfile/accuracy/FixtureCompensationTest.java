package org.stillrail.sweepfile.accuracy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.function.DoubleFunction;
import org.junit.jupiter.api.Test;
import org.stillrail.electrical.curve.Complex;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

/** A fixture of known elements is put around a known part with plain circuit theory, and must come off again. */
class FixtureCompensationTest {

    private static final FrequencyGrid GRID = FrequencyGrid.logSpaced(1e3, 1e7, 81);
    /** Coarser and wider than the measured one. */
    private static final FrequencyGrid FIXTURE_GRID = FrequencyGrid.logSpaced(1e2, 1e8, 31);

    private static final DoubleFunction<Complex> PART = hz -> new Complex(0.02, w(hz) * 2e-9 - 1 / (w(hz) * 10e-6));
    private static final DoubleFunction<Complex> SERIES = hz -> new Complex(0.05, w(hz) * 20e-9);
    private static final DoubleFunction<Complex> SHUNT = hz -> new Complex(1e-7, w(hz) * 5e-12).reciprocal();

    @Test
    void aShortTakesOffASeriesResidue() {
        Curve measured = curve(GRID, hz -> PART.apply(hz).plus(SERIES.apply(hz)));
        assertPart("Short takes off a series residue", FixtureCompensation.byShort(measured, curve(GRID, SERIES)), 1e-12);
    }

    /** Looking in: series arm, then shunt arm beside the part. */
    @Test
    void openAndShortTakeOffASeriesAndAShuntArm() {
        Curve measured = curve(GRID, hz -> SERIES.apply(hz).plus(parallel(SHUNT.apply(hz), PART.apply(hz))));
        Curve open = curve(GRID, hz -> SERIES.apply(hz).plus(SHUNT.apply(hz)));
        assertPart("Open and short take off a series and a shunt arm", FixtureCompensation.byOpenShort(measured, open, curve(GRID, SERIES)), 1e-9);
    }

    /** Two more arms, which open and short alone cannot take off. */
    @Test
    void aLoadTakesOffAnyFixture() {
        DoubleFunction<Complex> standard = hz -> new Complex(50, w(hz) * 1e-9);
        DoubleFunction<Complex> nothing = hz -> new Complex(1e15, 0);
        DoubleFunction<Complex> shorted = hz -> Complex.ZERO;
        Curve measured = curve(GRID, inFixture(PART));
        Curve compensated = FixtureCompensation.byOpenShortLoad(measured, curve(GRID, inFixture(nothing)), curve(GRID, inFixture(shorted)),
                curve(GRID, inFixture(standard)), curve(GRID, standard));
        assertPart("Open, short and load take off four arms", compensated, 1e-6);
    }

    @Test
    void sweepsOfTheFixtureMayHaveOtherFrequencies() {
        Curve measured = curve(GRID, hz -> SERIES.apply(hz).plus(parallel(SHUNT.apply(hz), PART.apply(hz))));
        Curve open = curve(FIXTURE_GRID, hz -> SERIES.apply(hz).plus(SHUNT.apply(hz)));
        Curve compensated = FixtureCompensation.byOpenShort(measured, open, curve(FIXTURE_GRID, SERIES));
        // Five points a decade: the residue is interpolated to a per cent or so of itself, 1.26 ohm at the upper end.
        for (int i = 0; i < GRID.size(); i++) {
            Complex truth = PART.apply(GRID.hz(i));
            assertThat(new Complex(compensated.real(i), compensated.imaginary(i)).minus(truth).magnitude())
                    .isLessThan(0.03 * SERIES.apply(GRID.hz(i)).magnitude());
        }
    }

    @Test
    void aFixtureThatWasNotMeasuredFarEnoughIsRefused() {
        Curve measured = curve(GRID, PART);
        Curve narrow = curve(FrequencyGrid.logSpaced(1e4, 1e7, 11), SERIES);
        assertThatIllegalArgumentException().isThrownBy(() -> FixtureCompensation.byShort(measured, narrow))
                .withMessageContaining("short sweep covers 10000.0 Hz to 1.0E7 Hz");
    }

    @Test
    void aPartThatIsTheOpenIsRefused() {
        Curve open = curve(GRID, SHUNT);
        assertThatIllegalArgumentException().isThrownBy(() -> FixtureCompensation.byOpenShort(open, open, curve(GRID, SERIES)))
                .withMessageContaining("cannot be told from the fixture");
    }

    private static DoubleFunction<Complex> inFixture(DoubleFunction<Complex> part) {
        return hz -> parallel(new Complex(2e-6, w(hz) * 8e-12).reciprocal(),
                SERIES.apply(hz).plus(parallel(SHUNT.apply(hz), new Complex(0.01, w(hz) * 1e-9).plus(part.apply(hz)))));
    }

    private static void assertPart(String name, Curve compensated, double tolerance) {
        for (int i = 0; i < GRID.size(); i++) {
            Complex truth = PART.apply(GRID.hz(i));
            Check.that(Topic.FILES, name + ": error of Z over |Z|").source(Source.independent("known part in a fixture of known elements, circuit theory"))
                    .expected("the part at 81 frequencies").absolute(tolerance)
                    .compare("", 0, new Complex(compensated.real(i), compensated.imaginary(i)).minus(truth).magnitude() / truth.magnitude());
        }
    }

    private static Curve curve(FrequencyGrid grid, DoubleFunction<Complex> impedance) {
        double[] r = new double[grid.size()];
        double[] x = new double[grid.size()];
        for (int i = 0; i < r.length; i++) {
            Complex z = impedance.apply(grid.hz(i));
            r[i] = z.re();
            x[i] = z.im();
        }
        return new Curve(grid, r, x);
    }

    private static Complex parallel(Complex a, Complex b) {
        return a.times(b).over(a.plus(b));
    }

    private static double w(double hz) {
        return 2 * Math.PI * hz;
    }
}
