package org.stillrail.account;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.stillrail.support.TestClock;
import org.stillrail.support.TestDatabase;

/** The code for the first administrator, on either engine. */
abstract class SetupCodeSuite {

    private static final Pattern CODE = Pattern.compile("[a-z2-9]{4}(-[a-z2-9]{4}){5}");

    private final TestDatabase database;
    private final TestClock clock = new TestClock();
    private final Installation installation;
    private final People people;
    private final SetupCode setupCode;

    SetupCodeSuite(TestDatabase fresh) {
        database = fresh;
        installation = new Installation(fresh.jdbc());
        people = new People(fresh.jdbc());
        setupCode = new SetupCode(fresh.jdbc(), people, clock);
    }

    @AfterEach
    void close() {
        database.close();
    }

    private Optional<String> start() {
        return database.transaction().execute(status -> {
            installation.lock();
            return setupCode.renewIfNeeded();
        });
    }

    private static Optional<String> codeIn(Optional<String> message) {
        return message.map(CODE::matcher).filter(Matcher::find).map(Matcher::group);
    }

    private boolean use(String code) {
        return database.transaction().execute(status -> setupCode.use(code));
    }

    @Test
    void worksOnceAndOnlyItself() {
        String code = codeIn(start()).orElseThrow();
        assertThat(use(code + "x")).isFalse();
        assertThat(use("")).isFalse();
        assertThat(use(code)).isTrue();
        assertThat(use(code)).isFalse();
    }

    @Test
    void isStoredAsAHash() {
        String code = codeIn(start()).orElseThrow();
        assertThat(database.jdbc().sql("select code_hash from setup_code").query(String.class).list())
                .containsExactly(Secrets.hash(code));
    }

    @Test
    void serversThatStartTogetherMakeOneCode() throws Exception {
        CyclicBarrier together = new CyclicBarrier(4);
        ExecutorService servers = Executors.newFixedThreadPool(4);
        List<Optional<String>> codes = new ArrayList<>();
        try {
            List<Future<Optional<String>>> starts = new ArrayList<>();
            for (int server = 0; server < 4; server++) {
                starts.add(servers.submit(() -> {
                    together.await();
                    return codeIn(start());
                }));
            }
            for (Future<Optional<String>> started : starts) {
                codes.add(started.get());
            }
        } finally {
            servers.shutdown();
        }
        assertThat(codes).filteredOn(Optional::isPresent).hasSize(1);
        assertThat(use(codes.stream().flatMap(Optional::stream).findFirst().orElseThrow())).isTrue();
    }

    @Test
    void aLaterStartMakesANewOneAndTheOldStopsWorking() {
        String lost = codeIn(start()).orElseThrow();
        clock.advance(SetupCode.STARTED_TOGETHER);
        String renewed = codeIn(start()).orElseThrow();
        assertThat(use(lost)).isFalse();
        assertThat(use(renewed)).isTrue();
    }

    @Test
    void noneIsMadeOnceSomeoneHasAnAccount() {
        people.insert(
                new Person(UUID.randomUUID(), "first", "First", Set.of(Role.ADMINISTRATOR), true), "hash", false, clock.instant());
        clock.advance(Duration.ofDays(1));
        assertThat(start()).isEmpty();
    }
}
