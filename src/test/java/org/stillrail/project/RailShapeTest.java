package org.stillrail.project;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.stillrail.document.Revision;
import org.stillrail.electrical.requirement.ControlFigures;
import org.stillrail.electrical.requirement.RippleLimit;
import org.stillrail.web.Form;
import org.stillrail.web.Overtaken;

/** Two people revise one rail: what each of them changed, and what the second one's form holds then. */
class RailShapeTest {

    private static Form form() {
        return Form.empty().with("purpose", "Feeds a test").with("nominalVoltage", "3.3").with("nominalCurrent", "4")
                .with("inputMinimum", "10").with("inputNominal", "12").with("inputMaximum", "14")
                .with("topology", "BUCK").with("inductance", "2u2").with("resistance", "12m").with("phases", "1").with("switching", "500k")
                .with("control", "VOLTAGE_MODE").with("ramp", "1").with("compensation", "PLACED").with("crossover", "40k").with("phaseMargin", "55")
                .with("ripple", "20m").with("rippleDocument", "Board requirements").with("rippleClause", "4.1")
                .with("ambientMinimum", "-20").with("ambientNominal", "25").with("ambientMaximum", "60").with("ambientDocument", "Board requirements");
    }

    private static Overtaken overtaken(Form theirs, Form mine) {
        Revision<RailDocument> newest = new Revision<>(UUID.randomUUID(), UUID.randomUUID(), 2, UUID.randomUUID(), "Ada Writer",
                OffsetDateTime.of(2026, 3, 4, 9, 30, 0, 0, ZoneOffset.UTC), RailForm.read(theirs), "");
        return Overtaken.carryOver(new RailShape(), mine, RailForm.read(form()), List.of(newest));
    }

    @Test
    void anUntouchedFormBecomesTheirs() {
        Form theirs = form().with("ripple", "30m").with("rippleClause", "4.2").with("inductance", "3u3").with("control", "CURRENT_MODE").with("sense", "20m")
                .with("slope", "1M").with("stepFrom", "1").with("stepTo", "4").with("stepSlew", "2.5M").with("stepDeviation", "100m").with("stepDocument", "Memo");
        Form mine = form();
        Overtaken overtaken = overtaken(theirs, mine);
        assertThat(RailForm.read(mine)).isEqualTo(RailForm.read(theirs));
        assertThat(overtaken.anyKept()).isFalse();
        assertThat(overtaken.lines()).extracting(Overtaken.Line::label).contains("Ripple limit", "The clause of the ripple limit", "Inductance of each phase",
                "Control", "Load step to", "The document that the load step comes from");
        assertThat(overtaken.lines()).filteredOn(line -> line.field().equals("control")).extracting(Overtaken.Line::theirs)
                .containsExactly("peak current mode");
    }

    @Test
    void aLimitKeepsTheDocumentThatItComesFrom() {
        Form mine = form().with("ripple", "25m").with("inductance", "1u");
        Overtaken overtaken = overtaken(form().with("ripple", "30m").with("rippleClause", "4.2").with("nominalCurrent", "5").with("ramp", "2"), mine);
        RailDocument merged = RailForm.read(mine);
        RippleLimit ripple = merged.figures().ripple();
        assertThat(ripple.peakToPeakV()).isEqualTo(0.025);
        assertThat(ripple.citation().clause()).isEqualTo("4.1");
        assertThat(merged.figures().nominalCurrentA()).isEqualTo(5);
        ControlFigures control = merged.figures().converter().control();
        assertThat(control.rampV()).isEqualTo(2);
        assertThat(merged.figures().converter().inductanceH()).isEqualTo(1e-6);
        assertThat(overtaken.beside("rippleClause")).isEqualTo("Revision 2 has: 4.2");
        assertThat(overtaken.beside("nominalCurrent")).startsWith("Revision 2 has changed this; it was: 4");
        assertThat(overtaken.beside("inductance")).isNull();
    }
}
