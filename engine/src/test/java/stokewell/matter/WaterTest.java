package stokewell.matter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class WaterTest {

    /** Liquid at 101.325 kPa, computed apart from IF97, R12-08 and R15-11; the last printed digit. k carries the
     *  critical term that {@link Water} leaves out: 0.5 %. */
    @ParameterizedTest(name = "at {0} °C")
    @CsvSource({
        "4, 999.9754, 4.20737, 1.5673e-3, 0.56547, 0.81355, 11.66",
        "10, 999.7015, 4.19545, 1.3059e-3, 0.57878, 1.22818, 9.466",
        "20, 998.2061, 4.18479, 1.00160e-3, 0.59801, 2.33922, 7.009",
        "40, 992.2243, 4.17855, 6.5273e-4, 0.62850, 7.38443, 4.340",
        "60, 983.2106, 4.18276, 4.6604e-4, 0.65102, 19.9458, 2.994",
        "70, 977.7793, 4.18810, 4.0356e-4, 0.65978, 31.2006, 2.562",
        "80, 971.8029, 4.19552, 3.5406e-4, 0.66701, 47.4147, 2.227",
        "90, 965.3187, 4.20502, 3.1418e-4, 0.67280, 70.1824, 1.964",
        "95, 961.8951, 4.21057, 2.9709e-4, 0.67518, 84.6089, 1.853"
    })
    void liquidIsThatOfTheSteamTables(
            double celsius, double rho, double cp, double mu, double k, double psat, double pr) {
        double t = celsius + 273.15;
        assertThat(Water.density(t)).isCloseTo(rho, withinPercentage(1e-5));
        assertThat(Water.specificHeat(t)).isCloseTo(1e3 * cp, withinPercentage(2e-4));
        assertThat(Water.viscosity(t)).isCloseTo(mu, withinPercentage(0.02));
        assertThat(Water.conductivity(t)).isCloseTo(k, withinPercentage(0.5));
        assertThat(Water.saturationPressure(t)).isCloseTo(1e3 * psat, withinPercentage(1e-3));
        assertThat(Water.prandtl(t)).isCloseTo(pr, withinPercentage(0.5));
    }

    /** Liquid at 3 bar, computed apart; see NOTICE beside the file. */
    @ParameterizedTest(name = "at {0} °C")
    @CsvFileSource(resources = "water-at-3-bar.csv", numLinesToSkip = 1)
    void liquidAtThreeBarIsThatOfTheSteamTables(
            double celsius, double mpa, double rho, double cp, double h, double mu, double k, double psat) {
        double t = celsius + 273.15;
        double p = 1e6 * mpa;
        assertThat(Water.density(t, p)).isCloseTo(rho, withinPercentage(1e-5));
        assertThat(If97.liquidSpecificHeat(p, t)).isCloseTo(1e3 * cp, withinPercentage(2e-5));
        assertThat(If97.liquidEnthalpy(p, t)).isCloseTo(1e3 * h, within(0.02));
        assertThat(Water.viscosity(t, rho)).isCloseTo(1e-6 * mu, withinPercentage(0.02));
        assertThat(Water.conductivity(t, rho)).isCloseTo(1e-3 * k, withinPercentage(0.5));
        assertThat(Water.saturationPressure(t)).isCloseTo(1e6 * psat, withinPercentage(1e-3));
    }

    /** Recomputed from IF97; to 1 %. */
    @ParameterizedTest
    @CsvSource({"20, 2.066e-4", "60, 5.231e-4", "80, 6.417e-4"})
    void expansionCoefficientIsThatOfTheSteamTables(double celsius, double beta) {
        assertThat(Water.expansion(celsius + 273.15)).isCloseTo(beta, withinPercentage(1));
    }

    @Test
    void expansionIsTheSlopeOfDensity() {
        double t = 340;
        double slope = (Water.density(t + 0.01) - Water.density(t - 0.01)) / 0.02;
        assertThat(Water.expansion(t)).isCloseTo(-slope / Water.density(t), withinPercentage(1e-4));
    }

    @Test
    void waterIsHeaviestAtFourDegrees() {
        assertThat(Water.density(277.13)).isGreaterThan(Water.density(276.1)).isGreaterThan(Water.density(278.1));
        assertThat(Water.expansion(275.15)).isNegative();
    }

    /** v2/v1 - 1 in per cent, recomputed from IF97 at one atmosphere; 0.02 points. */
    @ParameterizedTest
    @CsvSource({"10, 60, 1.677", "10, 80, 2.871", "10, 90, 3.562", "4, 95, 3.959", "20, 90, 3.407"})
    void heatedWaterGrowsAsTheTablesSay(double cold, double hot, double percent) {
        double growth = Water.density(cold + 273.15) / Water.density(hot + 273.15) - 1;
        assertThat(100 * growth).isCloseTo(percent, within(0.02));
    }

    /** "About 4 %" from 10 to 100 °C is the trade's rule (haustechnikdialog.de, SHKwissen 958). */
    @Test
    void aSystemFilledColdGrowsFourPercentToTheBoil() {
        assertThat(Water.density(283.15) / Water.density(373.15) - 1).isCloseTo(0.04, within(0.005));
    }

    /**
     * Draft of a gravity loop for a metre of height, g times the density difference, Pa; recomputed from IF97, 0.5 %.
     */
    @ParameterizedTest
    @CsvSource({
        "50, 60, 47.4",
        "60, 70, 53.3",
        "60, 80, 111.87",
        "65, 85, 117.1",
        "70, 90, 122.2",
        "40, 80, 200.3",
        "40, 90, 263.9"
    })
    void aGravityLoopHasTheHeadOfItsDensities(double cold, double hot, double head) {
        assertThat(9.80665 * (Water.density(cold + 273.15) - Water.density(hot + 273.15)))
                .isCloseTo(head, withinPercentage(0.5));
    }

    /** IF97 at one atmosphere; steam tables print 2257 kJ/kg. */
    @Test
    void oneAtmosphereBoilsAtTheTabulatedPoint() {
        double t = Water.saturationTemperature(101325);
        assertThat(t - 273.15).isCloseTo(99.9743, within(0.001));
        assertThat(Water.latentHeat(t)).isCloseTo(2256.54e3, withinPercentage(0.02));
        assertThat(Water.density(t)).isCloseTo(958.373, withinPercentage(0.01));
        assertThat(Water.steamDensity(t)).isCloseTo(0.59762, withinPercentage(0.01));
        assertThat(Water.steamEnthalpy(t) - Water.enthalpy(t)).isCloseTo(Water.latentHeat(t), within(1e-3));
    }

    /** Volume of steam over that of the water it came from, at one atmosphere; 0.1 %. */
    @ParameterizedTest
    @CsvSource({"99.974, 1603.6", "15, 1671.8", "20, 1670.3"})
    void steamTakesSixteenHundredTimesTheRoom(double celsius, double ratio) {
        double steam = Water.steamDensity(Water.saturationTemperature(101325));
        assertThat(Water.density(celsius + 273.15) / steam).isCloseTo(ratio, withinPercentage(0.1));
    }

    /** Recomputed from IF97; 0.02 %. */
    @ParameterizedTest
    @CsvSource({"20, 2453.55", "40, 2406.00", "60, 2357.69", "80, 2308.07", "100, 2256.47"})
    void latentHeatIsThatOfTheSteamTables(double celsius, double kilojoule) {
        assertThat(Water.latentHeat(celsius + 273.15)).isCloseTo(1e3 * kilojoule, withinPercentage(0.02));
    }

    /** Recomputed from IF97; digits as printed. */
    @ParameterizedTest(name = "at {0} bar")
    @CsvSource({
        "1.1, 102.292, 2250.4, 0.6453",
        "1.2, 104.784, 2243.8, 0.7001",
        "1.5, 111.350, 2226.0, 0.8625",
        "2.0, 120.212, 2201.6, 1.1290",
        "3.0, 133.525, 2163.4, 1.6507",
        "4.0, 143.613, 2133.3, 2.1627"
    })
    void pressureRaisesTheBoilingPoint(double bar, double celsius, double latent, double steam) {
        double t = Water.saturationTemperature(1e5 * bar);
        assertThat(t - 273.15).isCloseTo(celsius, within(0.001));
        assertThat(Water.latentHeat(t)).isCloseTo(1e3 * latent, withinPercentage(0.01));
        assertThat(Water.steamDensity(t)).isCloseTo(steam, withinPercentage(0.01));
    }

    /** Relief settings of 15 and 30 psi over one atmosphere; 0.1 K. */
    @ParameterizedTest
    @CsvSource({"15, 120.95", "30, 134.4"})
    void reliefSettingsHaveTheirBoilingPoints(double psig, double celsius) {
        double t = Water.saturationTemperature(101325 + psig * 6894.757);
        assertThat(t - 273.15).isCloseTo(celsius, within(0.1));
    }

    /** Share that flashes when pressure is lost to one atmosphere; recomputed, 0.02 points. */
    @ParameterizedTest
    @CsvSource({"120, 3.76", "130, 5.64"})
    void overheatedWaterFlashesWhenPressureIsLost(double celsius, double percent) {
        double boiling = Water.saturationTemperature(101325);
        double t = celsius + 273.15;
        double hot = If97.liquidEnthalpy(If97.saturationPressure(t), t);
        assertThat(100 * (hot - Water.enthalpy(boiling)) / Water.latentHeat(boiling))
                .isCloseTo(percent, within(0.02));
    }

    /** IAPWS R1-76(2014), its formula recomputed; 0.02 mN/m. */
    @ParameterizedTest
    @CsvSource({"0.01, 75.65", "20, 72.74", "60, 66.24", "80, 62.67", "100, 58.91"})
    void surfaceTensionIsTheRelease(double celsius, double milli) {
        assertThat(1e3 * Water.surfaceTension(celsius + 273.15)).isCloseTo(milli, within(0.02));
    }

    /**
     * Static head over a hot port at sea level; recomputed for water of an unstated temperature, which is worth 0.15
     * K.
     */
    @ParameterizedTest
    @CsvSource({"1, 102.53", "3, 107.15"})
    void aMetreOfWaterAboveRaisesTheBoilingPoint(double head, double celsius) {
        double p = 101325 + 9.80665 * head * Water.density(283.15);
        assertThat(Water.saturationTemperature(p) - 273.15).isCloseTo(celsius, within(0.15));
    }

    @Property(tries = 200)
    void saturationRoundTrips(@ForAll @DoubleRange(min = 274, max = 620) double t) {
        assertThat(Water.saturationTemperature(Water.saturationPressure(t))).isCloseTo(t, within(1e-7));
    }

    @Property(tries = 200)
    void enthalpyIsTheIntegralOfSpecificHeat(@ForAll @DoubleRange(min = 255, max = 420) double t) {
        assertThat((Water.enthalpy(t + 0.05) - Water.enthalpy(t - 0.05)) / 0.1)
                .isCloseTo(Water.specificHeat(t), withinPercentage(1e-4));
    }
}
