package org.stillrail.account;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.boot.test.system.CapturedOutput;
import org.springframework.boot.test.system.OutputCaptureExtension;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.stillrail.StillrailApplication;
import org.stillrail.support.TestDatabase;

/** Whole servers that start on one database. */
@ExtendWith(OutputCaptureExtension.class)
class InstallationTest {

    private static final Pattern CODE = Pattern.compile("works once: ([a-z2-9-]{29})");

    private static ConfigurableApplicationContext start(String url, String... profiles) {
        return new SpringApplicationBuilder(StillrailApplication.class)
                .profiles(profiles)
                .run("--spring.datasource.url=" + url, "--server.port=0", "--spring.main.banner-mode=off");
    }

    /** Two servers in one process write each line twice. */
    private static List<String> codes(CapturedOutput output) {
        return CODE.matcher(output.getAll()).results().map((MatchResult found) -> found.group(1)).distinct().toList();
    }

    private static long count(ConfigurableApplicationContext server, String table) {
        return server.getBean(JdbcClient.class).sql("select count(*) from " + table).query(Long.class).single();
    }

    @Test
    void twoServersThatStartAtOnceMakeOneSetupCode(CapturedOutput output) throws Exception {
        String url = TestDatabase.emptyPostgresUrl();
        CyclicBarrier together = new CyclicBarrier(2);
        ExecutorService starter = Executors.newFixedThreadPool(2);
        List<ConfigurableApplicationContext> servers = new ArrayList<>();
        try {
            List<Future<ConfigurableApplicationContext>> starts = new ArrayList<>();
            for (int server = 0; server < 2; server++) {
                starts.add(starter.submit(() -> {
                    together.await();
                    return start(url);
                }));
            }
            for (Future<ConfigurableApplicationContext> started : starts) {
                servers.add(started.get());
            }
            assertThat(codes(output)).hasSize(1);
            assertThat(output.getAll()).contains("Another server that started at");

            Accounts either = servers.get(1).getBean(Accounts.class);
            String code = codes(output).get(0);
            assertThat(either.setUp("not-the-code", "ada", "Ada", "a long password")).isEqualTo(Accounts.Setup.WRONG_CODE);
            assertThat(either.setUp(code, "ada", "Ada", "a long password")).isEqualTo(Accounts.Setup.DONE);
            assertThat(servers.get(0).getBean(Accounts.class).setUp(code, "eve", "Eve", "a long password"))
                    .isEqualTo(Accounts.Setup.TOO_LATE);
            assertThat(servers.get(0).getBean(People.class).all()).extracting(Person::userName).containsExactly("ada");
            assertThat(servers.get(0).getBean(People.class).all().get(0).roles()).containsExactly(Role.ADMINISTRATOR);
            theLastAdministratorStays(either, servers.get(1).getBean(People.class));
        } finally {
            starter.shutdown();
            servers.forEach(ConfigurableApplicationContext::close);
        }
    }

    private static void theLastAdministratorStays(Accounts accounts, People people) {
        Person ada = people.byUserName("ada").orElseThrow();
        assertThatThrownBy(() -> accounts.deactivate(ada, "ada")).isInstanceOf(LastAdministratorException.class);
        assertThatThrownBy(() -> accounts.changeRoles(ada, ada.roles(), Set.of(Role.VIEWER), "ada"))
                .isInstanceOf(LastAdministratorException.class);
        accounts.add("bea", "Bea", Set.of(Role.ADMINISTRATOR), "a long password", "ada");
        accounts.changeRoles(ada, ada.roles(), Set.of(Role.VIEWER), "ada");
        assertThat(people.withRole(Role.ADMINISTRATOR)).extracting(Person::userName).containsExactly("bea");
    }

    @Test
    void theDemoFillsAnEmptyDatabaseOnce() {
        String url = TestDatabase.emptyH2Url();
        long parts;
        try (ConfigurableApplicationContext first = start(url, "demo")) {
            assertThat(count(first, "person")).isEqualTo(DemoAccount.ALL.size());
            parts = count(first, "part");
        }
        try (ConfigurableApplicationContext second = start(url, "demo")) {
            assertThat(count(second, "person")).isEqualTo(DemoAccount.ALL.size());
            assertThat(count(second, "part")).isEqualTo(parts);
        }
    }

    @Test
    void withoutTheProfileADemoDatabaseIsRefused() {
        String url = TestDatabase.emptyH2Url();
        start(url, "demo").close();
        assertThatThrownBy(() -> start(url))
                .isInstanceOf(WrongInstallationException.class)
                .hasMessageContaining("filled by the demo");
    }

    @Test
    void theDemoRefusesADatabaseWithOtherData(CapturedOutput output) {
        String url = TestDatabase.emptyH2Url();
        try (ConfigurableApplicationContext team = start(url)) {
            team.getBean(Accounts.class).setUp(codes(output).get(0), "ada", "Ada", "a long password");
        }
        assertThatThrownBy(() -> start(url, "demo"))
                .isInstanceOf(WrongInstallationException.class)
                .hasMessageContaining("a team's own data");
        try (ConfigurableApplicationContext team = start(url)) {
            assertThat(count(team, "person")).isEqualTo(1);
            assertThat(count(team, "api_token")).isZero();
        }
    }

    @Test
    void aStartThatNobodyCompletedDoesNotKeepTheDemoOut() {
        String url = TestDatabase.emptyH2Url();
        start(url).close();
        start(url, "demo").close();
    }

    @Test
    void theDemosTokensAndPasswordsWork() {
        try (ConfigurableApplicationContext demo = start(TestDatabase.emptyH2Url(), "demo")) {
            TokenCheck check = demo.getBean(TokenCheck.class);
            Map<String, Role> tokens = Map.of(
                    "demo-viewer", Role.VIEWER, "demo-engineer", Role.ENGINEER, "demo-librarian", Role.LIBRARIAN,
                    "demo-reviewer", Role.REVIEWER, "demo-administrator", Role.ADMINISTRATOR);
            tokens.forEach((token, role) ->
                    assertThat(((TokenPrincipal) check.introspect(token)).person().roles()).isEqualTo(Set.of(role)));
            PasswordRules passwords = demo.getBean(PasswordRules.class);
            for (DemoAccount account : DemoAccount.ALL) {
                String hash = demo.getBean(PersonDetails.class).loadUserByUsername(account.userName()).getPassword();
                assertThat(passwords.matches(DemoAccount.PASSWORD, hash)).isTrue();
            }
        }
    }

    @Test
    void aChapterThatFailsLeavesTheDatabaseEmpty() {
        String url = TestDatabase.emptyH2Url();
        SpringApplicationBuilder broken = new SpringApplicationBuilder(StillrailApplication.class).profiles("demo")
                .initializers(context -> context.getBeanFactory().registerSingleton(
                        "brokenChapter", (DemoChapter) team -> { throw new IllegalStateException("torn page"); }));
        assertThatThrownBy(() -> broken.run("--spring.datasource.url=" + url, "--server.port=0"))
                .hasStackTraceContaining("torn page");
        try (ConfigurableApplicationContext team = start(url)) {
            assertThat(count(team, "person")).isZero();
        }
    }
}
