package stokewell.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stokewell.rig.Rig;
import stokewell.rig.Rigs;

class HeightTest {

    /** By hand: 0.1 m + 95 % of 1.6 m = 1.62 m, 0.1 m + 5 % = 0.18 m. */
    @Test
    void portsStandAtTheirShareOfTheWater() {
        Rig rig = Rigs.pumped();
        assertThat(of(rig, "hot port")).isCloseTo(1.62, within(1e-9));
        assertThat(of(rig, "cool port")).isCloseTo(0.18, within(1e-9));
        assertThat(of(rig, "store, water's top")).isCloseTo(1.7, within(1e-9));
    }

    /** Where the rig file says nothing of the vent, practice asks 450 mm over the header's water. */
    @Test
    void theVentEndsOverTheHeader() {
        Rig rig = Rigs.pumped();
        assertThat(of(rig, "vent, open end") - of(rig, "header, cold level")).isCloseTo(0.45, within(1e-9));
    }

    @ParameterizedTest
    @MethodSource("stokewell.rig.Rigs#all")
    void theyAreToldFromTheTopDown(Rig rig) {
        assertThat(Height.of(rig)).isSortedAccordingTo((a, b) -> Double.compare(b.above(), a.above()));
        assertThat(Height.of(rig)).extracting(Height::what).contains("ceiling", "stove, top");
    }

    private static double of(Rig rig, String what) {
        return Height.of(rig).stream()
                .filter(h -> h.what().equals(what))
                .findFirst()
                .orElseThrow()
                .above();
    }
}
