package org.stillrail.library;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.stillrail.electrical.capacitor.Ageing;
import org.stillrail.electrical.capacitor.CharacteristicCurve;
import org.stillrail.electrical.capacitor.CharacteristicCurve.Point;
import org.stillrail.electrical.capacitor.CharacteristicCurve.Scale;
import org.stillrail.electrical.capacitor.Drift;
import org.stillrail.electrical.capacitor.ResistanceCurve;
import org.stillrail.web.Form;
import org.stillrail.web.Quantity;

/** The fields of the part form that say how a part changes: curves are typed as points, {@code 0 V: 100 %; 5 V: 72 %}. */
final class CharacteristicsForm {

    private static final double USUAL_RESISTANCE_HZ = 100e3;

    private CharacteristicsForm() {
    }

    static PartCharacteristics read(Form form) {
        CharacteristicCurve overBias = curve(form, "overBias", "Capacitance over bias", "V", Scale.LINEAR);
        CharacteristicCurve overTemperature = curve(form, "overTemperature", "Capacitance over temperature", "degC", Scale.LINEAR);
        CharacteristicCurve resistance = curve(form, "esrOverTemperature", "ESR over temperature", "degC", Scale.LINEAR);
        Double resistanceHz = form.positive("esrOverTemperatureFrequency", "Frequency of the ESR curve", "Hz", false);
        Double perDecade = form.notNegative("ageing", "Ageing", "%", false);
        Double refereeHours = form.positive("refereeHours", "Referee time", "h", false);
        Double lifeShare = form.positive("endOfLifeCapacitance", "Capacitance at the end of life", "%", false);
        Double lifeFactor = form.positive("endOfLifeResistance", "ESR at the end of life", "%", false);
        Ageing ageing = perDecade == null ? null : form.read("ageing", "Ageing", true,
                text -> new Ageing(perDecade, refereeHours == null ? Ageing.REFEREE_HOURS : refereeHours));
        return new PartCharacteristics(
                overBias, overTemperature, ageing,
                resistance == null ? null : new ResistanceCurve(resistance, resistanceHz == null ? USUAL_RESISTANCE_HZ : resistanceHz),
                lifeShare == null && lifeFactor == null ? null
                        : new Drift(lifeShare == null ? 1 : lifeShare / 100, lifeFactor == null ? 1 : lifeFactor / 100),
                curve(form, "rippleOverFrequency", "Ripple rating over frequency", "Hz", Scale.LOGARITHMIC),
                curve(form, "rippleOverTemperature", "Ripple rating over temperature", "degC", Scale.LINEAR));
    }

    static void fill(Form form, PartCharacteristics known) {
        fill(form, "overBias", known.capacitanceOverBias(), "V");
        fill(form, "overTemperature", known.capacitanceOverTemperature(), "degC");
        fill(form, "rippleOverFrequency", known.rippleOverFrequency(), "Hz");
        fill(form, "rippleOverTemperature", known.rippleOverTemperature(), "degC");
        if (known.resistance() != null) {
            fill(form, "esrOverTemperature", known.resistance().factor(), "degC");
            form.with("esrOverTemperatureFrequency", Quantity.entry(known.resistance().frequencyHz(), "Hz"));
        }
        if (known.ageing() != null) {
            form.with("ageing", Quantity.entry(known.ageing().percentPerDecade(), "%"))
                    .with("refereeHours", Quantity.entry(known.ageing().refereeHours(), "h"));
        }
        if (known.endOfLife() != null) {
            form.with("endOfLifeCapacitance", Quantity.entry(100 * known.endOfLife().capacitanceShare(), "%"))
                    .with("endOfLifeResistance", Quantity.entry(100 * known.endOfLife().resistanceFactor(), "%"));
        }
    }

    private static CharacteristicCurve curve(Form form, String name, String label, String unit, Scale scale) {
        return form.read(name, label, false, text -> {
            List<Point> points = new ArrayList<>();
            for (String pair : text.split("[;\\n]")) {
                if (!pair.isBlank()) {
                    points.add(point(pair, label, unit));
                }
            }
            points.sort(Comparator.comparingDouble(Point::x));
            return new CharacteristicCurve(points, scale);
        });
    }

    private static Point point(String pair, String label, String unit) {
        int colon = pair.indexOf(':');
        if (colon < 0) {
            throw new IllegalArgumentException(label + ": write points as 0 " + unit + ": 100 %; 5 " + unit + ": 72 %, not '" + pair.strip() + "'");
        }
        double share = Quantity.parse(pair.substring(colon + 1), "%") / 100;
        return new Point(Quantity.parse(pair.substring(0, colon), unit), share);
    }

    private static void fill(Form form, String name, CharacteristicCurve curve, String unit) {
        if (curve != null) {
            form.with(name, curve.points().stream()
                    .map(point -> Quantity.entry(point.x(), unit) + ": " + Quantity.entry(100 * point.y(), "%"))
                    .collect(Collectors.joining("; ")));
        }
    }
}
