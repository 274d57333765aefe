package org.stillrail.electrical.step;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.converter.Converter;

/**
 * Finds the worst load pattern. With a load line the output does not come back to where it was: all falls of the response then count, from
 * the rest at the lower current. Otherwise a regulated rail's impedance is 0 at DC, so of a load that only has to stay between two currents
 * the worst deviation is half their difference times the total variation of the response to a unit step: the load steps back and
 * forth so that every swing of the response adds up at one instant.
 *
 * <p>With a slew limit the step is a ramp of length {@code span / slew}. Stepping back and forth and smoothing with that ramp
 * keeps both limits, and does half the total variation of the response to one ramp between the limits; while the turning points
 * of that response are a ramp's length apart no load does more. Where they are closer, ramps that turn round half-way can do
 * more, and the best of them is found by dynamic programming on a grid of times and currents. Both are patterns that can be drawn
 * and tried. Derived; the total variation as the largest gain is the standard result for the l1 norm of an impulse response (M.
 * A. Dahleh, J. B. Pearson, 1987, from memory).
 */
public final class WorstLoadSearch {

    /** Times and currents of the dynamic programme. */
    private static final int TIMES = 4000;
    private static final int MOST_TIMES = 100_000;
    private static final int MOST_LEVELS = 200;
    /** A jump of the response is given this share of the ramp's length, so that the pattern has an edge for it. */
    private static final double JUMP_SHARE = 0.01;
    /** A response that still is this share of its largest value at the end was cut off. */
    private static final double UNSETTLED = 1e-3;

    private WorstLoadSearch() {
    }

    /**
     * @param load      its two currents are the limits, its slew the steepest change
     * @param durationS long enough for the response to one step to die away; the pattern is at most as long
     * @throws StepRefusedException where the loop is unstable
     */
    public static WorstLoad of(Bank bank, Converter converter, Load load, double durationS, BranchRealisation realisation) {
        Load up = new Load(Math.min(load.fromA(), load.toA()), Math.max(load.fromA(), load.toA()), load.slewAPerS());
        StepRequest request = StepRequest.of(bank, converter, up, durationS).unlimited().withSamples(2);
        Swings swings = new Swings();
        StepResult single = LoadStep.following(request, realisation, swings);
        List<String> warnings = new ArrayList<>();
        double singleStepV = Math.max(single.undershootV(), single.overshootV());
        if (Math.abs(single.deviationV()[1] + converter.loadLineOhm() * up.stepA()) > UNSETTLED * singleStepV) {
            warnings.add("The response has not died away within " + durationS + " s; a longer pattern may do worse");
        }
        WorstLoad smoothed = smoothed(swings, up, converter.loadLineOhm() > 0 ? swings.totalFallV() : swings.totalVariationV() / 2, singleStepV, warnings);
        if (apart(swings, up.rampS())) {
            return smoothed;
        }
        WorstLoad programmed = programmed(request, realisation, singleStepV, warnings);
        return programmed != null && programmed.deviationV() > smoothed.deviationV() ? programmed : smoothed;
    }

    private static boolean apart(Swings swings, double rampS) {
        List<Swings.Turn> turns = swings.turns();
        for (int k = 2; k < turns.size(); k++) {
            if (turns.get(k).atS() - turns.get(k - 1).atS() < rampS) {
                return false;
            }
        }
        return true;
    }

    /** While the response to a rising load falls, the load of so long ago should be high, while it rises, low. */
    private static WorstLoad smoothed(Swings swings, Load load, double deviationV, double singleStepV, List<String> warnings) {
        List<Swings.Turn> turns = swings.turns();
        double endS = turns.get(turns.size() - 1).atS();
        int n = turns.size() - 1;
        double rampS = load.rampS();
        double[] atS = timesWithJumpsWidened(turns, JUMP_SHARE * rampS);
        double[] switchS = new double[n + 1];
        boolean[] high = new boolean[n];
        for (int k = 0; k < n; k++) {
            switchS[k] = endS - atS[n - k];
            high[k] = turns.get(n - k).v() < turns.get(n - k - 1).v();
        }
        switchS[n] = endS;
        TreeSet<Double> corners = new TreeSet<>(List.of(0.0, endS + rampS));
        for (double at : switchS) {
            corners.add(at);
            corners.add(at + rampS);
        }
        double[] timeS = corners.stream().mapToDouble(Double::doubleValue).toArray();
        double[] loadA = new double[timeS.length];
        for (int i = 0; i < timeS.length; i++) {
            loadA[i] = load.fromA() + load.stepA() * shareHigh(timeS[i], rampS, switchS, high);
        }
        return new WorstLoad(deviationV, singleStepV, new LoadCourse(timeS, loadA), endS, warnings);
    }

    /** A swing that takes no time is a jump; it cannot be met exactly, only as closely as one likes. That at 0 s is met by what follows the pattern. */
    private static double[] timesWithJumpsWidened(List<Swings.Turn> turns, double widthS) {
        double[] atS = turns.stream().mapToDouble(Swings.Turn::atS).toArray();
        for (int k = 1; k < atS.length; k++) {
            if (turns.get(k).atS() == turns.get(k - 1).atS() && atS[k] > 0) {
                atS[k - 1] = Math.max(k > 1 ? atS[k - 2] : 0, atS[k - 1] - widthS / 2);
                atS[k] = Math.min(k + 1 < atS.length ? turns.get(k + 1).atS() : Double.POSITIVE_INFINITY, atS[k] + widthS / 2);
            }
        }
        return atS;
    }

