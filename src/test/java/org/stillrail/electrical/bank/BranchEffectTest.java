package org.stillrail.electrical.bank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.electrical.ripple.BuckCurrent;
import org.stillrail.electrical.ripple.Ripple;

class BranchEffectTest {

    private static final Branch BULK = Banks.branch("bulk", 1, new SeriesRlc(4.7e-4, 0.03, 6e-9));
    private static final Branch CERAMIC = Banks.branch("ceramic", 3, new SeriesRlc(2.2e-5, 0.003, 8e-10));

    @Test
    void eachChangeIsTheFigureOfTheChangedBank() {
        BuckCurrent buck = new BuckCurrent(12, 3.3, 4.7e-6, 400e3, 1);
        List<BankFigure> figures = List.of(
                BankFigure.impedanceAt("|Z| at crossover", 30e3),
                new BankFigure("Ripple", "V", bank -> Ripple.quickPeakToPeakV(bank, buck)));
        List<BranchEffect> effects = BranchEffect.of(Banks.of(BULK, CERAMIC), figures);
        assertThat(effects).extracting(BranchEffect::label).containsExactly("bulk", "ceramic");

        FigureEffect impedance = effects.get(1).figures().get(0);
        assertThat(impedance.now()).isCloseTo(Math.sqrt(Banks.of(BULK, CERAMIC).at(30e3).squaredMagnitude()), within(1e-15));
        assertThat(impedance.none()).isCloseTo(Math.sqrt(BULK.at(30e3).squaredMagnitude()), within(1e-12));
        assertThat(impedance.oneFewer())
                .isCloseTo(Math.sqrt(Banks.of(BULK, CERAMIC.withCount(2)).at(30e3).squaredMagnitude()), within(1e-15));

        FigureEffect ripple = effects.get(1).figures().get(1);
        assertThat(ripple.oneMore()).isLessThan(ripple.now());
        assertThat(ripple.oneFewer()).isGreaterThan(ripple.now());
        assertThat(ripple.none()).isCloseTo(Ripple.of(Banks.of(BULK), buck, 10).peakToPeakV(), withPercentage(0.1));
        assertThat(effects.get(0).figures().get(1).oneFewer()).isNull();
    }

    @Test
    void onlyBranchCannotBeLeftOut() {
        FigureEffect only = BranchEffect.of(Banks.of(CERAMIC), List.of(BankFigure.resistanceAt("ESR", 1e5))).get(0).figures().get(0);
        assertThat(only.none()).isNull();
        assertThat(only.oneMore()).isCloseTo(0.003 / 4, within(1e-15));
    }

    @Test
    void ribbonNamesTheCarrierAndTheTwoThatRing() {
        Branch small = Banks.branch("small", 1, new SeriesRlc(1e-7, 0.02, 5e-10));
        Branch large = Banks.branch("large", 1, new SeriesRlc(1e-5, 0.005, 1e-9));
        Bank bank = Banks.of(small, large);
        FrequencyGrid grid = FrequencyGrid.logSpaced(1e3, 1e9, 601);
        CarrierRibbon ribbon = CarrierRibbon.of(bank, bank.on(grid), bank.extrema(1e3, 1e9));
        assertThat(ribbon.spans()).extracting(CarrierRibbon.Span::branch).containsExactly(1, 0);
        assertThat(ribbon.spans().get(0).fromHz()).isEqualTo(1e3);
        assertThat(ribbon.spans().get(0).toHz()).isEqualTo(ribbon.spans().get(1).fromHz());
        assertThat(ribbon.spans().get(1).toHz()).isEqualTo(1e9);
        // Equal sizes of the reactances, TZ-03: the border between the two carriers.
        assertThat(ribbon.spans().get(0).toHz()).isCloseTo(13059759.8, withPercentage(3));
        assertThat(ribbon.rings()).singleElement().satisfies(ring -> {
            assertThat(ring.inductive()).isEqualTo(new RingSide(1));
            assertThat(ring.capacitive()).isEqualTo(new RingSide(0));
            assertThat(ring.frequencyHz()).isCloseTo(12944801.1, withPercentage(1e-4));
            assertThat(ring.qualityFactor()).isGreaterThan(1);
        });
    }
}
