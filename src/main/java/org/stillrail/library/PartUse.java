package org.stillrail.library;

/**
 * One place that uses a part.
 *
 * @param name            of the bank or whatever it is
 * @param path            address of its page
 * @param note            which revision, in which state
 * @param railV           nominal voltage of the rail that it stands on, null where there is none
 * @param evidenceChanged whether what it says of the part is no longer the newest, or the part was restricted or withdrawn since
 */
public record PartUse(String name, String path, String note, Double railV, boolean evidenceChanged) {
}
