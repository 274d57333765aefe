package org.stillrail.bank;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.evaluation.BranchInput;
import org.stillrail.electrical.evaluation.Evaluation;
import org.stillrail.electrical.evaluation.EvaluationFigures;
import org.stillrail.electrical.requirement.Outcome;
import org.stillrail.electrical.requirement.Requirement;
import org.stillrail.electrical.requirement.Verdict;
import org.stillrail.web.ChartData;
import org.stillrail.web.ChartData.Axis;
import org.stillrail.web.ChartData.Series;
import org.stillrail.web.Quantity;

/** Two to six banks side by side: verdicts, figures, parts, cost and size in lines, curves over each other. */
record Comparison(List<Column> columns, List<Row> verdicts, List<Row> figures, String impedance, String resistance, String ripple, String step) {

    private static final double EQUAL = 1e-6;

    /** A bank revision with its evaluation. */
    record Entry(Bank bank, String where, Evaluation evaluation) {
    }

    /** @param against what parts it has more or fewer than the first, in words; empty for the first */
    record Column(Bank bank, String where, String claim, boolean fits, String parts, String against) {
    }

    /** One line; a cell for each bank. */
    record Row(String name, List<Cell> cells) {
    }

    /**
     * @param css        outcome as a style name, or empty
     * @param difference to the first bank, or empty
     */
    record Cell(String text, String css, String difference) {
    }

    static Comparison of(List<Entry> entries) {
        return new Comparison(entries.stream().map(entry -> column(entry, entries.get(0))).toList(), verdicts(entries), figures(entries),
                overFrequency(entries, "|Z| of each bank", Axis.log("|Z|", "\u03a9"), Curve::magnitudes),
                overFrequency(entries, "Re Z of each bank", Axis.log("ESR", "\u03a9"), Comparison::resistances),
                ripple(entries), step(entries));
    }

    private static Column column(Entry entry, Entry first) {
        String parts = entry.evaluation().input().branches().stream()
                .map(branch -> branch.count() + " \u00d7 " + (branch.partNumber() == null ? branch.label() : branch.partNumber()))
                .collect(Collectors.joining(", "));
        return new Column(entry.bank(), entry.where(), entry.evaluation().claim().sentence(), entry.evaluation().claim().fits(), parts,
                entry == first ? "" : against(counts(first), counts(entry)));
    }

    /** How many of each part, by its number; figures typed in by their branch. */
    private static Map<String, Integer> counts(Entry entry) {
        Map<String, Integer> counts = new TreeMap<>();
        entry.evaluation().input().branches().forEach(branch ->
                counts.merge(branch.partNumber() == null ? "figures of '" + branch.label() + "'" : branch.partNumber(), branch.count(), Integer::sum));
        return counts;
    }

    private static String against(Map<String, Integer> first, Map<String, Integer> other) {
        Set<String> names = new TreeSet<>(first.keySet());
        names.addAll(other.keySet());
        List<String> phrases = new ArrayList<>();
        for (String name : names) {
            int more = other.getOrDefault(name, 0) - first.getOrDefault(name, 0);
            if (more != 0) {
                phrases.add(Math.abs(more) + (more > 0 ? " more " : " fewer ") + name);
            }
        }
        return phrases.isEmpty() ? "the same parts" : String.join(", ", phrases);
    }

    private static List<Row> verdicts(List<Entry> entries) {
        Set<Requirement> asked = new LinkedHashSet<>();
        for (Entry entry : entries) {
            entry.evaluation().verdicts().stream().filter(verdict -> verdict.outcome() != Outcome.NOT_ASKED)
                    .forEach(verdict -> asked.add(verdict.requirement()));
        }
        return asked.stream().map(requirement -> new Row(requirement.label(), entries.stream().map(entry -> {
            Verdict verdict = entry.evaluation().verdict(requirement);
            return new Cell(VerdictTurn.words(verdict), VerdictTurn.css(verdict), "");
        }).toList())).toList();
    }

