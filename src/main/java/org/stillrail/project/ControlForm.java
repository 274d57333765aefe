package org.stillrail.project;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.stillrail.electrical.converter.CompensatorParts;
import org.stillrail.electrical.converter.Transconductance;
import org.stillrail.electrical.requirement.ControlFigures;
import org.stillrail.web.Form;
import org.stillrail.web.Quantity;

/** Between the fields of the rail form that tell of the converter's control and {@link ControlFigures}. */
final class ControlForm {

    private enum Amplifier { OP_AMP, TRANSCONDUCTANCE }

    private ControlForm() {
    }

    /** Of a loop that is not modelled only its crossover counts, where the ESR is read; null where nobody says it. */
    static ControlFigures readUnmodelled(Form form) {
        Double crossoverHz = form.positive("statedCrossover", "Crossover of its loop", "Hz", false);
        return crossoverHz == null ? null
                : new ControlFigures(ControlFigures.Kind.VOLTAGE_MODE, null, null, null, null, null, null, null, crossoverHz, null);
    }

    /** Of a buck. */
    static ControlFigures read(Form form) {
        ControlFigures.Kind kind = form.read("control", "Control", true, ControlFigures.Kind::valueOf);
        boolean voltageMode = kind == ControlFigures.Kind.VOLTAGE_MODE;
        Double rampV = form.positive("ramp", "Modulator ramp", "V", voltageMode);
        Double senseOhm = form.positive("sense", "Current-sense gain", "ohm", kind == ControlFigures.Kind.CURRENT_MODE);
        Double slope = form.notNegative("slope", "Compensating slope", "A/s", kind == ControlFigures.Kind.CURRENT_MODE);
        Double delayS = form.notNegative("delay", "Modulator delay", "s", false);
        ControlFigures.Given given = form.read("compensation", "Compensator", false, ControlFigures.Given::valueOf);
        if (given == null) {
            given = form.isBlank("gain") ? ControlFigures.Given.PLACED : ControlFigures.Given.GAIN;
        }
        boolean placed = given == ControlFigures.Given.PLACED;
        boolean byGain = given == ControlFigures.Given.GAIN;
        Double gain = byGain ? form.positive("gain", "Compensator gain", "", true) : null;
        List<Double> zeros = byGain ? frequencies(form, "zeros", "Compensator zeros") : null;
        List<Double> poles = byGain ? frequencies(form, "poles", "Compensator poles") : null;
        if (byGain && zeros.size() > poles.size() + 1) {
            form.errors().add("zeros", "At most one zero more than there are poles");
        }
        Amplifier amplifier = form.read("amplifier", "Error amplifier", false, Amplifier::valueOf);
        Transconductance transconductance = amplifier == Amplifier.TRANSCONDUCTANCE ? readTransconductance(form) : null;
        CompensatorParts parts = given != ControlFigures.Given.PARTS ? null
                : amplifier == Amplifier.TRANSCONDUCTANCE ? readOutputNetwork(form, transconductance) : readNetwork(form);
        Double crossoverHz = placed ? form.positive("crossover", "Wanted crossover", "Hz", true) : null;
        Double marginDeg = placed ? form.positive("phaseMargin", "Wanted phase margin", "deg", true) : null;
        if (marginDeg != null && marginDeg >= 90) {
            form.errors().add("phaseMargin", "Wanted phase margin must be under 90 degrees");
        }
        return kind == null ? null
                : new ControlFigures(kind, rampV, senseOhm, slope, delayS, gain, zeros, poles, crossoverHz, marginDeg, parts, transconductance);
    }

    private static Transconductance readTransconductance(Form form) {
        Double gmS = form.positive("transconductance", "Transconductance", "S", true);
        Double share = form.positive("amplifierShare", "Share of the output at its input", "", true);
        if (share != null && share > 1) {
            form.errors().add("amplifierShare", "Share of the output at its input is at most 1, not " + Quantity.format(share, ""));
            return null;
        }
        return gmS == null || share == null ? null : new Transconductance(gmS, share);
    }

    /** @param amplifier null where its own fields are wrong */
    private static CompensatorParts readOutputNetwork(Form form, Transconductance amplifier) {
        Double r2 = form.positive("networkR2", "R2, in series with C1", "ohm", true);
        Double c1 = form.positive("networkC1", "C1, in series with R2", "F", true);
        Double c2 = form.positive("networkC2", "C2, across both", "F", true);
        return amplifier == null || r2 == null || c1 == null || c2 == null ? null : amplifier.network(r2, c1, c2);
    }

