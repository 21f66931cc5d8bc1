package stokewell.loop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import stokewell.balance.Wiring;
import stokewell.network.Compiler;
import stokewell.network.Plant;
import stokewell.rig.Changed;
import stokewell.rig.Emitter;
import stokewell.rig.Rig;
import stokewell.rig.Rigs;
import stokewell.run.Simulation;
import stokewell.weather.DayRange;
import stokewell.weather.Weather;

/** A valve that mixes cool water into hot. */
class MixingTest {

    private static final double K = 273.15;

    /** By the balance of two streams: 45 °C out of 70 and 30 °C takes 15/40 of the hot. */
    @Test
    void theShareIsThatOfTwoStreams() {
        Wiring wiring = new Wiring();
        int hot = wiring.node("hot", 1, K + 70);
        int back = wiring.node("back", 1, K + 30);
        int share = wiring.algebraic("drawn", 1, 1);
        Mixing valve = new Mixing(wiring, share, hot, back, K + 45, 1, 3);
        double[] x = new double[Wiring.OUTSIDE + 3];
        x[hot] = K + 70;
        x[back] = K + 30;
        assertThat(valve.standing(x)).isCloseTo(15.0 / 40, within(0.01));
        x[hot] = K + 40;
        assertThat(valve.standing(x)).isCloseTo(1, within(0.01));
        x[back] = K + 60;
        x[hot] = K + 70;
        assertThat(valve.standing(x)).isCloseTo(0, within(0.01));
    }

    private static Rig floored(double mixedTo) {
        Rig rig = Rigs.all().stream()
                .filter(r -> r.emitters().stream().anyMatch(e -> e instanceof Emitter.FloorLoop))
                .findFirst()
                .orElseThrow();
        List<Emitter> emitters = rig.emitters().stream()
                .map(e -> e instanceof Emitter.FloorLoop f ? (Emitter) Changed.with(f, "mixedTo", mixedTo) : e)
                .toList();
        return Changed.with(rig, "emitters", emitters);
    }

    /** Hours with the floor's pump on and a store of 75 °C: hottest water in the floor, and what the store has left. */
    private static double[] hours(double mixedTo) {
        Rig rig = floored(mixedTo);
        Weather weather = Weather.day(
                new DayRange(K - 5, K - 5),
                0,
                0,
                Compiler.site(rig),
                java.time.LocalDate.of(2023, 1, 15),
                Compiler.surfaces(rig));
        Plant plant = Compiler.compile(rig, weather);
        Simulation sim = new Simulation(plant, 0, Simulation.TOLERANCE);
        sim.intervene(y -> {
            for (int node : plant.store()) y[Plant.state(node)] = K + 75;
        });
        sim.force("floor", true);
        int first = node(plant, "floor water 1");
        int last = node(plant, "floor water 3");
        double hottest = 0;
        for (int i = 1; i <= 40; i++) {
            sim.run(i * 360.0);
            if (i > 5) hottest = Math.max(hottest, sim.columns()[first]);
        }
        // throws where the books do not close
        sim.ledger();
        return new double[] {hottest, plant.storeMean(sim.columns()), sim.columns()[first] - sim.columns()[last]};
    }

    private static int node(Plant plant, String name) {
        List<Wiring.State> states = plant.network().wiring().states();
        for (int i = 0; i < states.size(); i++) if (states.get(i).name().equals(name)) return Wiring.OUTSIDE + i;
        throw new AssertionError("no " + name);
    }

    @Test
    void theFloorNeverGetsHotterWaterThanTheValveHolds() {
        double[] straight = hours(Double.NaN);
        double[] mixed = hours(K + 40);
        assertThat(straight[0]).isGreaterThan(K + 50);
        assertThat(mixed[0]).isLessThan(K + 41);
        // the store keeps what the floor does not take
        assertThat(mixed[1]).isGreaterThan(straight[1] + 1);
        assertThat(mixed[2]).isPositive();
    }
}
