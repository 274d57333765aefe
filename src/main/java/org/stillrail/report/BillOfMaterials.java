package org.stillrail.report;

import java.util.Arrays;
import java.util.List;
import org.stillrail.library.PartDocument;
import org.stillrail.web.Csv;

/** The parts of a bank as CSV: a line for each branch with what may be fitted instead and the places that stay empty, SI units in the headings. */
final class BillOfMaterials {

    private static final List<String> HEADING = List.of("branch", "quantity", "unfitted places", "part number", "alternates", "maker", "technology", "capacitance_F", "rated_voltage_V",
            "case", "height_m", "cost_each", "cost", "currency", "part revision", "vetting", "condition or reason", "datasheet");

    private BillOfMaterials() {
    }

    /** @param currency of the costs, empty where none is said */
    static String csv(List<PartLine> lines, String currency) {
        return Csv.write(HEADING, lines.stream().map(line -> row(line, currency)).toList());
    }

    private static List<Object> row(PartLine line, String currency) {
        if (line.part() == null) {
            return Arrays.asList(line.branch().label(), line.branch().count(), unfitted(line), line.partNumber(), null, null, null,
                    line.branch().inline() == null ? null : line.branch().inline().capacitanceF(), null, null, null, null, null, null, null, null, null, null);
        }
        PartDocument part = line.part().document();
        return Arrays.asList(line.branch().label(), line.branch().count(), unfitted(line), part.partNumber(), line.alternateNumbers(), part.maker(), part.technology().label(),
                part.capacitanceF(), part.ratedVoltageV(), part.caseSize(), part.heightM(), part.cost(), line.cost(), part.cost() == null ? null : currency,
                line.part().revision().number(), line.part().vetting().label(), line.part().vettingNote(),
                part.datasheet() == null ? null : part.datasheet().toString());
    }

    private static int unfitted(PartLine line) {
        return line.branch().unfitted() == null ? 0 : line.branch().unfitted();
    }
}
