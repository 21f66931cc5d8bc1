package stokewell.show;

/**
 * The colour of a temperature: from a deep blue to a light yellow on a straight line in Oklab, so that equal steps look
 * equal, lightness alone tells the order (in grey and in a photocopy), and no red is told from green.
 *
 * <p>Oklab and its matrices: B. Ottosson, A perceptual color space for image processing (2020); read from memory, checked by
 * white, black and the way back.
 */
public final class Warmth {

    private static final double[] COLD = {0.29, -0.004, -0.085};
    private static final double[] HOT = {0.91, -0.020, 0.135};

    private Warmth() {}

    /** 0xRRGGBB of a share from 0, cold, to 1, hot. */
    public static int rgb(double share) {
        double s = Double.isNaN(share) ? 0 : Math.max(0, Math.min(1, share));
        return fromOklab(
                COLD[0] + s * (HOT[0] - COLD[0]), COLD[1] + s * (HOT[1] - COLD[1]), COLD[2] + s * (HOT[2] - COLD[2]));
    }

    /** sRGB of lightness and the two opponent axes. */
    static int fromOklab(double lightness, double a, double b) {
        double l = cube(lightness + 0.3963377774 * a + 0.2158037573 * b);
        double m = cube(lightness - 0.1055613458 * a - 0.0638541728 * b);
        double s = cube(lightness - 0.0894841775 * a - 1.2914855480 * b);
        int red = channel(4.0767416621 * l - 3.3077115913 * m + 0.2309699292 * s);
        int green = channel(-1.2684380046 * l + 2.6097574011 * m - 0.3413193965 * s);
        int blue = channel(-0.0041960863 * l - 0.7034186147 * m + 1.7076147010 * s);
        return red << 16 | green << 8 | blue;
    }

    private static double cube(double v) {
        return v * v * v;
    }

    private static int channel(double linear) {
        double v = Math.max(0, Math.min(1, linear));
        double shown = v <= 0.0031308 ? 12.92 * v : 1.055 * Math.pow(v, 1 / 2.4) - 0.055;
        return (int) Math.round(255 * shown);
    }
}
