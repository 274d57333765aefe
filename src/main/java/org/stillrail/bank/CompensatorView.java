package org.stillrail.bank;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.stillrail.electrical.converter.Compensator;
import org.stillrail.electrical.converter.CompensatorParts;
import org.stillrail.electrical.converter.Transconductance;
import org.stillrail.electrical.evaluation.CompensatorInUse;
import org.stillrail.electrical.evaluation.Evaluation;
import org.stillrail.electrical.requirement.ControlFigures;
import org.stillrail.web.Quantity;

/**
 * The compensator in use as the page lists it.
 *
 * @param statement what it is and who says so
 * @param response  its gain, zeros and poles; empty where it could not be placed
 * @param parts     of its network; empty where there are none
 * @param note      on the parts, or why there are none
 */
record CompensatorView(String statement, List<Line> response, List<Line> parts, String note) {

    /** @param what the figure is, or where the part stands */
    record Line(String name, String value, String what) {
    }

    /** Null where no loop is closed. */
    static CompensatorView of(Evaluation evaluation) {
        CompensatorInUse used = evaluation.compensator();
        if (used == null) {
            return null;
        }
        ControlFigures control = evaluation.input().rail().converter().control();
        if (used.compensator() == null) {
            return new CompensatorView("There is none.", List.of(), List.of(), used.refusal() + ".");
        }
        return new CompensatorView(type(used.compensator()) + ", " + origin(control), response(used.compensator()),
                used.parts() == null ? List.of() : parts(used.parts(), control.amplifier()), note(used, control.amplifier()));
    }

    private static String type(Compensator compensator) {
        int zeros = compensator.zerosHz().size();
        int poles = compensator.polesHz().size();
        String made = "an integrator" + (zeros + poles == 0 ? " alone" : " with " + count(zeros, "zero") + " and " + count(poles, "pole"));
        return zeros == poles && zeros <= 2 ? "Type " + "I".repeat(zeros + 1) + ", " + made : "An" + made.substring(2);
    }

    private static String count(int count, String what) {
        return switch (count) {
            case 0 -> "no " + what;
            case 1 -> "one " + what;
            case 2 -> "two " + what + "s";
            default -> count + " " + what + "s";
        };
    }

    private static String origin(ControlFigures control) {
        return switch (control.given()) {
            case PLACED -> "placed for a crossover of " + q(control.crossoverHz(), "Hz") + " and a phase margin of " + q(control.phaseMarginDeg(), "deg")
                    + " at the nominal corner, and the same at every other.";
            case GAIN -> "as the rail gives it, the same at every corner.";
            case PARTS -> "as the rail's parts make it, the same at every corner.";
        };
    }

    private static List<Line> response(Compensator compensator) {
        List<Line> lines = new ArrayList<>();
        lines.add(new Line("Integrator gain", q(compensator.gain(), "rad/s"),
                "the integrator alone has gain 1 at " + q(compensator.gain() / (2 * Math.PI), "Hz")));
        lines.add(new Line(compensator.zerosHz().size() == 1 ? "Zero" : "Zeros", frequencies(compensator.zerosHz()), "they add phase"));
        lines.add(new Line(compensator.polesHz().size() == 1 ? "Pole" : "Poles", frequencies(compensator.polesHz()), "they take it away again, and gain above"));
        return lines;
    }

    private static List<Line> parts(CompensatorParts parts, Transconductance amplifier) {
        List<Line> lines = new ArrayList<>();
        if (amplifier != null) {
            lines.add(new Line("R2", q(parts.r2Ohm(), "ohm"), "at the amplifier's output, in series with C1 to ground"));
            lines.add(new Line("C1", q(parts.c1F(), "F"), "at the amplifier's output, in series with R2 to ground"));
            lines.add(new Line("C2", q(parts.c2F(), "F"), "from the amplifier's output to ground"));
            return lines;
        }
        lines.add(new Line("R1", q(parts.r1Ohm(), "ohm"), "from the output to the amplifier's input"));
        lines.add(new Line("R2", q(parts.r2Ohm(), "ohm"), "feedback, in series with C1"));
        lines.add(new Line("C1", q(parts.c1F(), "F"), "feedback, in series with R2"));
        lines.add(new Line("C2", q(parts.c2F(), "F"), "across R2 and C1 together"));
        if (parts.r3Ohm() != null) {
            lines.add(new Line("R3", q(parts.r3Ohm(), "ohm"), "across R1, in series with C3"));
            lines.add(new Line("C3", q(parts.c3F(), "F"), "across R1, in series with R3"));
        }
        return lines;
    }

    private static String note(CompensatorInUse used, Transconductance amplifier) {
        if (used.parts() == null) {
            return "No parts of " + (amplifier == null ? "an op-amp network" : "a transconductance amplifier's network") + " are given: " + used.refusal() + ".";
        }
        if (used.given() == ControlFigures.Given.PARTS) {
            return "The parts are those that the rail states.";
        }
        if (amplifier != null) {
            return "Parts at the output of the rail's transconductance amplifier of " + q(amplifier.gmS(), "S") + " that sees " + q(amplifier.outputShare(), "")
                    + " of the output, not rounded to values that are sold. State those that are fitted on the rail, and the loop is worked out with them.";
        }
        return "Parts of an op-amp network for an R1 of " + q(CompensatorInUse.USUAL_R1_OHM, "ohm") + ", not rounded to values that are sold. With another R1 all resistances"
                + " go with it and all capacitances against it; a transconductance amplifier takes other parts, which are given where the rail states one. State those that are fitted on the rail,"
                + " and the loop is worked out with them.";
    }

    private static String frequencies(List<Double> hz) {
        if (hz.size() == 2 && hz.get(0).equals(hz.get(1))) {
            return q(hz.get(0), "Hz") + ", twice";
        }
        return hz.isEmpty() ? "none" : hz.stream().map(each -> q(each, "Hz")).collect(Collectors.joining(" and "));
    }

    private static String q(double value, String unit) {
        return Quantity.format(value, unit, 3);
    }
}
