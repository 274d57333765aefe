package org.stillrail.calculation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.http.MediaType;
import org.springframework.http.converter.json.JacksonJsonHttpMessageConverter;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.RequestBuilder;
import org.springframework.test.web.servlet.setup.MockMvcBuilders;
import org.stillrail.electrical.capacitor.OperatingPoint;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.web.Computing;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The API over HTTP without the rest of the application: no sign-in, and a library of one part, {@code TEST-47U}. */
final class Api {

    private static final JsonMapper MAPPER = new JsonMapper();

    private final MockMvc mvc;

    Api(Duration budget) {
        PartSource parts = (number, point) -> number.equals("TEST-47U") ? Optional.of(part(point)) : Optional.empty();
        BankResolver resolver = new BankResolver(parts);
        Computing computing = new Computing(budget);
        RequestBodies bodies = new RequestBodies(new Constraints());
        CalculationController controller = new CalculationController(
                new ImpedanceCalculation(resolver, computing),
                new RippleCalculation(resolver, computing),
                new LoopCalculation(resolver, computing),
                new StepCalculation(resolver, computing),
                new FitCalculation(computing),
                new SweepConversion(computing));
        this.mvc = MockMvcBuilders.standaloneSetup(controller)
                .setControllerAdvice(new CalculationErrors())
                .setMessageConverters(
                        new CalculationJsonConverter(bodies, new AnswerWriter()), new JacksonJsonHttpMessageConverter())
                .build();
    }

    Api() {
        this(Duration.ofSeconds(20));
    }

    /** Loses 1 % of its capacitance per volt of bias, so that a test sees whether the operating point arrives. */
    private static PartSource.NamedPart part(OperatingPoint point) {
        return new PartSource.NamedPart(
                new SeriesRlc(47e-6 * (1 - 0.01 * point.biasV()), 0.01, 1e-9), List.of("Its ESL is an estimate."));
    }

    MockHttpServletResponse send(String path, String json) {
        return send(post("/api/v1/calculations/" + path).contentType(MediaType.APPLICATION_JSON).content(json));
    }

    MockHttpServletResponse send(RequestBuilder request) {
        try {
            return mvc.perform(request).andReturn().getResponse();
        } catch (Exception e) {
            throw new AssertionError(e);
        }
    }

    /** The answer to a request that must succeed. */
    JsonNode answer(String path, String json) {
        MockHttpServletResponse response = send(path, json);
        assertThat(response.getStatus()).as(text(response)).isEqualTo(200);
        assertThat(response.getContentType()).isEqualTo("application/json");
        return tree(response);
    }

    /** Messages by field of a request that must be refused as bad input. */
    Map<String, String> errors(String path, String json) {
        MockHttpServletResponse response = send(path, json);
        assertThat(response.getStatus()).as(text(response)).isEqualTo(400);
        return errors(response);
    }

    static Map<String, String> errors(MockHttpServletResponse response) {
        assertThat(response.getContentType()).isEqualTo("application/problem+json");
        Map<String, String> errors = new LinkedHashMap<>();
        for (JsonNode error : tree(response).get("errors")) {
            assertThat(error.propertyNames()).containsExactlyInAnyOrder("field", "message");
            errors.put(error.get("field").stringValue(), error.get("message").stringValue());
        }
        return errors;
    }

    static JsonNode tree(MockHttpServletResponse response) {
        return MAPPER.readTree(response.getContentAsByteArray());
    }

    static String text(MockHttpServletResponse response) {
        return new String(response.getContentAsByteArray(), StandardCharsets.UTF_8);
    }

    static double[] numbers(JsonNode array) {
        double[] values = new double[array.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = array.get(i).doubleValue();
        }
        return values;
    }
}
