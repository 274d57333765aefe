package org.stillrail.account;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.options.AriaRole;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.stillrail.support.AppTest;
import org.stillrail.support.InBrowser;
import org.stillrail.support.TestPeople;
import org.stillrail.support.Visit;

/** The session ends while someone fills in a form: nothing they typed is lost. */
@AppTest
@InBrowser
class LostSessionJourney {

    @LocalServerPort
    private int port;

    @Autowired
    private TestPeople people;

    @Autowired
    private Sessions sessions;

    @Test
    void whatWasTypedIsSentAfterSigningInElsewhere(BrowserContext browser) {
        CurrentPerson person = people.another(Role.ENGINEER);
        Visit form = new Visit(browser, port)
                .signIn(person.userName(), TestPeople.PASSWORD)
                .open("/account")
                .type("Name of a new token", "typed before the end");

        sessions.end(person.userName());
        form.press("Make a token");
        assertThat(form.page().getByRole(AriaRole.ALERT)).containsText("You are signed out");
        assertThat(form.page().getByLabel("Name of a new token")).hasValue("typed before the end");

        new Visit(browser, port).signIn(person.userName(), TestPeople.PASSWORD);
        form.press("Make a token");
        assertThat(form.page().locator("#new-token")).hasText(Pattern.compile("sr_.{43}"));
        assertThat(form.page().getByText("typed before the end")).isVisible();
    }
}
