package stokewell.network;

import java.util.ArrayList;
import java.util.List;
import stokewell.balance.Gated;
import stokewell.balance.Supply;
import stokewell.balance.Surface;
import stokewell.balance.Wiring;
import stokewell.control.Latch;
import stokewell.emitter.AirTubes;
import stokewell.emitter.FanCoil;
import stokewell.emitter.FloorLoop;
import stokewell.emitter.RadiatorLaw;
import stokewell.loop.Circuit;
import stokewell.loop.PickupWater;
import stokewell.loop.SealedLoop;
import stokewell.loop.Vent;
import stokewell.matter.Air;
import stokewell.matter.Atmosphere;
import stokewell.matter.Curve;
import stokewell.matter.Water;
import stokewell.rig.Emitter;
import stokewell.rig.Loop;
import stokewell.rig.Pickup;
import stokewell.rig.Pump;
import stokewell.rig.Rig;
import stokewell.rig.RigFault;
import stokewell.rig.Safety;
import stokewell.rig.Store;
import stokewell.rig.Switch;
import stokewell.transfer.Forced;
import stokewell.weather.Weather;

/** Compiles a rig to a plant: wires every part in the order that heat flows and makes the network. */
public final class Compiler {

    private static final double G = 9.80665;
    private static final double REFERENCE = 333.15;
    /** Still water at a warm wall, W/(m2 K): common practice, 200 to 600. */
    private static final double STILL_WATER = 350;
    /** Steam for each kelvin over saturation, W/K: large, so that water hardly overshoots. */
    private static final double VENTING = 20000;
    /** Counterflow between a hot pickup and a cooler riser, W/K: common practice, no source. */
    private static final double COUNTERFLOW = 8;

    private static final double START = 285;

    private final Rig rig;
    private final Wiring wiring = new Wiring();
    private final double pressure;
    /** Over the air's pressure, Pa. */
    private final double sealed;

    private final List<PickupWater> pickups = new ArrayList<>();
    private final List<Vent> vents = new ArrayList<>();
    private final List<Circuit> circuits = new ArrayList<>();
    private final List<Plant.Boilable> waters = new ArrayList<>();
    private final List<Driven> driven = new ArrayList<>();
    private final List<Latch> latches = new ArrayList<>();
    private final List<int[]> sensors = new ArrayList<>();
    private RoomWiring room;
    private StoveWiring stove;
    private StoreWiring store;
    private Circuit loop;
    private SealedLoop sealedLoop;
    private int header = -1;
    private int[] wet = {};
    private int supplyCell = -1;
    private int backCell = -1;
    private int outletCell = -1;

    private final boolean eased;

    private Compiler(Rig rig, boolean eased) {
        this.rig = rig;
        this.eased = eased;
        pressure = Atmosphere.pressure(rig.place().altitude());
        sealed = sealedPressure(rig);
    }

    /** Pressure that a closed loop holds before anything leaves it, Pa above the air's: 0 on an open one. */
    private static double sealedPressure(Rig rig) {
        Safety safety = rig.safety();
        if (!safety.closed()) return 0;
        return safety.relief() == null
                ? safety.vessel().fill()
                : safety.relief().opens();
    }

    /** Surfaces of a rig whose sun its weather must give, in order. */
    public static List<stokewell.weather.Surface> surfaces(Rig rig) {
        return RoomWiring.surfaces(rig);
    }

    /**
     * Compiles.
     *
     * @param weather made for {@link #surfaces} of the same rig
     * @throws RigFault where parts do not fit each other
     */
    public static Plant compile(Rig rig, Weather weather) {
        RoomWiring.checkChannels(weather, surfaces(rig).size());
        return new Compiler(rig, false).plant(weather);
    }

    /** Compiles with the fans' thermostats eased, see {@link Gated}: what a fit to readings runs. */
    public static Plant compileEased(Rig rig, Weather weather) {
        RoomWiring.checkChannels(weather, surfaces(rig).size());
        return new Compiler(rig, true).plant(weather);
    }

