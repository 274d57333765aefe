package org.stillrail.library;

import java.util.UUID;
import org.stillrail.electrical.curve.Curve;

/** A stored sweep of a fixture or of a part's lands with a short in it. */
public record ShortedFixture(UUID id, String name, Curve impedance) {
}
