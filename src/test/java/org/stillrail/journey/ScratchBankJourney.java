package org.stillrail.journey;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;

/** An engineer tries a mix of capacitors and keeps it. */
@Browsing
class ScratchBankJourney {

    private final JdbcClient jdbc;

    @Autowired
    ScratchBankJourney(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Test
    void composesSavesAndRevisesAScratchBank(Visitor engineer) {
        engineer.signInAs("engineer");
        BankPage page = BankPage.scratch(engineer);
        String address = engineer.page().url();
        int stored = revisions();
        String oneBranch = page.claim();

        page.addBranch();
        page.choosePart(2, "SPARROW-22U-10");
        page.type(2, "Name", "ceramics");
        page.type(2, "How many", "4");
        String twoBranches = page.claim();
        assertThat(twoBranches).isNotEqualTo(oneBranch).contains("4 of SPARROW-22U-10");
        String curve = new ChartFigure(engineer, "Magnitude of the impedance").cell(0, 1);
        page.type(1, "Capacitance (F)", "100u");
        assertThat(page.claim()).isNotEqualTo(twoBranches);
        assertThat(new ChartFigure(engineer, "Magnitude of the impedance").cell(0, 1)).isNotEqualTo(curve);
        assertThat(engineer.page().url()).isEqualTo(address);
        assertThat(revisions()).isEqualTo(stored);
        engineer.sees("not saved yet");

        String claim = page.claim();
        page.type(1, "ESR (\u03a9)", "30 spoons");
        assertThat(page.problems()).contains("Branch 1").contains("30 spoons");
        assertThat(page.field(1, "ESR (\u03a9)").inputValue()).isEqualTo("30 spoons");
        assertThat(page.claim()).isEqualTo(claim);
        page.type(1, "ESR (\u03a9)", "30m");
        assertThat(page.problems()).isBlank();

        engineer.press("Save the bank");
        engineer.sees("Name is missing");
        assertThat(page.field(1, "Capacitance (F)").inputValue()).isEqualTo("100u");
        assertThat(page.field(2, "How many").inputValue()).isEqualTo("4");
        engineer.fill("Name of the bank", "Trial of a journey");
        engineer.press("Save the bank");
        engineer.seesHeading("Trial of a journey");
        engineer.sees("revision 1");
        assertThat(engineer.questions()).as("saving is not leaving").isEmpty();
        assertThat(revisions()).isEqualTo(stored + 1);

        page.type(2, "How many", "6");
        engineer.fill("Note", "Two more for the switching");
        engineer.press("Save as revision 2");
        engineer.sees("Saved as revision 2.");
        assertThat(page.field(2, "How many").inputValue()).isEqualTo("6");

        engineer.follow("1");
        engineer.sees("This is revision 1 of 2");
        assertThat(page.field(2, "How many").inputValue()).isEqualTo("4");
        assertThat(engineer.button("Save as revision 3").isVisible()).isFalse();
        engineer.follow("Go to the newest");
        assertThat(page.field(2, "How many").inputValue()).isEqualTo("6");

        BankPage.scratch(engineer);
        engineer.follow("Trial of a journey");
        engineer.seesHeading("Trial of a journey");
    }

    @Test
    void leavingWithUnsavedWorkAsksFirst(Visitor engineer) {
        engineer.signInAs("engineer");
        BankPage page = BankPage.scratch(engineer);
        page.type(1, "How many", "7");
        engineer.agrees(false);
        engineer.follow("Library");
        engineer.page().waitForCondition(() -> !engineer.questions().isEmpty());
        engineer.seesHeading("Scratch bank");
        assertThat(page.field(1, "How many").inputValue()).isEqualTo("7");
        engineer.agrees(true);
        engineer.follow("Library");
        engineer.seesHeading("Library");
        assertThat(engineer.questions()).hasSize(2);
    }

    private int revisions() {
        return jdbc.sql("select count(*) from bank_revision").query(Integer.class).single();
    }
}
