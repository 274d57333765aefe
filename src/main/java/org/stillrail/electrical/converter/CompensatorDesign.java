package org.stillrail.electrical.converter;

import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.stillrail.electrical.bank.Bank;

/**
 * Places a compensator by the K factor on the actual plant: the bank's own curve, the inductor, the control and its delay.
 *
 * <pre>
 * boost = wanted phase margin - plant phase at the crossover - 90 deg
 * one zero, one pole:    K = tan(boost / 2 + 45 deg)      zero at fc / K          pole at fc K
 * two zeros, two poles:  K = tan(boost / 4 + 45 deg)^2    zeros at fc / sqrt K    poles at fc sqrt K
 * </pre>
 *
 * The gain makes |T| = 1 at the crossover. A negative boost gives K below 1: the plant has phase to spare, and the pole
 * before the zero spends it on attenuation above the crossover.
 * Source: H. D. Venable, The K factor, Powercon 10, 1983 (from memory).
 */
public final class CompensatorDesign {

    /** Up to here one zero and one pole are enough (K = 7.6); beyond, two of each spread less. */
    static final double ONE_ZERO_BOOST_DEG = 75;
    /** Two zeros and two poles give less than 180; near it K, and the gain at the switching frequency, grow without bound. */
    static final double LARGEST_BOOST_DEG = 160;
    static final double SMALLEST_BOOST_DEG = -80;

    private CompensatorDesign() {
    }

    /**
     * @param loadLineOhm as in {@link Converter}
     * @throws DesignRefusedException in words, where the wish cannot be had
     */
    public static Compensator place(Bank bank, PowerStage stage, Control control, LoopTarget target, double loadLineOhm) {
        double fc = target.crossoverHz();
        if (fc >= stage.switchingHz() / 2) {
            throw new DesignRefusedException(say("A crossover of %.6g Hz cannot be had: it must stay below half the switching"
                    + " frequency of %.6g Hz", fc, stage.switchingHz()));
        }
        if (control instanceof CurrentMode current && current.inverseSamplingQ(stage) <= 0) {
            throw new DesignRefusedException("No compensator helps: the current loop itself is unstable at this duty; give it"
                    + " more slope compensation (slopeAPerS)");
        }
        Plant.Point plant = new Plant(bank, stage, control, loadLineOhm).at(fc);
        if (!(plant.magnitude() > 0) || Double.isInfinite(plant.magnitude())) {
            throw new DesignRefusedException(say("The bank resonates without loss at the crossover of %.6g Hz; no gain can be"
                    + " set there", fc));
        }
        double boost = target.phaseMarginDeg() - plant.phaseDeg() - 90;
        if (boost > LARGEST_BOOST_DEG) {
            throw new DesignRefusedException(say("A phase margin of %.4g deg at %.6g Hz needs %.4g deg of phase boost; two"
                    + " zeros and two poles give %.4g deg at most. The plant's phase there is %.4g deg: lower the crossover, the"
                    + " delay or the margin",
                    target.phaseMarginDeg(), fc, boost, LARGEST_BOOST_DEG, plant.phaseDeg()));
        }
        if (boost < SMALLEST_BOOST_DEG) {
            throw new DesignRefusedException(say("A phase margin of only %.4g deg at %.6g Hz would need the compensator to"
                    + " waste %.4g deg; ask for a larger margin", target.phaseMarginDeg(), fc, -boost));
        }
        int order = boost > ONE_ZERO_BOOST_DEG ? 2 : 1;
        double spread = Math.tan(Math.toRadians(boost / (2 * order) + 45));
        List<Double> zeros = Collections.nCopies(order, fc / spread);
        List<Double> poles = Collections.nCopies(order, fc * spread);
        double unscaled = new Compensator(1, zeros, poles).magnitudeAt(fc);
        return new Compensator(1 / (unscaled * plant.magnitude()), zeros, poles);
    }

    private static String say(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
