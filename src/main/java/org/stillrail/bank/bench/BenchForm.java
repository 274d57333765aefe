package org.stillrail.bank.bench;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.stillrail.bank.BenchKind;
import org.stillrail.library.SweepDocument;
import org.stillrail.library.SweepIntake;
import org.stillrail.sweepfile.NumberColumns;
import org.stillrail.sweepfile.SweepFileException;
import org.stillrail.web.Form;

/** From the fields and the file of the bench page to a {@link BenchDocument}. */
final class BenchForm {

    private final Form form;
    private final SweepIntake intake;

    private BenchForm(Form form, SweepIntake intake) {
        this.form = form;
        this.intake = intake;
    }

    static BenchKind kind(Form form) {
        return form.read("kind", "What was measured", true, text -> BenchKind.valueOf(text.toUpperCase(Locale.ROOT)));
    }

    static Map<String, String> kinds() {
        Map<String, String> kinds = new LinkedHashMap<>();
        for (BenchKind kind : BenchKind.values()) {
            kinds.put(kind.name().toLowerCase(Locale.ROOT), kind.label());
        }
        return kinds;
    }

    /** Null where anything is wrong; {@code form.errors()} then says what. */
    static BenchDocument read(BenchKind kind, SweepIntake.SentFile file, Form form, SweepIntake intake) {
        return new BenchForm(form, intake).document(kind, file);
    }

    private BenchDocument document(BenchKind kind, SweepIntake.SentFile file) {
        if (kind == BenchKind.IMPEDANCE) {
            return impedance(file);
        }
        String measuredBy = form.text("measuredBy", "Measured by", true);
        LocalDate measuredOn = form.read("measuredOn", "Measured on", true, BenchForm::date);
        String instrument = form.text("instrument", "Instrument", true);
        String note = form.text("note", "Note", false);
        BenchLoop loop = kind == BenchKind.LOOP ? intake.refusing(form, () -> loop(file)) : null;
        BenchTrace trace = kind == BenchKind.LOOP ? null : trace(file);
        return form.errors().none() ? new BenchDocument(measuredBy, measuredOn, instrument, note, null, null, null, loop, trace) : null;
    }

    private BenchDocument impedance(SweepIntake.SentFile file) {
        Double magnitude = form.positive("tolerance", "Tolerance of |Z|", "%", true);
        Double resistance = form.positive("resistanceTolerance", "Tolerance of the ESR", "%", true);
        SweepDocument sweep = intake.sweep(file, form);
        return sweep == null ? null : new BenchDocument(sweep.provenance().measuredBy(), sweep.provenance().measuredOn(),
                sweep.provenance().instrument(), sweep.provenance().note(), sweep, magnitude, resistance, null, null);
    }

    /** Frequency, gain in dB and phase in degrees, in this order. */
    private BenchLoop loop(SweepIntake.SentFile file) {
        NumberColumns columns = NumberColumns.read(file.bytes(), 3);
        double[] hz = scaled(columns.columns().get(0), unit("frequencyUnit"));
        requireRising(hz, columns.firstLine(), true);
        double[] phase = columns.columns().get(2);
        return new BenchLoop(hz, columns.columns().get(1), "margin".equals(form.get("phaseIs")) ? added(phase, -180) : phase);
    }

    private BenchTrace trace(SweepIntake.SentFile file) {
        Double bandwidthHz = form.positive("bandwidth", "Bandwidth of the oscilloscope", "Hz", true);
        Double delayS = form.quantity("delay", "Time of the step in the file", "s", false);
        return intake.refusing(form, () -> {
            NumberColumns columns = NumberColumns.read(file.bytes(), 2);
            double[] time = scaled(columns.columns().get(0), unit("timeUnit"));
            requireRising(time, columns.firstLine(), false);
            return bandwidthHz == null ? null : new BenchTrace(added(time, delayS == null ? 0 : -delayS),
                    scaled(columns.columns().get(1), unit("voltageUnit")), bandwidthHz);
        });
    }

    private double unit(String name) {
        String prefix = form.get(name);
        return switch (prefix == null ? "" : prefix) {
            case "n" -> 1e-9;
            case "u" -> 1e-6;
            case "m" -> 1e-3;
            case "k" -> 1e3;
            default -> 1;
        };
    }

    private static void requireRising(double[] values, int firstLine, boolean positive) {
        for (int i = 0; i < values.length; i++) {
            if (positive && !(values[i] > 0) || i > 0 && !(values[i] > values[i - 1])) {
                throw new SweepFileException(firstLine + i, "the first column must rise from line to line" + (positive ? " and be above 0" : ""));
            }
        }
        if (values.length < 2) {
            throw SweepFileException.ofFile("Two lines of numbers are the least");
        }
    }

    private static double[] scaled(double[] values, double factor) {
        double[] scaled = values.clone();
        for (int i = 0; i < scaled.length; i++) {
            scaled[i] *= factor;
        }
        return scaled;
    }

    private static double[] added(double[] values, double offset) {
        double[] moved = values.clone();
        for (int i = 0; i < moved.length; i++) {
            moved[i] += offset;
        }
        return moved;
    }

    private static LocalDate date(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            throw new IllegalArgumentException("Write the date as 2026-03-31, not '" + text + "'", e);
        }
    }
}
