package stokewell.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stokewell.loop.PipeSize;
import stokewell.rig.Rig;
import stokewell.rig.Rigs;
import stokewell.size.Weights;

class PartsTest {

    /** The nearest bore that is sold, but none that is more than a twentieth too narrow. */
    @ParameterizedTest(name = "{0} mm is {1}")
    @CsvSource({
        "26.6, 1 in steel",
        "27, 1 in steel",
        "22, 3/4 in steel",
        "19, 3/4 in steel",
        "24, 1 in steel",
        "41, 1 1/2 in steel"
    })
    void aBoreIsBoughtAsTheNearestPipe(double bore, String name) {
        assertThat(Parts.sold(bore / 1000, PipeSize.Material.STEEL).name()).isEqualTo(name);
    }

    @Test
    void noPipeIsNamedThatIsNowhereNear() {
        assertThat(Parts.sold(0.006, PipeSize.Material.STEEL)).isNull();
        assertThat(Parts.sold(0.09, PipeSize.Material.STEEL)).isNull();
    }

    /** Loop 9 + 3 m, coil fan 9 + 9 m, floor 9 + 9 m, all of one size: 48 m and 6 + 2 + 4 x 6 = 32 elbows. */
    @Test
    void pipeOfOneSizeIsAddedUp() {
        Parts p = Parts.of(Rigs.hall());
        assertThat(p.pipes()).hasSize(1);
        assertThat(p.pipes().get(0).length()).isCloseTo(48, within(1e-9));
        assertThat(p.pipes().get(0).elbows()).isEqualTo(32);
        assertThat(p.lagging()).extracting(Parts.Lagging::length).containsExactlyInAnyOrder(45.0, 3.0);
    }

    @Test
    void aSensorThatServesTwiceIsBoughtOnce() {
        Rig hall = Rigs.hall();
        assertThat(Parts.of(hall).sensors()).hasSize(5);
    }

    /**
     * By hand: 812 L beside the header's own water; from 10 °C (999.7) to 90 °C (965.3 kg/m³) it grows by 3.56 %: 28.9 L on top
     * of the header's 20 L, more than the 5 % in all that practice keeps. The check asks the same.
     */
    @Test
    void theHeaderHasRoomForTheGrowth() {
        Rig rig = Rigs.pumped();
        double content = Weights.water(rig) - rig.loop().header().water();
        assertThat(Parts.of(rig).header())
                .isCloseTo(rig.loop().header().water() + (999.7 / 965.3 - 1) * content, within(1e-4));
        assertThat(Parts.of(rig).header()).isGreaterThan(0.05 * content);
    }

    @Test
    void aStoveWithoutWaterNeedsNoPlumbing() {
        Parts p = Parts.of(Rigs.pumped().withoutWater());
        assertThat(p.pipes()).isEmpty();
        assertThat(p.fittings()).extracting(Parts.Fitting::what).containsExactly("carbon monoxide alarm");
        assertThat(p.header()).isNaN();
    }

    @Test
    void gravityNeedsNoUnionsAndNoBreaker() {
        assertThat(Parts.of(Rigs.thermosiphon()).fittings())
                .extracting(Parts.Fitting::what)
                .doesNotContain("union", "residual-current breaker", "air filter")
                .contains("drain cock", "hot alarm", "carbon monoxide alarm");
    }
}
