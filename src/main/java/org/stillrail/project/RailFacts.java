package org.stillrail.project;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.stillrail.electrical.converter.Compensator;
import org.stillrail.electrical.converter.CompensatorParts;
import org.stillrail.electrical.converter.Transconductance;
import org.stillrail.electrical.requirement.Citation;
import org.stillrail.electrical.requirement.ControlFigures;
import org.stillrail.electrical.requirement.ConverterFigures;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.requirement.Topology;
import org.stillrail.web.Quantity;

/** What a rail asks, line by line, for its page. */
public final class RailFacts {

    /** @param source where the limit comes from; empty for what is no limit */
    public record Fact(String name, String value, String source) {
    }

    private final List<Fact> facts = new ArrayList<>();

    private RailFacts() {
    }

    /** @param currency unit of a cost, empty where none is said */
    public static List<Fact> of(RailFigures rail, String currency) {
        RailFacts facts = new RailFacts();
        facts.add("Output", q(rail.nominalVoltageV(), "V") + " at " + q(rail.nominalCurrentA(), "A"), null);
        facts.add("Input", q(rail.input().minimumV(), "V") + " to " + q(rail.input().maximumV(), "V") + ", nominally "
                + q(rail.input().nominalV(), "V"), null);
        facts.converter(rail.converter());
        if (rail.ripple() != null) {
            facts.add("Ripple", "at most " + q(rail.ripple().peakToPeakV(), "V") + " peak to peak", rail.ripple().citation());
        }
        if (rail.window() != null) {
            facts.add("Window", "+" + q(rail.window().plusV(), "V") + ", −" + q(rail.window().minusV(), "V") + "; set-point ±"
                    + q(rail.window().setPointAccuracyV(), "V") + ", regulation ±" + q(rail.window().regulationV(), "V"),
                    rail.window().citation());
        }
        if (rail.loadStep() != null) {
            facts.add("Load step", q(rail.loadStep().fromA(), "A") + " to " + q(rail.loadStep().toA(), "A") + " at "
                    + q(rail.loadStep().slewAPerS(), "A/s") + ", deviation at most " + q(rail.loadStep().allowedDeviationV(), "V")
                    + (rail.loadStep().loadLineOhm() == null ? "" : ", load line " + q(rail.loadStep().loadLineOhm(), "ohm")) + ", settled within ±" + q(rail.loadStep().settledWithinV(), "V"), rail.loadStep().citation());
        }
        if (rail.margins() != null) {
            List<String> least = new ArrayList<>();
            if (rail.margins().leastPhaseDeg() != null) {
                least.add("phase at least " + q(rail.margins().leastPhaseDeg(), "deg"));
            }
            if (rail.margins().leastGainDb() != null) {
                least.add("gain at least " + q(rail.margins().leastGainDb(), "dB"));
            }
            facts.add("Margins of the loop", String.join(", ", least), rail.margins().citation());
        }
        if (rail.esrWindow() != null) {
            facts.add("Re Z at crossover", bound(rail.esrWindow().minimumOhm(), "at least ") + " " + bound(rail.esrWindow().maximumOhm(), "at most "),
                    rail.esrWindow().citation());
        }
        if (rail.ambient() != null) {
            facts.add("Ambient", q(rail.ambient().minimumC(), "degC") + " to " + q(rail.ambient().maximumC(), "degC"), rail.ambient().citation());
        }
        if (rail.life() != null) {
            facts.add("Life", q(rail.life().hours(), "h"), rail.life().citation());
        }
        if (rail.startUp() != null) {
            facts.add("Start-up", "ramp of " + q(rail.startUp().rampS(), "s") + ", load meanwhile "
                    + (rail.startUp().loadA() == null ? "not stated" : q(rail.startUp().loadA(), "A")), rail.startUp().citation());
        }
        if (rail.bleed() != null) {
            facts.add("Bleed resistor", q(rail.bleed().resistanceOhm(), "ohm")
                    + (rail.bleed().safeV() == null ? "" : ", down to " + q(rail.bleed().safeV(), "V")), rail.bleed().citation());
        }
        if (rail.space() != null) {
            List<String> limits = new ArrayList<>();
            if (rail.space().heightM() != null) {
                limits.add("at most " + q(rail.space().heightM(), "m") + " high");
            }
            if (rail.space().areaM2() != null) {
                limits.add("at most " + q(rail.space().areaM2() * 1e6, "mm2").replace("mm2", "mm²"));
            }
            if (rail.space().cost() != null) {
                limits.add(("cost at most " + rail.space().cost().toPlainString() + " " + currency).strip());
            }
            facts.add("Space and cost", String.join(", ", limits), rail.space().citation());
        }
        return List.copyOf(facts.facts);
    }

