package org.stillrail.account;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillrail.web.Form;

class PasswordRulesTest {

    private final PasswordRules rules = new PasswordRules();

    private static Form typed(String password, String repeated) {
        Form form = Form.empty().with("password", password).with("repeated", repeated);
        PasswordRules.read(form, "ada.of.the.lab");
        return form;
    }

    /** The encoded form names its parameters as the reference implementation of Argon2 prints them (RFC 9106 gives the values). */
    @Test
    void isHashedByArgon2idWithASaltOfItsOwn() {
        String first = rules.encode("four plain words here");
        String second = rules.encode("four plain words here");
        assertThat(first).matches("\\$argon2id\\$v=19\\$m=19456,t=2,p=1\\$[A-Za-z0-9+/]{22}\\$[A-Za-z0-9+/]{43}");
        assertThat(first).isNotEqualTo(second);
        assertThat(rules.matches("four plain words here", first)).isTrue();
        assertThat(rules.matches("four plain words Here", first)).isFalse();
    }

    @Test
    void wholeLengthCounts() {
        String longest = "x".repeat(PasswordRules.LONGEST - 1);
        String hash = rules.encode(longest + "a");
        assertThat(rules.matches(longest + "a", hash)).isTrue();
        assertThat(rules.matches(longest + "b", hash)).isFalse();
        assertThat(rules.matches(longest + "ab", hash)).isFalse();
    }

    @ParameterizedTest
    @CsvSource({"elevenchars,at least 12", "aaaaaaaaaaaaaaaa,too easy", "ADA.of.the.lab,too easy", "'',missing"})
    void tooWeakIsRefusedWithTheReason(String password, String reason) {
        assertThat(typed(password, password).errors().of("password")).contains(reason);
    }

    @Test
    void limitsAreInclusive() {
        assertThat(typed("twelve chars", "twelve chars").errors().none()).isTrue();
        String longest = "abcd".repeat(PasswordRules.LONGEST / 4);
        assertThat(typed(longest, longest).errors().none()).isTrue();
        assertThat(typed(longest + "e", longest + "e").errors().of("password")).contains("at most 1024");
    }

    @Test
    void aSlipInTheSecondFieldIsSeen() {
        assertThat(typed("twelve chars", "twelve chart").errors().of("repeated")).contains("differ");
    }
}
