package org.stillrail.library;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.stillrail.account.CurrentPerson;
import org.stillrail.account.May;
import org.stillrail.account.Role;
import org.stillrail.audit.AuditTrail;
import org.stillrail.document.Revision;
import org.stillrail.electrical.quality.Finding;
import org.stillrail.team.VettingItem;
import org.stillrail.web.NotFoundException;
import org.stillrail.web.StaleVersionException;

/** What can be done with parts and sweeps. Reading is for everyone signed in; each change names who may make it. */
@Service
public class Library {

    private final Parts parts;
    private final Sweeps sweeps;
    private final RawFiles rawFiles;
    private final VettingChecklists checklists;
    private final FixtureSweeps fixtures;
    private final FindingAcceptances acceptances;
    private final AuditTrail audit;
    private final Clock clock;

    Library(
            Parts parts, Sweeps sweeps, RawFiles rawFiles, VettingChecklists checklists, FixtureSweeps fixtures,
            FindingAcceptances acceptances, AuditTrail audit, Clock clock) {
        this.parts = parts;
        this.sweeps = sweeps;
        this.rawFiles = rawFiles;
        this.checklists = checklists;
        this.fixtures = fixtures;
        this.acceptances = acceptances;
        this.audit = audit;
        this.clock = clock;
    }

    public Optional<Part> find(UUID partId) {
        return parts.find(partId);
    }

    public Optional<Part> find(String partNumber) {
        return parts.find(partNumber);
    }

    public Optional<Part> findRevision(UUID revisionId) {
        return parts.findRevision(revisionId);
    }

    /**
     * The first few parts that fit what somebody types: numbers that begin so first, withdrawn parts last.
     *
     * @param text as {@link PartSearch} reads it
     */
    public List<PartChoice> choices(String text, int most) {
        return parts.choices(PartSearch.filter(text), most);
    }

    /** Parts that are in a bank already, the withdrawn too, by part number. */
    public List<PartChoice> chosen(Set<UUID> partIds) {
        return parts.choices(partIds);
    }

    public Optional<Sweep> findSweep(UUID sweepId) {
        return sweeps.find(sweepId);
    }

    public List<Sweep> sweepsOf(UUID partId) {
        return sweeps.ofPart(partId);
    }

    Part require(UUID partId) {
        return find(partId).orElseThrow(() -> new NotFoundException("There is no part with this address."));
    }

    Part require(UUID partId, int number) {
        return parts.find(partId, number).orElseThrow(() -> new NotFoundException("This part has no revision " + number + "."));
    }

    List<Revision<PartDocument>> history(UUID partId) {
        return parts.history(partId);
    }

    /**
     * Proposes a new part.
     *
     * @throws PartNumberTakenException when the library holds this part number already
     */
    @PreAuthorize(May.PROPOSE_PART)
    @Transactional
    public Part propose(PartDocument document, CurrentPerson author) {
        try {
            Part part = parts.insert(document, Vetting.PROPOSED, null, author, now());
            audit.record(author.userName(), "part proposed", "part", part.id().toString(), Map.of("partNumber", document.partNumber()));
            return part;
        } catch (DuplicateKeyException e) {
            throw new PartNumberTakenException(document.partNumber());
        }
    }

    /**
     * Makes the next revision of a part. A vetted part takes a librarian; that is checked here because it depends on the part.
     *
     * @throws StaleVersionException   when the part was changed since {@code version}
     * @throws VettingRefusedException when it would take from a vetted or restricted part something of the team's list
     */
    @PreAuthorize(May.PROPOSE_PART)
    @Transactional
    public Part revise(UUID partId, long version, PartDocument document, CurrentPerson author) {
        Part part = atVersion(partId, version);
        requireReviser(part, author);
        String lost = lostBy(document, part);
        if (!lost.isEmpty()) {
            throw new VettingRefusedException("", lacking(part, lost) + " Give it, or set the part to proposed first.");
        }
        PartDocument kept = document.withModel(part.document().model()).withPartNumber(part.document().partNumber());
        return addRevision(part, kept, author, "part revised");
    }

    /**
     * What of the team's list a revision would take from a vetted or restricted part, in words; empty where nothing. An item that
     * was asked for only after the part was vetted does not stand in the way of a correction.
     */
    String lostBy(PartDocument revision, Part part) {
        return Vetting.APPROVED.contains(part.vetting()) ? checklists.lostBy(revision, part, sweeps.ofPart(part.id())) : "";
    }

    static String lacking(Part part, String lost) {
        return part.partNumber() + " is " + part.vetting().label() + ", and would lack " + lost + ".";
    }

