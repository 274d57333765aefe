package org.stillrail.sweepfile;

import java.util.Locale;

/**
 * A line like {@code [Number of Ports] 2} of a version 2 file.
 *
 * @param name      lower case, single blanks
 * @param arguments what follows the bracket, trimmed
 */
record KeywordLine(SourceLine line, String name, String arguments) {

    static boolean isKeyword(SourceLine line, String name) {
        return line.isKeyword() && line.text().indexOf(']') > 0 && of(line).name().equals(name);
    }

    static KeywordLine of(SourceLine line) {
        int close = line.text().indexOf(']');
        if (close < 0) {
            throw new SweepFileException(line.number(), "the keyword " + Phrase.quoted(line.text()) + " has no closing bracket");
        }
        String name = line.text().substring(1, close).strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_]+", " ");
        return new KeywordLine(line, name, line.text().substring(close + 1).strip());
    }

    int number() {
        return line.number();
    }

    /** The one argument as a whole number, {@code least} or more. */
    int wholeNumber(int least) {
        if (arguments.matches("[0-9]{1,9}") && Integer.parseInt(arguments) >= least) {
            return Integer.parseInt(arguments);
        }
        throw new SweepFileException(number(), shown() + " needs a whole number of " + least + " or more, not "
                + Phrase.quoted(arguments));
    }

    /** The keyword as the file has it, for messages. */
    String shown() {
        return line.text().substring(0, line.text().indexOf(']') + 1);
    }
}
