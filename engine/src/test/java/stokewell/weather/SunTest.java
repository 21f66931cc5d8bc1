package stokewell.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import net.e175.klaus.solarpositioning.DeltaT;
import net.e175.klaus.solarpositioning.Grena3;
import org.junit.jupiter.api.Test;

class SunTest {

    private static final Site GOLDEN = site(39.742476, -105.1786, -7, 1830.14);

    static Site site(double latitude, double longitude, double hours, double altitude) {
        return new Site(Math.toRadians(latitude), Math.toRadians(longitude), hours * 3600, altitude);
    }

    /**
     * Example of Reda and Andreas, NREL/TP-560-34302, appendix A.5: zenith 50.11162, azimuth 194.34024 degrees. The
     * numbers are quoted from memory. There the zenith holds refraction (about 0.02 degrees), here it does not.
     */
    @Test
    void sunStandsWhereTheSpaReportSays() {
        SunPosition sun = SunPosition.at(LocalDateTime.of(2003, 10, 17, 12, 30, 30), GOLDEN);

        assertThat(Math.toDegrees(sun.zenith())).isCloseTo(50.11162, within(0.025));
        assertThat(Math.toDegrees(sun.azimuth())).isCloseTo(194.34024, within(0.001));
    }

    /** Grena, Solar Energy 86 (2012) 1323, states 0.01 degrees for 2010 to 2110. */
    @Test
    void twoAlgorithmsAgreeOnTheSun() {
        for (int hour = 0; hour < 8760; hour += 37) {
            var moment = LocalDateTime.of(2024, 1, 1, 0, 0).plusHours(hour);
            var other = Grena3.calculateSolarPosition(
                    moment.atZone(ZoneOffset.ofHours(-7)), 39.742476, -105.1786, DeltaT.estimate(moment.toLocalDate()));
            var sun = SunPosition.at(moment, GOLDEN);
            assertThat(Math.toDegrees(sun.zenith())).isCloseTo(other.zenithAngle(), within(0.02));
        }
    }

    @Test
    void sunStaysDownAtMidwinterInsideThePolarCircleAndUpAtMidsummer() {
        Site sodankyla = site(67.37, 26.63, 2, 180);
        for (int hour = 0; hour < 24; hour++) {
            var winter = SunPosition.at(LocalDateTime.of(2023, 12, 22, hour, 0), sodankyla);
            var summer = SunPosition.at(LocalDateTime.of(2023, 6, 21, hour, 0), sodankyla);
            assertThat(winter.zenith()).isGreaterThan(Math.PI / 2);
            assertThat(summer.zenith()).isLessThan(Math.PI / 2);
        }
    }

    /** Noon height is 90 degrees less latitude plus or less the tilt of the Earth's axis, 23.44 degrees. */
    @Test
    void noonHeightFollowsTheSeason() {
        Site greenwich = site(51.4779, 0, 0, 46);
        assertThat(noonHeight(LocalDateTime.of(2023, 6, 21, 12, 2), greenwich)).isCloseTo(61.96, within(0.05));
        assertThat(noonHeight(LocalDateTime.of(2023, 12, 22, 11, 58), greenwich))
                .isCloseTo(15.09, within(0.05));
    }

    private static double noonHeight(LocalDateTime moment, Site site) {
        return 90 - Math.toDegrees(SunPosition.at(moment, site).zenith());
    }

    /** The pieces of Erbs et al. (1982) eq. 1 meet within the rounding of their coefficients. */
    @Test
    void diffuseShareHasNoSteps() {
        assertThat(Irradiance.diffuseShare(0)).isEqualTo(1);
        assertThat(Irradiance.diffuseShare(0.22 + 1e-12)).isCloseTo(Irradiance.diffuseShare(0.22), within(5e-4));
        assertThat(Irradiance.diffuseShare(0.80 + 1e-12)).isCloseTo(Irradiance.diffuseShare(0.80), within(5e-4));
        double last = 1;
        for (double k = 0; k <= 0.75; k += 0.01) {
            assertThat(Irradiance.diffuseShare(k)).isLessThanOrEqualTo(last + 1e-3);
            last = Irradiance.diffuseShare(k);
        }
    }

    /** Earth is nearest about 3 January, 3.3 % above the mean, and farthest about 4 July. */
    @Test
    void sunAboveTheAirFollowsTheDistance() {
        assertThat(Irradiance.extraterrestrial(3)).isCloseTo(1361.1 * 1.034, within(3.0));
        assertThat(Irradiance.extraterrestrial(185)).isCloseTo(1361.1 * 0.967, within(3.0));
    }

    /** 1098 cos z exp(-0.057 / cos z) with the sun overhead: 1037 W/m2. */
    @Test
    void clearSkyIsHaurwitz() {
        assertThat(Irradiance.clearSky(1)).isCloseTo(1037.2, within(0.1));
        assertThat(Irradiance.clearSky(0)).isZero();
        assertThat(Irradiance.clearSky(1e-9)).isCloseTo(0, within(1e-9));
    }

    @Test
    void cloudAndItsInverseUndoEachOther() {
        for (double cloud = 0; cloud <= 1; cloud += 0.05) {
            assertThat(Irradiance.cloudFor(Irradiance.throughCloud(cloud))).isCloseTo(cloud, within(1e-12));
        }
    }

    @Test
    void levelPlaneGetsTheGlobalWhateverTheSplit() {
        for (double share = 0; share <= 1; share += 0.1) {
            assertThat(Irradiance.onPlane(400, 400 * share, 0.5, 0.5, 1361, 0)).isCloseTo(400, within(1e-9));
            assertThat(Irradiance.onPlane(20, 20 * share, 0.01, 0.01, 1361, 0)).isCloseTo(20, within(1e-9));
        }
    }

    /** With no beam a wall sees half the sky and half the ground: 0.5 + 0.5 * 0.2. */
    @Test
    void wallUnderCloudSeesHalfTheSky() {
        assertThat(Irradiance.onPlane(100, 100, 0.5, 0.8, 1361, Math.PI / 2)).isCloseTo(60, within(1e-9));
    }

    @Test
    void southWallBeatsTheNorthWallAndTheEastWallTheMorning() {
        var light = new Sunlight(
                LocalDateTime.of(2023, 1, 15, 0, 30),
                3600,
                24,
                GOLDEN,
                List.of(
                        new Surface(Math.PI / 2, Math.PI),
                        new Surface(Math.PI / 2, 0),
                        new Surface(Math.PI / 2, Math.PI / 2)));
        double[] global = light.shareOfClearSky(1);
        double[][] on = light.onSurfaces(global, light.diffuse(global));
        assertThat(on[0][12]).isGreaterThan(600).isLessThan(1200);
        assertThat(on[1][12]).isLessThan(150);
        assertThat(on[2][8]).isGreaterThan(3 * on[2][15]);
    }

    @Test
    void measuredBeamLeavesTheRestDiffuse() {
        var light = new Sunlight(LocalDateTime.of(2023, 6, 15, 0, 30), 3600, 24, GOLDEN, List.of());
        double[] global = light.shareOfClearSky(1);
        double[] beam = new double[24];
        assertThat(light.diffuse(global, beam)).containsExactly(global);
    }
}
