package org.stillrail.report;

import java.util.ArrayList;
import java.util.List;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.evaluation.Evaluation;
import org.stillrail.web.Csv;

/** The curves of a bank and of its branches as CSV: real and imaginary part in ohm over frequency. */
final class CurveTable {

    private CurveTable() {
    }

    static String csv(Evaluation evaluation, List<String> comments) {
        List<String> heading = new ArrayList<>(List.of("frequency_Hz", "bank_Re_ohm", "bank_Im_ohm"));
        List<Curve> curves = new ArrayList<>(List.of(evaluation.curves().bank()));
        for (int k = 0; k < evaluation.curves().branches().size(); k++) {
            String name = "branch " + (k + 1) + " " + evaluation.input().branches().get(k).label();
            heading.add(name + "_Re_ohm");
            heading.add(name + "_Im_ohm");
            curves.add(evaluation.curves().branches().get(k));
        }
        List<List<Object>> rows = new ArrayList<>();
        for (int i = 0; i < curves.get(0).size(); i++) {
            List<Object> row = new ArrayList<>();
            row.add(curves.get(0).grid().hz(i));
            for (Curve curve : curves) {
                row.add(curve.real(i));
                row.add(curve.imaginary(i));
            }
            rows.add(row);
        }
        return Csv.write(comments, heading, rows);
    }
}
