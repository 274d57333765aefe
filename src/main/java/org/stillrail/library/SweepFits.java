package org.stillrail.library;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import org.springframework.stereotype.Component;

/** Remembers the fits of the sweeps last looked at: a stored sweep never changes. */
@Component
class SweepFits {

    private static final int KEPT = 64;

    private final Map<UUID, SweepFit> fits = Collections.synchronizedMap(new LinkedHashMap<>(KEPT, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<UUID, SweepFit> eldest) {
            return size() > KEPT;
        }
    });

    SweepFit of(Sweep sweep) {
        SweepFit known = fits.get(sweep.id());
        if (known == null) {
            known = SweepFit.of(sweep.document().impedance());
            fits.put(sweep.id(), known);
        }
        return known;
    }
}
