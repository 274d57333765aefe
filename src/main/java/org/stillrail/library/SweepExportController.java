package org.stillrail.library;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.server.ResponseStatusException;
import org.stillrail.electrical.capacitor.ImpedanceModel;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.web.Form;
import org.stillrail.web.NotFoundException;

/** Downloads of a sweep as it was read, and of a part's model at a chosen operating point. */
@Controller
class SweepExportController {

    private static final int MODEL_POINTS = 400;
    private static final double LOWEST_HZ = 100;
    private static final double HIGHEST_HZ = 100e6;

    private final Library library;
    private final PartModels models;

    SweepExportController(Library library, PartModels models) {
        this.library = library;
        this.models = models;
    }

    @GetMapping("/library/sweeps/{sweepId}/export/{format}")
    ResponseEntity<byte[]> sweep(@PathVariable UUID sweepId, @PathVariable String format) {
        Sweep sweep = library.findSweep(sweepId).orElseThrow(() -> new NotFoundException("There is no sweep with this address."));
        SweepProvenance provenance = sweep.provenance();
        List<String> description = List.of(
                "Part " + library.require(sweep.partId()).partNumber() + (provenance.sample() == null ? "" : ", sample " + provenance.sample()),
                "Measured by " + known(provenance.measuredBy()) + " on " + known(provenance.measuredOn()) + " with " + known(provenance.instrument()),
                "Fixture " + provenance.fixture() + ", " + known(provenance.fixtureName()) + ", compensation " + known(provenance.compensation()),
                "Bias " + provenance.biasV() + " V, temperature " + provenance.temperatureC() + " degC",
                "Read from " + sweep.fileName(),
                "SHA-256 of the file: " + sweep.rawSha256());
        return SweepExport.of(format, bare(sweep.fileName()), sweep.document().impedance(), sweep.document().referenceOhm(), description);
    }

    /** Parameters {@code atBias}, {@code atTemperature}, {@code atAge} and {@code atLife} choose the operating point, as on the part's page. */
    @GetMapping("/library/parts/{partId}/export/{format}")
    ResponseEntity<byte[]> part(
            @PathVariable UUID partId, @PathVariable String format, @RequestParam MultiValueMap<String, String> parameters) {
        Part part = library.require(partId);
        PartModel model = models.of(part);
        Form form = Form.of(parameters);
        PartAtPoint point = form.isBlank("atBias") ? null : PartAtPoint.read(form, PartAtPoint.PREFIXES.get(0), model);
        if (!form.errors().none()) {
            throw new ResponseStatusException(HttpStatus.BAD_REQUEST, String.join("; ", form.errors().all().values()));
        }
        ImpedanceModel chosen = point == null ? model.model() : point.bent().model();
        List<String> description = new ArrayList<>(List.of(
                "Part " + part.partNumber() + ", revision " + part.revision().number() + ", " + part.vetting().label(),
                "SHA-256 of the revision: " + part.revision().sha256(), "Model: " + model.source(),
                point == null ? "as measured or as the datasheet says" : point.label()));
        description.addAll(model.estimates());
        return SweepExport.of(format, part.partNumber(), curve(chosen, model.model()), null, description);
    }

    private static Curve curve(ImpedanceModel chosen, ImpedanceModel base) {
        double[] knots = base.knotsHz();
        FrequencyGrid grid = knots.length > 1 ? FrequencyGrid.of(knots) : FrequencyGrid.logSpaced(LOWEST_HZ, HIGHEST_HZ, MODEL_POINTS);
        return SweepCharts.on(chosen, grid);
    }

    private static String known(Object stated) {
        return stated == null ? "unknown" : stated.toString();
    }

    private static String bare(String fileName) {
        int dot = fileName.lastIndexOf('.');
        return dot > 0 ? fileName.substring(0, dot) : fileName;
    }
}
