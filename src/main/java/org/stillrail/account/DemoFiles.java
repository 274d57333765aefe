package org.stillrail.account;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.springframework.core.io.ClassPathResource;
import org.stillrail.document.CanonicalJson;

/** The files of {@code demo-data}, as they lie in the packaged application. */
public final class DemoFiles {

    private DemoFiles() {
    }

    /** @param path below {@code demo-data} */
    public static byte[] bytes(String path) {
        try {
            return new ClassPathResource("demo-data/" + path).getContentAsByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static <T> T json(String path, Class<T> type) {
        return CanonicalJson.read(new String(bytes(path), StandardCharsets.UTF_8), type);
    }
}
