package org.stillrail.journey;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.FilePayload;
import com.microsoft.playwright.options.SelectOption;

/** The page on which a measured file becomes a sweep of a part. */
final class SweepImportPage {

    private final Visitor visitor;

    SweepImportPage(Visitor visitor) {
        this.visitor = visitor;
    }

    void chooseFile(String name, byte[] bytes) {
        visitor.field("File, up to 20 MiB").setInputFiles(new FilePayload(name, "application/octet-stream", bytes));
        visitor.rests();
    }

    /** The name of the file that the form still holds, or an empty text. */
    String chosenFile() {
        return (String) visitor.field("File, up to 20 MiB").evaluate("field => field.files.length ? field.files[0].name : ''");
    }

    /** What the file would be read as; waits for it. */
    Locator preview() {
        Locator preview = visitor.page().locator("#preview");
        assertThat(preview).not().containsText("Choose a file");
        return preview;
    }

    Locator column(int number) {
        return visitor.field("Column " + number + " is");
    }

    void setColumn(int number, String kind, String unit, boolean negated) {
        column(number).selectOption(new SelectOption().setLabel(kind));
        visitor.rests();
        visitor.fill("Unit of column " + number, unit);
        visitor.field("Unit of column " + number).blur();
        visitor.rests();
        Locator box = visitor.page().locator("th", new Page.LocatorOptions().setHas(column(number)))
                .getByLabel("negated");
        box.setChecked(negated);
        visitor.rests();
    }

    void store() {
        visitor.press("Store the sweep");
    }
}
