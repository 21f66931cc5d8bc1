package stokewell.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import stokewell.balance.Supply;
import stokewell.balance.Wiring;
import stokewell.loop.PickupWater;
import stokewell.matter.Curve;
import stokewell.matter.Water;
import stokewell.rig.Emitter;
import stokewell.rig.Habit;
import stokewell.rig.Layer;
import stokewell.rig.Loop;
import stokewell.rig.Outdoors;
import stokewell.rig.Pickup;
import stokewell.rig.Pipe;
import stokewell.rig.Place;
import stokewell.rig.Rig;
import stokewell.rig.Rigs;
import stokewell.rig.Room;
import stokewell.rig.Store;
import stokewell.solve.Integrator;
import stokewell.solve.State;
import stokewell.solve.Tolerances;

/** Whole compiled rigs against answers that are known from outside: textbook solutions and sums by hand. */
class KnownAnswersTest {

    private static final double K = 273.15;

    /** A rig in steady air of one temperature, without sun. */
    private static Rig rig(Room room, Store store, Loop loop, List<Pickup> pickups, double air, double ground) {
        Rig p = Rigs.pumped();
        return new Rig(
                "known",
                "",
                new Place(p.place().latitude(), p.place().longitude(), p.place().utcOffset(), 0, ground),
                new Outdoors("", air, air, 0, 0, 15),
                room,
                p.stove(),
                p.flue(),
                p.fuel(),
                new Habit.Clock(List.of(), Double.NaN),
                pickups,
                loop,
                store,
                List.<Emitter>of(),
                List.of());
    }

    private static State run(Held equations, double[] y, double seconds) {
        State state = new State(0, y, new double[equations.sums()]);
        Integrator integrator = new Integrator(equations, Tolerances.absolute(1e-4));
        integrator.restart(state);
        integrator.advance(state, seconds, between -> {});
        return state;
    }

    private static Room room(double side, Room.Floor floor) {
        Room r = Rigs.room();
        return new Room(
                side,
                side,
                3,
                r.walls(),
                r.roof(),
                floor,
                List.of(),
                List.of(),
                new Room.Leakage(0, Room.Shelter.WALLED),
                1e8,
                new Room.Gains(0, 0, 0, 0));
    }

    /**
     * A store left alone: 1000 L, 3 W/K, from 80 C in a room of 20 C. A body that cools as one falls by exp(−t/τ): 78.13 C after
     * 12 h, 76.32 C after 24 h, τ = m c/UA = 379 h with the mass and heat of hot water.
     */
    @Test
    void aStoreLeftAloneCoolsByTheExponentialLaw() {
        double diameter = 1.0;
        double height = 4 / Math.PI;
        double area = Math.PI * diameter * height + Math.PI / 4 * diameter * diameter;
        // one U on sides and lid, the film of 0.11 to the room part of it; none through the bottom, which would lie
        // cold
        Layer side = new Layer(0.04 * (area / 3 - 0.11), "foam", 0.04, 30, 1400);
        Layer base = new Layer(2, "foam", 0.005, 30, 1400);
        Store store = new Store(
                new Store.Shape.Round(diameter, height),
                6,
                new Layer(1e-4, "steel", 50, 7800, 450),
                side,
                side,
                base,
                Store.Standing.BLOCKS,
                1,
                Store.Cover.SEALED,
                0.2,
                0.95,
                0.05,
                null);
        Room room = room(5, new Room.Floor.Boards(List.of(Rigs.wool(0.1))));
        Plant plant = Compiler.compile(
                rig(room, store, null, List.of(), K + 20, K + 20),
                NetworkTest.weather(rig(room, store, null, List.of(), K + 20, K + 20)));
        Network network = plant.network();
        double[] y = network.start();
        for (int i = 0; i < y.length; i++) if (network.capacity(i) > 0) y[i] = K + 20;
        for (int layer : plant.store()) y[Plant.state(layer)] = K + 80;
        Held held = new Held(network, Plant.state(plant.room()), Plant.state(plant.contents()));
        State half = run(held, y.clone(), 12 * 3600);
        double after12 = plant.storeMean(network.columns(half.t, half.y)) - K;
        State full = run(held, y, 24 * 3600);
        double after24 = plant.storeMean(network.columns(full.t, full.y)) - K;
        assertThat(after12).isCloseTo(78.13, within(0.05));
        assertThat(after24).isCloseTo(76.32, within(0.05));
    }

