package org.stillrail.journey;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.ConsoleMessage;
import com.microsoft.playwright.Dialog;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.LoadState;
import com.microsoft.playwright.options.ScreenshotAnimations;
import com.microsoft.playwright.options.SelectOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Somebody with a browser window of 1280 px. Whatever the browser reports as an error (a script's, a page's, a breach of the
 * content security policy, an answer of 4xx or 5xx) counts as a problem, unless it was announced by {@link #expectStatus}.
 */
final class Visitor {

    /** Of every account of the demo, as its sign-in page shows it. */
    static final String PASSWORD = "quiet-rails-demo";

    /** Generous: a busy machine is slow, and only a failing journey waits so long. */
    private static final int PATIENCE_MS = 30_000;

    private final String origin;
    private final BrowserContext session;
    private final Page page;
    private final List<String> problems = new ArrayList<>();
    private final List<String> questions = new ArrayList<>();
    private final Set<Integer> expected = new HashSet<>();
    private boolean agrees = true;

    Visitor(Browser browser, String origin) {
        this(origin, browser.newContext(new Browser.NewContextOptions()
                .setViewportSize(1280, 900).setLocale("en-GB").setTimezoneId("UTC").setBaseURL(origin).setAcceptDownloads(true)));
    }

    private Visitor(String origin, BrowserContext session) {
        this.origin = origin;
        this.session = session;
        session.setDefaultTimeout(PATIENCE_MS);
        PlaywrightAssertions.setDefaultAssertionTimeout(PATIENCE_MS);
        this.page = session.newPage();
        page.onConsoleMessage(this::note);
        page.onPageError(error -> problems.add(where() + ": " + error));
        page.onDialog(this::answer);
    }

    /** Another tab of the same browser; its problems are asked for on its own. */
    Visitor inAnotherTab() {
        return new Visitor(origin, session);
    }

    private void note(ConsoleMessage message) {
        boolean announced = expected.stream().anyMatch(status -> message.text().contains("status of " + status)
                || message.text().contains("Status Error Code " + status));
        if (message.type().equals("error") && !announced && !isAnOvertakenPreview(message.text())) {
            problems.add(where() + ": " + message.text() + " (" + message.location() + ")");
        }
    }

    /** A preview that a newer one replaces, or that its page is left with, is called off; htmx notes that as an error. */
    private static boolean isAnOvertakenPreview(String text) {
        return text.equals("htmx:afterRequest") || text.equals("htmx:sendAbort");
    }

    private String where() {
        return page.url().replace(origin, "");
    }

    private void answer(Dialog dialog) {
        questions.add(dialog.type().equals("beforeunload") ? "Leave without saving?" : dialog.message());
        if (agrees) {
            dialog.accept();
        } else {
            dialog.dismiss();
        }
    }

    /** For what the page objects do not know. */
    Page page() {
        return page;
    }

    List<String> problems() {
        return List.copyOf(problems);
    }

    /** Questions that the browser asked before it went on, oldest first. */
    List<String> questions() {
        return List.copyOf(questions);
    }

    /** From now on says no (or yes again) to such questions. */
    void agrees(boolean yes) {
        this.agrees = yes;
    }

    /** An answer with this status belongs to the journey. */
    void expectStatus(int status) {
        expected.add(status);
    }

    /** Turns to this tab again; a browser without a window does not tell the page by itself. */
    void comesBack() {
        page.waitForResponse("**/form-token", () -> page.evaluate("document.dispatchEvent(new Event('visibilitychange'))"));
    }

    void open(String path) {
        page.navigate(path);
    }

    /** Opens a page whose address goes on from this page's. */
    void openBelow(String path) {
        rests();
        open(page.url() + path);
    }

    /** Opens a part from the library's search. */
    void openPart(String partNumber) {
        open("/library?text=" + partNumber);
        follow(partNumber);
    }

    /** Opens a bank from the list of projects. */
    void openBank(String name) {
        open("/projects");
        follow(name);
    }

    /** Waits until the page has loaded, nothing is on its way to the server and nothing moves. */
    void rests() {
        page.waitForLoadState(LoadState.LOAD);
        // Asked again and again from here: the page's policy forbids a script that polls inside it.
        page.waitForCondition(() -> (boolean) page.evaluate("""
                () => !document.querySelector('.htmx-request, .htmx-swapping, .htmx-settling')
                  && !document.getAnimations().some(animation => animation.playState === 'running')"""));
    }

    /** Signs in with an account of the demo. */
    void signInAs(String userName) {
        open("/sign-in");
        sees(PASSWORD);
        fill("User name", userName);
        fill("Password", PASSWORD);
        press("Sign in");
        PlaywrightAssertions.assertThat(button("Sign out")).isVisible();
    }

    Locator field(String label) {
        return page.getByLabel(label, new Page.GetByLabelOptions().setExact(true));
    }

    void fill(String label, String text) {
        field(label).fill(text);
    }

    void choose(String label, String option) {
        field(label).selectOption(new SelectOption().setLabel(option));
    }

    Locator button(String name) {
        return page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true));
    }

    void press(String button) {
        button(button).click();
    }

    Locator link(String name) {
        return page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName(name).setExact(true));
    }

    /** Follows the first link of this name. */
    void follow(String link) {
        link(link).first().click();
    }

    /** Waits until this stands in the page's heading. */
    void seesHeading(String text) {
        PlaywrightAssertions.assertThat(page.getByRole(AriaRole.HEADING, new Page.GetByRoleOptions().setLevel(1)))
                .containsText(text);
    }

    /** Waits until this text stands somewhere on the page. */
    void sees(String text) {
        PlaywrightAssertions.assertThat(page.getByText(text).first()).isVisible();
    }

    void seesNowhere(String text) {
        PlaywrightAssertions.assertThat(page.getByText(text)).hasCount(0);
    }

    /**
     * Takes a picture of the page as it stands now.
     *
     * @param whole or only what the window shows
     */
    void photograph(Path picture, boolean whole) {
        // The pointer would leave a cursor line in a chart.
        page.mouse().move(0, 0);
        page.screenshot(new Page.ScreenshotOptions().setPath(picture).setFullPage(whole).setAnimations(ScreenshotAnimations.DISABLED));
    }

    void leave() {
        session.close();
    }
}
