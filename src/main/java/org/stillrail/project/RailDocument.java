package org.stillrail.project;

import org.stillrail.electrical.requirement.RailFigures;

/**
 * What one revision of a rail says.
 *
 * @param purpose what it feeds, in a sentence
 */
public record RailDocument(String purpose, RailFigures figures) {
}
