package org.stillrail.support;

import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.UUID;
import java.util.stream.Stream;
import javax.sql.DataSource;
import org.stillrail.bank.BankDocument;
import org.stillrail.bank.BankState;
import org.stillrail.bank.BranchDocument;
import org.stillrail.document.CanonicalJson;
import org.stillrail.document.Sha256;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.capacitor.Technology;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.requirement.Requirement;
import org.stillrail.library.LossFigure;
import org.stillrail.library.MeasurementSetup;
import org.stillrail.library.ModelChoice;
import org.stillrail.library.PartDocument;
import org.stillrail.library.SweepDocument;
import org.stillrail.library.SweepProvenance;
import org.stillrail.project.RailDocument;

/**
 * What a large team has collected in years, the same from the same seed: parts with sweeps, projects with rails, banks with
 * revisions on every step of a review, comments, and the record. Written straight into the tables of a migrated database,
 * in batches; hashes are right where a page looks at them, the record's chain is not.
 */
public final class LargeTeam {

    public static final int PARTS = 10_000;
    public static final int SWEEPS = 100_000;
    public static final int PROJECTS = 2_000;
    public static final int BANK_REVISIONS = 20_000;

    private static final long SEED = 20260101;
    private static final int PEOPLE = 60;
    private static final int RAILS_OF_A_PROJECT = 2;
    private static final int REVISIONS_OF_A_BANK = 2;
    private static final int RECORD_LINES = 100_000;
    /** Every how many-th line is about one project. */
    private static final int BUSY = 20;
    private static final int ORIGIN_LINES = 20_000;
    private static final int FIXTURES = 40;
    private static final int FIXTURE_POINTS = 801;
    /** The first parts are measured as an analyser does it, the others at few points, to keep the database small. */
    private static final int WELL_MEASURED_PARTS = 5;
    private static final int MANY_POINTS = 801;
    private static final int FEW_POINTS = 9;
    private static final int BATCH = 1_000;
    private static final OffsetDateTime AT = OffsetDateTime.of(2031, 1, 1, 9, 0, 0, 0, ZoneOffset.UTC);

    private static final List<String> WORDS = List.of("ripple", "quiet", "motor", "logic", "radio", "sensor", "valve", "pump", "lamp", "meter");

    private final Random random = new Random(SEED);
    private final Connection connection;
    private final List<UUID> people = new ArrayList<>();
    private final List<UUID> parts = new ArrayList<>();
    private final List<UUID> partRevisions = new ArrayList<>();
    private final List<UUID> projects = new ArrayList<>();
    private final List<UUID> rails = new ArrayList<>();
    private final List<UUID> railRevisions = new ArrayList<>();
    private final List<UUID> banks = new ArrayList<>();
    private final List<UUID> bankRevisions = new ArrayList<>();
    private final List<UUID> sweeps = new ArrayList<>();

    private LargeTeam(Connection connection) {
        this.connection = connection;
    }

    /** @param person stored already; one of many who wrote the banks */
    public static LargeTeam fill(DataSource dataSource, UUID person) throws SQLException {
        try (Connection connection = dataSource.getConnection()) {
            connection.setAutoCommit(false);
            LargeTeam team = new LargeTeam(connection);
            team.people.add(person);
            team.people();
            team.library();
            team.projects();
            team.banks();
            team.reviews();
            team.record();
            connection.setAutoCommit(true);
            try (var statement = connection.createStatement()) {
                statement.execute("analyze");
            }
            return team;
        }
    }

    /** A part with well measured sweeps. */
    public UUID part() {
        return parts.get(0);
    }

    public UUID sweep() {
        return sweeps.get(0);
    }

    public UUID project() {
        return projects.get(PROJECTS / 2);
    }

    /** Name of the record of where that project was before. */
    public String origin() {
        return Sha256.of("elsewhere");
    }

    public UUID rail() {
        return rails.get(0);
    }

    public UUID bank() {
        return banks.get(0);
    }

    /** Two banks of one rail. */
    public List<UUID> neighbours() {
        return List.of(banks.get(0), banks.get(rails.size()));
    }

