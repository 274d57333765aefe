package org.stillrail.project;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.stillrail.electrical.converter.CompensatorParts;
import org.stillrail.electrical.converter.Transconductance;
import org.stillrail.electrical.requirement.Ambient;
import org.stillrail.electrical.requirement.BleedResistor;
import org.stillrail.electrical.requirement.Citation;
import org.stillrail.electrical.requirement.ControlFigures;
import org.stillrail.electrical.requirement.ConverterFigures;
import org.stillrail.electrical.requirement.DrawnCurrent;
import org.stillrail.electrical.requirement.EsrWindow;
import org.stillrail.electrical.requirement.InputRange;
import org.stillrail.electrical.requirement.Life;
import org.stillrail.electrical.requirement.LoadStep;
import org.stillrail.electrical.requirement.LoopMarginLimits;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.requirement.RippleLimit;
import org.stillrail.electrical.requirement.Space;
import org.stillrail.electrical.requirement.StartUpRamp;
import org.stillrail.electrical.requirement.Topology;
import org.stillrail.electrical.requirement.VoltageWindow;
import org.stillrail.web.Form;
import org.stillrail.web.PointList;
import org.stillrail.web.Quantity;

/** Between the fields of the rail form and a {@link RailDocument}. */
final class RailForm {

    private static final int MOST_PHASES = 32;
    private static final String DRAWN_LABEL = "Current into the bank";

    private RailForm() {
    }

    /** Reads every field; where any is wrong, {@code form.errors()} says which and null is returned. */
    static RailDocument read(Form form) {
        String purpose = form.text("purpose", "Purpose", true);
        Double voltageV = form.positive("nominalVoltage", "Nominal voltage", "V", true);
        Double currentA = form.notNegative("nominalCurrent", "Nominal current", "A", true);
        InputRange input = readInput(form);
        ConverterFigures converter = readConverter(form);
        RippleLimit ripple = readRipple(form);
        VoltageWindow window = readWindow(form);
        LoadStep step = readStep(form);
        EsrWindow esr = readEsrWindow(form);
        LoopMarginLimits margins = readMargins(form);
        Ambient ambient = readAmbient(form);
        Life life = readLife(form);
        Space space = readSpace(form);
        StartUpRamp startUp = readStartUp(form);
        BleedResistor bleed = readBleed(form);
        if (voltageV != null && input != null && converter != null && converter.topology() == Topology.BUCK && input.minimumV() <= voltageV) {
            form.errors().add("inputMinimum", "A buck needs more input than its output of " + Quantity.format(voltageV, "V"));
        }
        if (voltageV != null && input != null && converter != null && converter.topology() == Topology.BOOST && input.maximumV() >= voltageV) {
            form.errors().add("inputMaximum", "A boost needs less input than its output of " + Quantity.format(voltageV, "V"));
        }
        if (!form.errors().none()) {
            return null;
        }
        return new RailDocument(purpose,
                new RailFigures(voltageV, currentA, input, converter, ripple, window, step, esr, ambient, life, space, startUp, bleed, margins));
    }

