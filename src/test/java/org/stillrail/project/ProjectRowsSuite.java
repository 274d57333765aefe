package org.stillrail.project;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.springframework.dao.DuplicateKeyException;
import org.stillrail.account.CurrentPerson;
import org.stillrail.account.Role;
import org.stillrail.account.StoredPerson;
import org.stillrail.electrical.requirement.ControlFigures;
import org.stillrail.electrical.requirement.ConverterFigures;
import org.stillrail.electrical.requirement.InputRange;
import org.stillrail.electrical.requirement.LoadStep;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.requirement.Topology;
import org.stillrail.support.AtOnce;
import org.stillrail.support.TestDatabase;

/** Projects and rails as they are stored, on either engine. */
abstract class ProjectRowsSuite {

    private static final OffsetDateTime AT = OffsetDateTime.parse("2031-01-02T03:04:05.123456Z");

    private final TestDatabase database;
    private final ProjectRows projects;
    private final RailRows rails;
    private final CurrentPerson engineer;

    ProjectRowsSuite(TestDatabase database) {
        this.database = database;
        this.projects = new ProjectRows(database.jdbc());
        this.rails = new RailRows(database.jdbc());
        this.engineer = StoredPerson.with(database.jdbc(), Role.ENGINEER);
    }

    private Project stored() {
        UUID id = UUID.randomUUID();
        Project project = new Project(id, "Project " + id, "A trial of \u00b5V rails", engineer.displayName(), AT);
        projects.insert(project);
        return project;
    }

    private static RailDocument document(double nominalVoltageV, LoadStep step) {
        ControlFigures control = new ControlFigures(
                ControlFigures.Kind.VOLTAGE_MODE, 1.5, null, null, null, null, List.of(5e3, 12e3), null, 40e3, 55.0);
        ConverterFigures converter = new ConverterFigures(Topology.BUCK, 2.2e-6, 20, 0.012, 1, 500e3, 10, control, 9.0);
        return new RailDocument("Feeds a trial", new RailFigures(nominalVoltageV, 4, new InputRange(10.8, 12, 13.2), converter,
                null, null, step, null, null, null, null));
    }

    @Test
    void aProjectComesBackAsItWasWritten() {
        Project project = stored();
        Project read = projects.find(project.id()).orElseThrow();
        assertThat(read.name()).isEqualTo(project.name());
        assertThat(read.purpose()).isEqualTo(project.purpose());
        assertThat(read.createdAt().toInstant()).isEqualTo(AT.toInstant());
        assertThat(projects.all()).extracting(Project::id).contains(project.id());
        assertThat(projects.find(UUID.randomUUID())).isEmpty();
    }

    @Test
    void aProjectsNameIsTakenOnce() {
        Project first = stored();
        Project second = new Project(UUID.randomUUID(), first.name(), "Another", "Somebody", AT);
        assertThatThrownBy(() -> projects.insert(second)).isInstanceOf(DuplicateKeyException.class);
    }

    @Test
    void membersComeAndGo() {
        UUID project = stored().id();
        CurrentPerson other = StoredPerson.with(database.jdbc(), Role.ENGINEER);
        projects.addMember(project, engineer.id());
        projects.addMember(project, engineer.id());
        projects.addMember(project, other.id());
        assertThat(projects.members(project)).extracting(Member::personId).containsExactlyInAnyOrder(engineer.id(), other.id());
        assertThat(projects.isMember(project, engineer.id())).isTrue();
        projects.removeMember(project, engineer.id());
        assertThat(projects.isMember(project, engineer.id())).isFalse();
        assertThat(projects.isMember(stored().id(), other.id())).isFalse();
    }

    @Test
    void aRailComesBackWithEveryRevision() {
        UUID project = stored().id();
        RailDocument first = document(3.3, null);
        Rail rail = rails.insert(project, "3V3", first, engineer, AT);
        assertThat(rails.find(rail.id())).contains(rail);
        RailDocument second = document(3.35, new LoadStep(1, 4, 2.5e6, 0.1, null));
        assertThat(rails.addRevision(rail, second, engineer, AT.plusDays(1))).isTrue();
        Rail now = rails.find(rail.id()).orElseThrow();
        assertThat(now.latestNumber()).isEqualTo(2);
        assertThat(now.revision().document()).isEqualTo(second);
        assertThat(rails.find(rail.id(), 1).orElseThrow().revision().document()).isEqualTo(first);
        assertThat(rails.findRevision(rail.revision().id()).orElseThrow().isLatest()).isFalse();
        assertThat(rails.history(rail.id())).extracting(revision -> revision.number()).containsExactly(2, 1);
        assertThat(rails.ofProject(project)).extracting(Rail::id).containsExactly(rail.id());
    }

    @Test
    void aStepOfTheLoadCanBeSearchedBySize() {
        Rail rail = rails.insert(stored().id(), "Core", document(1, new LoadStep(9, 3, 1e6, 0.025, null)), engineer, AT);
        assertThat(database.jdbc().sql("select load_step_a from rail_revision where subject_id = :id").param("id", rail.id())
                .query(Double.class).single()).isEqualTo(6);
    }

    @Test
    void aRailsNameIsTakenOnceInAProject() {
        UUID project = stored().id();
        rails.insert(project, "5V0", document(5, null), engineer, AT);
        rails.insert(stored().id(), "5V0", document(5, null), engineer, AT);
        assertThatThrownBy(() -> rails.insert(project, "5V0", document(5, null), engineer, AT)).isInstanceOf(DuplicateKeyException.class);
    }

    @Test
    void ofManyWhoReviseAtOnceExactlyOneWins() throws Exception {
        Rail seen = rails.insert(stored().id(), "Contended", document(3.3, null), engineer, AT);
        List<Boolean> won = AtOnce.times(6,
                () -> database.transaction().execute(status -> rails.addRevision(seen, document(3.4, null), engineer, AT)));
        assertThat(won).filteredOn(each -> each).hasSize(1);
        assertThat(rails.history(seen.id())).hasSize(2);
    }
}
