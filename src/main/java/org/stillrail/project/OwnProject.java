package org.stillrail.project;

import java.util.UUID;

/** A project that a person works in, by name. */
public record OwnProject(UUID id, String name) {
}
