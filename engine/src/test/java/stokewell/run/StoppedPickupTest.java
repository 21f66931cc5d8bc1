package stokewell.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import java.time.LocalDateTime;
import java.time.LocalTime;
import org.junit.jupiter.api.Test;
import stokewell.balance.Wiring;
import stokewell.loop.PickupWater;
import stokewell.matter.Water;
import stokewell.network.Network;
import stokewell.network.Plant;
import stokewell.rig.Rig;
import stokewell.rig.Rigs;

/** A pickup whose flow has stopped, against an energy balance of its water. */
class StoppedPickupTest {

    private static final double K = 273.15;

    private static Simulation burning(Rig rig) {
        LocalDateTime from = LocalDateTime.of(2023, 1, 16, 7, 0);
        NightRun.Ask ask = new NightRun.Ask(
                from, from.plusDays(1), LocalTime.of(6, 30), LocalTime.of(16, 0), K + 10, 60, Simulation.TOLERANCE);
        Simulation sim = NightRun.settled(rig, RandomRunsTest.weather(rig), ask);
        sim.run(sim.time() + 3 * 3600);
        sim.plant().loop().resist(1e9);
        sim.force("pump", false);
        sim.intervene(y -> {});
        return sim;
    }

    /**
     * From where it stands to its boiling point the water takes V rho cp K (Incropera's saturated water) plus what swaps
     * into the riser above; the metal gave it its heat. Nothing else may come or go.
     */
    @Test
    void itBoilsWhenItsWaterHasTakenItsHeat() {
        Simulation sim = burning(Rigs.pumped());
        Plant plant = sim.plant();
        Network network = plant.network();
        PickupWater coil = plant.pickups().get(0);
        int heat =
                network.wiring().accounts().size() + network.wiring().meters().indexOf("fire to water");
        double start = sim.time();
        double began = sim.columns()[coil.water()];
        double[] taken = {0};
        double[] swapped = {0};
        double[] boils = {Double.NaN};
        int riser = network.wiring().states().stream()
                .map(Wiring.State::name)
                .toList()
                .indexOf("supply pipe");
        sim.watch((between, y) -> {
            if (!Double.isNaN(boils[0])) return;
            double h = between.end() - between.start();
            taken[0] += between.sum(heat, between.end()) - between.sum(heat, between.start());
            double water = y[coil.water() - Wiring.OUTSIDE];
            swapped[0] += 8 * Math.max(0, water - y[riser]) * h;
            if (water >= coil.saturation()) boils[0] = between.end() - start;
        });
        sim.run(start + 3600);
        assertThat(boils[0]).isBetween(30.0, 1800.0);
        double litres = Rigs.pumped().pickups().get(0).volume();
        double needs = litres * Water.density(333.15) * 4185 * (coil.saturation() - began);
        assertThat(taken[0] - swapped[0]).isCloseTo(needs, withPercentage(5));
    }

    /** By hand, as in the references: 20 L from 70 to 100 C at 10 kW take 246 s; the minutes of a run are the same sum. */
    @Test
    void theMinutesInTheTraceAreThatBalance() {
        Simulation sim = burning(Rigs.pumped());
        double[] x = sim.columns().clone();
        PickupWater coil = sim.plant().pickups().get(0);
        Recorder recorder = sim.record(sim.time() + 120, 60);
        sim.run(sim.time() + 120);
        double reckoned =
                (sim.plant().network().capacity(coil.water() - Wiring.OUTSIDE) * (coil.saturation() - x[coil.water()])
                                + sim.plant().network().capacity(coil.wall() - Wiring.OUTSIDE)
                                        * (coil.saturation() - x[coil.wall()]))
                        / sim.plant().heatInto(0, x)
                        / 60;
        assertThat((double) recorder.trace().column("minutes to boil coil")[0]).isCloseTo(reckoned, withPercentage(10));
        assertThat(20 * 0.9778 * 4190 * 30 / 10000).isCloseTo(246, withPercentage(1));
    }
}
