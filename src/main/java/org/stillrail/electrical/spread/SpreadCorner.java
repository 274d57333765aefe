package org.stillrail.electrical.spread;

import java.util.ArrayList;
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

    /** With the parts of each branch warmer than the air by their own losses. */
    public SpreadCorner withOwnHeat(double[] riseK) {
        List<BranchCorner> warmer = new ArrayList<>();
        for (int k = 0; k < riseK.length; k++) {
            warmer.add(branches.get(k).at(ambientC + riseK[k]));
        }
        return new SpreadCorner(name, warmer, inductanceFactor, switchingFactor, outputV, inputV, ambientC);
    }

    /** Of a random bank whose nominal one stands here. A part whose capacitance is as modelled stays so. */
    public SpreadCorner straying(Strays strays) {
        List<BranchCorner> astray = new ArrayList<>();
        for (int k = 0; k < branches.size(); k++) {
            astray.add(branches.get(k).straying(strays.capacitance().get(k), strays.resistance().get(k)));
        }
        return new SpreadCorner(name, astray, inductanceFactor * strays.inductorFactor(), switchingFactor, outputV, inputV, ambientC);
    }

    /** Of the bank that lacks one branch. */
    public SpreadCorner without(int branch) {
        List<BranchCorner> others = new ArrayList<>(branches);
        others.remove(branch);
        return new SpreadCorner(name, others, inductanceFactor, switchingFactor, outputV, inputV, ambientC);
    }

    /** Whether everything but the name is the same. */
    boolean sameConditions(SpreadCorner other) {
        return branches.equals(other.branches) && inductanceFactor == other.inductanceFactor && switchingFactor == other.switchingFactor
                && outputV == other.outputV && inputV == other.inputV && ambientC == other.ambientC;
    }
}
