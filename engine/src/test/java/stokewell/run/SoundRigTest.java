package stokewell.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import stokewell.network.Compiler;
import stokewell.rig.Changed;
import stokewell.rig.Habit;
import stokewell.rig.Layer;
import stokewell.rig.Loop;
import stokewell.rig.Pickup;
import stokewell.rig.Pipe;
import stokewell.rig.Place;
import stokewell.rig.Rig;
import stokewell.rig.Rigs;
import stokewell.rig.Store;
import stokewell.rig.Switch;

/** What builders of such rigs know. Where no source is named the bounds are common practice, no source. */
class SoundRigTest {

    private static final double K = 273.15;

    private static Night night(Rig rig) {
        LocalDateTime from = LocalDateTime.of(2023, 1, 16, 7, 0);
        NightRun.Ask ask = new NightRun.Ask(
                from, from.plusDays(1), LocalTime.of(6, 30), LocalTime.of(16, 0), K + 10, 300, Simulation.TOLERANCE);
        return NightRun.run(rig, RandomRunsTest.weather(rig), ask);
    }

    private static Store store(Layer base, Store.Cover cover, double elevation) {
        Store s = Rigs.store();
        return Changed.with(s, "base", base, "cover", cover, "elevation", elevation, "coil", null);
    }

    private static Rig with(Rig r, Place place, Habit habit, List<Pickup> pickups, Loop loop, Store store) {
        return Changed.with(r, "place", place, "habit", habit, "pickups", pickups, "loop", loop, "store", store);
    }

    /** Loads by the clock, so that the same wood is burnt whatever the water does. */
    private static Habit sixLoads() {
        return new Habit.Clock(
                List.of(
                        new Habit.Load(8 * 3600, 5),
                        new Habit.Load(10 * 3600, 5),
                        new Habit.Load(12 * 3600, 5),
                        new Habit.Load(14 * 3600, 5),
                        new Habit.Load(16 * 3600, 5),
                        new Habit.Load(17.5 * 3600, 5)),
                Double.NaN);
    }

    private static Rig pumped() {
        Rig r = Rigs.pumped();
        return with(r, r.place(), sixLoads(), r.pickups(), r.loop(), r.store());
    }

    @Test
    void aStoreOnABareSlabLosesSeveralTimesMoreThroughItsBase() {
        Rig r = pumped();
        Night foam = night(Changed.with(r, "store", store(Rigs.xps(0.05), Store.Cover.SEALED, 0.1)));
        Night bare = night(Changed.with(r, "store", store(Rigs.xps(0), Store.Cover.SEALED, 0.1)));
        double ratio = bare.ledger().meter("store to floor") / foam.ledger().meter("store to floor");
        // the foam's 0.05/0.034 = 1.5 m2.K/W before the 4 to 7 W/m2.K that a plate of 0.8 m passes into slab, soil and
        // sideways: 1 + 1.5 U = 7 to 11 times; the bare store is cooler for it, which takes up to a fifth off
        assertThat(ratio).isBetween(5.6, 11.5);
    }

    @Test
    void aStoreLiftsTheMorningOverTheStoveAloneByKelvins() {
        Rig r = pumped();
        Pickup coil = new Pickup("coil", Pickup.Kind.COIL, 0.7, 0.008, 20, 0.026, 8, 0.6, 0.004, 80);
        Rig wet = with(r, r.place(), r.habit(), List.of(coil), r.loop(), r.store());
        Night with = night(wet);
        Night alone = night(wet.withoutWater());
        assertThat(with.wood()).isEqualTo(alone.wood());
        double lift = with.morning().room() - alone.morning().room();
        assertThat(lift).isBetween(4.0, 9.0);
        // the envelope: what the store gives from 17:30 to 7:30, by its own fall, over what the room loses for a kelvin
        float[] store = with.trace().column("store mean");
        double given = 0.804 * 1.14 * 3.6e6 * (store[114] - with.morning().storeMean());
        double kelvinSeconds = 0;
        float[] room = alone.trace().column("room");
        float[] out = alone.trace().column("outdoors");
        for (int i = 0; i < room.length; i++) kelvinSeconds += 300 * (room[i] - out[i]);
        double lost = 0;
        for (String a : new String[] {"walls", "roofs", "floor", "glass", "shut doors", "air"})
            lost += alone.ledger().account(a);
        double mean = given / (14 * 3600) / (lost / kelvinSeconds);
        // walls and slab take and give too, and the day before was warmer: good to a factor of two
        assertThat(lift).isBetween(0.5 * mean, 2 * mean);
    }

    @Test
    void aModestCoilTakesATenthToAThirdOfTheFire() {
        assertThat(night(pumped()).waterShare()).isBetween(0.1, 0.33);
    }

    @Test
    void aThermosiphonCirculatesAndHeatsItsStore() {
        Night n = night(Rigs.thermosiphon());
        float[] flow = n.trace().column("loop flow");
        double most = 0;
        for (float f : flow) most = Math.max(most, f);
        // 1 to 5 L/min is what such loops of 40 mm run at
        assertThat(most).isBetween(0.015, 0.15);
        float[] mean = n.trace().column("store mean");
        float coldest = Float.MAX_VALUE;
        float hottest = 0;
        for (float t : mean) {
            coldest = Math.min(coldest, t);
            hottest = Math.max(hottest, t);
        }
        assertThat(hottest - coldest).isGreaterThan(5f);
    }

