package stokewell.weather;

/**
 * A plane that the sun shines on.
 *
 * @param tilt from the horizontal, rad: 0 faces the zenith, pi/2 is a wall
 * @param azimuth of the outward normal, clockwise from north, rad: pi/2 east, pi south, 3 pi/2 west
 */
public record Surface(double tilt, double azimuth) {

    public static final Surface HORIZONTAL = new Surface(0, 0);

    public Surface {
        Site.within("tilt, rad", tilt, 0, Math.PI);
        Site.within("azimuth, rad", azimuth, -2 * Math.PI, 2 * Math.PI);
    }

    /** Cosine of the angle between the normal and the sun, negative when the sun is behind. */
    double cosineOfIncidence(SunPosition sun) {
        return Math.cos(tilt) * Math.cos(sun.zenith())
                + Math.sin(tilt) * Math.sin(sun.zenith()) * Math.cos(sun.azimuth() - azimuth);
    }
}
