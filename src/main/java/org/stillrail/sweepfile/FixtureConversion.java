package org.stillrail.sweepfile;

import java.util.List;
import org.stillrail.electrical.curve.Complex;

/** Which entry of the network data holds the part, given the fixture, and the impedance that follows from it. */
final class FixtureConversion {

    private final NetworkData data;
    private final ReadOptions options;
    private final List<String> warnings;

    private FixtureConversion(NetworkData data, ReadOptions options, List<String> warnings) {
        this.data = data;
        this.options = options;
        this.warnings = warnings;
    }

    /** Refuses combinations that have no meaning, with what to choose instead. */
    static ImpedancePoints convert(NetworkData data, ReadOptions options, List<String> warnings) {
        return new FixtureConversion(data, options, warnings).convert();
    }

    private ImpedancePoints convert() {
        requireFitting();
        NetworkData used = data;
        if (data.parameter() == NetworkData.Parameter.S && data.ports() == 2 && data.referenceOhm()[0] != data.referenceOhm()[1]) {
            used = Renormalisation.toFirstPort(data);
            warnings.add("The ports have unequal references (" + Phrase.number(data.referenceOhm()[0]) + " and "
                    + Phrase.number(data.referenceOhm()[1]) + " ohm); the data were brought to "
                    + Phrase.number(data.referenceOhm()[0]) + " ohm first.");
        }
        int entry = entry();
        sayWhatTheOtherPortIs();
        ImpedancePoints points = new ImpedancePoints(used.size(), infiniteWhen());
        for (int i = 0; i < used.size(); i++) {
            Complex z = impedance(new Complex(used.re()[entry][i], used.im()[entry][i]));
            points.add(used.frequencyHz()[i], z.re(), z.im());
        }
        return points;
    }

    private void requireFitting() {
        Fixture fixture = options.fixture();
        if (fixture.isThrough() && data.ports() == 1) {
            throw SweepFileException.ofFile("The file has one port, so it cannot be read as " + fixture.label()
                    + "; choose " + (data.parameter() == NetworkData.Parameter.S ? "reflection" : "impedance"));
        }
        if (options.port() == 2 && data.ports() == 1) {
            throw SweepFileException.ofFile("The file has one port; port 2 cannot be read");
        }
        switch (data.parameter()) {
            case S -> refuse(fixture == Fixture.IMPEDANCE, "The file holds S parameters, not an impedance; choose "
                    + (data.ports() == 1 ? "reflection" : "reflection, shunt-through or series-through"));
            case Z -> refuse(fixture == Fixture.SERIES_THROUGH, "A part in series with the line has no Z parameters; choose"
                    + " shunt-through (Z21) or impedance (Z11), or save the file as S or Y parameters");
            case Y -> refuse(fixture == Fixture.SHUNT_THROUGH, "A part from the line to ground has no Y parameters; choose"
                    + " series-through (-1/Y21) or impedance (1/Y11), or save the file as S or Z parameters");
        }
        refuse(fixture.isThrough() && !data.orderKnown() && !data.isSymmetric(), "[Two-Port Data Order] is missing and the two"
                + " transfer parameters differ, so it cannot be told which one is " + data.parameter() + "21");
    }

    private static void refuse(boolean wrong, String reason) {
        if (wrong) {
            throw SweepFileException.ofFile(reason);
        }
    }

    private int entry() {
        if (options.fixture().isThrough()) {
            return NetworkData.N21;
        }
        return options.port() == 2 ? NetworkData.N22 : NetworkData.N11;
    }

    private void sayWhatTheOtherPortIs() {
        if (data.ports() == 1 || options.fixture().isThrough()) {
            return;
        }
        int other = 3 - options.port();
        String state = switch (data.parameter()) {
            case S -> "ends in its reference resistance, which lies beside the part";
            case Z -> "is open";
            case Y -> "is shorted";
        };
        warnings.add("Of the two ports, " + data.parameter() + (options.port() * 11) + " was read; port " + other
                + " was taken as it was measured: it " + state + ".");
    }

    private Complex impedance(Complex value) {
        return switch (data.parameter()) {
            case S -> ScatteringImpedance.impedance(options.fixture(), value, data.referenceOhm()[0]);
            case Z -> value;
            case Y -> options.fixture() == Fixture.SERIES_THROUGH ? value.reciprocal().times(-1) : value.reciprocal();
        };
    }

    private String infiniteWhen() {
        return switch (data.parameter()) {
            case S -> options.fixture() == Fixture.REFLECTION ? "S" + (options.port() * 11) + " is 1"
                    : options.fixture() == Fixture.SHUNT_THROUGH ? "S21 is 1" : "S21 is 0";
            case Z -> "the value is out of range";
            case Y -> "the admittance is 0";
        };
    }
}
