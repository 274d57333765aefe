package org.stillrail.library;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.sweepfile.Fixture;
import org.stillrail.sweepfile.accuracy.FrequencyBand;
import org.stillrail.sweepfile.accuracy.ImpedanceUncertainty;
import org.stillrail.sweepfile.accuracy.ImpedanceWindow;
import org.stillrail.sweepfile.accuracy.InstrumentAccuracy;
import org.stillrail.web.Quantity;

/** How far a measured impedance can be trusted, by its fixture and the instrument's accuracy: as curves and in words. */
final class Trust {

    /** |Z| is called trusted within this share. Common practice, no source. */
    static final double LIMIT = 0.1;

    private static final double USUAL_REFERENCE_OHM = 50;
    private static final int SHOWN_BANDS = 3;
    private static final double SMALLEST_SPAN = 1.02;

    private final Curve impedance;
    private final Fixture fixture;
    private final double referenceOhm;
    private final MeasurementSetup setup;
    private final ImpedanceUncertainty uncertainty;

    private Trust(Curve impedance, Fixture fixture, double referenceOhm, MeasurementSetup setup) {
        this.impedance = impedance;
        this.fixture = fixture;
        this.referenceOhm = referenceOhm;
        this.setup = setup;
        this.uncertainty = ImpedanceUncertainty.of(impedance, fixture, referenceOhm, setup.accuracyOrUsual());
    }

    /** @param referenceOhm null where the file has none: 50 ohm then */
    static Trust of(Curve impedance, Fixture fixture, Double referenceOhm, MeasurementSetup setup) {
        return new Trust(impedance, fixture, referenceOhm == null ? USUAL_REFERENCE_OHM : referenceOhm, setup);
    }

    static Trust of(SweepDocument document, Curve impedance) {
        return of(impedance, Fixture.of(document.provenance().fixture()), document.referenceOhm(), document.setup());
    }

    ImpedanceUncertainty uncertainty() {
        return uncertainty;
    }

    /** Where |Z| is known to within {@link #LIMIT}. */
    List<FrequencyBand> trusted() {
        return uncertainty.trustedBands(LIMIT);
    }

    /** What lies between the bands of trust. */
    List<FrequencyBand> untrusted() {
        List<FrequencyBand> outside = new ArrayList<>();
        double from = impedance.grid().startHz();
        for (FrequencyBand band : trusted()) {
            if (band.startHz() > from * SMALLEST_SPAN) {
                outside.add(new FrequencyBand(from, band.startHz()));
            }
            from = band.stopHz();
        }
        if (impedance.grid().stopHz() > from * SMALLEST_SPAN) {
            outside.add(new FrequencyBand(from, impedance.grid().stopHz()));
        }
        return outside;
    }

    /** Radius of the disc around Z at a frequency, by the nearest point. */
    double errorOhmAt(double hz) {
        int low = 0;
        int high = impedance.size() - 1;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (impedance.grid().hz(middle) <= hz) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return uncertainty.errorOhm(hz - impedance.grid().hz(low) < impedance.grid().hz(high) - hz ? low : high);
    }

    /** The shields' error at each point in ohm, or null where they are not given. */
    double[] shieldErrorOhm() {
        return setup.shields() == null || fixture != Fixture.SHUNT_THROUGH ? null : setup.shields().errorOn(impedance.grid()).magnitudes();
    }

    /** {@link #shieldErrorOhm()} for a chart: not a number where it is far below anything that was measured. */
    double[] shieldErrorShown() {
        double[] error = shieldErrorOhm();
        double least = Arrays.stream(impedance.magnitudes()).min().orElse(0) / 10;
        return error == null ? null : Arrays.stream(error).map(ohm -> ohm < least ? Double.NaN : ohm).toArray();
    }

    /** What a reader should know, in sentences. */
    List<String> words() {
        List<String> words = new ArrayList<>();
        words.add(accuracy());
        Optional<ImpedanceWindow> window = ImpedanceWindow.of(fixture, referenceOhm, setup.accuracyOrUsual(), LIMIT);
        words.add(fixture == Fixture.IMPEDANCE ? "That holds at every impedance." : window.map(w -> "So measured, " + fixture.label() + " tells impedances from " + Quantity.format(w.lowestOhm(), "ohm", 2) + " to "
                        + Quantity.format(w.highestOhm(), "ohm", 2) + " to within 10 %.")
                .orElse("So measured, " + fixture.label() + " tells no impedance to within 10 %."));
        List<FrequencyBand> trusted = trusted();
        boolean everywhere = trusted.size() == 1 && trusted.get(0).startHz() == impedance.grid().startHz()
                && trusted.get(0).stopHz() == impedance.grid().stopHz();
        words.add(everywhere ? "|Z| can be trusted over the whole sweep." : trusted.isEmpty() ? "|Z| can be trusted nowhere in this sweep."
                : "|Z| can be trusted " + bands(trusted) + ", not elsewhere.");
        List<FrequencyBand> unknown = uncertainty.unknownResistanceBands();
        if (!unknown.isEmpty()) {
            words.add("The ESR is not known " + bands(unknown) + ": the error is larger than the resistance itself, whatever the curve shows.");
        }
        double[] shields = shieldErrorOhm();
        if (shields != null) {
            words.add("The cable shields add up to " + Quantity.format(shields[0], "ohm", 2) + " at " + hz(impedance.grid().startHz())
                    + (Double.isInfinite(setup.shields().cornerHz()) ? ", at every frequency."
                            : "; the error falls above " + hz(setup.shields().cornerHz()) + "."));
        }
        return words;
    }

    private String accuracy() {
        InstrumentAccuracy accuracy = setup.accuracyOrUsual();
        String figures = switch (fixture) {
            case REFLECTION -> percent(accuracy.reflection()) + " of S11";
            case IMPEDANCE -> percent(accuracy.impedance()) + " of |Z|";
            case SHUNT_THROUGH, SERIES_THROUGH -> percent(accuracy.transmission()) + " of S21 and a floor of "
                    + Quantity.format(20 * Math.log10(Math.max(accuracy.transmissionFloor(), 1e-15)), "dB", 3);
        };
        return setup.accuracy() == null
                ? "Nobody stated the instrument's accuracy; what is usual stands in: " + figures + "."
                : "Accuracy of the instrument as stated: " + figures + ".";
    }

    private static String percent(double share) {
        return Quantity.format(100 * share, "%", 2);
    }

    private static String bands(List<FrequencyBand> bands) {
        String shown = bands.stream().limit(SHOWN_BANDS)
                .map(band -> band.startHz() == band.stopHz() ? "at " + hz(band.startHz()) : "from " + hz(band.startHz()) + " to " + hz(band.stopHz()))
                .collect(Collectors.joining(", "));
        return shown + (bands.size() > SHOWN_BANDS ? (bands.size() - SHOWN_BANDS == 1 ? " and in one more place" : " and in " + (bands.size() - SHOWN_BANDS) + " more places") : "");
    }

    private static String hz(double hz) {
        return Quantity.format(hz, "Hz", 3);
    }
}
