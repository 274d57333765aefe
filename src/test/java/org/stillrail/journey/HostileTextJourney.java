package org.stillrail.journey;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.FilePayload;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.test.context.TestPropertySource;
import org.stillrail.account.Accounts;
import org.stillrail.account.CurrentPerson;
import org.stillrail.electrical.capacitor.Technology;
import org.stillrail.support.Endpoint;
import org.stillrail.support.TestPeople;

/**
 * Whatever somebody types into any text field of any form is shown as text wherever it comes up again. On a database of its own,
 * which no other journey has to look at.
 */
@Browsing
@TestPropertySource(properties = "spring.datasource.url=jdbc:h2:mem:hostile;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH"
        + ";LOCK_TIMEOUT=10000;DB_CLOSE_DELAY=-1")
class HostileTextJourney {

    /** What a page asks back in the same address or fragment, or that is no page to read. */
    private static final Pattern NO_PAGE = Pattern.compile(".*(\\.(csv|json|pdf)|/raw|/content|/export/.*|/form-token)(\\?.*)?");
    private static final Pattern FORMULA = Pattern.compile("[=@+-].*", Pattern.DOTALL);
    private static final Pattern NUMBER = Pattern.compile("[+-]?[0-9.]+([eE][+-]?[0-9]+)?");

    /** Fields whose text is not kept by the button that sends the rest of their form. */
    private static final Set<String> NOT_KEPT = Set.of("POST /projects/*/rails/new, presetName", "POST /rails/*/edit, presetName",
            "POST /banks/*/revisions/#/bench, bandwidth", "POST /banks/*/revisions/#/bench, delay");

    private static final Map<String, String> RAIL = Map.ofEntries(
            Map.entry("nominalVoltage", "3.3"), Map.entry("nominalCurrent", "4"), Map.entry("inputMinimum", "10.8"), Map.entry("inputNominal", "12"),
            Map.entry("inputMaximum", "13.2"), Map.entry("phases", "1"), Map.entry("inductance", "2u2"), Map.entry("resistance", "12m"),
            Map.entry("switching", "500k"), Map.entry("currentLimit", "10"), Map.entry("ramp", "1"), Map.entry("crossover", "40k"),
            Map.entry("phaseMargin", "55"), Map.entry("ripple", "1u"), Map.entry("windowPlus", "165m"), Map.entry("windowMinus", "165m"),
            Map.entry("setPointAccuracy", "33m"), Map.entry("regulation", "10m"), Map.entry("stepFrom", "1"), Map.entry("stepTo", "4"), Map.entry("stepSlew", "2.5M"),
            Map.entry("stepDeviation", "100m"), Map.entry("leastPhaseMargin", "45"), Map.entry("leastGainMargin", "8"), Map.entry("esrMinimum", "1m"), Map.entry("esrMaximum", "100m"), Map.entry("ambientMinimum", "-20"),
            Map.entry("ambientNominal", "25"), Map.entry("ambientMaximum", "60"), Map.entry("life", "40000"), Map.entry("startUpRamp", "4m"),
            Map.entry("startUpLoad", "1"), Map.entry("bleedResistance", "1k"), Map.entry("height", "8m"), Map.entry("area", "250"), Map.entry("cost", "5"));

    private final ApplicationContext context;
    private final HostileForms forms = new HostileForms();
    private final List<String> visited = new ArrayList<>();

    @Autowired
    HostileTextJourney(ApplicationContext context) {
        this.context = context;
    }

    @Test
    void markupAndScriptsAreShownAsTheyWereTyped(Visitor stranger, Visitor author, Visitor reviewer) throws IOException {
        for (Visitor each : List.of(stranger, author, reviewer)) {
            List.of(400, 401, 409, 422).forEach(each::expectStatus);
        }
        stranger.open("/sign-in");
        forms.ask(stranger, "form[action='/sign-in']");
        CurrentPerson person = TestPeople.ofEveryRole(context.getBean(Accounts.class), forms.nextBrief());
        author.open("/sign-in");
        author.fill("User name", person.userName());
        author.fill("Password", TestPeople.PASSWORD);
        send(author, "Sign in");
        author.rests();
        reviewer.signInAs("reviewer");

        people(author);
        parts(author);
        projectWithRail(author);
        banks(author, reviewer);
        questions(author);

        Set<String> missing = new LinkedHashSet<>();
        String shown = walk(author, missing);
        assertThat(missing).as("text fields that nothing was typed into").isEmpty();
        Map<String, String> unseen = new LinkedHashMap<>(forms.accepted());
        unseen.keySet().removeIf(shown::contains);
        unseen.values().removeAll(NOT_KEPT);
        assertThat(unseen.values()).as("fields whose text is shown nowhere as it was typed").isEmpty();
        for (Visitor each : List.of(stranger, author, reviewer)) {
            assertThat(each.questions()).as("dialogs that a script opened").isEmpty();
        }
    }

