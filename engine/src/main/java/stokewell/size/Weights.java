package stokewell.size;

import java.util.ArrayList;
import java.util.List;
import stokewell.loop.ExpansionTank;
import stokewell.matter.Atmosphere;
import stokewell.rig.Contents;
import stokewell.rig.Emitter;
import stokewell.rig.Layer;
import stokewell.rig.Loop;
import stokewell.rig.Pickup;
import stokewell.rig.Pipe;
import stokewell.rig.Rig;
import stokewell.rig.Safety;
import stokewell.rig.Store;

/**
 * What a part holds and weighs.
 *
 * @param part  what it is
 * @param water in it, m³
 * @param empty its own mass, kg; NaN where the rig does not tell
 */
public record Weights(String part, double water, double empty) {

    /** Cold water: 999.7 kg/m³ at 10 °C. IAPWS-95 as printed in steam tables; the weight to build for is the cold one. */
    public static final double WATER = 999.7;

    /** Steel of pipes: 7850 kg/m³, EN 1991-1-1 table A.4 (77.0 to 78.5 kN/m³). */
    static final double STEEL = 7850;

    /** Cold and full, kg. */
    public double full() {
        return (Double.isNaN(empty) ? 0 : empty) + WATER * water;
    }

    /** Every part that has weight or water, in the order that the heat flows. */
    public static List<Weights> of(Rig rig) {
        List<Weights> list = new ArrayList<>();
        list.add(new Weights(
                rig.stove().brick() > 0 ? "stove with its brick" : "stove",
                0,
                rig.stove().mass() + rig.stove().brick()));
        for (Pickup p : rig.pickups()) list.add(new Weights(p.name(), p.volume(), p.metal()));
        if (rig.loop() != null) loop(list, rig);
        if (rig.store() != null)
            store(list, rig.store(), Plates.metal(rig) || rig.store().wall().density() < 2000);
        for (Emitter e : rig.emitters()) emitter(list, e);
        return List.copyOf(list);
    }

    private static void loop(List<Weights> list, Rig rig) {
        Loop loop = rig.loop();
        list.add(pipes("pipes of the loop", loop.supply(), loop.back()));
        Safety.Vessel v = rig.safety().vessel();
        if (v == null) {
            list.add(new Weights("header's water", loop.header().water(), Double.NaN));
            return;
        }
        double air = Atmosphere.pressure(rig.place().altitude());
        double taken = ExpansionTank.taken(v.volume(), v.precharge() + air, v.fill() + air);
        list.add(new Weights("vessel's water, cold", taken, Double.NaN));
    }

    private static Weights pipes(String name, Pipe... pipes) {
        double water = 0;
        double metal = 0;
        for (Pipe p : pipes) {
            water += p.volume();
            metal += pipe(p.bore(), p.wall()) * p.length();
        }
        return new Weights(name, water, metal);
    }

    /** A metre of empty steel pipe, kg/m. */
    static double pipe(double bore, double wall) {
        return STEEL * Math.PI * (bore + wall) * wall;
    }

    /** A metre of pipe's water, m³/m. */
    static double content(double bore) {
        return Math.PI / 4 * bore * bore;
    }

    /** @param cut whether the wall in the rig file is what the tank is made of */
    private static void store(List<Weights> list, Store store, boolean cut) {
        list.add(new Weights("tank", store.shape().content(), cut ? Plates.mass(store) : Double.NaN));
        double wrap = 0;
        for (Wrap w : Wrap.of(store)) {
            Layer l = w.layer();
            wrap += w.area() * l.thickness() * l.density();
        }
        if (wrap > 0) list.add(new Weights("tank's insulation", 0, wrap));
        Store.Coil coil = store.coil();
        if (coil != null) list.add(new Weights("coil in the tank", content(coil.bore()) * coil.length(), Double.NaN));
    }

    private static void emitter(List<Weights> list, Emitter e) {
        if (e instanceof Emitter.FanCoil f) {
            list.add(new Weights(f.name(), f.volume(), Double.NaN));
        } else if (e instanceof Emitter.Radiator r) {
            list.add(new Weights(r.name(), r.volume(), r.metal()));
        } else if (e instanceof Emitter.FloorLoop f) {
            list.add(new Weights(f.name() + ", pipe in the slab", content(f.bore()) * f.length(), Double.NaN));
        }
        Emitter.Circuit c = Contents.circuit(e);
        if (c != null) list.add(pipes("pipes to " + e.name(), c.supply(), c.back()));
    }

    /** All water of the rig, m³. */
    public static double water(Rig rig) {
        double sum = 0;
        for (Weights w : of(rig)) sum += w.water();
        return sum;
    }

    /** The tank with its water and insulation, kg. */
    public static double store(Rig rig) {
        double sum = 0;
        for (Weights w : of(rig)) if (w.part().startsWith("tank") || w.part().endsWith("the tank")) sum += w.full();
        return sum;
    }
}
