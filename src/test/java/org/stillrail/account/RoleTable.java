package org.stillrail.account;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.springframework.core.io.ClassPathResource;
import org.stillrail.support.Endpoint;

/**
 * {@code role-table.csv}: one line for each endpoint, one column for a stranger and one for each role, {@code yes} or
 * {@code -}. Lines that begin with # and blank lines are for readers.
 */
final class RoleTable {

    private static final List<String> HEADER = List.of(
            "method", "path", "anonymous", "viewer", "engineer", "librarian", "reviewer", "administrator");

    private final Map<String, List<Boolean>> rows = new LinkedHashMap<>();

    static RoleTable read() {
        RoleTable table = new RoleTable();
        List<String> lines = lines();
        if (!split(lines.get(0)).equals(HEADER)) {
            throw new IllegalStateException("role-table.csv must begin with the columns " + HEADER);
        }
        lines.stream().skip(1).map(RoleTable::split).forEach(table::add);
        return table;
    }

    private static List<String> lines() {
        try {
            String text = new ClassPathResource("role-table.csv").getContentAsString(StandardCharsets.UTF_8);
            return text.lines().filter(line -> !line.isBlank() && !line.startsWith("#")).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> split(String line) {
        return Arrays.stream(line.split(",")).map(String::strip).toList();
    }

    private void add(List<String> cells) {
        List<Boolean> allowed = cells.stream().skip(2).map(RoleTable::isYes).toList();
        if (cells.size() != HEADER.size() || rows.put(cells.get(0) + " " + cells.get(1), allowed) != null) {
            throw new IllegalStateException("Not a line of its own with " + HEADER.size() + " cells: " + cells);
        }
    }

    private static boolean isYes(String cell) {
        if (!cell.equals("yes") && !cell.equals("-")) {
            throw new IllegalStateException("A cell is 'yes' or '-', not '" + cell + "'");
        }
        return cell.equals("yes");
    }

    /** Names of all endpoints that have a line. */
    List<String> names() {
        return List.copyOf(rows.keySet());
    }

    boolean strangerMay(Endpoint endpoint) {
        return rows.get(endpoint.name()).get(0);
    }

    boolean may(Role role, Endpoint endpoint) {
        return rows.get(endpoint.name()).get(1 + role.ordinal());
    }
}
