package org.stillrail;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import javax.sql.DataSource;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.web.server.context.WebServerApplicationContext;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.util.FileSystemUtils;
import org.stillrail.account.Accounts;
import org.stillrail.account.CurrentPerson;
import org.stillrail.account.Role;
import org.stillrail.support.LargeTeam;
import org.stillrail.support.PageClient;
import org.stillrail.support.StatementClock;
import org.stillrail.support.TestDatabase;

/**
 * How long list pages take for a {@link LargeTeam}, over HTTP with a session, as a browser asks for them. The limit is meant for
 * the 95th percentile on a machine with nothing else to do; the processor time of this process and the time in statements tell
 * on a busy one whether the pages or the neighbours are slow. The exit code says whether every page is below the limit.
 */
public final class ListBenchmark {

    private static final int WARM_UP = 30;
    private static final int RUNS = 100;
    private static final double LIMIT_MS = 150;
    private static final String PASSWORD = "four plain words here";

    private final OperatingSystemMXBean machine = (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
    private final PageClient client;
    private final StatementClock statements;

    private ListBenchmark(PageClient client, StatementClock statements) {
        this.client = client;
        this.statements = statements;
    }

    /** @param arguments {@code h2}, in a file as in production, or {@code postgresql}, embedded */
    public static void main(String[] arguments) throws Exception {
        boolean postgres = arguments.length > 0 && arguments[0].equals("postgresql");
        Path directory = Files.createTempDirectory("lists");
        String database = postgres
                ? "--spring.datasource.url=" + TestDatabase.emptyPostgresUrl() + "&reWriteBatchedInserts=true"
                : "--stillrail.data-directory=" + directory;
        boolean fast;
        try (ConfigurableApplicationContext context = new SpringApplication(StillrailApplication.class, StatementClock.class)
                .run(database, "--server.port=0", "--logging.level.root=error", "--spring.main.banner-mode=off")) {
            CurrentPerson person = context.getBean(Accounts.class).add("bench", "Bench", EnumSet.allOf(Role.class), PASSWORD, "bench");
            long start = System.nanoTime();
            LargeTeam team = LargeTeam.fill(context.getBean(DataSource.class), person.id());
            if (!postgres) {
                // Else H2 answers the same question from its memory as long as nobody writes.
                context.getBean(JdbcClient.class).sql("set optimize_reuse_results 0").update();
            }
            System.out.printf(Locale.ROOT, "%s: %d parts, %d sweeps, %d projects, %d bank revisions, filled in %.0f s%n", postgres ? "PostgreSQL" : "H2",
                    LargeTeam.PARTS, LargeTeam.SWEEPS, LargeTeam.PROJECTS, LargeTeam.BANK_REVISIONS, (System.nanoTime() - start) / 1e9);
            int port = ((WebServerApplicationContext) context).getWebServer().getPort();
            fast = new ListBenchmark(new PageClient(port).signIn("bench", PASSWORD), context.getBean(StatementClock.class)).measure(team);
        } finally {
            FileSystemUtils.deleteRecursively(directory);
        }
        System.exit(fast ? 0 : 1);
    }

    private static Map<String, String> pages(LargeTeam team) {
        Map<String, String> pages = new LinkedHashMap<>();
        pages.put("library, first page", "/library");
        pages.put("library, last page", "/library?page=200");
        pages.put("library, text that many parts hold", "/library?text=77");
        pages.put("library, text that no part holds", "/library?text=nowhere");
        pages.put("library, technology and capacitance", "/library?technology=film&capacitanceFrom=10u&capacitanceTo=100u");
        pages.put("library, state and voltage, last page", "/library?state=vetted&ratedVoltageFrom=16&page=50");
        pages.put("a part with its sweeps and uses", "/library/parts/" + team.part());
        pages.put("banks that a part's change touches", "/library/parts/" + team.part() + "/effects");
        pages.put("sweep import: fixtures, mappings", "/library/parts/" + team.part() + "/sweeps/new");
        pages.put("fixtures", "/library/fixtures");
        pages.put("parts in bulk", "/library/bulk");
        pages.put("projects, first page", "/projects");
        pages.put("projects, last page", "/projects?page=80");
        pages.put("projects, by text", "/projects?text=19");
        pages.put("rails of a project", "/projects/" + team.project());
        pages.put("banks of a rail, compare chooser", "/rails/" + team.rail());
        pages.put("prior designs", "/prior-designs?voltage=3.3&current=5&switching=500k&step=2");
        pages.put("prior designs, filtered", "/prior-designs?voltage=3.3&current=5&switching=500k&technology=film&project=19");
        pages.put("prior designs of a rail", "/prior-designs?rail=" + team.rail());
        pages.put("search, in many places", "/find?q=77");
        pages.put("search, in every comment", "/find?q=looked");
        pages.put("search, nowhere", "/find?q=nowhere");
        pages.put("waiting", "/waiting");
        pages.put("record, newest", "/audit");
        pages.put("record, older", "/audit?before=50000");
        pages.put("record of a project, newest", "/projects/" + team.project() + "/record");
        pages.put("record of a project, last page", "/projects/" + team.project() + "/record?page=100");
        pages.put("record of a project's origin", "/projects/" + team.project() + "/record?chain=" + team.origin() + "&page=200");
        pages.put("people", "/people");
        pages.put("settings", "/settings");
        pages.put("choice of a part, text that many hold", "/banks/parts?text=77");
        pages.put("choice of a part, text that none holds", "/banks/parts?text=nowhere");
        pages.put("banks to compare, in many places", "/compare?find=1");
        pages.put("banks to compare, nowhere", "/compare?find=nowhere");
        pages.put("a new bank: choice of parts", "/rails/" + team.rail() + "/banks/new");
        return pages;
    }

    private boolean measure(LargeTeam team) throws IOException, InterruptedException {
        System.out.printf(Locale.ROOT, "%-40s %8s %8s %6s %8s %8s %5s %8s%n", "", "p50 ms", "p95 ms", "ratio", "cpu ms", "sql ms", "sqls", "kB");
        boolean fast = true;
        for (Map.Entry<String, String> page : pages(team).entrySet()) {
            int size = 0;
            for (int i = 0; i < WARM_UP; i++) {
                size = client.bytes(page.getValue()).length;
            }
            double[] wallMs = new double[RUNS];
            statements.reset();
            long cpu = machine.getProcessCpuTime();
            for (int i = 0; i < RUNS; i++) {
                long start = System.nanoTime();
                client.bytes(page.getValue());
                wallMs[i] = (System.nanoTime() - start) / 1e6;
            }
            double cpuMs = (machine.getProcessCpuTime() - cpu) / 1e6 / RUNS;
            Arrays.sort(wallMs);
            double p95 = wallMs[(int) Math.ceil(0.95 * RUNS) - 1];
            fast &= p95 < LIMIT_MS;
            System.out.printf(Locale.ROOT, "%-40s %8.1f %8.1f %6.2f %8.1f %8.1f %5d %8.1f%n", page.getKey(), wallMs[RUNS / 2], p95, p95 / LIMIT_MS,
                    cpuMs, statements.milliseconds() / RUNS, statements.count() / RUNS, size / 1e3);
            if (Boolean.getBoolean("slowest")) {
                System.out.println("    " + statements.slowest());
            }
        }
        System.out.printf(Locale.ROOT, "Load of the machine at the end: %.1f on %d processors%n", machine.getSystemLoadAverage(), machine.getAvailableProcessors());
        return fast;
    }
}
