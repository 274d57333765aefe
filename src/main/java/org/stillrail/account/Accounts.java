package org.stillrail.account;

import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;
import org.stillrail.audit.AuditTrail;
import org.stillrail.web.StaleVersionException;

/** Changes to people and tokens; each leaves a line in the audit trail. */
@Service
public class Accounts {

    private final Installation installation;
    private final SetupCode setupCode;
    private final People people;
    private final Tokens tokens;
    private final PasswordEncoder passwords;
    private final Sessions sessions;
    private final AuditTrail audit;
    private final TransactionTemplate transaction;
    private final Clock clock;

    Accounts(
            Installation installation, SetupCode setupCode, People people, Tokens tokens, PasswordEncoder passwords,
            Sessions sessions, AuditTrail audit, TransactionTemplate transaction, Clock clock) {
        this.installation = installation;
        this.setupCode = setupCode;
        this.people = people;
        this.tokens = tokens;
        this.passwords = passwords;
        this.sessions = sessions;
        this.audit = audit;
        this.transaction = transaction;
        this.clock = clock;
    }

    /** The first administrator of a team's installation. */
    enum Setup {
        DONE,
        /** Someone has an account already. */
        TOO_LATE,
        WRONG_CODE
    }

    Setup setUp(String code, String userName, String displayName, String password) {
        String hash = passwords.encode(password);
        return transaction.execute(status -> {
            if (installation.lock().isPresent() || !people.none()) {
                return Setup.TOO_LATE;
            }
            if (!setupCode.use(code.strip())) {
                return Setup.WRONG_CODE;
            }
            installation.claim(Installation.Kind.TEAM, clock.instant());
            insert(userName, displayName, Set.of(Role.ADMINISTRATOR), hash, false, userName);
            return Setup.DONE;
        });
    }

    /**
     * Adds a person whose password is settled. Pages use {@link #invite} instead.
     *
     * @param actor user name of who adds them
     */
    public CurrentPerson add(String userName, String displayName, Set<Role> roles, String password, String actor) {
        String hash = passwords.encode(password);
        Person person = transaction.execute(
                status -> insert(UserName.checked(userName), displayName, roles, hash, false, actor));
        return CurrentPerson.of(person);
    }

    /** Adds a person with a one-time password, which they must change when they first sign in. */
    Invitation invite(String userName, String displayName, Set<Role> roles, String actor) {
        String oneTime = Secrets.legible();
        String hash = passwords.encode(oneTime);
        Person person = transaction.execute(status -> insert(userName, displayName, roles, hash, true, actor));
        return new Invitation(person, oneTime);
    }

    /** A person and the password that is shown once. */
    record Invitation(Person person, String oneTimePassword) {}

    private Person insert(
            String userName, String displayName, Set<Role> roles, String hash, boolean changeDue, String actor) {
        if (roles.isEmpty()) {
            throw new IllegalArgumentException("A person holds at least one role");
        }
        Person person = new Person(UUID.randomUUID(), userName, displayName, roles, true);
        people.insert(person, hash, changeDue, clock.instant());
        note(actor, "person added", person, Map.of("name", displayName, "roles", RoleLabels.of(roles)));
        return person;
    }

    /**
     * @param seen the roles that the page showed
     * @throws LastAdministratorException when nobody would be left to look after people
     * @throws StaleVersionException      when the roles are others by now
     */
    void changeRoles(Person person, Set<Role> seen, Set<Role> roles, String actor) {
        if (roles.isEmpty()) {
            throw new IllegalArgumentException("A person holds at least one role");
        }
        transaction.executeWithoutResult(status -> {
            Set<Role> now = people.rolesForChange(person.id());
            if (!now.equals(seen)) {
                throw new StaleVersionException("The roles were changed by somebody else while this page was open: " + person.displayName() + " is now "
                        + RoleLabels.of(now) + ". Nothing was overwritten; what you ticked is still here.");
            }
            if (!roles.contains(Role.ADMINISTRATOR)) {
                requireAnotherAdministrator(person);
            }
            people.setRoles(person.id(), roles);
            note(actor, "roles changed", person, Map.of("from", RoleLabels.of(now), "to", RoleLabels.of(roles)));
        });
        sessions.end(person.userName());
    }

