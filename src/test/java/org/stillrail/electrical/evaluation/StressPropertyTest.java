package org.stillrail.electrical.evaluation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.capacitor.CharacteristicCurve;
import org.stillrail.electrical.capacitor.Characteristics;
import org.stillrail.electrical.capacitor.OperatingPoint;
import org.stillrail.electrical.capacitor.ResistanceCurve;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.capacitor.Technology;
import org.stillrail.electrical.requirement.Ambient;
import org.stillrail.electrical.requirement.ConverterFigures;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.requirement.Requirement;
import org.stillrail.electrical.requirement.Topology;
import org.stillrail.electrical.requirement.Verdict;
import org.stillrail.electrical.stress.LifeRating;
import org.stillrail.electrical.stress.ThermalResistance;

/** What holds for the warmth and the life of a bulk part beside ceramics, whatever the figures. */
class StressPropertyTest {

    private static final Characteristics FALLING = new Characteristics(
            null, null, null, null, new ResistanceCurve(CharacteristicCurve.linear(-40, 6, 25, 1, 105, 0.5), 100e3), null);

    private static RailFigures rail(double inductanceH, double hottestC) {
        RailFigures rail = Rails.with(Rails.rippleOnly(0.5), new Ambient(Math.min(20, hottestC), Math.min(20, hottestC), hottestC, Rails.CITATION));
        return Rails.withLife(Rails.with(rail, new ConverterFigures(Topology.BUCK, inductanceH, 0, 0.01, 1, Rails.SWITCHING_HZ, 0, null, 15.0)), 1000);
    }

    private static Verdict verdict(Requirement requirement, RailFigures rail, double esrOhm) {
        PartInput part = new PartInput(List.of(new PartInput.Member(OperatingPoint.REFERENCE, ModelInput.of(new SeriesRlc(330e-6, esrOhm, 5e-9)))), 120,
                330e-6, false, FALLING, -0.2, 0.2, 1.0, 1.0);
        BranchInput bulk = new BranchInput("bulk", 1, "TEST", Technology.WET_ALUMINIUM, 10.0, part, SeriesPath.NONE, SeriesPath.NONE, "test", false)
                .withRatings(new RatingInput(null, 105.0, null, null, ThermalResistance.given(80, "test"), LifeRating.of(2000, 105)));
        return Rails.verdicts(Rails.input(rail, bulk, Rails.ceramic(2))).on(requirement);
    }

    @Property(tries = 30)
    void moreRippleNeverCools(
            @ForAll @Scale(8) @DoubleRange(min = 1e-6, max = 2e-5) double inductanceH, @ForAll @DoubleRange(min = 0.3, max = 0.95) double share,
            @ForAll @DoubleRange(min = 0.01, max = 0.2) double esrOhm) {
        double before = verdict(Requirement.TEMPERATURE, rail(inductanceH, 60), esrOhm).value();
        assertThat(verdict(Requirement.TEMPERATURE, rail(inductanceH * share, 60), esrOhm).value()).isGreaterThanOrEqualTo(before);
    }

    @Property(tries = 30)
    void hotterNeverLengthensLife(
            @ForAll @DoubleRange(min = 20, max = 90) double hottestC, @ForAll @DoubleRange(min = 1, max = 15) double moreK,
            @ForAll @DoubleRange(min = 0.01, max = 0.2) double esrOhm) {
        double before = verdict(Requirement.LIFE, rail(4e-6, hottestC), esrOhm).value();
        assertThat(verdict(Requirement.LIFE, rail(4e-6, hottestC + moreK), esrOhm).value()).isLessThanOrEqualTo(before);
    }
}
