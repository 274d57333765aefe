package org.stillrail.journey;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.FilePayload;
import com.microsoft.playwright.options.SelectOption;

/** The page on which a measured file becomes a sweep of a part. */
final class SweepImportPage {

    private static final String FILE = "File, up to 20 MiB";

    private final Visitor visitor;

    SweepImportPage(Visitor visitor) {
        this.visitor = visitor;
    }

    /** Opens the page for a part of the library. */
    static SweepImportPage of(String partNumber, Visitor visitor) {
        visitor.openPart(partNumber);
        visitor.follow("Import a sweep");
        visitor.seesHeading("Import a sweep of " + partNumber);
        return new SweepImportPage(visitor);
    }

    /** Chooses a file and waits for what the server says of it. */
    void chooseFile(String name, byte[] bytes) {
        change(() -> visitor.field(FILE).setInputFiles(new FilePayload(name, "application/octet-stream", bytes)));
    }

    /** The name of the file that the form still holds, or an empty text. */
    String chosenFile() {
        return (String) visitor.field(FILE).evaluate("field => field.files.length ? field.files[0].name : ''");
    }

    void says(String text) {
        assertThat(visitor.page().locator("#preview")).containsText(text);
    }

    Locator column(int number) {
        return visitor.field("Column " + number + " is");
    }

    void setUnit(int number, String unit) {
        Locator field = visitor.field("Unit of column " + number);
        change(() -> {
            field.fill(unit);
            field.blur();
        });
    }

    void setColumn(int number, String kind) {
        change(() -> column(number).selectOption(new SelectOption().setLabel(kind)));
    }

    void negate(int number) {
        Locator head = visitor.page().locator("th", new Page.LocatorOptions().setHas(column(number)));
        change(() -> head.getByLabel("negated").check());
    }

    /** A number of the preview's table: the first row of a chart, second column, as it is shown. */
    String firstValue(String chart) {
        return new ChartFigure(visitor, chart).cell(0, 1);
    }

    void store() {
        visitor.press("Store the sweep");
    }

    private void change(Runnable action) {
        // A script that has not started yet would miss what is done.
        visitor.rests();
        visitor.page().waitForResponse(answer -> answer.url().endsWith("/sweeps/preview"), action);
        visitor.rests();
    }
}
