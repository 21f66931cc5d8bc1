package stokewell.transfer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Incropera: Incropera, DeWitt, Bergman and Lavine, Fundamentals of Heat and Mass Transfer, 6th ed. (2007). Books
 * round: 1 %.
 */
class ForcedTest {

    /** Check values of the open library ht; and by recomputation at the low end and at Lienhard's example 7.3. */
    @Test
    void gnielinskiIsToTheDigit() {
        assertThat(Forced.gnielinski(1e5, 1.2, 0.0185)).isCloseTo(254.62682749359632, withinPercentage(1e-7));
        assertThat(Forced.gnielinski(2300, 0.6, 0.05)).isCloseTo(6.864094528, withinPercentage(1e-7));
        assertThat(Forced.gnielinski(412000, 3.61, 0.0136)).isCloseTo(1476.226, withinPercentage(1e-4));
    }

    /** Check values of the open library ht. */
    @Test
    void dittusBoelterIsToTheDigit() {
        assertThat(Forced.dittusBoelter(1e5, 1.2, true)).isCloseTo(247.40036409, withinPercentage(1e-7));
        assertThat(Forced.dittusBoelter(1e5, 1.2, false)).isCloseTo(242.93059274, withinPercentage(1e-7));
    }

    /** Recomputed; five digits. */
    @ParameterizedTest
    @CsvSource({"1e4, 0.031480", "1e5, 0.017992", "1e6, 0.011626"})
    void smoothPipeFrictionIsPetukhovs(double re, double f) {
        assertThat(Forced.petukhovFriction(re)).isCloseTo(f, within(1e-6));
    }

    /** Textbooks: 3.66 and 4.36. */
    @Test
    void developedLaminarFlowHasOneNusseltNumber() {
        assertThat(Forced.pipe(500, 4)).isCloseTo(3.66, withinPercentage(0.5));
        assertThat(Forced.LAMINAR_CONSTANT_FLUX).isCloseTo(4.36, within(0.005));
    }

    /** Incropera example 8.4: solar tube 60 mm, 0.01 kg/s from 20 to 80 °C by 2000 W/m2 (its inputs from memory; Re,
     *  length and wall temperature as printed). */
    @Test
    void solarTubeWallStandsFortyKelvinOverItsWater() {
        double re = 4 * 0.01 / (Math.PI * 0.06 * 352e-6);
        assertThat(re).isCloseTo(603, withinPercentage(0.2));
        double length = 0.01 * 4181 * 60 / (Math.PI * 0.06 * 2000);
        assertThat(length).isCloseTo(6.65, withinPercentage(0.2));
        double h = Forced.LAMINAR_CONSTANT_FLUX * 0.670 / 0.06;
        assertThat(80 + 2000 / h).isCloseTo(121, within(0.5));
    }

    /** Incropera example 8.6: duct air at Re 20 385, cooled, Pr 0.698 (from memory). */
    @Test
    void ductAirIsThatOfTheExample() {
        assertThat(Forced.dittusBoelter(20385, 0.698, false)).isCloseTo(57.9, withinPercentage(0.5));
    }

    /** Incropera example 7.4: cylinder of 12.7 mm in air of 10 m/s. */
    @Test
    void cylinderInCrossflowIsThatOfTheExample() {
        assertThat(Forced.zukauskas(7992, 0.70, 0.69)).isCloseTo(50.5, withinPercentage(1));
        double nu = Forced.churchillBernstein(6071, 0.70);
        assertThat(nu).isCloseTo(40.6, withinPercentage(0.3));
        assertThat(nu * 0.030 / 0.0127).isCloseTo(96.0, withinPercentage(0.3));
    }

    /** Incropera example 7.5: tank of 0.11 m in air of 23 m/s. */
    @Test
    void wideCylinderInCrossflowIsThatOfTheExample() {
        double re = 23 * 0.11 / 14.56e-6;
        assertThat(re).isCloseTo(173760, withinPercentage(0.01));
        double nu = Forced.churchillBernstein(re, 0.712);
        assertThat(nu).isCloseTo(316, withinPercentage(0.3));
        assertThat(nu * 0.0252 / 0.11).isCloseTo(72.4, withinPercentage(0.3));
    }

    @Property(tries = 500)
    void pipeNeitherJumpsNorFallsWithReynolds(
            @ForAll @DoubleRange(min = 1, max = 5.5) double exponent,
            @ForAll @DoubleRange(min = 0.6, max = 100) double pr,
            @ForAll @DoubleRange(min = 0, max = 0.1) double boreOverLength) {
        double re = Math.pow(10, exponent);
        double ratio = Forced.pipe(re * 1.0001, pr, boreOverLength) / Forced.pipe(re, pr, boreOverLength);
        assertThat(ratio).isBetween(1 - 1e-12, 1.001);
    }

    @ParameterizedTest
    @CsvSource({"2300", "4000"})
    void theBridgeMeetsBothEndsWithTheirSlopes(double re) {
        for (double pr : new double[] {0.7, 3, 30}) {
            double below = Forced.pipe(re, pr, 0.02) - Forced.pipe(re - 0.5, pr, 0.02);
            double above = Forced.pipe(re + 0.5, pr, 0.02) - Forced.pipe(re, pr, 0.02);
            assertThat(above).isCloseTo(below, withinPercentage(1));
        }
    }

    @Test
    void shortPipesTakeMoreHeatThanLongOnes() {
        assertThat(Forced.pipe(1000, 4, 0.05)).isGreaterThan(Forced.pipe(1000, 4, 0.001));
        assertThat(Forced.pipe(20000, 4, 0.05)).isGreaterThan(Forced.pipe(20000, 4));
        assertThat(Forced.pipe(20000, 4)).isEqualTo(Forced.gnielinski(20000, 4));
    }

    /** Incropera eq. 7.30: 0.664 Re^1/2 Pr^1/3; and the mixed form past Re 5e5. */
    @Test
    void platesAreLaminarThenMixed() {
        assertThat(Forced.plate(1e5, 0.7)).isCloseTo(0.664 * Math.sqrt(1e5) * Math.cbrt(0.7), within(1e-9));
        assertThat(Forced.plate(1e6, 0.7)).isCloseTo((0.037 * Math.pow(1e6, 0.8) - 871) * Math.cbrt(0.7), within(1e-9));
    }

    /** Incropera example 11.1: cooling water at Re 14 050, Pr 4.85 (from memory), heated: Nu 90. */
    @Test
    void coolingWaterIsThatOfTheExample() {
        assertThat(Forced.dittusBoelter(14050, 4.85, true)).isCloseTo(90, withinPercentage(1));
    }
}