    private void people(Visitor author) {
        author.open("/people/new");
        author.page().locator("main input[type=checkbox]").first().check();
        forms.store(author, "main form", Map.of("userName", "hostile.one", "displayName", forms.nextBrief()));
        visit(author);
        author.open("/account");
        forms.store(author, "form[action='/account/tokens']", Map.of("name", forms.nextBrief()));
        author.open("/settings");
        // A rule without a figure keeps no source.
        forms.store(author, "main form", Stream.of(Technology.values()).collect(Collectors.toMap(technology -> technology.key() + ".stress.ripple", technology -> "80")));
    }

    private void parts(Visitor author) {
        Page page = author.page();
        author.open("/library/parts/new");
        forms.store(author, "main form", Map.of("technology", "ceramic-2", "capacitance", "22u", "ratedVoltage", "16"));
        visit(author);
        String part = page.url();
        visited.add(visited.get(visited.size() - 1) + "/revisions/1");
        author.follow("Correct the figures");
        forms.store(author, "main form", Map.of());
        forms.store(author, "form[action$='/exemptions']", Map.of());
        author.open("/library/fixtures");
        forms.store(author, "main form", Map.of("measuredOn", "2031-01-01"),
                new FilePayload(HostileText.FILE_NAME + ".s2p", "text/plain", DemoFiles.sweep("heron-470u-25-a.s2p")));

        sweep(author, part);
        author.open(part);
        forms.store(author, "form[action$='/model']", Map.of());
        forms.store(author, "form[action$='/vetting']", Map.of("vetting", "proposed"));
        forms.ask(author, "main form[method=get]");
        visit(author);

        author.open("/library/bulk");
        forms.ask(author, "main form");
        String header = "partNumber,maker,technology,capacitance,toleranceMinus,tolerancePlus,ratedVoltage,note";
        page.locator("#csv").fill(header + ",\"" + forms.next().replace("\"", "\"\"") + "\"\nX,Y,film,1u,10,10,63,,\n");
        send(author, "Preview");
        check(author);
        List<String> cells = List.of(forms.next(), forms.next(), forms.next());
        page.locator("#csv").fill(header + "\n" + quoted(cells.get(0)) + "," + quoted(cells.get(1)) + ",film,1u,10,10,63," + quoted(cells.get(2)) + "\n");
        send(author, "Preview");
        author.sees("1 new");
        check(author);
        send(author, "Store all of it");
        author.rests();
        author.open("/library?text=no.");
        check(author);
        cells.subList(0, 2).forEach(cell -> assertThat(HostileText.shownOn(page)).contains(cell));
    }

    /** A text file with hostile headings under a hostile name. */
    private void sweep(Visitor author, String part) {
        Page page = author.page();
        author.open(part + "/sweeps/new");
        StringBuilder csv = new StringBuilder("Frequency (Hz) " + HostileText.FILE_NAME + ",R (Ohm) " + HostileText.FILE_NAME + ",X (Ohm)\n");
        for (int i = 0; i <= 20; i++) {
            double hz = Math.pow(10, 3 + i / 5.0);
            csv.append(hz).append(",0.01,").append(2 * Math.PI * hz * 1e-9 - 1 / (2 * Math.PI * hz * 22e-6)).append('\n');
        }
        author.rests();
        page.waitForResponse(answer -> answer.url().endsWith("/preview"), () -> page.locator("#file").setInputFiles(
                new FilePayload(HostileText.FILE_NAME + ".csv", "text/csv", csv.toString().getBytes(StandardCharsets.UTF_8))));
        author.rests();
        assertThat(HostileText.shownOn(page)).contains(HostileText.FILE_NAME + ".csv", "R (Ohm) " + HostileText.FILE_NAME);
        forms.store(author, "#import", Map.of("fixture", "impedance", "measuredOn", "2031-01-01", "block", "", "unit1", "Hz", "unit2", "ohm", "unit3", "ohm",
                "column1", "frequency", "column2", "resistance", "column3", "reactance"));
        forms.store(author, "form[action$='/findings/accept']", Map.of());
        visit(author);
    }

