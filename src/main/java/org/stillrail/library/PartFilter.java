package org.stillrail.library;

import org.stillrail.electrical.capacitor.Technology;

/** What the list of parts is narrowed to; null means any. */
record PartFilter(
        String text, Technology technology, Double capacitanceFromF, Double capacitanceToF, Double ratedVoltageFromV, Vetting vetting) {

    /** Whether it asks for something that a revision says. */
    boolean asksForFigures() {
        return technology != null || capacitanceFromF != null || capacitanceToF != null || ratedVoltageFromV != null;
    }
}
