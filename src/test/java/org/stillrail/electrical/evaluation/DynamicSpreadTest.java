package org.stillrail.electrical.evaluation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.stillrail.electrical.bank.Distance;
import org.stillrail.electrical.bank.Node;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.capacitor.Characteristics;
import org.stillrail.electrical.capacitor.ImpedanceModel;
import org.stillrail.electrical.capacitor.OperatingPoint;
import org.stillrail.electrical.capacitor.PlaceInBand;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.capacitor.Technology;
import org.stillrail.electrical.requirement.ConverterFigures;
import org.stillrail.electrical.requirement.LoadStep;
import org.stillrail.electrical.requirement.LoopMarginLimits;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.requirement.Requirement;
import org.stillrail.electrical.requirement.StartUpRamp;
import org.stillrail.electrical.requirement.Topology;
import org.stillrail.electrical.requirement.Verdict;
import org.stillrail.electrical.spread.Axis;
import org.stillrail.electrical.spread.BranchCorner;
import org.stillrail.electrical.spread.FigureSpread;
import org.stillrail.electrical.spread.RandomFigure;
import org.stillrail.electrical.spread.SpreadCorner;
import org.stillrail.electrical.spread.Strays;
import org.stillrail.electrical.spread.Tolerance;

/** The load step of random banks against the verdict's own. */
class DynamicSpreadTest {

    private static final SpreadQuestion ASKED = question(40);
    private static final double ALLOWED_V = 0.1;

    private static SpreadQuestion question(int runs) {
        return new SpreadQuestion(runs, 7, Tolerance.Shape.UNIFORM, true, Axis.NOMINAL, false, Axis.NOMINAL).withLoadStep();
    }

    private static BranchInput branch(String label, int count, Technology technology, ImpedanceModel model, double capacitanceF, double tolerance, double leastEsr,
            double mostEsr) {
        PartInput part = new PartInput(List.of(new PartInput.Member(OperatingPoint.REFERENCE, ModelInput.of(model))), 120, capacitanceF, false, Characteristics.NONE,
                -tolerance, tolerance, leastEsr, mostEsr);
        return new BranchInput(label, count, "TEST-" + label, technology, 6.3, part, SeriesPath.NONE, SeriesPath.NONE, "datasheet: test figures", false);
    }

    /** Figures of a datasheet, whose model has no closed form in time and is fitted. */
    private static BranchInput bulk(double tolerance, double leastEsr, double mostEsr) {
        return branch("bulk", 2, Technology.WET_ALUMINIUM, Rails.datasheet(220e-6, 0.08, 0.03, 6e-9), 220e-6, tolerance, leastEsr, mostEsr);
    }

    private static BranchInput ceramic(double tolerance) {
        return branch("ceramic", 4, Technology.CERAMIC_CLASS_2, new SeriesRlc(15e-6, 0.003, 0.7e-9), 15e-6, tolerance, 1, 1);
    }

    private static RailFigures rail(double inductorPercent, double allowedV) {
        RailFigures rail = Rails.with(Rails.everything(),
                new ConverterFigures(Topology.BUCK, 2.2e-6, inductorPercent, 0.01, 1, Rails.SWITCHING_HZ, 0, Rails.placed(40e3, 60), 15.0));
        RailFigures stepped = Rails.with(rail, new LoadStep(1, 5, 10e6, allowedV, Rails.CITATION));
        return new RailFigures(stepped.nominalVoltageV(), stepped.nominalCurrentA(), stepped.input(), stepped.converter(), stepped.ripple(), stepped.window(),
                stepped.loadStep(), stepped.esrWindow(), stepped.ambient(), stepped.life(), stepped.space(), new StartUpRamp(5e-3, null, Rails.CITATION), stepped.bleed(),
                new LoopMarginLimits(5.0, 1.0, Rails.CITATION));
    }

    static Stream<EvaluationInput> untouched() {
        BranchInput far = ceramic(0).withPlace(Node.LOAD, null);
        return Stream.of(Rails.input(rail(0, ALLOWED_V), bulk(0, 1, 1), ceramic(0)), Rails.input(rail(0, ALLOWED_V), bulk(0, 1, 1), far)
                .withDistance(new Distance(new SeriesPath(1e-3, 5e-9), Node.LOAD, null)));
    }

