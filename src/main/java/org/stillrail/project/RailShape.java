package org.stillrail.project;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.stillrail.web.Form;
import org.stillrail.web.FormShape;

/** Which figures of a rail stand or fall together, and how its choices read. */
final class RailShape implements FormShape<RailDocument> {

    /** Beginnings of the names of fields that belong together: a limit with its conditions and the document that it comes from. */
    private static final List<String> LIMITS = List.of("input", "ripple", "window", "step", "margins", "esr", "ambient", "life", "startUp", "bleed", "space");

    private static final Map<String, Set<String>> OTHERS = Map.of(
            "window", Set.of("setPointAccuracy", "regulation"),
            "margins", Set.of("leastPhaseMargin", "leastGainMargin"),
            "space", Set.of("height", "area", "cost"),
            "inductance", Set.of("inductanceTolerance", "inductanceLeft"),
            "switching", Set.of("switchingTolerance"),
            "topology", Set.of("drawnCurrent", "turnsRatio", "edge", "statedCrossover", "control", "ramp", "sense", "slope", "delay", "compensation", "gain", "zeros", "poles", "crossover", "phaseMargin",
                    "amplifier", "transconductance", "amplifierShare", "networkR1",
                    "networkR2", "networkC1", "networkC2", "networkR3", "networkC3"));

    @Override
    public Form fill(RailDocument document) {
        return RailForm.fill(document);
    }

    @Override
    public RailDocument read(Form form) {
        return RailForm.read(form);
    }

    @Override
    public String group(String field) {
        return OTHERS.entrySet().stream().filter(entry -> entry.getValue().contains(field)).map(Map.Entry::getKey).findFirst()
                .or(() -> LIMITS.stream().filter(field::startsWith).findFirst())
                .orElse(field);
    }

    @Override
    public String words(String field, String value) {
        return switch (field) {
            case "topology" -> ConverterForm.topologies().getOrDefault(value, value);
            case "control" -> ControlForm.controls().getOrDefault(value, value);
            case "compensation" -> ControlForm.compensations().getOrDefault(value, value);
            case "amplifier" -> ControlForm.amplifiers().getOrDefault(value, value);
            default -> value;
        };
    }
}