    private static CompensatorParts readNetwork(Form form) {
        Double r1 = form.positive("networkR1", "R1, from the output to the amplifier", "ohm", true);
        Double r2 = form.positive("networkR2", "R2, in series with C1", "ohm", true);
        Double c1 = form.positive("networkC1", "C1, in series with R2", "F", true);
        Double c2 = form.positive("networkC2", "C2, across both", "F", true);
        boolean second = !form.isBlank("networkR3") || !form.isBlank("networkC3");
        Double r3 = form.positive("networkR3", "R3, which belongs to C3", "ohm", second);
        Double c3 = form.positive("networkC3", "C3, which belongs to R3", "F", second);
        boolean whole = r1 != null && r2 != null && c1 != null && c2 != null && (!second || r3 != null && c3 != null);
        return whole ? new CompensatorParts(r1, r2, c1, c2, r3, c3) : null;
    }

    private static List<Double> frequencies(Form form, String name, String label) {
        List<Double> read = form.read(name, label, false, text -> Arrays.stream(text.split("[;\\s]+"))
                .filter(each -> !each.isBlank())
                .map(each -> {
                    double hz = Quantity.parse(each, "Hz");
                    if (!(hz > 0)) {
                        throw new IllegalArgumentException(label + " must be above 0");
                    }
                    return hz;
                })
                .toList());
        return read == null ? List.of() : read;
    }

    static void fill(Form form, ControlFigures control) {
        form.with("control", control.kind().name())
                .with("ramp", Quantity.entry(control.rampV(), "V"))
                .with("sense", Quantity.entry(control.senseOhm(), "ohm"))
                .with("slope", Quantity.entry(control.slopeAPerS(), "A/s"))
                .with("delay", Quantity.entry(control.delayS(), "s"))
                .with("compensation", control.given().name())
                .with("gain", Quantity.entry(control.gain()))
                .with("zeros", joined(control.zerosHz()))
                .with("poles", joined(control.polesHz()))
                .with("crossover", Quantity.entry(control.crossoverHz(), "Hz"))
                .with("phaseMargin", Quantity.entry(control.phaseMarginDeg(), "deg"));
        fillNetwork(form, control.parts(), control.amplifier());
    }

    static void fillUnmodelled(Form form, ControlFigures control) {
        form.with("statedCrossover", Quantity.entry(control.crossoverHz(), "Hz"));
    }

    /** @param parts null for none: a preset then clears what stood there */
    private static void fillNetwork(Form form, CompensatorParts parts, Transconductance amplifier) {
        form.with("amplifier", (amplifier == null ? Amplifier.OP_AMP : Amplifier.TRANSCONDUCTANCE).name())
                .with("transconductance", amplifier == null ? "" : Quantity.entry(amplifier.gmS(), "S"))
                .with("amplifierShare", amplifier == null ? "" : Quantity.entry(amplifier.outputShare()))
                .with("networkR1", parts == null || amplifier != null ? "" : Quantity.entry(parts.r1Ohm(), "ohm"))
                .with("networkR2", parts == null ? "" : Quantity.entry(parts.r2Ohm(), "ohm"))
                .with("networkC1", parts == null ? "" : Quantity.entry(parts.c1F(), "F"))
                .with("networkC2", parts == null ? "" : Quantity.entry(parts.c2F(), "F"))
                .with("networkR3", parts == null ? "" : Quantity.entry(parts.r3Ohm(), "ohm"))
                .with("networkC3", parts == null ? "" : Quantity.entry(parts.c3F(), "F"));
    }

    private static String joined(List<Double> frequenciesHz) {
        return String.join(" ", frequenciesHz.stream().map(Quantity::entry).toList());
    }

    static Map<String, String> compensations() {
        Map<String, String> choices = new LinkedHashMap<>();
        choices.put(ControlFigures.Given.PLACED.name(), "for a crossover and margin");
        choices.put(ControlFigures.Given.GAIN.name(), "by gain, zeros and poles");
        choices.put(ControlFigures.Given.PARTS.name(), "by the parts of its network");
        return choices;
    }

    static Map<String, String> amplifiers() {
        Map<String, String> choices = new LinkedHashMap<>();
        choices.put(Amplifier.OP_AMP.name(), "op-amp");
        choices.put(Amplifier.TRANSCONDUCTANCE.name(), "transconductance amplifier");
        return choices;
    }

    static Map<String, String> controls() {
        Map<String, String> choices = new LinkedHashMap<>();
        choices.put("VOLTAGE_MODE", "voltage mode");
        choices.put("CURRENT_MODE", "peak current mode");
        return choices;
    }
}
