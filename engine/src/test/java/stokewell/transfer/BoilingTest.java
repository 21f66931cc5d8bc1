package stokewell.transfer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stokewell.matter.Water;

/**
 * Incropera: Incropera, DeWitt, Bergman and Lavine, Fundamentals of Heat and Mass Transfer, 6th ed. (2007). Books
 * round: 1 %.
 */
class BoilingTest {

    /** Incropera example 10.1: copper pan of 0.3 m at 118 °C. */
    @Test
    void copperPanBoilsNinetyKilogramsAnHour() {
        double q = Boiling.rohsenow(18, 4217, 279e-6, 2257e3, 957.9, 0.5956, 58.9e-3, 1.76, Boiling.POLISHED_COPPER, 1);
        assertThat(q).isCloseTo(836e3, withinPercentage(0.5));
        double area = Math.PI / 4 * 0.3 * 0.3;
        assertThat(q * area).isCloseTo(59.1e3, withinPercentage(0.5));
        assertThat(q * area / 2257e3 * 3600).isCloseTo(94.3, withinPercentage(0.5));
    }

    /** The same example: 1.26 MW/m2 with 0.149, 1.11 with Zuber's. */
    @Test
    void criticalFluxIsThatOfTheExample() {
        assertThat(Boiling.criticalFlux(2257e3, 957.9, 0.5956, 58.9e-3, 0.149)).isCloseTo(1.26e6, withinPercentage(1));
        assertThat(Boiling.criticalFlux(2257e3, 957.9, 0.5956, 58.9e-3, Boiling.ZUBER))
                .isCloseTo(1.11e6, withinPercentage(1));
    }

    /** Check value of the open library ht: h 3723.655267067467 W/(m2 K) at 4.9 K. */
    @Test
    void rohsenowIsToTheDigit() {
        double prandtl = 4217 * 2.79e-4 / 0.680;
        double q = Boiling.rohsenow(4.9, 4217, 2.79e-4, 2.257e6, 957.854, 0.595593, 0.0589, prandtl, 0.011, 1.26);
        assertThat(q / 4.9).isCloseTo(3723.655267067467, withinPercentage(1e-7));
    }

    /**
     * Recomputed with IF97 properties, 0.131 and 0.149; at 1 atm, 2 and 3 bar. The liquid here stays that of 1 atm:
     * 0.3 %.
     */
    @ParameterizedTest
    @CsvSource({"101325, 1.108, 1.261", "200000, 1.454, 1.654", "300000, 1.701, 1.935"})
    void criticalFluxOfWaterRisesWithPressure(double pascal, double mega, double widePlate) {
        assertThat(Boiling.criticalFlux(Water.saturationTemperature(pascal)))
                .isCloseTo(1e6 * mega, withinPercentage(0.3));
        assertThat(Boiling.criticalFlux(Water.saturationTemperature(pascal)) * 0.149 / Boiling.ZUBER)
                .isCloseTo(1e6 * widePlate, withinPercentage(0.3));
    }

    /**
     * Own properties of water against the example's: viscosity, tension and Prandtl number differ by up to 1 %, cubed.
     */
    @Test
    void waterBoilsAsInTheExample() {
        assertThat(Boiling.rohsenow(18, 373.15, Boiling.POLISHED_COPPER)).isCloseTo(836e3, withinPercentage(4));
    }
}
