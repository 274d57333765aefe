package org.stillrail.library;

import org.stillrail.electrical.capacitor.Technology;

/** What the list of parts is narrowed to; null means any. */
record PartFilter(
        String text, Technology technology, Double capacitanceFromF, Double capacitanceToF, Double ratedVoltageFromV, Vetting vetting) {

    static final PartFilter ALL = new PartFilter(null, null, null, null, null, null);
}
