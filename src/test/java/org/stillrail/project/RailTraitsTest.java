package org.stillrail.project;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** The distance is a definition of ours; expected values are its formula worked out by hand. */
class RailTraitsTest {

    private static final RailTraits ASKED = new RailTraits(3.3, 5, 500e3, 2.0);

    @Test
    void twiceOrHalfInOneFigureIsADistanceOfOne() {
        assertThat(ASKED.distanceTo(new RailTraits(6.6, 5, 500e3, 2.0))).isCloseTo(1, within(1e-12));
        assertThat(ASKED.distanceTo(new RailTraits(3.3, 2.5, 500e3, 2.0))).isCloseTo(1, within(1e-12));
        assertThat(ASKED.distanceTo(new RailTraits(6.6, 2.5, 1e6, 4.0))).isCloseTo(2, within(1e-12));
    }

    @Test
    void aLoadStepThatIsNotAskedDoesNotMatterAndOneThatIsMissingThereCountsAsOne() {
        assertThat(new RailTraits(3.3, 5, 500e3, null).distanceTo(ASKED)).isZero();
        assertThat(ASKED.distanceTo(new RailTraits(3.3, 5, 500e3, null))).isCloseTo(1, within(1e-12));
    }

    @Test
    void aFigureOfZeroOnOneSideIsInfinitelyFar() {
        assertThat(ASKED.distanceTo(new RailTraits(3.3, 0, 500e3, 2.0))).isInfinite();
        assertThat(new RailTraits(3.3, 0, 500e3, null).distanceTo(new RailTraits(3.3, 0, 500e3, null))).isZero();
    }

    @Test
    void differencesAreSaidInWords() {
        assertThat(ASKED.differencesTo(ASKED)).isEmpty();
        assertThat(ASKED.differencesTo(new RailTraits(5, 2.5, 500e3, null))).containsExactly(
                "output 5\u00a0V instead of 3.3\u00a0V (1.5 times as much)", "load 2.5\u00a0A instead of 5\u00a0A (50\u00a0%)",
                "no load step was asked there");
    }

    @Property
    void theDistanceIsTheSameBothWaysAndObeysTheTriangle(
            @ForAll @DoubleRange(min = 0.1, max = 100) double a, @ForAll @DoubleRange(min = 0.1, max = 100) double b,
            @ForAll @DoubleRange(min = 0.1, max = 100) double c) {
        RailTraits x = new RailTraits(a, b, c * 1e4, a);
        RailTraits y = new RailTraits(b, c, a * 1e4, c);
        RailTraits z = new RailTraits(c, a, b * 1e4, b);
        assertThat(x.distanceTo(y)).isCloseTo(y.distanceTo(x), within(1e-9));
        assertThat(x.distanceTo(z)).isLessThanOrEqualTo(x.distanceTo(y) + y.distanceTo(z) + 1e-9);
    }
}
