package org.stillrail.calculation;

import java.util.ArrayList;
import java.util.List;
import org.springframework.stereotype.Component;
import org.stillrail.electrical.capacitor.TableModel;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.electrical.fit.FitDidNotConvergeException;
import org.stillrail.electrical.fit.FitSettings;
import org.stillrail.electrical.fit.RationalFit;
import org.stillrail.electrical.fit.VectorFitting;
import org.stillrail.web.Computing;

/** A rational function for a table. */
@Component
class FitCalculation {

    private static final String TABLE = "model.frequencyHz";

    private final Computing computing;

    FitCalculation(Computing computing) {
        this.computing = computing;
    }

    FitAnswer answer(FitRequest request) {
        TableInput table = (TableInput) request.model();
        if (table.size() < VectorFitting.FEWEST_POINTS) {
            throw new BadInputException(TABLE, "must have " + VectorFitting.FEWEST_POINTS + " entries or more for a fit");
        }
        FitSettings settings = request.maxOrder() == null
                ? FitSettings.DEFAULT
                : FitSettings.DEFAULT.withMaxOrder(request.maxOrder());
        return computing.within(() -> calculate(table, settings));
    }

    private static FitAnswer calculate(TableInput table, FitSettings settings) {
        Curve curve = new Curve(FrequencyGrid.of(table.frequencyHz()), table.resistanceOhm(), table.reactanceOhm());
        RationalFit fit;
        try {
            fit = VectorFitting.fit(curve, settings);
        } catch (FitDidNotConvergeException | IllegalArgumentException e) {
            throw new BadInputException("model", "has no fit: " + e.getMessage());
        }
        List<String> warnings = new ArrayList<>(
                TableModel.of(table.frequencyHz(), table.resistanceOhm(), table.reactanceOhm()).warnings());
        warnings.addAll(fit.remarks());
        return new FitAnswer(
                fit.of(),
                fit.poles().stream().map(FitAnswer.ComplexNumber::of).toList(),
                fit.residues().stream().map(FitAnswer.ComplexNumber::of).toList(),
                fit.constant(),
                fit.proportional(),
                fit.worstRelativeErrorPercent(),
                fit.rmsRelativeErrorPercent(),
                Finite.orNull(fit.worstResistanceErrorPercent()),
                fit.passive(),
                fit.stable(),
                warnings);
    }
}
