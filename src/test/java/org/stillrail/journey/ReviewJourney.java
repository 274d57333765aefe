package org.stillrail.journey;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Download;
import com.microsoft.playwright.options.SelectOption;
import java.nio.file.Files;
import org.junit.jupiter.api.Test;
import org.stillrail.document.Sha256;

/** A bank goes through review: returned, mended in a new revision, approved by somebody who did not write it. */
@Browsing
class ReviewJourney {

    private static final String BANK = "Electrolytic with ceramics";
    private static final String SIGN = "Sign and approve";

    @Test
    void fromSubmissionToSignature(Visitor engineer, Visitor reviewer, Visitor lead) throws Exception {
        engineer.signInAs("engineer");
        reviewer.signInAs("reviewer");
        lead.signInAs("lead");

        engineer.openBank(BANK);
        engineer.fill("Note", "Once more, with a question");
        engineer.press("Save as revision 2");
        engineer.sees("Saved as revision 2.");
        engineer.sees("Every verdict that is asked is met.");
        engineer.fill("For the reviewer", "Is the note enough?");
        engineer.press("Submit for review");
        engineer.sees("Revision 2 is submitted and waits for a reviewer.");
        assertThat(engineer.button(SIGN).count()).isZero();

        reviewer.open("/waiting");
        reviewer.follow(BANK);
        reviewer.sees("Is the note enough?");
        reviewer.follow("Comment on the verdict on ripple");
        assertThat(reviewer.field("Said of").inputValue()).isEqualTo("verdict-ripple");
        reviewer.fill("Comment on revision 2", "Near the limit.");
        reviewer.press("Add the comment");
        reviewer.sees("said of the verdict on ripple in revision 2:");
        reviewer.page().locator("#corner").selectOption(new SelectOption().setIndex(1));
        reviewer.rests();
        reviewer.follow("1 comment on the verdict on ripple");
        assertThat(reviewer.page().locator("li:target").innerText()).contains("Near the limit.");
        reviewer.fill("What has to change, and why", "Say which question.");
        reviewer.press("Return for changes");
        reviewer.sees("Revision 2 is returned.");

        engineer.open("/waiting");
        engineer.sees("Say which question.");
        lead.openBank(BANK);
        lead.fill("Note", "The question was the height");
        lead.press("Save as revision 3");
        engineer.openBank(BANK);
        engineer.press("Submit for review");
        engineer.sees("Revision 3 is submitted and waits for a reviewer.");

        lead.openBank(BANK);
        lead.sees("You wrote this revision; somebody else has to approve it.");
        assertThat(lead.button(SIGN).count()).isZero();

        reviewer.openBank(BANK);
        reviewer.fill("Comment", "Agreed");
        reviewer.fill("Your password", "not the password");
        reviewer.expectStatus(422);
        reviewer.press(SIGN);
        reviewer.sees("This is not your password");
        assertThat(reviewer.field("Comment").inputValue()).isEqualTo("Agreed");
        reviewer.fill("Your password", Visitor.PASSWORD);
        reviewer.press(SIGN);
        reviewer.sees("Revision 3 is approved");
        reviewer.sees("With that, revision 1 is superseded.");

        engineer.openBank(BANK);
        engineer.follow("Snapshot of what was submitted");
        engineer.sees("holds for these bytes");
        engineer.press("Recompute");
        engineer.sees("Every figure and verdict comes out as stored");
        Download download = engineer.page().waitForDownload(() -> engineer.follow("Download the bytes"));
        assertThat(engineer.page().content()).contains(Sha256.of(Files.readAllBytes(download.path())));
    }

    @Test
    void whatWasTypedIntoAConcessionStaysUntilItIsComplete(Visitor engineer) {
        engineer.signInAs("engineer");
        engineer.openBank("Tantalum pair");
        engineer.fill("Reason", "Only for the first ten boards, which are watched.");
        engineer.expectStatus(422);
        engineer.press("Submit for review");
        engineer.sees("The owner is missing");
        engineer.sees("The end is missing");
        assertThat(engineer.field("Reason").inputValue()).isEqualTo("Only for the first ten boards, which are watched.");
        engineer.choose("Owner", "Tamsel Verring");
        engineer.fill("Ends on", "2099-12-31");
        engineer.press("Submit for review");
        engineer.sees("Revision 1 is submitted and waits for a reviewer.");
        engineer.sees("Only for the first ten boards, which are watched.");
    }
}
