package org.stillrail.audit;

import java.time.Clock;
import java.util.Map;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.stillrail.document.CanonicalJson;

/** Where every room writes down what was done. */
@Service
public class AuditTrail {

    private final AuditEvents events;
    private final Clock clock;

    AuditTrail(AuditEvents events, Clock clock) {
        this.events = events;
        this.clock = clock;
    }

    /**
     * Appends a line, in the caller's transaction if there is one: if the change is rolled back, so is its line. Call it as the
     * last statement of the transaction, because other writers wait from here until it ends.
     *
     * @param actor user name of who did it
     * @param action what was done, a short phrase such as {@code part proposed}
     * @param subjectKind the kind of thing it was done to, such as {@code part}
     * @param subjectId which one
     * @param detail whatever else belongs to it; never a password, a token or a code
     */
    @Transactional
    public void record(String actor, String action, String subjectKind, String subjectId, Map<String, ?> detail) {
        String detailJson = CanonicalJson.write(detail);
        AuditEvents.Head head = events.lockHead();
        events.append(AuditEvent.after(
                head.sequenceNumber(), head.hash(), clock.instant(), storable(actor), storable(action), storable(subjectKind),
                storable(subjectId), storable(detailJson)));
    }

    /** PostgreSQL keeps no NUL, and half a surrogate pair would come back as another character. */
    private static String storable(String text) {
        StringBuilder kept = new StringBuilder(text.length());
        text.codePoints()
                .map(c -> c == 0 || Character.getType(c) == Character.SURROGATE ? 0xFFFD : c)
                .forEach(kept::appendCodePoint);
        return kept.toString();
    }
}
