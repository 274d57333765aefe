package org.stillrail.library;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.stillrail.electrical.capacitor.Technology;
import org.stillrail.electrical.stress.LifeRating;
import org.stillrail.web.Form;
import org.stillrail.web.Quantity;

/** Between the fields of the part form and a {@link PartDocument}. */
final class PartForm {

    private static final double LARGEST_TOLERANCE_PERCENT = 100;
    private static final String LARGE_CAN = "large-can";

    private PartForm() {
    }

    /** Reads every field; where any is wrong, {@code form.errors()} says which and null is returned. */
    static PartDocument read(Form form) {
        String partNumber = form.text("partNumber", "Part number", true);
        String maker = form.text("maker", "Maker", true);
        Technology technology = form.read("technology", "Technology", true, Technology::ofKey);
        Double capacitanceF = form.positive("capacitance", "Capacitance", "F", true);
        Double minus = tolerance(form, "toleranceMinus", "Tolerance, minus");
        Double plus = tolerance(form, "tolerancePlus", "Tolerance, plus");
        Double ratedVoltageV = form.positive("ratedVoltage", "Rated voltage", "V", true);
        List<LossFigure> losses = LossForm.read(form);
        Double inductanceH = form.notNegative("inductance", "ESL", "H", false);
        Double selfResonanceHz = form.positive("selfResonance", "Self-resonance", "Hz", false);
        PartDocument.RippleRating ripple = readRipple(form);
        Double temperatureMinC = form.quantity("temperatureMin", "Lowest temperature", "degC", false);
        Double temperatureMaxC = form.quantity("temperatureMax", "Highest temperature", "degC", false);
        if (temperatureMinC != null && temperatureMaxC != null && temperatureMinC >= temperatureMaxC) {
            form.errors().add("temperatureMax", "Highest temperature must be above the lowest");
        }
        PartDocument.Endurance endurance = readEndurance(form);
        String dielectricCode = form.text("dielectricCode", "Class code", false);
        String caseSize = form.text("caseSize", "Case size", false);
        Double lengthM = form.positive("length", "Length", "m", false);
        Double widthM = form.positive("width", "Width or diameter", "m", false);
        Double heightM = form.positive("height", "Height", "m", false);
        BigDecimal cost = form.read("cost", "Cost", false, PartForm::cost);
        PartDocument.DatasheetReference datasheet = readDatasheet(form);
        PartCharacteristics characteristics = CharacteristicsForm.read(form);
        PartDocument.Stress stress = readStress(form, technology);
        String note = form.text("note", "Note", false);
        if (!form.errors().none()) {
            return null;
        }
        return new PartDocument(partNumber, maker, technology, capacitanceF, new PartDocument.Tolerance(minus, plus), ratedVoltageV, losses,
                inductanceH, selfResonanceHz, ripple, temperatureMinC, temperatureMaxC, endurance, dielectricCode, caseSize, lengthM,
                widthM, heightM, cost, datasheet, ModelChoice.DATASHEET, characteristics, note, stress);
    }

    /** Fills the form from a document, for the next revision. */
    static Form fill(PartDocument part) {
        Form form = Form.empty()
                .with("partNumber", part.partNumber())
                .with("maker", part.maker())
                .with("technology", part.technology().key())
                .with("capacitance", Quantity.entry(part.capacitanceF(), "F"))
                .with("ratedVoltage", Quantity.entry(part.ratedVoltageV(), "V"))
                .with("inductance", Quantity.entry(part.inductanceH(), "H"))
                .with("selfResonance", Quantity.entry(part.selfResonanceHz(), "Hz"))
                .with("temperatureMin", Quantity.entry(part.temperatureMinC(), "degC"))
                .with("temperatureMax", Quantity.entry(part.temperatureMaxC(), "degC"))
                .with("dielectricCode", part.dielectricCode())
                .with("caseSize", part.caseSize())
                .with("length", Quantity.entry(part.lengthM(), "m"))
                .with("width", Quantity.entry(part.widthM(), "m"))
                .with("height", Quantity.entry(part.heightM(), "m"))
                .with("cost", part.cost() == null ? "" : part.cost().toPlainString())
                .with("note", part.note());
        if (part.tolerancePercent() != null) {
            form.with("toleranceMinus", Quantity.entry(part.tolerancePercent().minusPercent(), "%"))
                    .with("tolerancePlus", Quantity.entry(part.tolerancePercent().plusPercent(), "%"));
        }
        if (part.rippleRating() != null) {
            form.with("rippleCurrent", Quantity.entry(part.rippleRating().currentA(), "A"))
                    .with("rippleFrequency", Quantity.entry(part.rippleRating().frequencyHz(), "Hz"))
                    .with("rippleTemperature", Quantity.entry(part.rippleRating().temperatureC(), "degC"));
        }
        if (part.endurance() != null) {
            form.with("enduranceHours", Quantity.entry(part.endurance().hours(), "h"))
                    .with("enduranceTemperature", Quantity.entry(part.endurance().temperatureC(), "degC"));
        }
        if (part.stress() != null) {
            form.with("thermalResistance", Quantity.entry(part.stress().thermalResistanceKPerW(), "K/W"))
                    .with("reverseVoltage", Quantity.entry(part.stress().reverseVoltageV(), "V"))
                    .with("enduranceRise", Quantity.entry(part.stress().enduranceRiseK(), "K"))
                    .with("lifeOverVoltage", part.stress().lifeOverVoltage() == LifeRating.VoltageTerm.LARGE_CAN ? LARGE_CAN : "");
        }
        if (part.datasheet() != null) {
            form.with("datasheetDocument", part.datasheet().document())
                    .with("datasheetRevision", part.datasheet().revision())
                    .with("datasheetPage", part.datasheet().page());
        }
        LossForm.fill(form, part.losses());
        CharacteristicsForm.fill(form, part.characteristics());
        return form;
    }

