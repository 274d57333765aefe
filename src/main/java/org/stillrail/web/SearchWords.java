package org.stillrail.web;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The words that somebody searches for: each has to occur, in any of some columns, whatever its case and their order. */
public final class SearchWords {

    private final List<String> words;

    private SearchWords(List<String> words) {
        this.words = words;
    }

    /** @param text with at least one word */
    public static SearchWords of(String text) {
        return new SearchWords(Arrays.stream(text.toLowerCase(Locale.ROOT).strip().split("\\s+")).distinct().toList());
    }

    /** SQL: true where every word occurs in one of the columns. Reads {@link #parameters()}. */
    public String in(String... columns) {
        return in(word -> "", columns);
    }

    /**
     * As {@link #in(String...)}.
     *
     * @param further SQL of a condition that does instead of a word, or an empty text
     */
    public String in(Function<String, String> further, String... columns) {
        StringBuilder sql = new StringBuilder();
        for (int i = 0; i < words.size(); i++) {
            String parameter = ":word" + i;
            String other = further.apply(words.get(i));
            sql.append(i == 0 ? "(" : " and (")
                    .append(Arrays.stream(columns).map(column -> "lower(" + column + ") like " + parameter + " escape '!'").collect(Collectors.joining(" or ")))
                    .append(other.isEmpty() ? "" : " or " + other)
                    .append(')');
        }
        return sql.toString();
    }

    public Map<String, String> parameters() {
        Map<String, String> parameters = new HashMap<>();
        for (int i = 0; i < words.size(); i++) {
            parameters.put("word" + i, pattern(words.get(i)));
        }
        return parameters;
    }

    /** For {@code like :pattern escape '!'} on lower-case text that begins with the first word. */
    public String beginning() {
        return escaped(words.get(0)) + "%";
    }

    /** For {@code like :pattern escape '!'} on lower-case text that holds all of a text as it stands. */
    public static String pattern(String text) {
        return "%" + escaped(text.toLowerCase(Locale.ROOT)) + "%";
    }

    private static String escaped(String text) {
        return text.replace("!", "!!").replace("%", "!%").replace("_", "!_");
    }
}
