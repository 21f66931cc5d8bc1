package stokewell.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import stokewell.network.Compiler;
import stokewell.network.Plant;
import stokewell.rig.Changed;
import stokewell.rig.Flue;
import stokewell.rig.Fuel;
import stokewell.rig.Habit;
import stokewell.rig.Loop;
import stokewell.rig.Outdoors;
import stokewell.rig.Pickup;
import stokewell.rig.Pipe;
import stokewell.rig.Rig;
import stokewell.rig.Rigs;
import stokewell.rig.Store;
import stokewell.rig.Stove;

/** Rigs on which an earlier engine stopped or told nonsense, each as small as it still did so. */
class FailedRigsTest {

    private static Simulation day(Rig rig) {
        Plant plant = Compiler.compile(rig, RandomRunsTest.weather(rig));
        Simulation sim = new Simulation(plant, 0, Simulation.TOLERANCE);
        sim.place(7 * 3600, plant.network().start());
        sim.run(31 * 3600);
        sim.ledger();
        return sim;
    }

    private static Rig stove(Outdoors outdoors, Stove stove, Flue flue, Fuel fuel, Habit habit) {
        Rig p = Rigs.pumped();
        return new Rig(
                "stove alone",
                "",
                p.place(),
                outdoors,
                p.room(),
                stove,
                flue,
                fuel,
                habit,
                List.of(),
                null,
                null,
                List.of(),
                List.of());
    }

    /** The resistance was drawn at even 5 g/s, and fell with the flow where a thin pipe turns turbulent at 5 g/s. */
    @Test
    void aThermosiphonThroughThinPipesRuns() {
        Rig r = Rigs.thermosiphon();
        for (double bore : new double[] {0.006, 0.008, 0.012}) {
            Pipe thin = new Pipe(2.5, bore, 0.001, 0.02, 0.04, 2, 2, 5e-5, Pipe.Where.ROOM);
            Loop loop = new Loop(thin, thin, null, Double.NaN, 0, r.loop().header());
            assertThat(day(Changed.with(r, "loop", loop)).time()).isEqualTo(31 * 3600);
        }
    }

    /** Bubbles that lift a check valve: a thousandfold flow within a hundredth of a kelvin. */
    @Test
    void aCheckValveOverABoilingPickupRuns() {
        Rig r = Rigs.thermosiphon();
        for (double opening : new double[] {300, 600, 1000, 2000}) {
            for (double area : new double[] {0.2, 0.3}) {
                Loop loop = Changed.with(r.loop(), "pump", null, "checkValve", opening, "glycol", 0);
                Pickup jacket = new Pickup("jacket", Pickup.Kind.JACKET, area, 0.008, 30, 0.04, 1, 0.5, 0.004, 80);
                Rig valved = Changed.with(r, "name", "valved", "story", "", "pickups", List.of(jacket), "loop", loop);
                assertThat(day(valved).time()).isEqualTo(31 * 3600);
            }
        }
    }

    /** Fire and draft feed each other; taken as following at once they had no answer at the edge of burning. */
    @Test
    void aBigWetLoadUnderAColdChimneyOnAWarmDayRuns() {
        Stove stove = new Stove(
                380, 590, 4.5, 0.73, 0.9, 0.226, 1.57, 99, 120, 57e-4, 0.63, new Stove.Air.Damper(510, 86, 0.13));
        Rig rig = stove(
                new Outdoors("", 270.4, 294.9, 1.5, 0.45, 183),
                stove,
                new Flue(0.126, 1, 3.35, 0.3, 0.24, 60, 5.6),
                new Fuel("birch", 0.295, Fuel.Basis.WET, Fuel.Form.ROUNDS, 0.62),
                new Habit.Clock(List.of(new Habit.Load(64800, 30.5), new Habit.Load(18000, 24.4)), Double.NaN));
        assertThat(day(rig).time()).isEqualTo(31 * 3600);
    }

