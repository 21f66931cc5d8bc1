package stokewell.transfer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Incropera: Incropera et al., Fundamentals of Heat and Mass Transfer, 6th ed. (2007). C&J: Carslaw and Jaeger (1959).
 */
class ConductionTest {

    private static final double YEAR = 365 * 86400.0;
    private static final double DAY = 86400;

    /** Incropera example 3.9, very long rod of 5 mm at 100 °C in 25 °C, film 100; printed 8.3, 5.6 and 1.6 W. */
    @ParameterizedTest
    @CsvSource({"398, 8.31", "180, 5.59", "14, 1.56"})
    void longRodsLoseByTheRootOfTheirConductivity(double k, double watt) {
        assertThat(Conduction.longRod(100, k, 0.005, 75)).isCloseTo(watt, withinPercentage(0.3));
    }

    /** tanh(mL)/mL. */
    @Test
    void finsGrowUselessTowardsTheirTips() {
        assertThat(Conduction.finEfficiency(1)).isCloseTo(0.761594, within(1e-6));
        assertThat(Conduction.finEfficiency(0.5)).isCloseTo(0.924234, within(1e-6));
        assertThat(Conduction.finEfficiency(0)).isEqualTo(1);
        assertThat(Conduction.finEfficiency(0.99e-4)).isCloseTo(Conduction.finEfficiency(1.01e-4), within(1e-9));
    }

    /** A pin by its corrected length against the exact adiabatic-plus-tip solution, Incropera table 3.4 case A; 1 %. */
    @Test
    void pinsCarryTheHeatOfTheExactFin() {
        double h = 20;
        double k = 50;
        double d = 0.01;
        double length = 0.1;
        double m = Math.sqrt(4 * h / (k * d));
        double tip = h / (m * k);
        double exact = Math.sqrt(h * Math.PI * d * k * Math.PI * d * d / 4)
                * (Math.sinh(m * length) + tip * Math.cosh(m * length))
                / (Math.cosh(m * length) + tip * Math.sinh(m * length));
        double q = Conduction.pinEfficiency(h, k, d, length) * h * Math.PI * d * (length + d / 4);
        assertThat(q).isCloseTo(exact, withinPercentage(1));
    }

    /**
     * Incropera example 3.5: tube of 5 mm radius, k 0.055, h 5; m K/W for 0 to 40 mm of insulation, critical radius 11
     * mm.
     */
    @ParameterizedTest
    @CsvSource({"0, 6.366", "0.005, 5.189", "0.010, 5.301", "0.020, 5.931", "0.040, 7.066"})
    void aThinTubeLosesMostWithALittleInsulation(double thickness, double resistance) {
        assertThat(1 / Conduction.pipeLoss(0.005, thickness, 0.055, 5)).isCloseTo(resistance, within(0.001));
        assertThat(Conduction.criticalRadius(0.055, 5)).isCloseTo(0.011, within(1e-9));
    }

    /** Three-quarter inch copper, 80 to 20 °C, 25 mm of 0.04 W/(m K), film 9: 11.59 W/m; recomputed, 1 %. */
    @Test
    void laggedPipeLosesTwelveWattsAMetre() {
        assertThat(Conduction.pipeLoss(0.022225 / 2, 0.025, 0.04, 9) * 60).isCloseTo(11.59, withinPercentage(1));
    }

    @Test
    void layersAddAndMustMatch() {
        assertThat(Conduction.layers(new double[] {0.1, 0.2}, new double[] {0.04, 2.0}))
                .isCloseTo(2.6, within(1e-12));
        assertThatThrownBy(() -> Conduction.layers(new double[1], new double[2]))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(Conduction.sphere(1, 1.001, 0.04)).isCloseTo(0.001 / (0.04 * 4 * Math.PI), withinPercentage(0.2));
    }

    /**
     * ISO 13370: 2.2, 3.2 and 4.2 m a year; ISO 13786: concrete 0.144 and softwood 0.067 m a day. Recomputed, last
     * digit.
     */
    @Test
    void swingsReachTheDepthsOfTheStandards() {
        assertThat(Conduction.penetrationDepth(1.5, 3.0e6, YEAR)).isCloseTo(2.24, within(0.006));
        assertThat(Conduction.penetrationDepth(2.0, 2.0e6, YEAR)).isCloseTo(3.17, within(0.006));
        assertThat(Conduction.penetrationDepth(3.5, 2.0e6, YEAR)).isCloseTo(4.19, within(0.006));
        assertThat(Conduction.penetrationDepth(1.5, 3.0e6, DAY)).isCloseTo(0.117, within(0.0006));
        assertThat(Conduction.penetrationDepth(1.8, 2.4e6, DAY)).isCloseTo(0.1436, within(0.0001));
        assertThat(Conduction.penetrationDepth(0.13, 0.8e6, DAY)).isCloseTo(0.0669, within(0.0001));
    }

    /** DLMF chapter 7. */
    @Test
    void errorFunctionIsToTheDigit() {
        assertThat(Conduction.erfc(0.5)).isCloseTo(0.479500122186953, within(1e-15));
        assertThat(Conduction.erfc(1)).isCloseTo(0.157299207050285, within(1e-15));
        assertThat(Conduction.erfc(3)).isCloseTo(2.209049699858544e-5, withinPercentage(1e-11));
        assertThat(Conduction.erf(-0.7)).isEqualTo(-Conduction.erf(0.7));
        assertThat(Conduction.erf(2.5)).isCloseTo(0.999593047982555, within(1e-15));
        assertThat(Conduction.erfc(-2.5)).isCloseTo(1.999593047982555, within(1e-15));
        assertThat(Conduction.erfc(2 - 1e-12)).isCloseTo(Conduction.erfc(2 + 1e-12), withinPercentage(1e-9));
    }