    /** With tolerances of nothing the step is that of the nominal corner, limit and all. */
    @ParameterizedTest
    @MethodSource("untouched")
    void withoutTolerancesEachBankIsTheNominalCorner(EvaluationInput input) {
        BankSpread spread = BankSpread.of(input, question(3), 1);
        StepPair steps = nominal(input).steps().value();
        assertSame(spread, RandomFigure.UNDERSHOOT, steps.undershootV());
        assertSame(spread, RandomFigure.OVERSHOOT, steps.overshootV());
        assertSame(spread, RandomFigure.DEVIATION, Math.max(steps.undershootV(), steps.overshootV()));
        assertShare(spread, RandomFigure.WINDOW_SHARE, new WindowJudge(input.rail()).at(nominal(input)));
        assertShare(spread, RandomFigure.BULK_CHARGE_SHARE, new BulkChargeJudge(input.rail()).at(nominal(input)));
        assertShare(spread, RandomFigure.REVERSE_SHARE, new ReverseVoltageJudge(input).at(nominal(input)));
        assertThat(spread.result().figure(RandomFigure.START_UP_CURRENT).nominal())
                .isCloseTo(new StartUpJudge(input).at(nominal(input)).value(), withPercentage(0.01));
        LoopBand band = nominal(input).loop().value();
        assertThat(spread.result().figure(RandomFigure.GAIN_MARGIN).nominal()).isCloseTo(band.gainMarginDb(), withPercentage(0.01));
        assertThat(spread.result().figure(RandomFigure.PHASE_MARGIN).nominal()).isCloseTo(band.phaseMarginDeg(), withPercentage(0.01));
        assertThat(spread.result().figure(RandomFigure.SENSITIVITY_PEAK).nominal()).isCloseTo(band.sensitivityPeak(), withPercentage(0.2));
        LimitSpread limit = limit(spread);
        assertThat(limit.limit().limit()).isEqualTo(ALLOWED_V);
        assertThat(limit.yield().share()).isEqualTo(1);
    }

    private static void assertShare(BankSpread spread, RandomFigure kind, Verdict verdict) {
        assertThat(spread.result().figure(kind).nominal()).as(kind.name()).isCloseTo(verdict.value() / verdict.limit(), withPercentage(0.1));
        assertThat(spread.limits()).anyMatch(limit -> limit.name().equals(verdict.requirement().label()) && limit.limit().limit() == 1);
    }

    private static CornerFigures nominal(EvaluationInput input) {
        return Rails.verdicts(input).figures().get(0);
    }

    private static LimitSpread limit(BankSpread spread) {
        return spread.limits().stream().filter(each -> each.name().equals("Deviation")).findFirst().orElseThrow();
    }

    /** The curves of the shown corner are followed closely, the figures of random banks to a ten-thousandth. */
    private static void assertSame(BankSpread spread, RandomFigure kind, double expectedV) {
        FigureSpread figure = spread.result().figure(kind);
        assertThat(figure.nominal()).isCloseTo(expectedV, withPercentage(0.01));
        assertThat(figure.least()).isEqualTo(figure.nominal());
        assertThat(figure.most()).isEqualTo(figure.nominal());
    }

    /** A bank that strayed to a corner's tolerances, and its inductor too, answers as that corner does. */
    @Test
    void aBankDrawnAtACornerIsThatCorner() {
        EvaluationInput input = Rails.input(rail(20, ALLOWED_V), bulk(0.2, 0.5, 1.5), ceramic(0.1));
        Corner surroundings = Corner.surroundings(input, Axis.NOMINAL, false, Axis.NOMINAL);
        Tried<Compensation> compensation = Judgement.compensation(input.rail(), surroundings.bank());
        DynamicSpread spread = new DynamicSpread(input, surroundings, compensation, 0.01);
        SpreadCorner now = surroundings.conditions();
        for (double side : new double[] {-1, 1}) {
            List<BranchCorner> places = List.of(place(now, 0, 0.2 * side, 1 + 0.5 * side), place(now, 1, -0.1 * side, 1));
            Corner corner = Corner.bent(new SpreadCorner("drawn", places, 1 - 0.2 * side, 1, now.outputV(), now.inputV(), now.ambientC()), Fitting.named(input));
            Fits fits = Fits.none();
            CornerFigures figures = CornerFigures.of(input, corner, corner.bank(), compensation, Probe.everything(null, false), fits)
                    .withFittedSteps(input.rail(), compensation.value(), fits.proper(), false);
            Verdict verdict = new DeviationJudge(input.rail()).at(figures);
            double[] drawn = spread.of(new Strays(List.of(0.2 * side, -0.1 * side), List.of(0.5 * side, 0.0), 1 - 0.2 * side), 0.01);
            assertThat(drawn[0]).isCloseTo(figures.steps().value().undershootV(), withPercentage(1e-6));
            assertThat(drawn[1]).isCloseTo(figures.steps().value().overshootV(), withPercentage(1e-6));
            assertThat(drawn[2]).isCloseTo(verdict.value(), withPercentage(1e-6));
        }
    }