    /** The fourth power gave the firebox a second answer below zero kelvin. */
    @Test
    void theFireboxNeverFallsBelowTheCold() {
        Stove stove =
                new Stove(50, 570, 4.4, 0.9, 1.3, 0.245, 2.4, 0, 18, 54e-4, 0.037, new Stove.Air.Hand(0.77, 0.058));
        Rig rig = stove(
                new Outdoors("", 255.6, 265.1, 0.25, 0.015, 204),
                stove,
                new Flue(0.132, 1.4, 3.87, 0.99, 0.45, 9.3, 5.2),
                new Fuel("pine", 0.095, Fuel.Basis.DRY, Fuel.Form.ROUNDS, 0.62),
                new Habit.Clock(
                        List.of(
                                new Habit.Load(29400, 14),
                                new Habit.Load(56400, 8.07),
                                new Habit.Load(81000, 11.7),
                                new Habit.Load(4800, 7.6),
                                new Habit.Load(27600, 11.3)),
                        Double.NaN));
        Simulation sim = day(rig);
        assertThat(sim.columns()[sim.plant().gas()]).isGreaterThan(250);
    }

    /** Layers below a hot inlet stood kelvins above boiling, because little moved between inverted layers. */
    @Test
    void aSmallLyingStoreUnderALongFireDoesNotSuperheat() {
        Rig p = Rigs.pumped();
        Store s = p.store();
        Store small = new Store(
                new Store.Shape.Lying(0.5, 0.95),
                31,
                s.wall(),
                s.jacket(),
                s.lid(),
                s.base(),
                Store.Standing.BLOCKS,
                1.5,
                Store.Cover.LOOSE,
                0.16,
                0.6,
                0.2,
                null);
        Pickup big = new Pickup("coil", Pickup.Kind.COIL, 0.8, 0.004, 12, 0.026, 5, 0.6, 0, 80);
        Rig rig = new Rig(
                "small store",
                "",
                p.place(),
                p.weather(),
                p.room(),
                p.stove(),
                p.flue(),
                p.fuel(),
                new Habit.Rule(6, 573, 0, 86400, Double.NaN),
                List.of(big),
                new Loop(Rigs.pipe(4), Rigs.pipe(4), Rigs.pump(), Double.NaN, 0, new Loop.Header(0.04, 2.3, 0.022)),
                small,
                List.of(),
                p.switches().subList(0, 1));
        Plant plant = Compiler.compile(rig, RandomRunsTest.weather(rig));
        Simulation sim = new Simulation(plant, 0, Simulation.TOLERANCE);
        sim.place(7 * 3600, plant.network().start());
        double most = Double.NEGATIVE_INFINITY;
        for (int k = 1; k <= 144; k++) {
            sim.run(7 * 3600 + 600 * k);
            double[] x = sim.columns();
            for (Plant.Boilable water : plant.waters()) most = Math.max(most, x[water.node()] - water.saturation());
        }
        assertThat(most)
                .as("hottest over saturation: the store boils, but no more")
                .isBetween(-1.0, 2.0);
    }

    /** A hair below empty, the wet share of a dry pickup drove heat from water to metal without end. */
    @Test
    void aPickupThatBoilsDryStaysBetweenFireAndCold() {
        Rig p = Rigs.pumped();
        Rig dead = Changed.with(
                p,
                "name",
                "dry",
                "story",
                "",
                "pickups",
                List.of(new Pickup("coil", Pickup.Kind.COIL, 0.5, 0.002, 12, 0.026, 5, 1.6, 0, 80)),
                "loop",
                new Loop(Rigs.pipe(4), Rigs.pipe(4), null, 2000, 0, new Loop.Header(0.002, 1.8, 0.022)),
                "store",
                new Store(
                        p.store().shape(),
                        12,
                        p.store().wall(),
                        p.store().jacket(),
                        p.store().lid(),
                        p.store().base(),
                        Store.Standing.FLOOR,
                        1.5,
                        Store.Cover.SEALED,
                        -0.6,
                        0.95,
                        0.05,
                        null),
                "emitters",
                List.of(),
                "switches",
                List.of());
        Plant plant = Compiler.compile(dead, RandomRunsTest.weather(dead));
        Simulation sim = new Simulation(plant, 0, 10 * Simulation.TOLERANCE);
        sim.place(7 * 3600, plant.network().start());
        double hottest = 0;
        double driest = 1;
        for (int k = 1; k <= 144; k++) {
            sim.run(7 * 3600 + 600 * k);
            double[] x = sim.columns();
            hottest = Math.max(hottest, x[plant.pickups().get(0).wall()]);
            driest = Math.min(driest, x[plant.wet()[0]]);
            assertThat(x[plant.pickups().get(0).wall()]).isBetween(250.0, 1400.0);
            assertThat(x[plant.pickups().get(0).water()]).isBetween(250.0, 400.0);
        }
        assertThat(driest).isLessThan(0.05);
        assertThat(hottest).as("bare metal in the fire").isGreaterThan(500);
    }
}
