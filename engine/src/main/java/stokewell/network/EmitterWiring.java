package stokewell.network;

import java.util.ArrayList;
import java.util.List;
import stokewell.balance.Gated;
import stokewell.balance.Surface;
import stokewell.balance.Wiring;
import stokewell.emitter.AirTubes;
import stokewell.emitter.FanCoil;
import stokewell.emitter.FloorLoop;
import stokewell.emitter.RadiatorLaw;
import stokewell.loop.Circuit;
import stokewell.matter.Air;
import stokewell.matter.Curve;
import stokewell.rig.Emitter;
import stokewell.rig.RigFault;
import stokewell.transfer.Forced;

/** What gives the store's heat to the room: air tubes, fan coils, radiators, floor loops. */
final class EmitterWiring {

    private final Wiring wiring;
    private final double pressure;
    private final double start;
    private final RoomWiring room;
    private final StoreWiring store;
    private final SwitchWiring switches;

    /** Circuits of their own, in the order of the rig. */
    final List<Circuit> circuits = new ArrayList<>();

    EmitterWiring(
            Wiring wiring, double pressure, double start, RoomWiring room, StoreWiring store, SwitchWiring switches) {
        this.wiring = wiring;
        this.pressure = pressure;
        this.start = start;
        this.room = room;
        this.store = store;
        this.switches = switches;
    }

    void wire(Emitter emitter) {
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
        switches.drive(e.name(), null, blown, fanPower(e.fan()));
    }

    /** Fan power by the affinity law. */
    private static double fanPower(Emitter.Fan fan) {
        return fan.power() * Math.pow(fan.speed(), 3);
    }

    private void fanCoil(Emitter.FanCoil e) {
        int water = wiring.node(e.name() + " water", e.volume() * 4.1e6 + 4000, start);
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
        Circuit circuit = emitterCircuit(e.name(), e.circuit(), List.of(water), 1.2, 6, 0.02, 6, 1, Double.NaN);
        switches.drive(
                e.name(),
                circuit,
                blown,
                fanPower(e.fan()) + SwitchWiring.pumpPower(e.circuit().pump()));
    }

    private void radiator(Emitter.Radiator e) {
        int water = wiring.node(e.name() + " water", e.volume() * 4.1e6 + e.metal() * 480, start);
        RadiatorLaw law = new RadiatorLaw(e.ratedPower(), e.exponent(), e.ratedDifference());
        giveTo(room.air, water, 1 - e.radiant(), law);
        giveTo(room.contents, water, e.radiant(), law);
        Circuit circuit =
                emitterCircuit(e.name(), e.circuit(), List.of(water), e.elevation(), 2, 0.02, 2.5, 1, Double.NaN);
        switches.drive(
                e.name(), circuit, null, SwitchWiring.pumpPower(e.circuit().pump()));
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
            int node = wiring.node(e.name() + " water " + (i + 1), volume * 4.1e6, start);
            cells.add(node);
            double g = area / n / r;
            wiring.conductMetered(node, room.floor, emitterMeter(), g);
        }
        Circuit circuit = emitterCircuit(
                e.name(), e.circuit(), cells, -0.05, e.length() / e.loops(), e.bore(), 4, e.loops(), e.mixedTo());
        switches.drive(
                e.name(), circuit, null, SwitchWiring.pumpPower(e.circuit().pump()));
    }

    private Circuit emitterCircuit(
            String name,
            Emitter.Circuit c,
            List<Integer> cells,
            double elevation,
            double length,
            double bore,
            double k,
            int side,
            double mixedTo) {
        CircuitWiring circuit = new CircuitWiring(wiring, room, new Fluid(0), start);
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
                null,
                mixedTo);
        circuits.add(made);
        store.passes(made, inlet, draw);
        return made;
    }
}
