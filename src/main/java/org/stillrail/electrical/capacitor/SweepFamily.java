package org.stillrail.electrical.capacitor;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Sweeps of one part at several biases and temperatures. Between them the impedance is interpolated in proportion, first
 * over bias among sweeps of one temperature, then between two temperatures; beyond them the outermost sweep is taken, and
 * {@link Member#point} says where it stands, so that {@link Characteristics} bend it only from there.
 */
public record SweepFamily(List<Member> members) {

    /** A model and the operating point that it holds at; bias by its size. */
    public record Member(OperatingPoint point, ImpedanceModel model) {

        private double biasV() {
            return Math.abs(point.biasV());
        }

        private double temperatureC() {
            return point.temperatureC();
        }
    }

    public SweepFamily {
        members = List.copyOf(members);
        if (members.isEmpty()) {
            throw new IllegalArgumentException("A family needs at least one sweep");
        }
        TreeSet<Member> distinct = new TreeSet<>(Comparator.comparingDouble(Member::temperatureC).thenComparingDouble(Member::biasV));
        distinct.addAll(members);
        if (distinct.size() < members.size()) {
            throw new IllegalArgumentException("Two sweeps of a family are at the same bias and temperature");
        }
    }

    /** The model nearest to the wanted point, interpolated where there are sweeps on both sides. */
    public Member near(OperatingPoint wanted) {
        TreeMap<Double, List<Member>> byTemperature = new TreeMap<>();
        members.forEach(member -> byTemperature.computeIfAbsent(member.temperatureC(), t -> new ArrayList<>()).add(member));
        double temperature = wanted.temperatureC();
        Double below = byTemperature.floorKey(temperature);
        Double above = byTemperature.ceilingKey(temperature);
        if (below == null || above == null || below.equals(above)) {
            return overBias(byTemperature.get(below == null ? above : below), wanted);
        }
        Member colder = overBias(byTemperature.get(below), wanted);
        Member warmer = overBias(byTemperature.get(above), wanted);
        double share = (temperature - below) / (above - below);
        if (colder.biasV() != warmer.biasV()) {
            return Math.abs(colder.biasV() - Math.abs(wanted.biasV())) < Math.abs(warmer.biasV() - Math.abs(wanted.biasV()))
                    ? colder : warmer;
        }
        return blend(colder, warmer, share, new OperatingPoint(colder.biasV(), temperature, nearer(colder, warmer, share).ageHours()));
    }

    private static Member overBias(List<Member> sweeps, OperatingPoint wanted) {
        double bias = Math.abs(wanted.biasV());
        Member lower = null;
        Member higher = null;
        for (Member sweep : sweeps) {
            if (sweep.biasV() <= bias && (lower == null || sweep.biasV() > lower.biasV())) {
                lower = sweep;
            }
            if (sweep.biasV() >= bias && (higher == null || sweep.biasV() < higher.biasV())) {
                higher = sweep;
            }
        }
        if (lower == null || higher == null || lower == higher) {
            return lower == null ? higher : lower;
        }
        double share = (bias - lower.biasV()) / (higher.biasV() - lower.biasV());
        return blend(lower, higher, share, new OperatingPoint(bias, lower.temperatureC(), nearer(lower, higher, share).ageHours()));
    }

    private static OperatingPoint nearer(Member a, Member b, double share) {
        return (share < 0.5 ? a : b).point();
    }

    private static Member blend(Member a, Member b, double share, OperatingPoint point) {
        return new Member(point, new BlendedModel(a.model(), b.model(), share));
    }
}
