package org.stillrail.document;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 (FIPS 180-4) as 64 lower-case hexadecimal digits. */
public final class Sha256 {

    private static final int BUFFER = 1 << 16;

    private Sha256() {
    }

    public static String of(byte[] bytes) {
        return HexFormat.of().formatHex(digest().digest(bytes));
    }

    /** Of everything that is left to read. */
    public static String of(InputStream bytes) throws IOException {
        MessageDigest digest = digest();
        byte[] buffer = new byte[BUFFER];
        for (int read = bytes.read(buffer); read >= 0; read = bytes.read(buffer)) {
            digest.update(buffer, 0, read);
        }
        return HexFormat.of().formatHex(digest.digest());
    }

    /** Of the text's UTF-8 bytes. */
    public static String of(String text) {
        return of(text.getBytes(StandardCharsets.UTF_8));
    }

    private static MessageDigest digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java platform has SHA-256", e);
        }
    }
}
