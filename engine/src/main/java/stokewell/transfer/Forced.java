package stokewell.transfer;

/**
 * Forced convection: Nusselt numbers in pipes on the bore, across cylinders on the diameter, along plates on the
 * length.
 *
 * <p>Turbulent pipe correlations are trusted to 10 %, transition (Re 2300 to 4000) to 30 %, cylinders to 20 %.
 */
public final class Forced {

    /** Developed laminar pipe flow, wall of one temperature. */
    public static final double LAMINAR_CONSTANT_TEMPERATURE = 3.657;

    /** Developed laminar pipe flow, wall of one heat flux. */
    public static final double LAMINAR_CONSTANT_FLUX = 4.364;

    /** Where laminar flow begins to break up and where turbulence is whole; Gnielinski, IJHMT 63 (2013) 134. */
    private static final double LAMINAR_END = 2300;

    private static final double TURBULENT_BEGIN = 4000;

    private Forced() {}

    /** Gnielinski, Int. Chem. Eng. 16 (1976) 359. Re 3000 to 5e6, Pr 0.5 to 2000. @param f Darcy friction factor */
    public static double gnielinski(double re, double pr, double f) {
        return f / 8 * (re - 1000) * pr / (1 + 12.7 * Math.sqrt(f / 8) * (Math.cbrt(pr * pr) - 1));
    }

    /** Gnielinski in a smooth pipe, with Petukhov's friction factor. */
    public static double gnielinski(double re, double pr) {
        return gnielinski(re, pr, petukhovFriction(re));
    }

    /** Darcy friction factor of a smooth pipe, Re 3000 to 5e6. Petukhov, Adv. Heat Transfer 6 (1970) 503. */
    public static double petukhovFriction(double re) {
        double root = 0.790 * Math.log(re) - 1.64;
        return 1 / (root * root);
    }

    /**
     * Dittus and Boelter as McAdams wrote them, Re over 1e4, Pr 0.7 to 160.
     *
     * @param heating whether the fluid is heated
     */
    public static double dittusBoelter(double re, double pr, boolean heating) {
        return 0.023 * Math.pow(re, 0.8) * Math.pow(pr, heating ? 0.4 : 0.3);
    }

    /** Smooth long pipe at any Reynolds number; see {@link #pipe(double, double, double)}. */
    public static double pipe(double re, double pr) {
        return pipe(re, pr, 0);
    }

    /**
     * Mean Nusselt number of a smooth pipe at any Reynolds number, wall of one temperature.
     *
     * <p>Laminar: developed and developing flow joined as in the VDI Heat Atlas G1. Turbulent from Re 4000: Gnielinski
     * with its entrance factor 1 + (d/L)^(2/3). Between them a cubic in Re that meets both ends' values and slopes (the
     * published bridge, Gnielinski 2013, is straight). Continuous with its slope, and rising with Re.
     *
     * @param re               Reynolds number, 0 or more
     * @param pr               Prandtl number, 0.5 to 2000
     * @param boreOverLength   d/L of the pipe, 0 (long) to 1
     */
    public static double pipe(double re, double pr, double boreOverLength) {
        if (re <= LAMINAR_END) {
            return laminar(re, pr, boreOverLength);
        }
        if (re >= TURBULENT_BEGIN) {
            return turbulent(re, pr, boreOverLength);
        }
        double h = 1;
        double width = TURBULENT_BEGIN - LAMINAR_END;
        double low = laminar(LAMINAR_END, pr, boreOverLength);
        double high = turbulent(TURBULENT_BEGIN, pr, boreOverLength);
        double leaving = width * (low - laminar(LAMINAR_END - h, pr, boreOverLength)) / h;
        double joining = width * (turbulent(TURBULENT_BEGIN + h, pr, boreOverLength) - high) / h;
        double t = (re - LAMINAR_END) / width;
        double rise = high - low;
        return low + t * (leaving + t * (3 * rise - 2 * leaving - joining + t * (leaving + joining - 2 * rise)));
    }

    /** Mean laminar Nusselt number, wall of one temperature, developed or not. VDI Heat Atlas (2010) G1 eq. 4 and 5. */
    public static double laminar(double re, double pr, double boreOverLength) {
        double entrance = 1.615 * Math.cbrt(re * pr * boreOverLength) - 0.7;
        return Math.cbrt(cube(LAMINAR_CONSTANT_TEMPERATURE) + cube(0.7) + cube(entrance));
    }

    private static double turbulent(double re, double pr, double boreOverLength) {
        return gnielinski(re, pr) * (1 + Math.cbrt(boreOverLength * boreOverLength));
    }

    /**
     * Cylinder across the flow, Re·Pr over 0.2, film properties. Churchill and Bernstein, J. Heat Transfer 99 (1977)
     * 300.
     */
    public static double churchillBernstein(double re, double pr) {
        return 0.3
                + 0.62
                        * Math.sqrt(re)
                        * Math.cbrt(pr)
                        / Math.sqrt(Math.sqrt(1 + Math.pow(0.4 / pr, 2.0 / 3)))
                        * Math.pow(1 + Math.pow(re / 282000, 5.0 / 8), 4.0 / 5);
    }

    /** Cylinder across the flow, Re 1 to 1e6, Pr 0.7 to 500, free-stream properties. Zukauskas, Adv. Heat Transfer 8
     *  (1972) 93. @param prSurface Prandtl number at the wall */
    public static double zukauskas(double re, double pr, double prSurface) {
        double c = re < 40 ? 0.75 : re < 1e3 ? 0.51 : re < 2e5 ? 0.26 : 0.076;
        double m = re < 40 ? 0.4 : re < 1e3 ? 0.5 : re < 2e5 ? 0.6 : 0.7;
        double n = pr <= 10 ? 0.37 : 0.36;
        return c * Math.pow(re, m) * Math.pow(pr, n) * Math.sqrt(Math.sqrt(pr / prSurface));
    }

    /** Mean over a plate along the flow: laminar 0.664 Re^1/2 Pr^1/3 or mixed (0.037 Re^4/5 - 871) Pr^1/3, whichever is
     *  more; Re to 1e8, Pr over 0.6. Incropera et al. (2007) eq. 7.30 and 7.38. */
    public static double plate(double re, double pr) {
        return Math.cbrt(pr) * Math.max(0.664 * Math.sqrt(re), 0.037 * Math.pow(re, 0.8) - 871);
    }

    private static double cube(double x) {
        return x * x * x;
    }
}
