package org.stillrail.bank;

import java.util.ArrayList;
import java.util.List;
import java.util.StringJoiner;
import java.util.stream.IntStream;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.BankResponse;
import org.stillrail.electrical.bank.CarrierRibbon;
import org.stillrail.electrical.bank.Distance;
import org.stillrail.electrical.bank.Node;
import org.stillrail.electrical.evaluation.BranchInput;
import org.stillrail.electrical.evaluation.Evaluation;
import org.stillrail.electrical.evaluation.IdleBranch;
import org.stillrail.electrical.evaluation.KeyFrequencies;
import org.stillrail.electrical.evaluation.SharperRing;
import org.stillrail.web.Quantity;

/** What a bank does, in sentences. */
final class BankWords {

    private final Evaluation evaluation;
    private final List<BranchInput> branches;

    BankWords(Evaluation evaluation) {
        this.evaluation = evaluation;
        this.branches = evaluation.input().branches();
    }

    /** The bank as a phrase: how many of what, beside what; at two nodes what stands where and what lies between. */
    String phrase() {
        Distance distance = evaluation.input().distance();
        if (distance == null) {
            return phrase(branches);
        }
        List<String> places = new ArrayList<>();
        for (Node node : Node.values()) {
            List<BranchInput> there = branches.stream().filter(branch -> branch.node() == node).toList();
            String fixed = node == Node.LOAD && distance.load() != null ? Quantity.format(distance.load().capacitanceF(), "F", 3) + " of the load itself" : "";
            String what = phrase(there) + (there.isEmpty() || fixed.isEmpty() ? "" : ", beside ") + fixed;
            places.add(node.label() + " " + (what.isEmpty() ? "nothing" : what));
        }
        return places.get(0) + "; beyond " + Places.path(distance.path()) + ", " + places.get(1);
    }

    private static String phrase(List<BranchInput> branches) {
        StringJoiner phrase = new StringJoiner(", beside ");
        for (BranchInput branch : branches) {
            String what = branch.partNumber() == null ? branch.label() : branch.partNumber();
            phrase.add(branch.count() == 1 ? "one " + what : branch.count() + " of " + what);
        }
        return phrase.toString();
    }

    /** What an engineer should know first where no limit is set. */
    String whatItDoes() {
        KeyFrequencies f = evaluation.frequencies();
        if (evaluation.ripple() == null) {
            return "The ripple is not modelled: the rail does not state the turns ratio of its flyback.";
        }
        boolean two = evaluation.rippleAtConverter() != null;
        return "Ripple " + (two ? "at the load " : "") + "is " + Quantity.format(evaluation.ripple().peakToPeakV(), "V", 3) + " peak to peak"
                + (two ? ", " + Quantity.format(evaluation.rippleAtConverter().peakToPeakV(), "V", 3) + " at the converter" : "")
                + ". At the switching frequency of " + Quantity.format(f.switchingHz(), "Hz", 3) + (two ? " the converter's" : " the") + " current goes through "
                + strongest(sharesOfConverter(f.switchingHz())) + "; at the crossover of " + Quantity.format(f.crossoverHz(), "Hz", 3) + (two ? " the load's through " : " through ")
                + strongest(evaluation.atCrossover().shares()) + ".";
    }

    private List<Double> sharesOfConverter(double hz) {
        BankResponse response = evaluation.shown().bank().response(Node.CONVERTER, Node.LOAD);
        return IntStream.range(0, branches.size()).mapToObj(k -> response.share(k, hz)).toList();
    }

    List<String> reasons() {
        List<String> reasons = new ArrayList<>();
        for (IdleBranch idle : evaluation.idle()) {
            reasons.add("'" + branches.get(idle.branch()).label() + "' does next to nothing where it matters: it never carries more than "
                    + BankView.percent(idle.largestShare()) + " of the current round the crossover or at the first harmonics of the switching"
                    + (idle.worksFromHz() == null ? "." : ", and takes over only at " + Quantity.format(idle.worksFromHz(), "Hz", 2) + "."));
        }
        Bank bank = evaluation.shown().bank();
        for (CarrierRibbon.Ring ring : evaluation.ribbon().rings()) {
            reasons.add(ring.inductive().name(bank) + " and " + ring.capacitive().name(bank) + " ring at " + Quantity.format(ring.frequencyHz(), "Hz", 3) + ": |Z| peaks at "
                    + Quantity.format(ring.magnitudeOhm(), "ohm", 3) + ", Q " + Quantity.format(ring.qualityFactor(), "", 2) + ".");
        }
        for (SharperRing ring : evaluation.sharperRings()) {
            reasons.add("In the " + ring.band() + " " + ring.inductive() + " and " + ring.capacitive() + " ring harder" + ring.atCorner() + ": at "
                    + Quantity.format(ring.frequencyHz(), "Hz", 3) + " |Z| peaks at " + Quantity.format(ring.magnitudeOhm(), "ohm", 3) + ", Q "
                    + Quantity.format(ring.qualityFactor(), "", 2) + ", the largest of " + evaluation.corners().size() + " corners; at the corner shown "
                    + (ring.ringsAsShown() ? "it is " + Quantity.format(ring.shownQ(), "", 2) : "nothing rings there") + ".");
        }
        return List.copyOf(reasons);
    }

    private String strongest(List<Double> shares) {
        int strongest = 0;
        for (int k = 1; k < shares.size(); k++) {
            if (shares.get(k) > shares.get(strongest)) {
                strongest = k;
            }
        }
        return "'" + branches.get(strongest).label() + "' (" + BankView.percent(shares.get(strongest)) + ")";
    }
}
