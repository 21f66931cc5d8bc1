package stokewell.fire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DraftTest {

    private static final double SEA_LEVEL = 101325;
    private static final double PSI = 6894.757;
    private static final double INCH_OF_WATER = 249.089;

    /** Babcock and Wilcox, Steam: 100 ft, 60 and 500 °F, air-like gas, 14.7 and 10 psi: 0.67 and 0.45 in. of water, the second cut off. */
    @ParameterizedTest
    @CsvSource({"14.7, 0.67", "10, 0.45"})
    void theStackOfTheBoilerMakersBook(double psi, double inches) {
        double pull = Draft.pull(30.48, 288.706, 533.15, Draft.AIR, psi * PSI);
        assertThat(pull / INCH_OF_WATER).isCloseTo(inches, within(0.01));
    }

    /** calculator.academy: 15 m, 30 and 40 °C, 1.292 kg/m³ taken as the density outdoors: 6.07 Pa. */
    @Test
    void aBarelyWarmStack() {
        double warm = 1.292;
        double warmer = 1.292 * 303.15 / 313.15;
        assertThat(Draft.pull(15, warm, warmer)).isCloseTo(6.07, withinPercentage(1));
    }

    /** Worked from g H (ρ − ρ) with R of air 287. */
    @ParameterizedTest
    @CsvSource({"5, 0, 200, 287.055, 26.8", "5, 0, 200, 300, 28.4", "5, 15, 200, 300, 25.1", "8, -10, 160, 300, 44.1"})
    void shedChimneys(double height, double outdoors, double gas, double r, double pascal) {
        assertThat(Draft.pull(height, outdoors + 273.15, gas + 273.15, r, SEA_LEVEL))
                .isCloseTo(pascal, withinPercentage(1));
    }

    /** Rules of the trade: 5 m, 200 °C, 0 °C: 27 Pa; 4 m, 120 °C, +10 °C: 14 Pa. */
    @ParameterizedTest
    @CsvSource({"5, 0, 200, 27", "4, 10, 120, 14"})
    void theTradesRules(double height, double outdoors, double gas, double pascal) {
        assertThat(Draft.pull(height, outdoors + 273.15, gas + 273.15, Draft.AIR, SEA_LEVEL))
                .isCloseTo(pascal, within(0.6));
    }

    @Test
    void aColdChimneyOnAWarmDayPullsDown() {
        assertThat(Draft.pull(6, 298, 283, Draft.AIR, SEA_LEVEL)).isNegative();
    }

    @Test
    void slopeByGasIsTheDerivative() {
        double difference =
                (Draft.pull(6, 273, 400.01, 300, SEA_LEVEL) - Draft.pull(6, 273, 399.99, 300, SEA_LEVEL)) / 0.02;
        assertThat(Draft.pullByGas(6, 400, 300, SEA_LEVEL)).isCloseTo(difference, withinPercentage(1e-4));
    }

    /** Heat lost over the wall is heat lost by the gas: UA (mean − around) = mc (entry − top). */
    @Property
    void theMeanIsTheOneThatLosesTheHeat(
            @ForAll @DoubleRange(min = 0.01, max = 100) double ua, @ForAll @DoubleRange(min = 1, max = 50) double mc) {
        double mean = Draft.meanTemperature(500, 270, ua, mc);
        double top = Draft.topTemperature(500, 270, ua, mc);
        assertThat(ua * (mean - 270)).isCloseTo(mc * (500 - top), withinPercentage(1e-7));
        assertThat(top).isBetween(270.0, mean);
    }

    @Test
    void theEndsOfCooling() {
        assertThat(Draft.meanTemperature(500, 270, 0, 10)).isEqualTo(500);
        assertThat(Draft.topTemperature(500, 270, 0, 0)).isEqualTo(500);
        assertThat(Draft.meanTemperature(500, 270, 5, 0)).isEqualTo(270);
        assertThat(Draft.topTemperature(500, 270, 5, 0)).isEqualTo(270);
    }

    /** Bernoulli: 10 Pa through 10 cm² at 0.6 and 1.2 kg/m³ is 0.6 · 0.001 · √24 = 2.939 g/s. */
    @Test
    void anAirSlotPassesWhatBernoulliSays() {
        double flow = Draft.massFlow(10, Draft.openingResistance(1e-3, 0.6, 1.2));
        assertThat(flow).isCloseTo(0.6e-3 * Math.sqrt(24), withinPercentage(0.003));
        assertThat(Draft.speed(flow, 1e-3, 1.2)).isCloseTo(2.449, within(0.001));
    }

    @Test
    void aShutInletPassesNothing() {
        assertThat(Draft.massFlow(20, Draft.openingResistance(0, 0.6, 1.2))).isZero();
    }

    @Test
    void resistancesInLineAdd() {
        double flue = Draft.resistance(2 + Draft.wallZeta(0.04, 6, 0.15), Math.PI / 4 * 0.15 * 0.15, 0.75);
        double slot = Draft.openingResistance(2e-3, 0.6, 1.25);
        double flow = Draft.massFlow(20, flue + slot);
        assertThat(flow * flow * flue + flow * flow * slot).isCloseTo(20, withinPercentage(0.01));
    }

    @Property
    void flowIsOddRisesAndKnowsItsSlope(@ForAll @DoubleRange(min = -40, max = 40) double pull) {
        double here = Draft.massFlow(pull, 5e5);
        double h = 1e-5;
        double slope = (Draft.massFlow(pull + h, 5e5) - Draft.massFlow(pull - h, 5e5)) / (2 * h);
        assertThat(Draft.massFlow(-pull, 5e5)).isEqualTo(-here);
        assertThat(Draft.massFlow(pull + 0.01, 5e5)).isGreaterThan(here);
        assertThat(Draft.massFlowByPull(pull, 5e5)).isCloseTo(slope, within(1e-7 + 1e-4 * slope));
    }
}
