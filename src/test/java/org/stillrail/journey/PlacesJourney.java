package org.stillrail.journey;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.options.AriaRole;
import org.junit.jupiter.api.Test;

/** An engineer puts a plane between converter and load, moves the ceramics to the load and estimates how they are mounted. */
@Browsing
class PlacesJourney {

    @Test
    void composesABankAtTwoNodes(Visitor engineer) {
        engineer.signInAs("engineer");
        BankPage page = BankPage.scratch(engineer);
        page.addBranch();
        page.choosePart(2, "SPARROW-22U-10");
        page.type(2, "Name", "ceramics");
        page.type(2, "How many", "4");
        String together = page.claim();
        assertThat(together).doesNotContain("at the load");
        assertThat(page.field(2, "Stands").count()).as("no node without a path").isZero();

        engineer.page().getByText("Converter and load are one node").click();
        page.redrawing(() -> engineer.page().getByLabel("Between them lies").selectOption("PLANE"));
        assertThat(engineer.page().getByLabel("Inductance of the path (H)").inputValue()).isEqualTo("200 pH");
        assertThat(page.claim()).contains("beyond").contains("at the load nothing");
        page.redrawing(() -> page.field(2, "Stands").selectOption("load"));
        assertThat(page.claim()).contains("at the load 4 of SPARROW-22U-10").contains("Ripple at the load is").contains("at the converter");
        assertThat(engineer.page().locator("#impedance figcaption").innerText()).isEqualTo("Magnitude of the impedance, at the load");
        assertThat(page.readings()).contains("crossover, at the load");

        page.branch(2).getByText("Mounting and shared path").click();
        page.redrawing(() -> page.field(2, "Mounting comes from").selectOption("geometry"));
        page.type(2, "Via pairs", "2");
        engineer.sees("not with this");
        page.type(2, "Height over the plane (m)", "0.1 spoons");
        assertThat(page.problems()).contains("height over the plane").contains("spoons");
        page.type(2, "Height over the plane (m)", "0.1 mm");
        page.redrawing(() -> page.branch(2).getByRole(AriaRole.BUTTON).getByText("Take it over").click());
        engineer.sees("The branch is calculated with this.");
        assertThat(page.field(2, "Mounting L, each (H)").inputValue()).endsWith("H");
        String mounting = page.field(2, "Mounting L, each (H)").inputValue();

        page.branch(1).getByText("Mounting and shared path").click();
        page.redrawing(() -> page.field(1, "Mounting comes from").selectOption("shorted"));
        assertThat(page.branch(1).innerText()).contains("Coupon T2, short");
        page.redrawing(() -> page.branch(1).getByRole(AriaRole.BUTTON).getByText("Take it over").click());
        String shorted = page.field(1, "Mounting L, each (H)").inputValue();
        assertThat(shorted).endsWith("H");

        engineer.fill("Name of the bank", "Two nodes of a journey");
        engineer.press("Save the bank");
        engineer.seesHeading("Two nodes of a journey");
        assertThat(page.field(2, "Stands").inputValue()).isEqualTo("load");
        assertThat(page.field(2, "Mounting L, each (H)").inputValue()).isEqualTo(mounting);
        assertThat(page.field(2, "Via pairs").inputValue()).isEqualTo("2");
        assertThat(page.field(1, "Mounting L, each (H)").inputValue()).isEqualTo(shorted);
        assertThat(page.branch(1).innerText()).contains("from the shorted-land sweep Coupon T2, short");
        assertThat(page.branch(2).innerText()).contains("estimated from 2 via pairs");
        assertThat(page.claim()).contains("at the load 4 of SPARROW-22U-10");

        page.redrawing(() -> engineer.page().getByLabel("Between them lies").selectOption(""));
        assertThat(page.claim()).doesNotContain("at the load");
        assertThat(page.field(2, "Stands").count()).isZero();
        assertThat(engineer.page().locator("#impedance figcaption").innerText()).isEqualTo("Magnitude of the impedance");
    }
}