    private interface Row {
        Object[] of(int index);
    }

    private static Object[] row(Object... values) {
        return values;
    }

    /** Inserts rows 0, 1, ... into a table. */
    private void insert(String table, String columns, int rows, Row filler) throws SQLException {
        String marks = columns.replaceAll("[a-z0-9_]+", "?");
        try (PreparedStatement statement = connection.prepareStatement("insert into " + table + " (" + columns + ") values (" + marks + ")")) {
            for (int i = 0; i < rows; i++) {
                Object[] values = filler.of(i);
                for (int column = 0; column < values.length; column++) {
                    statement.setObject(column + 1, values[column]);
                }
                statement.addBatch();
                if (i % BATCH == BATCH - 1 || i == rows - 1) {
                    statement.executeBatch();
                }
            }
        }
        connection.commit();
    }

    private UUID add(List<UUID> to) {
        UUID id = new UUID(random.nextLong(), random.nextLong());
        to.add(id);
        return id;
    }

    private UUID author(int i) {
        return people.get(i % people.size());
    }

    private static String name(int i) {
        return WORDS.get(i % WORDS.size()) + " " + WORDS.get(i / WORDS.size() % WORDS.size()) + " " + i;
    }

    private void people() throws SQLException {
        insert("person", "id, user_name, display_name, password_hash, password_change_due, active, created_at", PEOPLE,
                i -> row(add(people), "person-" + i, "Person " + i, "none", false, true, AT));
        insert("person_role", "person_id, role", PEOPLE, i -> row(people.get(i + 1), i % 5 == 0 ? "REVIEWER" : "ENGINEER"));
    }

    private void library() throws SQLException {
        insert("part", "id, part_number, maker, vetting, latest_number, version", PARTS, i -> row(add(parts), number(i), "Maker " + i % 40,
                List.of("PROPOSED", "VETTED", "RESTRICTED", "WITHDRAWN").get(i % 4), 1, 0L));
        insert("part_revision", "id, subject_id, number, author_id, author, made_at, document, sha256, technology, capacitance_f, rated_voltage_v",
                PARTS, i -> {
                    Technology technology = Technology.values()[i % Technology.values().length];
                    double capacitanceF = Math.pow(10, -8 + 5 * random.nextDouble());
                    String json = CanonicalJson.write(part(i, technology, capacitanceF));
                    return row(add(partRevisions), parts.get(i), 1, author(i), "Person", AT, json, Sha256.of(json), technology.key(), capacitanceF, 25.0);
                });
        String raw = Sha256.of("raw");
        insert("raw_file", "sha256, size_bytes, content", 1, i -> row(raw, 3L, "raw".getBytes(StandardCharsets.UTF_8)));
        String few = CanonicalJson.write(sweep(FEW_POINTS));
        String many = CanonicalJson.write(sweep(MANY_POINTS));
        insert("sweep", "id, part_id, raw_sha256, file_name, importer_id, importer, imported_at, document, sha256, points, start_hz, stop_hz", SWEEPS,
                i -> {
                    boolean well = i % PARTS < WELL_MEASURED_PARTS;
                    String json = well ? many : few;
                    return row(add(sweeps), parts.get(i % PARTS), raw, "sweep-" + i + ".s2p", author(i), "Person", AT, json, Sha256.of(json),
                            well ? MANY_POINTS : FEW_POINTS, 100.0, 1e8);
                });
        String fixture = CanonicalJson.write(sweep(FIXTURE_POINTS));
        insert("fixture_sweep", "id, name, standard, load_ohm, raw_sha256, file_name, author_id, author, made_at, document, sha256", FIXTURES,
                i -> row(new UUID(1, i), "Fixture " + i, i % 2 == 0 ? "OPEN" : "SHORT", null, raw, "fixture.s2p", author(i), "Person", AT, fixture,
                        Sha256.of(fixture)));
    }

    private static String number(int i) {
        return String.format(Locale.ROOT, "BENCH-%05d", i);
    }

