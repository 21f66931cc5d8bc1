package stokewell.matter;

/**
 * Air of rooms and weather.
 *
 * <p>Density is that of an ideal gas; viscosity (Sutherland) and conductivity are those of the US Standard Atmosphere
 * 1976; specific heat is that of the ideal mixture, fitted by NASA's polynomials. Range 200 to 1500 K. Conductivities
 * in other tables differ from this one by up to 2.5 %.
 *
 * <p>Temperatures in K, pressures in Pa.
 */
public final class Air {

    /** Specific gas constant of dry air, J/(kg K). */
    public static final double R = 287.055;

    /** Molar mass of water over that of dry air. */
    public static final double VAPOUR_RATIO = 0.621945;

    /** Mass shares of dry air; argon is counted apart, its specific heat is 520.3 J/(kg K) at any temperature. */
    private static final double N2_SHARE = 0.7552;

    private static final double O2_SHARE = 0.2314;
    private static final double CO2_SHARE = 0.0006;
    private static final double ARGON_SHARE = 0.0128;
    private static final double ARGON_HEAT = 520.3;

    private Air() {}

    /** Density of dry air at one standard atmosphere, kg/m3. @param t K */
    public static double density(double t) {
        return density(t, Water.ATMOSPHERE);
    }

    /** Density of dry air, kg/m3. @param t K @param p Pa */
    public static double density(double t, double p) {
        return p / (R * t);
    }

    /** Density of moist air, kg/m3. @param t K @param p total, Pa @param vapourPressure its water's share, Pa */
    public static double density(double t, double p, double vapourPressure) {
        return (p - (1 - VAPOUR_RATIO) * vapourPressure) / (R * t);
    }

    /** Isobaric specific heat of dry air, J/(kg K). @param t K, 200 to 3500 */
    public static double specificHeat(double t) {
        return N2_SHARE * Gas.N2.molarHeat(t) / Gas.N2.molarMass
                + O2_SHARE * Gas.O2.molarHeat(t) / Gas.O2.molarMass
                + CO2_SHARE * Gas.CO2.molarHeat(t) / Gas.CO2.molarMass
                + ARGON_SHARE * ARGON_HEAT;
    }

    /** Dynamic viscosity, Pa s; Sutherland's form, US Standard Atmosphere 1976 eq. 51. @param t K, 200 to 1500 */
    public static double viscosity(double t) {
        return 1.458e-6 * t * Math.sqrt(t) / (t + 110.4);
    }

    /** Thermal conductivity, W/(m K); US Standard Atmosphere 1976 eq. 53. @param t K, 200 to 1500 */
    public static double conductivity(double t) {
        return 2.64638e-3 * t * Math.sqrt(t) / (t + 245.4 * Math.pow(10, -12 / t));
    }

    /** Prandtl number. @param t K */
    public static double prandtl(double t) {
        return viscosity(t) * specificHeat(t) / conductivity(t);
    }

    /** Water that saturated air holds, kg per kg of dry air. @param t K, below boiling at p @param p Pa */
    public static double saturationHumidityRatio(double t, double p) {
        return humidityRatio(saturationVapourPressure(t), p);
    }

    /** Water in air, kg per kg of dry air. @param vapourPressure Pa, below p @param p Pa */
    public static double humidityRatio(double vapourPressure, double p) {
        return VAPOUR_RATIO * vapourPressure / (p - vapourPressure);
    }

    /** Vapour pressure of air whose dew point is known, Pa. @param dewPoint K */
    public static double vapourPressure(double dewPoint) {
        return saturationVapourPressure(dewPoint);
    }

    /** Vapour pressure, Pa. @param t K @param relativeHumidity over liquid, 0 to 1 */
    public static double vapourPressure(double t, double relativeHumidity) {
        return relativeHumidity * saturationVapourPressure(t);
    }

    /**
     * Saturation vapour pressure over liquid water, Pa, also below freezing as weather stations report it: IF97 above
     * 0 °C, below it Magnus's form (WMO-No. 8) joined at 0 °C.
     *
     * @param t K, 223 to 647
     */
    public static double saturationVapourPressure(double t) {
        if (t >= 273.15) {
            return If97.saturationPressure(t);
        }
        double celsius = t - 273.15;
        return If97.saturationPressure(273.15) * Math.exp(17.62 * celsius / (243.12 + celsius));
    }
}
