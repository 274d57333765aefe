package org.stillrail.journey;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;

/** A chart, read by the table of its numbers. */
final class ChartFigure {

    private final Locator figure;

    ChartFigure(Visitor visitor, String caption) {
        Locator title = visitor.page().locator("figcaption", new Page.LocatorOptions().setHasText(caption));
        this.figure = visitor.page().locator("figure", new Page.LocatorOptions().setHas(title));
    }

    /** @param row from 0, below the headings */
    String cell(int row, int column) {
        Locator numbers = figure.locator("details").first();
        if (numbers.getAttribute("open") == null) {
            numbers.locator("summary").click();
        }
        return numbers.locator("tbody tr").nth(row).locator("th, td").nth(column).innerText().strip();
    }
}
