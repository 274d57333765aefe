package org.stillrail.sweepfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SweepArchiveTest {

    private static final byte[] SWEEP = "# Hz Z RI R 1\n1 2 3\n".getBytes(StandardCharsets.UTF_8);

    @Test
    void filesComeOutInOrderWithoutFoldersAndLitter() {
        Map<String, byte[]> entries = new LinkedHashMap<>();
        entries.put("bank/", new byte[0]);
        entries.put("bank/b.s1p", SWEEP);
        entries.put("__MACOSX/bank/._b.s1p", new byte[] {1});
        entries.put("bank/.DS_Store", new byte[] {1});
        entries.put("a..b.s1p", SWEEP);
        assertThat(SweepArchive.read(zip(entries))).extracting(SweepArchive.ArchivedFile::name).containsExactly("bank/b.s1p", "a..b.s1p");
        assertThat(SweepArchive.read(zip(entries)).get(0).bytes()).isEqualTo(SWEEP);
    }

    @ParameterizedTest
    @ValueSource(strings = {"../a.s1p", "x/../../a.s1p", "/etc/a.s1p", "C:/a.s1p", "x\\a.s1p", "a\n.s1p", "a\u0000.s1p"})
    void pathsThatLeadElsewhereAreRefused(String name) {
        assertRefused(zip(Map.of(name, SWEEP)), "no plain path");
    }

    @Test
    void aBombIsRefused() {
        assertRefused(zip(Map.of("a.s1p", new byte[19 * 1024 * 1024])), "more than 100 times its size");
    }

    @Test
    void anEntryOverTheLimitIsRefused() {
        byte[] large = new byte[20 * 1024 * 1024 + 1];
        for (int i = 0; i < large.length; i++) {
            large[i] = (byte) (i * 2654435761L >>> 13);
        }
        assertRefused(zip(Map.of("a.s1p", large)), "'a.s1p' unpacks to more than 20 MiB");
    }

    @Test
    void tooManyFilesAreRefused() {
        Map<String, byte[]> entries = new LinkedHashMap<>();
        for (int i = 0; i < 200; i++) {
            entries.put(i + ".s1p", SWEEP);
        }
        assertThat(SweepArchive.read(zip(entries))).hasSize(200);
        entries.put("one more.s1p", SWEEP);
        assertRefused(zip(entries), "more than 200 files");
    }

    @Test
    void anEntryThatLiesAboutItsLengthIsRefused() {
        byte[] zip = stored("a.s1p", SWEEP);
        zip[22] += 5;
        assertRefused(zip, "damaged or lies about the length");
        byte[] shorter = stored("a.s1p", SWEEP);
        shorter[18] -= 5;
        shorter[22] -= 5;
        assertRefused(shorter, "damaged or lies about the length");
    }

    @Test
    void whatIsCutOffEmptyOrNoArchiveIsRefused() {
        byte[] whole = zip(Map.of("a.s1p", SWEEP));
        assertRefused(Arrays.copyOf(whole, 40), "damaged");
        assertRefused(zip(Map.of("folder/", new byte[0])), "holds no files");
        assertRefused(SWEEP, "no ZIP archive");
        assertRefused(new byte[0], "no ZIP archive");
    }

    private static void assertRefused(byte[] zip, String words) {
        assertThatThrownBy(() -> SweepArchive.read(zip)).isInstanceOf(SweepFileException.class).hasMessageContaining(words);
    }

    private static byte[] zip(Map<String, byte[]> entries) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes, StandardCharsets.UTF_8)) {
            for (Map.Entry<String, byte[]> entry : entries.entrySet()) {
                zip.putNextEntry(new ZipEntry(entry.getKey()));
                zip.write(entry.getValue());
                zip.closeEntry();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    /** Not packed, with its length in front: bytes 18 to 25 of the local header. */
    private static byte[] stored(String name, byte[] content) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        CRC32 crc = new CRC32();
        crc.update(content);
        try (ZipOutputStream zip = new ZipOutputStream(bytes, StandardCharsets.UTF_8)) {
            ZipEntry entry = new ZipEntry(name);
            entry.setMethod(ZipEntry.STORED);
            entry.setSize(content.length);
            entry.setCompressedSize(content.length);
            entry.setCrc(crc.getValue());
            zip.putNextEntry(entry);
            zip.write(content);
            zip.closeEntry();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }
}