    private Plant plant(Weather weather) {
        room = new RoomWiring(wiring, rig, START);
        stove = new StoveWiring(wiring, rig, pressure, START);
        boolean wetRig = rig.store() != null;
        if (wetRig) store = new StoreWiring(wiring, rig, pressure, START);
        boolean onFloor = wetRig && rig.store().standing() != Store.Standing.BLOCKS;
        room.wire(wetRig ? store.footprint() : 0, onFloor, RoomWiring.airDensity(rig, pressure), stove.airFlow);
        stove.wire(room);
        if (rig.loop() != null) loop();
        for (Emitter e : rig.emitters()) emitter(e);
        if (wetRig) {
            double[] saturation = new double[store.node.length];
            double depth = 0.5 * (rig.store().elevation() + store.shape.height() - store.height[0]);
            saturation[0] = storeSaturation(Math.max(0, depth));
            for (int i = 1; i < saturation.length; i++) {
                saturation[i] = storeSaturation(store.height[0] - store.height[i]);
            }
            store.wire(room, saturation, VENTING);
            vent("store top", store.node[0], saturation[0]);
            for (int i = 1; i < saturation.length; i++) {
                waters.add(new Plant.Boilable("store", store.node[i], saturation[i]));
            }
        }
        Network network = new Network(wiring, new Network.Signals() {
            @Override
            public void at(double t, double[] out) {
                weather.at(t, out);
            }

            @Override
            public void slopeAt(double t, double[] out) {
                weather.slopeAt(t, out);
            }
        });
        double[] capacities = new double[store == null ? 0 : store.node.length];
        for (int i = 0; i < capacities.length; i++) capacities[i] = network.capacity(Plant.state(store.node[i]));
        return new Plant(
                rig,
                network,
                stove.fire,
                room.air,
                room.contents,
                stove.body,
                stove.chimney,
                room.outdoors,
                stove.raw,
                stove.fuelWater,
                stove.volatiles,
                stove.carbon,
                stove.gasTemperature,
                stove.airFlow,
                store == null ? new int[0] : store.node.clone(),
                capacities,
                loop,
                List.copyOf(circuits),
                List.copyOf(pickups),
                stove.contact,
                List.copyOf(vents),
                header,
                wet,
                List.copyOf(waters),
                List.copyOf(driven),
                List.copyOf(latches),
                List.copyOf(sensors),
                room.exchange,
                room.people,
                pressure,
                sealedLoop);
    }

    /** Saturation temperature under a head of water, K. */
    private double saturationAt(double head) {
        return Water.saturationTemperature(pressure + sealed + 960 * G * head);
    }

    /** The same in the store, which a coil keeps apart from a closed loop's pressure. */
    private double storeSaturation(double head) {
        boolean apart = rig.store().coil() != null;
        return Water.saturationTemperature(pressure + (apart ? 0 : sealed) + 960 * G * head);
    }

    private void vent(String name, int node, double saturation) {
        // a closed loop's steam stands in it until the relief valve opens
        if (rig.safety().closed() && rig.loop() != null && name.equals("supply pipe")) {
            waters.add(new Plant.Boilable(name, node, saturation));
            return;
        }
        Vent vent = new Vent(
                wiring,
                node,
                wiring.account("steam"),
                wiring.meter("steam lost"),
                saturation,
                VENTING,
                Water.latentHeat(saturation));
        vents.add(vent);
        waters.add(new Plant.Boilable(name, node, saturation));
        wiring.add(vent);
    }

