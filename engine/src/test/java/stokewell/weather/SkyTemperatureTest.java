package stokewell.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class SkyTemperatureTest {

    /** Saturated air's dew point is its temperature; 20 °C at half the humidity gives 9.3 °C (psychrometric tables). */
    @Test
    void dewPointMatchesTheTables() {
        assertThat(SkyTemperature.dewPoint(280, 1)).isCloseTo(280, within(1e-9));
        assertThat(SkyTemperature.dewPoint(293.15, 0.5) - 273.15).isCloseTo(9.3, within(0.1));
    }

    @Test
    void infraredOfABlackSkyGivesItsTemperature() {
        double irradiance = SkyTemperature.STEFAN_BOLTZMANN * Math.pow(260, 4);
        assertThat(SkyTemperature.fromInfrared(irradiance)).isCloseTo(260, within(1e-9));
    }

    /** By hand at a dew point of 0 °C, 1000 hPa and 6 h: emissivity 0.711, so 283.15 K * 0.711^(1/4) = 260.0 K. */
    @Test
    void clearSkyIsBerdahlAndMartin() {
        assertThat(SkyTemperature.fromAir(283.15, 273.15, 100000, 6, 0)).isCloseTo(260.005, within(0.05));
    }

    @Test
    void cloudWarmsTheSkyAndNeverAboveTheAir() {
        double last = 0;
        for (double cloud = 0; cloud <= 1; cloud += 0.1) {
            double sky = SkyTemperature.fromAir(270, 268, 95000, 3, cloud);
            assertThat(sky).isGreaterThan(last).isLessThanOrEqualTo(270);
            last = sky;
        }
    }
}
