package stokewell.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import stokewell.rig.Changed;
import stokewell.rig.Rig;
import stokewell.rig.Safety;
import stokewell.rig.Store;
import stokewell.rig.Switch;

/** Who does what a finding tells him to do is rid of it. */
class RemediesTest {

    private static final double K = 273.15;

    private static double number(String text, String pattern) {
        Matcher m = Pattern.compile(pattern).matcher(text);
        assertThat(m.find()).as(text).isTrue();
        return Double.parseDouble(m.group(1));
    }

    private static Rig header(String name, double value) {
        Rig rig = Sound.pumped();
        return Sound.loop(rig, "header", Changed.with(rig.loop().header(), name, value));
    }

    /** At little head a vent must be wider than the rule of thumb says. */
    @Test
    void aNarrowVent() {
        double barely = Sound.pumped().pickups().get(0).elevation() + 0.002;
        Rig low = header("level", barely);
        for (Rig rig : List.of(header("vent", 0.004), low)) {
            Finding f = Sound.answered(rig).of("vent.bore");
            assertThat(f.level()).isEqualTo(Level.STOP);
            double bore = number(f.remedy(), "Make it (\\d+) mm") / 1000;
            assertThat(bore).isGreaterThan(rig.loop().header().vent());
            Rig mended = Sound.loop(rig, "header", Changed.with(rig.loop().header(), "vent", bore));
            assertThat(Sound.answered(mended).of("vent.bore").level()).isEqualTo(Level.FINE);
        }
    }

    @Test
    void aHeaderUnderItsCoilIsNotMendedByAWiderVent() {
        Check c = Sound.answered(header("level", 0.4));
        assertThat(c.of("vent.height").level()).isEqualTo(Level.STOP);
        assertThat(c.of("vent.bore")).isNull();
    }

    /** So little water that it boils before a slow sensor has followed: no setting helps. */
    @Test
    void aSensorThatIsTooSlow() {
        Rig rig = Sound.pumped();
        Switch.Sensor slow = new Switch.Sensor(Switch.Spot.OUTLET, 0.9, "", 120);
        Rig little = rig.pickedUp(
                        List.of(Changed.with(Changed.with(rig.pickups().get(0), "volume", 0.0008), "metal", 3.0)))
                .switched(List.of(
                        new Switch("pump", new Switch.Thermostat(slow, K + 70, K + 58), null, null, null, null)));
        Finding f = Sound.answered(little).of("control.limit");
        assertThat(f.level()).isEqualTo(Level.MEND);
        assertThat(f.remedy()).doesNotContain("-").contains("No setting");
        double lag = number(f.remedy(), "within (\\d+) s");
        Switch.Sensor quick = new Switch.Sensor(Switch.Spot.OUTLET, 0.9, "", lag);
        Rig mended = little.switched(
                List.of(new Switch("pump", new Switch.Thermostat(quick, K + 60, K + 52), null, null, null, null)));
        assertThat(Sound.answered(mended).of("control.limit").level()).isEqualTo(Level.FINE);
    }

    private static Rig closed(double volume, double fill) {
        Rig rig = Sound.safe(Sound.pumped(), "vessel", new Safety.Vessel(volume, 75000, fill));
        return Sound.safe(rig, "relief", new Safety.ReliefValve(250000, 40000, 0.015, true, true));
    }

    /** Gas law by hand: at 2.5 bar the vessel ends at 2.0; 1 bar over a precharge of 0.75 has taken 12 % of it before. */
    @Test
    void aVesselThatItsFillingHasHalfUsedUp() {
        Finding f = Sound.answered(closed(0.02, 100000)).of("expansion.vessel");
        double asked = number(f.remedy(), "Fit (\\d+) L") / 1000;
        double grown = number(f.why(), "grow by ([\\d.]+) L") / 1000;
        assertThat(asked).isCloseTo(grown / (176.0 / 201.0 - 176.0 / 301.0), within(0.003));
        assertThat(Sound.answered(closed(asked + 0.001, 100000))
                        .of("expansion.vessel")
                        .level())
                .isEqualTo(Level.FINE);
        assertThat(Sound.answered(closed(0.5, 200000)).of("expansion.vessel").level())
                .isEqualTo(Level.MEND);
    }

    /** 1 bar on 0.8 m by 1.2 m is 96 kN, whatever the water beside it weighs; no stiffener is told to mend that. */
    @Test
    void aFlatTankUnderPressureIsNotStiffened() {
        Rig flat = Sound.store(closed(0.2, 100000), "shape", new Store.Shape.Square(0.8, 0.8, 1.2));
        Finding f = Sound.answered(flat).of("store.wall");
        assertThat(number(f.why(), "pushes (\\d+) kN")).isCloseTo(96 + 5.6, within(1.0));
        assertThat(f.remedy()).contains("vented").doesNotContain("Weld");
    }

    @Test
    void whatBoilsAlreadyBoilsAtOnce() {
        assertThat(Telling.later(0)).isEqualTo("at once");
        assertThat(Telling.later(4)).isEqualTo("4 s later");
    }
}
