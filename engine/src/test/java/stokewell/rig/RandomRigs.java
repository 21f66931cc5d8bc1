package stokewell.rig;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;
import stokewell.matter.Wood;

/**
 * Valid rigs drawn by lot, one for each seed. Most of their numbers are such as somebody builds; about one in twelve comes
 * from the far ends of what the records allow, so that every run meets a few odd things and none only odd things.
 */
public final class RandomRigs {

    private static final double K = 273.15;

    private final Random random;
    private final double odd;

    private RandomRigs(long seed, double odd) {
        random = new Random(0x9E3779B97F4A7C15L * (seed + 1));
        this.odd = odd;
    }

    /** Any rig. */
    public static Rig of(long seed) {
        return new RandomRigs(seed, 0.08).rig("random " + seed, false);
    }

    /** A rig without far-out numbers, loaded and aired by the clock, with no switch that waits for a temperature. */
    public static Rig byClock(long seed) {
        return new RandomRigs(seed, 0).rig("by clock " + seed, true);
    }

    /** The same layers with each insulating one changed. */
    public static List<Layer> changed(List<Layer> layers, UnaryOperator<Layer> change) {
        return layers.stream()
                .map(l -> l.conductivity() < 0.07 ? change.apply(l) : l)
                .toList();
    }

    // drawing

    private boolean chance(double share) {
        return random.nextDouble() < share;
    }