    private void loop() {
        Loop l = rig.loop();
        Store s = rig.store();
        if (l.glycol() > 0 && s.coil() == null) {
            throw new RigFault(
                    "loop",
                    "glycol",
                    "antifreeze would fill the whole store",
                    "give the store a coil that keeps the loop apart, or take the glycol out");
        }
        Fluid fluid = new Fluid(l.glycol());
        CircuitWiring circuit = new CircuitWiring(wiring, room, fluid, START);
        int inlet = store.layerAt(s.supplyPort());
        int draw = store.layerAt(s.returnPort());
        boolean coil = s.coil() != null;
        double high = coil ? s.elevation() + s.coil().top() * store.shape.height() : store.height[inlet];
        double low = coil ? s.elevation() + s.coil().bottom() * store.shape.height() : store.height[draw];
        List<Pickup> list = rig.pickups();
        circuit.pipe("return pipe", l.back(), low, list.get(0).elevation());
        backCell = circuit.cell(0);
        int[] water = new int[list.size()];
        for (int i = 0; i < water.length; i++) {
            Pickup p = list.get(i);
            water[i] = wiring.node(
                    p.name() + " water", p.volume() * fluid.density(REFERENCE) * fluid.specificHeat(), START);
            circuit.device(water[i], p.elevation(), p.length(), p.bore(), 2.5, 1);
        }
        outletCell = water[water.length - 1];
        int firstSupply = circuit.next();
        circuit.pipe("supply pipe", l.supply(), list.get(list.size() - 1).elevation(), high);
        int riser = circuit.cell(firstSupply);
        supplyCell = circuit.cell(circuit.next() - 1);
        List<Integer> storeNodes = List.of();
        List<Double> storeHeights = List.of();
        if (coil) coil(circuit, fluid, high, low);
        else {
            storeNodes = store.nodesBetween(inlet, draw);
            storeHeights = store.heightsBetween(inlet, draw);
        }

        double last = list.get(list.size() - 1).elevation();
        double lift = Math.max(0, high - last);
        double lastSaturation = saturationAt(Math.max(0, l.header().level() - last));
        double drift = 0.35
                * Math.sqrt(9.80665 * l.supply().bore())
                * Math.PI
                / 4
                * l.supply().bore()
                * l.supply().bore()
                * Water.steamDensity(lastSaturation)
                * Water.latentHeat(lastSaturation);
        Circuit.Bubbles bubbles =
                lift > 0 ? new Circuit.Bubbles(outletCell, riser, lastSaturation, VENTING, drift, lift) : null;
        loop = circuit.close("loop", storeNodes, storeHeights, l.pump(), l.checkValve(), bubbles);
        circuits.add(loop);
        if (!coil) store.passes(loop.flowState(), inlet, draw);

        header = wiring.rate("header water", l.header().water() * 998, 0.2);
        wet = new int[water.length];
        for (int i = 0; i < water.length; i++) wet[i] = wiring.rate(list.get(i).name() + " wet", 1, 0.02);
        if (rig.safety().closed()) seal(circuit, water, fluid);
        for (int i = 0; i < water.length; i++) {
            int above = i + 1 < water.length ? water[i + 1] : riser;
            pickup(list.get(i), i, water[i], above, fluid);
        }
        double pipeTop = saturationAt(Math.max(0, l.header().level() - high));
        for (int i = firstSupply; i < circuit.next() && !coil; i++) vent("supply pipe", circuit.cell(i), pipeTop);
        if (coil) vent("supply pipe", riser, pipeTop);
        drive("pump", loop, null, pumpPower(l.pump()));
    }

    private void seal(CircuitWiring circuit, int[] water, Fluid fluid) {
        SealedWiring made = new SealedWiring(wiring, rig, fluid, pressure);
        made.pickups(water, wet, header);
        made.pipes(circuit);
        if (rig.store().coil() == null) made.store(store.node);
        sealedLoop = made.close(room.air);
        Latch latch = keep(made.latch(sealedLoop));
        driven.add(new Driven(
                Plant.RELIEF,
                null,
                null,
                null,
                0,
                List.of(latch),
                null,
                null,
                rig.safety().relief() != null,
                sealedLoop));
    }

