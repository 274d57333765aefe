package org.stillrail.electrical.capacitor;

/**
 * What was not known when a part was bent to a place.
 *
 * @param subject  as in 'no curve of capacitance over bias'; null where something is known, but not so far
 * @param sentence all of it, with its full stop
 */
public record BendNote(Kind kind, String subject, String sentence) {

    /** What stands in. */
    public enum Kind {
        BIAS_FLAT, TEMPERATURE_FLAT, ESR_FLAT, UNAGED, UNDRIFTED, CODE_ALONE, HELD
    }

    static BendNote flat(Kind kind, String subject, String taken) {
        String sentence = subject + " is known; " + taken + ".";
        return new BendNote(kind, subject, Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1));
    }

    static BendNote known(Kind kind, String sentence) {
        return new BendNote(kind, null, sentence);
    }
}
