package org.stillrail.journey;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** Sweep files of the demo, byte for byte. */
final class DemoFiles {

    private DemoFiles() {
    }

    static byte[] sweep(String fileName) {
        try (InputStream file = DemoFiles.class.getResourceAsStream("/demo-data/library/sweeps/" + fileName)) {
            return file.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
