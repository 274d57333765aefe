package org.stillrail;

import java.net.URI;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.UUID;
import javax.sql.DataSource;
import org.springframework.boot.SpringApplication;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors;
import org.springframework.security.test.web.servlet.setup.SecurityMockMvcConfigurers;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockMvcRequestBuilders;
import org.springframework.test.web.servlet.setup.MockMvcBuilders;
import org.springframework.web.context.WebApplicationContext;
import org.stillrail.account.Accounts;
import org.stillrail.account.CurrentPerson;
import org.stillrail.account.Role;
import org.stillrail.bank.BankDocument;
import org.stillrail.bank.BranchDocument;
import org.stillrail.document.CanonicalJson;
import org.stillrail.document.Sha256;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.capacitor.Technology;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.library.LossFigure;
import org.stillrail.library.ModelChoice;
import org.stillrail.library.PartDocument;
import org.stillrail.project.RailDocument;
import org.stillrail.support.TeamBench;
import org.stillrail.support.TestDatabase;

/**
 * How long list pages take with 10,000 parts, 100,000 sweeps, 2,000 projects and 20,000 bank revisions: the whole way through
 * filters, queries and templates, without the network. Prints the 95th percentile of every page and its
 * ratio to 150 ms; the exit code says whether all are below 1.
 */
public final class ListBenchmark {

    private static final long SEED = 20260101;
    private static final int PARTS = 10_000;
    private static final int SWEEPS = 100_000;
    private static final int PROJECTS = 2_000;
    private static final int RAILS_OF_A_PROJECT = 2;
    private static final int BANK_REVISIONS = 20_000;
    private static final int REVISIONS_OF_A_BANK = 2;
    private static final int BATCH = 1_000;
    private static final int WARM_UP = 15;
    private static final int RUNS = 100;
    private static final double LIMIT_MS = 150;
    private static final OffsetDateTime AT = OffsetDateTime.of(2031, 1, 1, 9, 0, 0, 0, ZoneOffset.UTC);

    private final Random random = new Random(SEED);
    private final DataSource dataSource;
    private final CurrentPerson person;
    private final List<UUID> parts = new ArrayList<>();
    private final List<UUID> partRevisions = new ArrayList<>();
    private final List<UUID> projects = new ArrayList<>();
    private final List<UUID> rails = new ArrayList<>();
    private final List<UUID> railRevisions = new ArrayList<>();

    private ListBenchmark(DataSource dataSource, CurrentPerson person) {
        this.dataSource = dataSource;
        this.person = person;
    }

    /** @param arguments {@code h2} (in memory, unlike production's file) or {@code postgresql} (embedded) */
    public static void main(String[] arguments) throws Exception {
        boolean postgres = arguments.length > 0 && arguments[0].equals("postgresql");
        String url = postgres ? TestDatabase.emptyPostgresUrl() : TestDatabase.emptyH2Url();
        boolean fast;
        try (ConfigurableApplicationContext context = SpringApplication.run(StillrailApplication.class,
                "--spring.datasource.url=" + url, "--server.port=0", "--logging.level.root=warn")) {
            Accounts accounts = context.getBean(Accounts.class);
            CurrentPerson person = accounts.add("bench", "Bench", EnumSet.allOf(Role.class),
                    "four plain words here", "bench");
            ListBenchmark benchmark = new ListBenchmark(context.getBean(DataSource.class), person);
            benchmark.fill();
            fast = benchmark.measure((WebApplicationContext) context, postgres ? "PostgreSQL" : "H2");
        }
        System.exit(fast ? 0 : 1);
    }

