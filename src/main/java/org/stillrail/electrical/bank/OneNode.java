package org.stillrail.electrical.bank;

import java.util.List;
import org.stillrail.electrical.capacitor.ImpedancePoint;
import org.stillrail.electrical.curve.FrequencyGrid;

/** A bank at one node, where current enters and voltage is read: its impedance. */
record OneNode(Bank bank) implements BankResponse {

    @Override
    public List<Branch> branches() {
        return bank.branches();
    }

    @Override
    public BankCurves on(FrequencyGrid grid) {
        return BankCurves.of(bank, grid);
    }

    @Override
    public ImpedancePoint at(double hz) {
        double g = 0;
        double b = 0;
        double gSlope = 0;
        double bSlope = 0;
        for (Branch branch : bank.branches()) {
            ImpedancePoint z = branch.at(hz);
            double squared = squared(z.resistanceOhm(), z.reactanceOhm());
            double yRe = z.resistanceOhm() / squared;
            double yIm = -z.reactanceOhm() / squared;
            // dY = -Y^2 dZ
            double y2Re = yRe * yRe - yIm * yIm;
            double y2Im = 2 * yRe * yIm;
            g += yRe;
            b += yIm;
            gSlope -= y2Re * z.resistanceOhmPerHz() - y2Im * z.reactanceOhmPerHz();
            bSlope -= y2Re * z.reactanceOhmPerHz() + y2Im * z.resistanceOhmPerHz();
        }
        double squared = squared(g, b);
        double r = g / squared;
        double x = -b / squared;
        double z2Re = r * r - x * x;
        double z2Im = 2 * r * x;
        return new ImpedancePoint(r, x, -(z2Re * gSlope - z2Im * bSlope), -(z2Re * bSlope + z2Im * gSlope));
    }

    @Override
    public double inductanceAtInfinityH() {
        double perHenry = 0;
        for (Branch branch : bank.branches()) {
            perHenry += 1 / branch.inductanceAtInfinityH();
        }
        return 1 / perHenry;
    }

    @Override
    public double squaredVoltageAcross(int branch, double hz) {
        return at(hz).squaredMagnitude();
    }

    private static double squared(double re, double im) {
        return re * re + im * im;
    }
}
