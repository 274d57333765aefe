package org.stillrail.library;

import java.util.List;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.stillrail.document.CanonicalJson;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.sweepfile.SweepWriter;
import org.stillrail.web.Csv;
import org.stillrail.web.Download;
import org.stillrail.web.NotFoundException;

/** An impedance as a file to download: Touchstone 1.1 with Z or S, CSV, or JSON. */
public final class SweepExport {

    /** Names of the formats in addresses. */
    public static final List<String> FORMATS = List.of("touchstone-z", "touchstone-s", "csv", "json");

    private static final double REFERENCE_OHM = 50;

    private SweepExport() {
    }

    /** What JSON holds. @param description where the numbers come from, in sentences */
    private record Exported(String name, List<String> description, double[] frequencyHz, double[] resistanceOhm, double[] reactanceOhm) {
    }

    /**
     * @param name         of the file without its ending
     * @param referenceOhm of S parameters; null for 50
     * @param description  goes into the comments
     * @throws NotFoundException for a format that does not exist
     */
    public static ResponseEntity<byte[]> of(String format, String name, Curve impedance, Double referenceOhm, List<String> description) {
        return switch (format) {
            case "touchstone-z" -> Download.of(name + ".s1p", MediaType.TEXT_PLAIN, SweepWriter.touchstoneZ(impedance, description));
            case "touchstone-s" -> Download.of(name + ".s1p", MediaType.TEXT_PLAIN,
                    SweepWriter.touchstoneS(impedance, referenceOhm == null ? REFERENCE_OHM : referenceOhm, description));
            case "csv" -> Download.of(name + ".csv", Download.CSV,
                    SweepWriter.csv(impedance, description.stream().map(Csv::comment).toList()));
            case "json" -> Download.of(name + ".json", MediaType.APPLICATION_JSON, CanonicalJson.write(
                    new Exported(name, description, impedance.grid().toArray(), impedance.reals(), impedance.imaginaries())));
            default -> throw new NotFoundException("There is no format '" + format + "'; there are " + String.join(", ", FORMATS) + ".");
        };
    }
}
