package org.stillrail.journey;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.boot.test.web.server.LocalServerPort;

/** What makes a journey fail beside its own assertions does make it fail. */
@Browsing
class WatchJourney {

    @LocalServerPort
    private int port;

    private Visitor watched;

    @BeforeEach
    void open() {
        Browser browser = Chromium.browser();
        watched = new Visitor(browser, "http://127.0.0.1:" + port);
        watched.open("/sign-in");
        assertThat(watched.problems()).isEmpty();
    }

    @AfterEach
    void leave() {
        watched.leave();
    }

    @Test
    void aScriptInThePageBreaksThePolicyAndIsSeen() {
        watched.page().evaluate("""
                const script = document.createElement('script');
                script.textContent = 'window.ran = true';
                document.body.append(script);""");
        waitForProblem();
        assertThat(watched.problems()).singleElement().asString().contains("Content Security Policy");
        assertThat(watched.page().evaluate("window.ran === undefined")).isEqualTo(true);
    }

    @Test
    void aFailingScriptIsSeen() {
        watched.page().evaluate("setTimeout(() => { throw new Error('planted'); }, 0)");
        waitForProblem();
        assertThat(watched.problems()).singleElement().asString().contains("planted");
    }

    @Test
    void aMissingPageIsSeenUnlessItWasAnnounced() {
        watched.signInAs("viewer");
        watched.open("/no-such-page");
        waitForProblem();
        assertThat(watched.problems()).singleElement().asString().contains("404");
        watched.expectStatus(404);
        watched.open("/nor-this");
        assertThat(watched.problems()).hasSize(1);
    }

    private void waitForProblem() {
        watched.page().waitForCondition(() -> !watched.problems().isEmpty());
    }
}
