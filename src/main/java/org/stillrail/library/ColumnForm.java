package org.stillrail.library;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.stillrail.sweepfile.ColumnMapping;
import org.stillrail.sweepfile.MappedColumn;
import org.stillrail.sweepfile.ColumnKind;
import org.stillrail.web.Form;

/** What the user says each column of a text file is: a choice above every column of the preview. */
final class ColumnForm {

    private static final int MOST_COLUMNS = 64;

    private ColumnForm() {
    }

    /**
     * Null where no column has been chosen yet.
     *
     * @throws IllegalArgumentException where the columns are no mapping; a unit that is none of its column's is then in the form's errors
     */
    static ColumnMapping read(Form form) {
        List<String> entries = new ArrayList<>();
        for (int n = 1; n <= MOST_COLUMNS; n++) {
            String kind = form.get("column" + n);
            if (kind == null || kind.isBlank()) {
                continue;
            }
            String unit = form.get("unit" + n);
            checkUnit(kind, n, unit, form);
            entries.add(kind + "=" + (form.isBlank("negated" + n) ? "" : "-") + n + (unit == null || unit.isBlank() ? "" : ":" + unit.strip()));
        }
        if (entries.isEmpty()) {
            return null;
        }
        add(entries, "delimiter", form.get("delimiter"));
        add(entries, "decimal", form.get("decimal"));
        add(entries, "reference", form.get("reference"));
        return ColumnMapping.parse(String.join(", ", entries));
    }

    private static void checkUnit(String kind, int n, String unit, Form form) {
        ColumnKind known = Arrays.stream(ColumnKind.values()).filter(each -> each.key().equals(kind)).findFirst().orElse(null);
        if (known == null) {
            return;
        }
        try {
            new MappedColumn(known, n, unit, false);
        } catch (IllegalArgumentException e) {
            form.errors().add("unit" + n, e.getMessage());
            throw e;
        }
    }

    /** Puts a mapping into the fields, so that it can be corrected. */
    static void fill(Form form, ColumnMapping mapping) {
        for (int n = 1; n <= MOST_COLUMNS; n++) {
            if (form.get("column" + n) != null) {
                form.with("column" + n, "").with("unit" + n, "").with("negated" + n, "");
            }
        }
        for (MappedColumn column : mapping.columns()) {
            form.with("column" + column.number(), column.kind().key()).with("unit" + column.number(), column.unit());
            if (column.negated()) {
                form.with("negated" + column.number(), "on");
            }
        }
    }

    /** Choices for what a column is, by the reader's word. */
    static Map<String, String> kinds() {
        Map<String, String> choices = new LinkedHashMap<>();
        choices.put("", "not used");
        Arrays.stream(ColumnKind.values()).forEach(kind -> choices.put(kind.key(), kind.key().replace('-', ' ')));
        return choices;
    }

    private static void add(List<String> entries, String name, String value) {
        if (value != null && !value.isBlank()) {
            entries.add(name + "=" + value);
        }
    }
}