    private void coil(CircuitWiring circuit, Fluid fluid, double high, double low) {
        Store.Coil c = rig.store().coil();
        int cells = 4;
        double piece = c.length() / cells;
        double volume = Math.PI / 4 * c.bore() * c.bore() * piece;
        double area = Math.PI * c.bore() * piece;
        for (int i = 0; i < cells; i++) {
            double share = c.top() - (c.top() - c.bottom()) * (i + 0.5) / cells;
            int node = wiring.node(
                    "store coil " + (i + 1), volume * fluid.density(REFERENCE) * fluid.specificHeat() + 500, START);
            circuit.device(node, high + (low - high) * (i + 0.5) / cells, piece, c.bore(), 0.3, 1);
            // inside forced, outside natural convection of water: common practice, 350 to 600 W/(m2 K) together
            wiring.conduct(node, store.node[store.layerAt(share)], 450 * area);
        }
    }

    private void pickup(Pickup p, int i, int water, int above, Fluid fluid) {
        double saturation = saturationAt(Math.max(0, rig.loop().header().level() - p.elevation()));
        double mu = fluid.viscosity(REFERENCE);
        double k = fluid.conductivity(REFERENCE);
        double prandtl = mu * fluid.specificHeat() / k;
        Curve forced = Curve.of(
                m -> {
                    double re = 4 * m / (Math.PI * p.bore() * mu);
                    return m <= 0 ? 0 : Forced.pipe(re, prandtl, p.bore() / p.length()) * k / p.bore();
                },
                0,
                1.5,
                150);
        PickupWater.Places places = new PickupWater.Places(
                stove.walls[i],
                water,
                wet[i],
                header,
                loop.flowState(),
                above,
                room.air,
                wiring.account("steam"),
                wiring.meter("fire to water"),
                wiring.meter("steam lost"));
        PickupWater.Sizes sizes = new PickupWater.Sizes(
                p.area(),
                STILL_WATER,
                forced,
                saturation,
                Water.latentHeat(saturation),
                p.volume() * 960,
                VENTING,
                COUNTERFLOW,
                fluid.specificHeat());
        PickupWater part = new PickupWater(wiring, places, sizes, sealedLoop);
        pickups.add(part);
        waters.add(new Plant.Boilable(p.name(), water, saturation));
        wiring.add(part);
    }

    private void emitter(Emitter emitter) {
        if (emitter instanceof Emitter.AirTubes e) airTubes(e);
        else if (emitter instanceof Emitter.FanCoil e) fanCoil(e);
        else if (emitter instanceof Emitter.Radiator e) radiator(e);
        else if (emitter instanceof Emitter.FloorLoop e) floorLoop(e);
        else throw new AssertionError("no wiring for " + emitter);
    }

    private int emitterMeter() {
        return wiring.meter("store's heat to room");
    }

    private double airRate(Emitter.Fan fan) {
        return fan.flow() * fan.speed() * Air.density(300, pressure) * 1007;
    }

    private void airTubes(Emitter.AirTubes e) {
        AirTubes tubes = new AirTubes(e.count(), e.length(), e.bore() + 0.003, e.bore(), 50, 0.05e-3, 0);
        double speed = e.fan().flow() * e.fan().speed() / tubes.passage();
        double nu = 2.0e-5 / Air.density(310, pressure);
        double re = speed * e.bore() / nu;
        double airFilm = Math.max(6, Forced.pipe(re, 0.71, e.bore() / e.length()) * 0.027 / e.bore());
        double on = AirTubes.conductance(tubes.ua(airFilm, 300), airRate(e.fan()));
        int low = store.layerAt(e.bottom());
        int high = store.layerAt(e.top());
        int[] nodes = new int[low - high + 1];
        double[] share = new double[nodes.length];
        for (int i = 0; i < nodes.length; i++) {
            nodes[i] = store.node[high + i];
            share[i] = 1.0 / nodes.length;
        }
        Gated blown = new Gated(wiring, nodes, share, room.air, emitterMeter(), on, e.stillLeak() * on);
        wiring.add(blown);
        drive(e.name(), null, blown, fanPower(e.fan()));
    }

    /** Fan power by the affinity law. */
    private static double fanPower(Emitter.Fan fan) {
        return fan.power() * Math.pow(fan.speed(), 3);
    }

