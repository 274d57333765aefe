package org.stillrail.electrical.ripple;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.BankCurves;
import org.stillrail.electrical.bank.BankResponse;
import org.stillrail.electrical.bank.Branch;
import org.stillrail.electrical.bank.Node;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.curve.FrequencyGrid;

/**
 * The ripple current of each branch's parts alone, without the voltage: what heat needs at many corners. The first
 * {@value #HARMONICS} harmonics are known one by one, all others together by Parseval.
 */
public final class PartCurrents {

    static final int HARMONICS = 128;
    private static final double TAIL_OVER_LAST = 1.5;

    private PartCurrents() {
    }

    /**
     * @return of one part of each branch, in the bank's order
     * @throws org.stillrail.electrical.bank.LosslessResonanceException where a resonance without loss falls on a harmonic
     */
    public static List<HarmonicCurrents> of(Bank bank, PeriodicCurrent current) {
        PiecewiseLinear waveform = current.waveform();
        double[] hz = new double[HARMONICS];
        double[] re = new double[HARMONICS];
        double[] im = new double[HARMONICS];
        double[] squares = new double[HARMONICS];
        waveform.harmonics(re, im);
        for (int i = 0; i < HARMONICS; i++) {
            hz[i] = (i + 1) / waveform.periodS();
            squares[i] = 2 * (re[i] * re[i] + im[i] * im[i]);
        }
        BankResponse response = bank.response(Node.CONVERTER, Node.LOAD);
        return of(response, waveform, squares, response.on(FrequencyGrid.of(hz)));
    }

    /**
     * @param squares squared rms current of each harmonic of the whole bank
     * @param curves  at those harmonics
     */
    static List<HarmonicCurrents> of(BankResponse bank, PiecewiseLinear current, double[] squares, BankCurves curves) {
        double tail = Math.max(0, current.meanSquare() - Arrays.stream(squares).sum());
        double fundamentalHz = 1 / current.periodS();
        double tailHz = TAIL_OVER_LAST * squares.length * fundamentalHz;
        List<HarmonicCurrents> parts = new ArrayList<>();
        for (int k = 0; k < bank.branches().size(); k++) {
            Branch branch = bank.branches().get(k);
            Curve share = curves.shares().get(k);
            double count = branch.count();
            double[] perPart = new double[squares.length];
            for (int i = 0; i < perPart.length; i++) {
                double re = share.real(i);
                double im = share.imaginary(i);
                perPart[i] = squares[i] * (re * re + im * im) / (count * count);
            }
            double tailPerPart = tail == 0 ? 0
                    : tail * bank.squaredVoltageAcross(k, tailHz) / branch.at(tailHz).squaredMagnitude() / (count * count);
            parts.add(new HarmonicCurrents(fundamentalHz, perPart, tailHz, tailPerPart));
        }
        return parts;
    }
}
