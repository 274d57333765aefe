package org.stillrail.demo;

import static org.stillrail.demo.TouchstoneFormat.FrequencyUnit.HZ;
import static org.stillrail.demo.TouchstoneFormat.Pair.RI;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What the demo's team measured on its first board of 'Electrolytic with ceramics': impedance, loop gain, ripple, load step.
 * {@code main} writes it where the demo reads it. Run it from the project's directory.
 */
public final class DemoBench {

    static final Path FOLDER = Path.of("demo-data", "bench");

    /** Leads left long, and vias shared by two ceramics: more of both than the bank was composed with. */
    static final double BULK_OHM = 4e-3;
    static final double BULK_H = 12e-9;
    static final double CERAMIC_OHM = 3e-3;
    static final double CERAMIC_H = 1.05e-9;
    private static final double BYPASS_OHM = 8e-3;
    private static final double BYPASS_H = 1.3e-9;
    /** Another lot than the one that was swept. */
    private static final double CERAMIC_LOT = 1.04;
    private static final double CERAMIC_LOSS = 1.8;

    static final Specimen UNPOWERED = board(1);
    /** Nine tenths of the ceramics are left at 5 V. */
    private static final Specimen AT_5_V = board(0.9);

    static final BuiltRegulator REGULATOR = new BuiltRegulator(24, 5, 9.6e-6, 0.024, 394e3, 1.6, 1.3e-6, 810,
            new double[] {1.7e3, 1.8e3}, new double[] {20e3, 21e3});

    private static final DemoSweep IMPEDANCE = new DemoSweep("logic-5v0-board-1.s2p", UNPOWERED, new SweepGrid(100, 50e6, 40),
            Bench.SHUNT_THROUGH, new TouchstoneFormat(2, HZ, RI), 5001, "Logic 5V0, board 1, regulator not fitted, 23 degC, 0 V");

    private DemoBench() {
    }

    /** Content by file name. */
    static Map<String, byte[]> files() {
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put(IMPEDANCE.file(), IMPEDANCE.content());
        files.put("logic-5v0-loop.csv", LoopTrace.of(REGULATOR, AT_5_V).getBytes(StandardCharsets.US_ASCII));
        files.put("logic-5v0-ripple.csv", ScopeTraces.ripple(REGULATOR, AT_5_V).getBytes(StandardCharsets.US_ASCII));
        files.put("logic-5v0-step.csv", ScopeTraces.step(REGULATOR, AT_5_V).getBytes(StandardCharsets.US_ASCII));
        return files;
    }

    public static void main(String[] arguments) throws IOException {
        Files.createDirectories(FOLDER);
        for (Map.Entry<String, byte[]> file : files().entrySet()) {
            Files.write(FOLDER.resolve(file.getKey()), file.getValue());
        }
    }

    private static Specimen board(double ceramicsLeft) {
        return new AssembledBoard(List.of(
                new AssembledBoard.Mounted(1, InventedParts.heron470().capacitanceTimes(0.985).electrolyteTimes(1.04), BULK_OHM, BULK_H),
                new AssembledBoard.Mounted(6, InventedParts.sparrow10u25().capacitanceTimes(CERAMIC_LOT * ceramicsLeft).lossTimes(CERAMIC_LOSS),
                        CERAMIC_OHM, CERAMIC_H),
                new AssembledBoard.Mounted(1, InventedParts.sparrow100n(), BYPASS_OHM, BYPASS_H)));
    }
}