    private static PartDocument part(int i, Technology technology, double capacitanceF) {
        return new PartDocument(number(i), "Maker " + i % 40, technology, capacitanceF, new PartDocument.Tolerance(20, 20), 25,
                List.of(new LossFigure(LossFigure.Kind.ESR, 0.01, 100e3, LossFigure.Bound.MAXIMUM)), 1e-9, null, null, null, null, null, null, null,
                3e-3, 2e-3, 2e-3, null, null, ModelChoice.DATASHEET, null, null, null);
    }

    /** 10 uF, 10 mohm, 1 nH from 100 Hz to 100 MHz. */
    private static SweepDocument sweep(int points) {
        double[] hz = new double[points];
        double[] resistanceOhm = new double[points];
        double[] reactanceOhm = new double[points];
        for (int i = 0; i < points; i++) {
            hz[i] = Math.pow(10, 2 + 6.0 * i / (points - 1));
            double omega = 2 * Math.PI * hz[i];
            resistanceOhm[i] = 0.01;
            reactanceOhm[i] = omega * 1e-9 - 1 / (omega * 10e-6);
        }
        SweepProvenance provenance = new SweepProvenance(null, "Person", LocalDate.of(2031, 1, 1), "An analyser", "shunt-through", null, null, null,
                0, 25, null, null);
        return new SweepDocument(provenance, "Touchstone 1", null, 50.0, List.of(), hz, resistanceOhm, reactanceOhm, MeasurementSetup.UNKNOWN);
    }

    private void projects() throws SQLException {
        insert("project", "id, name, purpose, created_by, created_at, version", PROJECTS,
                i -> row(add(projects), String.format(Locale.ROOT, "Project %04d", i), "Made to be listed, for a " + name(i), "Person", AT, 0L));
        insert("project_member", "project_id, person_id", PROJECTS, i -> row(projects.get(i), author(i)));
        insert("project_member", "project_id, person_id", PROJECTS, i -> row(projects.get(i), author(i + 1)));
        int count = PROJECTS * RAILS_OF_A_PROJECT;
        insert("rail", "id, project_id, name, latest_number, version", count,
                i -> row(add(rails), projects.get(i / RAILS_OF_A_PROJECT), "Rail " + i % RAILS_OF_A_PROJECT + " of the " + name(i), 1, 0L));
        insert("rail_revision", "id, subject_id, number, author_id, author, made_at, document, sha256, nominal_voltage_v, nominal_current_a, switching_hz",
                count, i -> {
                    RailFigures figures = TeamBench.figures(
                            0.8 + 10 * random.nextDouble(), 1 + 30 * random.nextDouble(), 2e5 + 1e6 * random.nextDouble(), null);
                    String json = CanonicalJson.write(new RailDocument("Made to be listed", figures));
                    return row(add(railRevisions), rails.get(i), 1, author(i), "Person", AT, json, Sha256.of(json), figures.nominalVoltageV(),
                            figures.nominalCurrentA(), figures.converter().switchingHz());
                });
    }

    private void banks() throws SQLException {
        int count = BANK_REVISIONS / REVISIONS_OF_A_BANK;
        insert("bank", "id, rail_id, owner_id, owner, name, latest_number, version", count,
                i -> row(add(banks), rails.get(i % rails.size()), author(i), "Person", "Bank of the " + name(i), REVISIONS_OF_A_BANK, 0L));
        insert("bank_revision", "id, subject_id, number, author_id, author, made_at, document, sha256, rail_revision_id", BANK_REVISIONS, i -> {
            int bank = i / REVISIONS_OF_A_BANK;
            UUID railRevision = railRevisions.get(bank % rails.size());
            String json = CanonicalJson.write(new BankDocument(railRevision, null, List.of(branch(i), branch(i + 1)), null));
            return row(add(bankRevisions), banks.get(bank), 1 + i % REVISIONS_OF_A_BANK, author(bank), "Person", AT, json, Sha256.of(json), railRevision);
        });
        insert("bank_revision_state", "revision_id, state, version", BANK_REVISIONS, i -> row(bankRevisions.get(i), state(i).name(), 0L));
        insert("bank_part", "revision_id, part_id, part_revision_id", 2 * BANK_REVISIONS, i -> {
            int part = (i / 2 + i % 2) % PARTS;
            return row(bankRevisions.get(i / 2), parts.get(part), partRevisions.get(part));
        });
    }

