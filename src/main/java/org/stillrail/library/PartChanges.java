package org.stillrail.library;

import java.util.ArrayList;
import java.util.List;
import org.stillrail.electrical.capacitor.Ageing;
import org.stillrail.electrical.capacitor.Band;
import org.stillrail.electrical.capacitor.CeramicCode;
import org.stillrail.electrical.capacitor.CharacteristicCurve;
import org.stillrail.electrical.capacitor.Characteristics;
import org.stillrail.electrical.capacitor.Drift;
import org.stillrail.electrical.capacitor.OperatingPoint;
import org.stillrail.electrical.capacitor.Technology;
import org.stillrail.web.Quantity;

/**
 * How a part changes, as its page says it: one line for each thing that may change, known or not, and where that comes from.
 *
 * @param kind whether it is drawn or stated, a default by class code, an estimate, or not known
 */
record PartChanges(String name, String words, Kind kind) {

    /** How sure it is. */
    enum Kind {
        STATED("stated"), DEFAULT("default by class code"), ESTIMATE("estimate"), UNKNOWN("not known");

        private final String label;

        Kind(String label) {
            this.label = label;
        }

        public String label() {
            return label;
        }
    }

    static List<PartChanges> of(PartDocument part, PartModel model) {
        PartCharacteristics drawn = part.characteristics();
        Characteristics used = model.characteristics();
        List<PartChanges> lines = new ArrayList<>();
        lines.add(tolerance(part));
        lines.add(curve("Capacitance over DC bias", drawn.capacitanceOverBias(), "V", "not known: taken as flat"));
        lines.add(overTemperature(part, drawn.capacitanceOverTemperature(), used.code()));
        lines.add(ageing(part, drawn.ageing(), used));
        lines.add(curve("ESR over temperature", drawn.resistance() == null ? null : drawn.resistance().factor(), "degC",
                part.technology() == Technology.WET_ALUMINIUM
                        ? "not known: taken as flat, though wet aluminium has many times its ESR in the cold" : "not known: taken as flat"));
        lines.add(endOfLife(drawn.endOfLife()));
        lines.add(curve("Ripple rating over frequency", drawn.rippleOverFrequency(), "Hz", "not known: the rating is taken at its own frequency"));
        lines.add(curve("Ripple rating over temperature", drawn.rippleOverTemperature(), "degC", "not known: the rating is taken at its own temperature"));
        return lines;
    }

    private static PartChanges tolerance(PartDocument part) {
        return part.tolerancePercent() == null ? new PartChanges("Tolerance", "not stated", Kind.UNKNOWN)
                : new PartChanges("Tolerance", "\u2212" + percent(part.tolerancePercent().minusPercent() / 100) + " to +"
                        + percent(part.tolerancePercent().plusPercent() / 100) + " of nominal, at delivery", Kind.STATED);
    }

    private static PartChanges curve(String name, CharacteristicCurve curve, String unit, String unknown) {
        return curve == null ? new PartChanges(name, unknown, Kind.UNKNOWN) : new PartChanges(name, ends(curve, unit), Kind.STATED);
    }

    /** Both ends of a curve as it was drawn, and how many points lie between them. */
    private static String ends(CharacteristicCurve curve, String unit) {
        CharacteristicCurve.Point first = curve.points().get(0);
        CharacteristicCurve.Point last = curve.points().get(curve.points().size() - 1);
        return percent(first.y()) + " at " + Quantity.format(first.x(), unit) + " to " + percent(last.y()) + " at " + Quantity.format(last.x(), unit)
                + ", " + curve.points().size() + " points; held beyond its ends";
    }

    private static PartChanges overTemperature(PartDocument part, CharacteristicCurve drawn, CeramicCode code) {
        String name = "Capacitance over temperature";
        if (drawn != null) {
            return new PartChanges(name, ends(drawn, "degC") + (code == null ? "" : "; stands in for the code " + code.code()), Kind.STATED);
        }
        if (code == null) {
            return new PartChanges(name, part.dielectricCode() == null ? "not known: taken as flat"
                    : "the code " + part.dielectricCode() + " is not known here: taken as flat", Kind.UNKNOWN);
        }
        String span = " from " + Quantity.format(code.lowC(), "degC") + " to " + Quantity.format(code.highC(), "degC") + ", as " + code.code()
                + " promises against 25 \u00b0C";
        return new PartChanges(name, (code.classOne()
                ? signed(code.least()) + " to " + signed(code.most()) + " ppm/K" : signed(code.least()) + " % to " + signed(code.most()) + " %") + span,
                Kind.DEFAULT);
    }

    private static PartChanges ageing(PartDocument part, Ageing stated, Characteristics used) {
        String name = "Ageing";
        Ageing law = used.ageing();
        if (law == null) {
            return new PartChanges(name, "not known: taken as none", Kind.UNKNOWN);
        }
        String words = law.percentPerDecade() == 0 ? "none" : percent(law.percentPerDecade() / 100) + " of the capacitance lost in each decade of hours, from "
                + Quantity.format(law.refereeHours(), "h") + ", where the tolerance holds";
        if (stated != null) {
            return new PartChanges(name, words, Kind.STATED);
        }
        Band usual = used.code().usualAgeingPercent();
        return new PartChanges(name, words + "; usual for " + part.dielectricCode()
                + (usual.least() == usual.most() ? "" : ", " + Quantity.format(usual.least(), "%") + " to " + Quantity.format(usual.most(), "%")), Kind.ESTIMATE);
    }

    private static PartChanges endOfLife(Drift drift) {
        return drift == null ? new PartChanges("End of life", "not known: the part is taken as new", Kind.UNKNOWN)
                : new PartChanges("End of life", percent(drift.capacitanceShare()) + " of the capacitance and " + percent(drift.resistanceFactor())
                        + " of the ESR", Kind.STATED);
    }

    /** What is interpolated between sweeps is not bent by a curve; said above the lines where that is so. */
    static String family(PartModel model) {
        int sweeps = model.family().members().size();
        if (sweeps > 1) {
            return "Between the biases and temperatures of its " + sweeps + " sweeps the part is interpolated; curves bend it only from there on.";
        }
        OperatingPoint own = model.family().members().get(0).point();
        return model.measured() ? "The sweep stands at " + Quantity.format(own.biasV(), "V") + " and " + Quantity.format(own.temperatureC(), "degC")
                + (own.ageHours() == null ? "" : ", " + Quantity.format(own.ageHours(), "h") + " after soldering") + "; curves bend it only from there." : null;
    }

    private static String signed(double value) {
        return (value < 0 ? "\u2212" : "+") + Quantity.format(Math.abs(value), "", 3);
    }

    private static String percent(double share) {
        return Quantity.format(100 * share, "%", 3);
    }
}