    /** A room warmed by machines alone, at rest: P = Σ A U ΔT with U-values by ISO 6946, windows and leaks none. */
    @Test
    void aRoomAtRestGivesWhatItGets() {
        double wool = 0.20;
        Room.Covering covering = new Room.Covering(List.of(Rigs.wool(wool)), 0, 0, 1);
        double side = 6;
        double power = 1000;
        Room room = new Room(
                side,
                side,
                3,
                covering,
                covering,
                new Room.Floor.Boards(List.of(Rigs.wool(wool))),
                List.of(),
                List.of(),
                new Room.Leakage(0, Room.Shelter.WALLED),
                1e6,
                new Room.Gains(0, 0, 0, 0));
        Rig rig = rig(room, null, null, List.of(), K, K);
        Plant plant = Compiler.compile(rig, NetworkTest.weather(rig));
        plant.people().power(power);
        // the fire draws no air through a cold chimney but for its leak: shut it
        plant.fire().inlet().open(0);
        Network network = plant.network();
        double[] y = network.start();
        State state = run(new Held(network), y, 400 * 86400.0);
        double[] x = network.columns(state.t, state.y);
        double resistance = wool / 0.038;
        // outside films: 20 W/(m2 K) to the air, 4.14 to as much sky as the surface sees
        double sky = x[network.wiring().signals().indexOf("sky")] - K;
        double wall = 4 * side * 3 / (0.13 + resistance + 1 / 22.07);
        double roof = side * side / (0.10 + resistance + 1 / 24.14);
        // joists cross a tenth of the floor's wool: softwood, 0.13 W/(m K)
        double joisted = wool / (0.9 * 0.038 + 0.1 * 0.13);
        double floor = side * side / (0.17 + joisted + 0.17);
        double fireAir = 1006 * x[plant.airFlow()];
        double inside = 0.5 * (x[plant.room()] + x[plant.contents()]);
        double toSky = wall * 2.07 / 22.07 * sky + roof * 4.14 / 24.14 * sky;
        double lifted = (power + toSky) / (wall + roof + floor + fireAir);
        assertThat(inside - K).isCloseTo(lifted, Percentage.withPercentage(2));
    }

    /**
     * A floor slab under a room that is 20 K warmer from one moment on, against the endless solid behind a film (Carslaw and
     * Jaeger 2.7): heat taken in by then, per m2, {@code h ΔT (e/h)² (exp H² erfc H − 1 + 2 H/√π)}, H = h √t/e. Concrete and clay have
     * nearly one effusivity, √(1.8 · 2.4e6) = 2078 and √(1.5 · 3.0e6) = 2121, so that they are one solid.
     */
    @Test
    void aSlabTakesInHeatAsTheEndlessSolidDoes() {
        double side = 30;
        Room room = room(side, new Room.Floor.Slab(0.1, 0, 0, 0.6, Room.Soil.CLAY));
        Rig rig = rig(room, null, null, List.of(), K + 10, K + 10);
        Plant plant = Compiler.compile(rig, NetworkTest.weather(rig));
        Network network = plant.network();
        double e = 2100;
        // films of air and contents side by side: 1.5 and 5.13 W/(m2 K)
        double h = 6.63;
        for (double hours : new double[] {3, 12, 24, 72, 240}) {
            double[] y = network.start();
            List<Integer> held = new ArrayList<>();
            for (int i = 0; i < y.length; i++) {
                String name = network.wiring().states().get(i).name();
                if (network.capacity(i) == 0) continue;
                boolean ground = name.startsWith("floor ") || name.startsWith("edge ");
                y[i] = K + (ground ? 10 : 30);
                if (!ground) held.add(i);
            }
            double[] before = y.clone();
            Held equations =
                    new Held(network, held.stream().mapToInt(Integer::intValue).toArray());
            State state = run(equations, y, hours * 3600);
            double taken = 0;
            for (int i = 0; i < y.length; i++) taken += network.capacity(i) * (state.y[i] - before[i]);
            // what has gone on through the ground and round the edge was taken in too
            double[] sums = state.sums;
            taken += sums[network.wiring().accounts().indexOf("floor")];
            double root = Math.sqrt(hours * 3600);
            double bigH = h * root / e;
            double solid = 20 * e * e / h * (erfcx(bigH) - 1 + 2 * bigH / Math.sqrt(Math.PI));
            assertThat(taken / (side * side)).as("%.0f h", hours).isCloseTo(solid, Percentage.withPercentage(12));
        }
    }

    /** exp(x²) erfc(x); Abramowitz and Stegun 7.1.26, 1.5e-7. */
    private static double erfcx(double x) {
        double t = 1 / (1 + 0.3275911 * x);
        return t * (0.254829592 + t * (-0.284496736 + t * (1.421413741 + t * (-1.453152027 + t * 1.061405429))));
    }

