package stokewell.rig;

import java.util.List;

/** Rigs of invented places for tests, built by hand. */
public final class Rigs {

    private Rigs() {}

    static final double K = 273.15;

    public static Layer layer(double thickness, String material, double lambda, double rho, double c) {
        return new Layer(thickness, material, lambda, rho, c);
    }

    public static Layer wool(double thickness) {
        return layer(thickness, "mineral wool", 0.038, 30, 1030);
    }

    public static Layer xps(double thickness) {
        return layer(thickness, "XPS", 0.034, 35, 1450);
    }

    public static Room.Covering wall() {
        return new Room.Covering(
                List.of(layer(0.012, "plywood", 0.13, 500, 1600), wool(0.09), layer(0.02, "softwood", 0.13, 500, 1600)),
                0.12,
                0.6,
                1);
    }

    public static Room.Covering roof() {
        return new Room.Covering(
                List.of(layer(0.012, "plywood", 0.13, 500, 1600), wool(0.14), layer(0.001, "steel", 50, 7800, 450)),
                0.1,
                0.7,
                1.1);
    }

    public static Room room() {
        return new Room(
                8,
                6,
                3,
                wall(),
                roof(),
                new Room.Floor.Slab(0.1, 0, 0, 0.6, Room.Soil.CLAY),
                List.of(new Room.Window(2, 2.8, 0.65, Math.PI, Math.PI / 2)),
                List.of(new Room.Door(4, 2, List.of(new Room.Opening(12 * 3600, 300)))),
                new Room.Leakage(15 / 3600.0, Room.Shelter.SUBURB),
                600 * 3600,
                new Room.Gains(1, 200, 8 * 3600, 17 * 3600));
    }

    public static Stove stove() {
        return new Stove(160, 480, 2.2, 0.9, 0.8, 0.09, 1.2, 0, 40, 25e-4, 0.06, new Stove.Air.Hand(0.5, 0.05));
    }

    public static Flue flue() {
        return new Flue(0.15, 1.5, 5, 0.7, 0.4, 30, 6);
    }

    public static Pickup coil() {
        return new Pickup("coil", Pickup.Kind.COIL, 0.35, 0.004, 12, 0.026, 5, 0.6, 0.004, 80);
    }

    public static Pipe pipe(double length) {
        return new Pipe(length, 0.026, 0.002, 0.013, 0.04, 4, 3, 5e-5, Pipe.Where.ROOM);
    }

    public static Pump pump() {
        return new Pump(40000, 45 / 60000.0, 45, 1, 4);
    }

    public static Store store() {
        return new Store(
                new Store.Shape.Round(0.8, 1.6),
                12,
                layer(0.004, "steel", 50, 7800, 450),
                wool(0.1),
                wool(0.1),
                xps(0.05),
                Store.Standing.FLOOR,
                1.5,
                Store.Cover.SEALED,
                0.1,
                0.95,
                0.05,
                null);
    }

    public static Switch.Sensor sensor(Switch.Spot at) {
        return new Switch.Sensor(at, 0.9, "", 30);
    }

    /** A pumped coil, an 800 L store with air tubes and a fan. */
    public static Rig pumped() {
        return new Rig(
                "pumped",
                "",
                new Place(Math.toRadians(44), Math.toRadians(-70), -5 * 3600, 60, K + 8),
                new Outdoors("", K - 12, K - 3, 3, 0.4, 15),
                room(),
                stove(),
                flue(),
                new Fuel("mixed hardwood", 0.18, Fuel.Basis.WET, Fuel.Form.SPLITS, 0.62),
                new Habit.Rule(5, K + 140, 8 * 3600, 17 * 3600, Double.NaN),
                List.of(coil()),
                new Loop(pipe(4), pipe(4), pump(), 1500, 0, new Loop.Header(0.02, 2.8, 0.022)),
                store(),
                List.of(new Emitter.AirTubes(
                        "fan", 24, 0.038, 0.75, new Emitter.Fan(400 / 3600.0, 60, 1), 0.1, 0.9, 0.12)),
                List.of(
                        new Switch(
                                "pump",
                                new Switch.Thermostat(sensor(Switch.Spot.OUTLET), K + 70, K + 58),
                                null,
                                null,
                                null,
                                null),
                        new Switch(
                                "fan",
                                new Switch.Thermostat(sensor(Switch.Spot.ROOM), K + 15, K + 17),
                                null,
                                new Switch.Thermostat(sensor(Switch.Spot.STORE), K + 38, K + 33),
                                null,
                                null)));
    }

    /** The pumped one as a closed loop: a vessel of 120 L at 0.75 bar, filled to 1 bar, a valve of 20 kW that opens at 2.5 bar. */
    public static Rig closed() {
        Safety safety = new Safety(
                false,
                null,
                null,
                new Safety.ReliefValve(250000, 20000, Double.NaN, true, true),
                new Safety.Vessel(0.12, 75000, 100000),
                null,
                null,
                null,
                null,
                null);
        return pumped().secured(safety);
    }

