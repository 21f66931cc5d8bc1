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
}
