package stokewell.network;

import java.util.ArrayList;
import java.util.List;
import stokewell.balance.Gated;
import stokewell.balance.Wiring;
import stokewell.loop.Circuit;
import stokewell.matter.Atmosphere;
import stokewell.rig.Emitter;
import stokewell.rig.Rig;
import stokewell.rig.RigFault;
import stokewell.rig.Store;
import stokewell.weather.Site;
import stokewell.weather.Weather;

/** Compiles a rig to a plant: wires every part in the order that heat flows and makes the network. */
public final class Compiler {

    private static final double START = 285;

    private Compiler() {}

    /** Surfaces of a rig whose sun its weather must give, in order. */
    public static List<stokewell.weather.Surface> surfaces(Rig rig) {
        return RoomWiring.surfaces(rig);
    }

    /** Where a rig stands, as its weather must know it. */
    public static Site site(Rig rig) {
        return new Site(
                rig.place().latitude(),
                rig.place().longitude(),
                rig.place().utcOffset(),
                rig.place().altitude());
    }

    /**
     * Compiles.
     *
     * @param weather made for {@link #surfaces} of the same rig
     * @throws RigFault where parts do not fit each other
     */
    public static Plant compile(Rig rig, Weather weather) {
        RoomWiring.checkChannels(weather, surfaces(rig).size());
        return plant(rig, weather, false);
    }

    /** Compiles with the fans' thermostats eased, see {@link Gated}: what a fit to readings runs. */
    public static Plant compileEased(Rig rig, Weather weather) {
        RoomWiring.checkChannels(weather, surfaces(rig).size());
        return plant(rig, weather, true);
    }

    /**
     * A plant in other weather, without compiling it again: a third of the time of a drag's night in real weather.
     *
     * @param plant   as compiled; what has run with it so far must not run on
     * @param weather made for the same surfaces
     */
    public static Plant under(Plant plant, Weather weather) {
        RoomWiring.checkChannels(weather, surfaces(plant.rig()).size());
        plant.network().under(signals(weather));
        return plant;
    }

    private static Network.Signals signals(Weather weather) {
        return new Network.Signals() {
            @Override
            public void at(double t, double[] out) {
                weather.at(t, out);
            }

            @Override
            public void slopeAt(double t, double[] out) {
                weather.slopeAt(t, out);
            }
        };
    }

    private static Plant plant(Rig rig, Weather weather, boolean eased) {
        Wiring wiring = new Wiring();
        double pressure = Atmosphere.pressure(rig.place().altitude());
        RoomWiring room = new RoomWiring(wiring, rig, START);
        StoveWiring stove = new StoveWiring(wiring, rig, pressure, START);
        StoreWiring store = rig.store() == null ? null : new StoreWiring(wiring, rig, pressure, START);
        boolean onFloor = store != null && rig.store().standing() != Store.Standing.BLOCKS;
        room.wire(store == null ? 0 : store.footprint(), onFloor, RoomWiring.airDensity(rig, pressure), stove.airFlow);
        stove.wire(room);
        BoilingWiring boiling = new BoilingWiring(wiring, rig, pressure);
        SwitchWiring switches = new SwitchWiring(wiring, rig, room, stove, store, eased, START);
        LoopWiring loop = null;
        if (rig.loop() != null) {
            loop = new LoopWiring(wiring, rig, pressure, START, room, stove, store, boiling, switches);
            switches.loop = loop;
            switches.drive(
                    "pump",
                    loop.circuit,
                    null,
                    SwitchWiring.pumpPower(rig.loop().pump()));
        }
        EmitterWiring emitters = new EmitterWiring(wiring, pressure, START, room, store, switches);
        for (Emitter e : rig.emitters()) emitters.wire(e);
        if (store != null) store.wire(room, boiling);
        List<Circuit> circuits = new ArrayList<>();
        if (loop != null) circuits.add(loop.circuit);
        circuits.addAll(emitters.circuits);
        Network network = new Network(wiring, signals(weather));
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
                loop == null ? null : loop.circuit,
                List.copyOf(circuits),
                loop == null ? List.of() : List.copyOf(loop.pickups),
                stove.contact,
                List.copyOf(boiling.vents),
                loop == null ? -1 : loop.header,
                loop == null ? new int[0] : loop.wet,
                List.copyOf(boiling.waters),
                List.copyOf(switches.driven),
                List.copyOf(switches.latches),
                List.copyOf(switches.sensors),
                room.exchange,
                room.people,
                pressure,
                loop == null ? null : loop.sealed);
    }
}
