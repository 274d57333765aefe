package org.stillrail.electrical.evaluation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.capacitor.Ageing;
import org.stillrail.electrical.capacitor.Band;
import org.stillrail.electrical.capacitor.BendNote;
import org.stillrail.electrical.capacitor.BentPart;
import org.stillrail.electrical.capacitor.CeramicCode;
import org.stillrail.electrical.capacitor.CharacteristicCurve;
import org.stillrail.electrical.capacitor.Characteristics;
import org.stillrail.electrical.capacitor.OperatingPoint;
import org.stillrail.electrical.capacitor.PlaceInBand;
import org.stillrail.electrical.capacitor.ResistanceCurve;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.evaluation.PartInput.Member;

/**
 * A part of 10 uF nominal whose sample, of 11 uF, was swept at three temperatures: 8.8 uF and 20 mohm at -40, 11 uF and 2 mohm at 25, 9.9 uF and 1 mohm
 * at 85 degC, so that 0.8, 1 and 0.9 are left.
 */
class SweptTemperatureTest {

    private static final PlaceInBand LOW = place(Band.Bound.LEAST);

    private static PlaceInBand place(Band.Bound change) {
        return new PlaceInBand(change == Band.Bound.MOST ? 0.2 : change == Band.Bound.LEAST ? -0.2 : 0.0, 1, change, false);
    }

    private static Member sweep(double biasV, double temperatureC, Double ageHours, double microfarad, double resistanceOhm) {
        return new Member(new OperatingPoint(biasV, temperatureC, ageHours), ModelInput.of(new SeriesRlc(microfarad * 1e-6, resistanceOhm, 0)));
    }

    private static PartInput swept(Characteristics characteristics, Member... members) {
        return new PartInput(List.of(members), 1e3, 10e-6, true, characteristics, -0.2, 0.2, 1.0, 1.0);
    }

    private static PartInput swept(Characteristics characteristics) {
        return swept(characteristics, sweep(0, 25, null, 11, 2e-3), sweep(0, -40, null, 8.8, 20e-3), sweep(0, 85, null, 9.9, 1e-3));
    }

    private static BentPart at(PartInput part, double biasV, double temperatureC, PlaceInBand place) {
        return part.at(new OperatingPoint(biasV, temperatureC, null), place);
    }

    private static double microfarad(PartInput part, double biasV, double temperatureC, PlaceInBand place) {
        BentPart bent = at(part, biasV, temperatureC, place);
        double ofImpedance = -1e6 / (2 * Math.PI * 1e3 * bent.model().at(1e3).reactanceOhm());
        assertThat(ofImpedance).as("what is told is what the model has").isCloseTo(bent.capacitanceF() * 1e6, withinPercentage(1e-7));
        return ofImpedance;
    }

    private static void close(double got, double expected) {
        assertThat(got).isCloseTo(expected, withinPercentage(1e-7));
    }

    /** Between two sweeps 1 / C is straight: half-way from 25 to 85 degC 2 / (1 / 1 + 1 / 0.9). */
    @Test
    void placeInTheToleranceBandLosesWhatTheSweepsLoseOverTemperature() {
        PartInput part = swept(Characteristics.NONE);
        close(microfarad(part, 0, -40, LOW), 8 * 0.8);
        close(microfarad(part, 0, 25, LOW), 8);
        close(microfarad(part, 0, 55, LOW), 8 * 2 / (1 + 1 / 0.9));
        close(microfarad(part, 0, 85, place(Band.Bound.MOST)), 12 * 0.9);
        close(microfarad(part, 0, 85, PlaceInBand.AS_MODELLED), 9.9);
    }

    @Test
    void oneTemperatureTellsNothingOverTemperature() {
        BentPart bent = at(swept(Characteristics.NONE, sweep(0, 25, null, 11, 2e-3), sweep(5, 25, null, 6, 2e-3)), 0, -40, LOW);
        close(bent.capacitanceF(), 8e-6);
        assertThat(bent.notes()).extracting(BendNote::kind).contains(BendNote.Kind.TEMPERATURE_FLAT);
    }

    @Test
    void beyondTheOutermostSweepItsValueIsHeldAndThatIsSaid() {
        BentPart bent = at(swept(Characteristics.NONE), 0, -55, LOW);
        close(bent.capacitanceF(), 6.4e-6);
        assertThat(bent.notes()).extracting(BendNote::kind).contains(BendNote.Kind.HELD).doesNotContain(BendNote.Kind.TEMPERATURE_FLAT);
    }

    /** Swept only hot: the colder one is the nearest to 25 degC that is known. */
    @Test
    void sweepsAwayFromTheReferenceTellFromTheNearestOne() {
        PartInput part = swept(Characteristics.NONE, sweep(0, 60, null, 10, 2e-3), sweep(0, 100, null, 9, 2e-3));
        close(microfarad(part, 0, 100, LOW), 8 * 0.9);
        close(microfarad(part, 0, 25, LOW), 8);
    }

