package stokewell.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import stokewell.rig.Contents;
import stokewell.rig.Emitter;
import stokewell.rig.Pickup;
import stokewell.rig.Rig;
import stokewell.rig.Store;
import stokewell.rig.Switch;

/**
 * Something that has its height.
 *
 * @param what  it is
 * @param above the floor, m
 * @param on    where on the rig
 */
public record Height(String what, double above, On on) {

    /** Where a height belongs. */
    public enum On {
        ROOM,
        STOVE,
        HEADER,
        STORE,
        EMITTER
    }

    /** All heights that a builder must keep, highest first. */
    public static List<Height> of(Rig rig) {
        List<Height> list = new ArrayList<>();
        list.add(new Height("ceiling", rig.room().height(), On.ROOM));
        list.add(new Height("stove, top", rig.stove().height(), On.STOVE));
        for (Pickup p : rig.pickups()) list.add(new Height(p.name() + ", middle", p.elevation(), On.STOVE));
        if (rig.loop() != null && !rig.safety().closed()) {
            double level = rig.loop().header().level();
            list.add(new Height("vent, open end", level + Parts.rise(rig), On.HEADER));
            list.add(new Height("header, cold level", level, On.HEADER));
        }
        if (rig.store() != null) store(list, rig);
        for (Emitter e : rig.emitters()) {
            if (e instanceof Emitter.Radiator r) list.add(new Height(r.name() + ", middle", r.elevation(), On.EMITTER));
        }
        list.sort(Comparator.comparingDouble(Height::above).reversed());
        return List.copyOf(list);
    }

    private static void store(List<Height> list, Rig rig) {
        Store store = rig.store();
        add(list, store, "store, water's top", 1);
        add(list, store, "store, inside bottom", 0);
        if (rig.loop() != null && store.coil() == null) {
            add(list, store, "hot port", store.supplyPort());
            add(list, store, "cool port", store.returnPort());
        }
        if (store.coil() != null) {
            add(list, store, "coil, top turn", store.coil().top());
            add(list, store, "coil, bottom turn", store.coil().bottom());
        }
        for (Emitter e : rig.emitters()) {
            if (e instanceof Emitter.AirTubes t) {
                add(list, store, "top air tubes", t.top());
                add(list, store, "bottom air tubes", t.bottom());
            }
            Emitter.Circuit c = Contents.circuit(e);
            if (c == null) continue;
            add(list, store, e.name() + ", draw", c.draw());
            add(list, store, e.name() + ", return", c.giveBack());
        }
        int number = 0;
        for (Switch.Sensor s : Parts.of(rig).sensors()) {
            number++;
            if (s.at() == Switch.Spot.STORE) add(list, store, "sensor " + number, s.height());
        }
    }

    private static void add(List<Height> list, Store store, String what, double share) {
        list.add(new Height(what, store.elevation() + share * Contents.depth(store.shape()), On.STORE));
    }
}
