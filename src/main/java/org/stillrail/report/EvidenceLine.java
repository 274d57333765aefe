package org.stillrail.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.stillrail.library.Library;
import org.stillrail.library.ModelChoice;
import org.stillrail.library.Sweep;
import org.stillrail.library.SweepProvenance;
import org.stillrail.web.Quantity;

/**
 * What one branch rests on, with its provenance.
 *
 * @param hashes SHA-256 of the part's revision, and of the raw file where it was measured
 */
record EvidenceLine(String branch, String part, String source, String provenance, List<String> hashes) {

    static EvidenceLine of(PartLine line, Library library) {
        if (line.part() == null) {
            return new EvidenceLine(line.branch().label(), line.partNumber(), "typed figures", "none", List.of());
        }
        List<String> hashes = new ArrayList<>(List.of("part revision " + line.part().revision().number() + ": " + line.part().revision().sha256()));
        ModelChoice choice = line.part().document().model();
        List<Sweep> sweeps = choice.sweeps().stream().flatMap(id -> library.findSweep(id).stream()).toList();
        sweeps.forEach(found -> hashes.add("raw file " + found.fileName() + ": " + found.rawSha256()));
        Optional<Sweep> sweep = sweeps.stream().findFirst();
        String how = switch (choice.kind()) {
            case DATASHEET, SWEEP -> "measured, ";
            case FIT -> "fit of a measurement, ";
            case AVERAGE -> "average of " + sweeps.size() + " measurements, the first of ";
        };
        String datasheet = line.part().document().datasheet() == null ? "figures without a reference" : line.part().document().datasheet().toString();
        return new EvidenceLine(line.branch().label(), line.partNumber(),
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