    /** Two kilopascals are more than a metre or two of warm water can push: 10 Pa a metre and kelvin at most. */
    @Test
    void aStrongCheckValveStopsAThermosiphon() {
        Rig r = Rigs.thermosiphon();
        Loop l = r.loop();
        Loop valved = Changed.with(l, "pump", null, "checkValve", 2000, "glycol", 0);
        Night free = night(r);
        Night stopped = night(Changed.with(r, "loop", valved));
        // it burns from eight till six: once warm, the still jacket boils most of that time
        assertThat(free.boilingMinutes()).isZero();
        assertThat(stopped.boilingMinutes()).isGreaterThan(240);
        float[] flow = stopped.trace().column("loop flow");
        float[] water = stopped.trace().column("water jacket");
        for (int i = 0; i < flow.length; i++) {
            // below boiling, before bubbles lift it
            if (water[i] < K + 95) assertThat(Math.abs(flow[i])).isLessThan(1e-3f);
        }
    }

    /** The store below the coil: nothing circulates by itself. */
    @Test
    void aDeadPumpWithNoWayToCirculateBoils() {
        Rig r = pumped();
        Pickup high = new Pickup("coil", Pickup.Kind.COIL, 0.35, 0.004, 12, 0.026, 5, 1.6, 0.004, 80);
        Rig low =
                with(r, r.place(), r.habit(), List.of(high), r.loop(), store(Rigs.xps(0.05), Store.Cover.SEALED, -0.6));
        Rig dead = Changed.with(
                low,
                "switches",
                low.switches().stream().filter(s -> !s.drives().equals("pump")).toList());
        assertThat(night(low).boilingMinutes()).isZero();
        Night boils = night(dead);
        assertThat(boils.boilingMinutes()).isGreaterThan(60);
        assertThat(boils.steam()).isGreaterThan(0.5);
    }

    /** Warm water climbs from the store's top to a cooler coil above it and falls back to the bottom: the wrong way round. */
    @Test
    void withoutACheckValveAStoreBelowItsCoilCoolsFasterByNight() {
        Rig r = pumped();
        Pipe wide = new Pipe(3, 0.04, 0.003, 0, 0.04, 2, 1, 5e-5, Pipe.Where.ROOM);
        Pickup high = new Pickup("coil", Pickup.Kind.COIL, 0.35, 0.004, 12, 0.04, 2, 2.6, 0.004, 80);
        Loop free = new Loop(wide, wide, Rigs.pump(), Double.NaN, 0, new Loop.Header(0.02, 3.2, 0.022));
        Loop valved = new Loop(wide, wide, Rigs.pump(), 1500, 0, new Loop.Header(0.02, 3.2, 0.022));
        Rig base = Changed.with(
                with(r, r.place(), r.habit(), List.of(high), free, store(Rigs.xps(0.05), Store.Cover.SEALED, 0.1)),
                "switches", // by the hour: a thermostat at the outlet would see the store's own warmth and run all
                // night
                List.of(new Switch("pump", null, null, null, null, new Switch.Hours(8 * 3600, 20 * 3600))));
        double lost = coolingRate(night(base));
        double held = coolingRate(night(Changed.with(base, "loop", valved)));
        // walls alone lose what is held; the pipe of 40 mm runs it through a bare coil and bare pipe of its own 2 m2
        // and more
        assertThat(lost).isGreaterThan(1.8 * held);
    }

    /** Share of the store's warmth over the room that is lost from eleven at night to half past six. */
    private static double coolingRate(Night n) {
        int late = 16 * 12;
        double mean = n.trace().column("store mean")[late];
        return (mean - n.morning().storeMean()) / (mean - n.trace().column("room")[late]);
    }

    @Test
    void anOpenTankLosesFarMoreThanASealedOne() {
        Rig r = pumped();
        Night sealed = night(Changed.with(r, "store", store(Rigs.xps(0.05), Store.Cover.SEALED, 0.1)));
        Night open = night(Changed.with(r, "store", store(Rigs.xps(0.05), Store.Cover.OPEN, 0.1)));
        double shut = sealed.ledger().meter("store to room");
        double lost = open.ledger().meter("store to room") + open.ledger().account("evaporation");
        double warmShut = mean(sealed) - (K + 10);
        double warmOpen = mean(open) - (K + 10);
        // 0.5 m2 of water at 50 to 60 C give off 0.5 to 0.9 kW by evaporation alone, the wrapped tank some 100 W
        assertThat(lost / warmOpen).isGreaterThan(5 * shut / warmShut);
    }

    private static double mean(Night n) {
        double sum = 0;
        for (float t : n.trace().column("store mean")) sum += t;
        return sum / n.trace().size();
    }

    /** Water boils at 99.97 C at the sea and 89.97 C at 3000 m, less the head that both have: ISO 2533 and IAPWS-IF97. */
    @Test
    void altitudeLowersTheBoilingPointAtEveryPickup() {
        Rig r = pumped();
        Place p = r.place();
        double[] saturation = new double[2];
        for (int i = 0; i < 2; i++) {
            Place place = new Place(p.latitude(), p.longitude(), p.utcOffset(), 3000.0 * i, p.groundTemperature());
            Rig there = with(r, place, r.habit(), r.pickups(), r.loop(), r.store());
            saturation[i] = Compiler.compile(there, RandomRunsTest.weather(there))
                    .pickups()
                    .get(0)
                    .saturation();
        }
        assertThat(saturation[0] - saturation[1]).isBetween(7.5, 10.0);
    }

    @Test
    void theStoveRunsAsStovesDo() {
        Night n = night(pumped());
        float hottestCollar = 0;
        for (float t : n.trace().column("collar")) hottestCollar = Math.max(hottestCollar, t);
        assertThat(hottestCollar - K).as("collar, C").isBetween(200.0, 420.0);
        assertThat(n.hottestBody() - K).as("body, C").isBetween(150.0, 420.0);
    }
}
