package org.stillrail.electrical.evaluation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.stillrail.electrical.curve.Extremum;

/**
 * Compares kept figures with those of the same input worked out again. The last digits differ between JDKs and processors, so
 * numbers agree within a relative tolerance; outcomes and corners must be the same, words are not compared.
 */
public final class FigureComparison {

    /** Enough for other last digits of the mathematical functions after a long calculation, far too little for another method. */
    public static final double TOLERANCE = 1e-6;

    /** Numbers that are rounding residues beside the others of an evaluation. */
    private static final double RESIDUE = 1e-15;

    private FigureComparison() {
    }

    /**
     * A figure that differs.
     *
     * @param name       for example 'ripple value'
     * @param stored     as kept, '-' where it was absent
     * @param recomputed likewise
     */
    public record Difference(String name, String stored, String recomputed) {

        /** In words. */
        public String sentence() {
            return name + " was " + stored + " and is now " + recomputed + ".";
        }
    }

    /**
     * @param tolerance relative, for example {@link #TOLERANCE}
     * @return those that differ, in the order of the figures; empty where all agree
     */
    public static List<Difference> compare(EvaluationFigures stored, EvaluationFigures recomputed, double tolerance) {
        Map<String, Object> before = flat(stored);
        Map<String, Object> after = flat(recomputed);
        Set<String> names = new LinkedHashSet<>(before.keySet());
        names.addAll(after.keySet());
        List<Difference> differences = new ArrayList<>();
        for (String name : names) {
            Object a = before.get(name);
            Object b = after.get(name);
            if (!agree(a, b, tolerance)) {
                differences.add(new Difference(name, words(a), words(b)));
            }
        }
        return List.copyOf(differences);
    }

    private static boolean agree(Object a, Object b, double tolerance) {
        if (a instanceof Double x && b instanceof Double y) {
            return Math.abs(x - y) <= tolerance * Math.max(Math.abs(x), Math.abs(y)) + RESIDUE;
        }
        return Objects.equals(a, b);
    }

    private static String words(Object value) {
        return value == null ? "-" : value.toString();
    }

    private static Map<String, Object> flat(EvaluationFigures figures) {
        Map<String, Object> flat = new LinkedHashMap<>();
        flat.put("method version", figures.methodVersion());
        flat.put("limits met", figures.met());
        flat.put("limits asked", figures.asked());
        for (VerdictFigures verdict : figures.verdicts()) {
            String name = verdict.requirement().id();
            flat.put(name + " outcome", verdict.outcome().label());
            flat.put(name + " limit", verdict.limit());
            flat.put(name + " value", verdict.value());
            flat.put(name + " corner", verdict.corner());
        }
        flat.put("crossover", figures.crossoverHz());
        flat.put("phase margin", figures.phaseMarginDeg());
        flat.put("gain margin", figures.gainMarginDb());
        flat.put("sensitivity peak", figures.sensitivityPeak());
        flat.put("stable", figures.stable());
        reading(flat, "at crossover", figures.atCrossover());
        reading(flat, "at switching", figures.atSwitching());
        flat.put("number of extrema", figures.extrema().size());
        for (int i = 0; i < figures.extrema().size(); i++) {
            Extremum extremum = figures.extrema().get(i);
            String name = "extremum " + (i + 1);
            flat.put(name + " kind", extremum.kind().name());
            flat.put(name + " frequency", extremum.frequencyHz());
            flat.put(name + " |Z|", extremum.magnitudeOhm());
        }
        flat.put("ripple peak to peak", figures.ripplePeakToPeakV());
        flat.put("ripple rms", figures.rippleRmsV());
        flat.put("ripple at the converter", figures.rippleAtConverterV());
        flat.put("undershoot", figures.undershootV());
        flat.put("overshoot", figures.overshootV());
        side(flat, "window above", figures.window() == null ? null : figures.window().plus());
        side(flat, "window below", figures.window() == null ? null : figures.window().minus());
        return flat;
    }

    private static void reading(Map<String, Object> flat, String where, Reading reading) {
        flat.put("|Z| " + where, reading.magnitudeOhm());
        flat.put("ESR " + where, reading.resistanceOhm());
        flat.put("reactance " + where, reading.reactanceOhm());
    }

    private static void side(Map<String, Object> flat, String name, WindowSide side) {
        flat.put(name + " taken", side == null ? null : (Double) side.totalV());
        flat.put(name + " allowed", side == null ? null : (Double) side.allowedV());
    }
}
