package org.stillrail.web;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import org.springframework.util.MultiValueMap;

/**
 * The fields of a submitted form exactly as typed, and the one place where they become values. A field that cannot be
 * read is noted in {@link #errors()} and reading goes on, so that a person sees every wrong field at once.
 */
public final class Form {

    private static final int LONGEST_TEXT = 4000;

    private final Map<String, String> typed = new LinkedHashMap<>();
    private final Map<String, String> labels = new LinkedHashMap<>();
    private final FieldErrors errors = new FieldErrors();

    public static Form empty() {
        return new Form();
    }

    /** Takes the first value of every parameter. */
    public static Form of(MultiValueMap<String, String> parameters) {
        Form form = new Form();
        parameters.forEach((name, values) -> form.typed.put(name, values.isEmpty() ? "" : values.get(0)));
        return form;
    }

    /** Fills a field for display. */
    public Form with(String name, String value) {
        typed.put(name, value == null ? "" : value);
        return this;
    }

    /** A copy of what was typed, less the fields whose name is meant. */
    public Form without(Predicate<String> names) {
        Form kept = new Form();
        typed.forEach((name, value) -> {
            if (!names.test(name)) {
                kept.typed.put(name, value);
            }
        });
        return kept;
    }

    /** Drops the fields whose name is meant and takes the other's of these names instead. */
    public void replace(Predicate<String> names, Form other) {
        typed.keySet().removeIf(names);
        other.typed.forEach((name, value) -> {
            if (names.test(name)) {
                typed.put(name, value);
            }
        });
    }

    public Set<String> names() {
        return typed.keySet();
    }

    /** What messages call a field that has been read, else null. */
    public String label(String name) {
        return labels.get(name);
    }

    /** What was typed, or null; for templates. */
    public String get(String name) {
        return typed.get(name);
    }

    public FieldErrors errors() {
        return errors;
    }

    public boolean isBlank(String name) {
        String value = typed.get(name);
        return value == null || value.isBlank();
    }

    /** Text without surrounding blanks; an empty one is an error where it is required, else null. */
    public String text(String name, String label, boolean required) {
        labels.putIfAbsent(name, label);
        if (isBlank(name)) {
            if (required) {
                errors.add(name, label + " is missing");
            }
            return null;
        }
        String value = typed.get(name).strip();
        if (value.length() > LONGEST_TEXT) {
            errors.add(name, label + " is longer than " + LONGEST_TEXT + " characters");
            return null;
        }
        if (value.indexOf('\0') >= 0) {
            errors.add(name, label + " holds a character that cannot be stored");
            return null;
        }
        return value;
    }

    /** An engineering quantity in SI; a blank one is an error where it is required, else null. */
    public Double quantity(String name, String label, String unit, boolean required) {
        return read(name, label, required, text -> {
            try {
                return Quantity.parse(text, unit);
            } catch (IllegalArgumentException e) {
                throw new IllegalArgumentException(label + ": " + e.getMessage(), e);
            }
        });
    }

    /** As {@link #quantity} but above 0. */
    public Double positive(String name, String label, String unit, boolean required) {
        Double value = quantity(name, label, unit, required);
        if (value != null && !(value > 0)) {
            errors.add(name, label + " must be above 0");
            return null;
        }
        return value;
    }

    /** As {@link #quantity} but 0 or above. */
    public Double notNegative(String name, String label, String unit, boolean required) {
        Double value = quantity(name, label, unit, required);
        if (value != null && value < 0) {
            errors.add(name, label + " must not be negative");
            return null;
        }
        return value;
    }

    /** A whole number within bounds. */
    public Integer whole(String name, String label, int least, int most, boolean required) {
        return read(name, label, required, text -> {
            int value;
            try {
                value = Integer.parseInt(text);
            } catch (NumberFormatException e) {
                throw new IllegalArgumentException(label + " must be a whole number, not '" + text + "'");
            }
            if (value < least || value > most) {
                throw new IllegalArgumentException(label + " must be from " + least + " to " + most);
            }
            return value;
        });
    }

    /** Any other kind of value; the reader's IllegalArgumentException becomes the field's message. */
    public <T> T read(String name, String label, boolean required, Function<String, T> reader) {
        String value = text(name, label, required);
        if (value == null) {
            return null;
        }
        try {
            return reader.apply(value);
        } catch (IllegalArgumentException e) {
            errors.add(name, e.getMessage());
            return null;
        }
    }
}
