package org.stillrail.library;

import java.util.List;
import org.stillrail.electrical.capacitor.ImpedanceModel;

/**
 * The model that a part lends to a bank, with where it comes from.
 *
 * @param measured  whether it rests on a sweep rather than on a datasheet
 * @param source    in words: which sweep or which page
 * @param estimates what was assumed because the datasheet is silent, in sentences
 */
public record PartModel(ImpedanceModel model, boolean measured, String source, List<String> estimates) {
}
