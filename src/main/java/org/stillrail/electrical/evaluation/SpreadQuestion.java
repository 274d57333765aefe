package org.stillrail.electrical.evaluation;

import java.util.Objects;
import org.stillrail.electrical.spread.Axis;
import org.stillrail.electrical.spread.MonteCarlo;
import org.stillrail.electrical.spread.Tolerance;

/**
 * What random banks are drawn and under what.
 *
 * @param runs    banks, 1 to {@value MonteCarlo#MOST_RUNS}, with the load step to {@value #MOST_STEPPED}
 * @param shape   how each tolerance is taken to be distributed
 * @param lots    whether all parts of a branch stray together, as from one lot
 * @param ambient of the rail's temperatures
 * @param old     whether the rail's life is over, with the parts' drift to the end of life
 * @param input   of the converter's voltages
 * @param stress  whether each branch's ripple current, warmth, life and voltage are worked out too, which takes longer
 * @param loadStep whether the rail's load step is gone through with each bank, which takes much longer
 */
public record SpreadQuestion(
        int runs, long seed, Tolerance.Shape shape, boolean lots, Axis ambient, boolean old, Axis input, boolean stress, boolean loadStep) {

    public static final int MOST_STEPPED = 2_000;

    /** Even distributions, parts of one lot, everything round the bank nominal. */
    public static final SpreadQuestion USUAL = new SpreadQuestion(5_000, 1, Tolerance.Shape.UNIFORM, true, Axis.NOMINAL, false, Axis.NOMINAL, false, false);

    public SpreadQuestion {
        if (runs < 1 || runs > MonteCarlo.MOST_RUNS) {
            throw new IllegalArgumentException("runs must be 1 to " + MonteCarlo.MOST_RUNS + ", not " + runs);
        }
        if (loadStep && runs > MOST_STEPPED) {
            throw new IllegalArgumentException("runs must be 1 to " + MOST_STEPPED + " with the load step, not " + runs);
        }
        Objects.requireNonNull(shape, "shape");
        Objects.requireNonNull(ambient, "ambient");
        Objects.requireNonNull(input, "input");
    }

    /** Of the impedance alone. */
    public SpreadQuestion(int runs, long seed, Tolerance.Shape shape, boolean lots, Axis ambient, boolean old, Axis input) {
        this(runs, seed, shape, lots, ambient, old, input, false, false);
    }

    /** The same with what the parts bear. */
    public SpreadQuestion withStress() {
        return new SpreadQuestion(runs, seed, shape, lots, ambient, old, input, true, loadStep);
    }

    /** The same with what the load step does. */
    public SpreadQuestion withLoadStep() {
        return new SpreadQuestion(runs, seed, shape, lots, ambient, old, input, stress, true);
    }
}
