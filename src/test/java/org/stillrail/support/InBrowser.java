package org.stillrail.support;

import com.microsoft.playwright.BrowserContext;
import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.extension.ExtendWith;

/**
 * Beside {@link AppTest} or {@link DemoTest}: test methods take a {@link BrowserContext}, which is fresh and closed afterwards.
 * Skipped where no Chromium is, unless {@code -Dstillrail.browser.required=true}. A violation of the content security policy or
 * an uncaught exception of a script fails the test.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@Documented
@ExtendWith(BrowserExtension.class)
public @interface InBrowser {}
