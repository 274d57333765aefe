package org.stillrail.demo;

import java.util.List;

/** Tab-separated, from high to low frequency, the imaginary part negated by its heading, as a cell tester writes. */
final class CellTable implements SweepFormat {

    @Override
    public String write(List<String> remarks, List<Reading> readings, Bench bench) {
        StringBuilder text = new StringBuilder();
        remarks.forEach(remark -> text.append("# ").append(remark).append('\n'));
        text.append("freq/Hz\tRe(Z)/Ohm\t-Im(Z)/Ohm\n");
        for (int i = readings.size() - 1; i >= 0; i--) {
            Reading reading = readings.get(i);
            text.append(Decimals.scientific(reading.hz(), 3)).append('\t')
                    .append(Decimals.scientific(reading.reported().re(), 6)).append('\t')
                    .append(Decimals.scientific(-reading.reported().im(), 6)).append('\n');
        }
        return text.toString();
    }
}
