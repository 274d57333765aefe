package org.stillrail.demo;

import java.util.List;

/** Comma-separated frequency, R and X, with the lines that such an instrument puts before them. */
final class ResistanceReactanceCsv implements SweepFormat {

    @Override
    public String write(List<String> remarks, List<Reading> readings, Bench bench) {
        StringBuilder text = new StringBuilder();
        remarks.forEach(remark -> text.append("# ").append(remark).append("\r\n"));
        text.append("Frequency (Hz),R (Ohm),X (Ohm)\r\n");
        for (Reading reading : readings) {
            text.append(Decimals.scientific(reading.hz(), 3)).append(',')
                    .append(Decimals.scientific(reading.reported().re(), 6)).append(',')
                    .append(Decimals.scientific(reading.reported().im(), 6)).append("\r\n");
        }
        return text.toString();
    }
}