    @Test
    void typedCurveRules() {
        Characteristics typed = Characteristics.NONE.withOverTemperature(CharacteristicCurve.linear(-40, 0.5, 25, 1));
        close(microfarad(swept(typed), 0, -40, LOW), 8 * 0.5);
    }

    /** The interpolated sweep has 20 mohm at -40 degC; a typed curve that says the same counts only from there on. */
    @Test
    void resistanceOverTemperatureIsThatOfTheSweepsAndCountsOnce() {
        Characteristics typed = new Characteristics(null, null, null, null, new ResistanceCurve(CharacteristicCurve.linear(-55, 20, -40, 10, 25, 1), 1e5), null);
        for (PartInput part : List.of(swept(Characteristics.NONE), swept(typed))) {
            close(at(part, 0, -40, LOW).model().at(1e5).resistanceOhm(), 20e-3);
            close(at(part, 0, 25, LOW).model().at(1e5).resistanceOhm(), 2e-3);
            close(at(part, 0, 55, LOW).model().at(1e5).resistanceOhm(), 1.5e-3);
        }
        close(at(swept(Characteristics.NONE), 0, -55, LOW).model().at(1e5).resistanceOhm(), 20e-3);
        close(at(swept(typed), 0, -55, LOW).model().at(1e5).resistanceOhm(), 40e-3);
    }

    @Test
    void biasAndTemperatureTogetherAreWhatTheSweepAtBothShows() {
        PartInput part = swept(Characteristics.NONE, sweep(0, 25, null, 11, 2e-3), sweep(5, 25, null, 5.5, 2e-3), sweep(0, -40, null, 8.8, 2e-3),
                sweep(5, -40, null, 3.3, 2e-3));
        close(microfarad(part, 5, -40, LOW), 8 * 0.3);
        close(microfarad(part, 5, 25, LOW), 8 * 0.5);
    }

    /** Cold was swept only under bias; the typed curve takes the half that the bias makes out again. */
    @Test
    void typedCurveOverBiasIsTakenOutOfSweepsUnderBias() {
        Characteristics typed = Characteristics.NONE.withOverBias(CharacteristicCurve.linear(0, 1, 5, 0.5));
        PartInput part = swept(typed, sweep(0, 25, null, 11, 2e-3), sweep(5, -40, null, 4.4, 2e-3));
        close(microfarad(part, 0, -40, LOW), 8 * 0.8);
        close(microfarad(part, 5, -40, LOW), 8 * 0.8 * 0.5);
    }

    /** 5 % a decade: the cold sweep of the tenfold age has lost 5 % by that alone. */
    @Test
    void whatAgeMadeOfASweepIsNotPutDownToTemperatureOrBias() {
        Characteristics ageing = new Characteristics(null, null, null, Ageing.ofPercentPerDecade(5), null, null);
        PartInput part = swept(ageing, sweep(0, 25, 1000.0, 11, 2e-3), sweep(0, -40, 10_000.0, 8.8 * 0.95, 2e-3), sweep(5, 25, 10_000.0, 5.5 * 0.95, 2e-3));
        close(microfarad(part, 0, -40, LOW), 8 * 0.8);
        close(microfarad(part, 5, 25, LOW), 8 * 0.5);
        close(part.at(new OperatingPoint(0, -40, 10_000.0), LOW).capacitanceF(), 8e-6 * 0.8 * 0.95);
    }

    /** X7R promises 15 % either way to all parts; one sample lost 20 % cold and 10 % hot. */
    @Test
    void promiseOfAClassCodeStandsWhereItIsFartherOut() {
        PartInput part = swept(new Characteristics(null, null, CeramicCode.find("X7R").orElseThrow(), null, null, null));
        close(microfarad(part, 0, -40, LOW), 8 * 0.8);
        close(microfarad(part, 0, 85, LOW), 8 * 0.85);
        close(microfarad(part, 0, 85, place(Band.Bound.MOST)), 12 * 1.15);
        close(microfarad(part, 0, 85, place(Band.Bound.TYPICAL)), 10 * 0.9);
        close(microfarad(part, 0, 25, LOW), 8);
    }

    /** At -20 degC, the rail's coldest, 20 of the 65 K from the cold sweep to the one at 25 degC. */
    @Test
    void coldCornerOfABankHasWhatIsLeft() {
        EvaluationInput input = Rails.input(Rails.everything(),
                new BranchInput("swept", 1, null, null, 10.0, swept(Characteristics.NONE), SeriesPath.NONE, SeriesPath.NONE, "test", true));
        assertThat(Corner.of(Fitting.of(input).get(0))).filteredOn(corner -> corner.name().equals("cold and old, ESR high, capacitances low"))
                .singleElement().satisfies(corner -> close(corner.parts().get(0).capacitanceF(), 8e-6 / (45.0 / 65 / 0.8 + 20.0 / 65)));
    }
}
