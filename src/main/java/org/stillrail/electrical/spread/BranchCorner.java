package org.stillrail.electrical.spread;

import org.stillrail.electrical.capacitor.OperatingPoint;
import org.stillrail.electrical.capacitor.PlaceInBand;

/** Where one branch's parts stand at a corner: ready for {@code Characteristics.bend}. */
public record BranchCorner(OperatingPoint point, PlaceInBand place) {
}