    /** Only the converter's fields, for a preset; null and messages where any is wrong. */
    static ConverterFigures readConverter(Form form) {
        Topology topology = form.read("topology", "Topology", true, Topology::valueOf);
        if (topology == Topology.DRAWN) {
            return readDrawn(form);
        }
        Double inductanceH = form.positive("inductance", "Inductance of each phase", "H", true);
        Double inductanceTolerance = form.notNegative("inductanceTolerance", "Inductance tolerance", "%", false);
        Double inductanceLeft = form.positive("inductanceLeft", "Inductance left at the peak current", "%", false);
        if (inductanceLeft != null && inductanceLeft > 100) {
            form.errors().add("inductanceLeft", "Inductance left at the peak current is at most 100 %, not " + Quantity.format(inductanceLeft, "%"));
        }
        Double resistanceOhm = form.notNegative("resistance", "Resistance of each phase", "ohm", true);
        Integer phases = form.whole("phases", "Phases", 1, MOST_PHASES, true);
        Double switchingHz = form.positive("switching", "Switching frequency", "Hz", true);
        Double switchingTolerance = form.notNegative("switchingTolerance", "Switching frequency tolerance", "%", false);
        Double limitA = form.positive("currentLimit", "Current limit", "A", false);
        Double turns = topology == Topology.FLYBACK ? form.positive("turnsRatio", "Turns ratio", "", true) : null;
        Double edgeS = topology == Topology.BUCK ? null : form.positive("edge", "Edge of the rectifier current", "s", false);
        ControlFigures control = topology == null || topology == Topology.BUCK ? readControl(form) : readUnmodelled(form);
        if (topology == null || inductanceH == null || resistanceOhm == null || phases == null || switchingHz == null || topology == Topology.BUCK && control == null) {
            return null;
        }
        return new ConverterFigures(topology, inductanceH, or(inductanceTolerance, 0), resistanceOhm, phases, switchingHz,
                or(switchingTolerance, 0), control, limitA, turns, edgeS, inductanceLeft, null);
    }

    private static ConverterFigures readDrawn(Form form) {
        Double switchingHz = form.positive("switching", "Switching frequency", "Hz", true);
        Double switchingTolerance = form.notNegative("switchingTolerance", "Switching frequency tolerance", "%", false);
        DrawnCurrent current = form.read("drawnCurrent", DRAWN_LABEL, true, text -> new DrawnCurrent(
                PointList.parse(DRAWN_LABEL, text, "s", "A", "0 s: 0 A; 50n: 6 A").points().stream()
                        .map(point -> new DrawnCurrent.Point(point.x(), point.y())).toList()));
        ControlFigures control = readUnmodelled(form);
        if (switchingHz == null || current == null) {
            return null;
        }
        if (current.lastS() * switchingHz >= 1) {
            form.errors().add("drawnCurrent", "The last point, at " + Quantity.format(current.lastS(), "s") + ", must lie before the end of the period of "
                    + Quantity.format(1 / switchingHz, "s") + "; from there the current goes back to the first");
            return null;
        }
        return ConverterFigures.drawn(current, switchingHz, or(switchingTolerance, 0), control);
    }

    /** Of a loop that is not modelled only its crossover counts, where the ESR is read; null where nobody says it. */
    private static ControlFigures readUnmodelled(Form form) {
        Double crossoverHz = form.positive("statedCrossover", "Crossover of its loop", "Hz", false);
        return crossoverHz == null ? null
                : new ControlFigures(ControlFigures.Kind.VOLTAGE_MODE, null, null, null, null, null, null, null, crossoverHz, null);
    }

    private enum Amplifier { OP_AMP, TRANSCONDUCTANCE }