    private static BranchCorner place(SpreadCorner now, int branch, double capacitance, double esr) {
        return new BranchCorner(now.branches().get(branch).point(), new PlaceInBand(capacitance, esr, PlaceInBand.AS_MODELLED.change(), false));
    }

    /** No random bank does worse than the corners, which take every tolerance at its end; and the yield counts those on either side of a limit. */
    @Test
    void randomBanksStayWithinTheCornersAndTheYieldCountsThem() {
        EvaluationInput input = Rails.input(rail(20, ALLOWED_V), bulk(0.2, 0.5, 1.5), ceramic(0.1));
        double worst = Rails.verdicts(input).on(Requirement.DEVIATION).value();
        FigureSpread figure = BankSpread.of(input, ASKED, 2).result().figure(RandomFigure.DEVIATION);
        assertThat(figure.most()).isLessThanOrEqualTo(worst * 1.001).isGreaterThan(figure.nominal());
        double medianV = figure.values()[19];
        BankSpread halved = BankSpread.of(Rails.input(rail(20, medianV), bulk(0.2, 0.5, 1.5), ceramic(0.1)), ASKED, 2);
        assertThat(limit(halved).yield().kept()).isEqualTo(20);
        assertThat(halved.result().together().kept()).isLessThanOrEqualTo(20);
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 5})
    void theSameQuestionHasTheSameAnswerOnAnyNumberOfCores(int threads) {
        EvaluationInput input = Rails.input(rail(20, ALLOWED_V), bulk(0.2, 0.5, 1.5), ceramic(0.1));
        BankSpread one = BankSpread.of(input, ASKED.withStress(), 1);
        BankSpread many = BankSpread.of(input, ASKED.withStress(), threads);
        assertThat(many.limits()).isEqualTo(one.limits());
        for (FigureSpread figure : one.result().figures()) {
            assertThat(many.result().figure(figure.figure()).values()).containsExactly(figure.values());
        }
    }

    @Test
    void whereThereIsNoStepThePageSaysWhy() {
        assertNoStep(Rails.input(Rails.rippleOnly(0.03), bulk(0.2, 0.5, 1.5)), "The rail states no load step");
        RailFigures boost = Rails.with(Rails.everything(), Rails.converter(Topology.FLYBACK));
        assertNoStep(Rails.input(boost, bulk(0.2, 0.5, 1.5)), "The load step of a flyback converter is not modelled");
        RailFigures open = Rails.with(Rails.everything(), new ConverterFigures(Topology.BUCK, 2.2e-6, 0, 0.01, 1, Rails.SWITCHING_HZ, 0, null, null));
        assertNoStep(Rails.input(open, bulk(0.2, 0.5, 1.5)), "The converter's control is not stated");
        assertThat(BankSpread.of(Rails.input(rail(0, ALLOWED_V), bulk(0.2, 0.5, 1.5)), ASKED, 1).unknown())
                .anyMatch(sentence -> sentence.startsWith("Not drawn: ripple current, temperature, life"));
    }

    /** With a tenth of its inductance the loop crosses far too high: such banks have no step, and count against the yield. */
    @Test
    void aBankWhoseLoopIsNotStableKeepsNoLimit() {
        EvaluationInput input = Rails.input(rail(90, 10), bulk(0.2, 0.5, 1.5), ceramic(0.1));
        Corner surroundings = Corner.surroundings(input, Axis.NOMINAL, false, Axis.NOMINAL);
        Tried<Compensation> compensation = Judgement.compensation(input.rail(), surroundings.bank());
        Corner least = surroundings.straying(new Strays(List.of(0.0, 0.0), List.of(0.0, 0.0), 0.1), Fitting.named(input));
        assertThat(LoopBand.crossing(least.bank(), compensation.value().at(least, input.rail())).stable()).isFalse();
        BankSpread spread = BankSpread.of(input, question(200), 2);
        int stable = spread.result().figure(RandomFigure.DEVIATION).runs();
        assertThat(stable).isBetween(1, 199);
        assertThat(limit(spread).yield().kept()).isEqualTo(stable);
        assertThat(spread.unknown()).contains("Deviation of " + (200 - stable) + " of 200 banks is not known; they count as banks that do not keep its limit.");
    }

    private static void assertNoStep(EvaluationInput input, String why) {
        BankSpread spread = BankSpread.of(input, question(3), 1);
        assertThat(spread.result().figures()).noneMatch(figure -> figure.figure().kind() == RandomFigure.DEVIATION);
        assertThat(spread.unknown()).anyMatch(sentence -> sentence.startsWith(why));
    }

    @Test
    void aQuestionOfTooManyStepsIsRefused() {
        assertThatThrownBy(() -> question(SpreadQuestion.MOST_STEPPED + 1)).hasMessageContaining("1 to 2000 with the load step");
    }
}
