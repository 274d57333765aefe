package org.stillrail.electrical.evaluation;

import java.util.ArrayList;
import java.util.List;

/** A span of frequency over the ribbon and what the bank has to do there. */
public record Bracket(Task task, double fromHz, double toHz) {

    /** What a bank is there for. */
    public enum Task {

        HOLDS_CHARGE("holds the charge"),
        CALMS_LOOP("calms the loop"),
        SWALLOWS_SWITCHING("swallows the switching");

        private final String label;

        Task(String label) {
            this.label = label;
        }

        public String label() {
            return label;
        }
    }

    /** Ascending, from the start of the charts; the damping band ends where the quiet band begins if they would overlap. */
    static List<Bracket> of(KeyFrequencies frequencies, double startHz) {
        List<Bracket> brackets = new ArrayList<>();
        brackets.add(new Bracket(Task.HOLDS_CHARGE, startHz, frequencies.dampingFromHz()));
        double calmTo = Math.min(frequencies.dampingToHz(), frequencies.quietFromHz());
        if (calmTo > frequencies.dampingFromHz()) {
            brackets.add(new Bracket(Task.CALMS_LOOP, frequencies.dampingFromHz(), calmTo));
        }
        brackets.add(new Bracket(Task.SWALLOWS_SWITCHING, frequencies.quietFromHz(), frequencies.quietToHz()));
        return List.copyOf(brackets);
    }
}
