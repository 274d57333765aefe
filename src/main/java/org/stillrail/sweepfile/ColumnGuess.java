package org.stillrail.sweepfile;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A mapping from the headings of a text file.
 *
 * @param words   what each heading says, in the order of the columns
 * @param mapping empty where the headings do not make a whole
 * @param reason  why not, or empty
 */
record ColumnGuess(List<HeadingWords> words, Optional<ColumnMapping> mapping, String reason) {

    /** What was chosen though the headings offer the same twice. */
    List<String> notes() {
        List<String> notes = new ArrayList<>();
        for (MappedColumn column : mapping.map(ColumnMapping::columns).orElse(List.of())) {
            long alike = words.stream().filter(word -> word.kind() == column.kind()).count();
            if (alike > 1) {
                notes.add(alike + " columns are headed as " + column.kind().key() + "; column " + column.number() + " was read.");
            }
        }
        return notes;
    }

    /** @param fixture says which quantity is wanted where a file holds several; may be null */
    static ColumnGuess of(TextLayout layout, Fixture fixture) {
        List<HeadingWords> words = layout.headings().stream().map(HeadingWords::of).toList();
        Map<ColumnKind, MappedColumn> found = new EnumMap<>(ColumnKind.class);
        for (int i = 0; i < words.size(); i++) {
            HeadingWords word = words.get(i);
            if (word.kind() != null) {
                found.putIfAbsent(word.kind(), new MappedColumn(word.kind(), i + 1, word.unit(), word.negated()));
            }
        }
        lendPhase(found, ColumnKind.S11_PHASE, ColumnKind.S11_DECIBEL, ColumnKind.S11_MAGNITUDE);
        lendPhase(found, ColumnKind.S21_PHASE, ColumnKind.S21_DECIBEL, ColumnKind.S21_MAGNITUDE);
        lendPhase(found, ColumnKind.ADMITTANCE_PHASE, ColumnKind.ADMITTANCE_MAGNITUDE, ColumnKind.ADMITTANCE_MAGNITUDE);
        if (!found.containsKey(ColumnKind.FREQUENCY)) {
            return new ColumnGuess(words, Optional.empty(), layout.headingLine() == 0
                    ? "the file has no headings" : "no heading names the frequency");
        }
        Optional<ColumnPair> pair = pair(found.keySet(), fixture);
        if (pair.isEmpty()) {
            return new ColumnGuess(words, Optional.empty(), "the headings name no pair that makes an impedance");
        }
        List<MappedColumn> columns = new ArrayList<>(List.of(
                found.get(ColumnKind.FREQUENCY), found.get(pair.get().first()), found.get(pair.get().second())));
        if (found.containsKey(ColumnKind.BLOCK)) {
            columns.add(found.get(ColumnKind.BLOCK));
        }
        return new ColumnGuess(words, Optional.of(new ColumnMapping(columns, ColumnMapping.DEFAULT_REFERENCE_OHM, null, null)), "");
    }

    /** A column that only says phase belongs to the magnitude that is there. */
    private static void lendPhase(Map<ColumnKind, MappedColumn> found, ColumnKind phase, ColumnKind level, ColumnKind magnitude) {
        MappedColumn plain = found.get(ColumnKind.PHASE);
        boolean wanted = found.containsKey(level) || found.containsKey(magnitude);
        if (plain != null && wanted && !found.containsKey(phase) && !found.containsKey(ColumnKind.MAGNITUDE)) {
            found.put(phase, new MappedColumn(phase, plain.number(), plain.unit(), plain.negated()));
        }
    }

    private static Optional<ColumnPair> pair(Set<ColumnKind> kinds, Fixture fixture) {
        if (fixture == null) {
            return ColumnPair.among(kinds);
        }
        return ColumnPair.among(kinds, pair -> pair.holds().isMadeFor(fixture))
                .or(() -> ColumnPair.among(kinds, pair -> pair.holds().suits(fixture)))
                .or(() -> ColumnPair.among(kinds));
    }
}
