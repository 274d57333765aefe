package org.stillrail.bank;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;
import org.stillrail.StillrailApplication;
import org.stillrail.support.PageClient;
import org.stillrail.support.TestDatabase;

/**
 * How long a change on the bank page takes to answer: six branches of library parts on 1,000 points, judged against a rail with
 * every limit, over HTTP on this machine. Not part of the tests; {@code mvn -q test -Dtest=PreviewBenchmark} prints it.
 */
class PreviewBenchmark {

    private static final double TARGET_MS = 150;
    private static final int WARM_UP = 100;
    private static final int RUNS = 200;
    private static final List<String> PARTS = List.of(
            "HERON-470U-25", "WREN-100U-25", "SPARROW-22U-10", "SPARROW-10U-25", "SPARROW-1U-25", "SPARROW-100N-50");

    @Test
    void print() throws Exception {
        try (ConfigurableApplicationContext server = new SpringApplicationBuilder(StillrailApplication.class)
                .profiles("demo")
                .run("--spring.datasource.url=" + TestDatabase.emptyH2Url(), "--server.port=0", "--spring.main.banner-mode=off")) {
            int port = server.getEnvironment().getRequiredProperty("local.server.port", Integer.class);
            PageClient engineer = new PageClient(port).signIn("engineer", "quiet-rails-demo");
            String rail = first("href=\"(/rails/[0-9a-f-]{36})\">Logic 5V0", engineer.get("/projects"));
            String page = engineer.get(rail + "/banks/new");
            Map<String, String> bank = bank(page, engineer);
            measure("The figures and pictures of a change", engineer, "/banks/preview", "impedance-data", bank);
            measure("The verdicts over all corners, which follow", engineer, "/banks/judgement", "id=\"claim\"", bank);
        }
    }

    private static Map<String, String> bank(String page, PageClient engineer) throws Exception {
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("railRevision", first("name=\"railRevision\" value=\"([0-9a-f-]{36})\"", page));
        for (int branch = 0; branch < PARTS.size(); branch++) {
            fields.put("b" + branch + ".label", PARTS.get(branch));
            fields.put("b" + branch + ".part", first("data-id=\"([0-9a-f-]{36})\"", engineer.get("/banks/parts?text=" + PARTS.get(branch))));
            fields.put("b" + branch + ".mountingL", "1 nH");
        }
        return fields;
    }

    /** @param wanted stands in every answer that holds figures */
    private static void measure(String what, PageClient engineer, String path, String wanted, Map<String, String> bank) throws Exception {
        run(engineer, path, wanted, bank, WARM_UP);
        OperatingSystemMXBean machine = ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class);
        long before = machine.getProcessCpuTime();
        double[] elapsedMs = run(engineer, path, wanted, bank, RUNS);
        // Of server and client together; a busy machine does not lengthen it.
        double processorMs = (machine.getProcessCpuTime() - before) / 1e6 / RUNS;
        Arrays.sort(elapsedMs);
        double p95 = elapsedMs[(int) Math.ceil(0.95 * RUNS) - 1];
        System.out.printf(Locale.ROOT, "%n%s, %d branches: p50 %.0f ms, p95 %.0f ms, longest %.0f ms, processor time %.0f ms each; p95 is "
                + "%.2f of the %.0f ms that a change may take%n",
                what, PARTS.size(), elapsedMs[RUNS / 2], p95, elapsedMs[RUNS - 1], processorMs, p95 / TARGET_MS, TARGET_MS);
    }

    private static double[] run(
            PageClient engineer, String path, String wanted, Map<String, String> bank, int times) throws Exception {
        double[] elapsedMs = new double[times];
        for (int i = 0; i < times; i++) {
            // Another bank each time: nothing that was worked out before helps.
            for (int branch = 0; branch < PARTS.size(); branch++) {
                bank.put("b" + branch + ".count", Integer.toString(1 + (i / (branch + 1)) % 9));
            }
            long start = System.nanoTime();
            String answer = engineer.post(path, bank).body();
            elapsedMs[i] = (System.nanoTime() - start) / 1e6;
            if (!answer.contains(wanted)) {
                throw new IllegalStateException("No figures: " + answer);
            }
        }
        return elapsedMs;
    }

    private static String first(String pattern, String page) {
        Matcher found = Pattern.compile(pattern).matcher(page);
        if (!found.find()) {
            throw new IllegalStateException("Not on the page: " + pattern);
        }
        return found.group(1);
    }
}
