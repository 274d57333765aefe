package org.stillrail.team;

import org.stillrail.web.Form;
import org.stillrail.web.FormShape;

/** The rule of a technology, whose fields begin with the technology's key, stands or falls as a whole. */
final class SettingsShape implements FormShape<SettingsDocument> {

    private static final String VETTING = "vetting.";

    @Override
    public Form fill(SettingsDocument document) {
        return SettingsForm.fill(document);
    }

    @Override
    public SettingsDocument read(Form form) {
        return SettingsForm.read(form);
    }

    @Override
    public String group(String field) {
        return field.startsWith(VETTING) || field.indexOf('.') < 0 ? field : field.substring(0, field.lastIndexOf('.'));
    }

    @Override
    public String words(String field, String value) {
        return field.startsWith(VETTING) ? value.isEmpty() ? "no" : "yes" : value;
    }
}
