package org.stillrail.electrical.fit;

import java.util.List;
import org.stillrail.electrical.capacitor.ValidRange;
import org.stillrail.electrical.curve.Complex;

/**
 * An impedance as a rational function of s, with the evidence of how good it is. Errors are taken at the points fitted.
 *
 * @param function                    in ohm, s in rad/s
 * @param worstRelativeErrorPercent   largest complex error over |Z|
 * @param rmsRelativeErrorPercent     root mean square of the same
 * @param worstResistanceErrorPercent largest error of Re Z over |Re Z|; points where Re Z is 0 are left out
 * @param noisePercent                the points' own noise, one standard deviation of each part over |Z|, estimated without the fit
 * @param passive                     true only where the exact test found Re Z nowhere negative, at any frequency
 * @param stable                      no pole in the right half-plane, none but a simple one at 0 on the imaginary axis
 * @param order                       number of poles, the one at 0 included
 * @param iterations                  pole relocations in all, over every order tried
 * @param stopReason                  why the search ended
 * @param remarks                     sentences for the reader, empty when there is nothing to say
 * @param range                       lowest and highest frequency fitted; outside it the function extrapolates
 */
public record RationalFit(
        RationalFunction function,
        double worstRelativeErrorPercent,
        double rmsRelativeErrorPercent,
        double worstResistanceErrorPercent,
        double noisePercent,
        boolean passive,
        boolean stable,
        int order,
        int iterations,
        StopReason stopReason,
        List<String> remarks,
        ValidRange range) {

    public RationalFit {
        remarks = List.copyOf(remarks);
    }

    /** The quantity fitted: always the impedance, so that R, L and C in series stay single terms of the function. */
    public String of() {
        return "impedance";
    }

    /** In rad/s, conjugates spelt out. */
    public List<Complex> poles() {
        return function.poles();
    }

    /** At each of {@link #poles()}, in ohm rad/s. */
    public List<Complex> residues() {
        return function.residues();
    }

    /** In ohm. */
    public double constant() {
        return function.constant();
    }

    /** In ohm s, that is H. */
    public double proportional() {
        return function.proportional();
    }

    /** The impedance realised: input current, output voltage. */
    public StateSpace stateSpace() {
        return function.stateSpace();
    }

    /**
     * The fit of the same part with a resistance and a capacitor in series, either of which may be negative; the errors over |Z| stay
     * those of the part alone.
     *
     * @param ohm  resistance
     * @param perF elastance in 1/F
     */
    public RationalFit inSeriesWith(double ohm, double perF) {
        RationalFunction sum = function.plus(ohm, perF);
        boolean stillPassive = passive && sum.residueAtZero() >= 0 && (ohm >= 0 || Passivity.of(sum).passive());
        return new RationalFit(sum, worstRelativeErrorPercent, rmsRelativeErrorPercent, worstResistanceErrorPercent, noisePercent, stillPassive,
                stable, sum.order(), iterations, stopReason, remarks, range);
    }

    /** The fit as a part's model, for banks. */
    public FittedModel model() {
        return new FittedModel(this);
    }
}
