package org.stillrail.demo;

import static org.stillrail.demo.Ceramic.leftAtAge;
import static org.stillrail.demo.Ceramic.leftAtBias;
import static org.stillrail.demo.TouchstoneFormat.FrequencyUnit.HZ;
import static org.stillrail.demo.TouchstoneFormat.FrequencyUnit.KHZ;
import static org.stillrail.demo.TouchstoneFormat.FrequencyUnit.MHZ;
import static org.stillrail.demo.TouchstoneFormat.Pair.DB;
import static org.stillrail.demo.TouchstoneFormat.Pair.MA;
import static org.stillrail.demo.TouchstoneFormat.Pair.RI;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The demo's sweeps; {@code main} writes them where the demo reads them. Run it from the project's directory. */
public final class DemoSweeps {

    static final Path FOLDER = Path.of("demo-data", "library", "sweeps");

    private static final SweepGrid BULK = new SweepGrid(10, 10e6, 25);
    private static final SweepGrid BULK_FROM_100_HZ = new SweepGrid(100, 30e6, 30);
    private static final SweepGrid SMALL = new SweepGrid(1e3, 300e6, 40);

    static final List<DemoSweep> ALL = List.of(
            new DemoSweep("heron-470u-25-a.s2p", InventedParts.heron470(),
                    BULK, Bench.SHUNT_THROUGH, new TouchstoneFormat(2, HZ, RI), 4701, "HERON-470U-25 sample A, 23 degC, 0 V"),
            new DemoSweep("heron-470u-25-b.s2p",
                    InventedParts.heron470().capacitanceTimes(0.958).electrolyteTimes(1.17).inductanceTimes(1.05),
                    BULK, Bench.SHUNT_THROUGH, new TouchstoneFormat(2, HZ, RI), 4702, "HERON-470U-25 sample B, 23 degC, 0 V"),
            new DemoSweep("heron-470u-25-c.s2p",
                    InventedParts.heron470().capacitanceTimes(1.041).electrolyteTimes(0.89).inductanceTimes(0.97),
                    BULK, Bench.SHUNT_THROUGH, new TouchstoneFormat(2, HZ, RI), 4703, "HERON-470U-25 sample C, 23 degC, 0 V"),
            new DemoSweep("heron-470u-25-e-cold.s2p",
                    InventedParts.heron470().capacitanceTimes(0.87).electrolyteTimes(8.5),
                    BULK, Bench.SHUNT_THROUGH, new TouchstoneFormat(2, HZ, RI), 4704,
                    "HERON-470U-25 sample E, -20 degC after 2 h in the chamber, 0 V"),
            new DemoSweep("heron-470u-25-d-aged.s2p",
                    InventedParts.heron470().capacitanceTimes(0.86).electrolyteTimes(2.1),
                    BULK, Bench.SHUNT_THROUGH, new TouchstoneFormat(2, HZ, RI), 4705,
                    "HERON-470U-25 sample D after 4000 h at 105 degC and rated ripple, 23 degC, 0 V"),
            new DemoSweep("heron-330u-35-a.s1p", InventedParts.heron330(),
                    BULK_FROM_100_HZ, Bench.REFLECTION, new TouchstoneFormat(1, KHZ, MA), 3301,
                    "HERON-330U-35 sample A, 22 degC, 0 V"),
            new DemoSweep("heron-330u-35-b-cold.csv",
                    InventedParts.heron330().capacitanceTimes(0.86).electrolyteTimes(7.0),
                    new SweepGrid(20, 10e6, 22), Bench.IMPEDANCE, new ResistanceReactanceCsv(), 3302,
                    "HERON-330U-35 sample B; -20 degC; 0 V; 100 mV rms"),
            new DemoSweep("wren-560u-6v3-a.s2p", InventedParts.wren560(),
                    BULK, Bench.SHUNT_THROUGH, new TouchstoneFormat(2, HZ, RI), 5601, "WREN-560U-6V3 sample A, 24 degC, 0 V"),
            new DemoSweep("wren-270u-16-a.s2p", InventedParts.wren270(),
                    BULK, Bench.SHUNT_THROUGH, new TouchstoneFormat(2, KHZ, DB), 2701, "WREN-270U-16 sample A, 24 degC, 0 V"),
            new DemoSweep("wren-100u-25-a.s1p", InventedParts.wren100(),
                    BULK_FROM_100_HZ, Bench.REFLECTION, new TouchstoneFormat(1, HZ, RI), 1001,
                    "WREN-100U-25 sample A, 23 degC, 0 V; one port, so milliohms lie in the noise"),
            new DemoSweep("wren-100u-25-a-through.s2p", InventedParts.wren100(),
                    BULK_FROM_100_HZ, Bench.SHUNT_THROUGH, new TouchstoneFormat(2, HZ, RI), 1002,
                    "WREN-100U-25 sample A, 23 degC, 0 V; measured again on two ports"),
            new DemoSweep("rook-270u-35-a.s2p", InventedParts.rook270(),
                    BULK, Bench.SHUNT_THROUGH, new TouchstoneFormat(2, HZ, MA), 2351, "ROOK-270U-35 sample A, 23 degC, 0 V"),
            new DemoSweep("rook-270u-35-a-cold.s2p",
                    InventedParts.rook270().capacitanceTimes(0.93).electrolyteTimes(1.35),
                    BULK, Bench.SHUNT_THROUGH, new TouchstoneFormat(2, HZ, MA), 2352, "ROOK-270U-35 sample A, -30 degC, 0 V"),
            new DemoSweep("finch-100u-16-a.csv", InventedParts.finch100(),
                    new SweepGrid(100, 10e6, 24), Bench.IMPEDANCE, new ResistanceReactanceCsv(), 1161,
                    "FINCH-100U-16 sample A; 23 degC; 5 V; 100 mV rms"),
            new DemoSweep("swift-330u-6v3-a.s2p", InventedParts.swift330(),
                    BULK_FROM_100_HZ, Bench.SHUNT_THROUGH, new TouchstoneFormat(2, HZ, RI), 3361,
                    "SWIFT-330U-6V3 sample A, 23 degC, 0 V"),
            new DemoSweep("plover-10n-50-a.s2p", InventedParts.plover10n(),
                    new SweepGrid(10e3, 400e6, 40), Bench.SERIES_THROUGH, new TouchstoneFormat(2, MHZ, RI), 1051,
                    "PLOVER-10N-50 sample A, 23 degC, 0 V"),
            new DemoSweep("plover-1n-100-a.s2p", InventedParts.plover1n(),
                    new SweepGrid(100e3, 1e9, 40), Bench.SERIES_THROUGH, new TouchstoneFormat(2, MHZ, RI), 1101,
                    "PLOVER-1N-100 sample A, 23 degC, 0 V"),
            new DemoSweep("sparrow-100n-50-a.s2p", InventedParts.sparrow100n().capacitanceTimes(leftAtAge(300)),
                    new SweepGrid(20e3, 400e6, 40), Bench.SHUNT_THROUGH, new TouchstoneFormat(2, MHZ, RI), 1151,
                    "SPARROW-100N-50 sample A, 23 degC, 0 V"),
            new DemoSweep("sparrow-1u-25-a.s2p", InventedParts.sparrow1u().capacitanceTimes(leftAtAge(300)),
                    new SweepGrid(5e3, 300e6, 40), Bench.SHUNT_THROUGH, new TouchstoneFormat(2, MHZ, DB), 1251,
                    "SPARROW-1U-25 sample A, 23 degC, 0 V"),
            new DemoSweep("sparrow-4u7-25-a.s2p", InventedParts.sparrow4u7().capacitanceTimes(leftAtAge(48)),
                    SMALL, Bench.SHUNT_THROUGH, new TouchstoneFormat(2, HZ, RI), 4725, "SPARROW-4U7-25 sample A, 23 degC, 0 V"),
            new DemoSweep("sparrow-10u-25-a-0v.s2p", tenMicrofaradAt(0),
                    SMALL, Bench.SHUNT_THROUGH, new TouchstoneFormat(2, HZ, RI), 1025, "SPARROW-10U-25 sample A, 23 degC, 0 V"),
            new DemoSweep("sparrow-10u-25-a-5v.s2p", tenMicrofaradAt(5),
                    SMALL, Bench.SHUNT_THROUGH, new TouchstoneFormat(2, HZ, RI), 1026, "SPARROW-10U-25 sample A, 23 degC, 5 V"),
            new DemoSweep("sparrow-10u-25-a-12v.s2p", tenMicrofaradAt(12),
                    SMALL, Bench.SHUNT_THROUGH, new TouchstoneFormat(2, HZ, RI), 1027, "SPARROW-10U-25 sample A, 23 degC, 12 V"),
            new DemoSweep("sparrow-10u-50-a.s1p", InventedParts.sparrow10u50().capacitanceTimes(leftAtAge(2000)),
                    new SweepGrid(1e3, 110e6, 40), Bench.IMPEDANCE, new TouchstoneFormat(1, HZ, RI), 1050,
                    "SPARROW-10U-50 sample A, 23 degC, 0 V; impedance in ohm"),
            new DemoSweep("sparrow-22u-10-a-0v.s2p", twentyTwoMicrofaradAt(0).capacitanceTimes(leftAtAge(96)),
                    SMALL, Bench.SHUNT_THROUGH, new TouchstoneFormat(2, HZ, RI), 2210, "SPARROW-22U-10 sample A, 23 degC, 0 V"),
            new DemoSweep("sparrow-22u-10-a-3v3.s2p", twentyTwoMicrofaradAt(3.3).capacitanceTimes(leftAtAge(98)),
                    SMALL, Bench.SHUNT_THROUGH, new TouchstoneFormat(2, HZ, RI), 2211, "SPARROW-22U-10 sample A, 23 degC, 3.3 V"),
            new DemoSweep("sparrow-22u-10-b-old.s2p",
                    twentyTwoMicrofaradAt(0).capacitanceTimes(0.972 * leftAtAge(20000)).inductanceTimes(1.04),
                    SMALL, Bench.SHUNT_THROUGH, new TouchstoneFormat(2, HZ, RI), 2212,
                    "SPARROW-22U-10 sample B from a board of the year before last, 23 degC, 0 V"),
            new DemoSweep("sparrow-47u-6v3-a.csv", InventedParts.sparrow47u().capacitanceTimes(leftAtAge(24)),
                    new SweepGrid(1e3, 120e6, 30), Bench.IMPEDANCE, new MagnitudePhaseCsv(), 4763,
                    "SPARROW-47U-6V3 sample A, 25 degC, 0 V, 500 mV rms"),
            new DemoSweep("stork-1u-63-a.csv", InventedParts.stork1u(),
                    new SweepGrid(100, 50e6, 25), Bench.IMPEDANCE, new MagnitudePhaseCsv(), 1063,
                    "STORK-1U-63 sample A, 25 degC, 0 V, 500 mV rms"),
            new DemoSweep("stork-4u7-100-a.s2p", InventedParts.stork4u7(),
                    BULK_FROM_100_HZ, Bench.SHUNT_THROUGH, new TouchstoneFormat(2, KHZ, RI), 4700,
                    "STORK-4U7-100 sample A, 23 degC, 0 V"),
            new DemoSweep("goose-1f-5v5-a.txt", InventedParts.goose1f(),
                    new SweepGrid(0.01, 100e3, 20), Bench.IMPEDANCE, new CellTable(), 1055,
                    "GOOSE-1F-5V5 sample A, 21 degC, 2.5 V, 10 mV rms"));

    private DemoSweeps() {
    }

    public static void main(String[] arguments) throws IOException {
        Files.createDirectories(FOLDER);
        for (DemoSweep sweep : ALL) {
            Files.write(FOLDER.resolve(sweep.file()), sweep.content());
        }
    }

    private static CapacitorPhysics tenMicrofaradAt(double biasV) {
        double left = leftAtBias(biasV, 13, 2.2);
        return InventedParts.sparrow10u25().capacitanceTimes(leftAtAge(150) * left).lossTimes(left);
    }

    private static CapacitorPhysics twentyTwoMicrofaradAt(double biasV) {
        double left = leftAtBias(biasV, 4.4, 2);
        return InventedParts.sparrow22u().capacitanceTimes(left).lossTimes(left);
    }
}