    private boolean measure(WebApplicationContext context, String engine) throws Exception {
        MockMvc mvc = MockMvcBuilders.webAppContextSetup(context).apply(SecurityMockMvcConfigurers.springSecurity()).build();
        Map<String, String> pages = new LinkedHashMap<>();
        pages.put("library, first page", "/library");
        pages.put("library, last page", "/library?page=200");
        pages.put("library, by text", "/library?text=77");
        pages.put("library, by technology and capacitance", "/library?technology=film&capacitanceFrom=10u&capacitanceTo=100u");
        pages.put("projects, first page", "/projects");
        pages.put("projects, last page", "/projects?page=80");
        pages.put("projects, by text", "/projects?text=19");
        pages.put("one project", "/projects/" + projects.get(PROJECTS / 2));
        pages.put("one rail", "/rails/" + rails.get(0));
        pages.put("prior designs", "/prior-designs?voltage=3.3&current=5&switching=500k&step=2");
        pages.put("search", "/find?q=77");
        pages.put("waiting", "/waiting");
        pages.put("record", "/audit");
        boolean fast = true;
        System.out.printf(Locale.ROOT, "%s: %d parts, %d sweeps, %d projects, %d bank revisions%n", engine, PARTS, SWEEPS, PROJECTS, BANK_REVISIONS);
        for (Map.Entry<String, String> page : pages.entrySet()) {
            double[] ms = new double[RUNS];
            for (int i = -WARM_UP; i < RUNS; i++) {
                long start = System.nanoTime();
                int status = mvc.perform(MockMvcRequestBuilders.get(URI.create(page.getValue()))
                        .with(SecurityMockMvcRequestPostProcessors.user(person))).andReturn().getResponse().getStatus();
                if (status != 200) {
                    throw new IllegalStateException(page.getValue() + " answered " + status);
                }
                if (i >= 0) {
                    ms[i] = (System.nanoTime() - start) / 1e6;
                }
            }
            Arrays.sort(ms);
            double p95 = ms[(int) Math.ceil(0.95 * RUNS) - 1];
            fast &= p95 < LIMIT_MS;
            System.out.printf(Locale.ROOT, "%-42s p50 %7.1f ms   p95 %7.1f ms   ratio %.2f%n", page.getKey(), ms[RUNS / 2], p95, p95 / LIMIT_MS);
        }
        return fast;
    }

    private interface Filler {
        void row(PreparedStatement statement, int index) throws SQLException;
    }

