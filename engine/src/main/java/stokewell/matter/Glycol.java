package stokewell.matter;

/**
 * Propylene glycol in water, without inhibitors.
 *
 * <p>Source: Melinder, Thermophysical Properties of Aqueous Solutions Used as Secondary Working Fluids, KTH Stockholm
 * 2007 (also IIR 2010): polynomials in mass fraction and temperature round 30.7031 % and 32.7083 °C. The coefficients
 * were read in two open reproductions of that table, not in the book. Range: mass fraction 0 to 0.6, from the freezing
 * point to 100 °C. At mass fraction 0 they come within 0.1 % (density), 0.5 % (specific heat), 2 % (conductivity) and 4
 * % (viscosity) of water; inhibited commercial mixtures differ from them by a few per cent.
 *
 * <p>Mass fraction is kg glycol / kg mixture; temperatures in K.
 */
public final class Glycol {

    private static final double MIDDLE_PERCENT = 30.7031;
    private static final double MIDDLE_CELSIUS = 32.7083;

    // spotless:off
    /** Rows: powers of (percent - middle). Columns: powers of (Celsius - middle). */
    private static final double[][] DENSITY = {
        {1.018e3, -5.406e-1, -2.666e-3, 1.347e-5},
        {7.604e-1, -9.450e-3, 5.541e-5, -1.343e-7},
        {-2.498e-3, 2.700e-5, -4.018e-7, 3.376e-9},
        {-1.550e-4, 2.829e-6, -7.175e-9},
        {-1.131e-6, -2.221e-8},
        {2.342e-8}
    };
    private static final double[][] SPECIFIC_HEAT = {
        {3.882e3, 2.699, -1.659e-3, -1.032e-5},
        {-1.304e1, 5.070e-2, -4.752e-5, 1.522e-6},
        {-1.598e-1, 9.534e-5, 1.167e-5, -4.870e-8},
        {3.539e-4, 3.102e-5, -2.950e-7},
        {5.000e-5, -7.135e-7},
        {-4.959e-7}
    };
    private static final double[][] CONDUCTIVITY = {
        {4.513e-1, 7.955e-4, 3.482e-8, -5.966e-9},
        {-4.795e-3, -1.678e-5, 8.941e-8, 1.493e-10},
        {2.076e-5, 1.563e-7, -4.615e-9, 9.897e-12},
        {-9.083e-8, -2.518e-9, 6.543e-11},
        {-5.952e-10, -3.605e-11},
        {2.104e-11}
    };
    /** Natural logarithm of mPa s. */
    private static final double[][] VISCOSITY = {
        {6.837e-1, -3.045e-2, 2.525e-4, -1.399e-6},
        {3.328e-2, -3.984e-4, 4.332e-6, -1.860e-8},
        {5.453e-5, -8.600e-8, -1.593e-8, -4.465e-11},
        {-3.900e-6, 1.054e-7, -1.589e-9},
        {-1.587e-8, 4.475e-10},
        {3.564e-9}
    };
    private static final double[][] FREEZING = {
        {-1.325e1}, {-6.631e-1}, {-1.094e-2}, {-2.283e-4}, {-3.409e-6}, {1.465e-8}
    };
    // spotless:on

    private Glycol() {}

    /** Density, kg/m3. @param massFraction 0 to 0.6 @param t K */
    public static double density(double massFraction, double t) {
        return polynomial(DENSITY, massFraction, t);
    }

    /** Isobaric specific heat, J/(kg K). @param massFraction 0 to 0.6 @param t K */
    public static double specificHeat(double massFraction, double t) {
        return polynomial(SPECIFIC_HEAT, massFraction, t);
    }

    /** Thermal conductivity, W/(m K). @param massFraction 0 to 0.6 @param t K */
    public static double conductivity(double massFraction, double t) {
        return polynomial(CONDUCTIVITY, massFraction, t);
    }

    /** Dynamic viscosity, Pa s. @param massFraction 0 to 0.6 @param t K */
    public static double viscosity(double massFraction, double t) {
        return 1e-3 * Math.exp(polynomial(VISCOSITY, massFraction, t));
    }

    /**
     * Temperature at which the first ice forms, K; below it is slush, not yet a solid plug.
     *
     * @param massFraction 0 to 0.6
     */
    public static double freezingPoint(double massFraction) {
        return 273.15 + polynomial(FREEZING, massFraction, 273.15);
    }

    private static double polynomial(double[][] rows, double massFraction, double t) {
        double x = 100 * massFraction - MIDDLE_PERCENT;
        double y = t - 273.15 - MIDDLE_CELSIUS;
        double sum = 0;
        for (int i = rows.length - 1; i >= 0; i--) {
            double row = 0;
            for (int j = rows[i].length - 1; j >= 0; j--) {
                row = row * y + rows[i][j];
            }
            sum = sum * x + row;
        }
        return sum;
    }
}
