package org.stillrail.electrical.evaluation;

import java.util.ArrayList;
import java.util.List;
import org.stillrail.electrical.requirement.InputRange;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.requirement.Topology;
import org.stillrail.electrical.ripple.ConverterCurrent;
import org.stillrail.electrical.ripple.PeriodicCurrent;
import org.stillrail.electrical.ripple.Ripple;

/**
 * The ripple at the load from one input voltage, with everything else as at the shown corner, the warmth of its parts too.
 *
 * @param place   of the rail's inputs, as in 'least'
 * @param continuousAboveA the load from which the inductors' current lasts over the whole period; null with {@code ripple}, and for a drawn current
 * @param ripple  null where the converter cannot make the output from there
 * @param refusal why not, else null
 */
public record RippleAtInput(String place, double inputV, Double continuousAboveA, Ripple ripple, String refusal) {

    private static final int FEWEST_SAMPLES = 2;

    /**
     * From the least input upwards, each voltage once; a drawn current is the same from all of them.
     *
     * @return empty for a flyback of unknown turns
     */
    static List<RippleAtInput> of(RailFigures rail, Corner shown) {
        InputRange input = rail.input();
        List<RippleAtInput> all = new ArrayList<>();
        boolean drawn = rail.converter().topology() == Topology.DRAWN;
        if (!drawn && input.minimumV() < input.nominalV()) {
            all.add(of(rail, shown, "least", input.minimumV()));
        }
        all.add(of(rail, shown, "nominal", input.nominalV()));
        if (!drawn && input.maximumV() > input.nominalV()) {
            all.add(of(rail, shown, "most", input.maximumV()));
        }
        return all.stream().allMatch(each -> each.ripple == null && each.refusal == null) ? List.of() : List.copyOf(all);
    }

    private static RippleAtInput of(RailFigures rail, Corner shown, String place, double inputV) {
        Tried<PeriodicCurrent> current = Tried.of(() -> shown.current(rail, inputV));
        Tried<Ripple> ripple = current.then(each -> each == null ? null : Ripple.of(shown.bank(), each, FEWEST_SAMPLES));
        Double continuousAboveA = ripple.value() != null && current.value() instanceof ConverterCurrent converter ? (Double) converter.continuousAboveA() : null;
        return new RippleAtInput(place, inputV, continuousAboveA, ripple.value(), ripple.refusal());
    }
}
