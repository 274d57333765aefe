package org.stillrail.library;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.stillrail.web.Form;
import org.stillrail.web.Quantity;

/**
 * A figure that differs between two revisions of a part, as its form writes it.
 *
 * @param before empty where it was not stated, likewise after
 */
record PartDifference(String name, String before, String after) {

    private static final Map<String, String> NAMES = new LinkedHashMap<>();

    static {
        List.of("maker:Maker", "technology:Technology", "capacitance:Capacitance", "toleranceMinus:Tolerance, minus",
                "tolerancePlus:Tolerance, plus", "ratedVoltage:Rated voltage", "inductance:ESL", "selfResonance:Self-resonance", "rippleCurrent:Ripple current", "rippleFrequency:Ripple current frequency",
                "rippleTemperature:Ripple current temperature", "temperatureMin:Lowest temperature", "temperatureMax:Highest temperature",
                "enduranceHours:Endurance", "enduranceTemperature:Endurance temperature", "enduranceRise:Warming in the endurance test",
                "lifeOverVoltage:Life over voltage",
                "thermalResistance:Thermal resistance", "reverseVoltage:Reverse voltage", "dielectricCode:Class code", "caseSize:Case size",
                "length:Length", "width:Width or diameter", "height:Height", "cost:Cost", "datasheetDocument:Datasheet document",
                "datasheetRevision:Datasheet revision", "datasheetPage:Datasheet page", "overBias:Capacitance over bias",
                "overTemperature:Capacitance over temperature", "esrOverTemperature:ESR over temperature",
                "esrOverTemperatureFrequency:Frequency of the ESR curve", "ageing:Ageing", "refereeHours:Referee time",
                "endOfLifeCapacitance:Capacitance at the end of life", "endOfLifeResistance:ESR at the end of life",
                "rippleOverFrequency:Ripple rating over frequency", "rippleOverTemperature:Ripple rating over temperature", "note:Note")
                .forEach(entry -> NAMES.put(entry.substring(0, entry.indexOf(':')), entry.substring(entry.indexOf(':') + 1)));
    }

    /** Names of the form's fields that hold one figure each, in the order of the form. */
    static List<String> fields() {
        return List.copyOf(NAMES.keySet());
    }

    /** In the order of the form, losses and the choice of the model last; empty where both say the same. */
    static List<PartDifference> between(PartDocument before, PartDocument after) {
        Form a = PartForm.fill(before);
        Form b = PartForm.fill(after);
        List<PartDifference> differences = new ArrayList<>();
        NAMES.forEach((field, name) -> add(differences, name, a.get(field), b.get(field)));
        add(differences, "Losses", losses(before), losses(after));
        add(differences, "Model for banks", model(before.model()), model(after.model()));
        return List.copyOf(differences);
    }

    private static void add(List<PartDifference> differences, String name, String before, String after) {
        String a = before == null ? "" : before;
        String b = after == null ? "" : after;
        if (!a.equals(b)) {
            differences.add(new PartDifference(name, a, b));
        }
    }

    private static String losses(PartDocument part) {
        return part.losses().stream()
                .map(loss -> (loss.kind() == LossFigure.Kind.ESR ? "ESR " + Quantity.format(loss.value(), "ohm") : "loss tangent " + loss.value()) + " "
                        + loss.bound().name().toLowerCase(Locale.ROOT) + " at " + Quantity.format(loss.frequencyHz(), "Hz"))
                .collect(Collectors.joining("; "));
    }

    private static String model(ModelChoice choice) {
        return choice.words() + (choice.reason() == null ? "" : ", because: " + choice.reason());
    }
}
