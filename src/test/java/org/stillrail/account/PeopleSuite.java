package org.stillrail.account;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.springframework.dao.DuplicateKeyException;
import org.stillrail.support.TestClock;
import org.stillrail.support.TestDatabase;

/** People and tokens as they are stored, on either engine. */
abstract class PeopleSuite {

    private final TestDatabase database;
    private final TestClock clock = new TestClock();
    private final People people;
    private final Tokens tokens;

    PeopleSuite(TestDatabase database) {
        this.database = database;
        this.people = new People(database.jdbc());
        this.tokens = new Tokens(database.jdbc());
    }

    private Person stored(Role role, Role... more) {
        String userName = "p-" + UUID.randomUUID().toString().substring(0, 13);
        Person person = new Person(
                UUID.randomUUID(), userName, "Person " + userName, EnumSet.of(role, more), true);
        people.insert(person, "hash of " + userName, false, clock.instant());
        return person;
    }

    @Test
    void comesBackWithEveryRole() {
        Person person = stored(Role.ENGINEER, Role.REVIEWER);
        assertThat(people.byId(person.id())).contains(person);
        assertThat(people.byUserName(" " + person.userName().toUpperCase(Locale.ROOT))).contains(person);
        assertThat(people.all()).contains(person);
    }

    @Test
    void rolesAreReplacedAsAWhole() {
        Person person = stored(Role.ENGINEER, Role.REVIEWER);
        people.setRoles(person.id(), Set.of(Role.VIEWER));
        assertThat(people.byId(person.id()).orElseThrow().roles()).containsExactly(Role.VIEWER);
    }

    @Test
    void whoeverLeftIsNoLongerFoundByRole() {
        Person person = stored(Role.LIBRARIAN);
        assertThat(people.withRole(Role.LIBRARIAN)).contains(person);
        people.setActive(person.id(), false);
        assertThat(people.withRole(Role.LIBRARIAN)).extracting(Person::id).doesNotContain(person.id());
        assertThat(people.forSignIn(person.userName(), clock.instant()).orElseThrow().isEnabled()).isFalse();
    }

    @Test
    void aUserNameIsTakenOnce() {
        Person person = stored(Role.VIEWER);
        Person namesake = new Person(UUID.randomUUID(), person.userName(), "Namesake", Set.of(Role.VIEWER), true);
        assertThatThrownBy(() -> people.insert(namesake, "hash", false, clock.instant()))
                .isInstanceOf(DuplicateKeyException.class);
    }

    @Test
    void theFifthFailureInARowPausesTheAccountForAWhile() {
        Person person = stored(Role.VIEWER);
        for (int failure = 1; failure <= 4; failure++) {
            assertThat(people.countFailure(person.userName(), 5, clock.instant().plusSeconds(60))).isFalse();
        }
        assertThat(locked(person)).isFalse();
        assertThat(people.countFailure(person.userName(), 5, clock.instant().plusSeconds(60))).isTrue();
        assertThat(locked(person)).isTrue();
        clock.advance(Duration.ofSeconds(60));
        assertThat(locked(person)).isFalse();
    }

    @Test
    void aSuccessForgetsTheFailures() {
        Person person = stored(Role.VIEWER);
        for (int failure = 1; failure <= 4; failure++) {
            people.countFailure(person.userName(), 5, clock.instant().plusSeconds(60));
        }
        people.forgetFailures(person.id());
        assertThat(people.countFailure(person.userName(), 5, clock.instant().plusSeconds(60))).isFalse();
    }

    private boolean locked(Person person) {
        return !people.forSignIn(person.userName(), clock.instant()).orElseThrow().isAccountNonLocked();
    }

    @Test
    void onlyTheHashOfATokenIsStored() {
        Person person = stored(Role.ENGINEER);
        String token = Secrets.token();
        TokenRow row = tokens.insert(person.id(), "bench", token, clock.instant());
        assertThat(tokens.presented(token)).contains(row);
        assertThat(tokens.presented(token + "x")).isEmpty();
        String stored = database.jdbc().sql("select token_hash from api_token where id = :id").param("id", row.id())
                .query(String.class).single();
        assertThat(stored).matches("[0-9a-f]{64}").doesNotContain(token);
        assertThat(tokens.presented(stored)).isEmpty();
    }

    @Test
    void aRevokedTokenIsNotFoundAgain() {
        String token = Secrets.token();
        TokenRow row = tokens.insert(stored(Role.ENGINEER).id(), "bench", token, clock.instant());
        assertThat(tokens.revoke(row.id(), clock.instant())).isTrue();
        assertThat(tokens.revoke(row.id(), clock.instant())).isFalse();
        assertThat(tokens.presented(token)).isEmpty();
    }

    @Test
    void theUseOfATokenIsNotedOnceAMinute() {
        String token = Secrets.token();
        tokens.insert(stored(Role.ENGINEER).id(), "bench", token, clock.instant());
        tokens.noteUse(tokens.presented(token).orElseThrow(), clock.instant());
        TokenRow first = tokens.presented(token).orElseThrow();
        assertThat(first.lastUsedAt().toInstant()).isEqualTo(clock.instant());
        clock.advance(Duration.ofSeconds(59));
        tokens.noteUse(first, clock.instant());
        assertThat(tokens.presented(token)).contains(first);
        clock.advance(Duration.ofSeconds(2));
        tokens.noteUse(first, clock.instant());
        assertThat(tokens.presented(token).orElseThrow().lastUsedAt().toInstant()).isEqualTo(clock.instant());
    }
}
