package org.stillrail.library;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stillrail.document.CanonicalJson;
import org.stillrail.electrical.stress.LifeRating.VoltageTerm;
import org.stillrail.web.Form;

/** Whether a part's life counts a voltage below the rated one: from its form and table to what an evaluation is given. */
class LifeOverVoltageTest {

    private static Form form(String technology, String lifeOverVoltage) {
        return Form.empty().with("partNumber", "CAN-4M7").with("maker", "Invented Parts").with("technology", technology)
                .with("capacitance", "4m7").with("toleranceMinus", "20").with("tolerancePlus", "20").with("ratedVoltage", "63")
                .with("enduranceHours", "5000").with("enduranceTemperature", "95").with("lifeOverVoltage", lifeOverVoltage);
    }

    private static PartDocument part(String lifeOverVoltage) {
        return PartForm.read(form("wet-aluminium", lifeOverVoltage));
    }

    private static VoltageTerm counted(PartDocument part) {
        return PartStressRatings.of(part).life().voltage();
    }

    @Test
    void aLargeCanCountsItAndEveryOtherPartDoesNot() {
        assertThat(counted(part("large-can"))).isEqualTo(VoltageTerm.LARGE_CAN);
        assertThat(counted(part(""))).isEqualTo(VoltageTerm.NONE);
        assertThat(part("").stress()).as("nothing is stored for it").isNull();
        assertThat(counted(PartForm.read(form("wet-aluminium", "").with("reverseVoltage", "1")))).isEqualTo(VoltageTerm.NONE);
    }

    @Test
    void otherTechnologiesAndUnknownWordsAreRefusedAtTheField() {
        for (Form wrong : List.of(form("hybrid", "large-can"), form("wet-aluminium", "huge"))) {
            assertThat(PartForm.read(wrong)).isNull();
            assertThat(wrong.errors().count()).isEqualTo(1);
            assertThat(wrong.errors().of("lifeOverVoltage")).startsWith("Life over voltage ");
        }
    }

    @Test
    void goesThroughFormTableAndStoredDocumentUnchanged() {
        PartDocument can = part("large-can");
        assertThat(PartForm.read(PartForm.fill(can))).isEqualTo(can);
        assertThat(PartForm.read(PartsCsv.read(PartsCsv.write(List.of(can))).get(0).form())).isEqualTo(can);
        assertThat(CanonicalJson.read(CanonicalJson.write(can), PartDocument.class)).isEqualTo(can);
    }

    /** A document from before the figure was offered. */
    @Test
    void aStoredDocumentWithoutItCountsNothing() {
        String json = CanonicalJson.write(PartForm.read(form("wet-aluminium", "large-can").with("enduranceRise", "5")));
        String older = json.replace(",\"lifeOverVoltage\":\"LARGE_CAN\"", "").replace("\"lifeOverVoltage\":\"LARGE_CAN\",", "");
        assertThat(older).doesNotContain("lifeOverVoltage").contains("enduranceRiseK");
        assertThat(counted(CanonicalJson.read(older, PartDocument.class))).isEqualTo(VoltageTerm.NONE);
    }

    @Test
    void differenceBetweenTwoRevisionsNamesIt() {
        assertThat(PartDifference.between(part(""), part("large-can"))).containsExactly(new PartDifference("Life over voltage", "", "large-can"));
        assertThat(new PartShape().words("lifeOverVoltage", "large-can")).isEqualTo("large can");
    }
}
