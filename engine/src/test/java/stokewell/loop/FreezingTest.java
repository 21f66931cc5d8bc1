package stokewell.loop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class FreezingTest {

    /**
     * Eight metres of 22 mm pipe under 13 mm foam at −22 °C from 15 °C, 2.3 W/K, 2.5 kg: 40 minutes to 0 °C and a further 4.7
     * hours to solid ice, by hand.
     */
    @Test
    void theOutdoorRunFreezesWithinTheNight() {
        double mass = 8 * Math.PI / 4 * 0.02 * 0.02 * 999;
        assertThat(mass).isCloseTo(2.5, within(0.02));
        assertThat(Freezing.timeToZero(mass * 4190, 2.3, 15, -22) / 60).isCloseTo(40, within(1.0));
        assertThat(Freezing.timeToSolid(mass, 8, 2.3, -22) / 3600).isCloseTo(4.7, within(0.1));
    }

    @Test
    void nothingFreezesAboveZero() {
        assertThat(Freezing.timeToZero(1e4, 2, 15, 1)).isInfinite();
        assertThat(Freezing.timeToIce(0.5, 2, 5, 2, 0)).isInfinite();
        assertThat(Freezing.timeToZero(1e4, 2, 0, -5)).isZero();
    }

    /** Without resistance of its own, ice grows as heat leaves: m h φ / (UA ΔT). */
    @Test
    void firstIceGrowsAsHeatLeaves() {
        double lumped = 0.01 * 2.5 * Freezing.FUSION / (2.3 * 22);
        assertThat(Freezing.timeToIce(0.01, 2.5, 8, 2.3, -22)).isCloseTo(lumped, withinPercentage(0.1));
    }

    @Property
    void moreIceTakesLonger(@ForAll @DoubleRange(min = 0, max = 0.99) double share) {
        assertThat(Freezing.timeToIce(share + 0.01, 2.5, 8, 2.3, -10))
                .isGreaterThan(Freezing.timeToIce(share, 2.5, 8, 2.3, -10));
    }
}
