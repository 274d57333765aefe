package org.stillrail.electrical.capacitor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

/** Arithmetic of the definitions: what is left of a capacitance, worked out by hand beside each check. */
class CharacteristicsTest {

    private static final Source BY_HAND = Source.independent("shares read off the curves and multiplied by hand");

    private static final CharacteristicCurve BIAS = CharacteristicCurve.linear(0, 1, 2, 0.9, 4, 0.6, 6, 0.4);
    private static final CharacteristicCurve WARMTH = CharacteristicCurve.linear(-40, 0.8, 25, 1, 85, 0.9);
    private static final ResistanceCurve COLD = new ResistanceCurve(CharacteristicCurve.linear(-40, 8, 25, 1, 105, 0.5), 100e3);
    private static final Characteristics CERAMIC =
            new Characteristics(BIAS, WARMTH, null, Ageing.ofPercentPerDecade(2.5), null, null);
    private static final Characteristics ELECTROLYTIC =
            new Characteristics(null, null, null, null, COLD, new Drift(0.8, 2));

    private static final SeriesRlc PART = new SeriesRlc(1e-5, 0.01, 1e-9);

    private static OperatingPoint at(double biasV, double temperatureC, Double ageHours) {
        return new OperatingPoint(biasV, temperatureC, ageHours);
    }

    @Test
    void sharesMultiply() {
        BentPart bent = CERAMIC.bend(PART, ModelBasis.datasheet(1e-5), at(3, -40, 1e4), PlaceInBand.AS_MODELLED);
        double expected = 1e-5 * 0.75 * 0.8 * (1 - 0.025);
        Check.that(Topic.CHARACTERISTICS, "10 uF at 75 % by bias, 80 % by temperature and 2.5 % lost in a decade of age").source(BY_HAND)
                .expected("F", expected).relative(1e-11).got(bent.capacitanceF());
        assertThat(bent.nominalShare()).isCloseTo(0.75 * 0.8 * 0.975, within(1e-12));
        assertThat(bent.model().at(1e3).reactanceOhm())
                .isCloseTo(new SeriesRlc(expected, 0.01, 1e-9).at(1e3).reactanceOhm(), withPercentage(1e-9));
        assertThat(bent.notes().stream().map(BendNote::sentence).toList()).singleElement().asString().contains("ESR over temperature");
    }

    @Test
    void nothingIsAppliedTwiceToASweepTakenThere() {
        OperatingPoint point = at(3, -40, 1e4);
        BentPart bent = CERAMIC.bend(PART, new ModelBasis(1e-5, 1.2e-5, point), point, PlaceInBand.AS_MODELLED);
        assertThat(bent.model()).isSameAs(PART);
        assertThat(bent.capacitanceF()).isEqualTo(1e-5);
        assertThat(bent.notes().stream().map(BendNote::sentence).toList()).isEmpty();
    }

    @Test
    void sweepAtABiasIsBentOnlyFromThere() {
        BentPart bent = CERAMIC.bend(PART, new ModelBasis(1e-5, 1.2e-5, at(2, 25, null)), at(4, 25, null), PlaceInBand.AS_MODELLED);
        Check.that(Topic.CHARACTERISTICS, "Sweep of 10 uF taken at 2 V, where 90 % are left, bent to 4 V, where 60 % are left").source(BY_HAND)
                .expected("F", 1e-5 * 0.6 / 0.9).relative(1e-11).got(bent.capacitanceF());
        BentPart back = CERAMIC.bend(PART, new ModelBasis(1e-5, 1.2e-5, at(2, 25, null)), at(0, 25, null), PlaceInBand.AS_MODELLED);
        assertThat(back.capacitanceF()).isCloseTo(1e-5 / 0.9, withPercentage(1e-9));
    }

    @Test
    void toleranceRefersToNominalAndNotToTheSample() {
        PlaceInBand low = new PlaceInBand(-0.2, 1, Band.Bound.TYPICAL, false);
        BentPart bent = CERAMIC.bend(PART, new ModelBasis(1e-5, 1.2e-5, at(2, 25, null)), at(4, 25, null), low);
        assertThat(bent.capacitanceF()).isCloseTo(1.2e-5 * 0.8 * 0.6, withPercentage(1e-9));
        assertThat(bent.nominalShare()).isCloseTo(0.48, within(1e-12));
    }

    @Test
    void negativeBiasCountsByItsSize() {
        assertThat(CERAMIC.capacitanceShare(at(-3, 25, null), Band.Bound.TYPICAL)).isCloseTo(0.75, within(1e-12));
    }

    @Test
    void classCodeGivesBoundsWhereNoCurveIsKnownAndACurveOverridesIt() {
        CeramicCode x7r = CeramicCode.find("X7R").orElseThrow();
        Characteristics byCode = new Characteristics(null, null, x7r, null, null, null);
        OperatingPoint hot = at(0, 85, null);
        assertThat(byCode.capacitanceShare(hot, Band.Bound.LEAST)).isCloseTo(0.85, within(1e-12));
        assertThat(byCode.capacitanceShare(hot, Band.Bound.TYPICAL)).isEqualTo(1);
        assertThat(byCode.capacitanceShare(hot, Band.Bound.MOST)).isCloseTo(1.15, within(1e-12));
        assertThat(byCode.bend(PART, ModelBasis.datasheet(1e-5), at(0, 150, null), PlaceInBand.AS_MODELLED).notes().stream().map(BendNote::sentence).toList())
                .anyMatch(note -> note.contains("promises nothing at 150.0"));
        Characteristics byCurve = new Characteristics(null, WARMTH, x7r, null, null, null);
        assertThat(byCurve.capacitanceShare(hot, Band.Bound.LEAST)).isCloseTo(0.9, within(1e-12));
    }