    /** @throws AccessDeniedException for whoever may not revise this part */
    void requireReviser(Part part, CurrentPerson person) {
        if (part.vetting() != Vetting.PROPOSED && !person.has(Role.LIBRARIAN)) {
            throw new AccessDeniedException("A part that has been vetted is revised by a librarian.");
        }
    }

    /**
     * Carries out a plan as a whole.
     *
     * @throws StaleVersionException when a part was changed since the plan was made; nothing is stored then
     */
    @PreAuthorize(May.PROPOSE_PART)
    @Transactional
    void carryOut(BulkPlan plan, CurrentPerson author) {
        for (BulkPlan.Step step : plan.steps()) {
            switch (step.action()) {
                case NEW -> propose(step.document(), author);
                case REVISION -> revise(step.part().id(), step.part().version(), step.document(), author);
                case UNCHANGED -> { }
                case REFUSED -> throw new IllegalArgumentException("Line " + step.line() + ": " + step.refusal());
            }
        }
    }

    /** Chooses the model that the part lends to banks from now on; a new revision. */
    @PreAuthorize(May.VET)
    @Transactional
    public Part chooseModel(UUID partId, long version, ModelChoice choice, CurrentPerson author) {
        Part part = atVersion(partId, version);
        if (choice.sweeps().stream().anyMatch(id -> sweeps.find(id).filter(sweep -> sweep.partId().equals(partId)).isEmpty())) {
            throw new NotFoundException("This part has no such sweep.");
        }
        return addRevision(part, part.document().withModel(choice), author, "part model chosen");
    }

    /**
     * Vets, restricts or withdraws a part. A vetted part can be restricted whatever the team asks for by now: a condition that
     * people have to know of must not wait.
     *
     * @param replacement what takes the place of a withdrawn part, or null; of no matter for other states
     * @throws VettingRefusedException when it is to be approved and lacks something of the team's list, or the replacement is
     *                                 itself withdrawn or the same part
     */
    @PreAuthorize(May.VET)
    @Transactional
    public void changeVetting(UUID partId, long version, Vetting vetting, String reason, Part replacement, CurrentPerson author) {
        Part part = atVersion(partId, version);
        Part instead = vetting == Vetting.WITHDRAWN ? replacement : null;
        boolean tightened = vetting == Vetting.RESTRICTED && Vetting.APPROVED.contains(part.vetting());
        if (Vetting.APPROVED.contains(vetting) && !tightened) {
            checklists.of(part, sweeps.ofPart(partId)).requireDone(vetting);
        }
        requireReplaces(part, instead);
        if (!parts.changeVetting(partId, version, vetting, reason, instead == null ? null : instead.id(), now())) {
            throw stale(part);
        }
        audit.record(author.userName(), "part " + vetting.label(), "part", partId.toString(),
                Map.of("partNumber", part.partNumber(), "from", part.vetting().label(), "reason", reason == null ? "" : reason,
                        "replacement", instead == null ? "" : instead.partNumber()));
    }

    private static void requireReplaces(Part part, Part instead) {
        if (instead == null) {
            return;
        }
        if (instead.id().equals(part.id())) {
            throw new VettingRefusedException("replacement", "Replacement: " + part.partNumber() + " cannot replace itself");
        }
        if (instead.vetting() == Vetting.WITHDRAWN) {
            throw new VettingRefusedException("replacement", "Replacement: " + instead.partNumber() + " is itself withdrawn"
                    + (instead.vettingNote() == null ? "" : " (" + instead.vettingNote() + ")") + "; choose another part");
        }
    }

    /** What takes the place of a withdrawn part; where that was withdrawn later, what takes its place. */
    public Optional<Part> replacementOf(Part withdrawn) {
        Set<UUID> seen = new HashSet<>();
        Part part = withdrawn;
        while (part.vetting() == Vetting.WITHDRAWN) {
            // Two people who replace two parts by each other at once leave a circle.
            if (part.replacement() == null || !seen.add(part.id())) {
                return Optional.empty();
            }
            part = require(part.replacement().id());
        }
        return part.id().equals(withdrawn.id()) ? Optional.empty() : Optional.of(part);
    }

