package org.stillrail.electrical.mounting;

import org.stillrail.electrical.curve.Curve;

/** The open-circuit impedances of a {@link TwoNodeBank} on one grid, in ohm. */
public record TwoNodeCurves(Curve atConverter, Curve atLoad, Curve transfer) {
}