    private void insert(Connection connection, String sql, int rows, Filler filler) throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement(sql)) {
            for (int i = 0; i < rows; i++) {
                filler.row(statement, i);
                statement.addBatch();
                if (i % BATCH == BATCH - 1 || i == rows - 1) {
                    statement.executeBatch();
                }
            }
        }
    }

    private static void set(PreparedStatement statement, Object... values) throws SQLException {
        for (int i = 0; i < values.length; i++) {
            statement.setObject(i + 1, values[i]);
        }
    }

    private void fill() throws SQLException {
        try (Connection connection = dataSource.getConnection()) {
            connection.setAutoCommit(false);
            library(connection);
            projects(connection);
            banks(connection);
            connection.commit();
        }
    }

    private static UUID add(List<UUID> to) {
        UUID id = UUID.randomUUID();
        to.add(id);
        return id;
    }

    private void library(Connection connection) throws SQLException {
        insert(connection, "insert into part (id, part_number, maker, vetting, latest_number, version) values (?, ?, ?, ?, 1, 0)", PARTS,
                (statement, i) -> set(statement, add(parts), String.format(Locale.ROOT, "BENCH-%05d", i), "Maker " + i % 40,
                        List.of("PROPOSED", "VETTED", "RESTRICTED", "WITHDRAWN").get(i % 4)));
        insert(connection, """
                insert into part_revision (id, subject_id, number, author_id, author, made_at, document, sha256, technology, capacitance_f,
                  rated_voltage_v) values (?, ?, 1, ?, ?, ?, ?, ?, ?, ?, ?)""", PARTS, (statement, i) -> {
            Technology technology = Technology.values()[i % Technology.values().length];
            double capacitanceF = Math.pow(10, -8 + 5 * random.nextDouble());
            String json = CanonicalJson.write(part(i, technology, capacitanceF));
            set(statement, add(partRevisions), parts.get(i), person.id(), "Bench", AT, json, Sha256.of(json), technology.key(), capacitanceF, 25.0);
        });
        insert(connection, "insert into raw_file (sha256, size_bytes, content) values (?, 1, ?)", 1, (statement, i) -> set(statement, "0".repeat(64), new byte[1]));
        insert(connection, """
                insert into sweep (id, part_id, raw_sha256, file_name, importer_id, importer, imported_at, document, sha256, points, start_hz, stop_hz)
                values (?, ?, ?, ?, ?, ?, ?, ?, ?, 1, 1000, 1000)""", SWEEPS, (statement, i) -> set(statement, UUID.randomUUID(),
                parts.get(i % PARTS), "0".repeat(64), "sweep-" + i + ".s2p", person.id(), "Bench", AT, "{}", "0".repeat(64)));
    }

    private static PartDocument part(int i, Technology technology, double capacitanceF) {
        return new PartDocument(String.format(Locale.ROOT, "BENCH-%05d", i), "Maker " + i % 40, technology, capacitanceF,
                new PartDocument.Tolerance(20, 20), 25, List.of(new LossFigure(LossFigure.Kind.ESR, 0.01, 100e3, LossFigure.Bound.MAXIMUM)), 1e-9,
                null, null, null, null, null, null, null, 3e-3, 2e-3, 2e-3, null, null, ModelChoice.DATASHEET, null, null);
    }

    private void projects(Connection connection) throws SQLException {
        insert(connection, "insert into project (id, name, purpose, created_by, created_at, version) values (?, ?, ?, 'Bench', ?, 0)", PROJECTS,
                (statement, i) -> set(statement, add(projects), String.format(Locale.ROOT, "Project %04d", i), "Made to be listed", AT));
        insert(connection, "insert into project_member (project_id, person_id) values (?, ?)", PROJECTS,
                (statement, i) -> set(statement, projects.get(i), person.id()));
        int count = PROJECTS * RAILS_OF_A_PROJECT;
        insert(connection, "insert into rail (id, project_id, name, latest_number, version) values (?, ?, ?, 1, 0)", count,
                (statement, i) -> set(statement, add(rails), projects.get(i / RAILS_OF_A_PROJECT), "Rail " + i % RAILS_OF_A_PROJECT));
        insert(connection, """
                insert into rail_revision (id, subject_id, number, author_id, author, made_at, document, sha256, nominal_voltage_v,
                  nominal_current_a, switching_hz, load_step_a) values (?, ?, 1, ?, 'Bench', ?, ?, ?, ?, ?, ?, null)""", count, (statement, i) -> {
            RailFigures figures = TeamBench.figures(0.8 + 10 * random.nextDouble(), 1 + 30 * random.nextDouble(), 2e5 + 1e6 * random.nextDouble(), null);
            String json = CanonicalJson.write(new RailDocument("Made to be listed", figures));
            set(statement, add(railRevisions), rails.get(i), person.id(), AT, json, Sha256.of(json), figures.nominalVoltageV(),
                    figures.nominalCurrentA(), figures.converter().switchingHz());
        });
    }

    private void banks(Connection connection) throws SQLException {
        int count = BANK_REVISIONS / REVISIONS_OF_A_BANK;
        List<UUID> banks = new ArrayList<>();
        List<UUID> revisions = new ArrayList<>();
        insert(connection, "insert into bank (id, rail_id, owner_id, owner, name, latest_number, version) values (?, ?, ?, 'Bench', ?, ?, 0)", count,
                (statement, i) -> set(statement, add(banks), rails.get(i % rails.size()), person.id(), "Bank " + i, REVISIONS_OF_A_BANK));
        insert(connection, """
                insert into bank_revision (id, subject_id, number, author_id, author, made_at, document, sha256, rail_revision_id)
                values (?, ?, ?, ?, 'Bench', ?, ?, ?, ?)""", BANK_REVISIONS, (statement, i) -> {
            int bank = i / REVISIONS_OF_A_BANK;
            UUID railRevision = railRevisions.get(bank % rails.size());
            String json = CanonicalJson.write(new BankDocument(railRevision, null, List.of(branch(i), branch(i + 1)), null));
            set(statement, add(revisions), banks.get(bank), 1 + i % REVISIONS_OF_A_BANK, person.id(), AT, json, Sha256.of(json), railRevision);
        });
        insert(connection, "insert into bank_revision_state (revision_id, state, version) values (?, ?, 0)", BANK_REVISIONS,
                (statement, i) -> set(statement, revisions.get(i), List.of("SUPERSEDED", "APPROVED", "IN_WORK", "IN_WORK", "RETURNED", "IN_WORK").get(i % 6)));
        insert(connection, "insert into bank_part (revision_id, part_id, part_revision_id) values (?, ?, ?)", 2 * BANK_REVISIONS, (statement, i) -> {
            int part = (i / 2 + i % 2) % PARTS;
            set(statement, revisions.get(i / 2), parts.get(part), partRevisions.get(part));
        });
    }

    private BranchDocument branch(int i) {
        int part = i % PARTS;
        return new BranchDocument("branch", 2, parts.get(part), partRevisions.get(part), null, SeriesPath.NONE, SeriesPath.NONE);
    }
}