    /** States why a part does without something of the team's list; the newest statement counts. */
    @PreAuthorize(May.VET)
    @Transactional
    public void exempt(UUID partId, VettingItem item, String reason, CurrentPerson author) {
        Part part = require(partId);
        if (!item.reasonSuffices()) {
            throw new VettingRefusedException("A stated reason does not stand in for " + item.label() + ".");
        }
        VettingChecklist.Exemption before = checklists.exemptions(partId).get(item);
        if (before != null) {
            throw new StaleVersionException(before.author() + " has stated a reason for " + item.label() + " already: '" + before.reason()
                    + "'. Yours, which was not stored: '" + reason + "'.");
        }
        checklists.insert(partId, item, reason, author, now());
        audit.record(author.userName(), "part exempted", "part", partId.toString(),
                Map.of("partNumber", part.partNumber(), "item", item.name(), "reason", reason));
    }

    /** Keeps the raw bytes and what was read from them. */
    @PreAuthorize(May.IMPORT_SWEEP)
    @Transactional
    public Sweep importSweep(UUID partId, String fileName, byte[] bytes, SweepDocument document, CurrentPerson importer) {
        Part part = require(partId);
        String sha256 = rawFiles.keep(bytes);
        Sweep sweep = sweeps.insert(partId, sha256, fileName, document, importer, now());
        audit.record(importer.userName(), "sweep imported", "sweep", sweep.id().toString(),
                Map.of("partNumber", part.partNumber(), "file", fileName, "sha256", sha256));
        return sweep;
    }

    /** Names of the stored fixture sweeps with a short, by identity. */
    public Map<UUID, String> shortedFixtures() {
        return fixtures.names(FixtureSweep.Standard.SHORT);
    }

    public Optional<ShortedFixture> shortedFixture(UUID id) {
        return fixtures.find(id).filter(fixture -> fixture.standard() == FixtureSweep.Standard.SHORT)
                .map(fixture -> new ShortedFixture(fixture.id(), fixture.name(), fixture.document().impedance()));
    }

    /** Keeps a sweep of a fixture with its raw bytes. @return false where the name is taken */
    @PreAuthorize(May.IMPORT_SWEEP)
    @Transactional
    boolean addFixture(FixtureSweep fixture, byte[] bytes, CurrentPerson author) {
        if (fixtures.isTaken(fixture.name())) {
            return false;
        }
        rawFiles.keep(bytes);
        if (!fixtures.insert(fixture, author)) {
            return false;
        }
        audit.record(author.userName(), "fixture sweep stored", "fixture", fixture.id().toString(),
                Map.of("name", fixture.name(), "file", fixture.fileName(), "sha256", fixture.rawSha256()));
        return true;
    }

    /**
     * Accepts what was found wrong with a sweep.
     *
     * @throws StaleVersionException when somebody accepted it before; the second reason is in the message, and stored nowhere
     */
    @PreAuthorize(May.VET)
    @Transactional
    public void acceptFinding(Sweep sweep, Finding finding, String reason, CurrentPerson librarian) {
        if (!acceptances.insert(sweep.id(), finding, reason, librarian, now())) {
            throw new StaleVersionException("This finding is accepted already; the reason that stands beside it was kept. Yours, which was not stored: '"
                    + reason + "'.");
        }
        audit.record(librarian.userName(), "finding accepted", "sweep", sweep.id().toString(),
                Map.of("finding", finding.kind().label(), "reason", reason, "file", sweep.fileName()));
    }

    List<FindingAcceptance> acceptancesOf(UUID sweepId) {
        return acceptances.ofSweep(sweepId);
    }

    /** Where the same bytes were imported before, as seen from a part. */
    List<Twin> twins(String sha256, UUID partId) {
        return sweeps.withRaw(sha256).stream()
                .map(sweep -> new Twin(sweep, require(sweep.partId()).partNumber(), sweep.partId().equals(partId))).toList();
    }

    byte[] rawOf(String sha256) {
        return rawFiles.find(sha256).orElseThrow();
    }

    private Part addRevision(Part part, PartDocument document, CurrentPerson author, String action) {
        if (!parts.addRevision(part, document, author, now())) {
            throw stale(part);
        }
        audit.record(author.userName(), action, "part", part.id().toString(),
                Map.of("partNumber", part.partNumber(), "revision", part.latestNumber() + 1));
        return require(part.id());
    }

    private Part atVersion(UUID partId, long version) {
        Part part = require(partId);
        if (part.version() != version) {
            throw stale(part);
        }
        return part;
    }

    private static StaleVersionException stale(Part part) {
        return new StaleVersionException("Part " + part.partNumber() + " was changed by somebody else while this page was open "
                + "(now revision " + part.latestNumber() + "). Nothing was overwritten.");
    }

    private OffsetDateTime now() {
        return OffsetDateTime.now(clock);
    }
}
