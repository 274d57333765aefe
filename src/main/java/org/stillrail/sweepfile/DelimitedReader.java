package org.stillrail.sweepfile;

import java.util.ArrayList;
import java.util.List;
import org.stillrail.electrical.curve.Complex;

/** Reads sweeps from text in columns. */
final class DelimitedReader {

    private DelimitedReader() {
    }

    static ReadSweep read(String text, ReadOptions options) {
        TextLayout layout = LayoutFinder.find(text, options.columns());
        List<String> warnings = new ArrayList<>();
        ColumnMapping mapping = options.columns() != null ? options.columns() : guessed(layout, options.fixture(), warnings);
        ColumnPair pair = mapping.pair();
        requireFitting(pair, options.fixture(), warnings);
        SweepTable table = SweepTable.read(text, layout, mapping);
        SweepTable.Block block = chosen(table, options.block(), warnings);
        warnIfRadians(mapping, pair, table, block, warnings);
        Double reference = pair.holds() == ColumnPair.Holds.IMPEDANCE ? null : Double.valueOf(mapping.referenceOhm());
        return points(table, block, pair, options.fixture(), mapping.referenceOhm())
                .toSweep(reference, layout.label(mapping), warnings);
    }

    private static ColumnMapping guessed(TextLayout layout, Fixture fixture, List<String> warnings) {
        ColumnGuess guess = ColumnGuess.of(layout, fixture);
        warnings.addAll(guess.notes());
        return guess.mapping().orElseThrow(() -> new SweepFileException(layout.headingLine(),
                "It cannot be told what the " + layout.columns() + " columns are: " + guess.reason()
                        + "; say which column is what"));
    }

    private static void requireFitting(ColumnPair pair, Fixture fixture, List<String> warnings) {
        if (!pair.holds().suits(fixture)) {
            throw SweepFileException.ofFile("The columns hold " + pair.holds().words() + ", which cannot be read as "
                    + fixture.label() + "; choose " + pair.holds().choices());
        }
        if (pair.holds() == ColumnPair.Holds.IMPEDANCE && fixture != Fixture.IMPEDANCE) {
            warnings.add("The columns hold an impedance already; the fixture " + fixture.label() + " changes nothing in it.");
        }
    }

    private static SweepTable.Block chosen(SweepTable table, int wanted, List<String> warnings) {
        List<SweepTable.Block> blocks = table.blocks();
        if (wanted > blocks.size()) {
            throw SweepFileException.ofBlock("The file holds " + Phrase.count(blocks.size(), "sweep")
                    + "; there is no number " + wanted);
        }
        if (wanted == 0 && blocks.size() > 1) {
            warnings.add("The file holds " + blocks.size() + " sweeps one below the other; the first was read.");
        } else if (blocks.size() > 1) {
            warnings.add("Sweep " + wanted + " of " + blocks.size() + " in the file was read.");
        }
        return blocks.get(Math.max(0, wanted - 1));
    }

    /** Angles without a unit count as degrees; where none exceeds pi that may be wrong, and it must be said. */
    private static void warnIfRadians(ColumnMapping mapping, ColumnPair pair, SweepTable table, SweepTable.Block block,
                                      List<String> warnings) {
        boolean unitless = pair.second().dimension() == Dimension.ANGLE && mapping.column(pair.second()).unit().isEmpty();
        double largestDeg = 0;
        for (int i = block.from(); i < block.to(); i++) {
            largestDeg = Math.max(largestDeg, Math.abs(Math.toDegrees(table.second(i))));
        }
        if (unitless && largestDeg > 0 && largestDeg <= Math.PI) {
            warnings.add("The phase has no unit and was taken as degrees; no value exceeds " + Phrase.number(largestDeg)
                    + ", so it may be radians.");
        }
    }

    private static ImpedancePoints points(SweepTable table, SweepTable.Block block, ColumnPair pair, Fixture fixture,
                                          double referenceOhm) {
        ImpedancePoints points = new ImpedancePoints(block.size(), infiniteWhen(pair, fixture));
        for (int i = block.from(); i < block.to(); i++) {
            double hz = table.frequencyHz(i);
            Complex value = hz == 0 ? Complex.ZERO : pair.value(hz, table.first(i), table.second(i));
            if (pair.holds() != ColumnPair.Holds.IMPEDANCE) {
                value = ScatteringImpedance.impedance(fixture, value, referenceOhm);
            }
            points.add(hz, value.re(), value.im());
        }
        return points;
    }

    private static String infiniteWhen(ColumnPair pair, Fixture fixture) {
        return switch (pair.holds()) {
            case S11 -> "S11 is 1";
            case S21 -> fixture == Fixture.SHUNT_THROUGH ? "S21 is 1" : "S21 is 0";
            case IMPEDANCE -> "the impedance is infinite";
        };
    }
}
