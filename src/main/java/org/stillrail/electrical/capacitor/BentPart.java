package org.stillrail.electrical.capacitor;

import java.util.List;

/**
 * A part at an operating point and a place in its band.
 *
 * @param model            ready for a branch
 * @param capacitanceF     its series capacitance at the datasheet's test frequency
 * @param nominalShare     that over the nominal capacitance: what is left
 * @param resistanceFactor ESR over that of the model it came from
 * @param notes            what was not known
 */
public record BentPart(ImpedanceModel model, double capacitanceF, double nominalShare, double resistanceFactor, List<BendNote> notes) {

    public BentPart {
        notes = List.copyOf(notes);
    }
}
