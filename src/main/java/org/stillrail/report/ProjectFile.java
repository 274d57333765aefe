package org.stillrail.report;

import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.springframework.core.io.InputStreamSource;
import org.stillrail.document.CanonicalJson;
import org.stillrail.document.Sha256;

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

    /**
     * A file as it came.
     *
     * @param sha256 of its bytes
     */
    record Received(ProjectFile file, String sha256) {
    }

    /**
     * Reads a file without holding its bytes: what it says takes a few times as much memory as it is long.
     *
     * @throws IllegalArgumentException when this is no such file
     */
    static Received receive(InputStreamSource source) throws IOException {
        try (InputStream toHash = source.getInputStream(); InputStream toRead = source.getInputStream()) {
            String sha256 = Sha256.of(toHash);
            ProjectFile file = CanonicalJson.read(toRead, ProjectFile.class);
            file.requireShape();
            return new Received(file, sha256);
        }
    }

    private void requireShape() {
        if (!KIND.equals(kind) || format != FORMAT || tables == null || people == null) {
            throw new IllegalArgumentException("This is no project file of format " + FORMAT);
        }
        for (String name : tables.keySet()) {
            if (Arrays.stream(ProjectTable.values()).noneMatch(table -> table.sqlName().equals(name))) {
                throw new IllegalArgumentException("A project has no table '" + name + "'");
            }
        }
    }

    /** Rows of a table; none where the file has none. */
    List<Map<String, Object>> rows(ProjectTable table) {
        return tables.getOrDefault(table.sqlName(), List.of());
    }
}
