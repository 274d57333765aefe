package org.stillrail.project;

import java.util.UUID;

/** Someone who may edit a project's rails and banks, if an engineer. */
public record Member(UUID personId, String displayName) {
}
