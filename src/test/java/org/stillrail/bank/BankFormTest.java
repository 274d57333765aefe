package org.stillrail.bank;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.web.Form;

class BankFormTest {

    @Test
    void whatIsFilledInReadsBackAsTheSameBank() {
        BankDocument bank = BankForm.read(scratch(), null, null);
        assertThat(bank.branches()).containsExactly(new BranchDocument("bulk", 2, null, null, new SeriesRlc(330e-6, 0.03, 5e-9),
                new SeriesPath(0.001, 1.2e-9), SeriesPath.NONE));
        assertThat(BankForm.read(BankForm.fill(bank, null), null, null)).isEqualTo(bank);
    }

    @Test
    void everyWrongFieldIsNamed() {
        Form form = scratch().with("b0.count", "0").with("b0.capacitance", "0").with("output", "24 V").with("switching", "");
        assertThat(BankForm.read(form, null, null)).isNull();
        assertThat(form.errors().all()).containsOnlyKeys("b0.count", "b0.capacitance", "output", "switching");
    }

    @Test
    void addingStopsAtTheMost() {
        Form form = scratch();
        for (int i = 1; i < BankForm.MOST_BRANCHES; i++) {
            BankForm.addBranch(form);
        }
        assertThat(BankForm.indices(form)).hasSize(BankForm.MOST_BRANCHES);
        assertThat(form.errors().none()).isTrue();
        BankForm.addBranch(form);
        assertThat(form.errors().has("")).isTrue();
    }

    @Test
    void takingABranchOutLeavesTheOthersAsTheyAre() {
        Form form = scratch();
        BankForm.addBranch(form);
        BankForm.addBranch(form);
        assertThat(BankForm.indices(BankForm.withoutBranch(form, 1))).isEqualTo(List.of(0, 2));
    }

    private static Form scratch() {
        return Form.empty()
                .with("input", "12 V").with("output", "3.3").with("inductor", "3u3").with("switching", "500k").with("phases", "1")
                .with("crossover", "40k").with("phaseMargin", "55")
                .with("b0.part", BankForm.INLINE).with("b0.label", "bulk").with("b0.count", "2")
                .with("b0.capacitance", "330u").with("b0.resistance", "30m").with("b0.inductance", "5n")
                .with("b0.mountingR", "1m").with("b0.mountingL", "1n2");
    }
}