    private void projectWithRail(Visitor author) {
        author.open("/projects");
        forms.store(author, "main form[method=post]", Map.of());
        visit(author);
        author.follow("Add a rail");
        forms.store(author, "main form[method=post]", RAIL);
        visit(author);
        visited.add(visited.get(visited.size() - 1) + "/revisions/1");
        author.follow("Change what is asked");
        String preset = forms.next();
        author.fill("Keep as preset", preset);
        send(author, "Keep as a preset");
        check(author);
        assertThat(HostileText.shownOn(author.page())).contains(preset);
        forms.store(author, "main form[method=post]", RAIL);
    }

    private void banks(Visitor author, Visitor reviewer) throws IOException {
        Page page = author.page();
        author.open("/scratch");
        BankPage bank = new BankPage(author);
        bank.addBranch();
        bank.choosePart(2, "SPARROW-22U-10");
        page.getByText("Converter and load are one node").click();
        bank.redrawing(() -> page.getByLabel("Between them lies").selectOption("PLANE"));
        page.evaluate("document.querySelectorAll('details').forEach(details => { details.open = true; })");
        bank.redrawing(() -> bank.field(2, "Mounting comes from").selectOption("geometry"));
        page.evaluate("document.querySelectorAll('details').forEach(details => { details.open = true; })");
        bank.redrawing(() -> bank.field(1, "Mounting comes from").selectOption("shorted"));
        forms.store(author, "#bank", Map.of());
        visit(author);

        author.open(rail());
        author.follow("Compose a bank");
        forms.store(author, "#bank", Map.of());
        visit(author);
        String own = page.url();
        forms.store(author, "#bank", Map.of());
        forms.store(author, "form[action$='/submit']", Map.of());
        forms.store(author, "form[action$='/comments']", Map.of());
        visit(author);
        reviewer.open(own);
        forms.store(reviewer, "form[action$='/return']", Map.of());
        check(reviewer);
        author.open(own);
        send(author, "Save as revision 3");
        forms.store(author, "form[action$='/submit']", Map.of());
        reviewer.open(own);
        forms.store(reviewer, "form[action$='/approve']", Map.of("password", Visitor.PASSWORD));
        author.open(own);
        page.locator("a[href$='/bench']").first().click();
        author.rests();
        forms.store(author, "main form", Map.of("fixture", "impedance", "measuredOn", "2031-01-01"),
                new FilePayload(HostileText.FILE_NAME + ".csv", "text/csv", BenchJourney.board()));
        visit(author);
        List.of("1", "2", "3").forEach(number -> visited.add(own.replaceFirst("^https?://[^/]+", "") + "/revisions/" + number));
        files(author, own);
        reviewer.open(own);
        forms.store(reviewer, "form[action$='/recall']", Map.of());
        check(reviewer);
    }

    /** The address of the rail whose bank is to be composed. */
    private String rail() {
        return visited.stream().filter(address -> address.contains("/rails/")).findFirst().orElseThrow();
    }

    /** What leaves the program: a table that calculates nothing, and a report with the text as it was typed. */
    private void files(Visitor author, String bank) throws IOException {
        for (String path : List.of("/library/parts.csv", bank + "/revisions/3/bom.csv")) {
            for (CSVRecord line : CSVParser.parse(fetched(author, path).text(), CSVFormat.DEFAULT)) {
                assertThat(line).as("cells of " + path).noneMatch(cell -> FORMULA.matcher(cell).matches() && !NUMBER.matcher(cell).matches());
            }
        }
        try (PDDocument report = Loader.loadPDF(fetched(author, bank + "/revisions/3/report.pdf").body())) {
            String text = new PDFTextStripper().getText(report).replaceAll("\\s", "");
            assertThat(text).contains("<zz-ranonclick=window.ran=1>x</zz-ran>", "zq${7*7}zq");
            assertThat(text).doesNotContain("zq49zq");
        }
        author.open("/projects/import");
        APIResponse file = fetched(author, visited.stream().filter(address -> address.contains("/projects/")).findFirst().orElseThrow() + "/export.json");
        author.page().locator("#file").setInputFiles(new FilePayload(HostileText.FILE_NAME + ".json", "application/json", file.body()));
        author.sees("Nothing was stored");
        check(author);
        author.page().locator("#file").setInputFiles(new FilePayload("x.json", "application/json",
                ("{\"" + HostileText.FILE_NAME + "\": 1}").getBytes(StandardCharsets.UTF_8)));
        author.sees("Not a readable ProjectFile");
        check(author);
    }

