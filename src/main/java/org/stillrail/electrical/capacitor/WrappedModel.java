package org.stillrail.electrical.capacitor;

import java.util.List;

/** A model that changes another one's impedance by something smooth and leaves knots, range and warnings as they are. */
public interface WrappedModel extends ImpedanceModel {

    ImpedanceModel inner();

    @Override
    default double inductanceAtInfinityH() {
        return inner().inductanceAtInfinityH();
    }

    @Override
    default double[] knotsHz() {
        return inner().knotsHz();
    }

    @Override
    default ValidRange validRange() {
        return inner().validRange();
    }

    @Override
    default List<String> warnings() {
        return inner().warnings();
    }
}
