package org.stillrail.calculation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.core.io.ClassPathResource;

/** The examples of the published description are requests that work. */
class ExamplesTest {

    private static final Api API = new Api();

    @ParameterizedTest
    @ValueSource(strings = {"impedance", "ripple", "loop", "step", "fit"})
    void exampleIsAnswered(String name) throws IOException {
        String json = new ClassPathResource("examples/" + name + ".json", CalculationController.class)
                .getContentAsString(StandardCharsets.UTF_8);
        assertThat(API.answer(name, json).get("warnings")).isNotNull();
    }
}
