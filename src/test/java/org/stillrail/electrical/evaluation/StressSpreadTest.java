package org.stillrail.electrical.evaluation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.stillrail.electrical.bank.Distance;
import org.stillrail.electrical.bank.Node;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.capacitor.CharacteristicCurve;
import org.stillrail.electrical.capacitor.Characteristics;
import org.stillrail.electrical.capacitor.OperatingPoint;
import org.stillrail.electrical.capacitor.ResistanceCurve;
import org.stillrail.electrical.capacitor.RippleRating;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.capacitor.Technology;
import org.stillrail.electrical.requirement.Ambient;
import org.stillrail.electrical.requirement.ConverterFigures;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.requirement.Topology;
import org.stillrail.electrical.requirement.Verdict;
import org.stillrail.electrical.ripple.Ripple;
import org.stillrail.electrical.spread.Axis;
import org.stillrail.electrical.spread.BranchCorner;
import org.stillrail.electrical.spread.DrawnFigure;
import org.stillrail.electrical.spread.FigureSpread;
import org.stillrail.electrical.spread.MonteCarlo;
import org.stillrail.electrical.spread.RandomFigure;
import org.stillrail.electrical.spread.SpreadCorner;
import org.stillrail.electrical.spread.Strays;
import org.stillrail.electrical.spread.Tolerance;
import org.stillrail.electrical.stress.LifeRating;
import org.stillrail.electrical.stress.PartStress;
import org.stillrail.electrical.stress.StressRule;
import org.stillrail.electrical.stress.StressRules;
import org.stillrail.electrical.stress.ThermalResistance;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

/** The stress of random banks against the verdicts' own road, and against a closed form. */
class StressSpreadTest {

    private static final SpreadQuestion ASKED = new SpreadQuestion(400, 7, Tolerance.Shape.UNIFORM, true, Axis.NOMINAL, false, Axis.NOMINAL).withStress();
    private static final CharacteristicCurve FREQUENCY_FACTOR = CharacteristicCurve.logarithmic(100e3, 0.6, 10e6, 1);
    private static final Characteristics COLD_COSTS = new Characteristics(null, CharacteristicCurve.linear(-20, 0.8, 25, 1, 105, 1.05), null, null,
            new ResistanceCurve(CharacteristicCurve.linear(-20, 3, 25, 1, 105, 0.7), 100e3), null);

    private static BranchInput branch(String label, int count, Technology technology, SeriesRlc model, Characteristics characteristics, double tolerance,
            double leastEsr, double mostEsr, double ratedA) {
        PartInput part = new PartInput(List.of(new PartInput.Member(OperatingPoint.REFERENCE, ModelInput.of(model))), 120, model.capacitanceF(), false,
                characteristics, -tolerance, tolerance, leastEsr, mostEsr);
        return new BranchInput(label, count, "TEST-" + label, technology, 6.3, part, SeriesPath.NONE, SeriesPath.NONE, "datasheet: test figures", false)
                .withRatings(new RatingInput(null, 105.0, new RippleRating(ratedA, FREQUENCY_FACTOR, null), 105.0,
                        ThermalResistance.given(40, "test figures"), LifeRating.of(2000, 105)));
    }

    static BranchInput bulk(Characteristics characteristics, double tolerance, double leastEsr, double mostEsr) {
        return branch("bulk", 2, Technology.POLYMER_ALUMINIUM, new SeriesRlc(220e-6, 0.012, 3e-9), characteristics, tolerance, leastEsr, mostEsr, 0.6);
    }

    static BranchInput ceramic(double tolerance) {
        return branch("ceramic", 4, Technology.CERAMIC_CLASS_2, new SeriesRlc(15e-6, 0.003, 0.7e-9), Characteristics.NONE, tolerance, 1, 1, 2);
    }

    static RailFigures loose(double inductorPercent) {
        return Rails.with(Rails.everything(),
                new ConverterFigures(Topology.BUCK, 2.2e-6, inductorPercent, 0.01, 1, Rails.SWITCHING_HZ, 0, Rails.placed(40e3, 60), 15.0));
    }

    /** Ripple current, core temperature, life where it is asked, and share of the allowed voltage of each branch, at a corner. */
    static List<Double> stress(Corner corner, EvaluationInput input) {
        List<Double> figures = new ArrayList<>();
        CornerFigures at = new CornerFigures(corner, corner.bank(), Tried.of(() -> Ripple.quickPeakToPeakV(corner.bank(), corner.current(input.rail()))), List.of(),
                null, null, null, null, null, CornerStress.of(input, corner, corner.bank()));
        for (int k = 0; k < input.branches().size(); k++) {
            PartStress stress = at.stressOf(k);
            Verdict voltage = new VoltageRatingJudge(input).at(at, k);
            figures.addAll(List.of(stress.ripple().equivalentA(), stress.heat().coreC()));
            if (stress.life().modelled() && input.rail().life() != null) {
                figures.add(stress.life().hours());
            }
            figures.add(voltage.value() / voltage.limit());
        }
        return figures;
    }

