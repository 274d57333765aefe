package org.stillrail.report;

import java.util.List;
import java.util.Map;

/**
 * A whole project as one value: every row as it is stored, so that hashes and signatures hold wherever it is read. A cell is a
 * text (UUIDs, times and days in ISO 8601, bytes in Base64), a number, a truth value, or absent.
 *
 * @param format raised when it changes its meaning
 * @param people user and display names by id, of everyone who is named in a row
 * @param tables rows by table, tables as in {@link ProjectTable}
 */
record ProjectFile(String kind, int format, Map<String, Person> people, Map<String, List<Map<String, Object>>> tables) {

    static final String KIND = "stillrail-project";
    static final int FORMAT = 1;

    record Person(String userName, String displayName) {
    }
}