    private static APIResponse fetched(Visitor visitor, String path) {
        APIResponse answer = visitor.page().request().get(path);
        assertThat(answer.status()).as(path).isEqualTo(200);
        return answer;
    }

    /** Forms that only ask. */
    private void questions(Visitor author) {
        author.open("/library");
        forms.ask(author, "main form[method=get]");
        author.open("/projects?text=no.");
        forms.ask(author, "main form[method=get]");
        author.open("/prior-designs?voltage=3.3&current=5&switching=500k");
        forms.ask(author, "main form[method=get]");
        author.open("/compare?find=no.");
        visit(author);
        forms.ask(author, "main form[method=get]");
        author.open("/find?q=no.");
        visit(author);
        forms.ask(author, "form.find");
        author.openBank("Electrolytic with ceramics");
        author.follow("How does it spread?");
        forms.ask(author, "main form[method=get]");
    }

    private static String quoted(String cell) {
        return "\"" + cell.replace("\"", "\"\"") + "\"";
    }

    private static void send(Visitor visitor, String button) {
        visitor.rests();
        visitor.page().waitForNavigation(() -> visitor.press(button));
    }

    private static void check(Visitor visitor) {
        visitor.rests();
        assertThat(HostileText.effectsOn(visitor.page())).as("on " + visitor.page().url()).isEmpty();
    }

    /** Looks at the page that a form led to, and remembers it for the walk. */
    private void visit(Visitor visitor) {
        check(visitor);
        visited.add(visitor.page().url().replaceFirst("^https?://[^/]+", ""));
    }

    /**
     * Opens one page of each kind, those of the hostile things first.
     *
     * @param missing is given the text fields that nothing was typed into
     * @return all that the pages show
     */
    private String walk(Visitor visitor, Set<String> missing) {
        List<Endpoint> endpoints = Endpoint.all(context).stream().filter(endpoint -> endpoint.method().equals("GET")).toList();
        Map<Endpoint, Integer> opened = new HashMap<>();
        Deque<String> open = new ArrayDeque<>(visited);
        open.addAll(List.of("/", "/library", "/projects", "/waiting", "/audit", "/settings", "/people", "/scratch", "/account"));
        Set<String> seen = new HashSet<>();
        StringBuilder shown = new StringBuilder();
        while (!open.isEmpty()) {
            String address = open.remove();
            Endpoint kind = endpoints.stream().filter(endpoint -> endpoint.fits(address.replaceFirst("\\?.*", "")))
                    .min((a, b) -> Boolean.compare(a.hasVariables(), b.hasVariables())).orElse(null);
            boolean hostile = visited.contains(address);
            if (kind == null || !seen.add(address) || NO_PAGE.matcher(address).matches() || !hostile && opened.getOrDefault(kind, 0) > 0) {
                continue;
            }
            opened.merge(kind, 1, Integer::sum);
            visitor.open(address);
            check(visitor);
            shown.append(HostileText.shownOn(visitor.page())).append('\n');
            HostileForms.fieldsOn(visitor.page()).stream().filter(field -> !forms.typedInto().contains(field)).map(field -> field + " on " + kind.path()).forEach(missing::add);
            open.addAll(links(visitor.page()));
        }
        return shown.toString();
    }

    @SuppressWarnings("unchecked")
    private static List<String> links(Page page) {
        return (List<String>) page.evaluate("[...document.querySelectorAll('main a[href^=\"/\"]')].map(link => link.getAttribute('href').split('#')[0])");
    }
}
