package org.stillrail.library;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.stillrail.document.Revision;
import org.stillrail.web.Form;
import org.stillrail.web.Overtaken;

/** Two people correct one part: what each of them changed, and what the second one's form holds then. */
class PartShapeTest {

    private static final PartShape SHAPE = new PartShape();

    private static Form form() {
        return Form.empty().with("partNumber", "SHAPE-22U").with("maker", "Invented Parts").with("technology", "polymer-aluminium")
                .with("capacitance", "22u").with("toleranceMinus", "20").with("tolerancePlus", "20").with("ratedVoltage", "25")
                .with("loss0Kind", "ESR").with("loss0Value", "18m").with("loss0Frequency", "100k").with("loss0Bound", "MAXIMUM")
                .with("rippleCurrent", "2.1").with("rippleFrequency", "100k").with("rippleTemperature", "105");
    }

    private static Form secondLoss(Form form) {
        return form.with("loss1Kind", "LOSS_TANGENT").with("loss1Value", "0.1").with("loss1Frequency", "120").with("loss1Bound", "TYPICAL");
    }

    private static Overtaken overtaken(Form theirs, Form mine) {
        Revision<PartDocument> newest = new Revision<>(UUID.randomUUID(), UUID.randomUUID(), 2, UUID.randomUUID(), "Ada Writer",
                OffsetDateTime.of(2026, 3, 4, 9, 30, 0, 0, ZoneOffset.UTC), PartForm.read(theirs), "");
        return Overtaken.carryOver(SHAPE, mine, PartForm.read(form()), List.of(newest));
    }

    @Test
    void saysWhoSavedWhatAndWhen() {
        assertThat(overtaken(form().with("note", "new"), form()).who()).isEqualTo("Ada Writer saved revision 2 at 2026-03-04 09:30 UTC while this page was open.");
    }

    @Test
    void aRowThatOnlyTheyAddedIsTakenOverWhole() {
        Form mine = form().with("capacitance", "22 uF").with("loss1Kind", "ESR").with("loss1Bound", "MAXIMUM");
        Overtaken overtaken = overtaken(secondLoss(form()), mine);
        assertThat(PartForm.read(mine).losses()).hasSize(2);
        assertThat(overtaken.lines()).extracting(Overtaken.Line::label, Overtaken.Line::theirs, Overtaken.Line::taken).containsExactly(
                tuple("Loss figure 2, kind", "loss tangent", true),
                tuple("Loss figure 2", "0.1", true),
                tuple("Loss figure 2, frequency", "120 Hz", true),
                tuple("Loss figure 2, bound", "typical", true));
    }

    @Test
    void figureAndItsConditionsAreNotMixed() {
        Form mine = form().with("rippleCurrent", "2.4");
        Overtaken overtaken = overtaken(form().with("rippleCurrent", "1.9").with("rippleTemperature", "85"), mine);
        assertThat(PartForm.read(mine).rippleRating()).isEqualTo(new PartDocument.RippleRating(2.4, 100e3, 105.0));
        assertThat(overtaken.anyTaken()).isFalse();
        assertThat(overtaken.lines()).extracting(Overtaken.Line::field).containsExactly("rippleCurrent", "rippleTemperature");
        assertThat(overtaken.beside("rippleCurrent")).contains("1.9");
        assertThat(overtaken.beside("note")).isNull();
    }

    @Test
    void whatTheyTookOutIsOutAndWhatBothSayIsNoDifference() {
        Form mine = form().with("note", "both");
        Overtaken overtaken = overtaken(form().with("rippleCurrent", "").with("rippleFrequency", "").with("rippleTemperature", "").with("note", "both"), mine);
        assertThat(PartForm.read(mine).rippleRating()).isNull();
        assertThat(PartForm.read(mine).note()).isEqualTo("both");
        assertThat(overtaken.lines()).extracting(Overtaken.Line::theirs).containsOnly("not stated");
        assertThat(overtaken.beside("note")).isNull();
    }
}
