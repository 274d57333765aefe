package org.stillrail.electrical.evaluation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.stillrail.electrical.bank.Distance;
import org.stillrail.electrical.bank.Node;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.capacitor.Ageing;
import org.stillrail.electrical.capacitor.CharacteristicCurve;
import org.stillrail.electrical.capacitor.Characteristics;
import org.stillrail.electrical.capacitor.Drift;
import org.stillrail.electrical.capacitor.OperatingPoint;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.capacitor.Technology;
import org.stillrail.electrical.requirement.ConverterFigures;
import org.stillrail.electrical.requirement.EsrWindow;
import org.stillrail.electrical.requirement.InputRange;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.requirement.Requirement;
import org.stillrail.electrical.requirement.Topology;
import org.stillrail.electrical.spread.Axis;
import org.stillrail.electrical.spread.FigureSpread;
import org.stillrail.electrical.spread.RandomFigure;
import org.stillrail.electrical.spread.Tolerance;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

class BankSpreadTest {

    private static final SpreadQuestion FEW = question(2000, 7, Tolerance.Shape.UNIFORM);

    private static SpreadQuestion question(int runs, long seed, Tolerance.Shape shape) {
        return new SpreadQuestion(runs, seed, shape, true, Axis.NOMINAL, false, Axis.NOMINAL);
    }

    private static BranchInput branch(
            String label, int count, SeriesRlc model, Characteristics characteristics, Double tolerance, Double leastResistance, Double mostResistance) {
        PartInput part = new PartInput(List.of(new PartInput.Member(OperatingPoint.REFERENCE, ModelInput.of(model))), 120, model.capacitanceF(), false,
                characteristics, tolerance == null ? null : -tolerance, tolerance, leastResistance, mostResistance);
        return new BranchInput(label, count, "TEST-" + label, Technology.POLYMER_ALUMINIUM, 10.0, part, SeriesPath.NONE, SeriesPath.NONE,
                "datasheet: test figures", false);
    }

    private static BranchInput bulk(Double leastResistance) {
        return branch("bulk", 2, new SeriesRlc(220e-6, 0.012, 3e-9), Characteristics.NONE, 0.2, leastResistance, 1.5);
    }

    @Test
    void whereNothingStraysItIsTheBankOfThePage() {
        EvaluationInput input = Rails.sound();
        BankSpread spread = BankSpread.of(input, FEW, 1);
        Evaluation evaluation = Evaluation.evaluate(input);
        assertThat(spread.frequencies()).isEqualTo(evaluation.frequencies());
        assertThat(spread.result().figure(RandomFigure.RIPPLE).nominal()).isCloseTo(evaluation.ripple().peakToPeakV(), withPercentage(0.1));
        assertThat(spread.result().figure(RandomFigure.ESR_AT_CROSSOVER).nominal())
                .isCloseTo(evaluation.atCrossover().resistanceOhm(), withPercentage(1e-6));
        assertThat(spread.result().figure(RandomFigure.IMPEDANCE_AT_CROSSOVER).nominal())
                .isCloseTo(evaluation.atCrossover().magnitudeOhm(), withPercentage(1e-6));
        assertThat(spread.result().figure(RandomFigure.ESR_AT_SWITCHING).nominal())
                .isCloseTo(evaluation.atSwitching().resistanceOhm(), withPercentage(1e-6));
        // Figures typed by hand have no tolerance, and this rail's inductor has none: all banks are alike.
        for (FigureSpread figure : spread.result().figures()) {
            assertThat(figure.most()).isCloseTo(figure.least(), withPercentage(1e-9));
        }
        assertThat(spread.unknown()).anyMatch(sentence -> sentence.contains("No tolerance of the capacitance is stated for 'polymer'"))
                .anyMatch(sentence -> sentence.contains("no tolerance of the inductor"));
    }

