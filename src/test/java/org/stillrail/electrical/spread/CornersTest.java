package org.stillrail.electrical.spread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.stillrail.electrical.capacitor.Band;
import org.stillrail.electrical.capacitor.BentPart;
import org.stillrail.electrical.capacitor.CharacteristicCurve;
import org.stillrail.electrical.capacitor.Characteristics;
import org.stillrail.electrical.capacitor.ModelBasis;
import org.stillrail.electrical.capacitor.OperatingPoint;
import org.stillrail.electrical.capacitor.PlaceInBand;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.requirement.Ambient;
import org.stillrail.electrical.requirement.ConverterFigures;
import org.stillrail.electrical.requirement.InputRange;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.requirement.Topology;
import org.stillrail.electrical.requirement.VoltageWindow;

/** Figures by hand: 3.3 V within 1 %, 10 to 14 V in, inductor within 20 % and 30 % less at peak current, -20 to 70 degC. */
class CornersTest {

    private static final RailSpread RAIL = new RailSpread(3.3, 0.01, 10, 12, 14, 0.2, 0.7, 0.1, Axis.HIGH, -20, 25, 70);

    private static List<BranchSpread> branches(int count) {
        return IntStream.range(0, count)
                .mapToObj(k -> new BranchSpread("branch " + k, -0.2, 0.1, 0.5, 1.5, 40_000.0))
                .toList();
    }

