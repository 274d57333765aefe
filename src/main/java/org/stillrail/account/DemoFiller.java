package org.stillrail.account;

import java.time.Clock;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Component;
import org.stillrail.audit.AuditTrail;

/** Makes the demo's accounts, then lets every room write its chapter. Runs inside the gate's transaction. */
@Component
class DemoFiller {

    private final Installation installation;
    private final People people;
    private final Tokens tokens;
    private final PasswordRules passwords;
    private final AuditTrail audit;
    private final ObjectProvider<DemoChapter> chapters;
    private final Clock clock;

    DemoFiller(
            Installation installation, People people, Tokens tokens, PasswordRules passwords, AuditTrail audit,
            ObjectProvider<DemoChapter> chapters, Clock clock) {
        this.installation = installation;
        this.people = people;
        this.tokens = tokens;
        this.passwords = passwords;
        this.audit = audit;
        this.chapters = chapters;
        this.clock = clock;
    }

    void fill() {
        installation.claim(Installation.Kind.DEMO, clock.instant());
        DemoTeam team = team();
        List<DemoChapter> inOrder = chapters.orderedStream().toList();
        inOrder.forEach(chapter -> chapter.write(team));
        audit.record("demo", "demo filled", "installation", "1", Map.of("accounts", DemoAccount.ALL.size()));
    }

    private DemoTeam team() {
        Map<String, CurrentPerson> byName = new HashMap<>();
        String passwordHash = passwords.encode(DemoAccount.PASSWORD);
        for (DemoAccount account : DemoAccount.ALL) {
            Person person = account.person();
            people.insert(person, passwordHash, false, clock.instant());
            if (account.token() != null) {
                tokens.insert(person.id(), "demo", account.token(), clock.instant());
            }
            byName.put(account.userName(), CurrentPerson.of(person));
        }
        return new DemoTeam(
                byName.get("viewer"), byName.get("engineer"), byName.get("librarian"), byName.get("reviewer"),
                byName.get("administrator"), byName.get("lead"));
    }
}
