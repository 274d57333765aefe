package org.stillrail.electrical.bank;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.stillrail.electrical.capacitor.ImpedancePoint;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.curve.Extremum;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.electrical.curve.Sloped;

/**
 * Who carries the current where: spans of frequency, each with the branch of the largest |share|, and the places where two
 * of them ring against each other.
 *
 * @param spans ascending, without gaps, over the whole grid
 * @param rings maxima of |Z| with Q above 1, ascending
 */
public record CarrierRibbon(List<Span> spans, List<Ring> rings) {

    /** A maximum of |Z| with no larger Q does not ring. */
    public static final double RINGING = 1;

    public CarrierRibbon {
        spans = List.copyOf(spans);
        rings = List.copyOf(rings);
    }

    /** @param branch index of the branch that carries most of the current between the two frequencies */
    public record Span(double fromHz, double toHz, int branch) {
    }

    /**
     * A parallel resonance, its current circling between two.
     *
     * @param inductive  what is the inductor there
     * @param capacitive what is the capacitor there
     */
    public record Ring(double frequencyHz, double magnitudeOhm, double qualityFactor, RingSide inductive, RingSide capacitive) {

        /** Null where no two can be named. */
        public static Ring of(Bank bank, Extremum maximum) {
            RingSide inductive = ringing(bank, maximum.frequencyHz(), true);
            RingSide capacitive = ringing(bank, maximum.frequencyHz(), false);
            return inductive == null || capacitive == null ? null
                    : new Ring(maximum.frequencyHz(), maximum.magnitudeOhm(), maximum.qualityFactor(), inductive, capacitive);
        }
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
        return extrema.stream()
                .filter(extremum -> extremum.kind() == Extremum.Kind.MAXIMUM && extremum.qualityFactor() > RINGING)
                .map(extremum -> Ring.of(bank, extremum))
                .filter(Objects::nonNull)
                .toList();
    }

    /**
     * The one with the least |Z| among the inductive branches at a frequency, or the capacitive ones; null where there is none. At two
     * nodes the fixed capacitance of the load is one of them, and what lies beyond the path counts as one branch at the load and
     * stands for the branch there that most of its current goes through.
     */
    static RingSide ringing(Bank bank, double hz, boolean inductive) {
        RingSide strongest = null;
        double least = Double.POSITIVE_INFINITY;
        for (int k = 0; k < bank.branches().size(); k++) {
            boolean seen = bank.distance() == null || bank.branches().get(k).node() == Node.LOAD;
            ImpedancePoint z = bank.branches().get(k).at(hz);
            if (seen && fits(z.reactanceOhm(), inductive) && z.squaredMagnitude() < least) {
                least = z.squaredMagnitude();
                strongest = new RingSide(k);
            }
        }
        if (bank.distance() == null) {
            return strongest;
        }
        if (bank.distance().load() != null) {
            ImpedancePoint load = bank.load().at(hz);
            if (fits(load.reactanceOhm(), inductive) && load.squaredMagnitude() < least) {
                least = load.squaredMagnitude();
                strongest = RingSide.LOAD;
            }
        }
        RingSide through = throughPath(bank, hz, inductive, least);
        return through == null ? strongest : through;
    }

    private static boolean fits(double reactanceOhm, boolean inductive) {
        return inductive ? reactanceOhm > 0 : reactanceOhm < 0;
    }

    /** Null where what lies beyond the path has not the wanted sign or not less than {@code least}, the square of an impedance. */
    private static RingSide throughPath(Bank bank, double hz, boolean inductive, double least) {
        RingSide nearest = null;
        double y = 0;
        Sloped sum = Sloped.ZERO;
        for (int k = 0; k < bank.branches().size(); k++) {
            if (bank.branches().get(k).node() == Node.CONVERTER) {
                Sloped of = Sloped.of(bank.branches().get(k).at(hz)).reciprocal();
                sum = sum.plus(of);
                if (of.squaredMagnitude() > y) {
                    y = of.squaredMagnitude();
                    nearest = new RingSide(k);
                }
            }
        }
        if (nearest == null) {
            return null;
        }
        Sloped near = sum.reciprocal();
        double r = near.re() + bank.distance().path().resistanceOhm();
        double x = near.im() + 2 * Math.PI * hz * bank.distance().path().inductanceH();
        return fits(x, inductive) && r * r + x * x < least ? nearest : null;
    }
}
