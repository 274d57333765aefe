package org.stillrail.electrical.converter;

import java.util.ArrayList;
import java.util.List;
import org.stillrail.electrical.curve.Complex;

/**
 * What a loop that is sensed at the load and has a load line feeds back, against the voltage at the converter: {@code (Zcl + R) / Zcc}, from
 * {@code vs + R iL} with {@code vs = Zcl iL} and {@code vc = Zcc iL}. Unlike the divider of {@link RemoteSense} it is no quotient of passive
 * impedances: it may have a zero in the right half plane. The angle of Zcl is continuous as the product of the divider and a passive
 * impedance; that of Zcl + R goes once round more than the principal one for each time that Zcl passes the negative real axis beyond -R,
 * so these places are looked for once.
 */
final class SensedDroop {

    /** @param imaginary of the divider, as in {@link RemoteSense.Point} */
    record Point(double magnitude, double phaseDeg, double imaginary) {
    }

    /** @param turns +1 where the angle rises over an odd half turn, -1 where it falls */
    private record Passing(double hz, int turns) {
    }

    private static final double LOWEST_HZ = 1e-3;
    private static final double HIGHEST_HZ = 1e12;
    private static final int POINTS_PER_DECADE = 50;
    private static final int HALVINGS = 60;

    private final RemoteSense remote;
    private final double loadLineOhm;
    private final List<Passing> passings = new ArrayList<>();

    private SensedDroop(RemoteSense remote, double loadLineOhm) {
        this.remote = remote;
        this.loadLineOhm = loadLineOhm;
    }

    /** @param plant of which only the bank that the converter sees is used */
    static SensedDroop of(Plant plant, RemoteSense remote, double loadLineOhm) {
        SensedDroop droop = new SensedDroop(remote, loadLineOhm);
        int count = (int) Math.round(Math.log10(HIGHEST_HZ / LOWEST_HZ) * POINTS_PER_DECADE);
        double lastHz = LOWEST_HZ;
        long last = droop.halfTurns(plant, lastHz);
        for (int i = 1; i <= count; i++) {
            double hz = LOWEST_HZ * Math.pow(10, (double) i / POINTS_PER_DECADE);
            long now = droop.halfTurns(plant, hz);
            if (now != last) {
                droop.pass(plant, lastHz, hz, last, now);
            }
            lastHz = hz;
            last = now;
        }
        return droop;
    }

    private void pass(Plant plant, double fromHz, double toHz, long before, long after) {
        double from = fromHz;
        double to = toHz;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = Math.sqrt(from * to);
            if (halfTurns(plant, middle) == before) {
                from = middle;
            } else {
                to = middle;
            }
        }
        Plant.Point at = plant.atConverter(to);
        if (transferOhm(remote.at(to), at.bankConductance(), at.bankSusceptance()) > loadLineOhm) {
            passings.add(new Passing(to, Long.signum(after - before)));
        }
    }

    /** How often the angle of Zcl has passed an odd half turn: 0 within -180 .. 180 deg. */
    private long halfTurns(Plant plant, double hz) {
        Plant.Point at = plant.atConverter(hz);
        return (long) Math.floor((transferDeg(remote.at(hz), at.bankConductance(), at.bankSusceptance()) + 180) / 360);
    }

    private static double transferDeg(RemoteSense.Point divider, double conductance, double susceptance) {
        return divider.phaseDeg() + bankDeg(conductance, susceptance);
    }

    private static double transferOhm(RemoteSense.Point divider, double conductance, double susceptance) {
        return divider.magnitude() / Math.hypot(conductance, susceptance);
    }

    /** Angle of Zcc. */
    private static double bankDeg(double conductance, double susceptance) {
        return -Math.toDegrees(Math.atan2(susceptance, conductance));
    }

    /** @param conductance of the bank that the converter sees, with its susceptance; infinite where it is a short */
    Point at(double hz, double conductance, double susceptance) {
        RemoteSense.Point divider = remote.at(hz);
        Complex transfer = Complex.polar(transferOhm(divider, conductance, susceptance), Math.toRadians(transferDeg(divider, conductance, susceptance)));
        Complex sum = transfer.plus(new Complex(loadLineOhm, 0));
        int turns = passings.stream().filter(passing -> passing.hz() <= hz).mapToInt(Passing::turns).sum();
        return new Point(sum.magnitude() * Math.hypot(conductance, susceptance),
                Math.toDegrees(sum.angleRad()) + 360.0 * turns - bankDeg(conductance, susceptance), divider.imaginary());
    }
}
