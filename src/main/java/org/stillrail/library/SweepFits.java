package org.stillrail.library;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import org.springframework.stereotype.Component;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.team.Settings;

/** Remembers the fits of the sweeps last looked at: a stored sweep never changes. */
@Component
class SweepFits {

    private static final int KEPT = 64;

    private final Map<Key, SweepFit> fits = Collections.synchronizedMap(new LinkedHashMap<>(KEPT, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Key, SweepFit> eldest) {
            return size() > KEPT;
        }
    });

    private final Settings settings;

    SweepFits(Settings settings) {
        this.settings = settings;
    }

    /** What was found wrong with the points depends on how many a decade the team wants. */
    private record Key(UUID sweepId, int pointsPerDecade) {
    }

    SweepFit of(Sweep sweep) {
        Key key = new Key(sweep.id(), settings.current().pointsPerDecade());
        SweepFit known = fits.get(key);
        if (known == null) {
            known = SweepFit.of(sweep.document().impedance(), key.pointsPerDecade());
            fits.put(key, known);
        }
        return known;
    }

    /** Of a sweep that is not stored. */
    SweepFit of(Curve curve) {
        return SweepFit.of(curve, settings.current().pointsPerDecade());
    }
}
