package org.stillrail.calculation;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.io.IOException;
import org.springframework.http.MediaType;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.multipart.MultipartHttpServletRequest;
import org.stillrail.account.May;

/** The calculations as JSON calls. */
@RestController
@RequestMapping(path = "/api/v1/calculations", produces = MediaType.APPLICATION_JSON_VALUE)
@PreAuthorize(May.CALCULATE)
@Tag(name = "Calculations", description = "Stateless: nothing is stored.")
class CalculationController {

    private final ImpedanceCalculation impedance;
    private final RippleCalculation ripple;
    private final LoopCalculation loop;
    private final StepCalculation step;
    private final FitCalculation fit;
    private final SweepConversion sweep;

    CalculationController(
            ImpedanceCalculation impedance,
            RippleCalculation ripple,
            LoopCalculation loop,
            StepCalculation step,
            FitCalculation fit,
            SweepConversion sweep) {
        this.impedance = impedance;
        this.ripple = ripple;
        this.loop = loop;
        this.step = step;
        this.fit = fit;
        this.sweep = sweep;
    }

    @PostMapping(path = "/impedance", consumes = MediaType.APPLICATION_JSON_VALUE)
    @Operation(summary = "Impedance of a bank", description = """
            Impedance of the bank and of each branch over frequency, each branch's share of the current, and every local \
            extremum of |Z|.""")
    ImpedanceAnswer impedance(@RequestBody ImpedanceRequest request) {
        return impedance.answer(request);
    }

    @PostMapping(path = "/ripple", consumes = MediaType.APPLICATION_JSON_VALUE)
    @Operation(summary = "Ripple of a bank", description = """
            Steady-state ripple voltage under a periodic current into the output node, and the current and heat of each \
            branch.""")
    RippleAnswer ripple(@RequestBody RippleRequest request) {
        return ripple.answer(request);
    }

    @PostMapping(path = "/loop", consumes = MediaType.APPLICATION_JSON_VALUE)
    @Operation(summary = "Loop of a converter on a bank", description = """
            Loop gain, margins and closed-loop output impedance of an averaged buck converter in voltage or current mode. The \
            summing minus is not in T.""")
    LoopAnswer loop(@RequestBody LoopRequest request) {
        return loop.answer(request);
    }

    @PostMapping(path = "/step", consumes = MediaType.APPLICATION_JSON_VALUE)
    @Operation(summary = "Load step", description = """
            The output voltage after a load step from steady state, with the converter's loop or of the bank alone; linear or \
            with the duty inside its limits.""")
    StepAnswer step(@RequestBody LoadStepRequest request) {
        return step.answer(request);
    }

    @PostMapping(path = "/fit", consumes = MediaType.APPLICATION_JSON_VALUE)
    @Operation(summary = "Rational fit of a table", description = """
            Poles and residues of a stable rational function that follows the table, with its errors and a check of its \
            passivity.""")
    FitAnswer fit(@RequestBody FitRequest request) {
        return fit.answer(request);
    }

    @PostMapping(path = "/sweep", consumes = MediaType.MULTIPART_FORM_DATA_VALUE)
    @Operation(summary = "Impedance from a sweep file", description = """
            Reads a Touchstone file or delimited text and converts it by its fixture. Unequal port references are \
            renormalised first.""",
            requestBody = @io.swagger.v3.oas.annotations.parameters.RequestBody(required = true, content = @Content(
                    mediaType = MediaType.MULTIPART_FORM_DATA_VALUE, schema = @Schema(implementation = SweepForm.class))))
    SweepAnswer sweep(@Parameter(hidden = true) MultipartHttpServletRequest form) throws IOException {
        return sweep.answer(form);
    }
}
