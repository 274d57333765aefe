package org.stillrail.journey;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.Locator;
import org.junit.jupiter.api.Test;

/** Parts are looked up by typing, with the keyboard alone. */
@Browsing
class PickerJourney {

    private static final String TYPED_HERE = "figures typed here";

    private static BankPage scratch(Visitor engineer) {
        engineer.signInAs("engineer");
        BankPage page = BankPage.scratch(engineer);
        engineer.rests();
        return page;
    }

    @Test
    void arrowsMoveEnterTakesAndEscapeLeaves(Visitor engineer) {
        BankPage page = scratch(engineer);
        Locator part = page.field(1, "Part");
        assertThat(part).hasValue(TYPED_HERE);
        assertThat(part).hasAttribute("aria-expanded", "false");

        part.fill("sparrow 10uF 20V ceramic");
        assertThat(page.offered(1)).hasCount(3);
        assertThat(page.offered(1).first()).containsText("SPARROW-10U-25");
        assertThat(page.offered(1).first()).containsText("vetted");
        assertThat(page.offered(1).first()).containsText("10 \u00b5F, 25 V, ceramic class 2");
        assertThat(page.offered(1).first()).hasAttribute("aria-selected", "true");
        assertThat(part).hasAttribute("aria-expanded", "true");
        assertThat(part).hasAttribute("aria-activedescendant", page.offered(1).first().getAttribute("id"));
        assertThat(new AxeBuilder(engineer.page()).withTags(AccessibilityJourney.RULES).analyze().getViolations()).extracting(Rule::getId).isEmpty();
        part.press("ArrowDown");
        assertThat(page.offered(1).nth(1)).hasAttribute("aria-selected", "true");
        part.press("ArrowUp");
        part.press("ArrowUp");
        assertThat(page.offered(1).last()).hasAttribute("aria-selected", "true");
        part.press("Escape");
        assertThat(part).hasValue("sparrow 10uF 20V ceramic");
        assertThat(part).hasAttribute("aria-expanded", "false");
        part.press("Escape");
        assertThat(part).hasValue(TYPED_HERE);

        part.press("ArrowDown");
        assertThat(page.offered(1).last()).containsText(TYPED_HERE);
        assertThat(engineer.page().getByText("not saved yet")).isHidden();
        part.fill("nothing is called this");
        engineer.sees("No part fits.");
        assertThat(page.offered(1).last()).hasAttribute("aria-selected", "false");
        part.press("Enter");
        engineer.rests();
        engineer.seesHeading("Scratch bank");
        assertThat(part).hasValue("nothing is called this");

        page.pick(1, "Part", "SPARROW-22U-10");
        assertThat(part).hasValue("SPARROW-22U-10");
        assertThat(part).isFocused();
        engineer.sees("See the part");
        engineer.sees("not saved yet");
        assertThat(page.claim()).contains("SPARROW-22U-10");
    }

    @Test
    void aSearchThatWasLeftIsKeptAndAWholeNumberIsTaken(Visitor engineer) {
        BankPage page = scratch(engineer);
        String claim = page.claim();
        page.leaveWith(1, "Part", "sparrow");
        assertThat(page.problems()).contains("Branch 1").contains("'sparrow'").contains("take one from the list");
        assertThat(page.field(1, "Part")).hasValue("sparrow");
        assertThat(page.claim()).isEqualTo(claim);

        page.addBranch();
        assertThat(page.field(1, "Part")).hasValue("sparrow");
        engineer.press("Save the bank");
        engineer.sees("Name is missing");
        assertThat(page.problems()).contains("the library has no part 'sparrow'");
        assertThat(page.field(1, "Part")).hasValue("sparrow");
        page.redrawing(() -> {
            page.field(1, "Part").focus();
            page.field(1, "Part").press("Escape");
        });
        assertThat(page.field(1, "Part")).hasValue(TYPED_HERE);
        assertThat(page.problems()).isBlank();

        page.leaveWith(2, "Part", "heron-470u-25");
        assertThat(page.field(2, "Part")).hasValue("HERON-470U-25");
        assertThat(page.branch(2)).containsText("See the part");
        assertThat(page.claim()).contains("HERON-470U-25");
    }

    @Test
    void aPartThatMayNotBeTakenSaysWhy(Visitor engineer) {
        BankPage page = scratch(engineer);
        Locator part = page.field(1, "Part");
        part.fill("HERON-680U-16");
        assertThat(page.offered(1).first()).containsText("withdrawn");
        assertThat(page.offered(1).first()).hasAttribute("aria-disabled", "true");
        page.offered(1).first().click(new Locator.ClickOptions().setForce(true));
        assertThat(part).hasValue("HERON-680U-16");
        page.leaveWith(1, "Part", "HERON-680U-16");
        assertThat(page.problems()).contains("HERON-680U-16 is withdrawn");

        part.fill("FINCH-47U-10");
        assertThat(page.offered(1).first()).containsText("Only on rails of 5 V or less");
        page.redrawing(() -> page.offered(1).first().click());
        assertThat(page.branch(1)).containsText("restricted");
        assertThat(page.branch(1)).containsText("Only on rails of 5 V or less");

        page.branch(1).getByText("Alternates and empty places").click();
        Locator alternates = page.field(1, "May be fitted instead");
        alternates.pressSequentially("SPARROW-47U-6V3");
        assertThat(page.offered(1).first()).containsText("proposed");
        assertThat(page.offered(1).first()).hasAttribute("aria-disabled", "true");
        alternates.fill("");
        page.pick(1, "May be fitted instead", "SPARROW-10U-50");
        page.add(1, "May be fitted instead", "SPARROW-10U-25");
        assertThat(alternates).hasValue("SPARROW-10U-50, SPARROW-10U-25");
    }

    @Test
    void aLibrarianPicksWhatReplacesAWithdrawnPart(Visitor librarian) {
        librarian.signInAs("librarian");
        SweepJourney.propose("DUNLIN-100U-10", librarian);
        assertThat(librarian.field("Replaced by")).isHidden();
        librarian.choose("State", "withdrawn");
        Locator replacement = librarian.field("Replaced by");
        Locator offered = librarian.page().locator(".matches:not([hidden]) [role=option]");
        replacement.pressSequentially("dunlin");
        assertThat(offered).hasCount(1);
        replacement.press("Enter");
        assertThat(replacement).hasValue("DUNLIN-100U-10");
        assertThat(new AxeBuilder(librarian.page()).withTags(AccessibilityJourney.RULES).analyze().getViolations()).extracting(Rule::getId).isEmpty();
        librarian.press("Set the state");
        librarian.sees("DUNLIN-100U-10 cannot replace itself");
        assertThat(replacement).hasValue("DUNLIN-100U-10");

        replacement.fill("");
        replacement.press("Tab");
        assertThat(replacement).hasValue("");
        replacement.pressSequentially("HERON-470U");
        assertThat(offered).hasCount(1);
        offered.first().click();
        librarian.press("Set the state");
        librarian.sees("The part is now withdrawn.");
        librarian.sees("; replaced by");
        librarian.follow("HERON-470U-25");
        librarian.seesHeading("HERON-470U-25");
    }
}