    private double even(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private double log(double low, double high) {
        return low * Math.pow(high / low, random.nextDouble());
    }

    /** Mostly from the inner range, now and then from the outer; sizes are drawn by their logarithm. */
    private double size(double low, double high, double least, double most) {
        return chance(odd) ? log(least, most) : log(low, high);
    }

    private double value(double low, double high, double least, double most) {
        return chance(odd) ? even(least, most) : even(low, high);
    }

    private int whole(int low, int high) {
        return low + random.nextInt(high - low + 1);
    }

    @SafeVarargs
    private <T> T one(T... of) {
        return of[random.nextInt(of.length)];
    }

    // the rig

    private Rig rig(String name, boolean byClock) {
        Place place = new Place(
                value(0.6, 1.15, -1.2, 1.3),
                even(-3.1, 3.1),
                Double.NaN,
                chance(0.3) ? even(0, 3500) : even(0, 600),
                K + value(2, 14, -15, 28));
        double low = K + value(-25, 5, -40, 15);
        Outdoors weather = new Outdoors(
                "", low, low + value(0, 12, 0, 25), value(0, 6, 0, 25), random.nextDouble(), whole(1, 366));
        Room room = room();
        Stove stove = stove(byClock);
        Flue flue = new Flue(
                size(0.12, 0.2, 0.07, 0.5),
                value(0.3, 3, 0, 10),
                size(3, 8, 0.6, 30),
                random.nextDouble(),
                value(0, 0.6, 0, 3),
                size(10, 80, 3, 3000),
                value(2, 10, 1, 50));
        boolean dry = chance(0.5);
        Fuel fuel = new Fuel(
                one(Wood.names().toArray(String[]::new)),
                dry ? value(0.08, 0.4, 0, 1.4) : value(0.08, 0.3, 0, 0.6),
                dry ? Fuel.Basis.DRY : Fuel.Basis.WET,
                one(Fuel.Form.values()),
                0.62);
        Habit habit = habit(stove, byClock);
        if (chance(0.12)) {
            return new Rig(
                    name, "", place, weather, room, stove, flue, fuel, habit, List.of(), null, null, List.of(),
                    List.of());
        }
        boolean looped = chance(0.92);
        Store store = store();
        List<Pickup> pickups = looped ? pickups() : List.of();
        Loop loop = looped ? loop(store) : null;
        List<Emitter> emitters = emitters(room);
        return new Rig(
                name,
                "",
                place,
                weather,
                room,
                stove,
                flue,
                fuel,
                habit,
                pickups,
                loop,
                store,
                emitters,
                switches(loop, emitters, pickups, byClock));
    }

    private Layer insulation() {
        double thick = value(0.02, 0.25, 0, 1);
        return one(Rigs.wool(thick), Rigs.xps(thick), Rigs.layer(thick, "straw", 0.06, 100, 1500));
    }

    private List<Layer> covering() {
        List<Layer> layers = new ArrayList<>();
        if (chance(0.7)) layers.add(Rigs.layer(value(0.01, 0.03, 0.001, 0.3), "softwood", 0.13, 500, 1600));
        if (chance(0.3)) layers.add(Rigs.layer(value(0.05, 0.4, 0.01, 1.5), "brick", 0.7, 1700, 850));
        if (chance(0.8)) layers.add(insulation());
        if (layers.isEmpty() || chance(0.5))
            layers.add(Rigs.layer(value(0.0005, 0.001, 0, 0.02), "steel", 50, 7800, 450));
        return layers;
    }

    private Room room() {
        double length = size(2.5, 15, 1, 100);
        double width = size(2.5, 12, 1, 100);
        double height = size(2.1, 4.5, 1.5, 15);
        List<Room.Window> windows = new ArrayList<>();
        double glass = 0.3 * height * Math.min(length, width);
        for (int i = whole(0, 3); i > 0; i--) {
            windows.add(new Room.Window(
                    Math.max(0.05, glass * random.nextDouble()),
                    value(0.8, 5.8, 0.4, 8),
                    value(0.4, 0.8, 0, 0.95),
                    even(-6.3, 6.3),
                    chance(0.7) ? Math.PI / 2 : even(0, 1.57)));
        }
        List<Room.Door> doors = new ArrayList<>();
        for (int i = whole(0, 2); i > 0; i--) {
            List<Room.Opening> opens = new ArrayList<>();
            for (int k = whole(0, 3); k > 0; k--) opens.add(new Room.Opening(clock(), value(60, 1800, 1, 86400)));
            doors.add(new Room.Door(even(1, 2), value(1, 3, 0.2, 8), opens));
        }
        Room.Floor floor = chance(0.7)
                ? new Room.Floor.Slab(
                        value(0.08, 0.2, 0.03, 0.6),
                        chance(0.5) ? 0 : value(0.5, 4, 0, 10),
                        chance(0.5) ? 0 : value(0.5, 3, 0, 10),
                        value(0.3, 1, 0, 2),
                        one(Room.Soil.values()))
                : new Room.Floor.Boards(covering());
        return new Room(
                length,
                width,
                height,
                new Room.Covering(covering(), value(0, 0.25, 0, 0.6), random.nextDouble(), 1),
                new Room.Covering(covering(), value(0, 0.25, 0, 0.6), random.nextDouble(), even(1, 1.6)),
                floor,
                windows,
                doors,
                new Room.Leakage(value(2, 30, 0, 108) / 3600, one(Room.Shelter.values())),
                size(1e5, 1e7, 1e4, 1e8),
                new Room.Gains(whole(0, 3), value(0, 800, 0, 5000), clock(), clock()));
    }

    private double clock() {
        return 600 * whole(0, 143);
    }

    private Stove stove(boolean byClock) {
        double firebox = size(0.03, 0.3, 0.01, 1.5);
        double scale = Math.pow(firebox / 0.09, 2.0 / 3);
        Stove.Air air;
        double kind = random.nextDouble();
        if (kind < 0.35 && !byClock) {
            air = new Stove.Air.Hand(value(0.2, 1, 0, 1), value(0, 0.2, 0, 1));
        } else if (kind < 0.6 && !byClock) {
            air = new Stove.Air.Damper(value(430, 600, 330, 800), value(20, 100, 2, 300), value(0.03, 0.2, 0, 1));
        } else {
            List<Stove.Setting> settings = new ArrayList<>();
            for (int k = whole(1, 4); k > 0; k--) settings.add(new Stove.Setting(clock(), value(0.1, 0.8, 0, 1)));
            air = new Stove.Air.Clock(settings);
        }
        return new Stove(
                size(80, 300, 15, 2000),
                even(460, 600),
                Math.max(0.2, scale * size(1.5, 3, 0.5, 8)),
                value(0.6, 0.95, 0.05, 1),
                even(0.4, 1.5),
                firebox,
                Math.max(0.05, scale * size(0.8, 1.6, 0.2, 5)),
                chance(0.5) ? 0 : size(10, 120, 0.5, 2000),
                size(15, 100, 5, 1000),
                Math.max(1e-5, scale * size(10e-4, 40e-4, 1e-5, 0.05)),
                value(0.02, 0.15, 0, 1),
                air);
    }

    private Habit habit(Stove stove, boolean byClock) {
        double mass = stove.firebox() * size(30, 110, 5, 250);
        mass = Math.max(0.3, Math.min(250, mass));
        double skip = chance(0.3) && !byClock ? K + even(50, 95) : Double.NaN;
        if (!byClock && chance(0.5)) {
            double from = clock();
            return new Habit.Rule(mass, K + value(60, 220, 30, 400), from, (from + even(3600, 50000)) % 86400, skip);
        }
        List<Habit.Load> loads = new ArrayList<>();
        for (int k = whole(1, 6); k > 0; k--) loads.add(new Habit.Load(clock(), mass * even(0.4, 1)));
        return new Habit.Clock(loads, skip);
    }

    private Store store() {
        double litres = size(150, 2500, 30, 20000);
        double volume = litres / 1000;
        Store.Shape shape;
        double slim = size(0.8, 2.5, 0.3, 5);
        double diameter = Math.max(0.12, Math.min(5.5, Math.cbrt(4 * volume / Math.PI / slim)));
        double height = Math.max(0.12, Math.min(9, slim * diameter));
        double kind = random.nextDouble();
        if (kind < 0.5) shape = new Store.Shape.Round(diameter, height);
        else if (kind < 0.75) shape = new Store.Shape.Square(diameter, 0.8 * diameter, height);
        else shape = new Store.Shape.Lying(diameter, height);
        Store.Coil coil = chance(0.35)
                ? new Store.Coil(size(10, 50, 1, 200), size(0.015, 0.026, 0.008, 0.08), even(0, 0.4), even(0.5, 1))
                : null;
        return new Store(
                shape,
                chance(0.3) ? whole(2, 40) : whole(6, 14),
                Rigs.layer(value(0.001, 0.006, 0, 0.05), "steel", one(50.0, 15.0, 0.4), 7800, 480),
                insulation(),
                insulation(),
                chance(0.3) ? Rigs.xps(0) : Rigs.xps(value(0.02, 0.1, 0, 0.5)),
                one(Store.Standing.values()),
                value(1, 3, 1, 6),
                one(Store.Cover.values()),
                value(0, 1.2, -3, 6),
                chance(odd) ? random.nextDouble() : even(0.8, 1),
                chance(odd) ? random.nextDouble() : even(0, 0.2),
                coil);
    }

    private List<Pickup> pickups() {
        List<Pickup> pickups = new ArrayList<>();
        for (int i = chance(0.7) ? 1 : whole(1, 3); i > 0; i--) {
            Pickup.Kind kind = one(Pickup.Kind.values());
            pickups.add(new Pickup(
                    "pickup " + i,
                    kind,
                    size(0.1, 0.8, 0.02, 5),
                    size(0.002, 0.03, 5e-4, 0.5),
                    size(5, 40, 0.5, 500),
                    size(0.018, 0.05, 0.008, 0.3),
                    size(0.8, 8, 0.1, 60),
                    value(0.2, 1.2, -2, 5),
                    value(0, 0.008, 0, 0.05),
                    size(10, 300, 2, 2000)));
        }
        return pickups;
    }

    private Pipe pipe() {
        return new Pipe(
                size(1, 12, 0.2, 80),
                size(0.016, 0.045, 0.007, 0.15),
                even(0.001, 0.003),
                chance(0.3) ? 0 : value(0.01, 0.04, 0, 0.2),
                0.04,
                whole(0, 8),
                value(0, 6, 0, 60),
                chance(0.3) ? 0 : value(0, 2e-4, 0, 0.002),
                chance(0.15) ? Pipe.Where.OUTDOORS : Pipe.Where.ROOM);
    }

    private Pump pump() {
        return new Pump(
                size(15e3, 80e3, 1e3, 3e5),
                size(2e-4, 1.2e-3, 5e-5, 0.01),
                size(5, 90, 1, 1000),
                chance(0.5) ? 1 : even(0.3, 1),
                value(1, 10, 0, 200));
    }

    private Loop loop(Store store) {
        double glycol = store.coil() != null && chance(0.6) ? value(0.2, 0.5, 0.01, 0.6) : 0;
        return new Loop(
                pipe(),
                pipe(),
                chance(0.75) ? pump() : null,
                chance(0.4) ? value(200, 3000, 0, 20000) : Double.NaN,
                glycol,
                new Loop.Header(size(0.005, 0.05, 1e-3, 1), value(1.5, 5, 0, 15), 0.022));
    }

    private List<Emitter> emitters(Room room) {
        List<Emitter> emitters = new ArrayList<>();
        for (int i = whole(0, 3); i > 0; i--) {
            String name = "emitter " + i;
            switch (random.nextInt(room.floor() instanceof Room.Floor.Slab ? 4 : 3)) {
                case 0 -> {
                    double bottom = even(0, 0.6);
                    emitters.add(new Emitter.AirTubes(
                            name,
                            whole(4, 60),
                            size(0.02, 0.08, 0.011, 0.3),
                            size(0.4, 1.5, 0.1, 10),
                            fan(),
                            bottom,
                            even(bottom, 1),
                            value(0, 0.25, 0, 0.5)));
                }
                case 1 ->
                    emitters.add(new Emitter.FanCoil(
                            name,
                            size(1000, 15000, 150, 100000),
                            K + even(60, 90),
                            K + even(10, 22),
                            size(5e-4, 5e-3, 2e-4, 0.1),
                            fan(),
                            circuit()));
                case 2 ->
                    emitters.add(new Emitter.Radiator(
                            name,
                            size(500, 5000, 60, 50000),
                            value(30, 60, 10, 90),
                            value(1.1, 1.4, 1, 1.6),
                            value(0, 0.5, 0, 1),
                            size(0.002, 0.03, 5e-4, 0.5),
                            size(5, 60, 1, 1000),
                            value(0, 2.5, -3, 8),
                            circuit()));
                default -> {
                    double spacing = value(0.1, 0.3, 0.06, 0.9);
                    emitters.add(new Emitter.FloorLoop(
                            name,
                            Math.max(5, Math.min(2000, 0.7 * room.floorArea() / spacing)),
                            size(0.01, 0.02, 0.007, 0.04),
                            spacing,
                            whole(1, 5),
                            chance(0.5) ? Double.NaN : K + even(30, 55),
                            circuit()));
                }
            }
        }
        return emitters;
    }

    private Emitter.Fan fan() {
        return new Emitter.Fan(size(0.05, 0.6, 0.005, 5), size(10, 200, 2, 2000), chance(0.5) ? 1 : even(0.2, 1));
    }

    private Emitter.Circuit circuit() {
        double draw = chance(odd) ? random.nextDouble() : even(0.7, 1);
        double back = chance(odd) ? random.nextDouble() : even(0, 0.3);
        return new Emitter.Circuit(
                pipe(),
                pipe(),
                chance(0.7) ? pump() : null,
                chance(0.3) ? value(200, 3000, 0, 20000) : Double.NaN,
                draw,
                back);
    }

    // the switches

    private List<Switch> switches(Loop loop, List<Emitter> emitters, List<Pickup> pickups, boolean byClock) {
        List<Switch> switches = new ArrayList<>();
        if (loop != null && loop.pump() != null) switches.add(byClock ? hours("pump") : pumpSwitch(pickups));
        for (Emitter e : emitters) {
            if (chance(0.85)) switches.add(byClock ? hours(e.name()) : emitterSwitch(e.name()));
        }
        return switches;
    }

    private Switch hours(String drives) {
        // a pump that stands while the stove burns would only boil
        Switch.Hours hours = drives.equals("pump") ? new Switch.Hours(0, 86400) : new Switch.Hours(clock(), clock());
        return new Switch(drives, null, null, null, null, hours);
    }

    private Switch.Sensor sensor(Switch.Spot... spots) {
        return new Switch.Sensor(one(spots), random.nextDouble(), "", size(5, 120, 1, 7200));
    }

    private Switch.Thermostat hot(double low, double high, Switch.Spot... spots) {
        double on = K + even(low, high);
        return new Switch.Thermostat(sensor(spots), on, on - value(1, 15, 0.06, 40));
    }

    private Switch.Thermostat cold(double low, double high, Switch.Spot... spots) {
        double on = K + even(low, high);
        return new Switch.Thermostat(sensor(spots), on, on + value(0.5, 4, 0.06, 20));
    }

    private Switch pumpSwitch(List<Pickup> pickups) {
        Switch.Thermostat thermostat = chance(0.7)
                ? hot(40, 80, Switch.Spot.OUTLET, Switch.Spot.PICKUP, Switch.Spot.SUPPLY, Switch.Spot.STOVE)
                : null;
        Switch.Differential differential = null;
        if (thermostat == null || chance(0.2)) {
            double on = value(3, 12, 0.2, 60);
            Switch.Sensor hot = new Switch.Sensor(
                    Switch.Spot.PICKUP, 0.9, chance(0.5) ? pickups.get(0).name() : "", size(5, 120, 1, 7200));
            differential = new Switch.Differential(
                    hot, sensor(Switch.Spot.STORE, Switch.Spot.BACK), on, on - value(1, 5, 0.1, 20));
        }
        return new Switch(
                "pump",
                thermostat,
                differential,
                null,
                chance(0.3) ? hot(85, 95, Switch.Spot.OUTLET, Switch.Spot.STORE) : null,
                null);
    }

    private Switch emitterSwitch(String name) {
        return new Switch(
                name,
                chance(0.8) ? cold(8, 22, Switch.Spot.ROOM) : null,
                null,
                chance(0.5) ? hot(25, 45, Switch.Spot.STORE) : chance(0.1) ? hot(-5, 10, Switch.Spot.OUTDOORS) : null,
                chance(0.2) ? hot(85, 95, Switch.Spot.STORE) : null,
                chance(0.2) ? new Switch.Hours(clock(), clock()) : null);
    }
}
