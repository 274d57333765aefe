package org.stillrail.sweepfile;

import java.util.Arrays;
import java.util.Optional;

/** What stands between the cells of a text file, in the order in which they are preferred where several would do. */
public enum Delimiter {

    SEMICOLON("semicolon", ';'), TAB("tab", '\t'), COMMA("comma", ','), SPACE("space", '\t');

    private final String key;
    private final char character;

    Delimiter(String key, char character) {
        this.key = key;
        this.character = character;
    }

    /** The name in mappings and previews. */
    public String key() {
        return key;
    }

    /** For SPACE, runs of blanks are made into one tab first. */
    char character() {
        return character;
    }

    static Optional<Delimiter> ofKey(String key) {
        return Arrays.stream(values()).filter(delimiter -> delimiter.key.equals(key)).findFirst();
    }
}
