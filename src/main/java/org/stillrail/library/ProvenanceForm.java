package org.stillrail.library;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.LinkedHashMap;
import java.util.Map;
import org.stillrail.sweepfile.Fixture;
import org.stillrail.web.Form;

/** Between the fields of the import form and a {@link SweepProvenance}. */
final class ProvenanceForm {

    private ProvenanceForm() {
    }

    /** Reads every field; wrong ones are in {@code form.errors()}. */
    static SweepProvenance read(Form form) {
        Fixture fixture = form.read("fixture", "Fixture", true, Fixture::of);
        String measuredBy = form.text("measuredBy", "Measured by", true);
        LocalDate measuredOn = form.read("measuredOn", "Measured on", true, ProvenanceForm::date);
        String instrument = form.text("instrument", "Instrument", true);
        Double biasV = form.quantity("bias", "DC bias", "V", true);
        Double temperatureC = form.quantity("temperature", "Temperature", "degC", true);
        Double acLevelV = form.positive("acLevel", "AC level", "V", false);
        Double hours = form.notNegative("hoursSinceSoldering", "Hours since soldering", "h", false);
        return new SweepProvenance(
                form.text("sample", "Sample", false), measuredBy, measuredOn, instrument, fixture == null ? null : fixture.label(),
                form.text("fixtureName", "Fixture board", false), form.text("compensation", "Compensation", false), acLevelV,
                biasV == null ? 0 : biasV, temperatureC == null ? 0 : temperatureC, hours, form.text("note", "Note", false));
    }

    /** Choices for the fixture, by the reader's word. */
    static Map<String, String> fixtures() {
        Map<String, String> choices = new LinkedHashMap<>();
        choices.put("shunt-through", "shunt-through (S21 across the part)");
        choices.put("reflection", "reflection (S11)");
        choices.put("series-through", "series-through (S21 along the part)");
        choices.put("impedance", "impedance as is");
        return choices;
    }

    static LocalDate date(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            throw new IllegalArgumentException("Write the date as 2026-03-31, not '" + text + "'", e);
        }
    }
}
