package stokewell.weather;

/** The temperature of a black dome that radiates as the sky does, K, and what it needs. */
public final class SkyTemperature {

    /** Stefan-Boltzmann constant, W/m2K4. Source: CODATA 2018. */
    public static final double STEFAN_BOLTZMANN = 5.670374419e-8;

    private static final double ICE = 273.15;

    private SkyTemperature() {}

    /** Sky temperature from measured infrared irradiance on the horizontal, W/m2. */
    public static double fromInfrared(double infrared) {
        return Math.pow(infrared / STEFAN_BOLTZMANN, 0.25);
    }

    /**
     * Sky temperature from the air, its moisture and clouds, K.
     *
     * @param air air temperature, K
     * @param dewPoint K, about 250 to 300
     * @param pressure Pa
     * @param hourOfDay solar or standard time, h
     * @param cloud share of the sky covered, 0 to 1
     *     <p>Sources: clear sky, Berdahl and Martin, Solar Energy 32 (1984) 663; clouds, Unsworth and Monteith,
     *     Q. J. R. Meteorol. Soc. 101 (1975) 13. Below a dew point of -25 °C the formula is held at that point.
     */
    public static double fromAir(double air, double dewPoint, double pressure, double hourOfDay, double cloud) {
        double d = Math.max(-25, dewPoint - ICE) / 100;
        double clear = 0.711
                + 0.56 * d
                + 0.73 * d * d
                + 0.013 * Math.cos(2 * Math.PI * hourOfDay / 24)
                + 0.00012 * (pressure / 100 - 1000);
        double emissivity = Math.min(1, (1 - 0.84 * cloud) * clear + 0.84 * cloud);
        return air * Math.pow(emissivity, 0.25);
    }

    /**
     * Dew point, K, from temperature (K) and relative humidity over water (0 to 1, not zero).
     *
     * <p>Source: Alduchov and Eskridge, J. Appl. Meteorology 35 (1996) 601, eq. 21; 0.4 % in vapour pressure from
     * -40 to 50 °C.
     */
    public static double dewPoint(double air, double humidity) {
        double celsius = air - ICE;
        double g = Math.log(humidity) + 17.625 * celsius / (243.04 + celsius);
        return ICE + 243.04 * g / (17.625 - g);
    }
}
