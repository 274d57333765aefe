package org.stillrail.calculation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.springframework.core.io.ClassPathResource;
import org.springframework.mock.web.MockHttpServletResponse;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Requests that work, with a few values replaced by anything: an answer or a refusal in words comes back, never a breakdown. */
class AnyJsonTest {

    private static final Api API = new Api(Duration.ofSeconds(2));
    private static final JsonMapper MAPPER = new JsonMapper();
    private static final List<String> PATHS = List.of("impedance", "ripple", "loop", "step", "fit");
    private static final List<String> VALUES = List.of("null", "true", "0", "-1", "2.7", "1", "17", "1000", "1e-9", "1e-30", "1e30", "1e-300",
            "1e300", "1e308", "4.9e-324", "-1e-12", "\"\"", "\"x\"", "[]", "[1]", "[1, 2, 3]", "[null]", "{}", "{\"kind\": \"table\"}",
            "{\"kind\": \"series-rlc\", \"capacitanceF\": 1e-6, \"resistanceOhm\": 0, \"inductanceH\": 0}");

    @Property(tries = 200)
    void everyRequestIsAnsweredOrRefusedInWords(@ForAll long seed) throws IOException {
        Random random = new Random(seed);
        String path = PATHS.get(random.nextInt(PATHS.size()));
        JsonNode request = MAPPER.readTree(new ClassPathResource("examples/" + path + ".json", CalculationController.class)
                .getContentAsString(StandardCharsets.UTF_8));
        for (int i = random.nextInt(3); i >= 0; i--) {
            change(request, random);
        }
        MockHttpServletResponse response = API.send(path, MAPPER.writeValueAsString(request));
        String text = Api.text(response);
        assertThat(response.getStatus()).as("%s: %s answered %s", path, request, text).isIn(200, 400, 503);
        assertThat(text).as("%s: %s", path, request).doesNotContain("broke off");
        if (response.getStatus() == 200) {
            assertThat(text).as("%s: %s", path, request).doesNotContain("NaN").doesNotContain("Infinity");
        } else if (response.getStatus() == 400) {
            assertThat(Api.errors(response)).isNotEmpty();
        }
    }

    /** Replaces, drops or adds one value somewhere in the tree. */
    private static void change(JsonNode root, Random random) {
        List<JsonNode> containers = new ArrayList<>();
        collect(root, containers);
        JsonNode container = containers.get(random.nextInt(containers.size()));
        JsonNode value = MAPPER.readTree(VALUES.get(random.nextInt(VALUES.size())));
        if (container instanceof ObjectNode object && !object.isEmpty()) {
            List<String> names = List.copyOf(object.propertyNames());
            String name = names.get(random.nextInt(names.size()));
            if (random.nextInt(8) == 0) {
                object.remove(name);
            } else {
                object.set(name, value);
            }
        } else if (container instanceof ArrayNode array && !array.isEmpty()) {
            array.set(random.nextInt(array.size()), value);
        }
    }

    private static void collect(JsonNode node, List<JsonNode> containers) {
        if (node.isContainer()) {
            containers.add(node);
            for (JsonNode child : node) {
                collect(child, containers);
            }
        }
    }
}
