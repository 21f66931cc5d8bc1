package stokewell.matter;

/** The standard atmosphere below 11 km: ICAO Doc 7488 / ISO 2533 / US Standard Atmosphere 1976. */
public final class Atmosphere {

    private static final double SEA_LEVEL_PRESSURE = 101325;
    private static final double SEA_LEVEL_TEMPERATURE = 288.15;
    private static final double LAPSE = 0.0065;

    private Atmosphere() {}

    /** Pressure, Pa. @param altitude geopotential height over the sea, m, -2000 to 11000 */
    public static double pressure(double altitude) {
        return SEA_LEVEL_PRESSURE * Math.pow(1 - 2.25577e-5 * altitude, 5.25588);
    }

    /** Temperature, K. @param altitude geopotential height over the sea, m, -2000 to 11000 */
    public static double temperature(double altitude) {
        return SEA_LEVEL_TEMPERATURE - LAPSE * altitude;
    }
}
