package org.stillrail.calculation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;
import org.stillrail.electrical.capacitor.BentPart;
import org.stillrail.electrical.capacitor.OperatingPoint;
import org.stillrail.electrical.capacitor.PlaceInBand;
import org.stillrail.library.Library;
import org.stillrail.library.PartModel;
import org.stillrail.library.PartModels;

/** Parts of the team's library, each with the model that its current revision has chosen. */
@Component
class LibraryParts implements PartSource {

    private final Library library;
    private final PartModels models;

    LibraryParts(Library library, PartModels models) {
        this.library = library;
        this.models = models;
    }

    @Override
    public Optional<NamedPart> find(String partNumber, OperatingPoint point) {
        return library.find(partNumber).map(part -> {
            PartModel model = models.of(part);
            BentPart bent = model.at(point, PlaceInBand.AS_MODELLED);
            List<String> notes = new ArrayList<>(model.estimates());
            bent.notes().forEach(note -> notes.add(note.sentence()));
            return new NamedPart(bent.model(), notes);
        });
    }
}
