package org.stillrail.sweepfile.accuracy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.stillrail.electrical.curve.Complex;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.sweepfile.Fixture;
import org.stillrail.sweepfile.ScatteringImpedance;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

class PortExtensionTest {

    /** A shorted line of 50 ohm shows 50 j tan(w t); with the line taken off it is a short. */
    @Test
    void aShortBehindALineBecomesAShort() {
        double delay = 100e-12;
        FrequencyGrid grid = FrequencyGrid.of(1e6, 1e8, 1e9);
        double[] x = new double[3];
        for (int i = 0; i < 3; i++) {
            x[i] = 50 * Math.tan(grid.omega(i) * delay);
        }
        Curve moved = PortExtension.remove(new Curve(grid, new double[3], x), Fixture.REFLECTION, 50, delay);
        for (int i = 0; i < 3; i++) {
            Check.that(Topic.FILES, "Shorted line of 50 ohm and 100 ps, 50 j tan(w t), with the line taken off: |Z|").source(Source.fromMemory("line theory, any textbook"))
                    .expected("0 ohm at 3 frequencies").absolute(1e-10).compare("ohm", 0, moved.magnitude(i));
        }
    }

    @Test
    void aDelayedTransmissionIsTurnedBack() {
        FrequencyGrid grid = FrequencyGrid.of(1e8);
        Complex z = new Complex(0.01, 0.2);
        for (Fixture fixture : new Fixture[] {Fixture.SHUNT_THROUGH, Fixture.SERIES_THROUGH}) {
            Complex late = ScatteringImpedance.scattering(fixture, z, 50).times(Complex.polar(1, -grid.omega(0) * 200e-12));
            Complex seen = ScatteringImpedance.impedance(fixture, late, 50);
            Curve moved = PortExtension.remove(new Curve(grid, new double[] {seen.re()}, new double[] {seen.im()}), fixture, 50, 200e-12);
            assertThat(moved.real(0)).isCloseTo(0.01, Offset.offset(1e-9));
            assertThat(moved.imaginary(0)).isCloseTo(0.2, Offset.offset(1e-9));
        }
    }

    @Test
    void anImpedanceHasNoLineToTakeOff() {
        Curve curve = new Curve(FrequencyGrid.of(1), new double[] {1}, new double[] {0});
        assertThatIllegalArgumentException().isThrownBy(() -> PortExtension.remove(curve, Fixture.IMPEDANCE, 50, 1e-12));
        assertThatIllegalArgumentException().isThrownBy(() -> PortExtension.remove(curve, Fixture.REFLECTION, 50, Double.NaN));
    }
}
