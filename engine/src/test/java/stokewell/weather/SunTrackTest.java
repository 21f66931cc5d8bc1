package stokewell.weather;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The quick sun against the exact one, at moments of a year drawn by lot, from the equator to near the pole. */
class SunTrackTest {

    private static final double NEAR = Math.toRadians(0.004);

    @Test
    void aYearOfSunFromItsNoonsIsThatOfTheFormula() {
        LocalDateTime from = LocalDateTime.of(2023, 9, 1, 0, 30);
        Random lot = new Random(7);
        for (double latitude : new double[] {0, 23, -38, 55, 78, 89.9}) {
            Site site = new Site(Math.toRadians(latitude), Math.toRadians(-160), -9 * 3600, 20);
            var track = new SunTrack(from, 365 * 86400.0, site);
            for (int k = 0; k < 300; k++) {
                long second = lot.nextInt(365 * 86400);
                SunPosition exact = SunPosition.at(from.plusSeconds(second), site);
                assertThat(apart(track.at(second), exact)).isLessThan(NEAR);
            }
        }
    }

    @Test
    void oneDayIsAsGood() {
        LocalDateTime from = LocalDateTime.of(2024, 2, 29, 0, 0);
        Site site = new Site(Math.toRadians(45), Math.toRadians(8), 3600, 250);
        var track = new SunTrack(from, 86400, site);
        for (int second = 0; second <= 86400; second += 1800) {
            assertThat(apart(track.at(second), SunPosition.at(from.plusSeconds(second), site)))
                    .isLessThan(NEAR);
        }
    }

    /** Angle between two directions, rad. */
    private static double apart(SunPosition a, SunPosition b) {
        double x = Math.sin(a.zenith()) * Math.cos(a.azimuth()) - Math.sin(b.zenith()) * Math.cos(b.azimuth());
        double y = Math.sin(a.zenith()) * Math.sin(a.azimuth()) - Math.sin(b.zenith()) * Math.sin(b.azimuth());
        double z = Math.cos(a.zenith()) - Math.cos(b.zenith());
        return Math.sqrt(x * x + y * y + z * z);
    }
}
