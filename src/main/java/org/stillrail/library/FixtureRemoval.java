package org.stillrail.library;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import org.springframework.stereotype.Component;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.sweepfile.Fixture;
import org.stillrail.sweepfile.ReadSweep;
import org.stillrail.sweepfile.accuracy.FixtureCompensation;
import org.stillrail.sweepfile.accuracy.PortExtension;
import org.stillrail.web.Quantity;

/** Takes the fixture out of what a file says: first by sweeps of the fixture, then by port extension from there. */
@Component
class FixtureRemoval {

    private static final double USUAL_REFERENCE_OHM = 50;

    private final FixtureSweeps fixtures;

    FixtureRemoval(FixtureSweeps fixtures) {
        this.fixtures = fixtures;
    }

    /**
     * @throws IllegalArgumentException where a fixture sweep does not exist, does not cover the sweep or was connected in another way, or
     *                                  where port extension makes no sense
     */
    ReadSweep from(ReadSweep read, Fixture fixture, MeasurementSetup setup) {
        Curve curve = read.impedance();
        List<String> said = new ArrayList<>(read.warnings());
        FixtureSweep open = find(setup.openId(), FixtureSweep.Standard.OPEN, fixture);
        FixtureSweep shorted = find(setup.shortId(), FixtureSweep.Standard.SHORT, fixture);
        FixtureSweep load = find(setup.loadId(), FixtureSweep.Standard.LOAD, fixture);
        if (open != null && shorted == null || load != null && (open == null || shorted == null)) {
            throw new IllegalArgumentException("Choose the short alone, open and short, or all three fixture sweeps");
        }
        if (load != null) {
            curve = FixtureCompensation.byOpenShortLoad(curve, curve(open), curve(shorted), curve(load), standard(curve, load.loadOhm()));
            said.add("The fixture was taken out by " + open.name() + ", " + shorted.name() + " and " + load.label() + ".");
        } else if (open != null) {
            curve = FixtureCompensation.byOpenShort(curve, curve(open), curve(shorted));
            said.add("The fixture was taken out by " + open.name() + " and " + shorted.name() + ".");
        } else if (shorted != null) {
            curve = FixtureCompensation.byShort(curve, curve(shorted));
            said.add("The fixture was taken out by " + shorted.name() + ".");
        }
        if (setup.portDelayS() != null && setup.portDelayS() != 0) {
            if (fixture == Fixture.IMPEDANCE) {
                throw new IllegalArgumentException("A port extension needs a fixture that measures S parameters");
            }
            curve = PortExtension.remove(curve, fixture, read.referenceOhm() == null ? USUAL_REFERENCE_OHM : read.referenceOhm(), setup.portDelayS());
            said.add("A port extension of " + Quantity.format(setup.portDelayS(), "s") + " was taken out.");
        }
        return new ReadSweep(read.frequencyHz(), curve.reals(), curve.imaginaries(), read.referenceOhm(), read.format(), said);
    }

    private FixtureSweep find(UUID id, FixtureSweep.Standard standard, Fixture fixture) {
        if (id == null) {
            return null;
        }
        FixtureSweep found = fixtures.find(id).filter(sweep -> sweep.standard() == standard)
                .orElseThrow(() -> new IllegalArgumentException("There is no such fixture sweep"));
        if (!found.document().provenance().fixture().equals(fixture.label())) {
            throw new IllegalArgumentException("The fixture sweep " + found.name() + " was measured as " + found.document().provenance().fixture()
                    + ", this file as " + fixture.label());
        }
        return found;
    }

    private static Curve curve(FixtureSweep sweep) {
        return sweep.document().impedance();
    }

    private static Curve standard(Curve measured, double ohm) {
        double[] r = new double[measured.size()];
        Arrays.fill(r, ohm);
        return new Curve(measured.grid(), r, new double[r.length]);
    }
}
