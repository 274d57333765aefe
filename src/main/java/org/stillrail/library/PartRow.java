package org.stillrail.library;

import java.util.UUID;
import org.stillrail.electrical.capacitor.Technology;

/** One line of the part list: the latest revision's figures that are searched by. */
public record PartRow(
        UUID id, String partNumber, String maker, Vetting vetting, int latestNumber, Technology technology, double capacitanceF,
        double ratedVoltageV, int sweeps) {
}