    @Test
    void coldAddsSeriesResistanceAndHeatTakesItAway() {
        SeriesRlc part = new SeriesRlc(2.2e-4, 0.2, 1e-8);
        BentPart cold = ELECTROLYTIC.bend(part, ModelBasis.datasheet(2.2e-4), at(0, -40, null), PlaceInBand.AS_MODELLED);
        Check.that(Topic.CHARACTERISTICS, "200 mohm of wet aluminium at -40 degC, eight times its ESR").source(BY_HAND).expected("ohm", 1.6).relative(1e-11)
                .got(cold.model().at(1e5).resistanceOhm());
        assertThat(cold.resistanceFactor()).isEqualTo(8);
        BentPart hot = ELECTROLYTIC.bend(part, ModelBasis.datasheet(2.2e-4), at(0, 105, null), PlaceInBand.AS_MODELLED);
        assertThat(hot.model().at(1e5).resistanceOhm()).isCloseTo(0.1, withPercentage(1e-9));
        // A sweep taken in the cold already has that resistance.
        BentPart measuredCold = ELECTROLYTIC.bend(
                part, new ModelBasis(2.2e-4, 2.2e-4, at(0, -40, null)), at(0, 25, null), PlaceInBand.AS_MODELLED);
        assertThat(measuredCold.model().at(1e5).resistanceOhm()).isCloseTo(0.2 / 8, withPercentage(1e-9));
    }

    @Test
    void heatNeverMakesAMeasuredResistanceNegative() {
        FrequencyGrid grid = FrequencyGrid.logSpaced(1e3, 1e7, 81);
        double[] r = new double[81];
        double[] x = new double[81];
        DatasheetModel.of(new LossFigures(2.2e-4, 0.15, 120, 0.03, 1e5), 1e-8).addImpedanceTo(grid, r, x);
        TableModel table = TableModel.of(grid.toArray(), r, x);
        BentPart hot = ELECTROLYTIC.bend(table, ModelBasis.datasheet(2.2e-4), at(0, 105, null), PlaceInBand.AS_MODELLED);
        for (int i = 0; i < grid.size(); i++) {
            assertThat(hot.model().at(grid.hz(i)).resistanceOhm()).isPositive().isLessThan(r[i]);
        }
    }

    @Test
    void endOfLifeDriftsBothAndItsAbsenceIsSaid() {
        SeriesRlc part = new SeriesRlc(2.2e-4, 0.2, 1e-8);
        PlaceInBand old = new PlaceInBand(-0.2, 1.5, Band.Bound.TYPICAL, true);
        BentPart bent = ELECTROLYTIC.bend(part, ModelBasis.datasheet(2.2e-4), OperatingPoint.REFERENCE, old);
        assertThat(bent.capacitanceF()).isCloseTo(2.2e-4 * 0.8 * 0.8, withPercentage(1e-9));
        assertThat(bent.model().at(1e5).resistanceOhm()).isCloseTo(0.2 * 1.5 * 2, withPercentage(1e-9));
        assertThat(Characteristics.NONE.bend(part, ModelBasis.datasheet(2.2e-4), OperatingPoint.REFERENCE, old).notes().stream().map(BendNote::sentence).toList())
                .anyMatch(note -> note.contains("end of life"));
    }

    @Test
    void whatIsNotKnownOrNotCoveredIsSaid() {
        BentPart bent = Characteristics.NONE.bend(PART, ModelBasis.datasheet(1e-5), at(3, 60, 5000.0), PlaceInBand.AS_MODELLED);
        assertThat(bent.model()).isSameAs(PART);
        assertThat(bent.notes().stream().map(BendNote::sentence).toList()).hasSize(4);
        assertThat(CERAMIC.bend(PART, ModelBasis.datasheet(1e-5), at(10, 25, null), PlaceInBand.AS_MODELLED).notes().stream().map(BendNote::sentence).toList())
                .anyMatch(note -> note.contains("does not reach 10.0 V"));
    }

    @Test
    void seriesCapacitanceOfASweepIsReadAtTheTestFrequency() {
        ModelBasis basis = ModelBasis.sweep(new SeriesRlc(9.1e-6, 0.01, 1e-9), 120, 1e-5, OperatingPoint.REFERENCE);
        assertThat(basis.capacitanceF()).isCloseTo(9.1e-6, withPercentage(1e-4));
        assertThatThrownBy(() -> ModelBasis.sweep(PART, 1e8, 1e-5, OperatingPoint.REFERENCE)).hasMessageContaining("not capacitive");
    }

    @Test
    void curvesAreStraightBetweenTheirPointsAndHeldOutside() {
        assertThat(BIAS.at(1)).isCloseTo(0.95, within(1e-12));
        assertThat(BIAS.at(6)).isEqualTo(0.4);
        assertThat(BIAS.at(9)).isEqualTo(0.4);
        assertThat(BIAS.covers(9)).isFalse();
        CharacteristicCurve kf = CharacteristicCurve.logarithmic(120, 0.5, 12000, 1);
        assertThat(kf.at(1200)).isCloseTo(0.75, within(1e-12));
        RippleRating rating = new RippleRating(2, kf, CharacteristicCurve.linear(65, 1.5, 105, 1));
        assertThat(rating.frequencyFactor(1e6)).isEqualTo(1);
        assertThat(rating.ratedA(85)).isCloseTo(2.5, within(1e-12));
        assertThatThrownBy(() -> CharacteristicCurve.linear(0, 1, 0, 1)).hasMessageContaining("points[1].x");
        assertThatThrownBy(() -> CharacteristicCurve.linear(0, -1)).hasMessageContaining("points[0].y");
        assertThatThrownBy(() -> CharacteristicCurve.logarithmic(0, 1)).hasMessageContaining("points[0].x");
    }
}
