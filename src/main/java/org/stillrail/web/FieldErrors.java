package org.stillrail.web;

import java.util.LinkedHashMap;
import java.util.Map;

/** What is wrong with a form, by field name; the name {@code ""} is the form as a whole. Every wrong field is in it, not just the first. */
public final class FieldErrors {

    private final Map<String, String> messages = new LinkedHashMap<>();

    /** Keeps the first message of a field. */
    public void add(String field, String message) {
        messages.putIfAbsent(field, message);
    }

    public boolean has(String field) {
        return messages.containsKey(field);
    }

    /** The message of a field, or null. */
    public String of(String field) {
        return messages.get(field);
    }

    public boolean none() {
        return messages.isEmpty();
    }

    public int count() {
        return messages.size();
    }

    public Map<String, String> all() {
        return Map.copyOf(messages);
    }
}
