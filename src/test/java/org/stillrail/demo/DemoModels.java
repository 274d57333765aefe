package org.stillrail.demo;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.Branch;
import org.stillrail.electrical.bank.Distance;
import org.stillrail.electrical.bank.Node;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.capacitor.DatasheetModel;
import org.stillrail.electrical.capacitor.ImpedanceModel;
import org.stillrail.electrical.capacitor.LossFigures;
import org.stillrail.electrical.capacitor.TableModel;
import org.stillrail.library.LossFigure;
import org.stillrail.library.PartDocument;
import org.stillrail.sweepfile.Fixture;
import org.stillrail.sweepfile.ReadOptions;
import org.stillrail.sweepfile.ReadSweep;
import org.stillrail.sweepfile.SweepReader;
import tools.jackson.databind.JsonNode;

/** The demo's banks as the physics takes them: a part lends the sweep that it chose, or else its datasheet. */
final class DemoModels {

    private final Map<String, PartDocument> parts = new HashMap<>();
    private final Map<String, ImpedanceModel> models = new HashMap<>();

    DemoModels() {
        for (JsonNode entry : DemoFile.read("library", "parts.json")) {
            PartDocument part = DemoFile.as(entry.get("part"), PartDocument.class);
            parts.put(part.partNumber(), part);
            models.put(part.partNumber(), entry.has("modelSweep")
                    ? measured(entry.get("modelSweep").get("file").stringValue())
                    : datasheet(part));
        }
    }

    PartDocument part(String partNumber) {
        return parts.get(partNumber);
    }

    Bank bank(JsonNode revision) {
        return new Bank(revision.get("branches").valueStream().map(this::branch).toList(),
                revision.has("distance") ? DemoFile.as(revision.get("distance"), Distance.class) : null);
    }

    private Branch branch(JsonNode branch) {
        return new Branch(branch.get("label").stringValue(), branch.get("count").intValue(),
                models.get(branch.get("partNumber").stringValue()),
                DemoFile.as(branch.get("mounting"), SeriesPath.class), DemoFile.as(branch.get("shared"), SeriesPath.class),
                branch.has("node") ? Node.valueOf(branch.get("node").stringValue()) : null);
    }

    private static ImpedanceModel measured(String file) {
        try {
            ReadSweep sweep = SweepReader.read(Files.readAllBytes(DemoSweeps.FOLDER.resolve(file)), file,
                    ReadOptions.of(Fixture.SHUNT_THROUGH));
            return TableModel.of(sweep.frequencyHz(), sweep.resistanceOhm(), sweep.reactanceOhm());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static ImpedanceModel datasheet(PartDocument part) {
        LossFigure tangent = figure(part, LossFigure.Kind.LOSS_TANGENT);
        LossFigure esr = figure(part, LossFigure.Kind.ESR);
        double inductanceH = part.inductanceH() != null
                ? part.inductanceH()
                : 1 / (Math.pow(2 * Math.PI * part.selfResonanceHz(), 2) * part.capacitanceF());
        return DatasheetModel.of(new LossFigures(part.capacitanceF(),
                tangent == null ? null : tangent.value(), tangent == null ? esr.frequencyHz() : tangent.frequencyHz(),
                esr == null ? null : esr.value(), esr == null ? null : esr.frequencyHz()), inductanceH);
    }

    private static LossFigure figure(PartDocument part, LossFigure.Kind kind) {
        List<LossFigure> figures = part.losses().stream().filter(loss -> loss.kind() == kind).toList();
        return figures.stream().min(Comparator.comparing(loss -> loss.bound() != LossFigure.Bound.TYPICAL)).orElse(null);
    }
}
