package org.stillrail.library;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import org.stillrail.electrical.capacitor.Technology;
import org.stillrail.web.Quantity;

/**
 * A line of words as somebody types it to find a part: {@code 10uF 16V ceramic}. A capacitance finds parts of that size, a voltage
 * those rated for it at least, a word of a technology's name those technologies; all other words have to occur in the number or
 * the maker.
 */
final class PartSearch {

    private static final Pattern CAPACITANCE = Pattern.compile("\\d+([.,]\\d+)?[pnu\u00b5\u03bcm]F?|\\d+[pnu\u00b5\u03bcm]\\d+F?");
    private static final Pattern VOLTAGE = Pattern.compile("\\d+([.,]\\d+)?V|\\d+V\\d+");
    /** Sizes of one E series are farther apart. */
    private static final double SAME_SIZE = 0.01;
    private static final int FEWEST_LETTERS = 4;

    private PartSearch() {
    }

    static PartFilter filter(String text) {
        List<String> words = new ArrayList<>();
        Double capacitanceF = null;
        Double voltageV = null;
        Set<Technology> technologies = EnumSet.allOf(Technology.class);
        for (String word : text.strip().split("\\s+")) {
            if (capacitanceF == null && CAPACITANCE.matcher(word).matches()) {
                capacitanceF = Quantity.parse(word, "F");
            } else if (voltageV == null && VOLTAGE.matcher(word).matches()) {
                voltageV = Double.valueOf(word.replace(',', '.').replaceFirst("V$", "").replace('V', '.'));
            } else if (!technologies(word).isEmpty()) {
                technologies.retainAll(technologies(word));
            } else {
                words.add(word);
            }
        }
        String rest = String.join(" ", words);
        return new PartFilter(rest.isEmpty() ? null : rest, technologies.size() == Technology.values().length ? null : technologies,
                capacitanceF == null ? null : (1 - SAME_SIZE) * capacitanceF, capacitanceF == null ? null : (1 + SAME_SIZE) * capacitanceF, voltageV, null);
    }

    /** Those whose name holds the word; none for a word so short that it could be of anything. */
    static Set<Technology> technologies(String word) {
        Set<Technology> found = EnumSet.noneOf(Technology.class);
        if (word.length() >= FEWEST_LETTERS) {
            for (Technology each : Technology.values()) {
                if (each.label().toLowerCase(Locale.ROOT).contains(word.toLowerCase(Locale.ROOT))) {
                    found.add(each);
                }
            }
        }
        return found;
    }
}
