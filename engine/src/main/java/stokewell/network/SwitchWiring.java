package stokewell.network;

import java.util.ArrayList;
import java.util.List;
import stokewell.balance.Gated;
import stokewell.balance.Supply;
import stokewell.balance.Wiring;
import stokewell.control.Latch;
import stokewell.loop.Circuit;
import stokewell.loop.SealedLoop;
import stokewell.rig.Pump;
import stokewell.rig.Rig;
import stokewell.rig.RigFault;
import stokewell.rig.Switch;

/** Pumps, fans and the relief valve with what starts and stops them: switches, their sensors, and the motors' heat. */
final class SwitchWiring {

    private final Wiring wiring;
    private final Rig rig;
    private final RoomWiring room;
    private final StoveWiring stove;
    private final StoreWiring store;
    private final boolean eased;
    private final double start;
    /** Set as soon as there is one: its places may carry sensors. */
    LoopWiring loop;

    final List<Driven> driven = new ArrayList<>();
    final List<Latch> latches = new ArrayList<>();
    final List<int[]> sensors = new ArrayList<>();

    /** @param store null where there is none */
    SwitchWiring(
            Wiring wiring,
            Rig rig,
            RoomWiring room,
            StoveWiring stove,
            StoreWiring store,
            boolean eased,
            double start) {
        this.wiring = wiring;
        this.rig = rig;
        this.room = room;
        this.stove = stove;
        this.store = store;
        this.eased = eased;
        this.start = start;
    }

    /** A relief valve that opens and shuts by the loop's pressure; there only if one is fitted. */
    void relief(SealedLoop sealed, Latch latch) {
        driven.add(new Driven(
                Plant.RELIEF,
                null,
                null,
                null,
                0,
                List.of(keep(latch)),
                null,
                null,
                rig.safety().relief() != null,
                sealed));
    }

    void drive(String name, Circuit circuit, Gated blown, double watts) {
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

    /** Pump power by the affinity law. */
    static double pumpPower(Pump pump) {
        return pump == null ? 0 : pump.power() * Math.pow(pump.speed(), 3);
    }

    private Latch latch(Switch.Thermostat t) {
        return keep(new Latch(sensor(t.sensor()), t.on(), t.off()));
    }

    Latch keep(Latch latch) {
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
            case OUTLET -> a = b = need(loop == null ? -1 : loop.outletCell, "outlet");
            case SUPPLY -> a = b = need(loop == null ? -1 : loop.supplyCell, "supply");
            case BACK -> a = b = need(loop == null ? -1 : loop.backCell, "back");
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
        int reading = wiring.rate("sensor " + (sensors.size() + 1), start, 1);
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
        if (loop == null || loop.pickups.isEmpty()) {
            throw new RigFault("sensor", "at", "there is no pickup", "choose another place");
        }
        if (name.isEmpty()) return loop.pickups.get(loop.pickups.size() - 1).water();
        for (int i = 0; i < loop.pickups.size(); i++) {
            if (rig.pickups().get(i).name().equals(name))
                return loop.pickups.get(i).water();
        }
        throw new RigFault("sensor", "of", "no pickup is called \"" + name + "\"", "use the name of a pickup");
    }
}
