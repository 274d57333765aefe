package org.stillrail.electrical.ripple;

/** The sum {@code x[m] = sum over n of X[n] exp(+2 pi j n m / M)} in place, M a power of two; radix 2, no factor in front. */
final class InverseDft {

    private InverseDft() {
    }

    /** Both arrays are modified; their common length is a power of two. */
    static void transform(double[] re, double[] im) {
        int size = re.length;
        if (Integer.bitCount(size) != 1 || im.length != size) {
            throw new IllegalArgumentException("Two arrays of one power of two are needed, not " + size + " and " + im.length);
        }
        transform(re, im, cosines(size), sines(size));
    }

    /** The cosines that a transform of a size needs, for those who do many of them. */
    static double[] cosines(int size) {
        double[] cos = new double[size / 2];
        for (int i = 0; i < cos.length; i++) {
            cos[i] = Math.cos(2 * Math.PI * i / size);
        }
        return cos;
    }

    /** The sines likewise. */
    static double[] sines(int size) {
        double[] sin = new double[size / 2];
        for (int i = 0; i < sin.length; i++) {
            sin[i] = Math.sin(2 * Math.PI * i / size);
        }
        return sin;
    }

    /** As above, with the {@link #cosines} and {@link #sines} of the arrays' size. */
    static void transform(double[] re, double[] im, double[] cos, double[] sin) {
        int size = re.length;
        reorder(re, im);
        for (int half = 1; half < size; half *= 2) {
            int stride = size / (2 * half);
            for (int start = 0; start < size; start += 2 * half) {
                for (int j = 0; j < half; j++) {
                    int a = start + j;
                    int b = a + half;
                    double c = cos[j * stride];
                    double s = sin[j * stride];
                    double turnedRe = c * re[b] - s * im[b];
                    double turnedIm = c * im[b] + s * re[b];
                    re[b] = re[a] - turnedRe;
                    im[b] = im[a] - turnedIm;
                    re[a] += turnedRe;
                    im[a] += turnedIm;
                }
            }
        }
    }

    private static void reorder(double[] re, double[] im) {
        int size = re.length;
        int shift = Integer.numberOfLeadingZeros(size) + 1;
        for (int i = 1; i < size; i++) {
            int j = Integer.reverse(i) >>> shift;
            if (i < j) {
                double r = re[i];
                re[i] = re[j];
                re[j] = r;
                double x = im[i];
                im[i] = im[j];
                im[j] = x;
            }
        }
    }
}
