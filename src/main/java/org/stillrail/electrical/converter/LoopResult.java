package org.stillrail.electrical.converter;

import java.util.List;
import org.stillrail.electrical.curve.FrequencyGrid;

/**
 * The loop of one converter and one bank. Arrays belong to the grid's frequencies, are not NaN, and are copied on the way out.
 *
 * @param gainDb               20 log10 |T|
 * @param phaseDeg             of T, continuous from -90 (voltage mode) or -180 (current mode) at 0 Hz
 * @param openImpedanceOhm     |Zopen|: the bank in parallel with the inductor in voltage mode, the bank alone in current mode; at the
 *                             load where there are two nodes
 * @param closedImpedanceOhm   the same with the loop closed: |Zopen / (1 + T)| where the load's node is sensed
 * @param sensitivity          1 / |1 + T|
 * @param crossoverHz          the crossing of |T| = 1 within the grid that has the least phase margin; null if there is none
 * @param phaseMarginDeg       least 180 + phase over the crossings in either direction; null if there is none
 * @param gainMarginDb         least -20 log10 |T| where the phase passes -180 (mod 360) with |T| below 1; null if nowhere
 * @param sensitivityPeak      largest 1 / |1 + T| on the grid
 * @param stable               no closed-loop pole in the right half plane
 * @param esrAtCrossoverOhm    Re Zbank at the crossover; null without one
 * @param esrAtSwitchingOhm    Re Zbank at the switching frequency; null where a lossless resonance leaves it without a value
 * @param compensator          given or placed
 * @param warnings             sentences
 */
public record LoopResult(
        FrequencyGrid grid,
        double[] gainDb,
        double[] phaseDeg,
        double[] openImpedanceOhm,
        double[] closedImpedanceOhm,
        double[] sensitivity,
        Double crossoverHz,
        Double phaseMarginDeg,
        Double gainMarginDb,
        double sensitivityPeak,
        boolean stable,
        Double esrAtCrossoverOhm,
        Double esrAtSwitchingOhm,
        Compensator compensator,
        List<String> warnings) {

    public LoopResult {
        gainDb = gainDb.clone();
        phaseDeg = phaseDeg.clone();
        openImpedanceOhm = openImpedanceOhm.clone();
        closedImpedanceOhm = closedImpedanceOhm.clone();
        sensitivity = sensitivity.clone();
        warnings = List.copyOf(warnings);
    }

    @Override
    public double[] gainDb() {
        return gainDb.clone();
    }

    @Override
    public double[] phaseDeg() {
        return phaseDeg.clone();
    }

    @Override
    public double[] openImpedanceOhm() {
        return openImpedanceOhm.clone();
    }

    @Override
    public double[] closedImpedanceOhm() {
        return closedImpedanceOhm.clone();
    }

    @Override
    public double[] sensitivity() {
        return sensitivity.clone();
    }
}