    /** Choices for the technology, by key. */
    static Map<String, String> technologies() {
        Map<String, String> choices = new LinkedHashMap<>();
        Arrays.stream(Technology.values()).forEach(technology -> choices.put(technology.key(), technology.label()));
        return choices;
    }

    /** Choices for what a voltage below the rated one adds to life, by key. */
    static Map<String, String> livesOverVoltage() {
        Map<String, String> choices = new LinkedHashMap<>();
        choices.put("", "not counted");
        choices.put(LARGE_CAN, "large can");
        return choices;
    }

    private static LifeRating.VoltageTerm lifeOverVoltage(String key) {
        if (!key.equals(LARGE_CAN)) {
            throw new IllegalArgumentException("Life over voltage must be blank or " + LARGE_CAN + ", not '" + key + "'");
        }
        return LifeRating.VoltageTerm.LARGE_CAN;
    }

    private static Double tolerance(Form form, String name, String label) {
        Double percent = form.notNegative(name, label, "%", true);
        if (percent != null && percent >= LARGEST_TOLERANCE_PERCENT) {
            form.errors().add(name, label + " must be under " + (int) LARGEST_TOLERANCE_PERCENT + " %");
        }
        return percent;
    }

    private static PartDocument.RippleRating readRipple(Form form) {
        Double currentA = form.positive("rippleCurrent", "Ripple current", "A", false);
        Double frequencyHz = form.positive("rippleFrequency", "Ripple current frequency", "Hz", currentA != null);
        Double temperatureC = form.quantity("rippleTemperature", "Ripple current temperature", "degC", currentA != null);
        return currentA == null ? null : new PartDocument.RippleRating(currentA, frequencyHz, temperatureC);
    }

    private static PartDocument.Endurance readEndurance(Form form) {
        Double hours = form.positive("enduranceHours", "Endurance", "h", false);
        Double temperatureC = form.quantity("enduranceTemperature", "Endurance temperature", "degC", hours != null);
        return hours == null || temperatureC == null ? null : new PartDocument.Endurance(hours, temperatureC);
    }

    private static PartDocument.Stress readStress(Form form, Technology technology) {
        Double thermal = form.positive("thermalResistance", "Thermal resistance", "K/W", false);
        Double reverseV = form.notNegative("reverseVoltage", "Reverse voltage", "V", false);
        Double riseK = form.notNegative("enduranceRise", "Warming in the endurance test", "K", false);
        LifeRating.VoltageTerm overVoltage = form.read("lifeOverVoltage", "Life over voltage", false, PartForm::lifeOverVoltage);
        if (overVoltage != null && technology != null && technology != Technology.WET_ALUMINIUM) {
            form.errors().add("lifeOverVoltage", "Life over voltage is known for large cans of wet aluminium only");
        }
        return thermal == null && reverseV == null && riseK == null && overVoltage == null ? null
                : new PartDocument.Stress(thermal, reverseV, riseK, overVoltage);
    }

    private static PartDocument.DatasheetReference readDatasheet(Form form) {
        String document = form.text("datasheetDocument", "Datasheet document", false);
        String revision = form.text("datasheetRevision", "Datasheet revision", false);
        String page = form.text("datasheetPage", "Datasheet page", false);
        if (document == null && (revision != null || page != null)) {
            form.errors().add("datasheetDocument", "Name the document that the revision or page belongs to");
        }
        return document == null ? null : new PartDocument.DatasheetReference(document, revision, page);
    }

    private static BigDecimal cost(String text) {
        BigDecimal cost;
        try {
            cost = new BigDecimal(text.replace(',', '.'));
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException("Cost must be an amount such as 0.12, not '" + text + "'", e);
        }
        if (cost.signum() < 0 || cost.precision() - cost.scale() > 8 || cost.scale() > 6) {
            throw new IllegalArgumentException("Cost must be from 0 to 99999999 with at most six decimals");
        }
        return cost;
    }
}
