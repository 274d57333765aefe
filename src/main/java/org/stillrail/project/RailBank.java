package org.stillrail.project;

import java.util.UUID;

/**
 * One bank of a rail, as lists show it.
 *
 * @param stale           whether it was judged by an older revision of the rail
 * @param evidenceChanged whether a part of its newest revision says something else by now
 * @param approvedChanged number of an approved revision below the newest of which the same is true, or null
 */
public record RailBank(
        UUID id, String name, String state, int latestNumber, String author, boolean stale, boolean evidenceChanged, Integer approvedChanged) {
}
