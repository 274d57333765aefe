package org.stillrail.sweepfile;

/**
 * Reads a measured sweep from the bytes of a file. The content says what kind of file it is; the name is asked only where the
 * content leaves it open.
 */
public final class SweepReader {

    private SweepReader() {
    }

    /**
     * @param bytes    the file, unchanged
     * @param fileName as the user's computer calls it; may be empty
     * @throws SweepFileException where the file, or its combination with the options, is refused
     */
    public static ReadSweep read(byte[] bytes, String fileName, ReadOptions options) {
        String text = TextDecoder.decode(bytes);
        if (Touchstone.isRecognised(text, fileName)) {
            return touchstone(Touchstone.read(text, fileName), options);
        }
        return DelimitedReader.read(text, options);
    }

    /** Whether the file is Touchstone; else it is read as delimited text and has a preview. */
    public static boolean isTouchstone(byte[] bytes, String fileName) {
        return Touchstone.isRecognised(TextDecoder.decode(bytes), fileName);
    }

    /**
     * What a text file looks like, and the mapping that its headings suggest.
     *
     * @param mapping may fix the delimiter and the decimal mark; may be null
     * @param fixture says which of several quantities in the file to propose; may be null
     * @throws SweepFileException where the file is no text or holds no line of numbers
     */
    public static TextPreview preview(byte[] bytes, ColumnMapping mapping, Fixture fixture) {
        return TextPreview.of(TextDecoder.decode(bytes), mapping, fixture);
    }

    private static ReadSweep touchstone(Touchstone file, ReadOptions options) {
        ImpedancePoints points = FixtureConversion.convert(file.data(), options, file.warnings());
        Double reference = file.usesReference() ? Double.valueOf(file.data().referenceOhm()[0]) : null;
        return points.toSweep(reference, file.format(), file.warnings());
    }
}
