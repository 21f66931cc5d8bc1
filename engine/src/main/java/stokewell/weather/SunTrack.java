package stokewell.weather;

import java.time.Duration;
import java.time.LocalDateTime;

/**
 * Where the sun stands at very many moments of a stretch. {@link SunPosition#at} takes some two hundred sines and cosines; seen
 * from the turning earth the sun moves so evenly that one position a day tells the others: declination, and hour angle less
 * the even turn, by a cubic through four noons. Within 0.004 degrees of {@link SunPosition#at}, most of it the parallax of
 * where on earth the site lies.
 */
final class SunTrack {

    private static final double DAY = 86400;
    /** Sine of a height at which the sun is down beyond doubt of rounding. */
    private static final double DOWN = -1e-6;

    private static final double TURN = 2 * Math.PI;

    private final double sinLatitude;
    private final double cosLatitude;
    /** From the moment asked about from, back to the noon of the first sample, s. */
    private final double before;

    private final double[] declination;
    private final double[] hourAngle;

    /**
     * @param from    what times are counted from, local standard time
     * @param seconds how far it must reach
     */
    SunTrack(LocalDateTime from, double seconds, Site site) {
        sinLatitude = Math.sin(site.latitude());
        cosLatitude = Math.cos(site.latitude());
        LocalDateTime noon = from.toLocalDate().minusDays(2).atTime(12, 0);
        before = Duration.between(noon, from).toMillis() / 1000.0;
        int samples = (int) Math.ceil((before + seconds) / DAY) + 3;
        declination = new double[samples];
        hourAngle = new double[samples];
        for (int i = 0; i < samples; i++) {
            SunPosition sun = SunPosition.at(noon.plusDays(i), site);
            double up = Math.cos(sun.zenith());
            double north = Math.sin(sun.zenith()) * Math.cos(sun.azimuth());
            double west = -Math.sin(sun.zenith()) * Math.sin(sun.azimuth());
            declination[i] = Math.asin(clamped(sinLatitude * up + cosLatitude * north));
            hourAngle[i] = Math.atan2(west, cosLatitude * up - sinLatitude * north);
            if (i > 0) hourAngle[i] -= TURN * Math.rint((hourAngle[i] - hourAngle[i - 1]) / TURN);
        }
    }

    private static double clamped(double sine) {
        return Math.max(-1, Math.min(1, sine));
    }

    /** Whether the sun may be up at a moment, s from what times are counted from: false only well below the horizon. */
    boolean up(double seconds) {
        double days = (before + seconds) / DAY;
        int i = Math.max(1, Math.min((int) days, declination.length - 3));
        double u = days - i;
        double d = cubic(declination, i, u);
        return sinLatitude * Math.sin(d) + cosLatitude * Math.cos(d) * Math.cos(cubic(hourAngle, i, u) + TURN * u)
                > DOWN;
    }

    /** The sun at a moment, s from what times are counted from. */
    SunPosition at(double seconds) {
        double days = (before + seconds) / DAY;
        int i = Math.max(1, Math.min((int) days, declination.length - 3));
        double u = days - i;
        double d = cubic(declination, i, u);
        double h = cubic(hourAngle, i, u) + TURN * u;
        double sin = Math.sin(d);
        double cos = Math.cos(d);
        double south = cos * Math.cos(h);
        double zenith = Math.acos(clamped(sinLatitude * sin + cosLatitude * south));
        double azimuth = Math.atan2(-cos * Math.sin(h), cosLatitude * sin - sinLatitude * south);
        return new SunPosition(zenith, azimuth < 0 ? azimuth + TURN : azimuth);
    }

    /** Lagrange's cubic through i - 1 to i + 2. */
    private static double cubic(double[] v, int i, double u) {
        return v[i - 1] * (-u * (u - 1) * (u - 2) / 6)
                + v[i] * ((u + 1) * (u - 1) * (u - 2) / 2)
                + v[i + 1] * (-(u + 1) * u * (u - 2) / 2)
                + v[i + 2] * ((u + 1) * u * (u - 1) / 6);
    }
}
