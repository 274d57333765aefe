package org.stillrail.bank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stillrail.document.CanonicalJson;
import org.stillrail.electrical.bank.Distance;
import org.stillrail.electrical.bank.Node;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.mounting.MountingEstimate;
import org.stillrail.electrical.mounting.PathPreset;
import org.stillrail.web.Form;

/** What the bank page reads of mounting and distance. */
class BankPlacesFormTest {

    @Test
    void bankAtOneNodeIsWrittenAsBefore() {
        BankDocument bank = BankForm.read(bank(), null, null);
        assertThat(bank.distance()).isNull();
        assertThat(CanonicalJson.write(bank)).doesNotContain("distance", "node", "mountingOrigin");
        String before = "{\"branches\":[{\"count\":1,\"inline\":{\"capacitanceF\":1.0E-4,\"inductanceH\":1.0E-9,\"resistanceOhm\":0.01},\"label\":\"a\","
                + "\"mounting\":{\"inductanceH\":0.0,\"resistanceOhm\":0.0},\"shared\":{\"inductanceH\":0.0,\"resistanceOhm\":0.0}}]}";
        BankDocument read = CanonicalJson.read(before, BankDocument.class);
        assertThat(CanonicalJson.write(read)).isEqualTo(before);
    }

    @Test
    void pathNodesAndLoadReadBackAsTheSameBank() {
        BankDocument bank = BankForm.read(twoNodes().with("loadC", "2u").with("loadR", "1m"), null, null);
        assertThat(bank.distance()).isEqualTo(new Distance(new SeriesPath(5e-4, 2e-10), Node.LOAD, new SeriesRlc(2e-6, 1e-3, 0)));
        assertThat(bank.branches()).extracting(BranchDocument::node).containsExactly(Node.CONVERTER, Node.LOAD);
        assertThat(BankForm.read(BankForm.fill(bank, null), null, null)).isEqualTo(bank);
        assertThat(CanonicalJson.read(CanonicalJson.write(bank), BankDocument.class)).isEqualTo(bank);
    }

    @Test
    void chosenPathFillsInUsualFiguresAndNodes() {
        Form form = bank().with("path", PathPreset.BEAD.name());
        DistanceForm.choose(form, BankForm.indices(form));
        BankDocument bank = BankForm.read(form, null, null);
        assertThat(bank.distance()).isEqualTo(new Distance(PathPreset.BEAD.path(), PathPreset.BEAD.sense(), null));
        assertThat(bank.branches()).extracting(BranchDocument::node).containsOnly(Node.CONVERTER);
        assertThat(BankForm.fill(bank, null).get("path")).isEqualTo(PathPreset.BEAD.name());
    }

    @Test
    void wrongFieldsOfThePathAreNamed() {
        Form form = twoNodes().with("pathR", "").with("pathL", "").with("sense", "moon").with("b1.node", "elsewhere").with("loadR", "1m");
        assertThat(BankForm.read(form, null, null)).isNull();
        assertThat(form.errors().all()).containsOnlyKeys("pathL", "sense", "b1.node", "loadC");
        Form negative = twoNodes().with("pathL", "-1n");
        assertThat(BankForm.read(negative, null, null)).isNull();
        assertThat(negative.errors().all()).containsOnlyKeys("pathL");
    }

    @Test
    void estimateTakenOverIsRememberedUntilTheFiguresChange() {
        Form form = geometry();
        MountingForm mounting = new MountingForm(form, "b0.", "");
        assertThat(mounting.offer(null).taken()).isFalse();
        assertThat(BankForm.read(form, null, null).branches().get(0).mountingOrigin()).isNull();
        mounting.take(null);
        assertThat(mounting.offer(null).taken()).isTrue();
        BankDocument bank = BankForm.read(form, null, null);
        BranchDocument branch = bank.branches().get(0);
        SeriesPath estimate = MountingEstimate.of(branch.mountingOrigin().geometry()).path();
        assertThat(branch.mounting().inductanceH()).isCloseTo(estimate.inductanceH(), withPercentage(0.5));
        assertThat(branch.mounting().resistanceOhm()).isCloseTo(estimate.resistanceOhm(), withPercentage(0.5));
        assertThat(branch.mountingOrigin().words()).contains("2 via pairs", "200", "estimated");
        assertThat(BankForm.read(BankForm.fill(bank, null), null, null)).isEqualTo(bank);
        assertThat(CanonicalJson.read(CanonicalJson.write(bank), BankDocument.class)).isEqualTo(bank);
        form.with("b0.mountingL", "1 nH");
        assertThat(BankForm.read(form, null, null).branches().get(0).mountingOrigin()).isNull();
    }

    @Test
    void wrongFieldsOfTheGeometryAreNamed() {
        Form form = geometry().with("b0.height", "0").with("b0.viaPairs", "40").with("b0.landWidth", "");
        assertThat(BankForm.read(form, null, null)).isNull();
        assertThat(form.errors().all()).containsOnlyKeys("b0.height", "b0.viaPairs", "b0.landWidth");
        Form close = geometry().with("b0.viaSpacing", "0.2mm");
        assertThat(BankForm.read(close, null, null)).isNull();
        assertThat(close.errors().all()).containsOnlyKeys("b0.viaSpacing");
        Form thick = geometry().with("b0.copper", "0.2mm");
        assertThat(BankForm.read(thick, null, null)).isNull();
        assertThat(thick.errors().all()).containsOnlyKeys("b0.copper");
    }

    @Test
    void fitToTheBenchIsRememberedUntilTheFiguresChange() {
        BankDocument typed = BankForm.read(bank(), null, null);
        BranchDocument fitted = typed.branches().get(0).withMounting(new SeriesPath(3e-4, 8e-10), MountingOrigin.fitted("board.s2p"));
        BankDocument bank = typed.withBranches(null, List.of(fitted, typed.branches().get(1)), null);
        Form form = BankForm.fill(bank, null);
        assertThat(BankForm.read(form, null, null)).isEqualTo(bank);
        form.with("b0.mountingR", "1 mohm");
        assertThat(BankForm.read(form, null, null).branches().get(0).mountingOrigin()).isNull();
    }

    private static Form twoNodes() {
        return bank().with("path", "other").with("pathR", "0.5m").with("pathL", "0.2n").with("sense", "load")
                .with("b0.node", "converter").with("b1.node", "load");
    }

    private static Form geometry() {
        return bank().with("b0.mountingFrom", "geometry").with("b0.height", "0.2mm").with("b0.landLength", "1mm").with("b0.landWidth", "0.8mm")
                .with("b0.viaPairs", "2").with("b0.viaDiameter", "0.25mm").with("b0.viaSpacing", "0.8mm").with("b0.copper", "35um");
    }

    private static Form bank() {
        return Form.empty()
                .with("input", "12 V").with("output", "3.3").with("inductor", "3u3").with("switching", "500k").with("phases", "1")
                .with("crossover", "40k").with("phaseMargin", "55")
                .with("b0.part", BankForm.INLINE).with("b0.label", "bulk").with("b0.count", "2")
                .with("b0.capacitance", "330u").with("b0.resistance", "30m").with("b0.inductance", "5n")
                .with("b1.part", BankForm.INLINE).with("b1.label", "ceramic").with("b1.count", "4")
                .with("b1.capacitance", "15u").with("b1.resistance", "3m").with("b1.inductance", "0.7n");
    }
}
