package stokewell.weather;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import net.e175.klaus.solarpositioning.DeltaT;
import net.e175.klaus.solarpositioning.SPA;

/**
 * Where the sun stands, without refraction.
 *
 * @param zenith angle from the zenith, rad
 * @param azimuth clockwise from north, rad
 */
public record SunPosition(double zenith, double azimuth) {

    /**
     * Sun seen from a site at a moment of its local standard time.
     *
     * <p>Source: Reda and Andreas, Solar Energy 76 (2004) 577, as built in the library solarpositioning.
     * Stated uncertainty 0.0003 degrees, years -2000 to 6000.
     */
    public static SunPosition at(LocalDateTime moment, Site site) {
        var zoned = moment.atZone(ZoneOffset.ofTotalSeconds((int) Math.round(site.utcOffset())));
        var sun = SPA.calculateSolarPosition(
                zoned,
                Math.toDegrees(site.latitude()),
                Math.toDegrees(site.longitude()),
                site.altitude(),
                DeltaT.estimate(moment.toLocalDate()));
        return new SunPosition(Math.toRadians(sun.zenithAngle()), Math.toRadians(sun.azimuth()));
    }
}
