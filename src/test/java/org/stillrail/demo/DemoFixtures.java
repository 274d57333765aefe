package org.stillrail.demo;

import static org.stillrail.demo.TouchstoneFormat.FrequencyUnit.HZ;
import static org.stillrail.demo.TouchstoneFormat.Pair.RI;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The demo's sweeps of its fixture; {@code main} writes them where the demo reads them. Run it from the project's directory. */
public final class DemoFixtures {

    static final Path FOLDER = Path.of("demo-data", "library", "fixtures");

    private static final SweepGrid GRID = new SweepGrid(10, 300e6, 24);

    static final List<DemoSweep> ALL = List.of(
            new DemoSweep("coupon-t2-open.s2p", new FixtureStandard(Double.POSITIVE_INFINITY), GRID, Bench.SHUNT_THROUGH,
                    new TouchstoneFormat(2, HZ, RI), 201, "Coupon T2, nothing on its pads"),
            new DemoSweep("coupon-t2-short.s2p", new FixtureStandard(0), GRID, Bench.SHUNT_THROUGH,
                    new TouchstoneFormat(2, HZ, RI), 202, "Coupon T2, copper foil over its pads"),
            new DemoSweep("coupon-t2-load.s2p", new FixtureStandard(10), GRID, Bench.SHUNT_THROUGH,
                    new TouchstoneFormat(2, HZ, RI), 203, "Coupon T2, 10 ohm thin film on its pads"));

    private DemoFixtures() {
    }

    public static void main(String[] arguments) throws IOException {
        Files.createDirectories(FOLDER);
        for (DemoSweep sweep : ALL) {
            Files.write(FOLDER.resolve(sweep.file()), sweep.content());
        }
    }
}
