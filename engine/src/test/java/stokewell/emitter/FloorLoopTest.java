package stokewell.emitter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;

class FloorLoopTest {

    /** EN 1264-2: 100 W/m² at 9 K, the limit of an occupied floor. */
    @Test
    void nineKelvinIsAHundredWatts() {
        assertThat(FloorLoop.surfaceHeat(9)).isCloseTo(100, within(0.1));
        assertThat(FloorLoop.surfaceHeat(-9)).isCloseTo(-100, within(0.1));
        assertThat(FloorLoop.surfaceHeat(0)).isZero();
    }

    /** By hand: 200 mm spacing, 20 mm pipe in concrete of 1.8: 0.2 ln(0.2/(π 0.02))/(2 π 1.8) = 0.02047. */
    @Test
    void constrictionByHand() {
        assertThat(FloorLoop.constriction(0.2, 0.02, 1.8)).isCloseTo(0.02047, within(1e-5));
        assertThat(FloorLoop.resistance(0.2, 0.02, 0.016, 0.38, 1.8, 1000))
                .isCloseTo(0.02047 + 0.2 * Math.log(1.25) / (2 * Math.PI * 0.38) + 0.2 / (Math.PI * 16), within(1e-5));
    }

    @Test
    void closerPipesResistLess() {
        assertThat(FloorLoop.resistance(0.1, 0.02, 0.016, 0.38, 1.8, 1000))
                .isLessThan(FloorLoop.resistance(0.3, 0.02, 0.016, 0.38, 1.8, 1000));
    }

    /** The method's own film term is of the size of h about 1000 W/(m² K) in an ordinary loop. */
    @Test
    void turbulentFilmIsOfTheUsualSize() {
        double r = FloorLoop.turbulentFilm(0.2, 0.016, 0.12 / 16, 80);
        assertThat(0.2 / (Math.PI * 0.016 * r)).isBetween(400.0, 4000.0);
    }

    @Test
    void waterCannotGiveMoreThanItBrings() {
        assertThat(FloorLoop.conductance(20, 0.1, 50)).isLessThan(50);
        assertThat(FloorLoop.conductance(20, 0.1, 1e9)).isCloseTo(200, withinPercentage(0.01));
        assertThat(FloorLoop.conductance(20, 0.1, 0)).isZero();
    }
}
