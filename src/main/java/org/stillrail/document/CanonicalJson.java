package org.stillrail.document;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.io.InputStream;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/**
 * Canonical JSON: members sorted by name, absent values left out, no blanks, numbers as their shortest decimal form. The
 * same value gives the same text on every machine and JDK (the fast double writer does not depend on
 * {@code Double.toString}, which changed between JDK 17 and 19), so its hash can be compared for ever.
 */
public final class CanonicalJson {

    private static final JsonMapper MAPPER = JsonMapper.builder(JsonFactory.builder()
                    .enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER)
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .build())
            .enable(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY)
            .enable(SerializationFeature.ORDER_MAP_ENTRIES_BY_KEYS)
            .disable(MapperFeature.SORT_CREATOR_PROPERTIES_FIRST)
            .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            .changeDefaultPropertyInclusion(inclusion -> inclusion.withValueInclusion(JsonInclude.Include.NON_NULL))
            .build();

    private CanonicalJson() {
    }

    public static String write(Object value) {
        return MAPPER.writeValueAsString(value);
    }

    /** @throws IllegalArgumentException when the text is not JSON or not of this type, with the place */
    public static <T> T read(String json, Class<T> type) {
        try {
            return MAPPER.readValue(json, type);
        } catch (JacksonException e) {
            throw unreadable(type, e);
        }
    }

    /** As {@link #read(String, Class)}, of UTF-8 that need not be held as a whole; where reading it fails, that is not readable either. */
    public static <T> T read(InputStream json, Class<T> type) {
        try {
            return MAPPER.readValue(json, type);
        } catch (JacksonException e) {
            throw unreadable(type, e);
        }
    }

    private static IllegalArgumentException unreadable(Class<?> type, JacksonException e) {
        return new IllegalArgumentException("Not a readable " + type.getSimpleName() + ": " + e.getMessage(), e);
    }
}
