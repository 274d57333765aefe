package org.stillrail.electrical.spread;

/**
 * The inverse of the standard normal distribution function for probabilities from 1e-11 to 1 - 1e-11: M. J. Wichura, algorithm
 * AS 241 (PPND16), Applied Statistics 37, 1988, coefficients from memory; its rational function for the far tails is left out.
 */
final class NormalQuantile {

    private static final double CENTRE = 0.425;
    private static final double CENTRE_SQUARED = 0.180625;
    private static final double TAIL_SHIFT = 1.6;

    private static final double[] A = {
        3.3871328727963666080, 133.14166789178437745, 1971.5909503065514427, 13731.693765509461125, 45921.953931549871457,
        67265.770927008700853, 33430.575583588128105, 2509.0809287301226727};
    private static final double[] B = {
        1, 42.313330701600911252, 687.18700749205790830, 5394.1960214247511077, 21213.794301586595867, 39307.895800092710610,
        28729.085735721942674, 5226.4952788528545610};
    private static final double[] C = {
        1.42343711074968357734, 4.63033784615654529590, 5.76949722146069140550, 3.64784832476320460504, 1.27045825245236838258,
        0.241780725177450611770, 0.0227238449892691845833, 7.74545014278341407640e-4};
    private static final double[] D = {
        1, 2.05319162663775882187, 1.67638483018380384940, 0.689767334985100004550, 0.148103976427480074590, 0.0151986665636164571966,
        5.47593808499534494600e-4, 1.05075007164441684324e-9};

    private NormalQuantile() {
    }

    static double of(double probability) {
        double q = probability - 0.5;
        if (Math.abs(q) <= CENTRE) {
            double r = CENTRE_SQUARED - q * q;
            return q * polynomial(A, r) / polynomial(B, r);
        }
        double r = Math.sqrt(-Math.log(Math.min(probability, 1 - probability))) - TAIL_SHIFT;
        return Math.copySign(polynomial(C, r) / polynomial(D, r), q);
    }

    private static double polynomial(double[] coefficients, double x) {
        double sum = 0;
        for (int i = coefficients.length - 1; i >= 0; i--) {
            sum = sum * x + coefficients[i];
        }
        return sum;
    }
}