    private void fanCoil(Emitter.FanCoil e) {
        int water = wiring.node(e.name() + " water", e.volume() * 4.1e6 + 4000, START);
        double air = airRate(new Emitter.Fan(e.fan().flow(), e.fan().power(), 1));
        double ratedWater = e.ratedPower() / 10;
        FanCoil coil = FanCoil.rated(
                e.ratedPower(),
                e.ratedWater(),
                e.ratedAir(),
                Math.max(air, 1.05 * e.ratedPower() / (e.ratedWater() - e.ratedAir())),
                ratedWater);
        double now = coil.conductance(airRate(e.fan()), ratedWater);
        // conductance counts from the water as it comes in; the cell's own temperature is that of the water leaving
        double mixed = now / Math.max(0.2, 1 - now / ratedWater);
        Gated blown =
                new Gated(wiring, new int[] {water}, new double[] {1}, room.air, emitterMeter(), mixed, 0.06 * mixed);
        wiring.add(blown);
        Circuit circuit = emitterCircuit(e.name(), e.circuit(), List.of(water), 1.2, 6, 0.02, 6, 1);
        drive(
                e.name(),
                circuit,
                blown,
                fanPower(e.fan()) + pumpPower(e.circuit().pump()));
    }

    /** Pump power by the affinity law. */
    private static double pumpPower(Pump pump) {
        return pump == null ? 0 : pump.power() * Math.pow(pump.speed(), 3);
    }

    private void radiator(Emitter.Radiator e) {
        int water = wiring.node(e.name() + " water", e.volume() * 4.1e6 + e.metal() * 480, START);
        RadiatorLaw law = new RadiatorLaw(e.ratedPower(), e.exponent(), e.ratedDifference());
        giveTo(room.air, water, 1 - e.radiant(), law);
        giveTo(room.contents, water, e.radiant(), law);
        Circuit circuit = emitterCircuit(e.name(), e.circuit(), List.of(water), e.elevation(), 2, 0.02, 2.5, 1);
        drive(e.name(), circuit, null, pumpPower(e.circuit().pump()));
    }

    /** A share of a radiator's heat, by the law at the taker's own temperature. */
    private void giveTo(int taker, int water, double share, RadiatorLaw law) {
        if (share <= 0) return;
        Curve heat = Curve.of(dt -> share * law.power(dt), -60, 110, 340);
        wiring.add(new Surface(wiring, water, taker, emitterMeter(), heat));
    }

    private void floorLoop(Emitter.FloorLoop e) {
        if (room.floor < 0) {
            throw new RigFault(e.name(), "floor loop", "the room has no slab to lay it in", "use another emitter");
        }
        double outer = e.bore() + 0.004;
        double r = FloorLoop.resistance(e.spacing(), outer, e.bore(), 0.4, 1.8, 1500);
        double area = e.length() * e.spacing();
        List<Integer> cells = new ArrayList<>();
        int n = 3;
        for (int i = 0; i < n; i++) {
            double volume = Math.PI / 4 * e.bore() * e.bore() * e.length() / n;
            int node = wiring.node(e.name() + " water " + (i + 1), volume * 4.1e6, START);
            cells.add(node);
            double g = area / n / r;
            wiring.conductMetered(node, room.floor, emitterMeter(), g);
        }
        Circuit circuit =
                emitterCircuit(e.name(), e.circuit(), cells, -0.05, e.length() / e.loops(), e.bore(), 4, e.loops());
        drive(e.name(), circuit, null, pumpPower(e.circuit().pump()));
    }

    private Circuit emitterCircuit(
            String name,
            Emitter.Circuit c,
            List<Integer> cells,
            double elevation,
            double length,
            double bore,
            double k,
            int side) {
        CircuitWiring circuit = new CircuitWiring(wiring, room, new Fluid(0), START);
        int draw = store.layerAt(c.draw());
        int inlet = store.layerAt(c.giveBack());
        circuit.pipe(name + " supply", c.supply(), store.height[draw], elevation);
        for (int cell : cells) circuit.device(cell, elevation, length / cells.size(), bore, k / cells.size(), side);
        circuit.pipe(name + " back", c.back(), elevation, store.height[inlet]);
        Circuit made = circuit.close(
                name,
                store.nodesBetween(inlet, draw),
                store.heightsBetween(inlet, draw),
                c.pump(),
                c.checkValve(),
                null);
        circuits.add(made);
        store.passes(made.flowState(), inlet, draw);
        return made;
    }

