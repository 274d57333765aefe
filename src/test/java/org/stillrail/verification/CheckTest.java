package org.stillrail.verification;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A check must be able to fail, and what it records must be what it compared. */
class CheckTest {

    private static final Source BY_HAND = Source.independent("by hand");

    private static Check check(String subject) {
        return Check.that(Topic.LOOP, subject).source(BY_HAND);
    }

    private static void fails(Runnable check) {
        List<Record> records = Records.during(() -> assertThatThrownBy(check::run).isInstanceOf(AssertionError.class));
        assertThat(records).isEmpty();
    }

    @Test
    void bothSidesOfEveryTolerance() {
        check("a").expected("V", 2, -4).relative(0.01).got(2.019, -3.961);
        fails(() -> check("a").expected("V", 2, -4).relative(0.01).got(2, -3.959));
        check("b").expected("V", 0, 5).absolute(0.1).got(0.099, 4.901);
        fails(() -> check("b").expected("V", 0, 5).absolute(0.1).got(0.101, 5));
        check("c").expected("V", 0, -5).relativeToLargest(0.1).got(0.499, -5);
        fails(() -> check("c").expected("V", 0, -5).relativeToLargest(0.1).got(0.501, -5));
        check("d").expected("", 1, 2).got(1, 2);
        fails(() -> check("d").expected("", 1, 2).got(1, Math.nextUp(2.0)));
        check("e").expected("GHz").gotText("GHz");
        fails(() -> check("e").expected("GHz").gotText("MHz"));
    }

    @Test
    void nonsenseNeverPasses() {
        fails(() -> check("nan").expected("V", 1).relative(1).got(Double.NaN));
        fails(() -> check("infinite").expected("V", 1).absolute(1).got(Double.POSITIVE_INFINITY));
        fails(() -> check("zero").expected("V", 0).relative(0.5).got(1e-300));
        fails(() -> check("fewer").expected("V", 1, 2).relative(1).got(1));
        fails(() -> Check.that(Topic.LOOP, "no source").expected("V", 1).got(1));
    }

    @Test
    void theWorstOfManyIsRecordedOnce() {
        List<Record> records = Records.during(() -> {
            for (double got : new double[] {1.001, 1.03, 0.99}) {
                check("many").expected("one").relative(0.05).compare("V", 1, got);
            }
            check("few").expected("V", 12944801.1, 0.000271).relative(0.05).got(12944802, 0.00027);
        });
        assertThat(records).extracting(Record::subject).containsExactly("few", "many");
        assertThat(records.get(1).got()).isEqualTo("off by at most 3 %");
        assertThat(records.get(1).tolerance()).isEqualTo("5 %");
        assertThat(records.get(0).got()).isEqualTo("1.29448e7, 0.00027 V");
        assertThat(records.get(0).testClass()).isEqualTo("CheckTest");
    }

    @Test
    void numbersOfASubjectAreShortened() {
        assertThat(Figures.shortened("5.0 V, 1.0E7 A/s, 2.2E-5 F, 0.05, 10.05, version 2.1, E24"))
                .isEqualTo("5 V, 1e7 A/s, 2.2e-5 F, 0.05, 10.05, version 2.1, E24");
    }

    @Test
    void aDocumentIsComparedByAllButWhatWasGot() {
        Record record = new Record(Topic.LOOP, "ATest", "|T| at 1 kHz", BY_HAND, "2", "2.01", "1 %", 0.5);
        Set<String> claims = VerificationDocument.claims(VerificationDocument.of(List.of(record)));
        assertThat(claims).hasSize(1);
        Record otherGot = new Record(Topic.LOOP, "ATest", "|T| at 1 kHz", BY_HAND, "2", "2.02", "1 %", 0.5);
        assertThat(VerificationDocument.claims(VerificationDocument.of(List.of(otherGot)))).isEqualTo(claims);
        Record otherExpected = new Record(Topic.LOOP, "ATest", "|T| at 1 kHz", BY_HAND, "3", "2.01", "1 %", 0.5);
        assertThat(VerificationDocument.claims(VerificationDocument.of(List.of(otherExpected)))).isNotEqualTo(claims);
    }
}
