package stokewell.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import stokewell.rig.Fuel;
import stokewell.rig.Habit;
import stokewell.rig.Layer;
import stokewell.rig.Outdoors;
import stokewell.rig.RandomRigs;
import stokewell.rig.Rig;
import stokewell.rig.Room;

/**
 * What everybody knows to make a room warmer never makes it colder: pairs of settled nights of random rigs that are loaded,
 * aired and pumped by the clock, so that no rule decides otherwise in one of the two.
 */
class MonotoneTest {

    private static final int RIGS = 30;
    /** What two settled nights may differ by without meaning it, K: settling stops at 0.02 K a day. */
    private static final double SLACK = 0.05;

    private static double morning(Rig rig) {
        LocalDateTime from = LocalDateTime.of(2023, 1, 16, 8, 0);
        NightRun.Ask ask = new NightRun.Ask(
                from, from.plusDays(1), LocalTime.of(7, 30), LocalTime.of(16, 0), 283.15, 1800, Simulation.TOLERANCE);
        return NightRun.run(rig, RandomRunsTest.weather(rig), ask).morning().room();
    }

    private static void neverColder(String what, UnaryOperator<Rig> change) {
        List<String> colder = new ArrayList<>();
        for (int seed = 0; seed < RIGS; seed++) {
            Rig rig = winter(RandomRigs.byClock(seed));
            double before = morning(rig);
            double after = morning(change.apply(rig));
            if (!(after >= before - SLACK)) colder.add(String.format("%s: %.2f K", rig.name(), after - before));
        }
        assertThat(colder).as(what).isEmpty();
    }

    private static Rig winter(Rig rig) {
        Outdoors o = rig.weather();
        double low = Math.min(o.low(), 273.15);
        return rig.withWeather(new Outdoors("", low, Math.max(low, Math.min(o.high(), 276.15)), o.wind(), o.sun(), 15));
    }

    @Test
    void moreInsulationNeverMakesAColderMorning() {
        neverColder("half as much again of every insulating layer", rig -> {
            Room r = rig.room();
            return RandomRigs.with(
                    rig,
                    new Room(
                            r.length(),
                            r.width(),
                            r.height(),
                            thicker(r.walls()),
                            thicker(r.roof()),
                            r.floor(),
                            r.windows(),
                            r.doors(),
                            r.leakage(),
                            r.contents(),
                            r.gains()));
        });
    }

    private static Room.Covering thicker(Room.Covering c) {
        return new Room.Covering(
                RandomRigs.changed(
                        c.layers(),
                        l -> new Layer(
                                1.5 * l.thickness(), l.material(), l.conductivity(), l.density(), l.specificHeat())),
                c.framing(),
                c.absorptance(),
                c.areaFactor());
    }

    @Test
    void moreWoodNeverMakesAColderMorning() {
        neverColder("a third more wood in every load", rig -> {
            List<Habit.Load> loads = ((Habit.Clock) rig.habit())
                    .loads().stream()
                            .map(l -> new Habit.Load(l.at(), 1.33 * l.mass()))
                            .toList();
            return RandomRigs.with(rig, rig.stove(), rig.fuel(), new Habit.Clock(loads, Double.NaN));
        });
    }

    @Test
    void fewerLeaksNeverMakeAColderMorning() {
        neverColder("half the leaks", rig -> {
            Room r = rig.room();
            return RandomRigs.with(
                    rig,
                    new Room(
                            r.length(),
                            r.width(),
                            r.height(),
                            r.walls(),
                            r.roof(),
                            r.floor(),
                            r.windows(),
                            r.doors(),
                            new Room.Leakage(
                                    0.5 * r.leakage().at50Pa(), r.leakage().shelter()),
                            r.contents(),
                            r.gains()));
        });
    }

    @Test
    void warmerWeatherNeverMakesAColderMorning() {
        neverColder("three kelvins warmer outdoors", rig -> {
            Outdoors o = rig.weather();
            return rig.withWeather(new Outdoors("", o.low() + 3, o.high() + 3, o.wind(), o.sun(), o.dayOfYear()));
        });
    }

    /** The same wood with less water in it: as many splits, each lighter. */
    @Test
    void drierWoodNeverMakesAColderMorning() {
        neverColder("wood at half its moisture, the same dry wood", rig -> {
            Fuel f = rig.fuel();
            double wet = f.wetBasis();
            double dry = 0.5 * wet;
            Fuel drier = new Fuel(f.species(), dry, Fuel.Basis.WET, f.form(), f.stackSolid());
            List<Habit.Load> loads = ((Habit.Clock) rig.habit())
                    .loads().stream()
                            .map(l -> new Habit.Load(l.at(), l.mass() * (1 - wet) / (1 - dry)))
                            .toList();
            return RandomRigs.with(rig, rig.stove(), drier, new Habit.Clock(loads, Double.NaN));
        });
    }
}