    /** The share of the last ramp's length for which the pattern was high; before its beginning it is as at its beginning. */
    private static double shareHigh(double atS, double rampS, double[] switchS, boolean[] high) {
        int n = high.length;
        if (n == 0) {
            return 0;
        }
        double share = 0;
        double from = atS - rampS;
        for (int k = -1; k <= n; k++) {
            double start = k < 0 ? Double.NEGATIVE_INFINITY : switchS[k];
            double end = k == n ? Double.POSITIVE_INFINITY : switchS[k + 1];
            // After the end it goes on as it was there: a response that begins with a jump wants an edge that begins at that
            // instant.
            boolean up = k < 0 ? high[0] : k == n ? high[n - 1] : high[k];
            if (up) {
                share += Math.max(0, Math.min(atS, end) - Math.max(from, start));
            }
        }
        return rampS > 0 ? Math.min(1, share / rampS) : share;
    }

    /** Null where the grid would be too fine. */
    private static WorstLoad programmed(
            StepRequest request, BranchRealisation realisation, double singleStepV, List<String> warnings) {
        Load load = request.load();
        int levels = (int) Math.max(1, Math.min(MOST_LEVELS, Math.floor(TIMES * load.rampS() / request.durationS())));
        double stepS = load.rampS() / levels;
        if (!(request.durationS() / stepS < MOST_TIMES)) {
            return null;
        }
        int times = (int) Math.ceil(request.durationS() / stepS);
        double part = load.stepA() / levels;
        Load little = new Load(load.fromA(), load.fromA() + part, load.slewAPerS());
        double[] response = deviation(request, little, times, stepS, realisation);
        // At the end of the last ramp the load still moves: the value before a jump.
        response[1] = deviation(request, little, 1, stepS, realisation)[1];
        return best(response, request.converter().loadLineOhm() * part, levels, stepS, load, singleStepV, warnings);
    }

    private static double[] deviation(StepRequest request, Load load, int times, double stepS, BranchRealisation realisation) {
        StepRequest little = new StepRequest(request.bank(), request.converter(), load, times * stepS, false, times + 1, null);
        return LoadStep.of(little, realisation).deviationV();
    }

    /** Levels 0 to {@code levels}, from one time to the next by at most one. {@code response[k]}: of one level up, k times ago; {@code restV}: how far one level up lets the output rest lower. */
    private static WorstLoad best(
            double[] response, double restV, int levels, double stepS, Load load, double singleStepV, List<String> warnings) {
        int times = response.length - 1;
        double[] fall = new double[levels + 1];
        double[] next = new double[levels + 1];
        for (int level = 0; level <= levels; level++) {
            fall[level] = level * restV;
        }
        byte[][] came = new byte[times][levels + 1];
        for (int k = times; k >= 1; k--) {
            for (int level = 0; level <= levels; level++) {
                double best = Double.NEGATIVE_INFINITY;
                for (int from = Math.max(0, level - 1); from <= Math.min(levels, level + 1); from++) {
                    double value = fall[from] - (level - from) * response[k];
                    if (value > best) {
                        best = value;
                        came[k - 1][level] = (byte) (from - level);
                    }
                }
                next[level] = best;
            }
            double[] swap = fall;
            fall = next;
            next = swap;
        }
        int level = 0;
        for (int l = 1; l <= levels; l++) {
            level = fall[l] > fall[level] ? l : level;
        }
        double deviationV = fall[level];
        double[] timeS = new double[times + 1];
        double[] loadA = new double[times + 1];
        for (int k = 0; k <= times; k++) {
            timeS[times - k] = (times - k) * stepS;
            loadA[times - k] = load.fromA() + load.stepA() * level / levels;
            level += k < times ? came[k][level] : 0;
        }
        return corners(deviationV, singleStepV, timeS, loadA, warnings);
    }

    /** Leaves out the points on straight lines. */
    private static WorstLoad corners(double deviationV, double singleStepV, double[] timeS, double[] loadA, List<String> warnings) {
        List<Integer> kept = new ArrayList<>();
        for (int i = 0; i < timeS.length; i++) {
            if (i == 0 || i == timeS.length - 1 || bends(loadA[i - 1], loadA[i], loadA[i + 1])) {
                kept.add(i);
            }
        }
        double[] cornerS = kept.stream().mapToDouble(i -> timeS[i]).toArray();
        double[] cornerA = kept.stream().mapToDouble(i -> loadA[i]).toArray();
        return new WorstLoad(deviationV, singleStepV, new LoadCourse(cornerS, cornerA), timeS[timeS.length - 1], warnings);
    }

    private static boolean bends(double before, double at, double after) {
        return Math.abs(after - 2 * at + before) > 1e-9 * Math.abs(after - before) + 1e-12 * Math.abs(at);
    }
}
