package org.stillrail.sweepfile;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

/**
 * Unpacks a ZIP file of sweeps in memory, within limits that no length stated in the archive can talk past: bytes are counted as
 * they come out. One entry that is refused refuses the whole archive.
 */
public final class SweepArchive {

    public static final int MOST_FILES = 200;
    public static final int MOST_BYTES = 200 * 1024 * 1024;
    /** Measured text packs to a tenth, a table of zeros to a fiftieth. */
    public static final int MOST_RATIO = 100;

    /** Below this an entry may pack as well as it likes. */
    private static final int RATIO_COUNTS_FROM = 1024 * 1024;
    private static final int BUFFER = 16 * 1024;
    /** Folders and skipped files cost time too. */
    private static final int MOST_ENTRIES = 10 * MOST_FILES;

    private final int packedBytes;
    private final List<ArchivedFile> files = new ArrayList<>();
    private final Set<String> names = new HashSet<>();
    private long unpackedBytes;

    private SweepArchive(int packedBytes) {
        this.packedBytes = packedBytes;
    }

    /** A file out of an archive. @param name the path inside the archive, with forward slashes */
    public record ArchivedFile(String name, byte[] bytes) {
    }

    public static boolean isArchive(byte[] bytes) {
        return bytes.length >= 4 && bytes[0] == 'P' && bytes[1] == 'K'
                && (bytes[2] == 3 && bytes[3] == 4 || bytes[2] == 5 && bytes[3] == 6);
    }

    /**
     * The files of the archive in its order, without folders and without what operating systems add.
     *
     * @throws SweepFileException naming the entry and the limit or fault
     */
    public static List<ArchivedFile> read(byte[] bytes) {
        if (!isArchive(bytes)) {
            throw SweepFileException.ofFile("The file is no ZIP archive");
        }
        return new SweepArchive(bytes.length).unpack(bytes);
    }

    private List<ArchivedFile> unpack(byte[] bytes) {
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(bytes), StandardCharsets.UTF_8)) {
            int entries = 0;
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                entries++;
                if (entries > MOST_ENTRIES) {
                    throw SweepFileException.ofFile("The archive holds more than " + MOST_ENTRIES + " entries");
                }
                take(entry, zip);
            }
        } catch (IOException | IllegalArgumentException e) {
            throw SweepFileException.ofFile("The archive is damaged or lies about the length of an entry ("
                    + Phrase.quoted(String.valueOf(e.getMessage())) + ")");
        }
        if (files.isEmpty()) {
            throw SweepFileException.ofFile("The archive holds no files");
        }
        return List.copyOf(files);
    }

    private void take(ZipEntry entry, ZipInputStream zip) throws IOException {
        String name = entry.getName();
        requireHarmless(name);
        byte[] content = content(name, zip);
        if (entry.isDirectory() || isLitter(name)) {
            return;
        }
        if (files.size() == MOST_FILES) {
            throw SweepFileException.ofFile("The archive holds more than " + MOST_FILES + " files");
        }
        if (!names.add(name)) {
            throw SweepFileException.ofFile("The archive holds " + Phrase.quoted(name) + " twice");
        }
        files.add(new ArchivedFile(name, content));
    }

    /** Nothing is written to disk here, but a name that points elsewhere shows what the archive was made for. */
    private static void requireHarmless(String name) {
        boolean elsewhere = name.startsWith("/") || name.indexOf('\\') >= 0 || name.matches("(?s)[A-Za-z]:.*")
                || List.of(name.split("/")).contains("..");
        if (name.isBlank() || elsewhere || name.chars().anyMatch(Character::isISOControl)) {
            throw SweepFileException.ofFile("The archive names an entry " + Phrase.quoted(name)
                    + ", which is no plain path inside it");
        }
    }

    private static boolean isLitter(String name) {
        String last = name.substring(name.lastIndexOf('/') + 1);
        return name.startsWith("__MACOSX/") || last.startsWith(".") || last.equalsIgnoreCase("Thumbs.db");
    }

    private byte[] content(String name, ZipInputStream zip) throws IOException {
        ByteArrayOutputStream content = new ByteArrayOutputStream();
        byte[] buffer = new byte[BUFFER];
        for (int read = zip.read(buffer); read >= 0; read = zip.read(buffer)) {
            content.write(buffer, 0, read);
            unpackedBytes += read;
            if (content.size() > Limits.BYTES) {
                throw SweepFileException.ofFile("The entry " + Phrase.quoted(name) + " unpacks to more than 20 MiB");
            }
            if (unpackedBytes > MOST_BYTES) {
                throw SweepFileException.ofFile("The archive unpacks to more than 200 MiB");
            }
            if (unpackedBytes > RATIO_COUNTS_FROM && unpackedBytes > (long) MOST_RATIO * packedBytes) {
                throw SweepFileException.ofFile("The archive unpacks to more than " + MOST_RATIO + " times its size");
            }
        }
        return content.toByteArray();
    }
}
