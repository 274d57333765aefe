package org.stillrail.account;

import org.springframework.security.crypto.argon2.Argon2PasswordEncoder;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Component;
import org.stillrail.web.Form;

/** Length limits of passwords and how they are hashed. */
@Component
class PasswordRules implements PasswordEncoder {

    static final int SHORTEST = 12;
    static final int LONGEST = 1024;

    /** Argon2id, 19 MiB, two passes, one lane, 16 bytes of salt, 32 of hash: a widely recommended minimum (from memory). */
    private final PasswordEncoder argon2 = new Argon2PasswordEncoder(16, 32, 1, 19 * 1024, 2);

    @Override
    public String encode(CharSequence password) {
        return argon2.encode(password);
    }

    /** A longer text than any password may be is not worth the work of hashing it. */
    @Override
    public boolean matches(CharSequence password, String hash) {
        return password.length() <= LONGEST && argon2.matches(password, hash);
    }

    @Override
    public boolean upgradeEncoding(String hash) {
        return argon2.upgradeEncoding(hash);
    }

    /** Reads the fields {@code password} and {@code repeated} of a form that sets a password. */
    static String read(Form form, String userName) {
        String password = form.get("password");
        if (password == null || password.isEmpty()) {
            form.errors().add("password", "The password is missing");
        } else if (password.codePointCount(0, password.length()) < SHORTEST) {
            form.errors().add("password", "A password needs at least " + SHORTEST + " characters");
        } else if (password.length() > LONGEST) {
            form.errors().add("password", "A password has at most " + LONGEST + " characters");
        } else if (password.chars().distinct().count() < 4 || password.strip().equalsIgnoreCase(userName)) {
            form.errors().add("password", "This password is too easy to guess");
        } else if (!password.equals(form.get("repeated"))) {
            form.errors().add("repeated", "The two passwords differ");
        }
        return password;
    }
}
