package org.stillrail.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.UUID;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.stillrail.account.CurrentPerson;
import org.stillrail.account.Role;
import org.stillrail.bank.Bank;
import org.stillrail.bank.BankDocument;
import org.stillrail.bank.Banks;
import org.stillrail.bank.BranchDocument;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.library.Library;
import org.stillrail.library.Part;
import org.stillrail.library.Vetting;
import org.stillrail.review.ReviewRecord;
import org.stillrail.review.ReviewRecords;
import org.stillrail.support.AppTest;
import org.stillrail.support.SettingsBench;
import org.stillrail.support.TeamBench;
import org.stillrail.support.TestPeople;
import org.stillrail.sweepfile.Fixture;
import org.stillrail.sweepfile.ReadOptions;
import org.stillrail.sweepfile.ReadSweep;
import org.stillrail.sweepfile.SweepReader;

@AppTest
class ReportTest {

    @Autowired
    private MockMvc mvc;

    @Autowired
    private TestPeople people;

    @Autowired
    private ApplicationContext context;

    @Autowired
    private Banks banks;

    @Autowired
    private Library library;

    @Autowired
    private ReviewRecords reviews;

    @Autowired
    private JdbcClient jdbc;

    private byte[] take(Bank bank, String what) throws Exception {
        return mvc.perform(get("/banks/" + bank.id() + "/revisions/" + bank.revision().number() + "/" + what).with(people.as(Role.VIEWER)))
                .andExpect(status().isOk()).andReturn().getResponse().getContentAsByteArray();
    }

    private static String text(PDDocument pdf) throws IOException {
        return new PDFTextStripper().getText(pdf).replace('\u00a0', ' ');
    }

