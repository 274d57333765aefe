package org.stillrail.bank;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.stillrail.document.Revision;
import org.stillrail.web.Form;
import org.stillrail.web.Overtaken;

/** Two people change one bank: branches are taken over as a whole or not at all. */
class BankShapeTest {

    private static final BankShape SHAPE = new BankShape(null, null);

    private static Form form() {
        return branch(Form.empty().with("input", "12").with("output", "3.3").with("inductor", "2u2").with("phases", "1").with("switching", "500k")
                .with("crossover", "40k").with("phaseMargin", "55"), 0, "bulk");
    }

    private static Form branch(Form form, int i, String label) {
        String b = "b" + i + ".";
        return form.with(b + "part", BankForm.INLINE).with(b + "label", label).with(b + "count", "2").with(b + "capacitance", "330u")
                .with(b + "resistance", "30m").with(b + "inductance", "5n");
    }

    private static Overtaken overtaken(Form theirs, Form mine) {
        Revision<BankDocument> newest = new Revision<>(UUID.randomUUID(), UUID.randomUUID(), 2, UUID.randomUUID(), "Ada Writer",
                OffsetDateTime.of(2026, 3, 4, 9, 30, 0, 0, ZoneOffset.UTC), SHAPE.read(theirs), "");
        return Overtaken.carryOver(SHAPE, mine, SHAPE.read(form()), List.of(newest));
    }

    @Test
    void branchesThatOnlyTheyChangedAreTakenOverWhateverTheCardsAreNumbered() {
        Form theirs = branch(form(), 1, "ceramics").with("b0.count", "3");
        Form mine = branch(form().without(name -> name.startsWith("b0.")), 4, "bulk").with("note", "mine").with("version", "7");
        Overtaken overtaken = overtaken(theirs, mine);
        BankDocument carried = SHAPE.read(mine);
        assertThat(carried.branches()).isEqualTo(SHAPE.read(theirs).branches());
        assertThat(carried.note()).isEqualTo("mine");
        assertThat(mine.get("version")).isEqualTo("7");
        assertThat(overtaken.anyKept()).isFalse();
        assertThat(overtaken.lines()).extracting(Overtaken.Line::label).contains("Branch 1: count", "Branch 2: name");
    }

    @Test
    void branchesThatBothChangedStayAsTheyWereComposed() {
        Form mine = form().with("b0.count", "4").with("output", "5");
        Overtaken overtaken = overtaken(branch(form(), 1, "ceramics").with("output", "1.8").with("phases", "2"), mine);
        BankDocument carried = SHAPE.read(mine);
        assertThat(carried.branches()).singleElement().satisfies(branch -> assertThat(branch.count()).isEqualTo(4));
        assertThat(carried.scratchRail().nominalVoltageV()).isEqualTo(5);
        assertThat(carried.scratchRail().converter().phases()).isEqualTo(2);
        assertThat(overtaken.lines()).filteredOn(line -> line.label().equals("Branch 2: name")).singleElement()
                .satisfies(line -> assertThat(List.of(line.theirs(), line.mine())).containsExactly("ceramics", "not stated"));
    }
}
