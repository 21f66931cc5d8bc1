package stokewell.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import stokewell.network.Plant;
import stokewell.rig.Rig;
import stokewell.rig.Rigs;
import stokewell.rig.Switch;
import stokewell.weather.Weather;

class ReplayTest {

    private static final double HOUR = 3600;

    /** Its pump never runs. */
    private static Rig still() {
        return Rigs.pumped().switched(List.of(new Switch("pump", null, null, null, null, null)));
    }

    /** With no flow its coil boils, and the header sinks. */
    private static Replay.Played played(List<Replay.Turn> turns) {
        Rig rig = still();
        Weather weather = RandomRunsTest.weather(rig);
        Replay replay = Replay.from(
                rig, weather, Replay.settled(rig, weather, false), 7 * HOUR, 0, Simulation.TOLERANCE, false);
        Plant plant = replay.plant();
        int[] header = {plant.header()};
        int[] room = {plant.room()};
        List<Replay.Probe> probes = List.of(
                new Replay.Probe("header", header, new double[] {1}), new Replay.Probe("room", room, new double[] {1}));
        List<Replay.Load> loads = List.of(new Replay.Load(7.5 * HOUR, 8), new Replay.Load(9 * HOUR, 8));
        List<Replay.Anchor> none = List.of();
        return replay.play(loads, none, turns, probes, 14 * HOUR, 600);
    }

    @Test
    void aRigThatTurnsIntoItselfGoesOnAsIfNothingHadBeenAndNobodyFillsItsHeader() {
        Replay.Played straight = played(List.of());
        Rig same = still();
        Replay.Played turned = played(List.of(new Replay.Turn(11 * HOUR, same)));
        double[] header = straight.read()[0];
        assertThat(header[header.length - 1]).as("some has boiled off").isLessThan(header[0] - 0.2);
        for (int i = 0; i < header.length; i++) {
            assertThat(turned.read()[0][i]).isCloseTo(header[i], within(0.05));
            assertThat(turned.read()[1][i]).isCloseTo(straight.read()[1][i], within(0.02));
        }
    }
}
