package stokewell.matter;

/**
 * Liquid water as it stands in stores and pipes, and the steam it makes.
 *
 * <p>Sources: IAPWS R7-97(2012) through {@link If97}; viscosity R12-08 and conductivity R15-11, both without the
 * critical enhancement (below 1 % here); surface tension R1-76(2014). One-argument functions of liquid take it at one
 * standard atmosphere: between 1 and 3 bar the difference is below 0.02 %. Range 273.15 to 423.15 K; from 253 K it goes
 * on smoothly as supercooled liquid, above boiling as superheated liquid.
 *
 * <p>Temperatures in K, pressures in Pa. These are full formulations, not tables: for hot loops draw a {@link Curve}.
 */
public final class Water {

    /** One standard atmosphere, Pa: the pressure of the one-argument functions. */
    public static final double ATMOSPHERE = 101325;

    private static final double CRITICAL_TEMPERATURE = 647.096;
    private static final double CRITICAL_DENSITY = 322;

    // spotless:off
    /** R12-08 table 1. */
    private static final double[] DILUTE_VISCOSITY = {1.67752, 2.20462, 0.6366564, -0.241605};

    /** R12-08 table 2: rows powers of (1/T - 1), columns powers of (density - 1). */
    private static final double[][] DENSE_VISCOSITY = {
        {5.20094e-1, 2.22531e-1, -2.81378e-1, 1.61913e-1, -3.25372e-2, 0, 0},
        {8.50895e-2, 9.99115e-1, -9.06851e-1, 2.57399e-1, 0, 0, 0},
        {-1.08374, 1.88797, -7.72479e-1, 0, 0, 0, 0},
        {-2.89555e-1, 1.26613, -4.89837e-1, 0, 6.98452e-2, 0, -4.35673e-3},
        {0, 0, -2.57040e-1, 0, 0, 8.72102e-3, 0},
        {0, 1.20573e-1, 0, 0, 0, 0, -5.93264e-4}
    };

    /** R15-11 table 1. */
    private static final double[] DILUTE_CONDUCTIVITY = {
        2.443221e-3, 1.323095e-2, 6.770357e-3, -3.454586e-3, 4.096266e-4
    };

    /** R15-11 table 2: rows powers of (1/T - 1), columns powers of (density - 1). */
    private static final double[][] DENSE_CONDUCTIVITY = {
        {1.60397357, -0.646013523, 0.111443906, 0.102997357, -0.0504123634, 0.00609859258},
        {2.33771842, -2.78843778, 1.53616167, -0.463045512, 0.0832827019, -0.00719201245},
        {2.19650529, -4.54580785, 3.55777244, -1.40944978, 0.275418278, -0.0205938816},
        {-1.21051378, 1.60812989, -0.621178141, 0.0716373224, 0, 0},
        {-2.7203370, 4.57586331, -3.18369245, 1.1168348, -0.19268305, 0.012913842}
    };
    // spotless:on

    private Water() {}

    /** Density of liquid, kg/m3. @param t K */
    public static double density(double t) {
        return density(t, ATMOSPHERE);
    }

    /** Density of liquid, kg/m3. @param t K @param p Pa, up to 100 MPa */
    public static double density(double t, double p) {
        return 1 / If97.liquidVolume(p, t);
    }

    /** Isobaric specific heat of liquid, J/(kg K). @param t K */
    public static double specificHeat(double t) {
        return If97.liquidSpecificHeat(ATMOSPHERE, t);
    }

    /** Specific enthalpy of liquid, J/kg, on the zero of IF97 (saturated liquid at 0.01 °C). @param t K */
    public static double enthalpy(double t) {
        return If97.liquidEnthalpy(ATMOSPHERE, t);
    }

    /** Cubic expansion coefficient of liquid, 1/K; negative below 4 °C. @param t K */
    public static double expansion(double t) {
        return If97.liquidExpansion(ATMOSPHERE, t);
    }

    /** Dynamic viscosity of liquid, Pa s. @param t K */
    public static double viscosity(double t) {
        return viscosity(t, density(t));
    }

    /**
     * Dynamic viscosity of water or steam, Pa s; R12-08 without critical enhancement. Density 0 is the dilute gas.
     *
     * @param t K, 253 to 1173
     * @param density kg/m3
     */
    public static double viscosity(double t, double density) {
        double tr = t / CRITICAL_TEMPERATURE;
        double dilute = 100 * Math.sqrt(tr) / polynomial(DILUTE_VISCOSITY, 1 / tr);
        return 1e-6 * dilute * dense(DENSE_VISCOSITY, tr, density);
    }

    /** Thermal conductivity of liquid, W/(m K). @param t K */
    public static double conductivity(double t) {
        return conductivity(t, density(t));
    }

    /**
     * Thermal conductivity of water or steam, W/(m K); R15-11 without critical enhancement. Density 0 is the dilute
     * gas.
     *
     * @param t K, 273 to 1173
     * @param density kg/m3
     */
    public static double conductivity(double t, double density) {
        double tr = t / CRITICAL_TEMPERATURE;
        double dilute = Math.sqrt(tr) / polynomial(DILUTE_CONDUCTIVITY, 1 / tr);
        return 1e-3 * dilute * dense(DENSE_CONDUCTIVITY, tr, density);
    }

    /** Prandtl number of liquid. @param t K */
    public static double prandtl(double t) {
        double density = density(t);
        return viscosity(t, density) * specificHeat(t) / conductivity(t, density);
    }

    /** Surface tension against its vapour, N/m; IAPWS R1-76(2014). @param t K, 248 to 647 */
    public static double surfaceTension(double t) {
        double tau = 1 - t / CRITICAL_TEMPERATURE;
        return 0.2358 * Math.pow(tau, 1.256) * (1 - 0.625 * tau);
    }

    /** Saturation pressure over liquid, Pa. @param t K */
    public static double saturationPressure(double t) {
        return If97.saturationPressure(t);
    }

    /** Boiling temperature, K. @param p Pa */
    public static double saturationTemperature(double p) {
        return If97.saturationTemperature(p);
    }

    /** Where water boils in the open at an altitude, m; K. */
    public static double boilingPoint(double altitude) {
        return saturationTemperature(Atmosphere.pressure(altitude));
    }

    /** Heat of vaporisation at saturation, J/kg. @param t K */
    public static double latentHeat(double t) {
        double p = If97.saturationPressure(t);
        return If97.steamEnthalpy(p, t) - If97.liquidEnthalpy(p, t);
    }

    /** Density of saturated steam, kg/m3. @param t K */
    public static double steamDensity(double t) {
        return 1 / If97.steamVolume(If97.saturationPressure(t), t);
    }

    /** Specific enthalpy of saturated steam, J/kg, on the zero of {@link #enthalpy}. @param t K */
    public static double steamEnthalpy(double t) {
        return If97.steamEnthalpy(If97.saturationPressure(t), t);
    }

    private static double dense(double[][] rows, double tr, double density) {
        double delta = density / CRITICAL_DENSITY;
        double inverse = 1 / tr - 1;
        double sum = 0;
        for (int i = rows.length - 1; i >= 0; i--) {
            sum = sum * inverse + polynomial(rows[i], delta - 1);
        }
        return Math.exp(delta * sum);
    }

    private static double polynomial(double[] c, double x) {
        double sum = 0;
        for (int i = c.length - 1; i >= 0; i--) {
            sum = sum * x + c[i];
        }
        return sum;
    }
}
