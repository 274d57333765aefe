package org.stillrail.journey;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;

/** The page on which a bank is composed: on a rail or as a scratch bank. */
final class BankPage {

    private final Visitor visitor;

    BankPage(Visitor visitor) {
        this.visitor = visitor;
    }

    static BankPage scratch(Visitor visitor) {
        visitor.open("/");
        visitor.follow("Scratch bank");
        visitor.seesHeading("Scratch bank");
        return new BankPage(visitor);
    }

    /** The card of a branch, counted from 1. */
    Locator branch(int number) {
        return visitor.page().getByRole(AriaRole.GROUP, new Page.GetByRoleOptions().setName("Branch " + number).setExact(true));
    }

    Locator field(int branch, String label) {
        return branch(branch).getByLabel(label, new Locator.GetByLabelOptions().setExact(true));
    }

    /** Types into a field of a branch and waits until the figures follow. */
    void type(int branch, String label, String text) {
        redrawing(() -> field(branch, label).fill(text));
    }

    /** Chooses a part of the library by its number. */
    void choosePart(int branch, String partNumber) {
        pick(branch, "Part", partNumber);
        assertThat(field(branch, "Part")).hasValue(partNumber);
    }

    /** Types a part's number into a picker and takes the first match, with the keyboard alone. */
    void pick(int branch, String label, String partNumber) {
        field(branch, label).fill("");
        add(branch, label, partNumber);
    }

    /** As {@link #pick}, after the numbers that stand in the field. */
    void add(int branch, String label, String partNumber) {
        Locator field = field(branch, label);
        field.press("End");
        field.pressSequentially(field.inputValue().isEmpty() ? partNumber : ", " + partNumber);
        assertThat(offered(branch).first()).containsText(partNumber);
        redrawing(() -> field.press("Enter"));
    }

    /** What the open list of a branch offers. */
    Locator offered(int branch) {
        return branch(branch).locator(".matches:not([hidden]) [role=option]");
    }

    /** Types into a picker, takes nothing and goes on to the next field. */
    void leaveWith(int branch, String label, String text) {
        field(branch, label).fill(text);
        redrawing(() -> field(branch, label).press("Tab"));
    }

    void addBranch() {
        redrawing(() -> visitor.press("Add a branch"));
    }

    void takeOut(int branch) {
        redrawing(() -> branch(branch).getByRole(AriaRole.BUTTON).getByText("Take this branch out").click());
    }

    /** What the page says of the bank, in a sentence or two. */
    String claim() {
        return visitor.page().locator("#claim").innerText();
    }

    /** The table of figures at the frequencies that matter. */
    String readings() {
        return visitor.page().locator("#readings").innerText();
    }

    /** What is wrong with the fields, or an empty text. */
    String problems() {
        return visitor.page().locator("#problems").innerText();
    }

    /** Does something that makes the page ask for new figures, and waits for them. */
    void redrawing(Runnable action) {
        // A script that has not started yet would miss what is done.
        visitor.rests();
        visitor.page().waitForResponse(answer -> answer.url().endsWith("/banks/preview"), action);
        visitor.rests();
    }
}
