package org.stillrail.sweepfile.accuracy;

import org.stillrail.electrical.curve.Complex;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.curve.FrequencyGrid;

/**
 * Takes the fixture out of a measured impedance by sweeps of the fixture open, shorted and loaded. Any fixture without sources
 * turns the part's impedance into the measured one by a function {@code (a Z + b) / (c Z + d)}, which its values at an open, a
 * short and one known load fix:
 * <pre>
 * short            Z = Zm - Zs
 * open and short   Z = (Zm - Zs) (Zo - Zs) / (Zo - Zm)          exact for a series arm followed by a shunt arm
 * all three        Z = Zstd (Zo - Zl) (Zm - Zs) / ((Zl - Zs) (Zo - Zm))
 * </pre>
 * Derived here; the formulas are common practice for impedance analysers. Open and short are taken as ideal. The sweeps of the
 * fixture may have other frequencies than the measured one, but must cover its range.
 */
public final class FixtureCompensation {

    private FixtureCompensation() {
    }

    /** Takes off a series residue. All curves in ohm. */
    public static Curve byShort(Curve measured, Curve shorted) {
        Complex[] zs = FixtureCurve.on(measured.grid(), shorted, "short");
        return map(measured, (i, zm) -> zm.minus(zs[i]));
    }

    /**
     * @throws IllegalArgumentException where the fixture's sweeps do not cover the measured range, or where the part cannot be
     *                                  told from the open
     */
    public static Curve byOpenShort(Curve measured, Curve open, Curve shorted) {
        Complex[] zo = FixtureCurve.on(measured.grid(), open, "open");
        Complex[] zs = FixtureCurve.on(measured.grid(), shorted, "short");
        return map(measured, (i, zm) -> zm.minus(zs[i]).times(zo[i].minus(zs[i])).over(zo[i].minus(zm)));
    }

    /**
     * @param load     the fixture with the known load in it
     * @param standard the load's true impedance
     * @throws IllegalArgumentException as {@link #byOpenShort}
     */
    public static Curve byOpenShortLoad(Curve measured, Curve open, Curve shorted, Curve load, Curve standard) {
        FrequencyGrid grid = measured.grid();
        Complex[] zo = FixtureCurve.on(grid, open, "open");
        Complex[] zs = FixtureCurve.on(grid, shorted, "short");
        Complex[] zl = FixtureCurve.on(grid, load, "load");
        Complex[] truth = FixtureCurve.on(grid, standard, "load standard's");
        return map(measured, (i, zm) -> truth[i].times(zo[i].minus(zl[i])).times(zm.minus(zs[i]))
                .over(zl[i].minus(zs[i]).times(zo[i].minus(zm))));
    }

    @FunctionalInterface
    private interface PointFormula {
        Complex at(int index, Complex measured);
    }

    private static Curve map(Curve measured, PointFormula formula) {
        double[] r = new double[measured.size()];
        double[] x = new double[measured.size()];
        for (int i = 0; i < r.length; i++) {
            Complex z = formula.at(i, new Complex(measured.real(i), measured.imaginary(i)));
            if (!Double.isFinite(z.re()) || !Double.isFinite(z.im())) {
                throw new IllegalArgumentException("At " + measured.grid().hz(i)
                        + " Hz the part cannot be told from the fixture: the sweeps of the fixture and of the part coincide");
            }
            r[i] = z.re();
            x[i] = z.im();
        }
        return new Curve(measured.grid(), r, x);
    }
}
