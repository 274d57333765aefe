package org.stillrail.journey;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import org.junit.jupiter.api.Test;

/** Two people work on the same thing at the same time: the second is told, and nobody loses anything. */
@Browsing
class SharedWorkJourney {

    @Test
    void twoPeopleReviseOnePart(Visitor engineer, Visitor librarian) {
        engineer.signInAs("engineer");
        librarian.signInAs("librarian");
        PartForm.propose("REDSHANK-47U-16", engineer);
        for (Visitor each : new Visitor[] {engineer, librarian}) {
            each.openPart("REDSHANK-47U-16");
            each.follow("Correct the figures");
            each.seesHeading("Next revision of REDSHANK-47U-16");
        }
        engineer.fill("Note", "Written by the engineer");
        engineer.fill("Case size", "8 x 6.2");
        engineer.press("Save as the next revision");
        engineer.sees("the older ones stay readable");

        librarian.fill("Note", "Written by the librarian");
        librarian.fill("Cost of one", "0.77");
        librarian.press("Save as the next revision");
        librarian.sees("Tamsel Verring saved revision 2 at");
        librarian.sees("nothing you typed is lost");
        librarian.sees("Revision 2 has: Written by the engineer");
        librarian.sees("Revision 2 has changed this; it was: not stated");
        assertThat(librarian.field("Note").inputValue()).isEqualTo("Written by the librarian");
        assertThat(librarian.field("Cost of one").inputValue()).isEqualTo("0.77");
        assertThat(librarian.field("Case size").inputValue()).isEqualTo("8 x 6.2");
        engineer.openPart("REDSHANK-47U-16");
        engineer.sees("Written by the engineer");

        librarian.press("Save as the next revision");
        librarian.sees("the older ones stay readable");
        librarian.sees("Written by the librarian");
        librarian.sees("8 x 6.2");
    }

    @Test
    void twoPeopleReviseOneBank(Visitor engineer, Visitor lead) {
        engineer.signInAs("engineer");
        lead.signInAs("lead");
        engineer.open("/projects");
        engineer.follow("Logic 5V0");
        engineer.follow("Compose a bank");
        BankPage theirs = new BankPage(engineer);
        theirs.choosePart(1, "HERON-470U-25");
        engineer.fill("Name of the bank", "Shared work");
        engineer.press("Save the bank");
        engineer.sees("The bank is saved as revision 1");

        lead.openBank("Shared work");
        BankPage mine = new BankPage(lead);
        theirs.type(1, "How many", "2");
        engineer.fill("Note", "Two are enough");
        engineer.press("Save as revision 2");
        engineer.sees("Saved as revision 2.");

        mine.type(1, "How many", "3");
        lead.press("Save as revision 2");
        lead.sees("Tamsel Verring saved revision 2 at");
        assertThat(lead.page().locator("tr", new Page.LocatorOptions().setHasText("Branch 1: count")).innerText().split("\\s+"))
                .containsSubsequence("1", "2", "3", "yours");
        assertThat(mine.field(1, "How many").inputValue()).isEqualTo("3");
        assertThat(lead.field("Note").inputValue()).isEqualTo("Two are enough");
        engineer.openBank("Shared work");
        assertThat(theirs.field(1, "How many").inputValue()).isEqualTo("2");

        lead.press("Save as revision 3");
        lead.sees("Saved as revision 3.");
        assertThat(mine.field(1, "How many").inputValue()).isEqualTo("3");
        lead.follow("2");
        lead.sees("This is revision 2 of 3");
        assertThat(mine.field(1, "How many").inputValue()).isEqualTo("2");
    }
}
