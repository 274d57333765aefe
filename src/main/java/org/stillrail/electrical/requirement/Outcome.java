package org.stillrail.electrical.requirement;

/** What a verdict says. Only {@link #MET} is met: unknown is not. */
public enum Outcome {

    NOT_MET("not met"),
    UNKNOWN("unknown"),
    MET("met"),
    /** The method says nothing of this kind of converter. */
    NOT_MODELLED("not modelled"),
    /** The rail sets no such limit. */
    NOT_ASKED("not asked");

    private final String label;

    Outcome(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }

    /** Whether the rail asks and the method has an answer, if only that a figure is missing. */
    public boolean judged() {
        return this == MET || needsConcession();
    }

    /** Whether a bank with this verdict needs a concession before it can be submitted. */
    public boolean needsConcession() {
        return this == NOT_MET || this == UNKNOWN;
    }
}
