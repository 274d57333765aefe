package org.stillrail.electrical.requirement;

/** What a rail may ask of its bank; each has one verdict. The id is the word in documents and links. */
public enum Requirement {

    RIPPLE("ripple", "Ripple"),
    QUIET_BAND("quiet-band", "Quiet band"),
    DAMPING("damping", "Damping"),
    PHASE_MARGIN("phase-margin", "Phase margin"),
    GAIN_MARGIN("gain-margin", "Gain margin"),
    BULK_CHARGE("bulk-charge", "Bulk charge"),
    DEVIATION("deviation", "Deviation"),
    WINDOW("window", "Window"),
    VOLTAGE_RATING("voltage-rating", "Voltage rating"),
    REVERSE_VOLTAGE("reverse-voltage", "Reverse voltage"),
    RIPPLE_CURRENT("ripple-current", "Ripple current"),
    TEMPERATURE("temperature", "Temperature"),
    LIFE("life", "Life"),
    START_UP("start-up", "Start-up"),
    ESR_WINDOW("esr-window", "ESR window"),
    HEIGHT("height", "Height"),
    AREA("area", "Area"),
    COST("cost", "Cost");

    private final String id;
    private final String label;

    Requirement(String id, String label) {
        this.id = id;
        this.label = label;
    }

    public String id() {
        return id;
    }

    public String label() {
        return label;
    }

    /** Heading of its equations in docs/method.md. */
    public String equation() {
        return "verdict-" + id;
    }

    /** @throws IllegalArgumentException naming the id that is not known */
    public static Requirement ofId(String id) {
        for (Requirement requirement : values()) {
            if (requirement.id.equals(id)) {
                return requirement;
            }
        }
        throw new IllegalArgumentException("'" + id + "' is not a requirement that Stillrail knows");
    }
}
