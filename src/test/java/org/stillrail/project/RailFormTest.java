package org.stillrail.project;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stillrail.document.CanonicalJson;
import org.stillrail.electrical.converter.CompensatorParts;
import org.stillrail.electrical.converter.Transconductance;
import org.stillrail.electrical.requirement.ControlFigures;
import org.stillrail.web.Form;

class RailFormTest {

    private static Form form() {
        return Form.empty().with("purpose", "Feeds a test").with("nominalVoltage", "3.3").with("nominalCurrent", "4")
                .with("inputMinimum", "10").with("inputNominal", "12").with("inputMaximum", "14")
                .with("topology", "BUCK").with("inductance", "2u2").with("resistance", "12m").with("phases", "1").with("switching", "500k")
                .with("control", "VOLTAGE_MODE").with("ramp", "1").with("crossover", "40k").with("phaseMargin", "55")
                .with("ambientMinimum", "-20").with("ambientNominal", "25").with("ambientMaximum", "60").with("ambientDocument", "Board requirements");
    }

    private static Form network(Form form) {
        return form.with("compensation", "PARTS").with("networkR1", "10k").with("networkR2", "4k7").with("networkC1", "4n7").with("networkC2", "100p");
    }

    private static ControlFigures control(Form form) {
        RailDocument document = RailForm.read(form);
        assertThat(form.errors().all()).isEmpty();
        return document.figures().converter().control();
    }

    @Test
    void withoutAChoiceTheCompensatorIsPlacedOrGivenByItsGain() {
        assertThat(control(form()).given()).isEqualTo(ControlFigures.Given.PLACED);
        ControlFigures byGain = control(form().with("gain", "2e4").with("zeros", "5k").with("poles", "200k"));
        assertThat(byGain.given()).isEqualTo(ControlFigures.Given.GAIN);
        assertThat(byGain.zerosHz()).isEqualTo(List.of(5000.0));
    }

    @Test
    void onlyTheFieldsOfTheChoiceCount() {
        ControlFigures placed = control(form().with("compensation", "PLACED").with("gain", "not a number").with("networkR1", "nor this"));
        assertThat(placed.gain()).isNull();
        assertThat(placed.crossoverHz()).isEqualTo(40e3);
        ControlFigures parts = control(network(form()).with("crossover", "").with("phaseMargin", ""));
        assertThat(parts.parts()).isEqualTo(CompensatorParts.oneZero(10e3, 4.7e3, 4.7e-9, 100e-12));
        assertThat(parts.crossoverHz()).isNull();
    }

    @Test
    void theSecondZeroNeedsBothItsParts() {
        Form half = network(form()).with("networkR3", "330");
        assertThat(RailForm.read(half)).isNull();
        assertThat(half.errors().of("networkC3")).contains("C3");
        assertThat(half.get("networkR3")).isEqualTo("330");
        assertThat(control(network(form()).with("networkR3", "330").with("networkC3", "1n")).parts().c3F()).isEqualTo(1e-9);
    }

    @Test
    void aMissingPartIsNamed() {
        Form form = network(form()).with("networkC1", "");
        assertThat(RailForm.read(form)).isNull();
        assertThat(form.errors().has("networkC1")).isTrue();
    }

    @Test
    void aStoredNetworkComesBackIntoTheForm() {
        RailDocument stored = RailForm.read(network(form()).with("networkR3", "330").with("networkC3", "1n"));
        assertThat(RailForm.read(RailForm.fill(stored))).isEqualTo(stored);
        assertThat(RailFacts.of(stored.figures(), "EUR").toString()).contains("R3 330", "they make gain", "zeros", "poles");
    }

    private static Form transconductance(Form form) {
        return form.with("amplifier", "TRANSCONDUCTANCE").with("transconductance", "1m").with("amplifierShare", "0.18");
    }

    /** What is left in the fields of an op-amp does not count. */
    @Test
    void partsOfATransconductanceAmplifierAreStoredAndComeBack() {
        RailDocument stored = RailForm.read(transconductance(network(form())).with("networkR3", "330"));
        ControlFigures control = stored.figures().converter().control();
        assertThat(control.amplifier()).isEqualTo(new Transconductance(1e-3, 0.18));
        assertThat(control.parts()).isEqualTo(control.amplifier().network(4.7e3, 4.7e-9, 100e-12));
        assertThat(control.compensator().gain()).isCloseTo(1e-3 * 0.18 / 4.8e-9, within(1e-3));
        Form again = RailForm.fill(stored);
        assertThat(again.get("networkR1")).isEmpty();
        assertThat(RailForm.read(again)).isEqualTo(stored);
        assertThat(CanonicalJson.read(CanonicalJson.write(stored), RailDocument.class)).isEqualTo(stored);
        assertThat(RailFacts.of(stored.figures(), "EUR").toString()).contains("transconductance amplifier of 1", "R2 4.7").doesNotContain("R1");
    }

    @Test
    void aPlacedCompensatorMayNameItsAmplifierToo() {
        RailDocument stored = RailForm.read(transconductance(form()));
        ControlFigures control = stored.figures().converter().control();
        assertThat(control.given()).isEqualTo(ControlFigures.Given.PLACED);
        assertThat(control.amplifier().gmS()).isEqualTo(1e-3);
        assertThat(RailForm.read(RailForm.fill(stored))).isEqualTo(stored);
        assertThat(control(form()).amplifier()).isNull();
    }

    @Test
    void wrongFiguresOfAnAmplifierAreNamed() {
        Form wrong = transconductance(network(form())).with("transconductance", "").with("amplifierShare", "1.2").with("networkC2", "");
        assertThat(RailForm.read(wrong)).isNull();
        assertThat(wrong.errors().has("transconductance")).isTrue();
        assertThat(wrong.errors().of("amplifierShare")).contains("at most 1");
        assertThat(wrong.errors().has("networkC2")).isTrue();
    }

    @Test
    void marginsAndTheBandToSettleInAreOptionalAndComeBack() {
        assertThat(RailForm.read(form()).figures().margins()).isNull();
        Form asking = form().with("leastPhaseMargin", "45").with("leastGainMargin", "8 dB").with("marginsDocument", "Board requirements")
                .with("stepFrom", "1").with("stepTo", "4").with("stepSlew", "1M").with("stepDeviation", "100m").with("stepSettle", "5m").with("stepLoadLine", "2m")
                .with("stepDocument", "Board requirements");
        RailDocument stored = RailForm.read(asking);
        assertThat(stored.figures().margins().leastGainDb()).isEqualTo(8);
        assertThat(stored.figures().loadStep().settledWithinV()).isEqualTo(5e-3);
        assertThat(stored.figures().loadStep().loadLineOhm()).isEqualTo(2e-3);
        assertThat(RailForm.read(RailForm.fill(stored))).isEqualTo(stored);
        Form wrong = form().with("leastPhaseMargin", "95");
        assertThat(RailForm.read(wrong)).isNull();
        assertThat(wrong.errors().of("leastPhaseMargin")).contains("under 90");
        assertThat(wrong.errors().has("marginsDocument")).isTrue();
    }
}