    /** Incropera example 5.6: soil of 20 °C, surface -15 °C for 60 days: 0 °C stands at 0.68 m. 0.5 %. */
    @Test
    void frostReachesSixtyEightCentimetres() {
        double t = -15 + 35 * (1 - Conduction.halfSpaceStep(0.677, 1.379e-7, 60 * DAY));
        assertThat(t).isCloseTo(0, within(0.15));
    }

    /** C&J 2.4: k 1.8, alpha 0.7e-6, 20 K, 1 h: 404.6 W/m2. */
    @Test
    void steppedSlabTakesFourHundredWatts() {
        assertThat(Conduction.halfSpaceStepFlux(20, 1.8, 0.7e-6, 3600)).isCloseTo(404.6, within(0.05));
    }

    /** C&J 2.7 recomputed: h 10, the same solid; 1e-5. */
    @ParameterizedTest
    @CsvSource({"0, 3600, 0.25064", "0.05, 3600, 0.09326", "0.1, 21600, 0.22261"})
    void aFilmDelaysTheStep(double depth, double time, double share) {
        assertThat(Conduction.halfSpaceFilm(depth, 1.8, 0.7e-6, time, 10)).isCloseTo(share, within(6e-6));
    }

    @Test
    void aPerfectFilmIsAStep() {
        assertThat(Conduction.halfSpaceFilm(0.05, 1.8, 0.7e-6, 3600, 1e7))
                .isCloseTo(Conduction.halfSpaceStep(0.05, 0.7e-6, 3600), within(1e-5));
    }

    /** C&J 2.9: 1000 W/m2 for an hour lifts the surface by 31.47 K. */
    @Test
    void aSteadyFluxLiftsTheSurfaceByTheRootOfTime() {
        assertThat(Conduction.halfSpaceFlux(0, 1.8, 0.7e-6, 3600, 1000)).isCloseTo(31.47, within(0.006));
        assertThat(Conduction.halfSpaceFlux(0.5, 1.8, 0.7e-6, 3600, 1000)).isCloseTo(0, within(1e-6));
    }

    /** C&J 3.3 recomputed; 1e-5. */
    @ParameterizedTest(name = "Fo {0}")
    @CsvSource({
        "0.05, 0.99687, 0.74769",
        "0.1, 0.94931, 0.64318",
        "0.2, 0.77231, 0.49591",
        "0.5, 0.37078, 0.23605",
        "1.0, 0.10798, 0.06874"
    })
    void steppedSlabIsTheSeries(double fourier, double centre, double mean) {
        assertThat(Conduction.slabStep(0, fourier)).isCloseTo(centre, within(6e-6));
        assertThat(Conduction.slabStepMean(fourier)).isCloseTo(mean, within(6e-6));
        assertThat(Conduction.slabStep(1, fourier)).isCloseTo(0, within(1e-12));
    }

    /** Incropera example 5.4: pipe wall of 40 mm, Bi 0.313, Fo 5.64, from -20 °C in oil of 60 °C (start and oil from
     *  memory): by exact roots 43.02 °C inside, -7318 W/m2, -2.725e7 J/m of a pipe of 1 m bore. */
    @Test
    void pipeWallWarmsAsInTheExample() {
        double insideLeft = Conduction.slabFilm(0, 5.64, 0.313);
        assertThat(60 - 80 * insideLeft).isCloseTo(43.02, within(0.05));
        assertThat(500 * -80 * Conduction.slabFilm(1, 5.64, 0.313)).isCloseTo(-7318, withinPercentage(0.3));
        double capacity = 7832 * 434 * Math.PI * 1.0 * 0.04;
        assertThat(-80 * capacity * (1 - Conduction.slabFilmMean(5.64, 0.313)))
                .isCloseTo(-2.725e7, withinPercentage(0.3));
    }

    @Test
    void aStrongFilmIsAStepAndAWeakOneIsLumped() {
        assertThat(Conduction.slabFilm(0, 0.3, 1e6)).isCloseTo(Conduction.slabStep(0, 0.3), within(1e-5));
        assertThat(Conduction.slabFilmMean(0.3, 1e6)).isCloseTo(Conduction.slabStepMean(0.3), within(1e-5));
        // Bi 0.001: time constant is 1/Bi in units of the Fourier number
        assertThat(Conduction.slabFilmMean(1000, 1e-3)).isCloseTo(Conduction.lumped(1, 1), within(2e-4));
        assertThat(Conduction.lumped(7, 7)).isCloseTo(0.367879, within(1e-6));
    }

    /**
     * Incropera example 5.1: bead of 0.706 mm with a time constant of 1 s, from 25 to 199 °C in gas of 200 °C: 5.2 s.
     */
    @Test
    void thermocoupleBeadFollowsInFiveSeconds() {
        assertThat(200 - 175 * Conduction.lumped(5.16, 1)).isCloseTo(199, within(0.01));
    }
}
