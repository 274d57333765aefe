package org.stillrail.electrical.bank;

import java.util.Objects;
import org.stillrail.electrical.capacitor.SeriesRlc;

/**
 * What lies between the converter's node and the load's where a bank has two nodes.
 *
 * @param path  plane, bead or second inductor, there and back; not nothing
 * @param sense where the converter senses its output
 * @param load  capacitance that is fixed at the load, such as a package's; null for none
 */
public record Distance(SeriesPath path, Node sense, SeriesRlc load) {

    public Distance {
        Objects.requireNonNull(path, "path");
        Objects.requireNonNull(sense, "sense");
        if (path.resistanceOhm() == 0 && path.inductanceH() == 0) {
            throw new IllegalArgumentException("A path between converter and load needs a resistance or an inductance");
        }
    }
}
