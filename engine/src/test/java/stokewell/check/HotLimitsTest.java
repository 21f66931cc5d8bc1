package stokewell.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import stokewell.rig.Changed;
import stokewell.rig.Rig;

/** What is told to ring, to start or to stay off stands below boiling, at every height. */
class HotLimitsTest {

    private static Rig at(double altitude) {
        Rig rig = Sound.pumped();
        return Changed.with(rig, "place", Changed.with(rig.place(), "altitude", altitude));
    }

    /** Trade: at 2400 m water boils at about 92 °C, an alarm must be at 80 to 82 °C. */
    @Test
    void goDownWithTheBoilingPoint() {
        assertThat(HotLimits.alarm(at(0))).isCloseTo(363.15, within(0.03));
        assertThat(HotLimits.second(at(0))).isEqualTo(358.15);
        assertThat(HotLimits.restart(at(0))).isCloseTo(366.48, within(0.02));
        assertThat(HotLimits.alarm(at(2400)) - 273.15).isBetween(80.0, 83.0);
        for (double h : new double[] {0, 1000, 2400, 4000}) {
            assertThat(HotLimits.second(at(h))).isLessThan(HotLimits.alarm(at(h)));
            assertThat(HotLimits.alarm(at(h))).isLessThan(HotLimits.restart(at(h)));
            assertThat(HotLimits.restart(at(h))).isLessThan(HotLimits.boiling(at(h)) - 6);
        }
    }

    /** At 3000 m water boils at 90 °C: to watch a fire to 90 °C, or to fit an alarm there, is to wait for steam. */
    @Test
    void noFindingOnAMountainAsksToWaitForBoiling() {
        Rig high = Sound.around(Sound.around(at(3000), "hotAlarm", false), "unwatched", 8 * 3600.0);
        Check check = Sound.rerun(high);
        for (String id : List.of("boil.alarm", "care.proving", "watch.unwatched")) {
            assertThat(check.of(id).remedy()).as(id).contains("80 °C").doesNotContain("90 °C");
        }
        assertThat(check.of("control.sensor").remedy()).contains("77 °C").doesNotContain("85 °C");
        assertThat(check.of("boil.outage").why()).contains("over 83 °C").doesNotContain("93 °C");
    }
}
