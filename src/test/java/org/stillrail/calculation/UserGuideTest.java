package org.stillrail.calculation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.stillrail.electrical.fit.FitSettings;

/** Every request printed in docs/calculation-api.md is one that works, and the limits printed there are the real ones. */
class UserGuideTest {

    private static final Path GUIDE = Path.of("docs/calculation-api.md");
    private static final Pattern REQUEST = Pattern.compile("`(\\w+)`:\n```json\n(.*?)```", Pattern.DOTALL);
    private static final Api API = new Api();

    private static List<MatchResult> requests() throws IOException {
        return REQUEST.matcher(Files.readString(GUIDE)).results().toList();
    }

    @TestFactory
    Stream<DynamicTest> printedRequestsAreAnswered() throws IOException {
        return requests().stream().map(request -> DynamicTest.dynamicTest(request.group(1),
                () -> assertThat(API.answer(request.group(1), request.group(2)).has("warnings")).isTrue()));
    }

    @Test
    void everyCalculationWithAJsonBodyHasARequest() throws IOException {
        assertThat(requests().stream().map(request -> request.group(1)))
                .contains("impedance", "ripple", "loop", "step", "fit");
    }

    @Test
    void printedLimitsAreTheRealOnes() throws IOException {
        String guide = Files.readString(GUIDE);
        assertThat(guide)
                .contains("| branches | " + Limits.BRANCHES + " |")
                .contains(String.format(Locale.ROOT, "| grid points | %,d |", Limits.GRID_POINTS))
                .contains(String.format(Locale.ROOT, "corners of a current | %,d |", Limits.TABLE_POINTS))
                .contains(String.format(Locale.ROOT, "| samples of a waveform | %,d |", Limits.SAMPLES))
                .contains("| " + Limits.PHASES + "; " + Limits.COMPENSATOR_ROOTS + "; " + FitSettings.HIGHEST_ORDER + " |")
                .contains("| " + Limits.BODY_MIB + " MiB; 20 MiB |");
    }
}
