package org.stillrail.library;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;

/** How far a part may be relied on. */
public enum Vetting {

    PROPOSED("proposed"),
    VETTED("vetted"),
    RESTRICTED("restricted"),
    WITHDRAWN("withdrawn");

    /** With what the team asks for, and so good to stand in for another part. */
    public static final Set<Vetting> APPROVED = Collections.unmodifiableSet(EnumSet.of(VETTED, RESTRICTED));

    private final String label;

    Vetting(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }

    /**
     * The words beside a state.
     *
     * @param reason     the condition or reason, or null
     * @param replacedBy number of the replacement, or null
     * @return null where neither is given
     */
    static String note(String reason, String replacedBy) {
        String replaced = replacedBy == null ? null : "replaced by " + replacedBy;
        return reason == null ? replaced : replaced == null ? reason : reason + "; " + replaced;
    }
}
