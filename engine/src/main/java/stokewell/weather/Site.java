package stokewell.weather;

/**
 * Where the weather is.
 *
 * @param latitude rad, north positive
 * @param longitude rad, east positive
 * @param utcOffset local standard time less UTC, s (no daylight saving)
 * @param altitude above the sea, m
 */
public record Site(double latitude, double longitude, double utcOffset, double altitude) {

    private static final double WIDEST_OFFSET = 14 * 3600;

    public Site {
        within("latitude, rad", latitude, -Math.PI / 2, Math.PI / 2);
        within("longitude, rad", longitude, -Math.PI, Math.PI);
        within("UTC offset, s", utcOffset, -WIDEST_OFFSET, WIDEST_OFFSET);
        within("altitude, m", altitude, -450, 9000);
    }

    /** Air pressure of the standard atmosphere at the site, Pa. Source: ISO 2533:1975, troposphere. */
    public double pressure() {
        return 101325 * Math.pow(1 - 2.25577e-5 * altitude, 5.25588);
    }

    static void within(String what, double value, double low, double high) {
        if (!(value >= low && value <= high)) {
            throw new IllegalArgumentException(what + " is " + value + ", allowed " + low + " to " + high);
        }
    }
}
