package org.stillrail.support;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Playwright;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;

/** Starts one Chromium for the whole run and hands out contexts of it. */
class BrowserExtension implements ExecutionCondition, ParameterResolver, AfterEachCallback {

    private static final ExtensionContext.Namespace NAMESPACE = ExtensionContext.Namespace.create(BrowserExtension.class);
    private static final double TIMEOUT_MS = 20_000;

    /** A context and what went wrong in it. */
    private record Window(BrowserContext context, List<String> faults) {}

    /** Closed by JUnit at the end of the run. */
    private record Chromium(Playwright playwright, Browser browser) implements AutoCloseable {

        static Chromium start() {
            Playwright playwright =
                    Playwright.create(new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
            Browser browser = playwright.chromium().launch(new BrowserType.LaunchOptions()
                    .setExecutablePath(executable().orElseThrow(() -> new IllegalStateException("There is no Chromium")))
                    .setArgs(List.of("--no-sandbox")));
            return new Chromium(playwright, browser);
        }

        @Override
        public void close() {
            browser.close();
            playwright.close();
        }
    }

    private static Optional<Path> executable() {
        return Stream.of("/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome")
                .map(Path::of).filter(Files::isExecutable).findFirst();
    }

    @Override
    public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
        if (executable().isPresent() || Boolean.getBoolean("stillrail.browser.required")) {
            return ConditionEvaluationResult.enabled("A browser is there or required");
        }
        return ConditionEvaluationResult.disabled("There is no Chromium on this machine");
    }

    @Override
    public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
        return parameter.getParameter().getType() == BrowserContext.class;
    }

    @Override
    public Object resolveParameter(ParameterContext parameter, ExtensionContext context) {
        Chromium chromium = context.getRoot().getStore(NAMESPACE)
                .computeIfAbsent("chromium", key -> Chromium.start(), Chromium.class);
        BrowserContext opened = chromium.browser().newContext(
                new Browser.NewContextOptions().setViewportSize(1280, 900).setLocale("en-GB"));
        opened.setDefaultTimeout(TIMEOUT_MS);
        List<String> faults = new ArrayList<>();
        opened.onWebError(error -> faults.add(error.error()));
        opened.onConsoleMessage(message -> {
            if (message.text().contains("Content Security Policy")) {
                faults.add(message.text());
            }
        });
        context.getStore(NAMESPACE).put("window", new Window(opened, faults));
        return opened;
    }

    @Override
    public void afterEach(ExtensionContext context) {
        Window window = context.getStore(NAMESPACE).remove("window", Window.class);
        if (window != null) {
            window.context().close();
            if (!window.faults().isEmpty()) {
                throw new AssertionError("In the browser: " + window.faults());
            }
        }
    }
}
