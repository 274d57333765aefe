package org.stillrail.team;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.stillrail.account.CurrentPerson;
import org.stillrail.account.May;
import org.stillrail.audit.AuditTrail;
import org.stillrail.document.Revision;
import org.stillrail.document.RevisionTable;
import org.stillrail.web.StaleVersionException;

/** The team's settings. Before anyone has changed them they are {@link SettingsDocument#DEFAULT}, which counts as revision 0. */
@Service
public class Settings {

    /** There is one document; revisions need something to be revisions of. */
    private static final UUID SUBJECT = new UUID(0, 1);

    private final RevisionTable<SettingsDocument> revisions;
    private final AuditTrail audit;
    private final Clock clock;

    Settings(JdbcClient jdbc, AuditTrail audit, Clock clock) {
        this.revisions = new RevisionTable<>(jdbc, "team_settings_revision", SettingsDocument.class);
        this.audit = audit;
        this.clock = clock;
    }

    public SettingsDocument current() {
        return latest().map(Revision::document).orElse(SettingsDocument.DEFAULT);
    }

    Optional<Revision<SettingsDocument>> latest() {
        return revisions.latest(SUBJECT);
    }

    Optional<Revision<SettingsDocument>> find(int number) {
        return revisions.find(SUBJECT, number);
    }

    /** Newest first. */
    List<Revision<SettingsDocument>> history() {
        return revisions.all(SUBJECT);
    }

    /**
     * Makes the next revision.
     *
     * @param from number of the revision that the author saw, 0 for the defaults
     * @throws StaleVersionException when it is not the newest any more
     */
    @PreAuthorize(May.ADMINISTER)
    @Transactional
    public void change(int from, SettingsDocument document, CurrentPerson author) {
        if (latest().map(Revision::number).orElse(0) != from) {
            throw stale();
        }
        Revision<SettingsDocument> made;
        try {
            made = revisions.insert(SUBJECT, from + 1, author.id(), author.displayName(), OffsetDateTime.now(clock), document, Map.of());
        } catch (DuplicateKeyException e) {
            throw stale();
        }
        audit.record(author.userName(), "settings changed", "settings", "team", Map.of("revision", made.number(), "sha256", made.sha256()));
    }

    private static StaleVersionException stale() {
        return new StaleVersionException("The settings were changed by somebody else while this page was open. Nothing was overwritten.");
    }
}
