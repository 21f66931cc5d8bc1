package stokewell.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;
import stokewell.matter.Water;
import stokewell.transfer.Boiling;

class FlashTest {

    private static final double AIR = 101325;
    private static final double COLD = 283.15;

    private static Flash of(double hot, double inflow) {
        return Flash.of(12, 0.3, 0.004, hot, inflow, COLD, AIR);
    }

    /** 12 kg of steel from 500 C to 100 C give 2.304 MJ; a kilogram from 10 C to steam takes 2257 + 377 kJ: 0.875 kg. */
    @Test
    void allTheHeatOfTheMetalGoesIntoSteam() {
        assertThat(of(773.15, 0.5).steam()).isCloseTo(0.875, withPercentage(1.5));
        assertThat(Flash.most(12, 773.15, COLD, AIR)).isCloseTo(0.875, withPercentage(0.5));
    }

    @Test
    void itIsNoFasterThanTheCriticalFluxAndNoFasterThanTheWaterComes() {
        double critical = Boiling.criticalFlux(373.15) * 0.3;
        assertThat(of(773.15, 5).peakHeat()).isLessThanOrEqualTo(critical * 1.0001);
        assertThat(of(773.15, 5).peakHeat()).isGreaterThan(0.5 * critical);
        assertThat(of(773.15, 0.01).lasts()).isGreaterThan(of(773.15, 0.5).lasts());
    }

    /** Zuber and Berenson for water at one atmosphere: 18.9 kW/m2 (Incropera, example 10.1 and equation 10.7). */
    @Test
    void theLeastFluxOfFilmBoiling() {
        double latent = Water.latentHeat(373.15);
        assertThat(Flash.leastFlux(373.15, latent)).isCloseTo(18900, withPercentage(2));
    }

    @Test
    void theBoilingCurveRisesFallsAndRises() {
        double latent = Water.latentHeat(373.15);
        double critical = Boiling.criticalFlux(373.15);
        double least = Flash.leastFlux(373.15, latent);
        double before = 0;
        for (double over = 1; over < Math.cbrt(critical / 130); over += 0.5) {
            double q = Flash.flux(over, critical, least, latent, 373.15);
            assertThat(q).isGreaterThan(before);
            before = q;
        }
        assertThat(Flash.flux(60, critical, least, latent, 373.15)).isLessThan(critical);
        assertThat(Flash.flux(119, critical, least, latent, 373.15))
                .isLessThan(Flash.flux(60, critical, least, latent, 373.15));
        assertThat(Flash.flux(600, critical, least, latent, 373.15))
                .isGreaterThan(Flash.flux(200, critical, least, latent, 373.15));
    }

    @Test
    void handWarmMetalFlashesNothing() {
        Flash f = of(323.15, 0.5);
        assertThat(f.steam()).isZero();
        assertThat(f.peak()).isZero();
    }
}
