package org.stillrail.report;

import java.util.UUID;

/**
 * Names that are unique in an installation, of what came from another one where they may mean somebody or something else: a tag
 * from the id makes them different here, and it is taken off again when they leave.
 */
final class Elsewhere {

    private static final int TAG_LENGTH = 8;
    private static final String WORD = " (elsewhere)";

    private Elsewhere() {
    }

    /** Of a person who is not known here. */
    static ProjectFile.Person here(UUID id, ProjectFile.Person there) {
        return new ProjectFile.Person(there.userName() + "-" + tag(id), there.displayName() + WORD);
    }

    /** As the person is named at home. */
    static ProjectFile.Person there(UUID id, ProjectFile.Person here) {
        String tagged = "-" + tag(id);
        return here.userName().endsWith(tagged) && here.displayName().endsWith(WORD)
                ? new ProjectFile.Person(without(here.userName(), tagged), without(here.displayName(), WORD)) : here;
    }

    /** Of a thing whose name is taken here. */
    static String here(UUID id, String there) {
        return there + " (elsewhere " + tag(id) + ")";
    }

    static String there(UUID id, String here) {
        return without(here, here(id, ""));
    }

    private static String without(String text, String end) {
        return text.endsWith(end) ? text.substring(0, text.length() - end.length()) : text;
    }

    private static String tag(UUID id) {
        return id.toString().substring(0, TAG_LENGTH);
    }
}
