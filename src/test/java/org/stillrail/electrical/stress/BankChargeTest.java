package org.stillrail.electrical.stress;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.stillrail.electrical.capacitor.Ageing;
import org.stillrail.electrical.capacitor.CharacteristicCurve;
import org.stillrail.electrical.capacitor.Characteristics;
import org.stillrail.electrical.capacitor.ModelBasis;
import org.stillrail.electrical.capacitor.OperatingPoint;
import org.stillrail.electrical.capacitor.PlaceInBand;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

/** Charge and energy as integrals over bias. */
class BankChargeTest {

    private static final Source INTEGRAL = Source.independent("integrals of C dv, C v dv and C dv / v worked out by hand");
    private static final Source QUADRATURE = Source.independent("quadrature of scipy");

    /** From 100 % without bias straight to 20 % at 10 V, in any reference. */
    private static final CharacteristicCurve FALLING = CharacteristicCurve.linear(0, 2, 10, 0.4);

    @Property
    void constantCapacitanceHoldsCVAndHalfCVSquared(
            @ForAll @DoubleRange(min = 0.1, max = 400) double v, @ForAll @DoubleRange(min = 0.01, max = 1e4) double microfarad) {
        double c = microfarad * 1e-6;
        BankCharge bank = new BankCharge(List.of(new BiasCharge(3, c, null)));
        Source textbook = Source.fromMemory("physics textbooks");
        Check.that(Topic.STRESS, "Charge of constant capacitances, C V, random values").source(textbook).expected("the closed form").relative(1e-9)
                .compare("C", 3 * c * v, bank.chargeC(v));
        Check.that(Topic.STRESS, "Energy of constant capacitances, C V^2 / 2, random values").source(textbook).expected("the closed form").relative(1e-9)
                .compare("J", 1.5 * c * v * v, bank.energyJ(v));
        assertThat(bank.bleedF(v, v / 7)).isCloseTo(3 * c * Math.log(7), withPercentage(1e-9));
    }

    /** C = C0 (1 - 0.08 v): Q = C0 (V - 0.04 V^2), E = C0 (V^2 / 2 - 0.08 V^3 / 3), bleed = C0 (ln(V / Vs) - 0.08 (V - Vs)). */
    @Test
    void straightCurve() {
        BiasCharge part = new BiasCharge(2, 1e-5, FALLING);
        assertThat(part.capacitanceF(5)).isCloseTo(2e-5 * 0.6, withPercentage(1e-9));
        assertThat(part.capacitanceF(-5)).isCloseTo(2e-5 * 0.6, withPercentage(1e-9));
        Check.that(Topic.STRESS, "2 x 10 uF that fall straight with bias, at 5 V: charge C0 (V - 0.04 V^2)").source(INTEGRAL)
                .expected("C", 2e-5 * (5 - 0.04 * 25)).relative(1e-9).got(part.chargeC(5));
        Check.that(Topic.STRESS, "2 x 10 uF that fall straight with bias, at 5 V: energy C0 (V^2 / 2 - 0.08 V^3 / 3)").source(INTEGRAL)
                .expected("J", 2e-5 * (12.5 - 0.08 * 125 / 3)).relative(1e-9).got(part.energyJ(5));
        Check.that(Topic.STRESS, "2 x 10 uF that fall straight with bias, bled from 5 V to 1 V: time over resistance").source(INTEGRAL)
                .expected("F", 2e-5 * (Math.log(5) - 0.32)).relative(1e-9).got(part.bleedF(5, 1));
    }

    /** Beyond the last point its value holds: from 10 V to 12 V 20 % are left. */
    @Test
    void pastTheCurveItsLastValueHolds() {
        BiasCharge part = new BiasCharge(1, 1e-5, FALLING);
        assertThat(part.chargeC(12) - part.chargeC(10)).isCloseTo(1e-5 * 0.2 * 2, withPercentage(1e-9));
        assertThat(part.energyJ(12) - part.energyJ(10)).isCloseTo(1e-5 * 0.2 * 22, withPercentage(1e-9));
    }

    /** 1 up to 1 V, then straight over log v to 0.4 at 10 V; to 8 V, bled to 0.5 V. */
    @Test
    void curveOverTheLogarithm() {
        BiasCharge part = new BiasCharge(1, 1, CharacteristicCurve.logarithmic(1, 1, 10, 0.4));
        Check.that(Topic.STRESS, "1 F that falls over log v, at 8 V: charge").source(QUADRATURE).expected("C", 5.489204886432386).relative(1e-9)
                .got(part.chargeC(8));
        Check.that(Topic.STRESS, "1 F that falls over log v, at 8 V: energy").source(QUADRATURE).expected("J", 18.76475510374041).relative(1e-9)
                .got(part.energyJ(8));
        Check.that(Topic.STRESS, "1 F that falls over log v, bled from 8 V to 0.5 V: time over resistance").source(QUADRATURE)
                .expected("F", 2.2092118717919367).relative(1e-9).got(part.bleedF(8, 0.5));
    }

    /** Energy is less than Q V, and less than half of it where the capacitance falls with voltage. */
    @Property
    void fallingCapacitanceStoresLessThanItsChargeSuggests(@ForAll @DoubleRange(min = 0.5, max = 15) double v) {
        BiasCharge part = new BiasCharge(1, 1e-5, FALLING);
        assertThat(part.energyJ(v)).isLessThan(part.chargeC(v) * v / 2);
        assertThat(part.energyJ(v)).isLessThan(0.5 * 1e-5 * v * v);
        assertThat(part.energyJ(v)).isGreaterThan(part.capacitanceF(v) * v * v / 2);
    }

    /** 10 uF nominal, measured as 8 uF at 5 V where 60 % are left, 2 % lost by age in a decade: 8 / 0.6 x 0.98 without bias. */
    @Test
    void partWithCharacteristicsIsBentFromWhereItWasMeasured() {
        Characteristics characteristics = new Characteristics(FALLING, null, null, Ageing.ofPercentPerDecade(2), null, null);
        ModelBasis basis = new ModelBasis(8e-6, 1e-5, new OperatingPoint(5, 25, null));
        BiasCharge charge = BiasCharge.of(2, characteristics, new SeriesRlc(8e-6, 0.01, 0), basis, new OperatingPoint(3.3, 25, 1e4),
                PlaceInBand.AS_MODELLED);
        assertThat(charge.capacitanceF(0)).isCloseTo(2 * 8e-6 / 0.6 * 0.98, withPercentage(1e-9));
        assertThat(charge.capacitanceF(5)).isCloseTo(2 * 8e-6 * 0.98, withPercentage(1e-9));
    }
}
