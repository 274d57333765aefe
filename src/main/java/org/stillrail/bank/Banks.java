package org.stillrail.bank;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.stillrail.account.CurrentPerson;
import org.stillrail.account.May;
import org.stillrail.account.Role;
import org.stillrail.audit.AuditTrail;
import org.stillrail.document.Revision;
import org.stillrail.project.Projects;
import org.stillrail.web.NotFoundException;
import org.stillrail.web.StaleVersionException;

/** What can be done with banks. A bank on a rail is changed by engineers of its project, a scratch bank by its owner. */
@Service
public class Banks {

    private final BankRows rows;
    private final Projects projects;
    private final AuditTrail audit;
    private final Clock clock;

    Banks(BankRows rows, Projects projects, AuditTrail audit, Clock clock) {
        this.rows = rows;
        this.projects = projects;
        this.audit = audit;
        this.clock = clock;
    }

    public Optional<Bank> find(UUID bankId) {
        return rows.find(bankId);
    }

    public Bank require(UUID bankId) {
        return rows.find(bankId).orElseThrow(() -> new NotFoundException("There is no bank with this address."));
    }

    public Bank require(UUID bankId, int number) {
        return rows.find(bankId, number).orElseThrow(() -> new NotFoundException("This bank has no revision " + number + "."));
    }

    public Bank requireRevision(UUID revisionId) {
        return rows.findRevision(revisionId).orElseThrow(() -> new NotFoundException("There is no such revision of a bank."));
    }

    /**
     * A revision as it stands once nobody else is changing its bank; until the caller's transaction ends, others wait to save,
     * submit or sign any revision of it.
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public Bank lock(UUID revisionId) {
        rows.lock(requireRevision(revisionId).id());
        return requireRevision(revisionId);
    }

    public List<Revision<BankDocument>> history(UUID bankId) {
        return rows.history(bankId);
    }

    /** Revisions of a bank that stand at a state, newest first. */
    public List<Bank> revisionsAt(UUID bankId, BankState state) {
        return rows.revisionsAt(bankId, state);
    }

    List<Bank> scratchOf(CurrentPerson owner) {
        return rows.scratchOf(owner.id());
    }

    public List<Bank> ofRail(UUID railId) {
        return rows.ofRail(railId);
    }

    /** Saves a new bank, on a rail or, where the document has none, as a scratch bank of the author's. */
    @PreAuthorize(May.SCRATCH)
    @Transactional
    public Bank add(UUID railId, String name, BankDocument document, CurrentPerson author) {
        if (railId != null) {
            requireEditor(railId, author);
        }
        Bank bank = rows.insert(railId, name, document, author, now());
        audit.record(author.userName(), "bank saved", "bank", bank.id().toString(), Map.of("name", name, "revision", 1));
        return bank;
    }

    /** @throws StaleVersionException when somebody else saved since {@code version} */
    @PreAuthorize(May.SCRATCH)
    @Transactional
    public Bank save(UUID bankId, long version, BankDocument document, CurrentPerson author) {
        Bank bank = require(bankId);
        requireEditor(bank, author);
        if (bank.version() != version || !rows.addRevision(bank, document, author, now())) {
            Bank now = require(bankId);
            throw new StaleVersionException(now.revision().author() + " saved revision " + now.latestNumber() + " of bank " + now.name()
                    + " while this page was open. Nothing was overwritten.");
        }
        audit.record(author.userName(), "bank saved", "bank", bankId.toString(), Map.of("name", bank.name(), "revision", bank.latestNumber() + 1));
        return require(bankId);
    }

    /**
     * Moves a revision from one state to another; the caller checks that the step is legal and who may take it.
     *
     * @throws StaleVersionException when the revision does not stand at {@code from} any more
     */
    @Transactional
    public void changeState(Bank bank, BankState from, BankState to) {
        if (!rows.changeState(bank.revision().id(), from, to)) {
            throw new StaleVersionException("Revision " + bank.revision().number() + " of bank " + bank.name() + " is not "
                    + from.label() + " any more.");
        }
    }

    public boolean mayEdit(Bank bank, CurrentPerson person) {
        return bank.isScratch() ? bank.ownerId().equals(person.id()) : mayEdit(bank.railId(), person);
    }

    boolean mayEdit(UUID railId, CurrentPerson person) {
        return person.has(Role.ENGINEER) && projects.isMember(projects.requireRail(railId).projectId(), person);
    }

    /** @throws AccessDeniedException for whoever may not change this bank */
    public void requireEditor(Bank bank, CurrentPerson person) {
        if (!mayEdit(bank, person)) {
            throw new AccessDeniedException(bank.isScratch()
                    ? "A scratch bank is changed by its owner alone." : "Only engineers of this project may change its banks.");
        }
    }

    private void requireEditor(UUID railId, CurrentPerson person) {
        if (!mayEdit(railId, person)) {
            throw new AccessDeniedException("Only engineers of this project may change its banks.");
        }
    }

    private OffsetDateTime now() {
        return OffsetDateTime.now(clock);
    }
}
