package org.stillrail.electrical.converter;

/** How the error voltage, after the compensator, moves the inductor. */
public sealed interface Control permits VoltageMode, CurrentMode {
}
