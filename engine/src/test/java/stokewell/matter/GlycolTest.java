package stokewell.matter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GlycolTest {

    /** Lange's Handbook of Chemistry, 15th ed., table 5.13: per cent by volume, density over water's at 15.6 °C,
     *  freezing point. Glycol 1.040 over water at 15.6 °C turns volume into mass. Table and fit differ
     *  by up to 1.2 K, at both ends; handbooks differ as much among themselves. */
    @ParameterizedTest(name = "{0} % by volume")
    @CsvSource({"15, 1.012, -3.9", "20, 1.017, -6.7", "30, 1.024, -12.8", "40, 1.032, -20.6", "50, 1.040, -33.3"})
    void freezingPointAndDensityAreThoseOfTheHandbook(double percent, double gravity, double celsius) {
        double w = percent / 100 * 1.040 / gravity;
        assertThat(Glycol.freezingPoint(w) - 273.15).isCloseTo(celsius, within(1.2));
        assertThat(Glycol.density(w, 288.75) / Water.density(288.75)).isCloseTo(gravity, withinPercentage(0.4));
    }

    @ParameterizedTest(name = "at {0} °C")
    @CsvSource({"10", "30", "60", "90"})
    void withoutGlycolItIsNearlyWater(double celsius) {
        double t = celsius + 273.15;
        assertThat(Glycol.density(0, t)).isCloseTo(Water.density(t), withinPercentage(0.1));
        assertThat(Glycol.specificHeat(0, t)).isCloseTo(Water.specificHeat(t), withinPercentage(0.5));
        assertThat(Glycol.conductivity(0, t)).isCloseTo(Water.conductivity(t), withinPercentage(2));
        assertThat(Glycol.viscosity(0, t)).isCloseTo(Water.viscosity(t), withinPercentage(4));
    }

    @Test
    void theMiddleOfTheFitIsItsConstantTerms() {
        double t = 273.15 + 32.7083;
        assertThat(Glycol.density(0.307031, t)).isCloseTo(1018, within(1e-6));
        assertThat(Glycol.specificHeat(0.307031, t)).isCloseTo(3882, within(1e-6));
        assertThat(Glycol.viscosity(0.307031, t)).isCloseTo(1e-3 * Math.exp(0.6837), withinPercentage(1e-6));
    }

    @Test
    void moreGlycolFreezesLaterFlowsThickerAndCarriesLess() {
        for (double w = 0; w < 0.59; w += 0.02) {
            assertThat(Glycol.freezingPoint(w + 0.01)).isLessThan(Glycol.freezingPoint(w));
            assertThat(Glycol.viscosity(w + 0.01, 300)).isGreaterThan(Glycol.viscosity(w, 300));
            assertThat(Glycol.conductivity(w + 0.01, 300)).isLessThan(Glycol.conductivity(w, 300));
        }
        assertThat(Glycol.specificHeat(0.5, 320)).isLessThan(Glycol.specificHeat(0.2, 320));
    }
}
