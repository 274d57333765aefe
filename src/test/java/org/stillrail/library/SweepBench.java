package org.stillrail.library;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.UUID;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.request.MockMultipartHttpServletRequestBuilder;
import org.springframework.test.web.servlet.request.MockMvcRequestBuilders;
import org.stillrail.account.CurrentPerson;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.capacitor.Technology;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.sweepfile.SweepWriter;

/** Parts and files that tests of sweeps use; every figure is invented. */
final class SweepBench {

    static final SeriesRlc PIECE = new SeriesRlc(21e-6, 4e-3, 1.2e-9);

    private SweepBench() {
    }

    /** 22 uF, 20 %, 5 mohm at 100 kHz at most. */
    static PartDocument part(String partNumber) {
        return new PartDocument(partNumber, "Maker of tests", Technology.values()[0], 22e-6, new PartDocument.Tolerance(20, 20), 25,
                List.of(new LossFigure(LossFigure.Kind.ESR, 5e-3, 100e3, LossFigure.Bound.MAXIMUM)), 1.2e-9, null, null, null, null, null, null,
                null, null, null, null, null, null, ModelChoice.DATASHEET, null, null, null);
    }

    static Curve curve(SeriesRlc piece, FrequencyGrid grid) {
        double[] r = new double[grid.size()];
        double[] x = new double[grid.size()];
        piece.addImpedanceTo(grid, r, x);
        return new Curve(grid, r, x);
    }

    /** 50 points a decade from 50 Hz to 20 MHz as CSV. */
    static byte[] csv(SeriesRlc piece) {
        return SweepWriter.csv(curve(piece, FrequencyGrid.logSpaced(50, 20e6, 281)), List.of("invented")).getBytes(StandardCharsets.UTF_8);
    }

    static MockMultipartFile file(String name, byte[] bytes) {
        return new MockMultipartFile("file", name, "application/octet-stream", bytes);
    }

    /** With every field that provenance needs. */
    static MockMultipartHttpServletRequestBuilder provenance(String path, UUID partId, String sample, CurrentPerson person) {
        MockMultipartHttpServletRequestBuilder request = MockMvcRequestBuilders.multipart(path, partId);
        request.param("fixture", "impedance").param("sample", sample).param("measuredBy", person.displayName()).param("measuredOn", "2031-03-04")
                .param("instrument", "invented analyser").param("bias", "0").param("temperature", "25").param("port", "1");
        return request;
    }
}
