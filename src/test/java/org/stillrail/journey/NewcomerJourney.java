package org.stillrail.journey;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import org.junit.jupiter.api.Test;

/** Somebody who has never seen the tool opens the demo. */
@Browsing
class NewcomerJourney {

    @Test
    void findsOutWhyTheBadBankIsBadAndTheGoodOneGood(Visitor newcomer) {
        newcomer.open("/");
        newcomer.seesHeading("Sign in");
        newcomer.sees("Accounts of the demo");
        newcomer.sees("An invented team");
        newcomer.signInAs("viewer");
        newcomer.sees("Invented data");

        newcomer.follow("Projects");
        newcomer.seesHeading("Projects");
        newcomer.sees("Open a bank to see whether it holds, and why");
        newcomer.follow("One big, one tiny");
        newcomer.seesHeading("One big, one tiny");
        BankPage bad = new BankPage(newcomer);
        assertThat(bad.claim()).contains("The bank does not fit").contains("ring");
        Locator worst = verdicts(newcomer).first();
        assertThat(worst.innerText()).contains("not met");
        worst.getByText("What happens, and what would change it").click();
        assertThat(worst.getByText("How it is worked out").isVisible()).isTrue();
        Page method = newcomer.page().context().waitForPage(() -> worst.getByText("How it is worked out").click());
        method.waitForURL("**/method#*");
        assertThat(method.locator(":target").count()).as("the equation's place on the page").isEqualTo(1);
        method.close();
        assertThat(newcomer.button("Save as revision 2").count()).as("a viewer changes nothing").isZero();

        newcomer.follow("Projects");
        newcomer.follow("Electrolytic with ceramics");
        newcomer.seesHeading("Electrolytic with ceramics");
        assertThat(new BankPage(newcomer).claim()).contains("The bank fits");
        for (Locator verdict : verdicts(newcomer).all()) {
            assertThat(verdict.innerText()).doesNotContain("not met");
        }
    }

    private static Locator verdicts(Visitor visitor) {
        return visitor.page().locator("#verdicts tbody tr");
    }
}
