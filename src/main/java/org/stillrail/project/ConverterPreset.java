package org.stillrail.project;

import java.util.UUID;
import org.stillrail.electrical.requirement.ConverterFigures;

/** A converter kept under a name, to start rails from. */
record ConverterPreset(UUID id, String name, ConverterFigures converter) {
}
