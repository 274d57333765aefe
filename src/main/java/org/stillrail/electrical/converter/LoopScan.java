package org.stillrail.electrical.converter;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.Branch;

/**
 * The loop gain from far below its first feature to far beyond its last, densely enough that no crossing is missed: a fixed
 * number of points a decade, fewer beyond the features, every point of a table, every resonance of bank and filter, and every local extremum of |T|
 * near 1, refined. Crossings are then bisected.
 */
final class LoopScan {

    /** A crossing of |T| = 1. */
    record Crossing(LoopGain.Point point, boolean downward) {
    }

    private static final int POINTS_PER_DECADE = 200;
    /** Beyond what is asked for and beyond the compensator's features, where only the bank's resonances do anything. */
    private static final int OUTSIDE_PER_DECADE = 50;
    private static final int HALVINGS = 60;
    /** A pure delay turns the phase without end; this many turns between two points are looked at, the loudest first. */
    private static final int TURNS = 64;
    /** Closer than this to -180 deg a point counts as on neither side, so rounding makes no crossing. */
    private static final double PHASE_NOISE_DEG = 1e-7;

    private final LoopGain gain;
    private final List<LoopGain.Point> points = new ArrayList<>();
    private final List<Crossing> crossings = new ArrayList<>();

    LoopScan(LoopGain gain, Bank bank, Converter converter, double startHz, double stopHz) {
        this.gain = gain;
        collect(bank, converter, startHz, stopHz);
        for (int i = 1; i < points.size(); i++) {
            LoopGain.Point a = points.get(i - 1);
            LoopGain.Point b = points.get(i);
            if (a.logMagnitude() > 0 != b.logMagnitude() > 0) {
                boolean downward = a.logMagnitude() > 0;
                double hz = root(a.hz(), b.hz(), f -> (downward ? 1 : -1) * gain.at(f).logMagnitude());
                crossings.add(new Crossing(gain.at(hz), downward));
            }
        }
    }

    /** Ascending in frequency, over the whole range that was scanned. */
    List<Crossing> crossings() {
        return crossings;
    }

    /**
     * Points where the phase passes -180 deg (mod 360) between two frequencies.
     */
    List<LoopGain.Point> phaseCrossings(double startHz, double stopHz) {
        List<LoopGain.Point> found = new ArrayList<>();
        LoopGain.Point last = null;
        for (LoopGain.Point point : points) {
            double turns = point.marginDeg() / 360;
            if (point.hz() < startHz || point.hz() > stopHz || Math.abs(turns - Math.rint(turns)) * 360 < PHASE_NOISE_DEG) {
                continue;
            }
            if (last != null) {
                long before = (long) Math.floor(last.marginDeg() / 360);
                long after = (long) Math.floor(turns);
                boolean falling = after < before;
                long first = Math.min(before, after) + 1;
                long count = Math.min(Math.abs(after - before), TURNS);
                for (long k = 0; k < count; k++) {
                    double target = 360.0 * (falling ? Math.max(before, after) - k : first + k);
                    double hz = root(last.hz(), point.hz(), f -> (falling ? 1 : -1) * (gain.at(f).marginDeg() - target));
                    found.add(gain.at(hz));
                }
            }
            last = point;
        }
        return found;
    }

    /**
     * Closed-loop poles in the right half plane come in pairs, each a turn of 1 + T around the origin. While |T| > 1 the angle of
     * 1 + T follows that of T, while |T| < 1 it stays within 90 deg of a multiple of 360. So the turns are counted from one
     * upward to the next downward crossing of |T| = 1, from 0 Hz on; the integrators at 0 Hz start the count at zero turns.
     * With no pole of T in the right half plane the loop is stable where the sum is zero (Nyquist).
     */
    int turnsAroundOrigin() {
        int turns = 0;
        int entered = 0;
        boolean above = points.get(0).logMagnitude() > 0;
        for (Crossing crossing : crossings) {
            int here = (int) Math.rint(crossing.point().phaseDeg() / 360);
            if (crossing.downward()) {
                turns += here - entered;
            } else {
                entered = here;
            }
            above = !crossing.downward();
        }
        if (above) {
            turns += (int) Math.rint(points.get(points.size() - 1).phaseDeg() / 360) - entered;
        }
        return turns;
    }