    /** A thermosiphon coil below a lying store with a gravity radiator and a loose cover, firebrick and damper. */
    public static Rig thermosiphon() {
        Rig p = pumped();
        Pipe wide = new Pipe(2.5, 0.04, 0.003, 0.02, 0.04, 2, 2, 5e-5, Pipe.Where.ROOM);
        Store store = new Store(
                new Store.Shape.Lying(0.7, 1.6),
                8,
                layer(0.004, "steel", 50, 7800, 450),
                wool(0.1),
                wool(0.1),
                xps(0.03),
                Store.Standing.BLOCKS,
                1.5,
                Store.Cover.LOOSE,
                1.1,
                0.9,
                0.1,
                null);
        Stove stove = new Stove(
                180, 480, 2.4, 0.9, 0.8, 0.1, 1.3, 60, 40, 25e-4, 0.06, new Stove.Air.Damper(K + 230, 60, 0.08));
        Emitter radiator = new Emitter.Radiator(
                "radiator",
                1500,
                50,
                1.3,
                0.3,
                0.008,
                25,
                1.8,
                new Emitter.Circuit(wide, wide, null, Double.NaN, 0.92, 0.08));
        return new Rig(
                "thermosiphon",
                "",
                p.place(),
                p.weather(),
                p.room(),
                stove,
                p.flue(),
                p.fuel(),
                new Habit.Clock(
                        List.of(
                                new Habit.Load(8 * 3600, 4),
                                new Habit.Load(11 * 3600, 5),
                                new Habit.Load(14 * 3600, 5),
                                new Habit.Load(17 * 3600, 5)),
                        Double.NaN),
                List.of(new Pickup("jacket", Pickup.Kind.JACKET, 0.3, 0.008, 30, 0.04, 1, 0.5, 0.004, 80)),
                new Loop(wide, wide, null, Double.NaN, 0, new Loop.Header(0.02, 3, 0.022)),
                store,
                List.of(radiator),
                List.of());
    }

    /** A larger hall: two pickups, a box on the stove, glycol loop through a coil, fan coil and floor loop, boards none. */
    public static Rig hall() {
        Rig p = pumped();
        Pipe pipe = new Pipe(9, 0.026, 0.002, 0.02, 0.04, 6, 4, 5e-5, Pipe.Where.ROOM);
        Pipe outside = new Pipe(3, 0.026, 0.002, 0.05, 0.035, 2, 1, 5e-5, Pipe.Where.OUTDOORS);
        Store s = store();
        Store store = new Store(
                new Store.Shape.Square(1.2, 1.4, 1.7),
                20,
                s.wall(),
                wool(0.15),
                wool(0.2),
                xps(0.1),
                Store.Standing.EARTH,
                1.5,
                Store.Cover.OPEN,
                -0.5,
                0.95,
                0.05,
                new Store.Coil(40, 0.02, 0.1, 0.9));
        return new Rig(
                "hall",
                "",
                p.place(),
                p.weather(),
                p.room(),
                p.stove(),
                p.flue(),
                new Fuel("pine", 0.25, Fuel.Basis.DRY, Fuel.Form.OFFCUTS, 0.6),
                p.habit(),
                List.of(coil(), new Pickup("box", Pickup.Kind.BOX, 0.3, 0.03, 25, 0.04, 1, 1, 0, 60)),
                new Loop(pipe, outside, pump(), Double.NaN, 0.35, new Loop.Header(0.03, 2.9, 0.028)),
                store,
                List.of(
                        new Emitter.FanCoil(
                                "coil fan",
                                9000,
                                K + 82,
                                K + 20,
                                0.003,
                                new Emitter.Fan(1200 / 3600.0, 120, 0.8),
                                new Emitter.Circuit(pipe, pipe, pump(), 2000, 0.92, 0.08)),
                        new Emitter.FloorLoop(
                                "floor",
                                120,
                                0.016,
                                0.2,
                                2,
                                Double.NaN,
                                new Emitter.Circuit(pipe, pipe, pump(), Double.NaN, 0.6, 0.05))),
                List.of(
                        new Switch(
                                "pump",
                                null,
                                new Switch.Differential(
                                        sensor(Switch.Spot.OUTLET),
                                        new Switch.Sensor(Switch.Spot.STORE, 0.1, "", 20),
                                        7,
                                        3),
                                new Switch.Thermostat(sensor(Switch.Spot.PICKUP), K + 60, K + 55),
                                null,
                                null),
                        new Switch(
                                "coil fan",
                                new Switch.Thermostat(sensor(Switch.Spot.ROOM), K + 14, K + 16),
                                null,
                                null,
                                new Switch.Thermostat(sensor(Switch.Spot.STORE), K + 90, K + 85),
                                null),
                        new Switch("floor", null, null, null, null, new Switch.Hours(20 * 3600, 6 * 3600))));
    }

    /** One rig for every kind of part. */
    public static List<Rig> all() {
        return List.of(pumped(), thermosiphon(), hall(), pumped().withoutWater());
    }
}
