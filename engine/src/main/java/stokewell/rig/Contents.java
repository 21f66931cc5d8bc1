package stokewell.rig;

/** Water in the parts of a rig, m3. */
public final class Contents {

    private Contents() {}

    /** In the store. */
    public static double store(Rig rig) {
        return rig.store() == null ? 0 : rig.store().shape().content();
    }

    /** Height of the water in a store, m. */
    public static double depth(Store.Shape shape) {
        if (shape instanceof Store.Shape.Round r) return r.height();
        if (shape instanceof Store.Shape.Square s) return s.height();
        if (shape instanceof Store.Shape.Lying l) return l.diameter();
        throw new AssertionError("no such shape: " + shape);
    }

    /** In pickups and pipes of the loop. */
    public static double loop(Rig rig) {
        if (rig.loop() == null) return 0;
        double coil = rig.store() == null || rig.store().coil() == null
                ? 0
                : Math.PI
                        / 4
                        * Math.pow(rig.store().coil().bore(), 2)
                        * rig.store().coil().length();
        return coil
                + rig.loop().supply().volume()
                + rig.loop().back().volume()
                + rig.pickups().stream().mapToDouble(Pickup::volume).sum();
    }

    /** In the emitters and their pipes. */
    public static double emitters(Rig rig) {
        double sum = 0;
        for (Emitter e : rig.emitters()) {
            Emitter.Circuit c = circuit(e);
            if (c != null) sum += c.supply().volume() + c.back().volume();
            if (e instanceof Emitter.FanCoil f) sum += f.volume();
            if (e instanceof Emitter.Radiator r) sum += r.volume();
            if (e instanceof Emitter.FloorLoop f) sum += Math.PI / 4 * f.bore() * f.bore() * f.length();
        }
        return sum;
    }

    /** What shares the loop's pressure: all of it, or the loop alone where a coil in the store keeps it apart. */
    public static double closedPart(Rig rig) {
        boolean apart = rig.store() != null && rig.store().coil() != null;
        return loop(rig) + (apart ? 0 : store(rig) + emitters(rig));
    }

    /** The pipes of an emitter; null where it has none. */
    public static Emitter.Circuit circuit(Emitter e) {
        if (e instanceof Emitter.FanCoil f) return f.circuit();
        if (e instanceof Emitter.Radiator r) return r.circuit();
        if (e instanceof Emitter.FloorLoop f) return f.circuit();
        return null;
    }
}
