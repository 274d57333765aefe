package org.stillrail.verification;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.platform.engine.discovery.DiscoverySelectors.selectClass;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaPackage;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption.Predefined;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.platform.launcher.LauncherDiscoveryRequest;
import org.junit.platform.launcher.core.LauncherDiscoveryRequestBuilder;
import org.junit.platform.launcher.core.LauncherFactory;
import org.junit.platform.launcher.listeners.SummaryGeneratingListener;

/**
 * Keeps docs/verification.md in step with the checks. It finds the test classes that make a {@link Check} and runs them all itself, so
 * that the list is whole whatever part of the tests was asked for. With {@code -Dstillrail.verification=true} it writes the document.
 */
class VerificationDocumentTest {

    private static final Path WRITTEN = Path.of("docs/verification.md");
    private static final Path FRESH = Path.of("target/verification.md");

    @Test
    void documentListsTheChecksThatTheTestsMake() throws IOException {
        SummaryGeneratingListener summary = new SummaryGeneratingListener();
        List<Record> records = Records.during(() -> LauncherFactory.create().execute(checkingTests(), summary));
        assertThat(summary.getSummary().getFailures())
                .extracting(failure -> failure.getTestIdentifier().getDisplayName() + ": " + failure.getException().getMessage()).isEmpty();
        assertThat(records).isNotEmpty();
        String fresh = VerificationDocument.of(records);
        Files.writeString(FRESH, fresh);
        if (Boolean.getBoolean("stillrail.verification")) {
            Files.writeString(WRITTEN, fresh);
        }
        Set<String> made = VerificationDocument.claims(fresh);
        Set<String> listed = VerificationDocument.claims(Files.readString(WRITTEN));
        String cure = "; write it anew: mvn -q test -Dtest=VerificationDocumentTest -Dstillrail.verification=true";
        assertThat(without(made, listed)).as("checks that docs/verification.md does not list" + cure).isEmpty();
        assertThat(without(listed, made)).as("rows of docs/verification.md that no test makes" + cure).isEmpty();
    }

    private static LauncherDiscoveryRequest checkingTests() {
        JavaClass check = new ClassFileImporter().withImportOption(Predefined.ONLY_INCLUDE_TESTS).importPackages("org.stillrail").get(Check.class);
        JavaPackage here = check.getPackage();
        return LauncherDiscoveryRequestBuilder.request()
                .selectors(check.getDirectDependenciesToSelf().stream()
                        .map(Dependency::getOriginClass).map(VerificationDocumentTest::outermost)
                        .filter(origin -> origin.getSimpleName().endsWith("Test") && !origin.getPackage().equals(here))
                        .distinct()
                        .map(origin -> selectClass(origin.reflect())).collect(Collectors.toList()))
                .build();
    }

    private static JavaClass outermost(JavaClass origin) {
        return origin.getEnclosingClass().map(VerificationDocumentTest::outermost).orElse(origin);
    }

    private static Set<String> without(Set<String> one, Set<String> other) {
        Set<String> rest = new TreeSet<>(one);
        rest.removeAll(other);
        return rest;
    }
}
