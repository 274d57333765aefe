package org.stillrail.electrical.evaluation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.stillrail.electrical.capacitor.Characteristics;
import org.stillrail.electrical.capacitor.PlaceInBand;
import org.stillrail.electrical.ripple.Ripple;
import org.stillrail.electrical.spread.Axis;
import org.stillrail.electrical.spread.BranchCorner;
import org.stillrail.electrical.spread.SpreadCorner;
import org.stillrail.electrical.spread.Strays;

/** Random banks wherever they strayed to. */
class StressSpreadPropertyTest {

    /** Tolerances that leave no choice draw the corner that stands there. */
    @Property(tries = 20)
    void aBankDrawnAtACornerIsThatCorner(
            @ForAll @DoubleRange(min = -0.3, max = 0.3) double capacitance, @ForAll @DoubleRange(min = 0.3, max = 2) double esr,
            @ForAll @DoubleRange(min = 0.8, max = 1.2) double inductor) {
        EvaluationInput input = Rails.input(Rails.withLife(StressSpreadTest.loose(0), 40_000), StressSpreadTest.bulk(Characteristics.NONE, 0.3, 0.3, 2), StressSpreadTest.ceramic(0.3));
        Corner nominal = Corner.surroundings(input, Axis.NOMINAL, false, Axis.NOMINAL);
        SpreadCorner now = nominal.conditions();
        List<BranchCorner> places = List.of(
                new BranchCorner(now.branches().get(0).point(), place(capacitance, esr)), new BranchCorner(now.branches().get(1).point(), place(-capacitance, 1)));
        Corner corner = Corner.bent(
                new SpreadCorner("drawn", places, inductor, 1, now.outputV(), now.inputV(), now.ambientC()), Fitting.named(input));
        StressSpread stress = new StressSpread(input, nominal, 0.01);
        double rippleV = Ripple.quickPeakToPeakV(corner.bank(), corner.current(input.rail()));
        double[] drawn = stress.of(new Strays(List.of(capacitance, -capacitance), List.of(esr - 1, 0.0), inductor), rippleV);
        List<Double> expected = StressSpreadTest.stress(corner, input);
        assertThat(drawn).hasSameSizeAs(expected);
        for (int i = 0; i < drawn.length; i++) {
            assertThat(drawn[i]).isCloseTo(expected.get(i), withPercentage(1e-6));
        }
    }

    private static PlaceInBand place(double capacitance, double esr) {
        return new PlaceInBand(capacitance, esr, PlaceInBand.AS_MODELLED.change(), false);
    }
}
