package org.stillrail.sweepfile.accuracy;

import org.stillrail.electrical.curve.Complex;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.curve.FrequencyGrid;

/**
 * A sweep of the fixture itself brought to the frequencies of another sweep: magnitude and phase linear over log f between points,
 * log magnitude, so that the line of a capacitance or an inductance stays straight.
 */
final class FixtureCurve {

    private static final double SLACK = 1e-9;

    private FixtureCurve() {
    }

    /** @throws IllegalArgumentException where the fixture was not measured over all frequencies asked for */
    static Complex[] on(FrequencyGrid grid, Curve fixture, String what) {
        FrequencyGrid own = fixture.grid();
        if (own.startHz() > grid.startHz() * (1 + SLACK) || own.stopHz() < grid.stopHz() * (1 - SLACK)) {
            throw new IllegalArgumentException("The " + what + " sweep covers " + own.startHz() + " Hz to " + own.stopHz()
                    + " Hz, but " + grid.startHz() + " Hz to " + grid.stopHz() + " Hz are needed");
        }
        Complex[] values = new Complex[grid.size()];
        int below = 0;
        for (int i = 0; i < values.length; i++) {
            while (below < own.size() - 2 && own.hz(below + 1) <= grid.hz(i)) {
                below++;
            }
            values[i] = own.size() == 1 ? at(fixture, 0) : between(fixture, below, grid.hz(i));
        }
        return values;
    }

    private static Complex between(Curve fixture, int below, double hz) {
        Complex first = at(fixture, below);
        Complex second = at(fixture, below + 1);
        double lowHz = fixture.grid().hz(below);
        double share = Math.min(1, Math.max(0, Math.log(hz / lowHz) / Math.log(fixture.grid().hz(below + 1) / lowHz)));
        if (share == 0 || share == 1) {
            return share == 0 ? first : second;
        }
        if (first.magnitude() == 0 || second.magnitude() == 0) {
            return first.times(1 - share).plus(second.times(share));
        }
        // The quotient turns by less than half a turn between neighbours.
        Complex turn = second.over(first);
        Complex step = Complex.polar(Math.pow(turn.magnitude(), share), turn.angleRad() * share);
        return first.times(step);
    }

    private static Complex at(Curve curve, int i) {
        return new Complex(curve.real(i), curve.imaginary(i));
    }
}
