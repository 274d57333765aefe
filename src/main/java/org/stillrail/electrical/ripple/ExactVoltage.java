package org.stillrail.electrical.ripple;

/**
 * A voltage as the exact response of an asymptote to a piecewise-linear current, plus a smooth rest that is known on a
 * fine, even grid over one period and interpolated there by the polynomial through six points.
 */
final class ExactVoltage {

    private static final int FEWEST_INSIDE = 4;
    private static final double[] WEIGHTS = {-1.0 / 120, 1.0 / 24, -1.0 / 12, 1.0 / 12, -1.0 / 24, 1.0 / 120};

    private final PiecewiseLinear current;
    private final Asymptote asymptote;
    private final double[] rest;

    ExactVoltage(PiecewiseLinear current, Asymptote asymptote, double[] rest) {
        this.current = current;
        this.asymptote = asymptote;
        this.rest = rest;
    }

    /** Value in a piece, at its ends the limit from inside. */
    double at(int piece, double t) {
        return exact(piece, t) + rest(t);
    }

    private double exact(int piece, double t) {
        return asymptote.inductanceH() * current.slope(piece)
                + asymptote.resistanceOhm() * current.current(piece, t)
                + asymptote.elastancePerF() * current.charge(piece, t);
    }

    private double rest(double t) {
        int size = rest.length;
        double place = t / current.periodS() * size;
        double whole = Math.floor(place);
        double u = place - whole;
        int base = (int) whole;
        if (u == 0) {
            return rest[base & (size - 1)];
        }
        double product = 1;
        for (int k = -2; k <= 3; k++) {
            product *= u - k;
        }
        double sum = 0;
        for (int k = -2; k <= 3; k++) {
            sum += WEIGHTS[k + 2] / (u - k) * rest[base + k & size - 1];
        }
        return product * sum;
    }

    double[] samples(int count) {
        double[] values = new double[count];
        for (int i = 0; i < count; i++) {
            double t = current.periodS() * i / count;
            values[i] = at(current.pieceAt(t), t);
        }
        return values;
    }

    /** Highest minus lowest, with both limits at every kink and every extremum between. */
    double peakToPeak() {
        double high = Double.NEGATIVE_INFINITY;
        double low = Double.POSITIVE_INFINITY;
        for (int piece = 0; piece < current.pieces(); piece++) {
            double start = current.startS(piece);
            double end = current.endS(piece);
            double spacing = current.periodS() / rest.length;
            int steps = Math.max(FEWEST_INSIDE, (int) Math.ceil((end - start) / spacing));
            double step = (end - start) / steps;
            double before = Double.NaN;
            double here = at(piece, start);
            high = Math.max(high, here);
            low = Math.min(low, here);
            for (int i = 1; i <= steps; i++) {
                double next = at(piece, i == steps ? end : start + i * step);
                high = Math.max(high, next);
                low = Math.min(low, next);
                if (i > 1 && (here - before) * (next - here) <= 0 && (here != before || next != here)) {
                    double turn = vertex(piece, start + (i - 1) * step, step, before, here, next);
                    high = Math.max(high, turn);
                    low = Math.min(low, turn);
                }
                before = here;
                here = next;
            }
        }
        return high - low;
    }

    private double vertex(int piece, double t, double step, double before, double here, double next) {
        double bend = before - 2 * here + next;
        return bend == 0 ? here : at(piece, t + step * (before - next) / (2 * bend));
    }
}
