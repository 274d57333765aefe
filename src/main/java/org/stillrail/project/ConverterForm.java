package org.stillrail.project;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import org.stillrail.electrical.requirement.ControlFigures;
import org.stillrail.electrical.requirement.ConverterFigures;
import org.stillrail.electrical.requirement.DrawnCurrent;
import org.stillrail.electrical.requirement.Topology;
import org.stillrail.web.Form;
import org.stillrail.web.PointList;
import org.stillrail.web.Quantity;

/** Between the fields of the rail form that tell of its converter and {@link ConverterFigures}; a preset has the same fields. */
final class ConverterForm {

    private static final int MOST_PHASES = 32;
    private static final String DRAWN_LABEL = "Current into the bank";

    private ConverterForm() {
    }

    /** Only the converter's fields, for a preset; null and messages where any is wrong. */
    static ConverterFigures read(Form form) {
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
        ControlFigures control = topology == null || topology == Topology.BUCK ? ControlForm.read(form) : ControlForm.readUnmodelled(form);
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
        ControlFigures control = ControlForm.readUnmodelled(form);
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

    static void fill(Form form, ConverterFigures converter) {
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
        if (converter.control() != null && converter.topology() == Topology.BUCK) {
            ControlForm.fill(form, converter.control());
        } else if (converter.control() != null) {
            ControlForm.fillUnmodelled(form, converter.control());
        }
    }

    static PointList points(DrawnCurrent current) {
        return new PointList(current.points().stream().map(point -> new PointList.Point(point.timeS(), point.currentA())).toList());
    }

    static Map<String, String> topologies() {
        Map<String, String> choices = new LinkedHashMap<>();
        Arrays.stream(Topology.values()).forEach(topology -> choices.put(topology.name(), topology == Topology.DRAWN
                ? "another, its current drawn by points" : topology.label()));
        return choices;
    }

    private static double or(Double value, double otherwise) {
        return value == null ? otherwise : value;
    }
}
