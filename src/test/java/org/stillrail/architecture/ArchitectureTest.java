package org.stillrail.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.springframework.modulith.core.ApplicationModules;
import org.stillrail.StillrailApplication;

/** The lines between the rooms hold. */
class ArchitectureTest {

    private static final JavaClasses OURS =
            new ClassFileImporter().withImportOption(new ImportOption.DoNotIncludeTests()).importPackages("org.stillrail");

    @TestFactory
    Stream<DynamicTest> everyRoomUsesOnlyWhatItMay() {
        return new Rooms("org.stillrail").rules().stream()
                .map(rule -> DynamicTest.dynamicTest(rule.getDescription(), () -> rule.check(OURS)));
    }

    @Test
    void modulesHaveNoCyclesAndReachIntoNoInternals() {
        // The two plain trees have packages inside packages and are held by the rules above instead.
        ApplicationModules.of(
                        StillrailApplication.class,
                        JavaClass.Predicates.resideInAnyPackage("org.stillrail.electrical..", "org.stillrail.sweepfile.."))
                .verify();
    }

    @Test
    void controllersAreClosed() {
        List<String> open = OURS.stream()
                .filter(type -> type.getSimpleName().endsWith("Controller"))
                .filter(type -> type.getModifiers().contains(JavaModifier.PUBLIC))
                .map(JavaClass::getName)
                .toList();
        assertThat(open).as("public controllers").isEmpty();
    }
}
