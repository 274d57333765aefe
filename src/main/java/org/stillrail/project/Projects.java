package org.stillrail.project;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
import org.stillrail.web.NotFoundException;
import org.stillrail.web.StaleVersionException;

/** What can be done with projects and rails. Reading is for everyone signed in; changes are for engineers who are members. */
@Service
public class Projects {

    private final ProjectRows projects;
    private final RailRows rails;
    private final AuditTrail audit;
    private final Clock clock;

    Projects(ProjectRows projects, RailRows rails, AuditTrail audit, Clock clock) {
        this.projects = projects;
        this.rails = rails;
        this.audit = audit;
        this.clock = clock;
    }

    public List<Project> all() {
        return projects.all();
    }

    public Project require(UUID projectId) {
        return projects.find(projectId).orElseThrow(() -> new NotFoundException("There is no project with this address."));
    }

    /** The first of those that a person works in, by name. */
    public List<OwnProject> ofMember(CurrentPerson person, int most) {
        return projects.ofMember(person.id(), most);
    }

    public List<Member> members(UUID projectId) {
        return projects.members(projectId);
    }

    public boolean isMember(UUID projectId, CurrentPerson person) {
        return projects.isMember(projectId, person.id());
    }

    /** @throws AccessDeniedException for whoever is not a member */
    public void requireMember(UUID projectId, CurrentPerson person) {
        if (!isMember(projectId, person)) {
            throw new AccessDeniedException("Only members of this project may change its rails and banks.");
        }
    }

    /** Whether a member can sign in here as an engineer: where none can, nobody can edit the project. */
    public boolean hasEditor(UUID projectId) {
        return projects.hasEditor(projectId);
    }

    /** A member may, and an administrator where no member can edit the project, as when it came from another installation. */
    boolean mayAddMember(UUID projectId, CurrentPerson person) {
        return person.has(Role.ENGINEER) && isMember(projectId, person) || person.has(Role.ADMINISTRATOR) && !hasEditor(projectId);
    }

    /** @throws AccessDeniedException for anybody else */
    void requireMayAddMember(UUID projectId, CurrentPerson person) {
        if (!mayAddMember(projectId, person)) {
            throw new AccessDeniedException("Only members of this project may add others; an administrator may where none of them can sign in as an engineer.");
        }
    }

    /** How many reviewers have to sign a revision of the project's banks. */
    public int signatures(UUID projectId) {
        return projects.signatures(projectId);
    }

    /** The version that a page of the project's members and signatures is opened at. */
    public long version(UUID projectId) {
        return projects.version(projectId);
    }

    /**
     * @param signatures 1 or 2
     * @throws StaleVersionException when members or signatures were changed since {@code version}
     */
    @PreAuthorize(May.EDIT_PROJECT)
    @Transactional
    public void askSignatures(UUID projectId, long version, int signatures, CurrentPerson person) {
        requireMember(projectId, person);
        moveOn(projectId, version);
        int before = signatures(projectId);
        projects.setSignatures(projectId, signatures);
        audit.record(person.userName(), "signatures asked", "project", projectId.toString(), Map.of("from", before, "to", signatures));
    }

    /** One page of the projects whose name or purpose holds the pattern. */
    List<Project> list(String pattern, int offset, int most) {
        return projects.list(pattern, offset, most);
    }

    int count(String pattern) {
        return projects.count(pattern);
    }

    List<Rail> railsOf(List<Project> of) {
        return rails.ofProjects(of.stream().map(Project::id).toList());
    }

    public List<Rail> railsOf(UUID projectId) {
        return rails.ofProject(projectId);
    }

    public Optional<Rail> findRail(UUID railId) {
        return rails.find(railId);
    }

    public Rail requireRail(UUID railId) {
        return rails.find(railId).orElseThrow(() -> new NotFoundException("There is no rail with this address."));
    }

    public Rail requireRailRevision(UUID revisionId) {
        return rails.findRevision(revisionId).orElseThrow(() -> new NotFoundException("There is no such revision of a rail."));
    }

