package org.stillrail.audit;

import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Isolation;
import org.springframework.transaction.annotation.Transactional;

/** Recomputes the chain and finds the first line that was changed, removed or put in. */
@Service
public class AuditChain {

    private static final int BATCH = 1_000;

    /**
     * Outcome of a check.
     *
     * @param lines how many lines were found sound, counted from the first
     * @param headHash the hash of the newest line; a copy kept elsewhere shows later that the whole chain was not rewritten
     * @param broken the first line that does not fit, if any
     */
    public record Check(long lines, String headHash, Optional<Break> broken) {

        public boolean sound() {
            return broken.isEmpty();
        }
    }

    /**
     * The first place where the chain does not hold.
     *
     * @param sequenceNumber number of the line
     * @param reason what is wrong there, a sentence
     */
    public record Break(long sequenceNumber, String reason) {}

    private final AuditEvents events;

    AuditChain(AuditEvents events) {
        this.events = events;
    }

    /** Reads all lines, oldest first, a thousand at a time. */
    @Transactional(readOnly = true, isolation = Isolation.REPEATABLE_READ)
    public Check verify() {
        AuditEvents.Head head = events.head();
        long number = 0;
        String hash = AuditEvent.ORIGIN;
        List<AuditEvent> batch = events.after(number, BATCH);
        while (!batch.isEmpty()) {
            for (AuditEvent event : batch) {
                Optional<String> fault = fault(event, number, hash);
                if (fault.isPresent()) {
                    return new Check(number, head.hash(), Optional.of(new Break(number + 1, fault.get())));
                }
                number = event.sequenceNumber();
                hash = event.hash();
            }
            batch = events.after(number, BATCH);
        }
        if (head.sequenceNumber() != number || !head.hash().equals(hash)) {
            String reason = "The newest line is not the one that the end of the chain names: lines were removed or put in.";
            return new Check(number, head.hash(), Optional.of(new Break(number + 1, reason)));
        }
        return new Check(number, hash, Optional.empty());
    }

    private static Optional<String> fault(AuditEvent event, long lastNumber, String lastHash) {
        if (event.sequenceNumber() != lastNumber + 1) {
            return Optional.of("The line is missing.");
        }
        if (!event.previousHash().equals(lastHash)) {
            return Optional.of("The line does not follow from the one before it.");
        }
        if (!event.intact()) {
            return Optional.of("The line is not as it was written.");
        }
        return Optional.empty();
    }
}