    private BranchDocument branch(int i) {
        int part = i % PARTS;
        return new BranchDocument("branch", 2, parts.get(part), partRevisions.get(part), null, SeriesPath.NONE, SeriesPath.NONE);
    }

    /** Of ten banks four are approved, one waits for its reviewer, one was returned, and four are in work; the first revision went before. */
    private static BankState state(int revision) {
        int kind = revision / REVISIONS_OF_A_BANK % 10;
        if (revision % REVISIONS_OF_A_BANK == 0) {
            return kind < 4 ? BankState.SUPERSEDED : kind < 6 ? BankState.APPROVED : BankState.IN_WORK;
        }
        return kind < 4 ? BankState.APPROVED : kind == 4 ? BankState.IN_REVIEW : kind == 5 ? BankState.RETURNED : BankState.IN_WORK;
    }

    private void reviews() throws SQLException {
        List<Object[]> steps = new ArrayList<>();
        List<UUID> approved = new ArrayList<>();
        for (int i = 0; i < BANK_REVISIONS; i++) {
            if (state(i) != BankState.IN_WORK) {
                UUID revision = bankRevisions.get(i);
                UUID author = author(i / REVISIONS_OF_A_BANK);
                steps.add(row(revision, 1, "SUBMITTED", author, "Person", AT.plusMinutes(i), null));
                if (state(i) == BankState.RETURNED) {
                    steps.add(row(revision, 2, "RETURNED", author(i + 7), "Person", AT.plusMinutes(i + 1), "Look at the " + name(i)));
                } else if (state(i) != BankState.IN_REVIEW) {
                    steps.add(row(revision, 2, "APPROVED", author(i + 7), "Person", AT.plusMinutes(i + 1), "Good for the " + name(i)));
                    approved.add(revision);
                }
            }
        }
        insert("review_step", "revision_id, number, step, person_id, person, taken_at, remark", steps.size(), steps::get);
        insert("concession", "revision_id, requirement, reason, owner_id, owner, ends_on", approved.size() / 10, i -> row(approved.get(10 * i),
                Requirement.values()[0].name(), "Known since the " + name(i), author(i), "Person", LocalDate.of(2031, 1, 1).plusDays(i % 400)));
        insert("review_comment", "id, revision_id, person_id, person, made_at, remark", BANK_REVISIONS,
                i -> row(new UUID(2, i), bankRevisions.get(i), author(i), "Person", AT.plusMinutes(i), "What about the " + name(i) + "? It has to be looked at."));
    }

    /** Of the one project about which the record says much. */
    private Object[] projectLine(long first, int i) {
        return line(first, i, "member added", "project", project());
    }

    private static Object[] line(long first, int i, String action, String kind, UUID subject) {
        return row(first + i, AT.plusSeconds(i), "person-" + i % PEOPLE, action, kind, subject.toString(), "{\"name\":\"" + name(i) + "\"}",
                Sha256.of("line " + i), Sha256.of("line " + (i + 1)));
    }

    private void record() throws SQLException {
        long first = 1_000;
        insert("audit_event", "sequence_number, happened_at, actor, action, subject_kind, subject_id, detail, previous_hash, hash", RECORD_LINES,
                i -> i % BUSY == 0 ? projectLine(first, i) : line(first, i, "bank saved", "bank", banks.get(i % banks.size())));
        insert("origin_audit_event", "sequence_number, happened_at, actor, action, subject_kind, subject_id, detail, previous_hash, hash, chain",
                ORIGIN_LINES, i -> Stream.concat(Arrays.stream(projectLine(1, i)), Stream.of(origin())).toArray());
        try (PreparedStatement statement = connection.prepareStatement("update audit_head set sequence_number = ?, hash = ? where id = 1")) {
            statement.setLong(1, first + RECORD_LINES - 1);
            statement.setString(2, Sha256.of("line " + RECORD_LINES));
            statement.executeUpdate();
        }
        connection.commit();
    }
}
