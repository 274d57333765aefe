package org.stillrail.account;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;
import org.stillrail.document.Sha256;

/**
 * Random tokens, codes and one-time passwords. What is drawn here has 100 random bits or more, so a plain SHA-256 of it
 * cannot be searched and a lookup by hash is safe; passwords that people choose go through Argon2 instead.
 */
final class Secrets {

    /** No letters or digits that are read as one another. */
    private static final String LEGIBLE = "abcdefghjkmnpqrstuvwxyz23456789";
    private static final SecureRandom RANDOM = new SecureRandom();

    private Secrets() {}

    static String token() {
        byte[] bytes = new byte[32];
        RANDOM.nextBytes(bytes);
        return "sr_" + Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    /** For reading off a screen: 24 characters in groups of four, 118 bits. */
    static String legible() {
        StringBuilder code = new StringBuilder();
        for (int i = 0; i < 24; i++) {
            if (i > 0 && i % 4 == 0) {
                code.append('-');
            }
            code.append(LEGIBLE.charAt(RANDOM.nextInt(LEGIBLE.length())));
        }
        return code.toString();
    }

    static String hash(String secret) {
        return Sha256.of(secret);
    }

    static boolean matches(String secret, String hash) {
        return MessageDigest.isEqual(
                hash(secret).getBytes(StandardCharsets.US_ASCII), hash.getBytes(StandardCharsets.US_ASCII));
    }
}