    private static double[] values(BankSpread spread, RandomFigure kind, int branch) {
        return spread.result().figure(new DrawnFigure(kind, branch, spread.input().branches().get(branch).label())).values();
    }

    /** With tolerances of nothing each bank is the nominal corner, parts as warm as their losses make them. */
    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void withoutTolerancesEachBankIsTheNominalCorner(boolean apart) {
        RailFigures rail = Rails.withLife(Rails.everything(), 40_000);
        EvaluationInput together = Rails.input(rail, bulk(COLD_COSTS, 0, 1, 1), ceramic(0));
        EvaluationInput input = !apart ? together : Rails.input(rail, bulk(COLD_COSTS, 0, 1, 1), ceramic(0).withPlace(Node.LOAD, null))
                .withDistance(new Distance(new SeriesPath(1e-3, 10e-9), Node.LOAD, null));
        BankSpread spread = BankSpread.of(input, ASKED, 1);
        Judgement judged = Rails.verdicts(input);
        CornerFigures nominal = judged.figures().get(0);
        assertThat(spread.unknown()).anyMatch(sentence -> sentence.startsWith("The life of ceramic class 2 is not modelled"));
        List<LimitSpread> limits = spread.limits().stream().filter(each -> each.limit().figure().branch() != null).toList();
        assertThat(limits).extracting(LimitSpread::name).containsExactly("Ripple current of 'bulk'", "Temperature of 'bulk'", "Life of 'bulk'",
                "Voltage rating of 'bulk'", "Ripple current of 'ceramic'", "Temperature of 'ceramic'", "Voltage rating of 'ceramic'");
        Map<RandomFigure, BranchJudge> judges = Map.of(RandomFigure.RIPPLE_CURRENT, new RippleCurrentJudge(input), RandomFigure.CORE_TEMPERATURE,
                new TemperatureJudge(input), RandomFigure.LIFE, new LifeJudge(input), RandomFigure.VOLTAGE_SHARE, new VoltageRatingJudge(input));
        for (int i = 0; i < limits.size(); i++) {
            DrawnFigure drawn = limits.get(i).limit().figure();
            Verdict verdict = judges.get(drawn.kind()).at(nominal, drawn.branch());
            FigureSpread figure = spread.result().figure(drawn);
            boolean share = drawn.kind() == RandomFigure.VOLTAGE_SHARE;
            double expected = share ? verdict.value() / verdict.limit() : verdict.value();
            assertThat(figure.least()).isCloseTo(expected, withPercentage(share ? 1e-3 : 1e-6));
            assertThat(figure.most()).isCloseTo(expected, withPercentage(share ? 1e-3 : 1e-6));
            assertThat(figure.nominal()).isCloseTo(expected, withPercentage(share ? 1e-3 : 1e-6));
            assertThat(limits.get(i).limit().limit()).isEqualTo(share ? 1 : verdict.limit());
            assertThat(limits.get(i).limit().bound()).isEqualTo(verdict.bound());
            assertThat(limits.get(i).yield().share()).isEqualTo(verdict.met() ? 1 : 0);
        }
    }