    private static List<Row> figures(List<Entry> entries) {
        List<EvaluationFigures> figures = entries.stream().map(entry -> EvaluationFigures.of(entry.evaluation())).toList();
        List<Row> rows = new ArrayList<>();
        add(rows, "Crossover", figures, "Hz", EvaluationFigures::crossoverHz);
        add(rows, "Phase margin", figures, "deg", EvaluationFigures::phaseMarginDeg);
        add(rows, "|Z| at crossover", figures, "ohm", each -> each.atCrossover().magnitudeOhm());
        add(rows, "ESR at crossover", figures, "ohm", each -> each.atCrossover().resistanceOhm());
        add(rows, "|Z| at switching", figures, "ohm", each -> each.atSwitching().magnitudeOhm());
        add(rows, "Ripple, peak to peak", figures, "V", EvaluationFigures::ripplePeakToPeakV);
        add(rows, "Undershoot", figures, "V", EvaluationFigures::undershootV);
        add(rows, "Overshoot", figures, "V", EvaluationFigures::overshootV);
        List<List<BranchInput>> banks = entries.stream().map(entry -> entry.evaluation().input().branches()).toList();
        add(rows, "Number of parts", banks, "", bank -> (double) bank.stream().mapToInt(BranchInput::count).sum());
        add(rows, "Cost of the parts", banks, entries.get(0).evaluation().input().settings().currencyUnit(), bank -> total(bank, branch -> branch.cost() == null ? null : branch.cost().doubleValue()));
        add(rows, "Area of the parts", banks, "mm2", bank -> scaled(total(bank, BranchInput::areaM2)));
        add(rows, "Largest height", banks, "m", Comparison::height);
        return rows;
    }

    private static Double scaled(Double areaM2) {
        return areaM2 == null ? null : (Double) (areaM2 * 1e6);
    }

    /** Null where it is not known of every part. */
    private static Double total(List<BranchInput> bank, Function<BranchInput, Double> each) {
        BigDecimal sum = BigDecimal.ZERO;
        for (BranchInput branch : bank) {
            Double one = each.apply(branch);
            if (one == null) {
                return null;
            }
            sum = sum.add(BigDecimal.valueOf(one).multiply(BigDecimal.valueOf(branch.count())));
        }
        return sum.doubleValue();
    }

    private static Double height(List<BranchInput> bank) {
        double largest = 0;
        for (BranchInput branch : bank) {
            if (branch.heightM() == null) {
                return null;
            }
            largest = Math.max(largest, branch.heightM());
        }
        return largest;
    }

    private static <T> void add(List<Row> rows, String name, List<T> banks, String unit, Function<T, Double> figure) {
        List<Double> values = banks.stream().map(figure).toList();
        if (values.stream().allMatch(value -> value == null)) {
            return;
        }
        Double first = values.get(0);
        List<Cell> cells = new ArrayList<>();
        for (Double value : values) {
            cells.add(value == null ? new Cell("not known", "", "")
                    : new Cell(Quantity.format(value, unit).replace("mm2", "mm\u00b2"), "", difference(first, value)));
        }
        rows.add(new Row(name, cells));
    }

    private static String difference(Double first, double value) {
        if (first == null || first == 0 || Math.abs(value - first) <= EQUAL * Math.abs(first)) {
            return "";
        }
        double percent = 100 * (value / first - 1);
        return (percent > 0 ? "+" : "\u2212") + Quantity.format(Math.abs(percent), "%", 3);
    }

    private static String overFrequency(List<Entry> entries, String summary, Axis y, Function<Curve, double[]> values) {
        List<Series> series = new ArrayList<>();
        for (int k = 0; k < entries.size(); k++) {
            Curve bank = entries.get(k).evaluation().curves().bank();
            series.add(line(k, entries, bank.grid().toArray(), values.apply(bank)));
        }
        return new ChartData(summary, Axis.FREQUENCY, y, series, List.of(), List.of()).json();
    }

    private static double[] resistances(Curve curve) {
        double[] ohm = new double[curve.size()];
        for (int i = 0; i < ohm.length; i++) {
            ohm[i] = curve.real(i) > 0 ? curve.real(i) : Double.NaN;
        }
        return ohm;
    }

    private static String ripple(List<Entry> entries) {
        List<Series> series = new ArrayList<>();
        for (int k = 0; k < entries.size(); k++) {
            Evaluation evaluation = entries.get(k).evaluation();
            if (evaluation.ripple() != null) {
                series.add(line(k, entries, evaluation.ripple().voltage().timesS(), evaluation.ripple().voltage().voltagesV()));
            }
        }
        return series.isEmpty() ? null : new ChartData("Ripple of each bank over one of its switching periods", Axis.TIME,
                Axis.linear("Voltage", "V"), series, List.of(), List.of()).json();
    }

    private static String step(List<Entry> entries) {
        List<Series> series = new ArrayList<>();
        for (int k = 0; k < entries.size(); k++) {
            Evaluation evaluation = entries.get(k).evaluation();
            if (evaluation.steps() != null) {
                series.add(line(k, entries, evaluation.steps().step().timeS(), evaluation.steps().step().deviationV()));
            }
        }
        return series.isEmpty() ? null : new ChartData("Deviation of the output of each bank after its load step", Axis.TIME,
                Axis.linear("Deviation", "V"), series, List.of(), List.of()).json();
    }

    private static Series line(int k, List<Entry> entries, double[] x, double[] y) {
        Bank bank = entries.get(k).bank();
        return Series.of("c" + k, (k + 1) + ": " + bank.name() + ", rev. " + bank.revision().number(), "branch", x, y);
    }
}
