package stokewell.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import stokewell.network.Compiler;
import stokewell.network.Plant;
import stokewell.rig.RandomRigs;
import stokewell.rig.Rig;

/**
 * How far the usual tolerance leaves a run from one a hundred times tighter: a day each of rigs drawn by lot, from one start,
 * so that what is held is the step and the switches, not where a run settles.
 */
class AccuracyTest {

    private static final int RIGS = 30;
    private static final double BEGIN = 7 * 3600;
    private static final double LOOK = 1200;
    private static final double BOUND = 0.05;

    private record Day(double[] room, double[] store) {}

    private static Day day(Rig rig, double tolerance) {
        Plant plant = Compiler.compile(rig, RandomRunsTest.weather(rig));
        Simulation sim = new Simulation(plant, 0, tolerance);
        sim.place(BEGIN, plant.network().start());
        int n = (int) (DayClock.DAY / LOOK);
        double[] room = new double[n];
        double[] store = new double[n];
        for (int i = 0; i < n; i++) {
            sim.run(BEGIN + LOOK * (i + 1));
            room[i] = sim.columns()[plant.room()];
            store[i] = plant.store().length > 0 ? plant.storeMean(sim.columns()) : 0;
        }
        return new Day(room, store);
    }

    private static double apart(double[] a, double[] b) {
        double most = 0;
        for (int i = 0; i < a.length; i++) most = Math.max(most, Math.abs(a[i] - b[i]));
        return most;
    }

    @Test
    void roomAndStoreOfRandomRigsHoldToATwentiethOfAKelvin() {
        List<String> off = new ArrayList<>();
        for (int seed = 0; seed < RIGS; seed++) {
            Rig rig = RandomRigs.of(seed);
            Day usual = day(rig, Simulation.TOLERANCE);
            Day tight = day(rig, Simulation.TOLERANCE / 100);
            double room = apart(usual.room, tight.room);
            double store = apart(usual.store, tight.store);
            if (room > BOUND || store > BOUND) {
                off.add(String.format("%s: room %.3f K, store %.3f K", rig.name(), room, store));
            }
        }
        assertThat(off).isEmpty();
    }
}
