package org.stillrail.bank.spread;

import java.util.ArrayList;
import java.util.List;
import org.stillrail.bank.spread.SpreadCharts.SpreadChart;
import org.stillrail.electrical.evaluation.BankSpread;
import org.stillrail.electrical.evaluation.BranchStress;
import org.stillrail.electrical.evaluation.Evaluation;
import org.stillrail.electrical.evaluation.LimitSpread;
import org.stillrail.electrical.requirement.Bound;
import org.stillrail.electrical.requirement.Requirement;
import org.stillrail.electrical.requirement.Verdict;
import org.stillrail.electrical.spread.DrawnFigure;
import org.stillrail.electrical.spread.FigureSpread;
import org.stillrail.electrical.spread.MonteCarlo;
import org.stillrail.electrical.spread.RandomBranch;
import org.stillrail.electrical.spread.RandomFigure;
import org.stillrail.electrical.spread.Tolerance;
import org.stillrail.electrical.spread.Yield;
import org.stillrail.web.Quantity;

/**
 * What the spread page says.
 *
 * @param claim how many banks keep all limits, in a sentence; says so where there is none to keep
 */
record SpreadView(
        String claim, List<LimitLine> limits, List<FigureLine> figures, List<SpreadChart> charts, List<StrayLine> straying, List<String> unknown,
        List<String> assumed) {

    private static final int YIELD_DIGITS = 6;
    private static final int INTERVAL_DIGITS = 5;
    private static final double LEAST_SIGMA_K = 0.01;

    /** @param share in words where it is not known */
    record LimitLine(String name, String figure, String limit, String share, String interval, String outcome, String css, String corner) {
    }

    record FigureLine(String name, List<String> values) {
    }

    /** What strays by how much. */
    record StrayLine(String name, String capacitance, String deviation, String resistance, String source) {
    }

    /** Columns of the figures: with what stands over them. */
    static final List<Double> PROBABILITIES = List.of(0.01, 0.05, 0.5, 0.95, 0.99);

    /** @param evaluation of the same input, over all its corners */
    static SpreadView of(BankSpread spread, Evaluation evaluation) {
        return new SpreadView(claim(spread), spread.limits().stream().map(each -> limit(each, evaluation)).toList(),
                spread.result().figures().stream().map(SpreadView::figure).toList(), SpreadCharts.of(spread), straying(spread), spread.unknown(),
                assumed(spread));
    }

    private static String claim(BankSpread spread) {
        Yield together = spread.result().together();
        if (together == null) {
            return "The rail sets no limit that these figures answer to, or none that can be judged, so there is no yield.";
        }
        boolean partly = spread.limits().stream().anyMatch(each -> each.yield() == null);
        return percent(together.share(), YIELD_DIGITS) + " of " + together.runs() + " random banks keep "
                + (partly ? "all limits below that can be judged" : "all limits below") + "; with 95 % confidence the true share is between "
                + percent(together.least(), INTERVAL_DIGITS) + " and " + percent(together.most(), INTERVAL_DIGITS) + ".";
    }

    private static LimitLine limit(LimitSpread each, Evaluation evaluation) {
        String unit = each.limit().figure().unit();
        Verdict verdict = verdict(each.limit().figure(), evaluation);
        String share = each.yield() == null ? "unknown" : percent(each.yield().share(), YIELD_DIGITS);
        String interval = each.yield() == null ? each.unknown() : interval(each.yield());
        return new LimitLine(each.name(), each.limit().figure().label(),
                (each.limit().bound() == Bound.AT_MOST ? "at most " : "at least ") + Quantity.format(each.limit().limit(), unit), share, interval,
                verdict.outcome().label(), verdict.outcome().label().replace(' ', '-'),
                verdict.corner() == null ? "" : verdict.corner() + ", worst of " + evaluation.corners().size() + " corners");
    }

    /** Of the same branch, where the figure is one's. */
    private static Verdict verdict(DrawnFigure figure, Evaluation evaluation) {
        if (figure.branch() == null) {
            return evaluation.verdict(requirement(figure.kind()));
        }
        BranchStress stress = evaluation.stress().branches().get(figure.branch());
        return switch (requirement(figure.kind())) {
            case RIPPLE_CURRENT -> stress.rippleCurrent();
            case TEMPERATURE -> stress.temperature();
            case LIFE -> stress.life();
            default -> stress.voltage();
        };
    }

    private static Requirement requirement(RandomFigure kind) {
        return switch (kind) {
            case RIPPLE -> Requirement.RIPPLE;
            case IMPEDANCE_AT_SWITCHING, IMPEDANCE_AT_CROSSOVER, TRANSFER_AT_SWITCHING -> Requirement.QUIET_BAND;
            case SENSITIVITY_PEAK -> Requirement.DAMPING;
            case PHASE_MARGIN, CROSSOVER -> Requirement.PHASE_MARGIN;
            case RIPPLE_CURRENT -> Requirement.RIPPLE_CURRENT;
            case CORE_TEMPERATURE -> Requirement.TEMPERATURE;
            case UNDERSHOOT, OVERSHOOT, DEVIATION -> Requirement.DEVIATION;
            case WINDOW_SHARE -> Requirement.WINDOW;
            case BULK_CHARGE_SHARE -> Requirement.BULK_CHARGE;
            case GAIN_MARGIN -> Requirement.GAIN_MARGIN;
            case START_UP_CURRENT -> Requirement.START_UP;
            case REVERSE_SHARE -> Requirement.REVERSE_VOLTAGE;
            case LIFE -> Requirement.LIFE;
            case VOLTAGE_SHARE -> Requirement.VOLTAGE_RATING;
            case ESR_AT_CROSSOVER, ESR_AT_SWITCHING, ESR_FOR_CONVERTER_AT_CROSSOVER -> Requirement.ESR_WINDOW;
        };
    }

    private static FigureLine figure(FigureSpread spread) {
        String unit = spread.figure().unit();
        List<String> values = new ArrayList<>();
        values.add(Quantity.format(spread.nominal(), unit));
        values.add(Quantity.format(spread.least(), unit));
        PROBABILITIES.forEach(probability -> values.add(Quantity.format(spread.quantile(probability).value(), unit)));
        values.add(Quantity.format(spread.most(), unit));
        values.add(Quantity.format(spread.mean(), unit));
        values.add(SpreadCharts.strays(spread) ? sigma(spread.sigma(), unit) : "does not stray");
        return new FigureLine(spread.figure().label(), values);
    }

    private static String sigma(double sigma, String unit) {
        if (!unit.equals("degC")) {
            return Quantity.format(sigma, unit, 3);
        }
        return sigma < LEAST_SIGMA_K ? "under " + Quantity.format(LEAST_SIGMA_K, "K") : Quantity.format(sigma, "K", 3);
    }

    private static List<StrayLine> straying(BankSpread spread) {
        List<StrayLine> lines = new ArrayList<>();
        for (int k = 0; k < spread.bank().branches().size(); k++) {
            RandomBranch branch = spread.bank().branches().get(k);
            boolean stated = spread.input().branches().get(k).part().leastDeviation() != null;
            double esr = branch.branch().part().at(branch.resistanceHz()).resistanceOhm();
            lines.add(new StrayLine(branch.branch().count() + " \u00d7 " + branch.branch().label(),
                    stated ? Quantity.format(branch.capacitanceF(), "F") : "as modelled",
                    stated ? range(branch.capacitance()) : "not stated",
                    Quantity.format(esr, "ohm") + " at " + Quantity.format(branch.resistanceHz(), "Hz", 3) + ", " + range(branch.resistance()),
                    spread.input().branches().get(k).source()));
        }
        lines.add(new StrayLine("inductor", "\u2013", range(spread.bank().inductance()), "\u2013", "the rail"));
        return lines;
    }

    private static String range(Tolerance tolerance) {
        return tolerance.least() == 0 && tolerance.most() == 0 ? "does not stray" : signed(tolerance.least()) + " to " + signed(tolerance.most());
    }

    private static String signed(double share) {
        return (share < 0 ? "\u2212" : share > 0 ? "+" : "") + Quantity.format(100 * Math.abs(share), "%", 3);
    }

    private static List<String> assumed(BankSpread spread) {
        List<String> sentences = new ArrayList<>(List.of(
                "Each tolerance is taken as " + SpreadForm.words(spread.question().shape()) + ". No datasheet states how a tolerance is distributed; "
                        + "this is an assumption.",
                spread.question().lots() ? "All parts of a branch stray together, as from one lot: the wider spread."
                        : "Each part strays by itself; a branch strays by the mean of its parts.",
                "Capacitances stray round the datasheet's nominal value at the bias, temperature and age chosen. ESL and mounting stay as they are, and "
                        + "so does the band that a class code leaves over temperature.",
                "Inductor and parts stray independently of each other.",
                "The ripple is that of continuous conduction; the bank's page names the load below which it ends.",
                "ESR and |Z| are read at " + Quantity.format(spread.frequencies().crossoverHz(), "Hz") + ", the crossover with nothing astray"
                        + (spread.frequencies().crossoverGiven() ? "" : " (none is known: a tenth of the switching frequency)") + ", and at "
                        + Quantity.format(spread.frequencies().switchingHz(), "Hz") + ".",
                "The interval of a share is that of Clopper and Pearson, 95 %.",
                "The same seed gives the same banks on any number of cores."));
        if (spread.bank().loop() != null) {
            sentences.add("Crossover, phase margin and the peak of 1 / |1 + T| are each bank's own, with the compensator that is placed for the nominal bank; the "
                    + "loop is read on 100 frequencies a decade.");
        }
        if (spread.question().stress()) {
            sentences.add("Ripple current, core temperature, life and voltage are worked out for one part of each branch as their verdicts are, at the ambient chosen: the current is"
                    + " weighed by frequency, all parts of a branch carry the same, and capacitance and ESR are those at the warmth of the nominal bank. The derating of "
                    + "the voltage is that of the rail's highest ambient, or of the core where this is warmer. What strays by less than 1 % has no chart.");
        }
        if (spread.question().loadStep()) {
            sentences.add("The load step and its way back are those of the verdict: each bank with its own crossover, the compensator that is placed for the nominal "
                    + "bank, the duty's limits, and the fits of its parts at the warmth of the nominal bank.");
        }
        if (spread.input().branches().stream().anyMatch(branch -> branch.alternates() != null)) {
            sentences.add("The named parts are drawn, not their alternates.");
        }
        if (spread.input().distance() != null) {
            sentences.add("Ripple, ESR and |Z| are those at the load where nothing else is said. The ESR window is judged by what the converter sees, the quiet band by "
                    + "what its current makes at the load, as their verdicts are. The path and the fixed capacitance of the load stay as they are.");
        }
        MonteCarlo result = spread.result();
        if (result.rippleError() > 0) {
            sentences.add("The ripple leaves out harmonics worth at most " + percent(result.rippleError(), 2) + " of it.");
        }
        return sentences;
    }

    private static String interval(Yield yield) {
        return percent(yield.least(), INTERVAL_DIGITS) + " to " + percent(yield.most(), INTERVAL_DIGITS);
    }

    private static String percent(double share, int digits) {
        return Quantity.format(100 * share, "%", digits);
    }
}
