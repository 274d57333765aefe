package org.stillrail.library;

import java.util.UUID;
import org.stillrail.electrical.capacitor.Technology;
import org.stillrail.web.Quantity;

/**
 * A part as it is offered for a bank and named in it, by the figures of its newest revision.
 *
 * @param vettingReason the condition of a restricted part, why a withdrawn one is; else of no matter here
 * @param replacedBy    number of the part that takes the place of a withdrawn one, or null
 */
public record PartChoice(
        UUID id, String partNumber, Vetting vetting, String vettingReason, String replacedBy, Technology technology, double capacitanceF,
        double ratedVoltageV) {

    public String figures() {
        return Quantity.format(capacitanceF, "F", 3) + ", " + Quantity.format(ratedVoltageV, "V", 3) + ", " + technology.label();
    }

    /** How far it may be relied on, without a full stop: 'PN is withdrawn (no longer made; replaced by PN)'. */
    public String standing() {
        return partNumber + " is " + vetting.label() + (limit().isEmpty() ? "" : " (" + limit() + ")");
    }

    /** What a restricted or withdrawn part has to be known for; empty for others. */
    public String limit() {
        boolean limited = vetting == Vetting.RESTRICTED || vetting == Vetting.WITHDRAWN;
        String note = Vetting.note(vettingReason, replacedBy);
        return limited && note != null ? note : "";
    }
}
