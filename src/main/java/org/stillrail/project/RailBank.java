package org.stillrail.project;

import java.util.UUID;

/** One bank of a rail, as the rail's page lists it. */
public record RailBank(UUID id, String name, String state, int latestNumber, String author, boolean stale) {
}