    private void drive(String name, Circuit circuit, Gated blown, double watts) {
        Supply motor = new Supply(wiring.account("electricity"), new int[] {room.air}, new double[] {1});
        wiring.add(motor);
        List<Latch> allow = new ArrayList<>();
        Latch high = null;
        Switch.Hours hours = null;
        boolean any = false;
        boolean easing = eased
                && circuit == null
                && blown != null
                && rig.switches().stream()
                        .filter(s -> s.drives().equals(name))
                        .allMatch(s -> s.differential() == null && s.highLimit() == null);
        List<Gated.Call> calls = new ArrayList<>();
        for (Switch s : rig.switches()) {
            if (!s.drives().equals(name)) continue;
            any = true;
            for (Switch.Thermostat t : new Switch.Thermostat[] {s.thermostat(), s.lowLimit()}) {
                if (t == null) continue;
                if (easing) calls.add(new Gated.Call(sensor(t.sensor()), t.on(), t.off()));
                else allow.add(latch(t));
            }
            if (s.differential() != null) {
                Switch.Differential d = s.differential();
                allow.add(keep(new Latch(sensor(d.hot()), sensor(d.cold()), d.on(), d.off())));
            }
            if (s.highLimit() != null) high = latch(s.highLimit());
            if (s.hours() != null) hours = s.hours();
        }
        if (easing) blown.ease(wiring, calls.toArray(Gated.Call[]::new));
        boolean regular = any && (!allow.isEmpty() || !calls.isEmpty() || hours != null);
        driven.add(new Driven(name, circuit, blown, motor, watts, List.copyOf(allow), high, hours, regular, null));
    }

    private Latch latch(Switch.Thermostat t) {
        return keep(new Latch(sensor(t.sensor()), t.on(), t.off()));
    }

    private Latch keep(Latch latch) {
        latches.add(latch);
        return latch;
    }

    private int sensor(Switch.Sensor s) {
        int a;
        int b;
        double share = 0;
        switch (s.at()) {
            case ROOM -> a = b = room.air;
            case STOVE -> a = b = stove.body;
            case OUTDOORS -> a = b = room.outdoors;
            case OUTLET -> a = b = need(outletCell, "outlet");
            case SUPPLY -> a = b = need(supplyCell, "supply");
            case BACK -> a = b = need(backCell, "back");
            case PICKUP -> a = b = pickupNamed(s.of());
            case STORE -> {
                if (store == null) throw new RigFault("sensor", "at", "there is no store", "choose another place");
                double position = (1 - s.height()) * store.node.length - 0.5;
                int upper = Math.max(0, Math.min(store.node.length - 1, (int) Math.floor(position)));
                int lower = Math.min(store.node.length - 1, upper + 1);
                share = Math.max(0, Math.min(1, position - upper));
                a = store.node[upper];
                b = store.node[lower];
            }
            default -> throw new AssertionError("no place " + s.at());
        }
        int reading = wiring.rate("sensor " + (sensors.size() + 1), START, 1);
        wiring.follow(reading, a, b, share, s.lag());
        sensors.add(new int[] {reading, a, b});
        return reading;
    }

    private static int need(int cell, String place) {
        if (cell < 0)
            throw new RigFault("sensor", "at", "there is no loop for a sensor at its " + place, "choose another");
        return cell;
    }

    private int pickupNamed(String name) {
        if (pickups.isEmpty()) throw new RigFault("sensor", "at", "there is no pickup", "choose another place");
        if (name.isEmpty()) return pickups.get(pickups.size() - 1).water();
        for (int i = 0; i < pickups.size(); i++) {
            if (rig.pickups().get(i).name().equals(name)) return pickups.get(i).water();
        }
        throw new RigFault("sensor", "of", "no pickup is called \"" + name + "\"", "use the name of a pickup");
    }
}
