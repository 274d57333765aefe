package org.stillrail.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.stillrail.library.Library;
import org.stillrail.library.ModelChoice;
import org.stillrail.library.Part;
import org.stillrail.library.Sweep;
import org.stillrail.library.SweepProvenance;
import org.stillrail.web.Quantity;

/**
 * What one branch, or an alternate of it, rests on, with its provenance.
 *
 * @param hashes SHA-256 of the part's revision, and of the raw file where it was measured
 */
record EvidenceLine(String branch, String part, String source, String provenance, List<String> hashes) {

    /** A line for each part that may be fitted, the branch's own first. */
    static List<EvidenceLine> of(List<PartLine> lines, Library library) {
        List<EvidenceLine> evidence = new ArrayList<>();
        for (PartLine line : lines) {
            String branch = line.branch().label();
            if (line.part() == null) {
                evidence.add(new EvidenceLine(branch, line.partNumber(), "typed figures", "none", List.of()));
            } else {
                evidence.add(of(branch, line.part(), library));
            }
            line.alternates().forEach(alternate -> evidence.add(of(branch + ", alternate", alternate, library)));
        }
        return evidence;
    }

    private static EvidenceLine of(String branch, Part part, Library library) {
        List<String> hashes = new ArrayList<>(List.of("part revision " + part.revision().number() + ": " + part.revision().sha256()));
        ModelChoice choice = part.document().model();
        List<Sweep> sweeps = choice.sweeps().stream().flatMap(id -> library.findSweep(id).stream()).toList();
        sweeps.forEach(found -> hashes.add("raw file " + found.fileName() + ": " + found.rawSha256()));
        Optional<Sweep> sweep = sweeps.stream().findFirst();
        String how = switch (choice.kind()) {
            case DATASHEET, SWEEP -> "measured, ";
            case FIT -> "fit of a measurement, ";
            case AVERAGE -> "average of " + sweeps.size() + " measurements, the first of ";
        };
        String datasheet = part.document().datasheet() == null ? "figures without a reference" : part.document().datasheet().toString();
        return new EvidenceLine(branch, part.partNumber(),
                sweep.map(found -> how + found.points() + " points from " + Quantity.format(found.startHz(), "Hz") + " to "
                        + Quantity.format(found.stopHz(), "Hz")).orElse("datasheet"),
                sweep.map(found -> provenance(found.provenance())).orElse(datasheet), hashes);
    }

    private static String provenance(SweepProvenance of) {
        List<String> words = new ArrayList<>();
        add(words, "sample ", of.sample());
        add(words, "by ", of.measuredBy());
        add(words, "on ", of.measuredOn() == null ? null : of.measuredOn().toString());
        add(words, "with ", of.instrument());
        add(words, "", of.fixture());
        add(words, "fixture ", of.fixtureName());
        add(words, "compensation ", of.compensation());
        words.add("at " + Quantity.format(of.biasV(), "V") + ", " + Quantity.format(of.temperatureC(), "degC"));
        add(words, "", of.hoursSinceSoldering() == null ? null : Quantity.format(of.hoursSinceSoldering(), "h") + " after soldering");
        return String.join(", ", words);
    }

    private static void add(List<String> words, String before, String value) {
        if (value != null && !value.isBlank()) {
            words.add(before + value);
        }
    }
}
