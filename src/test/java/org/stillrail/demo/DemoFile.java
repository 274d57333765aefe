package org.stillrail.demo;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.stillrail.document.CanonicalJson;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Reads a JSON file of the demo as a tree. */
final class DemoFile {

    private DemoFile() {
    }

    static JsonNode read(String first, String... more) {
        try {
            return JsonMapper.shared().readTree(Files.readString(Path.of("demo-data", first).resolve(Path.of("", more))));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The values of one member in a list of objects. */
    static List<String> texts(JsonNode list, String member) {
        return list.valueStream().map(entry -> entry.get(member).stringValue()).toList();
    }

    static <T> T as(JsonNode node, Class<T> type) {
        return CanonicalJson.read(node.toString(), type);
    }
}
