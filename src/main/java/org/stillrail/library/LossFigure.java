package org.stillrail.library;

/**
 * One loss figure of a datasheet.
 *
 * @param value       ohm for {@link Kind#ESR}, a ratio for {@link Kind#LOSS_TANGENT}
 * @param frequencyHz where it is stated
 * @param bound       a datasheet's ESR is mostly a maximum: safe for ripple, optimistic for damping
 */
public record LossFigure(Kind kind, double value, double frequencyHz, Bound bound) {

    /** What is stated. */
    public enum Kind { ESR, LOSS_TANGENT }

    /** How the datasheet means it. */
    public enum Bound { MINIMUM, TYPICAL, MAXIMUM }
}