    /** Parts that stray warm otherwise than the nominal ones, at whose warmth they are taken: what that leaves out of the current and the warmth is little. */
    @Test
    void theWarmthOfTheNominalBankIsNearEnough() {
        EvaluationInput input = Rails.input(loose(0), bulk(COLD_COSTS, 0.2, 0.5, 1.5), ceramic(0.1));
        Fitting fitting = Fitting.named(input);
        Corner nominal = Corner.surroundings(input, Axis.NOMINAL, false, Axis.NOMINAL);
        for (double esr : new double[] {-0.5, 0.5}) {
            Strays strays = new Strays(List.of(-0.2, 0.1), List.of(esr, 0.0), 1);
            Corner taken = nominal.straying(strays, fitting);
            List<BranchCorner> cold = taken.conditions().branches().stream().map(place -> place.at(taken.conditions().ambientC())).toList();
            SpreadCorner conditions = taken.conditions();
            Corner warmed = CornerStress.warmed(Corner.bent(new SpreadCorner("cold", cold, conditions.inductanceFactor(), 1, conditions.outputV(),
                    conditions.inputV(), conditions.ambientC()), fitting), fitting);
            List<Double> quick = stress(taken, input);
            List<Double> whole = stress(warmed, input);
            for (int i = 0; i < whole.size(); i++) {
                assertThat(quick.get(i)).isCloseTo(whole.get(i), withPercentage(1));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 5})
    void theSameQuestionHasTheSameAnswerOnAnyNumberOfCores(int threads) {
        EvaluationInput input = Rails.input(loose(20), bulk(COLD_COSTS, 0.2, 0.5, 1.5), ceramic(0.1));
        BankSpread one = BankSpread.of(input, ASKED, 1);
        BankSpread many = BankSpread.of(input, ASKED, threads);
        assertThat(many.limits()).isEqualTo(one.limits());
        assertThat(many.result().figures()).hasSameSizeAs(one.result().figures());
        for (FigureSpread figure : one.result().figures()) {
            assertThat(many.result().figure(figure.figure()).values()).containsExactly(figure.values());
        }
    }

    /** One part alone carries the whole triangle, dI / sqrt 12, and dI goes with 1 / L: a limit at the nominal current is kept where L is above nominal, in half of all. */
    @Test
    void theYieldOfOnePartAloneIsThatOfTheInductor() {
        double nominalA = Rails.OUTPUT_V * (1 - Rails.OUTPUT_V / 12) / (2.2e-6 * Rails.SWITCHING_HZ) / Math.sqrt(12);
        BranchInput alone = bulk(Characteristics.NONE, 0.2, 0.5, 1.5).withCount(1);
        alone = alone.withRatings(new RatingInput(null, 105.0, new RippleRating(2 * nominalA, null, null), 105.0, ThermalResistance.given(40, "test"), null));
        StressRules half = StressRules.DEFAULT.with(new StressRule(Technology.POLYMER_ALUMINIUM, 0.5, 1, 0, null, 1, "the team"));
        EvaluationInput input = Rails.input(loose(20), alone);
        input = input.withSettings(input.settings().withStressRules(half));
        BankSpread spread = BankSpread.of(input, new SpreadQuestion(4000, 3, Tolerance.Shape.UNIFORM, true, Axis.NOMINAL, false, Axis.NOMINAL).withStress(), 2);
        LimitSpread current = spread.limits().stream().filter(each -> each.limit().figure().kind() == RandomFigure.RIPPLE_CURRENT).findFirst().orElseThrow();
        Check.that(Topic.SPREAD, "Ripple current of a part alone where the inductor is even within 20 %: least and most, dI / sqrt 12 over 1.2 and 0.8")
                .source(Source.fromMemory("mean square of a triangle, any textbook")).expected("A", nominalA / 1.2, nominalA / 0.8).relative(1e-3)
                .got(values(spread, RandomFigure.RIPPLE_CURRENT, 0)[0], values(spread, RandomFigure.RIPPLE_CURRENT, 0)[3999]);
        Check.that(Topic.SPREAD, "Yield of that against half its rating, which is the nominal current, 4 000 draws")
                .source(Source.independent("shares of an even distribution by hand")).expected("", 0.5).absolute(0.025).got(current.yield().share());
        assertThat(spread.result().together().share()).isLessThanOrEqualTo(current.yield().share());
    }

    @Test
    void whatIsNotKnownIsSaidAndNotAskedForIsNotDrawn() {
        EvaluationInput input = Rails.input(Rails.everything(), bulk(COLD_COSTS, 0.2, 0.5, 1.5).withRatings(RatingInput.NONE), Rails.inline("typed", 1, 1e-6, 0.01, 1e-9));
        BankSpread spread = BankSpread.of(input, ASKED, 1);
        assertThat(spread.result().figures()).noneMatch(figure -> figure.figure().kind() == RandomFigure.RIPPLE_CURRENT)
                .anyMatch(figure -> figure.figure().equals(new DrawnFigure(RandomFigure.VOLTAGE_SHARE, 0, "bulk")));
        assertThat(spread.unknown()).anyMatch(sentence -> sentence.startsWith("'bulk' has no ripple current rating"))
                .anyMatch(sentence -> sentence.startsWith("The highest temperature of 'bulk' is not stated"))
                .anyMatch(sentence -> sentence.startsWith("'typed' has no technology"))
                .anyMatch(sentence -> sentence.startsWith("Not drawn: load step, window, bulk charge, gain margin"));
        MonteCarlo plain = BankSpread.of(Rails.sound(), new SpreadQuestion(10, 1, Tolerance.Shape.UNIFORM, true, Axis.NOMINAL, false, Axis.NOMINAL), 1).result();
        assertThat(plain.figures()).allMatch(figure -> figure.figure().branch() == null);
    }

    /** A flyback of unknown turns has no current, so nothing but its direct voltage is known of its parts. */
    @Test
    void withoutACurrentNothingIsDrawn() {
        RailFigures rail = Rails.with(Rails.with(Rails.rippleOnly(0.03), Rails.converter(Topology.FLYBACK)), new Ambient(0, 25, 60, Rails.CITATION));
        BankSpread spread = BankSpread.of(Rails.input(rail, bulk(COLD_COSTS, 0.2, 0.5, 1.5)), ASKED, 1);
        assertThat(spread.result().figures()).allMatch(figure -> figure.figure().branch() == null);
        assertThat(spread.unknown()).anyMatch(sentence -> sentence.contains("The peak voltage is not known"))
                .anyMatch(sentence -> sentence.startsWith("The ripple current is not modelled"));
    }
}