    /** 20 L of standing water at 70 C under 10 kW boil in 246 s, and then make 1.595 kg of steam an hour for each kW. */
    @Test
    void standingWaterBoilsByItsEnergyBalance() {
        Wiring wiring = new Wiring();
        double mass = 0.020 * Water.density(K + 70);
        double heat = 4195;
        int wall = wiring.node("metal", 200, K + 70);
        int water = wiring.node("water", mass * heat, K + 70);
        int above = wiring.node("riser", 1e9, Water.saturationTemperature(101325));
        int room = wiring.node("room", 1e9, K + 20);
        int flow = wiring.rate("flow", 0, 1);
        int wet = wiring.rate("wet", 1, 1);
        int header = wiring.rate("header", 0, 1);
        double saturation = Water.saturationTemperature(101325);
        PickupWater pickup = new PickupWater(
                wiring,
                new PickupWater.Places(
                        wall,
                        water,
                        wet,
                        header,
                        flow,
                        above,
                        room,
                        wiring.account("steam"),
                        wiring.meter("into water"),
                        wiring.meter("steam")),
                new PickupWater.Sizes(
                        1.0,
                        350,
                        Curve.of(m -> 0 * m, 0, 1.5, 8),
                        saturation,
                        Water.latentHeat(saturation),
                        mass,
                        20000,
                        0,
                        heat));
        wiring.add(pickup);
        Supply fire = new Supply(wiring.account("fire"), new int[] {wall}, new double[] {1});
        fire.power(10000);
        wiring.add(fire);
        Network network = new Network(wiring, new Network.Signals() {
            @Override
            public void at(double t, double[] out) {}

            @Override
            public void slopeAt(double t, double[] out) {}
        });
        double[] boils = {Double.NaN};
        State state = new State(0, network.start(), new double[network.sums()]);
        Integrator integrator = new Integrator(network, Tolerances.absolute(1e-4));
        integrator.advance(state, 360, step -> {
            int at = Plant.state(water);
            if (Double.isNaN(boils[0]) && step.value(at, step.end()) >= saturation - 0.01) boils[0] = step.end();
        });
        // the metal runs ahead of the water by 28 K, 6 kJ
        assertThat(boils[0]).isCloseTo(246, Percentage.withPercentage(2));
        double before = state.sums[wiring.accounts().size() + wiring.meters().indexOf("steam")];
        integrator.advance(state, 720, step -> {});
        double made = state.sums[wiring.accounts().size() + wiring.meters().indexOf("steam")] - before;
        // 360 s are a tenth of an hour
        assertThat(made).isCloseTo(10 * 1.595 / 10, Percentage.withPercentage(1));
    }

    /**
     * A slow loop without a pump: Hagen and Poiseuille, m = π ρ D⁴ Δp/(128 μ L), driven by 111.87 Pa for each metre of 80 beside
     * 60 C water (g (ρ_c − ρ_h), IAPWS-IF97).
     */
    @Test
    void aThinLoopRunsByPoiseuille() {
        double bore = 0.008;
        Pipe pipe = new Pipe(12, bore, 0.001, 0.05, 0.04, 0, 0, 0, Pipe.Where.ROOM);
        Pickup jacket = new Pickup("jacket", Pickup.Kind.JACKET, 0.3, 0.008, 30, 0.04, 1, 0.5, 0.004, 80);
        Store s = Rigs.store();
        Store store = new Store(
                new Store.Shape.Round(0.8, 1.6),
                12,
                s.wall(),
                s.jacket(),
                s.lid(),
                s.base(),
                Store.Standing.BLOCKS,
                1,
                Store.Cover.SEALED,
                1.1,
                0.95,
                0.05,
                null);
        Loop loop = new Loop(pipe, pipe, null, Double.NaN, 0, new Loop.Header(0.02, 3.2, 0.022));
        Rig rig = rig(Rigs.room(), store, loop, List.of(jacket), K + 10, K + 10);
        Plant plant = Compiler.compile(rig, NetworkTest.weather(rig));
        Network network = plant.network();
        double[] y = network.start();
        for (int i = 0; i < y.length; i++) {
            String name = network.wiring().states().get(i).name();
            if (network.capacity(i) > 0) y[i] = K + 60;
            if (name.startsWith("supply pipe") || name.equals("jacket water")) y[i] = K + 80;
        }
        double flow = plant.loop().standingFlow(network.columns(0, y));
        // half of the pickup and of the pipe's last metres stand between: from 0.5 m to the inlet's layer at 1.1 + 0.95
        // · 1.6
        double rise = 1.1 + 23.0 / 24 * 1.6 - 0.5;
        double length = 12 + 1 * Math.pow(bore / 0.04, 4);
        // the way up at 80 C is half of the length: the mean of both viscosities
        double viscosity = 0.5 * (3.5406e-4 + 4.6604e-4);
        double density = 977.8;
        double expected = Math.PI * density * Math.pow(bore, 4) * 111.87 * rise / (128 * viscosity * 2 * length);
        assertThat(4 * expected / (Math.PI * bore * viscosity)).as("Reynolds").isLessThan(2000);
        assertThat(flow).isCloseTo(expected, Percentage.withPercentage(10));
    }
}
