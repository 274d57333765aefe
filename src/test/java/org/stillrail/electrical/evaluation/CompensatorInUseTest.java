package org.stillrail.electrical.evaluation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stillrail.electrical.converter.Compensator;
import org.stillrail.electrical.converter.CompensatorParts;
import org.stillrail.electrical.converter.Transconductance;
import org.stillrail.electrical.requirement.ControlFigures;
import org.stillrail.electrical.requirement.ControlFigures.Kind;
import org.stillrail.electrical.requirement.ConverterFigures;
import org.stillrail.electrical.requirement.InputRange;
import org.stillrail.electrical.requirement.Topology;

class CompensatorInUseTest {

    private static CompensatorInUse with(ControlFigures control) {
        return Evaluation.evaluate(Rails.sound().withRail(Rails.with(Rails.everything(), Rails.converter(control)))).compensator();
    }

    private static ControlFigures given(double gain, List<Double> zerosHz, List<Double> polesHz) {
        return new ControlFigures(Kind.VOLTAGE_MODE, 1.0, null, null, null, gain, zerosHz, polesHz, null, null);
    }

    @Test
    void thePlacedOneIsThatOfTheLoopAndItsPartsMakeIt() {
        Evaluation evaluation = Evaluation.evaluate(Rails.sound());
        CompensatorInUse used = evaluation.compensator();
        assertThat(used.given()).isEqualTo(ControlFigures.Given.PLACED);
        assertThat(used.compensator()).isEqualTo(evaluation.loop().compensator());
        assertThat(used.parts().r1Ohm()).isEqualTo(10e3);
        Compensator made = used.parts().compensator();
        assertThat(made.gain()).isCloseTo(used.compensator().gain(), withinPercentage(1e-9));
        for (double hz : new double[] {100, 40e3, 1e6}) {
            assertThat(made.magnitudeAt(hz)).isCloseTo(used.compensator().magnitudeAt(hz), withinPercentage(1e-9));
        }
    }

    /** Placed once: another corner shown has the same. */
    @Test
    void itIsTheSameAtEveryCorner() {
        Evaluation nominal = Evaluation.evaluate(Rails.sound());
        String other = nominal.corners().get(nominal.corners().size() - 1).name();
        Evaluation elsewhere = Evaluation.evaluate(Rails.sound(), other);
        assertThat(elsewhere.shown().name()).isEqualTo(other);
        assertThat(elsewhere.compensator()).isEqualTo(nominal.compensator());
    }

    @Test
    void theRailsOwnPartsAreShownAsTheyAre() {
        CompensatorParts parts = new CompensatorParts(4.7e3, 10e3, 2.2e-9, 100e-12, 330.0, 1.5e-9);
        CompensatorInUse used = with(new ControlFigures(Kind.VOLTAGE_MODE, 1.0, null, null, null, null, null, null, null, null, parts));
        assertThat(used.given()).isEqualTo(ControlFigures.Given.PARTS);
        assertThat(used.parts()).isEqualTo(parts);
        assertThat(used.compensator()).isEqualTo(parts.compensator());
    }

    @Test
    void partsForATransconductanceAmplifierMakeThePlacedOne() {
        Transconductance amplifier = new Transconductance(1e-3, 0.6 / 3.3);
        CompensatorInUse used = with(new ControlFigures(Kind.CURRENT_MODE, null, 0.02, 0.2e6, null, null, null, null, 40e3, 60.0, null, amplifier));
        assertThat(used.given()).isEqualTo(ControlFigures.Given.PLACED);
        assertThat(used.compensator()).isEqualTo(with(new ControlFigures(Kind.CURRENT_MODE, null, 0.02, 0.2e6, null, null, null, null, 40e3, 60.0)).compensator());
        Compensator made = amplifier.network(used.parts().r2Ohm(), used.parts().c1F(), used.parts().c2F()).compensator();
        for (double hz : new double[] {100, 40e3, 1e6}) {
            assertThat(made.magnitudeAt(hz)).isCloseTo(used.compensator().magnitudeAt(hz), withinPercentage(1e-9));
        }
        CompensatorInUse twoZeros = with(new ControlFigures(Kind.VOLTAGE_MODE, 1.0, null, null, null, 1e4, List.of(5e3, 6e3), List.of(2e5, 3e5), null, null, null,
                amplifier));
        assertThat(twoZeros.parts()).isNull();
        assertThat(twoZeros.refusal()).contains("one zero and one pole, not with 2 and 2");
    }

    @Test
    void whatTheNetworkCannotMakeIsSaidInWords() {
        CompensatorInUse alone = with(given(1e4, List.of(), List.of()));
        assertThat(alone.compensator().gain()).isEqualTo(1e4);
        assertThat(alone.parts()).isNull();
        assertThat(alone.refusal()).contains("0 zeros and 0 poles");
        CompensatorInUse poleFirst = with(given(1e4, List.of(20e3), List.of(5e3)));
        assertThat(poleFirst.parts()).isNull();
        assertThat(poleFirst.refusal()).isEqualTo("The network makes poles above its zeros only; the pole at 5.000 kHz is not above the zero at 20.000 kHz");
    }

    @Test
    void aRefusedPlacementIsSaidInTheRefusalsWords() {
        CompensatorInUse used = with(Rails.placed(0.6 * Rails.SWITCHING_HZ, 45));
        assertThat(used.compensator()).isNull();
        assertThat(used.parts()).isNull();
        assertThat(used.refusal()).contains("half the switching frequency");
    }

    /** The outer compensator is of the same form as in voltage mode. */
    @Test
    void currentModeHasItsOwn() {
        CompensatorInUse used = with(new ControlFigures(Kind.CURRENT_MODE, null, 0.02, 0.2e6, null, null, null, null, 40e3, 60.0));
        assertThat(used.compensator().zerosHz()).hasSize(1);
        assertThat(used.parts().compensator().polesHz().get(0)).isCloseTo(used.compensator().polesHz().get(0), withinPercentage(1e-9));
    }

    @Test
    void withoutALoopThereIsNone() {
        assertThat(with(null)).isNull();
        ConverterFigures boost = Rails.converter(Topology.BOOST);
        assertThat(Evaluation.evaluate(Rails.sound().withRail(Rails.with(Rails.with(Rails.everything(), boost), new InputRange(1.8, 2.5, 3)))).compensator())
                .isNull();
    }
}