    /** @throws LastAdministratorException when nobody would be left to look after people */
    void deactivate(Person person, String actor) {
        transaction.executeWithoutResult(status -> {
            requireAnotherAdministrator(person);
            people.setActive(person.id(), false);
            note(actor, "person deactivated", person, Map.of());
        });
        sessions.end(person.userName());
    }

    void reactivate(Person person, String actor) {
        transaction.executeWithoutResult(status -> {
            people.setActive(person.id(), true);
            note(actor, "person reactivated", person, Map.of());
        });
    }

    /** Gives out a new one-time password and ends the person's sessions. */
    String resetPassword(Person person, String actor) {
        String oneTime = Secrets.legible();
        String hash = passwords.encode(oneTime);
        transaction.executeWithoutResult(status -> {
            people.setPassword(person.id(), hash, true);
            note(actor, "password reset", person, Map.of());
        });
        sessions.end(person.userName());
        return oneTime;
    }

    /**
     * Whether this is the person's password, asked for again before something that only they may do. Wrong tries count like
     * those of a sign-in: from the fifth in a row on, the account pauses and no password is right.
     */
    public boolean passwordMatches(CurrentPerson person, String password) {
        CurrentPerson now = people.forSignIn(person.userName(), clock.instant()).filter(CurrentPerson::isEnabled).orElse(null);
        if (now == null || !now.isAccountNonLocked()) {
            return false;
        }
        if (passwords.matches(password, now.getPassword())) {
            people.forgetFailures(person.id());
            return true;
        }
        transaction.executeWithoutResult(status -> {
            boolean paused = people.countFailure(person.userName(), SignInFailed.LIMIT, clock.instant().plus(SignInFailed.PAUSE));
            audit.record(person.userName(), "password check failed", "person", person.id().toString(), Map.of("paused", paused));
        });
        return false;
    }

    /** False when the current password is not the right one. Ends all sessions, the caller's as well. */
    boolean changePassword(CurrentPerson person, String current, String wanted) {
        if (!passwords.matches(current, people.passwordHash(person.id()))) {
            return false;
        }
        String hash = passwords.encode(wanted);
        transaction.executeWithoutResult(status -> {
            people.setPassword(person.id(), hash, false);
            audit.record(person.userName(), "password changed", "person", person.userName(), Map.of());
        });
        sessions.end(person.userName());
        return true;
    }

    /** The new token; only its hash is kept. */
    public String makeToken(CurrentPerson person, String name) {
        String token = Secrets.token();
        transaction.executeWithoutResult(status -> {
            TokenRow row = tokens.insert(person.id(), name, token, clock.instant());
            audit.record(person.userName(), "token made", "token", row.id().toString(), Map.of("name", name));
        });
        return token;
    }

    void revokeToken(TokenRow token, String actor) {
        transaction.executeWithoutResult(status -> {
            if (tokens.revoke(token.id(), clock.instant())) {
                audit.record(actor, "token revoked", "token", token.id().toString(), Map.of("name", token.name()));
            }
        });
    }

    private void requireAnotherAdministrator(Person person) {
        // One such change at a time, or the last two administrators could remove each other.
        installation.lock();
        List<Person> administrators = people.withRole(Role.ADMINISTRATOR);
        if (administrators.size() == 1 && administrators.get(0).id().equals(person.id())) {
            throw new LastAdministratorException();
        }
    }

    private void note(String actor, String action, Person person, Map<String, ?> detail) {
        audit.record(actor, action, "person", person.userName(), detail);
    }
}
