package org.stillrail.journey;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Playwright;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The machine's own Chromium, started once for all journeys. Its place is the system property {@code stillrail.browser}, else
 * the variable {@code STILLRAIL_BROWSER}, else where Linux distributions put it.
 */
final class Chromium {

    private static final List<String> USUAL_PLACES = List.of("/usr/bin/chromium", "/usr/bin/chromium-browser");

    /** A quiet browser: no sandbox (a container's root has none) and nothing fetched from outside. */
    private static final List<String> FLAGS = List.of(
            "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
            "--disable-component-update", "--disable-sync", "--force-color-profile=srgb");

    private static Browser browser;

    private Chromium() {
    }

    static Optional<Path> place() {
        String named = System.getProperty("stillrail.browser", System.getenv("STILLRAIL_BROWSER"));
        Stream<String> places = named == null ? USUAL_PLACES.stream() : Stream.of(named);
        return places.map(Path::of).filter(Files::isExecutable).findFirst();
    }

    static boolean isRequired() {
        return Boolean.getBoolean("stillrail.browser.required");
    }

    /** @throws IllegalStateException where no Chromium is */
    static synchronized Browser browser() {
        if (browser == null) {
            Path executable = place().orElseThrow(() -> new IllegalStateException("No Chromium on this machine"));
            Playwright playwright = Playwright.create(
                    new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
            browser = playwright.chromium().launch(
                    new BrowserType.LaunchOptions().setExecutablePath(executable).setHeadless(true).setArgs(FLAGS));
            Runtime.getRuntime().addShutdownHook(new Thread(playwright::close));
        }
        return browser;
    }
}
