package org.stillrail.calculation;

import java.util.List;
import java.util.Optional;
import org.stillrail.electrical.capacitor.ImpedanceModel;
import org.stillrail.electrical.capacitor.OperatingPoint;

/** Where parts come from that a request names by part number. */
interface PartSource {

    /** Empty where no part has this number. */
    Optional<NamedPart> find(String partNumber, OperatingPoint point);

    /**
     * A part at an operating point.
     *
     * @param warnings what had to be assumed, in sentences
     */
    record NamedPart(ImpedanceModel model, List<String> warnings) {
    }
}