    /** Where nothing strays the sampled loop is that of the page. */
    @Test
    void theLoopOfARandomBankIsItsOwn() {
        EvaluationInput input = Rails.input(Rails.everything(), bulk(0.5), Rails.ceramic(4));
        Evaluation evaluation = Evaluation.evaluate(input);
        BankSpread spread = BankSpread.of(input, FEW, 2);
        Check.that(Topic.SPREAD, "Crossover of a bank with nothing astray, read on 100 frequencies a decade").source(Source.independent("the scanned and bisected loop"))
                .expected("Hz", evaluation.loop().crossoverHz()).relative(1e-4).got(spread.result().figure(RandomFigure.CROSSOVER).nominal());
        Check.that(Topic.SPREAD, "Phase margin likewise").source(Source.independent("the scanned and bisected loop"))
                .expected("deg", evaluation.loop().phaseMarginDeg()).absolute(0.02).got(spread.result().figure(RandomFigure.PHASE_MARGIN).nominal());
        Corner nominal = evaluation.corners().get(0);
        Compensation placed = Compensation.of(input.rail(), nominal.bank()).value();
        assertThat(spread.result().figure(RandomFigure.SENSITIVITY_PEAK).nominal()).isCloseTo(
                LoopBand.of(nominal.bank(), placed.at(nominal, input.rail()), placed.wantedHz()).sensitivityPeak(), withPercentage(0.5));
        FigureSpread crossover = spread.result().figure(RandomFigure.CROSSOVER);
        assertThat(crossover.least()).isLessThan(crossover.nominal());
        assertThat(crossover.most()).isGreaterThan(crossover.nominal());
        assertThat(spread.limits()).extracting(LimitSpread::name).contains("Damping");
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 5})
    void theSameQuestionHasTheSameAnswerOnAnyNumberOfCores(int threads) {
        EvaluationInput input = Rails.input(Rails.everything(), bulk(0.5));
        BankSpread one = BankSpread.of(input, FEW, 1);
        BankSpread many = BankSpread.of(input, FEW, threads);
        assertThat(many.limits()).isEqualTo(one.limits());
        for (FigureSpread figure : one.result().figures()) {
            assertThat(many.result().figure(figure.figure()).values()).containsExactly(figure.values());
        }
        Distance distance = new Distance(new SeriesPath(1e-3, 10e-9), Node.LOAD, null);
        EvaluationInput apart = Rails.input(Rails.everything(), bulk(0.5), Rails.ceramic(4).withPlace(Node.LOAD, null)).withDistance(distance);
        assertThat(BankSpread.of(apart, FEW, threads).result().figure(RandomFigure.RIPPLE).values())
                .containsExactly(BankSpread.of(apart, FEW, 1).result().figure(RandomFigure.RIPPLE).values());
    }

    /** ESR of two parts of 12 mohm, from half to one and a half times: even from 3 to 9 mohm, of which two thirds are below 7. */
    @Test
    void yieldsAreThoseOfTheLimitsOfTheRail() {
        RailFigures rail = Rails.with(Rails.rippleOnly(0.03), new EsrWindow(0.005, 0.007, Rails.CITATION));
        BankSpread spread = BankSpread.of(Rails.input(rail, bulk(0.5)), question(10_000, 3, Tolerance.Shape.UNIFORM), 2);
        assertThat(spread.limits()).extracting(LimitSpread::name).containsExactly(
                "Ripple", "Quiet band at the switching frequency", "ESR at crossover, smallest", "ESR at crossover, largest");
        LimitSpread smallest = spread.limits().get(2);
        LimitSpread largest = spread.limits().get(3);
        Source evenShares = Source.independent("shares of an even distribution by hand");
        Check.that(Topic.SPREAD, "Yield of an ESR even from 3 to 9 mohm within 5 mohm and more, and within 7 mohm and less, 10 000 draws").source(evenShares)
                .expected("", 2.0 / 3, 2.0 / 3).absolute(0.02).got(smallest.yield().share(), largest.yield().share());
        assertThat(largest.yield().least()).isLessThan(2.0 / 3);
        assertThat(largest.yield().most()).isGreaterThan(2.0 / 3);
        // 5 to 7 mohm is a third of 3 to 9; the ripple keeps its limit throughout.
        Check.that(Topic.SPREAD, "Yield of the same within both limits, 10 000 draws").source(evenShares).expected("", 1.0 / 3).absolute(0.02)
                .got(spread.result().together().share());
        double quiet = Evaluation.evaluate(spread.input()).quiet().get(0).limitOhm();
        assertThat(spread.limits().get(1).limit().limit()).isCloseTo(quiet, withPercentage(1e-9));
    }

    @Test
    void withoutASmallestResistanceNobodyKnowsHowManyKeepEnoughOfIt() {
        RailFigures rail = Rails.with(Rails.rippleOnly(0.03), new EsrWindow(0.005, null, Rails.CITATION));
        LimitSpread smallest = BankSpread.of(Rails.input(rail, bulk(null)), FEW, 1).limits().get(2);
        assertThat(smallest.yield()).isNull();
        assertThat(smallest.unknown()).contains("No smallest ESR is known of 'bulk'");
    }

    /** A measured part's tolerance refers to the datasheet's value, not to the sample: here a sample of 180 of 220 uF. */
    @Test
    void capacitancesStrayRoundTheNominalOneNotRoundTheSample() {
        SeriesRlc sample = new SeriesRlc(180e-6, 0.012, 3e-9);
        PartInput part = new PartInput(List.of(new PartInput.Member(OperatingPoint.REFERENCE, ModelInput.of(sample))), 120, 220e-6, true,
                Characteristics.NONE, -0.2, 0.2, 1.0, 1.0);
        BranchInput measured = new BranchInput("measured", 1, "TEST", Technology.POLYMER_ALUMINIUM, 10.0, part, SeriesPath.NONE, SeriesPath.NONE,
                "measured: sample", true);
        BankSpread spread = BankSpread.of(Rails.input(Rails.rippleOnly(0.03), measured), FEW, 1);
        // The sample's series capacitance at 120 Hz differs from that of the R-L-C by its inductance, 2e-6 of it.
        assertThat(spread.bank().branches().get(0).capacitanceF()).isCloseTo(220e-6, withPercentage(1e-6));
    }

    /** Surroundings bend the parts before they stray: 72 % left at the bias, 80 % at the end of life, aged two decades of 2.5 %. */
    @Test
    void surroundingsBendTheParts() {
        Characteristics all = new Characteristics(CharacteristicCurve.linear(0, 1, Rails.OUTPUT_V, 0.72), CharacteristicCurve.linear(-20, 0.9, 25, 1, 60, 1),
                null, Ageing.ofPercentPerDecade(2.5), null, new Drift(0.8, 2));
        EvaluationInput input = Rails.input(Rails.everything(), branch("bulk", 1, new SeriesRlc(220e-6, 0.012, 3e-9), all, 0.2, 0.5, 1.5));
        BankSpread now = BankSpread.of(input, FEW, 1);
        BankSpread cold = BankSpread.of(input, new SpreadQuestion(10, 7, Tolerance.Shape.UNIFORM, true, Axis.LOW, true, Axis.HIGH), 1);
        assertThat(now.bank().branches().get(0).capacitanceF()).isCloseTo(0.72 * 220e-6, withPercentage(1e-9));
        assertThat(cold.bank().branches().get(0).capacitanceF()).isCloseTo(0.72 * 0.9 * 0.8 * 220e-6, withPercentage(1e-9));
        assertThat(cold.surroundings().conditions().inputV()).isEqualTo(15);
        assertThat(cold.result().figure(RandomFigure.ESR_AT_SWITCHING).nominal())
                .isCloseTo(2 * now.result().figure(RandomFigure.ESR_AT_SWITCHING).nominal(), withPercentage(1e-6));
    }

    /** The corners' ripple bounds that of random banks at the same surroundings: the corners take every tolerance at its end. */
    @Test
    void randomBanksStayWithinTheCorners() {
        EvaluationInput input = Rails.input(Rails.rippleOnly(0.03), bulk(0.5), Rails.ceramic(2));
        double worst = Evaluation.evaluate(input).verdict(Requirement.RIPPLE).value();
        assertThat(BankSpread.of(input, FEW, 1).result().figure(RandomFigure.RIPPLE).most()).isLessThanOrEqualTo(worst * 1.001);
    }

    @Test
    void aNormalSpreadIsNarrowerThanAnEvenOne() {
        EvaluationInput input = Rails.input(Rails.rippleOnly(0.03), bulk(0.5));
        double even = BankSpread.of(input, FEW, 1).result().figure(RandomFigure.ESR_AT_CROSSOVER).sigma();
        double normal = BankSpread.of(input, question(2000, 7, Tolerance.Shape.NORMAL), 1).result().figure(RandomFigure.ESR_AT_CROSSOVER).sigma();
        assertThat(normal / even).isCloseTo(0.32885946 * Math.sqrt(3), within(0.03));
    }

    /** What the verdicts of a bank at two nodes judge is what its random banks are judged by. */
    @Test
    void twoNodesWhereNothingStraysAreTheBankOfThePage() {
        RailFigures rail = Rails.with(Rails.everything(), new EsrWindow(0.0005, 0.02, Rails.CITATION));
        EvaluationInput apart = Rails.input(rail, Rails.polymer(2), Rails.ceramic(4).withPlace(Node.LOAD, null))
                .withDistance(new Distance(new SeriesPath(1e-3, 10e-9), Node.LOAD, new SeriesRlc(2e-6, 0.002, 1e-10)));
        BankSpread spread = BankSpread.of(apart, FEW, 1);
        Evaluation evaluation = Evaluation.evaluate(apart);
        assertThat(spread.frequencies()).isEqualTo(evaluation.frequencies());
        assertThat(spread.result().figure(RandomFigure.RIPPLE).nominal()).isCloseTo(evaluation.ripple().peakToPeakV(), withPercentage(0.1));
        assertThat(spread.result().figure(RandomFigure.ESR_AT_CROSSOVER).nominal())
                .isCloseTo(evaluation.atCrossover().resistanceOhm(), withPercentage(1e-6));
        assertThat(spread.result().figure(RandomFigure.IMPEDANCE_AT_SWITCHING).nominal())
                .isCloseTo(evaluation.atSwitching().magnitudeOhm(), withPercentage(1e-6));
        assertThat(spread.result().figure(RandomFigure.TRANSFER_AT_SWITCHING).nominal())
                .isCloseTo(evaluation.quiet().get(0).impedanceOhm(), withPercentage(1e-6));
        assertThat(spread.result().figure(RandomFigure.ESR_FOR_CONVERTER_AT_CROSSOVER).nominal())
                .isCloseTo(evaluation.shown().bank().seenByConverter().at(evaluation.frequencies().crossoverHz()).resistanceOhm(), withPercentage(1e-6));
        assertThat(spread.limits()).extracting(each -> each.limit().figure().kind()).containsExactly(RandomFigure.RIPPLE, RandomFigure.TRANSFER_AT_SWITCHING,
                RandomFigure.ESR_FOR_CONVERTER_AT_CROSSOVER, RandomFigure.ESR_FOR_CONVERTER_AT_CROSSOVER);
        assertThat(BankSpread.of(Rails.sound(), FEW, 1).result().figures()).extracting(figure -> figure.figure().kind())
                .doesNotContain(RandomFigure.TRANSFER_AT_SWITCHING);
    }

    /** Of a boost's current only the ripple goes with the inverse of the inductance, not the pulse of the load. */
    @Test
    void theInductorOfARectifierDoesNotStrayAndThatIsSaid() {
        ConverterFigures loose = new ConverterFigures(Topology.BOOST, 2.2e-6, 20, 0.01, 1, Rails.SWITCHING_HZ, 0, null, null);
        RailFigures boost = Rails.with(Rails.with(Rails.rippleOnly(0.5), loose), InputRange.fixed(2));
        BankSpread spread = BankSpread.of(Rails.input(boost, Rails.polymer(2)), FEW, 1);
        FigureSpread ripple = spread.result().figure(RandomFigure.RIPPLE);
        assertThat(ripple.most()).isCloseTo(ripple.least(), withPercentage(1e-9));
        assertThat(spread.unknown()).anyMatch(sentence -> sentence.startsWith("The inductor of a boost converter does not stray here"));
    }

    @Test
    void aFlybackOfUnknownTurnsHasNoRippleAndAnEmptyBankIsRefused() {
        RailFigures flyback = Rails.with(Rails.rippleOnly(0.03), Rails.converter(Topology.FLYBACK));
        BankSpread spread = BankSpread.of(Rails.input(flyback, bulk(0.5)), FEW, 1);
        assertThat(spread.result().figures()).noneMatch(figure -> figure.figure().kind() == RandomFigure.RIPPLE);
        assertThat(spread.unknown()).anyMatch(sentence -> sentence.startsWith("The ripple is not modelled: the rail does not state the turns ratio"));
        assertThat(spread.limits()).isEmpty();
        assertThatThrownBy(() -> BankSpread.of(Rails.input(Rails.rippleOnly(0.03)), FEW, 1)).isInstanceOf(EvaluationRefusedException.class)
                .hasMessageContaining("at least one branch");
    }
}
