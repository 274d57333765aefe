package org.stillrail.library;

import java.util.Comparator;
import org.stillrail.electrical.capacitor.Ageing;
import org.stillrail.electrical.capacitor.CharacteristicCurve;
import org.stillrail.electrical.capacitor.CharacteristicCurve.Point;
import org.stillrail.electrical.capacitor.CharacteristicCurve.Scale;
import org.stillrail.electrical.capacitor.Drift;
import org.stillrail.electrical.capacitor.ResistanceCurve;
import org.stillrail.web.Form;
import org.stillrail.web.PointList;
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
            form.with("endOfLifeCapacitance", Quantity.entry(Quantity.percent(known.endOfLife().capacitanceShare()), "%"))
                    .with("endOfLifeResistance", Quantity.entry(Quantity.percent(known.endOfLife().resistanceFactor()), "%"));
        }
    }

    private static CharacteristicCurve curve(Form form, String name, String label, String unit, Scale scale) {
        String example = "0 " + unit + ": 100 %; 5 " + unit + ": 72 %";
        return form.read(name, label, false, text -> new CharacteristicCurve(PointList.parse(label, text, unit, "%", example).points().stream()
                .map(point -> new Point(point.x(), point.y() / 100)).sorted(Comparator.comparingDouble(Point::x)).toList(), scale));
    }

    private static void fill(Form form, String name, CharacteristicCurve curve, String unit) {
        if (curve != null) {
            form.with(name, new PointList(curve.points().stream().map(point -> new PointList.Point(point.x(), Quantity.percent(point.y()))).toList()).entry(unit, "%"));
        }
    }
}
