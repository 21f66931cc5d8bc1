package stokewell.fit;

import java.util.ArrayList;
import java.util.List;
import stokewell.rig.Emitter;
import stokewell.rig.Layer;
import stokewell.rig.Pickup;
import stokewell.rig.Rig;
import stokewell.rig.Room;
import stokewell.rig.Store;

/**
 * A number of a rig that nobody knows before measuring, as a factor on what the rig file says.
 *
 * <p>The spread is how far the file may be off before anything is measured, as the standard deviation of the factor's
 * logarithm: common practice, no source. They are wide on purpose; where the readings say nothing, the spread is what
 * remains.
 */
public enum Knob {
    WALLS("heat lost through walls, roof, glass and doors", 0.35, "room.walls.real loss, room.roof.real loss"),
    LEAKAGE("air that leaks", 0.6, "room.leakage.at50Pa"),
    CONTENTS("heat held by what stands in the room", 0.5, "room.contents"),
    FLOOR("heat lost through the floor", 0.5, "room.floor.slab.real loss"),
    SLAB("heat held by the slab", 0.25, "room.floor.slab.thickness"),
    SUN("sun through the glass", 0.4, "room.windows.sunShare"),
    JACKET("heat lost through the store's jacket and lid", 0.5, "store.real loss"),
    BASE("heat lost through the store's base", 0.7, "store.base"),
    EMITTER("strength of what gives the store's heat to the room", 0.4, "emitters"),
    PICKUP("strength of the pickup", 0.4, "pickups.area"),
    PUMP("flow that the pump drives", 0.4, "loop.pump.freeFlow"),
    BURN("air to the fire, and with it how fast it burns", 0.4, "stove.airInlet"),
    WOOD("heat of the wood for its noted weight", 0.15, "fuel.moisture, or the weights");

    /** What it is, in words that follow "the". */
    public final String words;
    /** Standard deviation of the logarithm of the factor before anything is measured. */
    public final double spread;
    /** The entries of a rig file that it stands for. */
    public final String keys;

    Knob(String words, double spread, String keys) {
        this.words = words;
        this.spread = spread;
        this.keys = keys;
    }

    /** The knobs that a rig has. */
    public static List<Knob> of(Rig rig) {
        List<Knob> found = new ArrayList<>();
        for (Knob k : values()) if (k.isOn(rig)) found.add(k);
        return found;
    }

    private boolean isOn(Rig rig) {
        return switch (this) {
            case WALLS, LEAKAGE, CONTENTS, BURN, WOOD -> true;
            case FLOOR, SLAB -> rig.room().floor() instanceof Room.Floor.Slab;
            case SUN -> !rig.room().windows().isEmpty();
            case JACKET -> rig.store() != null;
            // blocks have air below them and count with the jacket
            case BASE ->
                rig.store() != null
                        && rig.store().base().thickness() > 0
                        && rig.store().standing() != Store.Standing.BLOCKS
                        && rig.room().floor() instanceof Room.Floor.Slab;
            case EMITTER -> !rig.emitters().isEmpty();
            case PICKUP -> !rig.pickups().isEmpty();
            case PUMP -> rig.loop() != null && rig.loop().pump() != null;
        };
    }

    /** The rig with this number multiplied. Wood changes the loads, not the rig. */
    public Rig turned(Rig rig, double factor) {
        if (factor == 1) return rig;
        return switch (this) {
            case WALLS -> Altered.of(rig, "room", (Room r) -> envelope(r, factor));
            case LEAKAGE ->
                Altered.of(
                        rig,
                        "room",
                        (Room r) -> Altered.of(
                                r, "leakage", (Room.Leakage l) -> Altered.times(l, "at50Pa", factor, 0, 0.03)));
            case CONTENTS -> Altered.of(rig, "room", (Room r) -> Altered.times(r, "contents", factor, 1e4, 1e8));
            case FLOOR -> slab(rig, "realLoss", factor, 0.2, 6);
            case SLAB -> slab(rig, "thickness", factor, 0.03, 0.6);
            case SUN ->
                Altered.of(
                        rig,
                        "room",
                        (Room r) -> Altered.of(
                                r,
                                "windows",
                                (List<Room.Window> all) -> all.stream()
                                        .map(w -> Altered.times(w, "sunShare", factor, 0, 0.95))
                                        .toList()));
            case JACKET -> Altered.of(rig, "store", (Store s) -> Altered.times(s, "realLoss", factor, 0.3, 6));
            case BASE -> Altered.of(rig, "store", (Store s) -> base(s, factor));
            case EMITTER ->
                Altered.of(
                        rig,
                        "emitters",
                        (List<Emitter> all) ->
                                all.stream().map(e -> emitter(e, factor)).toList());
            case PICKUP ->
                Altered.of(
                        rig,
                        "pickups",
                        (List<Pickup> all) -> all.stream()
                                .map(p -> Altered.times(
                                        Altered.times(p, "area", factor, 0.01, 20), "contact", factor, 1, 2000))
                                .toList());
            case PUMP ->
                Altered.of(
                        rig,
                        "loop",
                        (stokewell.rig.Loop l) -> Altered.of(
                                l, "pump", (stokewell.rig.Pump p) -> Altered.times(p, "freeFlow", factor, 1e-5, 0.02)));
            case BURN ->
                Altered.of(rig, "stove", (stokewell.rig.Stove s) -> Altered.times(s, "airInlet", factor, 1e-5, 0.2));
            case WOOD -> rig;
        };
    }

    private static Room envelope(Room room, double factor) {
        Room walls = Altered.of(room, "walls", (Room.Covering c) -> Altered.times(c, "realLoss", factor, 0.2, 6));
        Room roof = Altered.of(walls, "roof", (Room.Covering c) -> Altered.times(c, "realLoss", factor, 0.2, 6));
        Room glass = Altered.of(
                roof,
                "windows",
                (List<Room.Window> all) -> all.stream()
                        .map(w -> Altered.times(w, "u", factor, 0.4, 8))
                        .toList());
        return Altered.of(
                glass,
                "doors",
                (List<Room.Door> all) -> all.stream()
                        .map(d -> Altered.times(d, "u", factor, 0.2, 8))
                        .toList());
    }

    private static Rig slab(Rig rig, String component, double factor, double low, double high) {
        if (!(rig.room().floor() instanceof Room.Floor.Slab)) return rig;
        return Altered.of(
                rig,
                "room",
                (Room r) -> Altered.of(
                        r,
                        "floor",
                        (Room.Floor f) -> Altered.times((Room.Floor.Slab) f, component, factor, low, high)));
    }

    private static Store base(Store store, double factor) {
        return Altered.of(store, "base", (Layer l) -> Altered.times(l, "conductivity", factor, 0.005, 450));
    }

    private static Emitter emitter(Emitter emitter, double factor) {
        if (emitter instanceof Emitter.AirTubes e) {
            return Altered.of(e, "fan", (Emitter.Fan f) -> Altered.times(f, "flow", factor, 0.002, 10));
        }
        if (emitter instanceof Emitter.FanCoil e) return Altered.times(e, "ratedPower", factor, 100, 200000);
        if (emitter instanceof Emitter.Radiator e) return Altered.times(e, "ratedPower", factor, 50, 100000);
        return Altered.times((Emitter.FloorLoop) emitter, "length", factor, 5, 3000);
    }
}
