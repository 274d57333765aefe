package org.stillrail.electrical.spread;

import java.util.List;

/**
 * One set of conditions to look at a bank under.
 *
 * @param name             in words, as in 'hot and new, all capacitances low'
 * @param branches         in the bank's order
 * @param inductanceFactor of the inductor over its nominal value, saturation in it
 * @param switchingFactor  of the switching frequency over its nominal value
 * @param outputV          the output voltage, its accuracy in it
 * @param inputV           of the converter
 * @param ambientC         air round the bank
 */
public record SpreadCorner(
        String name, List<BranchCorner> branches, double inductanceFactor, double switchingFactor, double outputV, double inputV,
        double ambientC) {

    public SpreadCorner {
        branches = List.copyOf(branches);
    }

    /** Whether everything but the name is the same. */
    boolean sameConditions(SpreadCorner other) {
        return branches.equals(other.branches) && inductanceFactor == other.inductanceFactor && switchingFactor == other.switchingFactor
                && outputV == other.outputV && inputV == other.inputV && ambientC == other.ambientC;
    }
}
