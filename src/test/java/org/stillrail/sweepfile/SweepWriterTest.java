package org.stillrail.sweepfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.stillrail.sweepfile.SweepText.assertRelative;
import static org.stillrail.sweepfile.SweepText.read;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.curve.FrequencyGrid;

class SweepWriterTest {

    private final Curve curve = new Curve(FrequencyGrid.of(0.01, 1000, 1.23456789e6, 3e9),
            new double[] {0.0123456789012345, 1, 1e-9, 25}, new double[] {-1.0 / 3, 2, -3e5, 1e3});

    @Test
    void touchstoneOfImpedancesReadsBackAsItWas() {
        String text = SweepWriter.touchstoneZ(curve, List.of("Part C1, sample 3"));
        assertThat(text).startsWith("! Part C1, sample 3\n").contains("\n# Hz Z RI R 1\n").contains("\n1000 1 2\n");
        assertSame(read(text, "a.s1p", Fixture.IMPEDANCE), 0);
    }

    @Test
    void touchstoneOfReflectionsReadsBackWithinRounding() {
        String text = SweepWriter.touchstoneS(curve, 75, List.of());
        assertThat(text).startsWith("# Hz S RI R 75\n");
        ReadSweep sweep = read(text, "a.s1p", Fixture.REFLECTION);
        assertThat(sweep.referenceOhm()).isEqualTo(75);
        // 1e-9 ohm beside 3e5 ohm of reactance is below what a reflection in doubles can hold.
        for (int i : new int[] {0, 1, 3}) {
            assertRelative(sweep.resistanceOhm()[i], curve.real(i), 1e-9);
            assertRelative(sweep.reactanceOhm()[i], curve.imaginary(i), 1e-9);
        }
    }

    @Test
    void csvReadsBackAsItWasWithoutAMapping() {
        String text = SweepWriter.csv(curve, List.of("two\nlines"));
        assertThat(text).startsWith("# two lines\nfreq/Hz,Re(Z)/Ohm,Im(Z)/Ohm\n0.01,");
        assertSame(read(text, "a.csv", Fixture.IMPEDANCE), 0);
    }

    @Test
    void aReferenceThatIsNoneIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> SweepWriter.touchstoneS(curve, 0, List.of()));
    }

    private void assertSame(ReadSweep sweep, double tolerance) {
        assertThat(sweep.frequencyHz()).isEqualTo(curve.grid().toArray());
        for (int i = 0; i < curve.size(); i++) {
            assertRelative(sweep.resistanceOhm()[i], curve.real(i), tolerance);
            assertRelative(sweep.reactanceOhm()[i], curve.imaginary(i), tolerance);
        }
    }
}
