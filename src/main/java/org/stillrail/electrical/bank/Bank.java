package org.stillrail.electrical.bank;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.DoubleStream;
import org.stillrail.electrical.capacitor.ImpedancePoint;
import org.stillrail.electrical.capacitor.ValidRange;
import org.stillrail.electrical.curve.Complex;
import org.stillrail.electrical.curve.Extrema;
import org.stillrail.electrical.curve.Extremum;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.electrical.curve.Hertz;

/**
 * Branches in parallel at one node, {@code 1 / Z = sum of 1 / Zbranch}, or at two nodes a distance apart. Its impedance is that which
 * the load sees. The order of branches has no meaning.
 *
 * @param distance between converter and load; null for one node
 */
public record Bank(List<Branch> branches, Distance distance) {

    private static final String BEYOND = "beyond the path";
    /** The fixed capacitance at the load, in words. */
    static final String LOAD = "the load's capacitance";

    public Bank {
        branches = List.copyOf(branches);
        if (branches.isEmpty()) {
            throw new IllegalArgumentException("A bank needs at least one branch");
        }
    }

    /** At one node. */
    public Bank(List<Branch> branches) {
        this(branches, null);
    }

    /** The voltage at one node for a current into one node; at one node its impedance, whatever is asked. */
    public BankResponse response(Node into, Node read) {
        return distance == null ? new OneNode(this) : new TwoNodes(this, into, read);
    }

    private BankResponse seenByLoad() {
        return response(Node.LOAD, Node.LOAD);
    }

    /**
     * Impedance of the bank, seen by the load, and of every branch on a grid; the shares are those of a current at the load.
     *
     * @throws LosslessResonanceException where a branch or the bank has no finite, non-zero impedance on a grid point
     */
    public BankCurves on(FrequencyGrid grid) {
        return seenByLoad().on(grid);
    }

    /** Impedance and slope of the bank, seen by the load, at one frequency. */
    public ImpedancePoint at(double hz) {
        return seenByLoad().at(hz);
    }

    /**
     * The same circuit as the converter sees it, a bank at one node: the branches there and one that is the path with everything
     * beyond it. The bank itself where it has one node.
     */
    public Bank seenByConverter() {
        if (distance == null) {
            return this;
        }
        List<Branch> near = new ArrayList<>(connectedTo(Node.CONVERTER));
        Bank beyond = beyondPath();
        if (beyond != null) {
            near.add(new Branch(BEYOND, 1, new BankAsPart(beyond), SeriesPath.NONE, distance.path()));
        }
        return new Bank(near);
    }

    /** What stands at the load's node, as a bank at one node; null where nothing does or there is one node. */
    public Bank beyondPath() {
        List<Branch> far = distance == null ? List.of() : connectedTo(Node.LOAD);
        return far.isEmpty() ? null : new Bank(far);
    }

    /** All that hangs on a node, the fixed load capacitance too; there must be a distance. */
    public List<Branch> connectedTo(Node node) {
        List<Branch> connected = new ArrayList<>(branches.stream().filter(branch -> branch.node() == node).toList());
        if (node == Node.LOAD && distance.load() != null) {
            connected.add(load());
        }
        return connected;
    }

    /** The fixed capacitance at the load as a branch; there must be one. */
    Branch load() {
        return new Branch(LOAD, 1, distance.load(), SeriesPath.NONE, SeriesPath.NONE, Node.LOAD);
    }

    /** The open-circuit impedances of both nodes at one frequency; there must be a distance. */
    public TwoNodePoint nodesAt(double hz) {
        Complex near = Complex.ZERO;
        Complex far = Complex.ZERO;
        for (Branch branch : branches) {
            ImpedancePoint z = branch.at(hz);
            Complex y = new Complex(z.resistanceOhm(), z.reactanceOhm()).reciprocal();
            near = branch.node() == Node.LOAD ? near : near.plus(y);
            far = branch.node() == Node.LOAD ? far.plus(y) : far;
        }
        return distance.at(hz, near, far);
    }

    /** Every local minimum and maximum of |Z| strictly inside the range, ascending in frequency. */
    public List<Extremum> extrema(double fromHz, double toHz) {
        return Extrema.between(fromHz, toHz, knotsHz(), this::at);
    }

    /** The points of all tables in the bank, in no particular order. */
    public double[] knotsHz() {
        return branches.stream().flatMapToDouble(branch -> DoubleStream.of(branch.part().knotsHz())).toArray();
    }

    /** The inductance that the bank tends to at high frequency, in H; at one node 0 as soon as one branch has none. */
    public double inductanceAtInfinityH() {
        return seenByLoad().inductanceAtInfinityH();
    }

    /** Where every branch rests on data; empty (from above to) when they have no frequency in common. */
    public ValidRange validRange() {
        return branches.stream().map(branch -> branch.part().validRange()).reduce(ValidRange.EVERYWHERE, ValidRange::intersect);
    }

    /** The bank with one branch replaced. */
    public Bank with(int index, Branch branch) {
        List<Branch> changed = new ArrayList<>(branches);
        changed.set(index, branch);
        return new Bank(changed, distance);
    }

    /** The bank with one branch left out; there must be another. */
    public Bank without(int index) {
        List<Branch> changed = new ArrayList<>(branches);
        changed.remove(index);
        return new Bank(changed, distance);
    }

    /** The bank with every branch replaced by what is made of it. */
    public Bank withEach(UnaryOperator<Branch> change) {
        return new Bank(branches.stream().map(change).toList(), distance);
    }

    /** What a reader of figures between two frequencies should know of the models behind them, branch by branch. */
    public List<String> warnings(double fromHz, double toHz) {
        List<String> found = new ArrayList<>();
        for (Branch branch : branches) {
            String prefix = "Branch '" + branch.label() + "': ";
            branch.part().warnings().forEach(warning -> found.add(prefix + warning));
            ValidRange range = branch.part().validRange();
            if (fromHz < range.fromHz()) {
                found.add(prefix + "below " + Hertz.words(range.fromHz()) + " the model is extrapolated.");
            }
            if (toHz > range.toHz()) {
                found.add(prefix + "above " + Hertz.words(range.toHz()) + " the model is extrapolated.");
            }
        }
        return found;
    }
}
