package org.stillrail.library;

import java.util.Set;
import org.stillrail.electrical.capacitor.Technology;

/**
 * What the list of parts is narrowed to; null means any.
 *
 * @param text words that all have to occur in the number or the maker
 */
record PartFilter(
        String text, Set<Technology> technologies, Double capacitanceFromF, Double capacitanceToF, Double ratedVoltageFromV, Vetting vetting) {

    /** Whether it asks for something that a revision says. */
    boolean asksForFigures() {
        return technologies != null || capacitanceFromF != null || capacitanceToF != null || ratedVoltageFromV != null;
    }
}
