package org.stillrail.web;

import java.nio.charset.StandardCharsets;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;

/** Answers that a browser keeps as a file and does not open. */
public final class Download {

    public static final MediaType CSV = new MediaType("text", "csv", StandardCharsets.UTF_8);

    private Download() {
    }

    public static ResponseEntity<byte[]> of(String fileName, MediaType type, byte[] bytes) {
        return ResponseEntity.ok()
                .contentType(type)
                .header(HttpHeaders.CONTENT_DISPOSITION, ContentDisposition.attachment().filename(fileName, StandardCharsets.UTF_8).build().toString())
                .body(bytes);
    }

    public static ResponseEntity<byte[]> of(String fileName, MediaType type, String text) {
        return of(fileName, type, text.getBytes(StandardCharsets.UTF_8));
    }

    /** A name that people gave as one that every file system takes. */
    public static String safe(String name) {
        return name.replaceAll("[^\\p{L}\\p{N}._ -]", "_");
    }
}
