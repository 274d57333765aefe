package org.stillrail.electrical.capacitor;

import java.util.Objects;
import org.stillrail.electrical.curve.Hertz;

/**
 * What a model stands for before it is bent.
 *
 * @param capacitanceF        C0, its series capacitance at the datasheet's test frequency
 * @param nominalCapacitanceF what the datasheet calls it, at the reference point; tolerance refers to this
 * @param point               where the sweep was taken, {@link OperatingPoint#REFERENCE} for datasheet figures
 */
public record ModelBasis(double capacitanceF, double nominalCapacitanceF, OperatingPoint point) {

    public ModelBasis {
        Require.positive("capacitanceF", capacitanceF);
        Require.positive("nominalCapacitanceF", nominalCapacitanceF);
        Objects.requireNonNull(point, "point");
    }

    /** Datasheet figures: nominal, at the reference point. */
    public static ModelBasis datasheet(double capacitanceF) {
        return new ModelBasis(capacitanceF, capacitanceF, OperatingPoint.REFERENCE);
    }

    /**
     * A sweep: C0 is read from the model.
     *
     * @throws IllegalArgumentException where the model is not capacitive at the test frequency
     */
    public static ModelBasis sweep(ImpedanceModel model, double testFrequencyHz, double nominalCapacitanceF, OperatingPoint point) {
        double reactance = model.at(testFrequencyHz).reactanceOhm();
        if (!(reactance < 0)) {
            throw new IllegalArgumentException("The sweep is not capacitive at the test frequency of " + Hertz.words(testFrequencyHz));
        }
        return new ModelBasis(-1 / (2 * Math.PI * testFrequencyHz * reactance), nominalCapacitanceF, point);
    }
}
