package org.stillrail.calculation;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import org.springframework.http.MediaType;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.stillrail.account.May;

/** The calculations as JSON calls. */
@RestController
@RequestMapping(path = "/api/v1/calculations", produces = MediaType.APPLICATION_JSON_VALUE)
@PreAuthorize(May.CALCULATE)
@Tag(name = "Calculations", description = "Stateless: nothing is stored.")
class CalculationController {

    private final ImpedanceCalculation impedance;
    private final RippleCalculation ripple;
    private final FitCalculation fit;

    CalculationController(ImpedanceCalculation impedance, RippleCalculation ripple, FitCalculation fit) {
        this.impedance = impedance;
        this.ripple = ripple;
        this.fit = fit;
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

    @PostMapping(path = "/fit", consumes = MediaType.APPLICATION_JSON_VALUE)
    @Operation(summary = "Rational fit of a table", description = """
            Poles and residues of a stable rational function that follows the table, with its errors and a check of its \
            passivity.""")
    FitAnswer fit(@RequestBody FitRequest request) {
        return fit.answer(request);
    }
}
