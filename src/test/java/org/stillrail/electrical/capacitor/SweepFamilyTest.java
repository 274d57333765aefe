package org.stillrail.electrical.capacitor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stillrail.electrical.capacitor.SweepFamily.Member;
import org.stillrail.electrical.curve.FrequencyGrid;

class SweepFamilyTest {

    private static Member member(double biasV, double temperatureC, double c, double r) {
        return new Member(new OperatingPoint(biasV, temperatureC, 1000.0), new SeriesRlc(c, r, 1e-9));
    }

    private static final SweepFamily FAMILY = new SweepFamily(List.of(
            member(0, 25, 1e-5, 0.010), member(4, 25, 5e-6, 0.014), member(0, 85, 8e-6, 0.006), member(4, 85, 4e-6, 0.010)));

    @Test
    void betweenSweepsTheImpedanceIsInProportion() {
        Member found = FAMILY.near(new OperatingPoint(1, 40, null));
        assertThat(found.point().biasV()).isEqualTo(1);
        assertThat(found.point().temperatureC()).isEqualTo(40);
        double cool = 0.75 * 0.010 + 0.25 * 0.014;
        double warm = 0.75 * 0.006 + 0.25 * 0.010;
        assertThat(found.model().at(1e5).resistanceOhm()).isCloseTo(0.75 * cool + 0.25 * warm, within(1e-12));
        Slopes.check(found.model(), 1e5);
        FrequencyGrid grid = FrequencyGrid.of(1e5);
        double[] r = new double[1];
        double[] x = new double[1];
        found.model().addImpedanceTo(grid, r, x);
        assertThat(x[0]).isCloseTo(found.model().at(1e5).reactanceOhm(), within(1e-12));
    }

    @Test
    void outsideTheOutermostSweepSaysWhereItStands() {
        Member found = FAMILY.near(new OperatingPoint(-6, 105, null));
        assertThat(found.point().biasV()).isEqualTo(4);
        assertThat(found.point().temperatureC()).isEqualTo(85);
        assertThat(found.model()).isEqualTo(new SeriesRlc(4e-6, 0.010, 1e-9));
    }

    @Test
    void sweepAtThePointIsTakenAsItIs() {
        assertThat(FAMILY.near(new OperatingPoint(4, 25, null)).model()).isEqualTo(new SeriesRlc(5e-6, 0.014, 1e-9));
    }

    @Test
    void temperaturesWithDifferentBiasesAreNotMixed() {
        SweepFamily uneven = new SweepFamily(List.of(member(0, 25, 1e-5, 0.01), member(3, 85, 6e-6, 0.008)));
        assertThat(uneven.near(new OperatingPoint(2.5, 40, null)).point()).isEqualTo(new OperatingPoint(3, 85, 1000.0));
    }

    @Test
    void twoSweepsAtOnePointAreRefused() {
        assertThatThrownBy(() -> new SweepFamily(List.of(member(1, 25, 1e-5, 0.01), member(-1, 25, 1e-5, 0.01))))
                .hasMessageContaining("same bias and temperature");
    }
}
