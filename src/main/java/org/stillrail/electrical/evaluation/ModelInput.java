package org.stillrail.electrical.evaluation;

import java.util.List;
import org.stillrail.electrical.capacitor.DatasheetModel;
import org.stillrail.electrical.capacitor.ImpedanceModel;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.capacitor.TableModel;

/**
 * A model frozen as figures, so that an evaluation can be stored and done again years later. What a kind does not use is
 * null.
 *
 * @param constantPhase         Q of {@link DatasheetModel}
 * @param constantPhaseExponent a of {@link DatasheetModel}
 * @param warnings              of the datasheet model
 * @param frequencyHz           of a table, with {@code tableResistanceOhm} and {@code tableReactanceOhm}
 */
public record ModelInput(
        Kind kind, Double capacitanceF, Double resistanceOhm, Double inductanceH, Double constantPhase, Double constantPhaseExponent,
        List<String> warnings, double[] frequencyHz, double[] tableResistanceOhm, double[] tableReactanceOhm) {

    /** Which model it is. */
    public enum Kind { SERIES_RLC, DATASHEET, TABLE }

    /** @throws IllegalArgumentException for a model that has no frozen form */
    public static ModelInput of(ImpedanceModel model) {
        if (model instanceof SeriesRlc rlc) {
            return new ModelInput(Kind.SERIES_RLC, rlc.capacitanceF(), rlc.resistanceOhm(), rlc.inductanceH(), null, null, null, null, null, null);
        }
        if (model instanceof DatasheetModel sheet) {
            return new ModelInput(Kind.DATASHEET, null, sheet.resistanceOhm(), sheet.inductanceH(), sheet.constantPhase(),
                    sheet.constantPhaseExponent(), sheet.warnings(), null, null, null);
        }
        if (model instanceof TableModel table) {
            double[] r = new double[table.size()];
            double[] x = new double[table.size()];
            for (int i = 0; i < r.length; i++) {
                r[i] = table.resistanceOhm(i);
                x[i] = table.reactanceOhm(i);
            }
            return new ModelInput(Kind.TABLE, null, null, null, null, null, null, table.knotsHz(), r, x);
        }
        throw new IllegalArgumentException("No frozen form of " + model.getClass().getSimpleName());
    }

    public ImpedanceModel model() {
        return switch (kind) {
            case SERIES_RLC -> new SeriesRlc(capacitanceF, resistanceOhm, inductanceH);
            case DATASHEET -> new DatasheetModel(resistanceOhm, inductanceH, constantPhase, constantPhaseExponent,
                    warnings == null ? List.of() : warnings);
            case TABLE -> TableModel.of(frequencyHz, tableResistanceOhm, tableReactanceOhm);
        };
    }
}
