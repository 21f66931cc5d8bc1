package stokewell.emitter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class FanCoilTest {

    private final FanCoil coil = FanCoil.rated(12000, 82, 20, 400, 800);

    @Test
    void theCoilGivesItsRating() {
        assertThat(coil.power(82, 20, 400, 800)).isCloseTo(12000, withinPercentage(1e-6));
    }

    /** A rule of the trade: rated at 82/20 °C, one third is left at 40/20. */
    @Test
    void aThirdIsLeftAtForty() {
        assertThat(coil.power(40, 20, 400, 800) / 12000).isCloseTo(1.0 / 3, within(0.02));
    }

    /** Kays and London: crossflow both unmixed by the usual approximation at NTU 2, C 1, effectiveness 0.615407. */
    @Test
    void effectivenessIsKaysAndLondons() {
        FanCoil plain = new FanCoil(200, 100, 100, 0.75, 0.6, 0.8);
        assertThat(plain.conductance(100, 100) / 100).isCloseTo(0.615407, within(1e-6));
    }

    @Property
    void moreAirNeverGivesLess(@ForAll @DoubleRange(min = 1, max = 800) double air) {
        assertThat(coil.conductance(air * 1.01, 800)).isGreaterThan(coil.conductance(air, 800));
        assertThat(coil.conductance(air, 800)).isLessThan(Math.min(air, 800));
    }

    @Test
    void aCoilWithoutFlowGivesNothing() {
        assertThat(coil.conductance(0, 800)).isZero();
        assertThat(coil.conductance(400, 0)).isZero();
        assertThat(coil.conductance(1e-9, 800)).isLessThan(1e-8);
    }

    @Test
    void aRatingThatCannotBeIsRefused() {
        assertThatThrownBy(() -> FanCoil.rated(30000, 82, 20, 400, 800)).hasMessageContaining("check flows");
    }
}
