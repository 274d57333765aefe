package org.stillrail.project;

import java.math.BigDecimal;
import org.stillrail.electrical.requirement.Ambient;
import org.stillrail.electrical.requirement.BleedResistor;
import org.stillrail.electrical.requirement.Citation;
import org.stillrail.electrical.requirement.ConverterFigures;
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
import org.stillrail.web.Quantity;

/** Between the fields of the rail form and a {@link RailDocument}. */
final class RailForm {

    private RailForm() {
    }

    /** Reads every field; where any is wrong, {@code form.errors()} says which and null is returned. */
    static RailDocument read(Form form) {
        String purpose = form.text("purpose", "Purpose", true);
        Double voltageV = form.positive("nominalVoltage", "Nominal voltage", "V", true);
        Double currentA = form.notNegative("nominalCurrent", "Nominal current", "A", true);
        InputRange input = readInput(form);
        ConverterFigures converter = ConverterForm.read(form);
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

    static Form fill(RailDocument document) {
        RailFigures rail = document.figures();
        Form form = Form.empty()
                .with("purpose", document.purpose())
                .with("nominalVoltage", Quantity.entry(rail.nominalVoltageV(), "V"))
                .with("nominalCurrent", Quantity.entry(rail.nominalCurrentA(), "A"))
                .with("inputMinimum", Quantity.entry(rail.input().minimumV(), "V"))
                .with("inputNominal", Quantity.entry(rail.input().nominalV(), "V"))
                .with("inputMaximum", Quantity.entry(rail.input().maximumV(), "V"));
        ConverterForm.fill(form, rail.converter());
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

    private static void cite(Form form, String of, Citation citation) {
        if (citation != null) {
            form.with(of + "Document", citation.document()).with(of + "Revision", citation.revision()).with(of + "Clause", citation.clause());
        }
    }

}
