package org.stillrail.sweepfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;

/**
 * 12,000 files, 2,000 archives and 2,000 mappings a run: whatever the bytes, the readers give a sweep that holds what it promises or their own exception. The time
 * limit stops a reader that hangs; it is no measure of speed.
 */
class SweepReaderFuzzTest {

    private static final Duration HANGS = Duration.ofSeconds(60);

    private static final List<String> SEEDS = List.of(
            "! c\n# GHz S RI R 50\n1 .1 .2\n2 .3 .4\n3 .5 .6\n",
            "#\n2 0.95 -26 3.57 157 0.04 76 0.66 -14\n22 0.60 -144 1.30 40 0.14 40 0.56 -85\n4 0.7 0.64 69 0.38\n18 2.7 0.46 -33 0.40\n",
            "# MHz Y DB R 50 75\n1 -3 10 -4 20 -4 20 -3 10\n2 -3 10 -4 20\n -4 20 -3 10\n",
            "[Version] 2.0\n# Hz Z RI\n[Number of Ports] 2\n[Two-Port Data Order] 12_21\n[Number of Frequencies] 2\n[Reference] 50\n25\n"
                    + "[Matrix Format] Lower\n[Network Data]\n1 1 2 3 4 5 6\n2 1 2 3 4 5 6\n[Noise Data]\n1 2 3 4 5\n[End]\n",
            "freq/Hz;Re(Z)/Ohm;-Im(Z)/Ohm;loop\n1000;2,5;-1,25;0\n2000;3,5;1,5;0\n1000;2,5;-1,25;1\n2000;3,5;1,5;1\n",
            "Frequency (kHz)\t|Z| (mOhm)\tPhase [rad]\t\n100\t2.5\t1.2\t\n10\t3.5\t-1.5\t\n0\t0\t0\t\n",
            "\"f, Hz\",\"S21(DB)\",\"S21(DEG)\"\n1,-40,3\n2,-41,4\n3,-42,5\n");

    private static final String[] WORDS = {"#", "!", "[Version] 2.1", "[Network Data]", "[End]", "[Reference]", "[Number of Ports]", "GHz", "Hz",
        "S", "Z", "Y", "RI", "MA", "DB", "R", "50", "1", "2", "-3.5", "1e9", "1e-400", "1e308", "NaN", "0", "0.0", ",", ";", "\t", " ", "\n", "\n", "\n",
        "\r", "\"", "freq/Hz", "Re(Z)/Ohm", "-Im(Z)/Ohm", "|Z|", "Phase", "Cp (pF)", "D", "loop", "END", "\u00e9", "\u0000", "\ufeff", "1,5", "."};

    @Property(tries = 2_000, shrinking = ShrinkingMode.OFF)
    void bytesWithoutMeaning(@ForAll byte[] bytes, @ForAll Fixture fixture) {
        check(bytes, "a.s1p", ReadOptions.of(fixture));
        check(bytes, "a.csv", ReadOptions.of(fixture));
    }

    @Property(tries = 4_000, shrinking = ShrinkingMode.OFF)
    void wordsOfTheFormatsInAnyOrder(@ForAll long seed, @ForAll Fixture fixture) {
        Random random = new Random(seed);
        StringBuilder text = new StringBuilder();
        int words = random.nextInt(200);
        for (int i = 0; i < words; i++) {
            text.append(WORDS[random.nextInt(WORDS.length)]).append(random.nextInt(4) == 0 ? "" : " ");
        }
        check(text.toString().getBytes(StandardCharsets.UTF_8), name(random), options(random, fixture));
    }

    @Property(tries = 6_000, shrinking = ShrinkingMode.OFF)
    void goodFilesWithFaults(@ForAll long seed, @ForAll Fixture fixture) {
        Random random = new Random(seed);
        StringBuilder text = new StringBuilder(SEEDS.get(random.nextInt(SEEDS.size())));
        int faults = 1 + random.nextInt(6);
        for (int i = 0; i < faults && text.length() > 0; i++) {
            int at = random.nextInt(text.length());
            switch (random.nextInt(5)) {
                case 0 -> text.deleteCharAt(at);
                case 1 -> text.insert(at, WORDS[random.nextInt(WORDS.length)]);
                case 2 -> text.setCharAt(at, (char) random.nextInt(256));
                case 3 -> text.setLength(at);
                default -> text.insert(at, text.substring(at / 2, at));
            }
        }
        byte[] bytes = text.toString().getBytes(random.nextInt(5) == 0 ? StandardCharsets.UTF_16LE : StandardCharsets.UTF_8);
        check(bytes, name(random), options(random, fixture));
    }