    private static ControlFigures readControl(Form form) {
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

    private static InputRange readInput(Form form) {
        Double least = form.positive("inputMinimum", "Least input voltage", "V", true);
        Double nominal = form.positive("inputNominal", "Nominal input voltage", "V", true);
        Double most = form.positive("inputMaximum", "Most input voltage", "V", true);
        if (least == null || nominal == null || most == null) {
            return null;
        }
        if (least > nominal || nominal > most) {
            form.errors().add("inputNominal", "The nominal input must lie between the least and the most");
            return null;
        }
        return new InputRange(least, nominal, most);
    }

    private static RippleLimit readRipple(Form form) {
        Double limitV = form.positive("ripple", "Ripple limit", "V", false);
        Citation citation = citation(form, "ripple", "ripple limit", limitV != null);
        return limitV == null ? null : new RippleLimit(limitV, citation);
    }

    private static VoltageWindow readWindow(Form form) {
        Double plusV = form.positive("windowPlus", "Window above", "V", false);
        Double minusV = form.positive("windowMinus", "Window below", "V", plusV != null);
        boolean asked = plusV != null || minusV != null;
        Double accuracyV = form.notNegative("setPointAccuracy", "Set-point accuracy", "V", asked);
        Double regulationV = form.notNegative("regulation", "Regulation", "V", asked);
        if (plusV == null && minusV != null) {
            form.errors().add("windowPlus", "Window above is missing");
        }
        Citation citation = citation(form, "window", "window", asked);
        return plusV == null || minusV == null || accuracyV == null || regulationV == null
                ? null : new VoltageWindow(plusV, minusV, accuracyV, regulationV, citation);
    }

    private static LoadStep readStep(Form form) {
        boolean asked = !form.isBlank("stepTo");
        Double fromA = form.notNegative("stepFrom", "Load step from", "A", asked);
        Double toA = form.notNegative("stepTo", "Load step to", "A", asked || !form.isBlank("stepFrom"));
        Double slew = form.positive("stepSlew", "Slew", "A/s", asked);
        Double deviationV = form.positive("stepDeviation", "Allowed deviation", "V", asked);
        Double loadLineOhm = form.positive("stepLoadLine", "Load line", "ohm", false);
        Double settleBandV = form.positive("stepSettle", "Settled within", "V", false);
        Citation citation = citation(form, "step", "load step", asked);
        if (fromA != null && toA != null && fromA.equals(toA)) {
            form.errors().add("stepTo", "A load step needs two different currents");
        }
        return fromA == null || toA == null || slew == null || deviationV == null ? null : new LoadStep(fromA, toA, slew, deviationV, citation, settleBandV, loadLineOhm);
    }

    private static EsrWindow readEsrWindow(Form form) {
        Double least = form.notNegative("esrMinimum", "Least Re Z at crossover", "ohm", false);
        Double most = form.positive("esrMaximum", "Most Re Z at crossover", "ohm", false);
        boolean asked = least != null || most != null;
        if (least != null && most != null && least >= most) {
            form.errors().add("esrMaximum", "Must be above the least Re Z");
        }
        Citation citation = citation(form, "esr", "window of Re Z", asked);
        return asked ? new EsrWindow(least, most, citation) : null;
    }

    private static LoopMarginLimits readMargins(Form form) {
        Double leastPhaseDeg = form.positive("leastPhaseMargin", "Least phase margin", "deg", false);
        Double leastGainDb = form.positive("leastGainMargin", "Least gain margin", "dB", false);
        if (leastPhaseDeg != null && leastPhaseDeg >= 90) {
            form.errors().add("leastPhaseMargin", "Least phase margin must be under 90 degrees");
        }
        boolean asked = leastPhaseDeg != null || leastGainDb != null;
        Citation citation = citation(form, "margins", "loop margins", asked);
        return asked ? new LoopMarginLimits(leastPhaseDeg, leastGainDb, citation) : null;
    }

    private static Ambient readAmbient(Form form) {
        Double least = form.quantity("ambientMinimum", "Least ambient", "degC", true);
        Double nominal = form.quantity("ambientNominal", "Nominal ambient", "degC", true);
        Double most = form.quantity("ambientMaximum", "Most ambient", "degC", true);
        if (least == null || nominal == null || most == null) {
            return null;
        }
        if (least > nominal || nominal > most) {
            form.errors().add("ambientNominal", "The nominal ambient must lie between the least and the most");
        }
        return new Ambient(least, nominal, most, citation(form, "ambient", "ambient", false));
    }

    private static Life readLife(Form form) {
        Double hours = form.positive("life", "Life", "h", false);
        return hours == null ? null : new Life(hours, citation(form, "life", "life", true));
    }

    private static StartUpRamp readStartUp(Form form) {
        Double rampS = form.positive("startUpRamp", "Ramp time", "s", !form.isBlank("startUpLoad"));
        Double loadA = form.notNegative("startUpLoad", "Load while coming up", "A", false);
        Citation citation = citation(form, "startUp", "start-up ramp", rampS != null);
        return rampS == null ? null : new StartUpRamp(rampS, loadA, citation);
    }

    private static BleedResistor readBleed(Form form) {
        Double ohm = form.positive("bleedResistance", "Bleed resistor", "ohm", !form.isBlank("bleedSafe"));
        Double safeV = form.positive("bleedSafe", "Safe voltage", "V", false);
        Citation citation = citation(form, "bleed", "bleed resistor", ohm != null);
        return ohm == null ? null : new BleedResistor(ohm, safeV, citation);
    }

    private static Space readSpace(Form form) {
        Double heightM = form.positive("height", "Height limit", "m", false);
        Double areaMm2 = form.positive("area", "Area limit", "mm2", false);
        BigDecimal cost = form.read("cost", "Cost limit", false, text -> {
            try {
                return new BigDecimal(text.replace(',', '.'));
            } catch (NumberFormatException e) {
                throw new IllegalArgumentException("Cost limit must be an amount such as 4.20, not '" + text + "'", e);
            }
        });
        if (heightM == null && areaMm2 == null && cost == null) {
            return null;
        }
        return new Space(heightM, areaMm2 == null ? null : areaMm2 * 1e-6, cost, citation(form, "space", "limit on space and cost", true));
    }

    /** @param of begins the names of the three fields; {@code limit} is what messages call the limit */
    private static Citation citation(Form form, String of, String limit, boolean required) {
        String document = form.text(of + "Document", "The document that the " + limit + " comes from", required);
        String revision = form.text(of + "Revision", "The revision of the document of the " + limit, false);
        String clause = form.text(of + "Clause", "The clause of the " + limit, false);
        return document == null ? null : new Citation(document, revision, clause);
    }

    private static double or(Double value, double otherwise) {
        return value == null ? otherwise : value;
    }

    static Form fill(RailDocument document) {
        RailFigures rail = document.figures();
        Form form = Form.empty()
                .with("purpose", document.purpose())
                .with("nominalVoltage", Quantity.entry(rail.nominalVoltageV(), "V"))
                .with("nominalCurrent", Quantity.entry(rail.nominalCurrentA(), "A"))
                .with("inputMinimum", Quantity.entry(rail.input().minimumV(), "V"))
                .with("inputNominal", Quantity.entry(rail.input().nominalV(), "V"))
                .with("inputMaximum", Quantity.entry(rail.input().maximumV(), "V"));
        fillConverter(form, rail.converter());
        if (rail.ripple() != null) {
            cite(form.with("ripple", Quantity.entry(rail.ripple().peakToPeakV(), "V")), "ripple", rail.ripple().citation());
        }
        if (rail.window() != null) {
            cite(form.with("windowPlus", Quantity.entry(rail.window().plusV(), "V"))
                    .with("windowMinus", Quantity.entry(rail.window().minusV(), "V"))
                    .with("setPointAccuracy", Quantity.entry(rail.window().setPointAccuracyV(), "V"))
                    .with("regulation", Quantity.entry(rail.window().regulationV(), "V")), "window", rail.window().citation());
        }
        if (rail.loadStep() != null) {
            cite(form.with("stepFrom", Quantity.entry(rail.loadStep().fromA(), "A"))
                    .with("stepTo", Quantity.entry(rail.loadStep().toA(), "A"))
                    .with("stepSlew", Quantity.entry(rail.loadStep().slewAPerS(), "A/s"))
                    .with("stepDeviation", Quantity.entry(rail.loadStep().allowedDeviationV(), "V"))
                    .with("stepLoadLine", Quantity.entry(rail.loadStep().loadLineOhm(), "ohm"))
                    .with("stepSettle", Quantity.entry(rail.loadStep().settleBandV(), "V")), "step", rail.loadStep().citation());
        }
        if (rail.margins() != null) {
            cite(form.with("leastPhaseMargin", Quantity.entry(rail.margins().leastPhaseDeg(), "deg"))
                    .with("leastGainMargin", Quantity.entry(rail.margins().leastGainDb(), "dB")), "margins", rail.margins().citation());
        }
        if (rail.esrWindow() != null) {
            cite(form.with("esrMinimum", Quantity.entry(rail.esrWindow().minimumOhm(), "ohm"))
                    .with("esrMaximum", Quantity.entry(rail.esrWindow().maximumOhm(), "ohm")), "esr", rail.esrWindow().citation());
        }
        if (rail.ambient() != null) {
            cite(form.with("ambientMinimum", Quantity.entry(rail.ambient().minimumC(), "degC"))
                    .with("ambientNominal", Quantity.entry(rail.ambient().nominalC(), "degC"))
                    .with("ambientMaximum", Quantity.entry(rail.ambient().maximumC(), "degC")), "ambient", rail.ambient().citation());
        }
        if (rail.life() != null) {
            cite(form.with("life", Quantity.entry(rail.life().hours(), "h")), "life", rail.life().citation());
        }
        if (rail.space() != null) {
            Double areaM2 = rail.space().areaM2();
            cite(form.with("height", Quantity.entry(rail.space().heightM(), "m"))
                    .with("area", areaM2 == null ? "" : Quantity.entry(areaM2 * 1e6, "mm2"))
                    .with("cost", rail.space().cost() == null ? "" : rail.space().cost().toPlainString()), "space", rail.space().citation());
        }
        if (rail.startUp() != null) {
            cite(form.with("startUpRamp", Quantity.entry(rail.startUp().rampS(), "s"))
                    .with("startUpLoad", Quantity.entry(rail.startUp().loadA(), "A")), "startUp", rail.startUp().citation());
        }
        if (rail.bleed() != null) {
            cite(form.with("bleedResistance", Quantity.entry(rail.bleed().resistanceOhm(), "ohm"))
                    .with("bleedSafe", Quantity.entry(rail.bleed().safeV(), "V")), "bleed", rail.bleed().citation());
        }
        return form;
    }

    static void fillConverter(Form form, ConverterFigures converter) {
        ControlFigures control = converter.control();
        boolean drawn = converter.topology() == Topology.DRAWN;
        form.with("topology", converter.topology().name())
                .with("drawnCurrent", drawn ? points(converter.drawnCurrent()).entry("s", "A") : "")
                .with("inductance", drawn ? "" : Quantity.entry(converter.inductanceH(), "H"))
                .with("inductanceTolerance", drawn ? "" : Quantity.entry(converter.inductanceTolerancePercent(), "%"))
                .with("inductanceLeft", Quantity.entry(converter.inductanceLeftPercent(), "%"))
                .with("resistance", drawn ? "" : Quantity.entry(converter.resistanceOhm(), "ohm"))
                .with("phases", drawn ? "" : Integer.toString(converter.phases()))
                .with("switching", Quantity.entry(converter.switchingHz(), "Hz"))
                .with("switchingTolerance", Quantity.entry(converter.switchingTolerancePercent(), "%"))
                .with("currentLimit", Quantity.entry(converter.currentLimitA(), "A"))
                .with("turnsRatio", Quantity.entry(converter.turnsRatio()))
                .with("edge", Quantity.entry(converter.edgeS(), "s"));
        if (control != null && converter.topology() != Topology.BUCK) {
            form.with("statedCrossover", Quantity.entry(control.crossoverHz(), "Hz"));
        } else if (control != null) {
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
    }

    static PointList points(DrawnCurrent current) {
        return new PointList(current.points().stream().map(point -> new PointList.Point(point.timeS(), point.currentA())).toList());
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

    private static void cite(Form form, String of, Citation citation) {
        if (citation != null) {
            form.with(of + "Document", citation.document()).with(of + "Revision", citation.revision()).with(of + "Clause", citation.clause());
        }
    }

    static Map<String, String> topologies() {
        Map<String, String> choices = new LinkedHashMap<>();
        Arrays.stream(Topology.values()).forEach(topology -> choices.put(topology.name(), topology == Topology.DRAWN
                ? "another, its current drawn by points" : topology.label()));
        return choices;
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
