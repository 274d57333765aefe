package org.stillrail.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.EvaluationResult;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The rules bite: each planted class is reported by the rule of its room, and nothing else is. */
class PlantedOffenderTest {

    private static final String ROOT = "org.stillrail.architecture.planted";
    private static final JavaClasses PLANTED = new ClassFileImporter().importPackages(ROOT);

    private static List<EvaluationResult> violated() {
        return new Rooms(ROOT).rules().stream()
                .map(rule -> rule.evaluate(PLANTED))
                .filter(EvaluationResult::hasViolation)
                .toList();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            electrical.KnowsTheFramework | room 'electrical' is plain Java
            sweepfile.OpensTheDatabase   | room 'sweepfile' is plain Java
            library.AsksTheRoomAbove     | room 'library' uses of ours only
            web.KnowsAFeature            | room 'web' uses of ours only
            calculation.ReadsStoredBanks | room 'calculation' uses of ours only
            stray.HasNoPlace             | every class is in a known room
            """)
    void isCaught(String offender, String rule) {
        assertThat(violated())
                .filteredOn(result -> result.getFailureReport().toString().contains(rule))
                .singleElement()
                .satisfies(result -> assertThat(result.getFailureReport().getDetails())
                        .isNotEmpty()
                        .allSatisfy(detail -> assertThat(detail).contains(offender)));
    }

    @Test
    void nothingElseIsReported() {
        assertThat(violated()).hasSize(6);
    }
}