    @Property(tries = 2_000, shrinking = ShrinkingMode.OFF)
    void archivesWithFaults(@ForAll long seed) throws IOException {
        Random random = new Random(seed);
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(packed)) {
            for (int i = 0; i < 3; i++) {
                zip.putNextEntry(new ZipEntry(i + ".s1p"));
                zip.write(SEEDS.get(random.nextInt(SEEDS.size())).getBytes(StandardCharsets.UTF_8));
            }
        }
        byte[] bytes = packed.toByteArray();
        for (int i = random.nextInt(6); i >= 0; i--) {
            bytes[random.nextInt(bytes.length)] = (byte) random.nextInt();
        }
        byte[] archive = Arrays.copyOf(bytes, random.nextInt(3) == 0 ? random.nextInt(bytes.length) : bytes.length);
        assertTimeoutPreemptively(HANGS, () -> {
            try {
                assertThat(SweepArchive.read(archive)).isNotEmpty();
            } catch (SweepFileException refused) {
                assertThat(refused.reason()).isNotBlank();
            }
        });
    }

    @Property(tries = 2_000, shrinking = ShrinkingMode.OFF)
    void tracesWithFaults(@ForAll long seed) {
        Random random = new Random(seed);
        StringBuilder text = new StringBuilder("time,volt\n");
        for (int i = random.nextInt(40); i >= 0; i--) {
            text.append(i * 1e-6).append(random.nextInt(9) == 0 ? ";" : ",").append(random.nextGaussian()).append('\n');
        }
        for (int i = random.nextInt(8); i > 0; i--) {
            text.insert(random.nextInt(text.length()), WORDS[random.nextInt(WORDS.length)]);
        }
        byte[] bytes = text.toString().getBytes(random.nextInt(5) == 0 ? StandardCharsets.UTF_16LE : StandardCharsets.UTF_8);
        assertTimeoutPreemptively(HANGS, () -> {
            try {
                NumberColumns read = NumberColumns.read(bytes, 2);
                assertThat(read.columns()).hasSizeGreaterThanOrEqualTo(2).allSatisfy(column -> assertThat(column).hasSize(read.rows()));
            } catch (SweepFileException refused) {
                assertThat(refused.reason()).isNotBlank();
            }
        });
    }

    @Property(tries = 2_000, shrinking = ShrinkingMode.OFF)
    void mappingsInAnyOrder(@ForAll long seed) {
        Random random = new Random(seed);
        String[] words = {"frequency", "resistance", "reactance", "phase", "magnitude", "reference", "decimal", "delimiter", "=", "=", "=", ",", ";", "1",
            "2", "-3", "0", "99999999999", ":", "kHz", "mOhm", "comma", "space", " ", "\u0000", "NaN"};
        StringBuilder text = new StringBuilder();
        for (int i = random.nextInt(30); i >= 0; i--) {
            text.append(words[random.nextInt(words.length)]);
        }
        try {
            ColumnMapping mapping = ColumnMapping.parse(text.toString());
            assertThat(ColumnMapping.parse(mapping.toText())).isEqualTo(mapping);
        } catch (IllegalArgumentException refused) {
            assertThat(refused.getMessage()).isNotBlank();
        }
    }

    private static String name(Random random) {
        return List.of("a.s1p", "a.s2p", "a.ts", "a.csv", "").get(random.nextInt(5));
    }

    private static ReadOptions options(Random random, Fixture fixture) {
        ReadOptions options = ReadOptions.of(fixture).withPort(1 + random.nextInt(2)).withBlock(random.nextInt(3));
        return random.nextInt(4) > 0 ? options
                : options.withColumns(ColumnMapping.parse("frequency=1, resistance=2, reactance=-" + (1 + random.nextInt(4)) + ", block=4"));
    }

    private static void check(byte[] bytes, String name, ReadOptions options) {
        assertTimeoutPreemptively(HANGS, () -> {
            try {
                checkPromises(SweepReader.read(bytes, name, options));
            } catch (SweepFileException refused) {
                assertThat(refused.reason()).isNotBlank();
                assertThat(refused.lineNumber()).isBetween(0, bytes.length + 1);
            }
            try {
                TextPreview preview = SweepReader.preview(bytes, null, options.fixture());
                assertThat(preview.columns()).isNotEmpty();
            } catch (SweepFileException refused) {
                assertThat(refused.reason()).isNotBlank();
            }
        });
    }

    private static void checkPromises(ReadSweep sweep) {
        double[] hz = sweep.frequencyHz();
        assertThat(sweep.points()).isPositive();
        for (int i = 0; i < hz.length; i++) {
            assertThat(hz[i]).isFinite().isGreaterThan(i == 0 ? 0 : hz[i - 1]);
            assertThat(sweep.resistanceOhm()[i]).isFinite();
            assertThat(sweep.reactanceOhm()[i]).isFinite();
        }
    }
}
