package org.stillrail.electrical.evaluation;

import org.stillrail.electrical.converter.Compensator;
import org.stillrail.electrical.converter.CompensatorParts;
import org.stillrail.electrical.requirement.ControlFigures;
import org.stillrail.electrical.requirement.RailFigures;

/**
 * The compensator that closes the loop, the same at every corner, and the network that makes it: the rail's own parts, or those for its transconductance
 * amplifier, or those of an op-amp with an input resistor of {@link #USUAL_R1_OHM}.
 *
 * @param given      how the rail says what it is
 * @param compensator null where it could not be placed
 * @param parts      null where there is no compensator, and where the network cannot make it
 * @param refusal    why there is no compensator or there are no parts, without a full stop; null where there are
 */
public record CompensatorInUse(ControlFigures.Given given, Compensator compensator, CompensatorParts parts, String refusal) {

    /** Of R1 where the rail states none: its choice sets the level of all other values. */
    public static final double USUAL_R1_OHM = 10e3;

    /** @param compensation null without a control, and then there is none */
    static CompensatorInUse of(RailFigures rail, Tried<Compensation> compensation) {
        if (compensation == null) {
            return null;
        }
        ControlFigures control = rail.converter().control();
        if (!compensation.answered()) {
            return new CompensatorInUse(control.given(), null, null, compensation.refusal());
        }
        Compensator compensator = compensation.value().compensator();
        if (control.parts() != null) {
            return new CompensatorInUse(control.given(), compensator, control.parts(), null);
        }
        Tried<CompensatorParts> parts = Tried.of(() -> control.amplifier() == null ? CompensatorParts.of(compensator, USUAL_R1_OHM)
                : control.amplifier().network(compensator));
        return new CompensatorInUse(control.given(), compensator, parts.value(), parts.refusal());
    }
}
