package org.stillrail.library;

import java.util.UUID;
import org.stillrail.electrical.capacitor.Technology;
import org.stillrail.web.Quantity;

/** A part as it is offered for a bank, by the figures of its newest revision. */
public record PartChoice(UUID id, String partNumber, Vetting vetting, Technology technology, double capacitanceF, double ratedVoltageV) {

    /** In one line. */
    public String label() {
        return partNumber + " \u2014 " + Quantity.format(capacitanceF, "F", 3) + ", " + Quantity.format(ratedVoltageV, "V", 3) + " "
                + technology.label() + (vetting == Vetting.WITHDRAWN ? ", withdrawn" : "");
    }
}
