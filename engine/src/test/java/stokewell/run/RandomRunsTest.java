package stokewell.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import stokewell.balance.Wiring;
import stokewell.network.Compiler;
import stokewell.network.Plant;
import stokewell.rig.Outdoors;
import stokewell.rig.RandomRigs;
import stokewell.rig.Rig;
import stokewell.weather.DayRange;
import stokewell.weather.Weather;

/** What must hold for every rig at every moment, whatever its numbers: a day each of rigs drawn by lot. */
class RandomRunsTest {

    private static final int RIGS = 600;
    private static final double BEGIN = 7 * 3600;
    private static final double LOOK = 1200;

    static Weather weather(Rig rig) {
        Outdoors o = rig.weather();
        return Weather.day(
                new DayRange(o.low(), o.high()),
                o.wind(),
                o.sun(),
                Compiler.site(rig),
                LocalDate.ofYearDay(2023, Math.min(365, o.dayOfYear())),
                Compiler.surfaces(rig));
    }

    @Test
    void everyRandomRigKeepsToTheLawsForADay() {
        for (int seed = 0; seed < RIGS; seed++) {
            Rig rig = RandomRigs.of(seed);
            Weather weather = weather(rig);
            Plant plant = Compiler.compile(rig, weather);
            Simulation sim = new Simulation(plant, 0, Simulation.TOLERANCE);
            sim.place(BEGIN, plant.network().start());
            Laws laws = new Laws(rig, sim, weather);
            for (double t = BEGIN + LOOK; t <= BEGIN + DayClock.DAY; t += LOOK) {
                sim.run(t);
                laws.check();
            }
            // throws if it does not close
            sim.ledger();
            assertThat(sim.counters().steps() + sim.counters().rejected())
                    .as("%s: steps in a day", rig.name())
                    .isLessThan(20000);
        }
    }

    /** Bounds that no run may leave, from where its heat comes. */
    private static final class Laws {

        private final Rig rig;
        private final Simulation sim;
        private final Plant plant;
        private final List<Wiring.State> states;
        private final double coldest;
        private final double sunny;
        private double hottestGas;

        Laws(Rig rig, Simulation sim, Weather weather) {
            this.rig = rig;
            this.sim = sim;
            plant = sim.plant();
            states = plant.network().wiring().states();
            double cold = rig.place().groundTemperature();
            double warm = rig.place().groundTemperature();
            double[] out = new double[weather.channels()];
            for (int k = 0; k < 96; k++) {
                weather.at(900.0 * k, out);
                cold = Math.min(cold, Math.min(out[Weather.TEMPERATURE], out[Weather.SKY]));
                double sun = 0;
                for (int c = Weather.SUN; c < out.length; c++) sun = Math.max(sun, out[c]);
                // all the sun taken up by a surface that can only give it back to the air: film 20 W/(m2 K)
                warm = Math.max(warm, out[Weather.TEMPERATURE] + sun / 20);
            }
            double[] start = plant.network().start();
            for (int i = 0; i < start.length; i++) {
                if (states.get(i).kind() != Wiring.Kind.HEAT) continue;
                cold = Math.min(cold, start[i]);
                warm = Math.max(warm, start[i]);
            }
            coldest = cold;
            sunny = warm;
        }

        void check() {
            double[] x = sim.columns();
            hottestGas = Math.max(hottestGas, x[plant.gas()]);
            double hottest = Math.max(plant.fire().collar(x), hottestGas);
            double sources = sunny + indoorRise();
            double surfaces = plant.fire().collar(x);
            for (int i = 0; i < states.size(); i++) {
                double value = x[Wiring.OUTSIDE + i];
                String where = rig.name() + ": " + states.get(i).name() + " at " + sim.time();
                assertThat(value).as(where).isFinite();
                if (states.get(i).kind() == Wiring.Kind.HEAT) {
                    // a step may be off by its tolerance
                    assertThat(value).as(where).isGreaterThan(coldest - 0.1);
                    assertThat(value).as(where).isLessThan(Math.max(sources, hottest) + 0.1);
                    if (i + Wiring.OUTSIDE != plant.room()) surfaces = Math.max(surfaces, value);
                } else if (states.get(i).name().endsWith("flow")) {
                    assertThat(Math.abs(value)).as(where).isLessThan(50);
                } else if (!states.get(i).name().startsWith("sensor") && i + Wiring.OUTSIDE != plant.gas()) {
                    // masses and shares: a step may be off by its tolerance of 0.4 g, and below zero counts as none
                    assertThat(value).as(where).isGreaterThan(-4e-4);
                }
            }
            // flame of dry wood at the least excess air: 2.1 MJ per kg of gas at 1.1 to 1.35 kJ/(kg K)
            assertThat(x[plant.gas()]).as("%s: flame", rig.name()).isBetween(coldest - 0.1, 2100.0);
            assertThat(x[plant.room()])
                    .as("%s: room against all surfaces at %f", rig.name(), sim.time())
                    .isLessThan(Math.max(surfaces, x[plant.outdoors()]) + directRise() + 0.1);
            for (Plant.Boilable water : plant.waters()) {
                assertThat(x[water.node()])
                        .as("%s: %s over saturation at %f", rig.name(), water.name(), sim.time())
                        .isLessThan(water.saturation() + 2);
            }
        }

        /** Power that comes neither from fire nor from outdoors, W. */
        private double machines() {
            double watts = rig.room().gains().power();
            for (var d : plant.driven()) watts += d.watts();
            return watts;
        }

        /** How far such power could warm a room that loses heat through its leanest part alone, K: generous. */
        private double indoorRise() {
            double glass = rig.room().windows().stream()
                    .mapToDouble(w -> w.area() * w.sunShare() * 1400)
                    .sum();
            return (machines() + glass) * DayClock.DAY / rig.room().contents();
        }

        /** How far power put straight into the air lifts it over the contents, K. */
        private double directRise() {
            double glass = rig.room().windows().stream()
                    .mapToDouble(w -> 0.15 * w.area() * w.sunShare() * 1400)
                    .sum();
            return (machines() + glass) / (2.5 * 1.5 * rig.room().floorArea());
        }
    }
}
