package org.stillrail.electrical.step;

/** The responses to a load step and to its way back, each from rest. */
public record ThereAndBack(StepResult there, StepResult back) {
}
