package org.stillrail.support;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;

/** One tab on a running application; steps that every journey shares. */
public final class Visit {

    /** Of the demo's people, as its sign-in page shows it. */
    public static final String DEMO_PASSWORD = "quiet-rails-demo";

    private final Page page;
    private final String root;

    /** @param port of the application, from {@code @LocalServerPort} */
    public Visit(BrowserContext context, int port) {
        this.page = context.newPage();
        this.root = "http://localhost:" + port;
    }

    public Page page() {
        return page;
    }

    public Visit open(String path) {
        page.navigate(root + path);
        return this;
    }

    public Visit type(String label, String text) {
        page.getByLabel(label, new Page.GetByLabelOptions().setExact(true)).fill(text);
        return this;
    }

    public Visit press(String button) {
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(button).setExact(true)).click();
        return this;
    }

    public Visit follow(String link) {
        page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName(link).setExact(true)).first().click();
        return this;
    }

    /** From any page that asks for it. */
    public Visit signIn(String userName, String password) {
        open("/sign-in").type("User name", userName).type("Password", password).press("Sign in");
        page.waitForURL(url -> !url.contains("/sign-in"));
        return this;
    }
}
