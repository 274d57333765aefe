package org.stillrail.electrical.spread;

import java.util.ArrayList;
import java.util.List;
import org.stillrail.electrical.capacitor.Band;
import org.stillrail.electrical.capacitor.PlaceInBand;

/**
 * The corners that a bank is looked at under: a bounded, named list that is always the same for the same input, the nominal one
 * first. One-at-a-time corners show which condition matters; the combined ones put together what works in the same direction; and
 * each branch in turn is high while all others are low and the reverse, with little ESR, which moves the resonances between them.
 * At most {@value #COMMON} corners and two for each branch. Corners that come out alike are listed once, so a rail that says little
 * has fewer of them. They are corners, not a proof of the worst case.
 */
public final class Corners {

    public static final int MOST_BRANCHES = 16;
    static final int COMMON = 28;

    private Corners() {
    }

    /** @param branches in the bank's order, 1 to {@value #MOST_BRANCHES} */
    public static List<SpreadCorner> of(RailSpread rail, List<BranchSpread> branches) {
        if (branches.isEmpty() || branches.size() > MOST_BRANCHES) {
            throw new IllegalArgumentException("branches must be 1 to " + MOST_BRANCHES + ", not " + branches.size());
        }
        List<SpreadCorner> corners = new ArrayList<>();
        for (Conditions conditions : all(rail, branches)) {
            SpreadCorner corner = conditions.corner(rail, branches);
            if (corners.stream().noneMatch(corner::sameConditions)) {
                corners.add(corner);
            }
        }
        return List.copyOf(corners);
    }

    /**
     * The surroundings that random banks stand in: each part at the middle of its band, its capacitance at nominal where a tolerance
     * is known, else as modelled.
     *
     * @param old whether the rail's life is over, with the parts' drift to the end of life
     */
    public static SpreadCorner surroundings(RailSpread rail, List<BranchSpread> branches, Axis ambient, boolean old, Axis input) {
        Conditions conditions = Conditions.nominal("surroundings").warmth(ambient).input(input);
        SpreadCorner corner = (old ? conditions.grownOld() : conditions).corner(rail, branches);
        List<BranchCorner> centred = new ArrayList<>();
        for (int k = 0; k < branches.size(); k++) {
            Double deviation = branches.get(k).leastDeviation() == null ? null : (Double) 0.0;
            centred.add(new BranchCorner(corner.branches().get(k).point(), new PlaceInBand(deviation, 1, Band.Bound.TYPICAL, old)));
        }
        return new SpreadCorner(corner.name(), centred, corner.inductanceFactor(), corner.switchingFactor(), corner.outputV(), corner.inputV(),
                corner.ambientC());
    }

    private static List<Conditions> all(RailSpread rail, List<BranchSpread> branches) {
        List<Conditions> all = new ArrayList<>();
        all.add(Conditions.nominal("nominal"));
        oneAtATime(all, rail);
        warmthAndAge(all);
        together(all, rail);
        if (branches.size() > 1) {
            branchByBranch(all, branches);
        }
        return all;
    }

    private static void oneAtATime(List<Conditions> all, RailSpread rail) {
        all.add(Conditions.nominal("lowest input").input(Axis.LOW));
        all.add(Conditions.nominal("highest input").input(Axis.HIGH));
        all.add(Conditions.nominal("all capacitances low").allCapacitances(Axis.LOW));
        all.add(Conditions.nominal("all capacitances high").allCapacitances(Axis.HIGH));
        all.add(Conditions.nominal(rail.saturationShare() < 1 ? "inductance low and saturated" : "inductance low").inductance(Axis.LOW));
        all.add(Conditions.nominal("inductance high").inductance(Axis.HIGH));
        all.add(Conditions.nominal("switching frequency low").switching(Axis.LOW));
        all.add(Conditions.nominal("switching frequency high").switching(Axis.HIGH));
        all.add(Conditions.nominal("output voltage low").reference(Axis.LOW));
        all.add(Conditions.nominal("output voltage high").reference(Axis.HIGH));
    }

    private static Conditions hotAndNew(String more) {
        return Conditions.nominal("hot and new, ESR low" + more).warmth(Axis.HIGH).resistance(Axis.LOW);
    }

    private static Conditions coldAndOld(String more) {
        return Conditions.nominal("cold and old, ESR high" + more).warmth(Axis.LOW).grownOld().resistance(Axis.HIGH);
    }

    private static Conditions hotAndOld(String more) {
        return Conditions.nominal("hot and old, ESR high" + more).warmth(Axis.HIGH).grownOld().resistance(Axis.HIGH);
    }

    private static Conditions coldAndNew(String more) {
        return Conditions.nominal("cold and new" + more).warmth(Axis.LOW);
    }

    private static void warmthAndAge(List<Conditions> all) {
        all.add(hotAndNew(""));
        all.add(coldAndNew(""));
        all.add(hotAndOld(""));
        all.add(coldAndOld(""));
        all.add(hotAndNew(", capacitances low").allCapacitances(Axis.LOW));
        all.add(hotAndNew(", capacitances high").allCapacitances(Axis.HIGH));
        all.add(coldAndOld(", capacitances low").allCapacitances(Axis.LOW));
        all.add(coldAndOld(", capacitances high").allCapacitances(Axis.HIGH));
        all.add(hotAndOld(", capacitances low").allCapacitances(Axis.LOW));
        all.add(coldAndNew(", capacitances high").allCapacitances(Axis.HIGH));
    }

    private static Conditions mostRipple(Conditions of, RailSpread rail) {
        return of.allCapacitances(Axis.LOW).input(rail.mostRippleInput()).inductance(Axis.LOW).switching(Axis.LOW);
    }

    private static void together(List<Conditions> all, RailSpread rail) {
        all.add(mostRipple(hotAndOld(", most ripple current"), rail));
        all.add(mostRipple(coldAndOld(", most ripple current"), rail));
        all.add(mostRipple(hotAndNew(", most ripple current"), rail));
        all.add(hotAndNew(", slowest inductor").allCapacitances(Axis.LOW).input(Axis.LOW).inductance(Axis.HIGH));
        all.add(coldAndOld(", slowest inductor").allCapacitances(Axis.LOW).input(Axis.LOW).inductance(Axis.HIGH));
        all.add(coldAndOld(", slowest loop").allCapacitances(Axis.HIGH).input(Axis.LOW).inductance(Axis.HIGH).switching(Axis.LOW));
        all.add(hotAndNew(", fastest loop").allCapacitances(Axis.LOW).input(Axis.HIGH).inductance(Axis.LOW).switching(Axis.LOW)
                .reference(Axis.LOW));
    }

    private static void branchByBranch(List<Conditions> all, List<BranchSpread> branches) {
        for (int k = 0; k < branches.size(); k++) {
            int chosen = k;
            String label = "'" + branches.get(k).label() + "'";
            all.add(hotAndNew(", " + label + " high and the others low").capacitances(i -> i == chosen ? Axis.HIGH : Axis.LOW));
            all.add(hotAndNew(", " + label + " low and the others high").capacitances(i -> i == chosen ? Axis.LOW : Axis.HIGH));
        }
    }
}
