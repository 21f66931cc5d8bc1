package stokewell.matter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AirTest {

    /** Çengel, Heat Transfer, table A-15 (1 atm). Other correlations of viscosity and conductivity: 1 and 2.5 %. */
    @ParameterizedTest(name = "at {0} °C")
    @CsvSource({
        "0, 1.292, 1006, 0.02364, 1.729e-5, 0.7362",
        "20, 1.204, 1007, 0.02514, 1.825e-5, 0.7309",
        "60, 1.059, 1007, 0.02808, 2.008e-5, 0.7202",
        "100, 0.9458, 1009, 0.03095, 2.181e-5, 0.7111"
    })
    void airIsThatOfTheTextbook(double celsius, double rho, double cp, double k, double mu, double pr) {
        double t = celsius + 273.15;
        assertThat(Air.density(t)).isCloseTo(rho, withinPercentage(0.2));
        assertThat(Air.specificHeat(t)).isCloseTo(cp, withinPercentage(0.3));
        assertThat(Air.conductivity(t)).isCloseTo(k, withinPercentage(2.6));
        assertThat(Air.viscosity(t)).isCloseTo(mu, withinPercentage(1));
        assertThat(Air.prandtl(t)).isCloseTo(pr, withinPercentage(3.5));
    }

    /** The same table at 200 °C. */
    @Test
    void warmFlueAirIsThatOfTheTextbook() {
        assertThat(Air.density(473.15)).isCloseTo(0.7459, withinPercentage(0.2));
        assertThat(Air.specificHeat(473.15)).isCloseTo(1023, withinPercentage(0.3));
        assertThat(Air.conductivity(473.15)).isCloseTo(0.03779, withinPercentage(2.5));
    }

    /** Ideal gas with R 287.055 J/(kg K). */
    @Test
    void roomAirWeighsOnePointTwo() {
        assertThat(Air.density(293.15, 101325)).isCloseTo(1.2041, withinPercentage(0.02));
        assertThat(Air.density(293.15, 101325, 0)).isEqualTo(Air.density(293.15));
        assertThat(Air.density(293.15, 101325, 2000)).isLessThan(Air.density(293.15));
    }

    /** US Standard Atmosphere 1976, its formulas recomputed. */
    @ParameterizedTest
    @CsvSource({"273.15, 1.7161e-5", "293.15, 1.8134e-5", "333.15, 1.9988e-5", "373.15, 2.1734e-5", "473.15, 2.5714e-5"
    })
    void viscosityIsSutherlands(double t, double mu) {
        assertThat(Air.viscosity(t)).isCloseTo(mu, withinPercentage(0.01));
    }

    @ParameterizedTest
    @CsvSource({"293.15, 0.025718", "373.15, 0.031738", "473.15, 0.038654"})
    void conductivityIsThatOfTheStandardAtmosphere(double t, double k) {
        assertThat(Air.conductivity(t)).isCloseTo(k, withinPercentage(0.01));
    }

    /** ICAO Doc 7488 / ISO 2533, then IF97: Pa to 0.1 %, boiling point to 0.05 K. */
    @ParameterizedTest(name = "at {0} m")
    @CsvSource({
        "0, 101325, 99.974",
        "500, 95461, 98.312",
        "1000, 89875, 96.649",
        "1500, 84556, 94.983",
        "2000, 79495, 93.315",
        "2500, 74683, 91.645",
        "3000, 70109, 89.972",
        "4000, 61640, 86.619"
    })
    void waterBoilsColderOnMountains(double altitude, double pascal, double celsius) {
        assertThat(Atmosphere.pressure(altitude)).isCloseTo(pascal, withinPercentage(0.01));
        assertThat(Water.saturationTemperature(Atmosphere.pressure(altitude)) - 273.15)
                .isCloseTo(celsius, within(0.005));
    }

    /** US Standard Atmosphere 1976 by geometric height, which differs from geopotential by 0.06 % at 4 km; 0.05 %. */
    @ParameterizedTest
    @CsvSource({
        "-2000, 301.15, 127780, 1.4782",
        "0, 288.15, 101325, 1.225",
        "2000, 275.15, 79501, 1.0066",
        "4000, 262.17, 61660, 0.81935"
    })
    void theStandardAtmosphereIsMet(double altitude, double kelvin, double pascal, double density) {
        assertThat(Atmosphere.temperature(altitude)).isCloseTo(kelvin, withinPercentage(0.05));
        assertThat(Atmosphere.pressure(altitude)).isCloseTo(pascal, withinPercentage(0.05));
        assertThat(Air.density(Atmosphere.temperature(altitude), Atmosphere.pressure(altitude)))
                .isCloseTo(density, withinPercentage(0.05));
    }

    /**
     * ASHRAE Fundamentals, moist-air table at 101.325 kPa: 20 °C 0.014758 (from memory). Real-gas enhancement is 0.4
     * %.
     */
    @Test
    void saturatedRoomAirHoldsFifteenGrams() {
        assertThat(Air.saturationHumidityRatio(293.15, 101325)).isCloseTo(0.014758, withinPercentage(0.6));
    }

    @Test
    void vapourPressureOverLiquidIsSmoothThroughFreezing() {
        double step = 1e-3;
        double below = Air.saturationVapourPressure(273.15) - Air.saturationVapourPressure(273.15 - step);
        double above = Air.saturationVapourPressure(273.15 + step) - Air.saturationVapourPressure(273.15);
        assertThat(below).isCloseTo(above, withinPercentage(0.5));
        assertThat(Air.vapourPressure(285)).isEqualTo(Air.vapourPressure(285, 1));
        // WMO-No. 8 by Magnus: 286.5 Pa over liquid at -10 °C; Goff-Gratch 286.3
        assertThat(Air.saturationVapourPressure(263.15)).isCloseTo(286.5, withinPercentage(0.3));
    }
}
