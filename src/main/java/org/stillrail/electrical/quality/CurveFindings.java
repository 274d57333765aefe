package org.stillrail.electrical.quality;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.electrical.curve.Hertz;
import org.stillrail.electrical.curve.Thinning;
import org.stillrail.electrical.fit.KramersKronigCheck;
import org.stillrail.electrical.fit.VectorFitting;

/**
 * What the points of a sweep say about themselves. The limits are common practice, no source: 1 % of noise, 1 % of Kramers-Kronig
 * residual beyond what noise explains. How many points a decade are enough is for the caller to say.
 */
public final class CurveFindings {

    public static final double NOISE_PERCENT = 1;
    public static final double RESIDUAL_PERCENT = 1;

    /** A step this many times the usual one is a gap, if it is also wider than a tenth of a decade. */
    private static final double GAP_STEPS = 4;
    private static final double GAP_DECADES = 0.1;
    private static final int MOST_POINTS_CHECKED = 2000;

    private CurveFindings() {
    }

    /**
     * Nothing is thrown for any curve.
     *
     * @param pointsPerDecade fewer are a finding; 2 or more
     */
    public static List<Finding> of(Curve impedance, int pointsPerDecade) {
        List<Finding> findings = new ArrayList<>();
        if (impedance.size() < 2) {
            findings.add(new Finding(FindingKind.FEW_POINTS, "The sweep is a single point.", List.of()));
            return findings;
        }
        spacing(impedance.grid(), pointsPerDecade, findings);
        negative(impedance, findings);
        Curve thinned = Thinning.everySo(impedance, MOST_POINTS_CHECKED);
        if (isCheckable(thinned)) {
            KramersKronigCheck.Result check = KramersKronigCheck.of(thinned);
            noise(check, findings);
            residual(check, findings);
        }
        return findings;
    }

    private static void spacing(FrequencyGrid grid, int pointsPerDecade, List<Finding> findings) {
        // Twenty points to a decade have nineteen steps between them.
        double widestStep = 1.0 / (pointsPerDecade - 1);
        double[] decades = new double[grid.size() - 1];
        for (int i = 0; i < decades.length; i++) {
            decades[i] = Math.log10(grid.hz(i + 1) / grid.hz(i));
        }
        double[] sorted = decades.clone();
        Arrays.sort(sorted);
        double gapFrom = Math.max(Math.max(GAP_DECADES, widestStep), GAP_STEPS * sorted[sorted.length / 2]);
        List<FrequencySpan> gaps = FrequencySpan.ofSteps(grid, i -> decades[i] > gapFrom);
        if (!gaps.isEmpty()) {
            findings.add(new Finding(FindingKind.GAP, "No points " + Words.spans(gaps) + ".", gaps));
        }
        List<FrequencySpan> sparse = FrequencySpan.ofSteps(grid, i -> decades[i] > widestStep && decades[i] <= gapFrom);
        if (!sparse.isEmpty()) {
            findings.add(new Finding(FindingKind.FEW_POINTS, "Fewer than " + pointsPerDecade + " points a decade " + Words.spans(sparse) + ".", sparse));
        }
    }

    private static void negative(Curve impedance, List<Finding> findings) {
        List<FrequencySpan> spans = FrequencySpan.ofPoints(impedance.grid(), i -> impedance.real(i) < 0);
        if (!spans.isEmpty()) {
            long points = Arrays.stream(impedance.reals()).filter(r -> r < 0).count();
            findings.add(new Finding(FindingKind.NEGATIVE_RESISTANCE,
                    "The resistance is negative at " + points + " of " + impedance.size() + " points, " + Words.spans(spans) + ".", spans));
        }
    }

    private static boolean isCheckable(Curve curve) {
        return curve.size() >= VectorFitting.FEWEST_POINTS && Arrays.stream(curve.magnitudes()).allMatch(z -> z > 0 && Double.isFinite(z));
    }

    private static void noise(KramersKronigCheck.Result check, List<Finding> findings) {
        double[] loudest = check.loudestPercent();
        double peak = 1 + Math.sqrt(2 * Math.log(loudest.length));
        List<FrequencySpan> loud = FrequencySpan.ofPoints(check.grid(), i -> loudest[i] / peak > NOISE_PERCENT);
        if (!loud.isEmpty()) {
            double most = Arrays.stream(loudest).max().orElse(0) / peak;
            findings.add(new Finding(FindingKind.NOISE, "Neighbouring points scatter by more than " + Words.percent(NOISE_PERCENT) + " of |Z|, up to "
                    + Words.percent(most) + ", " + Words.spans(loud) + ".", loud));
        }
    }

    private static void residual(KramersKronigCheck.Result check, List<Finding> findings) {
        boolean[] suspect = new boolean[check.grid().size()];
        for (int i : check.suspects(RESIDUAL_PERCENT)) {
            suspect[i] = true;
        }
        List<FrequencySpan> spans = FrequencySpan.ofPoints(check.grid(), i -> suspect[i]);
        if (!spans.isEmpty()) {
            findings.add(new Finding(FindingKind.KRAMERS_KRONIG, "The Kramers-Kronig residual is up to " + Words.percent(check.worstPercent())
                    + " of |Z| at " + Hertz.words(check.worstHz()) + ", above " + Words.percent(RESIDUAL_PERCENT) + " and above the noise "
                    + Words.spans(spans) + ".", spans));
        }
    }
}
