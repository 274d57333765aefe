package org.stillrail.report;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.stillrail.audit.AuditLines;
import org.stillrail.bank.BankState;
import org.stillrail.bank.BenchKind;
import org.stillrail.electrical.quality.FindingKind;
import org.stillrail.electrical.requirement.Requirement;
import org.stillrail.library.FixtureSweep;
import org.stillrail.review.ReviewStep;
import org.stillrail.team.VettingItem;

/**
 * The tables of which a project consists, in the order in which their rows can be inserted. {@code :parts} and {@code :revisions}
 * stand for what the project's banks use, with what replaces it, and for the revisions of its banks, {@code :subjects} for the ids
 * of everything that the record may speak of. A table that is not here is in {@link LeftOutTable}.
 */
enum ProjectTable {

    PART("id in (:parts)", "id"),
    PART_REVISION("subject_id in (:parts)", "id"),
    PART_EXEMPTION("part_id in (:parts)", "id"),
    RAW_FILE("""
            sha256 in (select raw_sha256 from sweep where part_id in (:parts)
                union select raw_sha256 from bench_record where revision_id in (:revisions)
                union select raw_sha256 from fixture_sweep where\s""" + Scope.FIXTURES + ")", "sha256"),
    FIXTURE_SWEEP(Scope.FIXTURES, "id"),
    SWEEP("part_id in (:parts)", "id"),
    FINDING_ACCEPTANCE("sweep_id in (select id from sweep where part_id in (:parts))", "id"),
    PROJECT("id = :project", "id"),
    PROJECT_MEMBER("project_id = :project", "project_id", "person_id"),
    RAIL("project_id = :project", "id"),
    RAIL_REVISION("subject_id in (select id from rail where project_id = :project)", "id"),
    BANK("rail_id in (select id from rail where project_id = :project)", "id"),
    BANK_REVISION("id in (:revisions)", "id"),
    BANK_REVISION_STATE("revision_id in (:revisions)", "revision_id"),
    BANK_PART("revision_id in (:revisions)", "revision_id", "part_id", "part_revision_id"),
    BENCH_RECORD("revision_id in (:revisions)", "id"),
    REVIEW_SNAPSHOT("revision_id in (:revisions)", "id"),
    REVIEW_STEP("revision_id in (:revisions)", "revision_id", "number"),
    REVIEW_SIGNATURE("snapshot_id in (select id from review_snapshot where revision_id in (:revisions))", "id"),
    CONCESSION("revision_id in (:revisions)", "revision_id", "requirement"),
    REVIEW_COMMENT("revision_id in (:revisions)", "id"),
    ORIGIN_AUDIT_EVENT(AuditLines.ABOUT, "chain", "sequence_number") {
        @Override
        String source() {
            return "audit_line";
        }
    };

    private final String condition;
    private final List<String> key;

    ProjectTable(String condition, String... key) {
        this.condition = condition;
        this.key = List.of(key);
    }

    String sqlName() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** What is read: the table, or a view that has what came from elsewhere beside what is this installation's own. */
    String source() {
        return sqlName();
    }

    String condition() {
        return condition;
    }

    /** The column of a name that is unique in an installation and gets a tag where it is taken ({@link Elsewhere}), else null. */
    String tagged() {
        return switch (this) {
            case PART -> "part_number";
            case FIXTURE_SWEEP -> "name";
            default -> null;
        };
    }

    /** Columns that are read before a row meets the database's own constraints. */
    List<String> needed() {
        return switch (this) {
            case PART -> List.of("id", "part_number");
            case FIXTURE_SWEEP, PROJECT -> List.of("id", "name");
            case PART_REVISION -> List.of("id", "subject_id", "number", "author", "document");
            default -> key;
        };
    }

    /** Columns that hold one word of a kind, which pages read as such, with that kind. */
    Map<String, Class<? extends Enum<?>>> words() {
        return switch (this) {
            case PART_EXEMPTION -> Map.of("item", VettingItem.class);
            case FIXTURE_SWEEP -> Map.of("standard", FixtureSweep.Standard.class);
            case FINDING_ACCEPTANCE -> Map.of("kind", FindingKind.class);
            case BANK_REVISION_STATE -> Map.of("state", BankState.class);
            case BENCH_RECORD -> Map.of("kind", BenchKind.class);
            case REVIEW_STEP -> Map.of("step", ReviewStep.class);
            case CONCESSION -> Map.of("requirement", Requirement.class);
            default -> Map.of();
        };
    }

    /** Columns of the primary key. */
    List<String> key() {
        return key;
    }

    /** Conditions that several tables share. */
    private static final class Scope {

        /** Named by its id in what a sweep, a bench record or a mounting says of how it was made. */
        private static final String FIXTURES = """
                (exists (select 1 from sweep w where w.part_id in (:parts)
                        and w.document like concat('%', cast(fixture_sweep.id as varchar(36)), '%'))
                    or exists (select 1 from bench_record k where k.revision_id in (:revisions)
                        and k.document like concat('%', cast(fixture_sweep.id as varchar(36)), '%'))
                    or exists (select 1 from bank_revision v where v.id in (:revisions)
                        and v.document like concat('%', cast(fixture_sweep.id as varchar(36)), '%')))""";

        private Scope() {
        }
    }
}
