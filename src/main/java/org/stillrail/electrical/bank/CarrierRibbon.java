package org.stillrail.electrical.bank;

import java.util.ArrayList;
import java.util.List;
import org.stillrail.electrical.capacitor.ImpedancePoint;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.curve.Extremum;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.electrical.curve.Sloped;

/**
 * Who carries the current where: spans of frequency, each with the branch of the largest |share|, and the places where two
 * branches ring against each other.
 *
 * @param spans ascending, without gaps, over the whole grid
 * @param rings maxima of |Z| with Q above 1, ascending
 */
public record CarrierRibbon(List<Span> spans, List<Ring> rings) {

    private static final double RINGING = 1;

    public CarrierRibbon {
        spans = List.copyOf(spans);
        rings = List.copyOf(rings);
    }

    /** @param branch index of the branch that carries most of the current between the two frequencies */
    public record Span(double fromHz, double toHz, int branch) {
    }

    /**
     * A parallel resonance, its current circling between two branches.
     *
     * @param inductiveBranch  index of the branch that is the inductor there
     * @param capacitiveBranch index of the branch that is the capacitor there
     */
    public record Ring(double frequencyHz, double magnitudeOhm, double qualityFactor, int inductiveBranch, int capacitiveBranch) {
    }

    /** The ribbon over the grid of the curves; {@code extrema} are those of the bank over the same range. */
    public static CarrierRibbon of(Bank bank, BankCurves curves, List<Extremum> extrema) {
        return new CarrierRibbon(spans(curves), rings(bank, extrema));
    }

    private static List<Span> spans(BankCurves curves) {
        FrequencyGrid grid = curves.bank().grid();
        List<Span> spans = new ArrayList<>();
        int carrier = carrier(curves, 0);
        double from = grid.startHz();
        for (int i = 1; i < grid.size(); i++) {
            int next = carrier(curves, i);
            if (next != carrier) {
                double border = Math.sqrt(grid.hz(i - 1)) * Math.sqrt(grid.hz(i));
                spans.add(new Span(from, border, carrier));
                from = border;
                carrier = next;
            }
        }
        spans.add(new Span(from, grid.stopHz(), carrier));
        return spans;
    }

    private static int carrier(BankCurves curves, int index) {
        int largest = 0;
        double most = -1;
        for (int k = 0; k < curves.shares().size(); k++) {
            Curve share = curves.shares().get(k);
            double squared = share.real(index) * share.real(index) + share.imaginary(index) * share.imaginary(index);
            if (squared > most) {
                most = squared;
                largest = k;
            }
        }
        return largest;
    }

    private static List<Ring> rings(Bank bank, List<Extremum> extrema) {
        List<Ring> rings = new ArrayList<>();
        for (Extremum extremum : extrema) {
            if (extremum.kind() != Extremum.Kind.MAXIMUM || !(extremum.qualityFactor() > RINGING)) {
                continue;
            }
            Integer inductive = ringing(bank, extremum.frequencyHz(), true);
            Integer capacitive = ringing(bank, extremum.frequencyHz(), false);
            if (inductive != null && capacitive != null) {
                rings.add(new Ring(extremum.frequencyHz(), extremum.magnitudeOhm(), extremum.qualityFactor(), inductive, capacitive));
            }
        }
        return rings;
    }

    /**
     * The branch with the least |Z| among the inductive ones at a frequency, or the capacitive ones; null where there is none. At two
     * nodes what lies beyond the path counts as one at the load, and stands for the branch there that most of its current goes through.
     */
    public static Integer ringing(Bank bank, double hz, boolean inductive) {
        Integer strongest = null;
        double least = Double.POSITIVE_INFINITY;
        for (int k = 0; k < bank.branches().size(); k++) {
            if (bank.distance() != null && bank.branches().get(k).node() == Node.CONVERTER) {
                continue;
            }
            ImpedancePoint z = bank.branches().get(k).at(hz);
            boolean fits = inductive ? z.reactanceOhm() > 0 : z.reactanceOhm() < 0;
            if (fits && z.squaredMagnitude() < least) {
                least = z.squaredMagnitude();
                strongest = k;
            }
        }
        return bank.distance() == null ? strongest : throughPath(bank, hz, inductive, strongest, least);
    }

    private static Integer throughPath(Bank bank, double hz, boolean inductive, Integer strongest, double least) {
        ImpedancePoint load = bank.distance().load() == null ? null : bank.load().at(hz);
        boolean loadFits = load != null && (inductive ? load.reactanceOhm() > 0 : load.reactanceOhm() < 0) && load.squaredMagnitude() < least;
        Integer nearest = null;
        double y = 0;
        Sloped sum = Sloped.ZERO;
        for (int k = 0; k < bank.branches().size(); k++) {
            if (bank.branches().get(k).node() == Node.CONVERTER) {
                Sloped of = Sloped.of(bank.branches().get(k).at(hz)).reciprocal();
                sum = sum.plus(of);
                if (of.squaredMagnitude() > y) {
                    y = of.squaredMagnitude();
                    nearest = k;
                }
            }
        }
        if (nearest != null) {
            Sloped near = sum.reciprocal();
            double r = near.re() + bank.distance().path().resistanceOhm();
            double x = near.im() + 2 * Math.PI * hz * bank.distance().path().inductanceH();
            if ((inductive ? x > 0 : x < 0) && r * r + x * x < (loadFits ? load.squaredMagnitude() : least)) {
                return nearest;
            }
        }
        return loadFits ? null : strongest;
    }
}