    @Test
    void theReportNamesRailBankVerdictsAndHashWithPageNumbersAndItsOwnFonts() throws Exception {
        TeamBench bench = new TeamBench(context, people.with(Role.ENGINEER));
        Bank bank = bench.addBank(4);
        byte[] bytes = take(bank, "report.pdf");
        try (PDDocument pdf = Loader.loadPDF(bytes)) {
            String text = text(pdf);
            assertThat(text).contains("Review report: " + bank.name(), "4", bench.part().partNumber(), "100 \u00b5F", "10 mV", "in work, not approved",
                    bank.revision().sha256(), "Page 1 of " + pdf.getNumberOfPages(), "Nobody has signed");
            assertThat(text).as("headings of the tables, each on one line").contains("Requirement Outcome Limit Value Margin Worst corner",
                    "Branch Count Part Capacitance Rated Technology", "Branch Part Rests on Provenance");
            for (PDPage page : pdf.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    assertThat(page.getResources().getFont(name).isEmbedded()).as("font %s", name).isTrue();
                }
            }
        }
    }

    @Test
    void theReportShowsEachSignatureWithNameTimeMeaningAndWhatItIsBoundTo() throws Exception {
        CurrentPerson reviewer = people.another(Role.REVIEWER);
        Bank bank = new TeamBench(context, people.with(Role.ENGINEER)).addBank(4);
        String revision = "/banks/" + bank.id() + "/revisions/1";
        mvc.perform(post(revision + "/submit").with(people.as(Role.ENGINEER)).with(csrf())).andExpect(status().is3xxRedirection());
        String sha256 = reviews.of(bank).snapshot().sha256();
        mvc.perform(post(revision + "/approve").param("sha256", sha256).param("password", TestPeople.PASSWORD).with(people.as(reviewer)).with(csrf()))
                .andExpect(status().is3xxRedirection());
        ReviewRecord.Signed signature = reviews.of(banks.require(bank.id())).signatures().get(0);
        String time = signature.at().withOffsetSameInstant(ZoneOffset.UTC).format(DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm:ss"));
        try (PDDocument pdf = Loader.loadPDF(take(bank, "report.pdf"))) {
            String text = text(pdf).replaceAll("\\s+", "");
            String block = text.substring(text.indexOf("Signatures"), text.indexOf("RequirementOutcome"));
            assertThat(block).contains("Time(UTC)", reviewer.displayName().replace(" ", ""), time.replace(" ", ""),
                    "Ihavereviewedthisbankagainstitsrailandapproveitforuse.", sha256, "yes").doesNotContain("Nobody", "NO");
        }
        jdbc.sql("update review_signature set meaning = 'Looked at' where snapshot_id = :id").param("id", reviews.of(bank).snapshot().id()).update();
        try (PDDocument pdf = Loader.loadPDF(take(bank, "report.pdf"))) {
            assertThat(text(pdf)).contains("A signature does not hold for the stored snapshot.", "Looked at", "NO");
        }
        jdbc.sql("update review_signature set meaning = :meaning where snapshot_id = :id").param("id", reviews.of(bank).snapshot().id())
                .param("meaning", signature.meaning()).update();
    }

    /** Whoever files the report has no other page to see it on. */
    @Test
    void theReportSaysWhatHasChangedUnderTheBankSinceAndNamesTheEvidenceOfAlternates() throws Exception {
        CurrentPerson engineer = people.with(Role.ENGINEER);
        CurrentPerson librarian = people.with(Role.LIBRARIAN);
        TeamBench bench = new TeamBench(context, engineer);
        Part alternate = TeamBench.as(engineer, () -> library.propose(TeamBench.polymer("P-" + UUID.randomUUID(), 0.02), engineer));
        Bank bank = TeamBench.as(engineer, () -> banks.add(bench.rail().id(), "With a choice", new BankDocument(bench.rail().revision().id(), null,
                List.of(new BranchDocument("bulk", 2, bench.part().id(), bench.part().revision().id(), null, SeriesPath.NONE, SeriesPath.NONE,
                        null, null, List.of(new BranchDocument.Alternate(alternate.id(), alternate.revision().id())), null)), null), engineer));
        Part revised = bench.revisePart(0.03);
        TeamBench.as(librarian, () -> {
            library.changeVetting(revised.id(), revised.version(), Vetting.WITHDRAWN, "Not made any more", null, librarian);
            return null;
        });
        String text;
        try (PDDocument pdf = Loader.loadPDF(take(bank, "report.pdf"))) {
            text = text(pdf).replaceAll("\\s+", "");
        }
        String number = bench.part().partNumber();
        assertThat(text).contains("Caution:" + number + "hasrevision2,thisbankrestsonrevision1andiswithdrawn(Notmadeanymore).",
                "Caution:" + alternate.partNumber() + "isproposed.",
                "bulk,alternate" + alternate.partNumber() + "datasheet",
                "partrevision1:" + alternate.revision().sha256()).doesNotContain("Caution:" + number + "iswithdrawn");
    }

    @Test
    void aConcessionWhoseLastDayHasPassedIsACaution() {
        LocalDate last = LocalDate.of(2031, 3, 1);
        ReviewRecord review = new ReviewRecord(null, List.of(), List.of(new ReviewRecord.Accepted("Ripple", "For now", "Owner", last)), List.of());
        assertThat(ReportCautions.ofReview(review, last)).isEmpty();
        assertThat(ReportCautions.ofReview(review, last.plusDays(1)))
                .containsExactly("The concession on Ripple ended on 2031-03-01; its owner is Owner.");
    }

    @Test
    void signsThatEngineersNeedAreInTheFontAndHostileTextIsOnlyText() throws Exception {
        String sheet = "<html><head><style>body { font-family: Report }</style></head><body>\u03a9 \u00b5 \u2264 \u2265 \u00b1 \u2013</body></html>";
        try (PDDocument pdf = Loader.loadPDF(PdfWriter.write(sheet))) {
            assertThat(text(pdf)).contains("\u03a9 \u00b5 \u2264 \u2265 \u00b1 \u2013");
        }
        Bank bank = scratch("<script>x</script> & \u0001 \"=1\" ' </td>", "]]> <img src='file:///etc/hostname'/> &nbsp;");
        try (PDDocument pdf = Loader.loadPDF(take(bank, "report.pdf"))) {
            assertThat(text(pdf)).contains("<script>x</script> &", "<img src='file:///etc/hostname'/>");
        }
    }

    @Test
    void theBillOfMaterialsDefusesFormulas() throws Exception {
        Bank bank = scratch("=HYPERLINK(\"http://x\")", null);
        String csv = new String(take(bank, "bom.csv"), StandardCharsets.UTF_8);
        assertThat(csv.lines().toList().get(1)).startsWith("\"'=HYPERLINK(\"\"http://x\"\")\",2,");
        assertThat(csv.lines().count()).isEqualTo(2);
    }

    /** Two equal parts side by side halve the impedance of one, in whatever format it is taken away. */
    @Test
    void everyExportOfABankReadsBackAsItsImpedance() throws Exception {
        Bank bank = scratch("bulk", null);
        SeriesRlc one = new SeriesRlc(330e-6, 0.03, 5e-9);
        for (String format : List.of("touchstone-z", "touchstone-s", "csv")) {
            byte[] file = take(bank, "export/" + format);
            ReadSweep read = SweepReader.read(file, format.equals("csv") ? "bank.csv" : "bank.s1p",
                    ReadOptions.of(format.equals("csv") ? Fixture.IMPEDANCE : Fixture.REFLECTION));
            int last = read.frequencyHz().length - 1;
            double omega = 2 * Math.PI * read.frequencyHz()[last];
            assertThat(read.resistanceOhm()[last]).isCloseTo(one.resistanceOhm() / 2, Percentage.withPercentage(1e-6));
            assertThat(read.reactanceOhm()[last]).isCloseTo((omega * one.inductanceH() - 1 / (omega * one.capacitanceF())) / 2,
                    Percentage.withPercentage(1e-6));
            assertThat(new String(file, StandardCharsets.UTF_8)).contains("Bank " + bank.name() + ", revision 1, in work", bank.revision().sha256(),
                    "2 x bulk: figures typed", "at the nominal corner");
        }
        assertThat(new String(take(bank, "export/json"), StandardCharsets.UTF_8)).contains("\"frequencyHz\":[", "\"resistanceOhm\":[0.015",
                "\"reactanceOhm\":[", bank.revision().sha256());
    }

    @Test
    void theCurvesSayWhereTheyComeFromAndTheirColumnsHaveUnits() throws Exception {
        Bank bank = scratch("=bulk", null);
        List<String> lines = new String(take(bank, "curves.csv"), StandardCharsets.UTF_8).lines().toList();
        assertThat(lines.get(0)).isEqualTo("# Bank " + bank.name() + ", revision 1, in work");
        assertThat(lines).contains("# SHA-256 of the revision: " + bank.revision().sha256(), "# Calculated at the nominal corner",
                "frequency_Hz,bank_Re_ohm,bank_Im_ohm,branch 1 =bulk_Re_ohm,branch 1 =bulk_Im_ohm");
        assertThat(lines).anyMatch(line -> line.matches("100\\.0,0\\.015[0-9]*,-2\\.[0-9]+,0\\.015[0-9]*,-2\\.[0-9]+"));
    }

    /** Settings that change after a submission change what is worked out of other revisions, not of this one. */
    @Test
    void whatIsTakenAwayOfASubmittedRevisionRestsOnWhatWasFrozen() throws Exception {
        CurrentPerson engineer = people.with(Role.ENGINEER);
        TeamBench bench = new TeamBench(context, engineer);
        Bank submitted = bench.addBank(4);
        Bank open = bench.addBank(4);
        mvc.perform(post("/banks/" + submitted.id() + "/revisions/1/submit").with(people.as(engineer)).with(csrf())).andExpect(status().is3xxRedirection());
        String before = new String(take(submitted, "curves.csv"), StandardCharsets.UTF_8);
        String openBefore = new String(take(open, "curves.csv"), StandardCharsets.UTF_8);
        assertThat(before).contains("what was frozen when this revision was submitted");
        assertThat(openBefore).contains("settings of today");
        SettingsBench settings = new SettingsBench(context, people.with(Role.ADMINISTRATOR));
        settings.changePeak(1.7);
        try {
            assertThat(new String(take(submitted, "curves.csv"), StandardCharsets.UTF_8)).isEqualTo(before);
            assertThat(new String(take(submitted, "export/csv"), StandardCharsets.UTF_8)).contains(inputHash(before));
            assertThat(inputHash(new String(take(open, "curves.csv"), StandardCharsets.UTF_8))).isNotEqualTo(inputHash(openBefore));
        } finally {
            settings.putBack();
        }
    }

    private static String inputHash(String csv) {
        return csv.lines().filter(line -> line.startsWith("# SHA-256 of that input: ")).findFirst().orElseThrow();
    }

    private Bank scratch(String label, String note) {
        CurrentPerson engineer = people.with(Role.ENGINEER);
        RailFigures figures = TeamBench.figures(3.3, 5, 500e3, null);
        return TeamBench.as(engineer, () -> banks.add(null, "Scratch " + UUID.randomUUID(), new BankDocument(null, figures, List.of(
                new BranchDocument(label, 2, null, null, new SeriesRlc(330e-6, 0.03, 5e-9), SeriesPath.NONE, SeriesPath.NONE)), note), engineer));
    }
}
