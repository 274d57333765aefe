package org.stillrail.calculation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;

import java.nio.charset.StandardCharsets;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.request.MockMultipartHttpServletRequestBuilder;
import tools.jackson.databind.JsonNode;

/** {@code sweep}: the form's fields, and that a file arrives at the reader and comes back as an impedance. */
class SweepApiTest {

    /** One point of an example in the Touchstone specification 2.1, page 15; the impedance is Z0 (1 + S) / (1 - S). */
    private static final String REFLECTION = "# MHz S MA R 50\n2.000 0.894 -12.136\n";

    private static final Api API = new Api();

    private static MockMultipartHttpServletRequestBuilder form(String fileName, String content) {
        return multipart("/api/v1/calculations/sweep")
                .file(new MockMultipartFile("file", fileName, null, content.getBytes(StandardCharsets.UTF_8)));
    }

    @Test
    void reflectionBecomesAnImpedance() {
        MockHttpServletResponse response = API.send(form("one.s1p", REFLECTION).param("fixture", "reflection"));
        assertThat(response.getStatus()).as(Api.text(response)).isEqualTo(200);
        JsonNode answer = Api.tree(response);
        assertThat(answer.propertyNames()).containsExactlyInAnyOrder(
                "frequencyHz", "resistanceOhm", "reactanceOhm", "points", "referenceOhm", "format", "warnings");
        assertThat(answer.get("points").intValue()).isEqualTo(1);
        assertThat(answer.get("frequencyHz").get(0).doubleValue()).isCloseTo(2e6, within(1e-6));
        assertThat(answer.get("resistanceOhm").get(0).doubleValue()).isCloseTo(196.076171, Percentage.withPercentage(1e-6));
        assertThat(answer.get("reactanceOhm").get(0).doubleValue()).isCloseTo(-367.119229, Percentage.withPercentage(1e-6));
        assertThat(answer.get("referenceOhm").doubleValue()).isEqualTo(50);
        assertThat(answer.get("format").stringValue()).isNotBlank();
    }

    @Test
    void columnsOfTextAreTakenAsSaid() {
        String text = "kHz;a;b\n10;0.2;-1.5\n1;0.3;-15\n";
        JsonNode answer = Api.tree(API.send(form("x.csv", text)
                .param("fixture", "impedance").param("columns", "frequency=1:kHz, resistance=2, reactance=3")));
        assertThat(Api.numbers(answer.get("frequencyHz"))).containsExactly(1000, 10_000);
        assertThat(Api.numbers(answer.get("resistanceOhm"))).containsExactly(0.3, 0.2);
        assertThat(Api.numbers(answer.get("reactanceOhm"))).containsExactly(-15, -1.5);
        assertThat(answer.get("referenceOhm").isNull()).isTrue();
    }

    @Test
    void everyWrongFieldOfTheFormIsNamed() {
        MockHttpServletResponse response = API.send(multipart("/api/v1/calculations/sweep")
                .param("fixture", "clamp").param("columns", "nonsense").param("colour", "red"));
        assertThat(response.getStatus()).isEqualTo(400);
        assertThat(Api.errors(response)).containsOnlyKeys("file", "fixture", "columns", "colour");
    }

    @Test
    void fixtureIsRequired() {
        MockHttpServletResponse response = API.send(form("one.s1p", REFLECTION));
        assertThat(Api.errors(response)).containsOnlyKeys("fixture").extractingByKey("fixture").asString().contains("shunt-through");
    }

    @Test
    void malformedFileIsRefusedWithItsLine() {
        MockHttpServletResponse response = API.send(form("one.s1p", "# MHz S MA R 50\n1 0.5 0\n2 zero 0\n").param("fixture", "reflection"));
        assertThat(response.getStatus()).isEqualTo(400);
        assertThat(Api.errors(response)).containsOnlyKeys("file").extractingByKey("file").asString().contains("Line 3").contains("zero");
    }

    @Test
    void emptyFileAndWrongFixtureForTheDataAreRefused() {
        assertThat(Api.errors(API.send(form("one.s1p", "").param("fixture", "reflection")))).containsOnlyKeys("file");
        assertThat(Api.errors(API.send(form("one.s1p", REFLECTION).param("fixture", "shunt-through")))).containsOnlyKeys("file");
    }
}
