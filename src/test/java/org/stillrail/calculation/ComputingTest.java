package org.stillrail.calculation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.springframework.http.HttpHeaders;
import org.springframework.mock.web.MockHttpServletResponse;
import org.stillrail.electrical.Interruption;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.Branch;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.web.Computing;
import org.stillrail.web.NoAnswerException;

/** The time that a call may compute: work is really ended, and the answer is a 503 in words. */
class ComputingTest {

    private static final Duration SHORT = Duration.ofMillis(50);

    @Test
    void workIsInterruptedWhenItsTimeIsOver() throws InterruptedException {
        CountDownLatch ended = new CountDownLatch(1);
        try (Computing computing = new Computing(SHORT)) {
            assertThatExceptionOfType(NoAnswerException.class).isThrownBy(() -> computing.within(() -> {
                try {
                    for (;;) {
                        Interruption.check();
                    }
                } finally {
                    ended.countDown();
                }
            })).withMessageContaining("0.05 s");
            assertThat(ended.await(20, TimeUnit.SECONDS)).as("the loop has ended").isTrue();
        }
    }

    /** The models end the loop, whatever asks them. */
    @Test
    void loopsOverModelsEndToo() throws InterruptedException {
        CountDownLatch ended = new CountDownLatch(1);
        Bank bank = new ResolvedBank(
                new Bank(List.of(new Branch("a", 1, new SeriesRlc(1e-6, 0.01, 1e-9), SeriesPath.NONE, SeriesPath.NONE))),
                List.of()).interruptible();
        try (Computing computing = new Computing(SHORT)) {
            assertThatExceptionOfType(NoAnswerException.class).isThrownBy(() -> computing.within(() -> {
                try {
                    double sum = 0;
                    for (;;) {
                        sum += bank.at(1000).resistanceOhm();
                    }
                } finally {
                    ended.countDown();
                }
            }));
            assertThat(ended.await(20, TimeUnit.SECONDS)).as("the loop has ended").isTrue();
        }
    }

    @Test
    void exceptionsOfTheWorkComeThrough() {
        try (Computing computing = new Computing(Duration.ofSeconds(20))) {
            assertThatThrownBy(() -> computing.within(() -> {
                throw new BadInputException("grid", "is wrong");
            })).isInstanceOf(BadInputException.class);
            assertThatThrownBy(() -> computing.within(() -> {
                throw new StackOverflowError();
            })).isInstanceOf(NoAnswerException.class).hasCauseInstanceOf(StackOverflowError.class);
        }
    }

    @Test
    void answerAfterTheTimeIsA503InWords() {
        Api api = new Api(Duration.ofNanos(1));
        MockHttpServletResponse response = api.send("impedance",
                // Much to do, so that a busy machine cannot finish it before anybody looks at the clock.
                Json.impedance(sixteenBranches(), Json.grid(1, 1e9, 20000)));
        assertThat(response.getStatus()).isEqualTo(503);
        assertThat(response.getContentType()).isEqualTo("application/problem+json");
        assertThat(Api.tree(response).get("detail").stringValue()).contains("stopped after").contains("fewer points");
        assertThat(response.getHeader(HttpHeaders.RETRY_AFTER)).isNotNull();
    }

    private static String sixteenBranches() {
        String branch = "{'label': 'a', 'count': 1, 'model': " + Json.rlc(1e-6, 0.01, 1e-9) + "}";
        return Json.of("{'branches': [" + String.join(", ", Collections.nCopies(16, branch)) + "]}");
    }
}
