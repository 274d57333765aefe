package org.stillrail.demo;

import java.util.List;

/** Touchstone 1.x: S of one or two ports at 50 ohm, or Z of one port; as real and imaginary, magnitude and angle, or decibels. */
record TouchstoneFormat(int ports, FrequencyUnit unit, Pair pair) implements SweepFormat {

    /** The option line's unit and the decimals that keep four digits exact. */
    enum FrequencyUnit {
        HZ("HZ", 1), KHZ("KHZ", 1e3), MHZ("MHZ", 1e6);

        private final String word;
        private final double hz;

        FrequencyUnit(String word, double hz) {
            this.word = word;
            this.hz = hz;
        }
    }

    /** How a complex number is written. */
    enum Pair {
        RI {
            @Override
            String write(Phasor value) {
                return Decimals.scientific(value.re(), 7) + ' ' + Decimals.scientific(value.im(), 7);
            }
        },
        MA {
            @Override
            String write(Phasor value) {
                return Decimals.scientific(value.magnitude(), 7) + ' ' + Decimals.fixed(degrees(value), 5);
            }
        },
        DB {
            @Override
            String write(Phasor value) {
                return Decimals.fixed(20 * StrictMath.log10(value.magnitude()), 5) + ' ' + Decimals.fixed(degrees(value), 5);
            }
        };

        abstract String write(Phasor value);

        private static double degrees(Phasor value) {
            return value.angleRad() * 180 / Math.PI;
        }
    }

    @Override
    public String write(List<String> remarks, List<Reading> readings, Bench bench) {
        String parameter = bench == Bench.IMPEDANCE ? "Z" : "S";
        StringBuilder text = new StringBuilder();
        remarks.forEach(remark -> text.append("! ").append(remark).append('\n'));
        text.append("# ").append(unit.word).append(' ').append(parameter).append(' ').append(pair).append(" R ")
                .append(bench == Bench.IMPEDANCE ? "1" : "50").append('\n');
        for (Reading reading : readings) {
            text.append(Decimals.scientific(reading.hz() / unit.hz, 3)).append(' ').append(values(reading, bench)).append('\n');
        }
        return text.toString();
    }

    private String values(Reading reading, Bench bench) {
        if (ports == 1) {
            return pair.write(reading.reported());
        }
        String through = pair.write(reading.reported());
        String reflected = pair.write(reflected(reading.truth(), bench));
        return reflected + ' ' + through + ' ' + through + ' ' + reflected;
    }

    private static Phasor reflected(Phasor z, Bench bench) {
        return bench == Bench.SHUNT_THROUGH
                ? Bench.REFERENCE.times(-1).over(z.times(2).plus(Bench.REFERENCE))
                : z.over(z.plus(Bench.REFERENCE.times(2)));
    }
}
