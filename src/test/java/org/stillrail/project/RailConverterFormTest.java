package org.stillrail.project;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillrail.electrical.requirement.ConverterFigures;
import org.stillrail.electrical.requirement.DrawnCurrent;
import org.stillrail.electrical.requirement.Topology;
import org.stillrail.web.Form;

/** What a rail says of the rectifier of its converter. */
class RailConverterFormTest {

    private static Form form(Topology topology) {
        return Form.empty().with("purpose", "Feeds the radio").with("nominalVoltage", "5").with("nominalCurrent", "3").with("inputMinimum", "18")
                .with("inputNominal", "24").with("inputMaximum", "32").with("topology", topology.name()).with("phases", "1").with("inductance", "60u")
                .with("resistance", "50m").with("switching", "200k").with("control", "VOLTAGE_MODE").with("ramp", "1").with("crossover", "5k")
                .with("phaseMargin", "60").with("ambientMinimum", "0").with("ambientNominal", "25").with("ambientMaximum", "60");
    }

    @Test
    void aFlybackStatesItsTurnsAndReadsBackTheSame() {
        RailDocument read = RailForm.read(form(Topology.FLYBACK).with("turnsRatio", "4").with("edge", "40n"));
        ConverterFigures converter = read.figures().converter();
        assertThat(converter.turnsRatio()).isEqualTo(4);
        assertThat(converter.edgeS()).isEqualTo(40e-9);
        assertThat(RailForm.read(RailForm.fill(read))).isEqualTo(read);
        assertThat(converterFact(read)).startsWith("flyback of 4 to 1 turns").contains("edges of the rectifier's current 40 ns");
    }

    /** Its loop is not modelled, so nothing of it is asked for. */
    @Test
    void aConverterWithoutALoopModelNeedsNoControlFields() {
        Form form = form(Topology.INVERTING_BUCK_BOOST).with("control", "VOLTAGE_MODE").with("ramp", "").with("crossover", "").with("phaseMargin", "");
        RailDocument read = RailForm.read(form);
        assertThat(read.figures().converter().control()).isNull();
        RailDocument stated = RailForm.read(form.with("statedCrossover", "4k"));
        assertThat(stated.figures().converter().control().crossoverHz()).isEqualTo(4e3);
        assertThat(RailForm.read(RailForm.fill(stated))).isEqualTo(stated);
    }

    @Test
    void aFlybackWithoutTurnsIsRefusedByTheField() {
        Form form = form(Topology.FLYBACK).with("edge", "0");
        assertThat(RailForm.read(form)).isNull();
        assertThat(form.errors().all()).containsOnlyKeys("turnsRatio", "edge");
    }

    @Test
    void aBlankEdgeIsTheUsualOneAndSaidSo() {
        RailDocument read = RailForm.read(form(Topology.FLYBACK).with("turnsRatio", "4"));
        assertThat(read.figures().converter().edgeS()).isNull();
        assertThat(converterFact(read)).contains("20 ns (not stated, usual)");
    }

    private static String converterFact(RailDocument rail) {
        return RailFacts.of(rail.figures(), "EUR").stream().filter(fact -> fact.name().equals("Converter")).findFirst().orElseThrow().value()
                .replace('\u00a0', ' ');
    }

    /** A buck has neither, also where a preset's fields are left over. */
    @Test
    void aBuckKeepsNeither() {
        ConverterFigures converter = RailForm.read(form(Topology.BUCK).with("turnsRatio", "4").with("edge", "40n")).figures().converter();
        assertThat(converter.turnsRatio()).isNull();
        assertThat(converter.edgeS()).isNull();
    }

    @Test
    void aBoostNeedsLessInputThanOutput() {
        Form form = form(Topology.BOOST).with("nominalVoltage", "32");
        assertThat(RailForm.read(form)).isNull();
        assertThat(form.errors().all()).containsOnlyKeys("inputMaximum");
        assertThat(RailForm.read(form(Topology.BOOST).with("nominalVoltage", "32.1"))).isNotNull();
    }

    /** Of any other kind no inductor is asked for, only what flows into the bank. */
    @Test
    void aDrawnCurrentNeedsNothingOfAnInductorAndReadsBackTheSame() {
        Form form = form(Topology.DRAWN).with("inductance", "").with("resistance", "").with("phases", "")
                .with("drawnCurrent", "0: 0 A; 50n: 6 A\n1u: 4; 1.05u: 0 A");
        RailDocument read = RailForm.read(form);
        ConverterFigures converter = read.figures().converter();
        assertThat(converter.drawnCurrent().points()).containsExactly(new DrawnCurrent.Point(0, 0), new DrawnCurrent.Point(50e-9, 6),
                new DrawnCurrent.Point(1e-6, 4), new DrawnCurrent.Point(1.05e-6, 0));
        assertThat(RailForm.read(RailForm.fill(read))).isEqualTo(read);
        assertThat(converterFact(read)).isEqualTo("its current into the bank drawn by points, 0 s: 0 A; 50 ns: 6 A; 1 us: 4 A; 1.05 us: 0 A; "
                + "switching at 200 kHz \u00b10 %");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"''|missing", "5 A|write points as", "0: 1 A|at least two points", "1n: 1 A; 2n: 2 A|stands at 0 s",
            "0: 1 A; 2u: 2 A; 2u: 0 A|Point 3", "0: 1 A; 5u: 2 A|before the end of the period of 5 \u00b5s"})
    void aDrawnCurrentThatIsNoneIsRefusedByItsField(String points, String said) {
        Form form = form(Topology.DRAWN).with("drawnCurrent", points);
        assertThat(RailForm.read(form)).isNull();
        assertThat(form.errors().all()).containsOnlyKeys("drawnCurrent");
        assertThat(form.errors().of("drawnCurrent").replace('\u00a0', ' ')).contains(said);
    }
}
