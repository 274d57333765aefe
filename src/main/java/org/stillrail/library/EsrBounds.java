package org.stillrail.library;

import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.stillrail.electrical.capacitor.ImpedanceModel;

/**
 * How far a part's ESR may be from that of its model, as factors: from the datasheet's minimum and maximum figures, each
 * against the model's ESR at the figure's frequency. A bound that the datasheet does not state is null; one that the model
 * itself already passes is 1.
 */
record EsrBounds(Double least, Double most) {

    static EsrBounds of(PartDocument part, PartModel model) {
        OptionalDouble least = factors(part, model.model(), LossFigure.Bound.MINIMUM).max();
        OptionalDouble most = factors(part, model.model(), LossFigure.Bound.MAXIMUM).min();
        return new EsrBounds(
                least.isPresent() ? Math.min(1, least.getAsDouble()) : null,
                most.isPresent() ? Math.max(1, most.getAsDouble()) : null);
    }

    private static DoubleStream factors(PartDocument part, ImpedanceModel model, LossFigure.Bound bound) {
        return part.losses().stream()
                .filter(loss -> loss.kind() == LossFigure.Kind.ESR && loss.bound() == bound)
                .mapToDouble(loss -> loss.value() / model.at(loss.frequencyHz()).resistanceOhm())
                .filter(factor -> factor > 0 && Double.isFinite(factor));
    }
}