    private static SpreadCorner named(List<SpreadCorner> corners, String name) {
        return corners.stream().filter(corner -> corner.name().equals(name)).findFirst().orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 6, 16})
    void listIsBoundedNamedAndTheSameEveryTime(int count) {
        List<SpreadCorner> corners = Corners.of(RAIL, branches(count));
        assertThat(corners).hasSizeBetween(24, 64);
        assertThat(corners.get(0).name()).isEqualTo("nominal");
        assertThat(corners).extracting(SpreadCorner::name).doesNotHaveDuplicates();
        assertThat(corners).allSatisfy(corner -> assertThat(corner.branches()).hasSize(count));
        assertThat(Corners.of(RAIL, branches(count))).isEqualTo(corners);
    }

    @Test
    void nominalIsAsModelledAtTheRailsVoltage() {
        SpreadCorner nominal = Corners.of(RAIL, branches(2)).get(0);
        assertThat(nominal.inductanceFactor()).isEqualTo(1);
        assertThat(nominal.switchingFactor()).isEqualTo(1);
        assertThat(nominal.inputV()).isEqualTo(12);
        assertThat(nominal.branches().get(1))
                .isEqualTo(new BranchCorner(new OperatingPoint(3.3, 25, null), new PlaceInBand(null, 1, Band.Bound.TYPICAL, false)));
    }

    @Test
    void mostRippleOfACoolOldBank() {
        SpreadCorner corner = named(Corners.of(RAIL, branches(2)), "cold and old, ESR high, most ripple current");
        assertThat(corner.inputV()).isEqualTo(14);
        assertThat(corner.inductanceFactor()).isCloseTo(0.8 * 0.7, within(1e-12));
        assertThat(corner.switchingFactor()).isCloseTo(0.9, within(1e-12));
        assertThat(corner.ambientC()).isEqualTo(-20);
        assertThat(corner.branches().get(0))
                .isEqualTo(new BranchCorner(new OperatingPoint(3.3, -20, 40_000.0), new PlaceInBand(-0.2, 1.5, Band.Bound.LEAST, true)));
    }

    @Test
    void outputVoltageIsTheBias() {
        SpreadCorner high = named(Corners.of(RAIL, branches(1)), "output voltage high");
        assertThat(high.outputV()).isCloseTo(3.333, within(1e-12));
        assertThat(high.branches().get(0).point().biasV()).isCloseTo(3.333, within(1e-12));
    }

    @Test
    void oneBranchIsHighWhileTheOthersAreLow() {
        List<SpreadCorner> corners = Corners.of(RAIL, branches(3));
        SpreadCorner corner = named(corners, "hot and new, ESR low, 'branch 1' high and the others low");
        assertThat(corner.branches()).extracting(branch -> branch.place().deviation()).containsExactly(-0.2, 0.1, -0.2);
        assertThat(corner.branches()).allSatisfy(branch -> assertThat(branch.place().resistanceFactor()).isEqualTo(0.5));
        SpreadCorner other = named(corners, "hot and new, ESR low, 'branch 1' low and the others high");
        assertThat(other.branches()).extracting(branch -> branch.place().deviation()).containsExactly(0.1, -0.2, 0.1);
    }

    /** Of two branches 'first high, second low' and 'second low, first high' are one corner. */
    @Test
    void cornersThatComeOutAlikeAreListedOnce() {
        int alone = Corners.of(RAIL, branches(1)).size();
        assertThat(Corners.of(RAIL, branches(2))).hasSize(alone + 2);
        assertThat(Corners.of(RAIL, branches(3))).hasSize(alone + 6);
        RailSpread still = new RailSpread(3.3, 0, 12, 12, 12, 0, 1, 0, Axis.HIGH, 25, 25, 25);
        BranchSpread unknown = new BranchSpread("bulk", null, null, null, null, null);
        List<SpreadCorner> few = Corners.of(still, List.of(unknown));
        assertThat(few.size()).isLessThan(10);
    }

    /** Tolerance and saturation multiply: 0.8 x 0.7. */
    @Test
    void aSaturatedInductorHasLeastOfItsInductance() {
        assertThat(named(Corners.of(RAIL, branches(1)), "inductance low and saturated").inductanceFactor()).isCloseTo(0.56, within(1e-15));
        RailSpread unsaturated = new RailSpread(3.3, 0, 12, 12, 12, 0.2, 1, 0, Axis.HIGH, 25, 25, 25);
        assertThat(named(Corners.of(unsaturated, branches(1)), "inductance low").inductanceFactor()).isCloseTo(0.8, within(1e-15));
    }

    @Test
    void badSpreadsAreRefusedByName() {
        assertThatThrownBy(() -> Corners.of(RAIL, branches(17))).hasMessageContaining("1 to 16");
        assertThatThrownBy(() -> new BranchSpread("a", 0.1, -0.1, null, null, null)).hasMessageContaining("leastDeviation");
        assertThatThrownBy(() -> new BranchSpread("a", -0.1, null, null, null, null)).hasMessageContaining("belong together");
        assertThatThrownBy(() -> new RailSpread(3.3, 0, 14, 12, 10, 0, 1, 0, Axis.HIGH, 25, 25, 25)).hasMessageContaining("input");
        assertThatThrownBy(() -> new RailSpread(3.3, 0, 12, 12, 12, 0, 1.1, 0, Axis.HIGH, 25, 25, 25)).hasMessageContaining("saturationShare");
    }

    @Test
    void railSpeaksForItself() {
        ConverterFigures buck = new ConverterFigures(Topology.BUCK, 4.7e-6, 20, 0.01, 1, 300e3, 10, null, null);
        ConverterFigures saturating = new ConverterFigures(Topology.BUCK, 4.7e-6, 20, 0.01, 1, 300e3, 10, null, null, null, null, 70.0, null);
        RailFigures full = new RailFigures(3.3, 5, new InputRange(10, 12, 14), saturating, null, new VoltageWindow(0.1, 0.1, 0.033, 0.01, null),
                null, null, new Ambient(-20, 25, 70, null), null, null);
        assertThat(RailSpread.of(full)).isEqualTo(RAIL);
        RailFigures bare = new RailFigures(3.3, 5, InputRange.fixed(12), buck, null, null, null, null, null, null, null);
        assertThat(RailSpread.of(bare)).isEqualTo(new RailSpread(3.3, 0, 12, 12, 12, 0.2, 1, 0.1, Axis.HIGH, 25, 25, 25));
    }

    /** Hot and new with little ESR, C low: 10 uF less 20 % at a curve's 80 % for 3.3 V; half the ESR. */
    @Test
    void cornerBendsAPart() {
        Characteristics characteristics = new Characteristics(CharacteristicCurve.linear(0, 1, 3.3, 0.8), null, null, null, null, null);
        BentPart part = named(Corners.of(RAIL, branches(1)), "hot and new, ESR low, capacitances low").branches().get(0)
                .bend(characteristics, new SeriesRlc(1e-5, 0.01, 0), ModelBasis.datasheet(1e-5));
        assertThat(part.capacitanceF()).isCloseTo(1e-5 * 0.8 * 0.8, within(1e-15));
        assertThat(part.model().at(1e5).resistanceOhm()).isCloseTo(0.005, within(1e-12));
    }
}
