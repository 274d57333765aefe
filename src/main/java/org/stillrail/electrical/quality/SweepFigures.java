package org.stillrail.electrical.quality;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.stillrail.electrical.capacitor.ImpedanceModel;
import org.stillrail.electrical.capacitor.ImpedancePoint;
import org.stillrail.electrical.capacitor.ValidRange;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.electrical.curve.Hertz;

/**
 * The figures that a datasheet would give, drawn from a measured part. With {@code X = w L - 1/(w C)} round the self-resonance
 * f0, {@code L = X / (w (1 - (f0/f)^2))}, read a decade above f0 or at the end of the sweep. An error e of Z becomes
 * {@code C e/|X|}, {@code e} of the ESR, {@code L e/|X|}, and {@code e / (dX/df)} of f0: first order, derived here.
 */
public final class SweepFigures {

    private static final int SCAN_POINTS = 2000;
    private static final double FAR_ABOVE = 10;
    /** Nearer to resonance the inductance is the difference of two equal reactances. */
    private static final double CLOSEST_ABOVE = 1.5;
    private static final int HALVINGS = 60;

    private final ImpedanceModel model;
    private final ValidRange range;
    private final DoubleUnaryOperator errorOhmAt;
    private final List<SweepFigure> figures = new ArrayList<>();

    private SweepFigures(ImpedanceModel model, ValidRange range, DoubleUnaryOperator errorOhmAt) {
        this.model = model;
        this.range = range;
        this.errorOhmAt = errorOhmAt;
    }

    /**
     * C at 120 Hz, 1 kHz and where the datasheet states it, ESR at 100 kHz and least, ESL, self-resonance, in this order.
     *
     * @param range      what was measured; nothing is read outside
     * @param testHz     where the datasheet states the capacitance; read there too where that is more than an octave from 120 Hz and
     *                   from 1 kHz: small class 1 ceramics are stated at 1 MHz, double-layer cells far below 1 Hz
     * @param errorOhmAt radius of the disc around Z by the instrument's accuracy, over frequency; null where not known
     */
    public static List<SweepFigure> of(ImpedanceModel model, ValidRange range, double testHz, DoubleUnaryOperator errorOhmAt) {
        return new SweepFigures(model, range, errorOhmAt).all(testHz);
    }

    private List<SweepFigure> all(double testHz) {
        capacitance("C at 120 Hz", 120);
        capacitance("C at 1 kHz", 1e3);
        if (isFar(testHz, 120) && isFar(testHz, 1e3)) {
            capacitance("C at " + Hertz.words(testHz), testHz);
        }
        resistance("ESR at 100 kHz", 100e3);
        FrequencyGrid grid = FrequencyGrid.logSpaced(range.fromHz(), range.toHz(), SCAN_POINTS);
        double[] r = new double[SCAN_POINTS];
        double[] x = new double[SCAN_POINTS];
        model.addImpedanceTo(grid, r, x);
        int least = 0;
        int crossing = -1;
        for (int i = 0; i < SCAN_POINTS; i++) {
            least = r[i] < r[least] ? i : least;
            crossing = crossing < 0 && i > 0 && x[i - 1] < 0 && x[i] >= 0 ? i : crossing;
        }
        figures.add(new SweepFigure("least ESR", "ohm", r[least], grid.hz(least), error(grid.hz(least))));
        resonance(crossing < 0 ? null : zero(grid.hz(crossing - 1), grid.hz(crossing)));
        return List.copyOf(figures);
    }

    private static boolean isFar(double hz, double otherHz) {
        return Math.abs(Math.log(hz / otherHz)) > Math.log(2);
    }

    private void capacitance(String name, double hz) {
        ImpedancePoint z = range.contains(hz) ? model.at(hz) : null;
        boolean capacitive = z != null && z.reactanceOhm() < 0;
        Double farad = capacitive ? (Double) (-1 / (2 * Math.PI * hz * z.reactanceOhm())) : null;
        figures.add(new SweepFigure(name, "F", farad, capacitive ? (Double) hz : null, capacitive ? relative(farad, hz, z) : null));
    }

    private void resistance(String name, double hz) {
        boolean inside = range.contains(hz);
        figures.add(new SweepFigure(name, "ohm", inside ? (Double) model.at(hz).resistanceOhm() : null, inside ? (Double) hz : null,
                inside ? error(hz) : null));
    }

    private void resonance(Double resonanceHz) {
        double top = resonanceHz == null ? 0 : Math.min(range.toHz(), FAR_ABOVE * resonanceHz);
        if (resonanceHz == null || top < CLOSEST_ABOVE * resonanceHz) {
            figures.add(new SweepFigure("ESL", "H", null, null, null));
        } else {
            ImpedancePoint z = model.at(top);
            double below = resonanceHz / top;
            double henry = z.reactanceOhm() / (2 * Math.PI * top * (1 - below * below));
            figures.add(new SweepFigure("ESL", "H", henry, top, relative(henry, top, z)));
        }
        Double error = resonanceHz == null ? null : error(resonanceHz);
        figures.add(new SweepFigure("self-resonance", "Hz", resonanceHz, resonanceHz,
                error == null ? null : (Double) (error / Math.abs(model.at(resonanceHz).reactanceOhmPerHz()))));
    }

    private double zero(double belowHz, double aboveHz) {
        double low = Math.log(belowHz);
        double high = Math.log(aboveHz);
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (model.at(Math.exp(middle)).reactanceOhm() < 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return Math.exp((low + high) / 2);
    }

    private Double error(double hz) {
        return errorOhmAt == null ? null : (Double) errorOhmAt.applyAsDouble(hz);
    }

    private Double relative(double value, double hz, ImpedancePoint z) {
        return errorOhmAt == null ? null : (Double) (Math.abs(value) * errorOhmAt.applyAsDouble(hz) / Math.abs(z.reactanceOhm()));
    }
}
