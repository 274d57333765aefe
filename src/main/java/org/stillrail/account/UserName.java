package org.stillrail.account;

import java.util.Locale;
import java.util.regex.Pattern;

/** How user names are written: lower case, so that typing a capital at sign-in does no harm. */
final class UserName {

    private static final Pattern ALLOWED = Pattern.compile("[a-z][a-z0-9.-]{1,39}");

    private UserName() {}

    static String normal(String typed) {
        return typed.strip().toLowerCase(Locale.ROOT);
    }

    /** @throws IllegalArgumentException with a sentence for the person who typed it */
    static String checked(String typed) {
        String name = normal(typed);
        if (!ALLOWED.matcher(name).matches()) {
            throw new IllegalArgumentException(
                    "A user name has 2 to 40 letters a to z, digits, dots or hyphens and begins with a letter");
        }
        return name;
    }
}
