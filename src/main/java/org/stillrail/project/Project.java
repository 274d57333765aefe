package org.stillrail.project;

import java.time.OffsetDateTime;
import java.util.UUID;

/** A piece of hardware whose rails are qualified together. */
public record Project(UUID id, String name, String purpose, String createdBy, OffsetDateTime createdAt) {
}
