package org.stillrail.journey;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.assertions.PlaywrightAssertions;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The session ends while somebody works on a page: nothing they typed is lost. */
@Browsing
class LostSessionJourney {

    private static final String SIGNED_OUT = "You are signed out";

    private final JdbcClient jdbc;

    @Autowired
    LostSessionJourney(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Test
    void aFormIsSentAfterSigningInElsewhere(Visitor reviewer) {
        reviewer.signInAs("reviewer");
        reviewer.open("/account");
        reviewer.fill("Name of a new token", "typed before the end");
        endSessionsOf("reviewer");
        reviewer.expectStatus(401);
        reviewer.expectStatus(403);
        reviewer.press("Make a token");
        reviewer.sees(SIGNED_OUT);
        assertThat(reviewer.field("Name of a new token").inputValue()).isEqualTo("typed before the end");

        reviewer.inAnotherTab().signInAs("reviewer");
        reviewer.press("Make a token");
        PlaywrightAssertions.assertThat(reviewer.page().locator("#new-token")).hasText(Pattern.compile("sr_.{43}"));
        reviewer.sees("typed before the end");
    }

    @Test
    void aBankThatIsBeingComposedStaysOnThePage(Visitor reviewer) {
        reviewer.signInAs("reviewer");
        BankPage page = BankPage.scratch(reviewer);
        page.type(1, "How many", "7");
        endSessionsOf("reviewer");
        reviewer.expectStatus(401);
        reviewer.expectStatus(403);
        page.type(1, "How many", "8");
        reviewer.sees(SIGNED_OUT);
        assertThat(page.field(1, "How many").inputValue()).isEqualTo("8");
        reviewer.inAnotherTab().signInAs("reviewer");
        reviewer.comesBack();
        page.type(1, "How many", "9");
        reviewer.seesNowhere(SIGNED_OUT);
    }

    private void endSessionsOf(String userName) {
        int ended = jdbc.sql("delete from spring_session where principal_name = :name").param("name", userName).update();
        assertThat(ended).isPositive();
    }
}
