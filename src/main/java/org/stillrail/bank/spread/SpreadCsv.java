package org.stillrail.bank.spread;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.stillrail.electrical.evaluation.BankSpread;
import org.stillrail.electrical.evaluation.LimitSpread;
import org.stillrail.electrical.requirement.Bound;
import org.stillrail.electrical.spread.FigureSpread;
import org.stillrail.web.Csv;

/** The numbers of a spread page as CSV in SI units: a line for each figure, then one for each limit. */
final class SpreadCsv {

    private static final List<String> HEADING = List.of("figure", "unit", "nominal", "least", "quantile_0.01", "quantile_0.05", "quantile_0.5",
            "quantile_0.95", "quantile_0.99", "most", "mean", "sigma", "bound", "limit", "banks", "banks_keeping", "share", "share_least", "share_most");

    private SpreadCsv() {
    }

    static String of(BankSpread spread, List<String> comments) {
        List<List<Object>> rows = new ArrayList<>();
        for (FigureSpread figure : spread.result().figures()) {
            List<Object> row = new ArrayList<>(List.of(figure.figure().label(), figure.figure().unit(), figure.nominal(), figure.least()));
            SpreadView.PROBABILITIES.forEach(probability -> row.add(figure.quantile(probability).value()));
            row.addAll(Arrays.asList(figure.most(), figure.mean(), figure.sigma(), null, null, figure.runs(), null, null, null, null));
            rows.add(row);
        }
        for (LimitSpread each : spread.limits()) {
            List<Object> row = new ArrayList<>(Arrays.asList("Limit: " + each.name(), each.limit().figure().unit()));
            row.addAll(Arrays.asList(null, null, null, null, null, null, null, null, null, null));
            row.addAll(Arrays.asList(each.limit().bound() == Bound.AT_MOST ? "at most" : "at least", each.limit().limit(), spread.question().runs()));
            row.addAll(each.yield() == null ? Arrays.asList("unknown", null, null, null)
                    : Arrays.asList(each.yield().kept(), each.yield().share(), each.yield().least(), each.yield().most()));
            rows.add(row);
        }
        return Csv.write(comments, HEADING, rows);
    }
}