    Rail requireRail(UUID railId, int number) {
        return rails.find(railId, number).orElseThrow(() -> new NotFoundException("This rail has no revision " + number + "."));
    }

    List<Revision<RailDocument>> historyOf(UUID railId) {
        return rails.history(railId);
    }

    /** @throws NameTakenException when there is a project of this name */
    @PreAuthorize(May.EDIT_PROJECT)
    @Transactional
    public Project start(String name, String purpose, CurrentPerson person) {
        Project project = new Project(UUID.randomUUID(), name, purpose, person.displayName(), now());
        try {
            projects.insert(project);
        } catch (DuplicateKeyException e) {
            throw new NameTakenException("A project", name);
        }
        projects.addMember(project.id(), person.id());
        audit.record(person.userName(), "project started", "project", project.id().toString(), Map.of("name", name));
        return project;
    }

    /**
     * @throws AccessDeniedException for whoever is no member, and for an administrator where a member can add others
     * @throws StaleVersionException when members or signatures were changed since {@code version}
     */
    @PreAuthorize(May.ADD_MEMBER)
    @Transactional
    public void addMember(UUID projectId, long version, UUID memberId, CurrentPerson person) {
        requireMayAddMember(projectId, person);
        moveOn(projectId, version);
        projects.addMember(projectId, memberId);
        audit.record(person.userName(), "member added", "project", projectId.toString(), Map.of("member", memberId.toString()));
    }

    /** Makes whoever takes in a project from elsewhere its member. */
    @PreAuthorize(May.TAKE_IN_AS_MEMBER)
    @Transactional
    public void joinTakenIn(UUID projectId, CurrentPerson person) {
        projects.addMember(projectId, person.id());
        audit.record(person.userName(), "member added", "project", projectId.toString(), Map.of("member", person.id().toString()));
    }

    /** @throws StaleVersionException likewise */
    @PreAuthorize(May.EDIT_PROJECT)
    @Transactional
    public void removeMember(UUID projectId, long version, UUID memberId, CurrentPerson person) {
        requireMember(projectId, person);
        moveOn(projectId, version);
        projects.removeMember(projectId, memberId);
        audit.record(person.userName(), "member removed", "project", projectId.toString(), Map.of("member", memberId.toString()));
    }

    /** @throws NameTakenException when the project has a rail of this name */
    @PreAuthorize(May.EDIT_PROJECT)
    @Transactional
    public Rail addRail(UUID projectId, String name, RailDocument document, CurrentPerson person) {
        requireMember(projectId, person);
        try {
            Rail rail = rails.insert(projectId, name, document, person, now());
            audit.record(person.userName(), "rail added", "rail", rail.id().toString(), Map.of("name", name));
            return rail;
        } catch (DuplicateKeyException e) {
            throw new NameTakenException("A rail", name);
        }
    }

    /** @throws StaleVersionException when the rail was changed since {@code version} */
    @PreAuthorize(May.EDIT_PROJECT)
    @Transactional
    public Rail reviseRail(UUID railId, long version, RailDocument document, CurrentPerson person) {
        Rail rail = requireRail(railId);
        requireMember(rail.projectId(), person);
        if (rail.version() != version || !rails.addRevision(rail, document, person, now())) {
            throw new StaleVersionException("Rail " + rail.name() + " was changed by somebody else while this page was open (now revision "
                    + requireRail(railId).latestNumber() + "). Nothing was overwritten.");
        }
        audit.record(person.userName(), "rail revised", "rail", railId.toString(), Map.of("name", rail.name(), "revision", rail.latestNumber() + 1));
        return requireRail(railId);
    }

    private void moveOn(UUID projectId, long version) {
        if (!projects.moveOn(projectId, version)) {
            throw new StaleVersionException("The members or the signatures of this project were changed by somebody else while this page was open."
                    + " They stand here as they are now; nothing of yours was stored.");
        }
    }

    private OffsetDateTime now() {
        return OffsetDateTime.now(clock);
    }
}
