package org.stillrail.demo;

import java.util.List;

/** Frequency, |Z| and phase in degrees between semicolons, with decimal commas, as a bench set to a continental locale writes. */
final class MagnitudePhaseCsv implements SweepFormat {

    @Override
    public String write(List<String> remarks, List<Reading> readings, Bench bench) {
        StringBuilder text = new StringBuilder();
        remarks.forEach(remark -> text.append("# ").append(remark).append("\r\n"));
        text.append("Frequency/Hz;|Z|/Ohm;Phase/deg\r\n");
        for (Reading reading : readings) {
            text.append(comma(Decimals.scientific(reading.hz(), 3))).append(';')
                    .append(comma(Decimals.scientific(reading.reported().magnitude(), 6))).append(';')
                    .append(comma(Decimals.fixed(reading.reported().angleRad() * 180 / Math.PI, 5))).append("\r\n");
        }
        return text.toString();
    }

    private static String comma(String number) {
        return number.replace('.', ',');
    }
}