    private void converter(ConverterFigures converter) {
        if (converter.topology() == Topology.DRAWN) {
            add("Converter", "its current into the bank drawn by points, " + ConverterForm.points(converter.drawnCurrent()).entry("s", "A") + "; switching at "
                    + q(converter.switchingHz(), "Hz") + " ±" + q(converter.switchingTolerancePercent(), "%"), null);
        } else {
            inductive(converter);
        }
        control(converter);
    }

    private void inductive(ConverterFigures converter) {
        add("Converter", converter.topology().label() + (converter.turnsRatio() == null ? "" : " of " + q(converter.turnsRatio(), "") + " to 1 turns") + ", " + (converter.phases() == 1 ? "one phase" : converter.phases() + " phases") + " of "
                + q(converter.inductanceH(), "H") + " ±" + q(converter.inductanceTolerancePercent(), "%")
                + (converter.inductanceLeftPercent() == null ? "" : " (" + q(converter.inductanceLeftPercent(), "%") + " left at the peak current)") + " and "
                + q(converter.resistanceOhm(), "ohm") + ", switching at " + q(converter.switchingHz(), "Hz") + " ±"
                + q(converter.switchingTolerancePercent(), "%")
                + (converter.currentLimitA() == null ? "" : ", current limit " + q(converter.currentLimitA(), "A"))
                + (converter.topology() == Topology.BUCK ? "" : ", edges of the rectifier's current " + q(converter.edgeOrUsualS(), "s")
                        + (converter.edgeS() == null ? " (not stated, usual)" : "")), null);
    }

    private void control(ConverterFigures converter) {
        ControlFigures control = converter.control();
        if (control != null && converter.topology() != Topology.BUCK) {
            add("Loop", "not modelled for this converter; its crossover is stated as " + q(control.crossoverHz(), "Hz"), null);
        } else if (control != null) {
            String mode = control.kind() == ControlFigures.Kind.VOLTAGE_MODE
                    ? "voltage mode, ramp " + q(control.rampV(), "V")
                    : "peak current mode, sense " + q(control.senseOhm(), "ohm") + ", slope " + q(control.slopeAPerS(), "A/s");
            String delay = control.delayS() == null ? "delay half a switching period" : "delay " + q(control.delayS(), "s");
            add("Control", mode + ", " + delay, null);
            add("Compensator", compensator(control), null);
        }
    }

    private static String compensator(ControlFigures control) {
        Compensator made = control.compensator();
        if (made == null) {
            return "placed for a crossover of " + q(control.crossoverHz(), "Hz") + " and a phase margin of " + q(control.phaseMarginDeg(), "deg")
                    + amplifier(control.amplifier());
        }
        String response = "gain " + q(made.gain(), "rad/s") + ", zeros " + frequencies(made.zerosHz()) + ", poles " + frequencies(made.polesHz());
        CompensatorParts parts = control.parts();
        if (parts == null) {
            return response + amplifier(control.amplifier());
        }
        return (control.amplifier() == null ? "R1 " + q(parts.r1Ohm(), "ohm") + ", " : "") + "R2 " + q(parts.r2Ohm(), "ohm") + ", C1 " + q(parts.c1F(), "F") + ", C2 "
                + q(parts.c2F(), "F") + (parts.r3Ohm() == null ? "" : ", R3 " + q(parts.r3Ohm(), "ohm") + ", C3 " + q(parts.c3F(), "F"))
                + amplifier(control.amplifier()) + "; they make " + response;
    }

    private static String amplifier(Transconductance amplifier) {
        return amplifier == null ? "" : ", transconductance amplifier of " + q(amplifier.gmS(), "S") + " that sees " + q(amplifier.outputShare(), "") + " of the output";
    }

    private static String frequencies(List<Double> hz) {
        return hz.isEmpty() ? "none" : hz.stream().map(each -> q(each, "Hz")).collect(Collectors.joining(" and "));
    }

    private void add(String name, String value, Citation citation) {
        facts.add(new Fact(name, value, citation == null ? "" : citation.toString()));
    }

    private static String bound(Double value, String words) {
        return value == null ? "" : words + q(value, "ohm");
    }

    private static String q(double value, String unit) {
        return Quantity.format(value, unit);
    }
}
