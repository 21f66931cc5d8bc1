package stokewell.transfer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/**
 * Incropera: Incropera, DeWitt, Bergman and Lavine, Fundamentals of Heat and Mass Transfer, 6th ed. (2007). Books
 * round: 1 %.
 */
class ConvectionTest {

    /** Incropera example 9.2: firebox window 0.71 x 1.02 m at 232 °C in a room of 23 °C. */
    @Test
    void fireScreenLosesAKilowatt() {
        double ra = Convection.rayleigh(2.5e-3, 232 - 23, 0.71, 26.4e-6, 38.3e-6);
        assertThat(ra).isCloseTo(1.813e9, withinPercentage(0.2));
        double nu = Convection.verticalPlate(ra, 0.69);
        assertThat(nu).isCloseTo(147.15, withinPercentage(0.1));
        double h = nu * 33.8e-3 / 0.71;
        assertThat(h).isCloseTo(7.005, withinPercentage(0.1));
        assertThat(h * 0.71 * 1.02 * 209).isCloseTo(1060, withinPercentage(0.1));
    }

    /** Incropera example 9.3: warm-air duct 0.75 x 0.3 m at 45 °C in air of 15 °C. */
    @Test
    void warmAirDuctLosesTwoHundredAndFortySixWattsAMetre() {
        double side = Convection.rayleigh(3.3e-3, 30, 0.3, 16.2e-6, 22.9e-6);
        assertThat(side).isCloseTo(7.07e7, withinPercentage(0.3));
        double sides = Convection.verticalPlateLaminar(side, 0.71) * 0.0265 / 0.3;
        double level = Convection.rayleigh(3.3e-3, 30, 0.375, 16.2e-6, 22.9e-6);
        double top = Convection.plateFacingUp(level) * 0.0265 / 0.375;
        double bottom = Convection.plateFacingDown(level) * 0.0265 / 0.375;
        assertThat(sides).isCloseTo(4.23, withinPercentage(0.3));
        assertThat(top).isCloseTo(5.48, withinPercentage(0.3));
        assertThat(bottom).isCloseTo(2.07, withinPercentage(0.3));
        assertThat((2 * sides * 0.3 + (top + bottom) * 0.75) * 30).isCloseTo(246, withinPercentage(0.5));
    }

    /** Incropera example 9.4: steam pipe of 0.1 m at 165 °C, emissivity 0.85, in a room of 23 °C. */
    @Test
    void steamPipeLosesByBothWays() {
        double ra = Convection.rayleigh(2.725e-3, 142, 0.1, 22.8e-6, 32.8e-6);
        assertThat(ra).isCloseTo(5.07e6, withinPercentage(0.2));
        double h = Convection.horizontalCylinder(ra, 0.697) * 0.0313 / 0.1;
        assertThat(h).isCloseTo(7.23, withinPercentage(0.5));
        assertThat(h * Math.PI * 0.1 * 142).isCloseTo(322.5, withinPercentage(0.5));
        assertThat(Radiation.flux(0.85, 438.15, 296.15) * Math.PI * 0.1).isCloseTo(441.0, withinPercentage(0.3));
    }

    /** Check values of the open library ht (Caleb Bell): Pr 0.69, Gr 2.63e9. */
    @Test
    void churchillAndChuAreToTheDigit() {
        double ra = 0.69 * 2.63e9;
        assertThat(Convection.verticalPlate(ra, 0.69)).isCloseTo(147.16185223770603, withinPercentage(1e-7));
        assertThat(Convection.horizontalCylinder(ra, 0.69)).isCloseTo(139.13493970073597, withinPercentage(1e-7));
    }

    /** McAdams (1954), Lloyd and Moran (1974). */
    @Test
    void levelPlatesFollowMcAdams() {
        assertThat(Convection.plateFacingUp(1e6)).isCloseTo(17.08, within(0.005));
        assertThat(Convection.plateFacingDown(1e6)).isCloseTo(8.54, within(0.005));
        assertThat(Convection.plateFacingUp(1e9)).isCloseTo(150, within(1e-9));
    }

    /** The window of example 9.2 with this engine's own air: other tables of air, 3 %. */
    @Test
    void coefficientsInAirAreThoseOfTheExamples() {
        assertThat(Convection.verticalPlateInAir(505.15, 296.15, 0.71)).isCloseTo(7.0, withinPercentage(3));
        assertThat(Convection.horizontalCylinderInAir(438.15, 296.15, 0.1)).isCloseTo(7.23, withinPercentage(3));
        assertThat(Convection.horizontalPlateInAir(318.15, 288.15, 0.375, true)).isCloseTo(5.48, withinPercentage(3));
        assertThat(Convection.horizontalPlateInAir(318.15, 288.15, 0.375, false))
                .isCloseTo(2.07, withinPercentage(3));
    }

    @Test
    void aColdFaceUpIsAHotFaceDown() {
        assertThat(Convection.horizontalPlateInAir(280, 300, 0.4, true))
                .isCloseTo(Convection.horizontalPlateInAir(300, 280, 0.4, false), within(1e-9));
    }

    @Test
    void thinAirOfMountainsCarriesLess() {
        assertThat(Convection.verticalPlateInAir(340, 293, 1, 79495))
                .isLessThan(Convection.verticalPlateInAir(340, 293, 1));
    }

    @Property(tries = 200)
    void noCorrelationJumpsOrFallsWithRayleigh(@ForAll @DoubleRange(min = 3, max = 11) double exponent) {
        double ra = Math.pow(10, exponent);
        double more = ra * 1.001;
        assertThat(Convection.verticalPlate(more, 0.71) / Convection.verticalPlate(ra, 0.71))
                .isBetween(1.0, 1.001);
        assertThat(Convection.plateFacingUp(more) / Convection.plateFacingUp(ra))
                .isBetween(1.0, 1.001);
        assertThat(Convection.plateFacingDown(more) / Convection.plateFacingDown(ra))
                .isBetween(1.0, 1.001);
        assertThat(Convection.horizontalCylinder(more, 0.71) / Convection.horizontalCylinder(ra, 0.71))
                .isBetween(1.0, 1.001);
    }

    @Test
    void withoutADifferenceTheCoefficientIsFinite() {
        assertThat(Convection.verticalPlateInAir(293.15, 293.15, 1))
                .isPositive()
                .isLessThan(1);
        assertThat(Convection.horizontalCylinderInAir(293.15, 293.15, 0.02))
                .isPositive()
                .isLessThan(3);
    }
}
