package org.stillrail.electrical.bank;

import java.util.List;
import org.stillrail.electrical.capacitor.ImpedancePoint;
import org.stillrail.electrical.curve.FrequencyGrid;

/**
 * How a bank answers a current into one of its nodes: the voltage at a node, and what goes through each branch. At one node that
 * is its impedance.
 */
public interface BankResponse {

    List<Branch> branches();

    /**
     * Voltage per ampere and shares of the current on a grid.
     *
     * @throws LosslessResonanceException where there is no finite answer on a grid point
     */
    BankCurves on(FrequencyGrid grid);

    /** Voltage per ampere with its slope, at one frequency; between two nodes its real part may be negative. */
    ImpedancePoint at(double hz);

    /** The inductance that the voltage per ampere tends to at high frequency, in H. */
    double inductanceAtInfinityH();

    /** Square of the voltage across one branch, in V for one ampere. */
    double squaredVoltageAcross(int branch, double hz);

    /** |Ibranch / I|. */
    default double share(int branch, double hz) {
        return Math.sqrt(squaredVoltageAcross(branch, hz) / branches().get(branch).at(hz).squaredMagnitude());
    }
}
