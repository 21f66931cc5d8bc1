package stokewell.transfer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;

class RadiationTest {

    /** 500 and 300 K, emissivities 0.8 and 0.5, recomputed with 5.67e-8: 0.01 % from the constant. */
    @Test
    void greyPlatesExchangeByBothEmissivities() {
        assertThat(Radiation.plates(0.8, 500, 0.5, 300)).isCloseTo(1370.9, withinPercentage(0.02));
        assertThat(Radiation.plates(0.8, 300, 0.5, 500)).isCloseTo(-1370.9, withinPercentage(0.02));
    }

    /** Incropera et al. (2007) example 13.5: tube of 20 mm at 77 K, emissivity 0.02, in one of 50 mm at 300 K, 0.05
     *  (inputs from memory): gains 0.50 W/m. */
    @Test
    void concentricTubesExchangeByTheInnerArea() {
        double effective = Radiation.exchange(0.02, 0.05, 20.0 / 50);
        assertThat(Radiation.flux(effective, 77, 300) * Math.PI * 0.02).isCloseTo(-0.499, within(0.002));
    }

    @Test
    void theCoefficientTimesTheDifferenceIsTheFlux() {
        double h = Radiation.coefficient(0.9, 350, 293);
        assertThat(h * 57).isCloseTo(0.9 * Radiation.SIGMA * (Math.pow(350, 4) - Math.pow(293, 4)), within(1e-9));
        assertThat(h).isBetween(6.0, 8.0);
        assertThat(Radiation.exchange(0.7, 0.3, 0)).isCloseTo(0.7, within(1e-12));
    }
}
