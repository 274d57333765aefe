package org.stillrail.web;

/**
 * One page of a long list.
 *
 * @param number from 1
 */
public record Page(int number, int size, int total) {

    /** Takes the field {@code page}; anything else than an existing page is the nearest one. */
    public static Page of(Form form, int size, int total) {
        int last = Math.max(1, (total + size - 1) / size);
        int asked;
        try {
            asked = form.isBlank("page") ? 1 : Integer.parseInt(form.get("page").strip());
        } catch (NumberFormatException e) {
            asked = 1;
        }
        return new Page(Math.min(last, Math.max(1, asked)), size, total);
    }

    public int offset() {
        return (number - 1) * size;
    }

    public boolean hasPrevious() {
        return number > 1;
    }

    public boolean hasNext() {
        return offset() + size < total;
    }

    public int first() {
        return total == 0 ? 0 : offset() + 1;
    }

    public int last() {
        return Math.min(total, offset() + size);
    }
}
