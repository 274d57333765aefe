package org.stillrail.library;

/**
 * One place that uses a part.
 *
 * @param name of the bank or whatever it is
 * @param path address of its page
 * @param note which revision of the part, in which state
 */
public record PartUse(String name, String path, String note) {
}