    private void collect(Bank bank, Converter converter, double startHz, double stopHz) {
        double switchingHz = converter.stage().switchingHz();
        TreeSet<Double> marks = new TreeSet<>(List.of(startHz, stopHz, switchingHz));
        marks.addAll(converter.compensator().zerosHz());
        marks.addAll(converter.compensator().polesHz());
        double first = marks.first();
        double last = marks.last();
        double lowest = Math.max(first / 1000, Double.MIN_NORMAL);
        double highest = last * 1000;
        for (int decade = 0; decade < 12 && gain.at(lowest).logMagnitude() < Math.log(10); decade++) {
            lowest /= 10;
        }
        for (int decade = 0; decade < 8 && gain.at(highest).logMagnitude() > Math.log(0.1); decade++) {
            highest *= 10;
        }
        for (Branch branch : bank.branches()) {
            for (double knot : branch.part().knotsHz()) {
                marks.add(knot);
            }
        }
        DoubleStream.Builder places = DoubleStream.builder();
        marks.forEach(places::add);
        spread(places, lowest, first, OUTSIDE_PER_DECADE);
        spread(places, first, last, POINTS_PER_DECADE);
        spread(places, last, highest, OUTSIDE_PER_DECADE);
        LoopGain.Point beforeLast = null;
        LoopGain.Point before = null;
        for (double hz : places.build().sorted().distinct().toArray()) {
            LoopGain.Point point = gain.at(hz);
            if (before != null) {
                if (beforeLast != null && hidesCrossing(beforeLast, before, point)) {
                    addBefore(extremum(beforeLast.hz(), point.hz(), before.logMagnitude() > 0), before);
                }
                addResonances(before, point);
            }
            points.add(point);
            beforeLast = before;
            before = point;
        }
        points.sort((a, b) -> Double.compare(a.hz(), b.hz()));
    }

    private static void spread(DoubleStream.Builder places, double fromHz, double toHz, int perDecade) {
        int n = (int) Math.ceil(Math.log10(toHz / fromHz) * perDecade);
        double logFrom = Math.log(fromHz);
        double step = Math.log(toHz / fromHz) / n;
        for (int i = 0; i <= n && n > 0; i++) {
            places.add(Math.exp(logFrom + i * step));
        }
    }

    /** A local extremum of |T| on the near side of 1, which may reach beyond 1 between the points. */
    private static boolean hidesCrossing(LoopGain.Point a, LoopGain.Point b, LoopGain.Point c) {
        double middle = b.logMagnitude();
        if (middle > 0) {
            return middle < a.logMagnitude() && middle <= c.logMagnitude() && a.logMagnitude() > 0 && c.logMagnitude() > 0;
        }
        return middle > a.logMagnitude() && middle >= c.logMagnitude();
    }

    private void addBefore(LoopGain.Point extremum, LoopGain.Point neighbour) {
        if (extremum.hz() != neighbour.hz()) {
            points.add(extremum);
        }
    }

    private void addResonances(LoopGain.Point a, LoopGain.Point b) {
        if (changesSign(a.plant().bankSusceptance(), b.plant().bankSusceptance())) {
            double sign = Math.signum(a.plant().bankSusceptance());
            points.add(gain.at(root(a.hz(), b.hz(), f -> sign * gain.at(f).plant().bankSusceptance())));
        }
        if (changesSign(a.plant().dividerImaginary(), b.plant().dividerImaginary())) {
            double sign = Math.signum(a.plant().dividerImaginary());
            points.add(gain.at(root(a.hz(), b.hz(), f -> sign * gain.at(f).plant().dividerImaginary())));
        }
        if (changesSign(a.plant().filterImaginary(), b.plant().filterImaginary())) {
            double sign = Math.signum(a.plant().filterImaginary());
            points.add(gain.at(root(a.hz(), b.hz(), f -> sign * gain.at(f).plant().filterImaginary())));
        }
    }

    private static boolean changesSign(double a, double b) {
        return a > 0 && b < 0 || a < 0 && b > 0;
    }

    /** Golden-section search for the largest, or least, |T| between two frequencies. */
    private LoopGain.Point extremum(double lowHz, double highHz, boolean minimum) {
        double ratio = (Math.sqrt(5) - 1) / 2;
        double a = Math.log(lowHz);
        double d = Math.log(highHz);
        for (int i = 0; i < HALVINGS; i++) {
            double b = d - ratio * (d - a);
            double c = a + ratio * (d - a);
            boolean left = gain.at(Math.exp(b)).logMagnitude() > gain.at(Math.exp(c)).logMagnitude() != minimum;
            if (left) {
                d = c;
            } else {
                a = b;
            }
        }
        return gain.at(Math.exp((a + d) / 2));
    }

    /** Bisection on log f of a function that is positive at the low end and not at the high end. */
    private static double root(double lowHz, double highHz, DoubleUnaryOperator function) {
        double a = Math.log(lowHz);
        double b = Math.log(highHz);
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (a + b) / 2;
            if (middle == a || middle == b) {
                break;
            }
            if (function.applyAsDouble(Math.exp(middle)) > 0) {
                a = middle;
            } else {
                b = middle;
            }
        }
        return Math.exp((a + b) / 2);
    }
}
