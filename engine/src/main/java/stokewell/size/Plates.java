package stokewell.size;

import java.util.ArrayList;
import java.util.List;
import stokewell.rig.Contents;
import stokewell.rig.Layer;
import stokewell.rig.Materials;
import stokewell.rig.Metal;
import stokewell.rig.Rig;
import stokewell.rig.Store;

/**
 * The plates of a tank. Sides stand on the bottom plate and carry the top plate, so those two reach over the walls; of a box
 * the long walls reach over the short ones. A shell is rolled: its length is that of its middle line.
 */
public final class Plates {

    /** Dry wall above the water of a tank that is not closed: common practice, no source. */
    static final double FREEBOARD = 0.05;

    /** Below this it is no metal, and nothing here is cut or welded, kg/m³. */
    private static final double METAL = 2000;

    private Plates() {}

    /** Plates of a metal tank; none for another. */
    public static List<Cut> of(Store store) {
        return metal(store) ? cuts(store) : List.of();
    }

    /** Whether it can be cut from plate. */
    public static boolean metal(Store store) {
        return store.wall().thickness() > 0 && store.wall().density() >= METAL;
    }

    /** Whether the tank of a rig is cut from plate: its wall is metal, and nobody has said that it is plastic or a lined frame. */
    public static boolean metal(Rig rig) {
        Materials m = rig.safety().materials();
        Metal tank = m == null ? null : m.tank();
        return tank != Metal.PLASTIC && tank != Metal.RUBBER && metal(rig.store());
    }

    /** Inside height of the tank, m: closed ones are full, others keep dry wall above the water. */
    public static double inside(Store store) {
        double water = Contents.depth(store.shape());
        boolean lying = store.shape() instanceof Store.Shape.Lying;
        return lying || store.cover() == Store.Cover.SEALED ? water : water + Math.max(FREEBOARD, 0.05 * water);
    }

    /** Whether a plate closes the top; a lid of foam or none leaves it open. */
    public static boolean roofed(Store store) {
        return store.cover() == Store.Cover.SEALED || store.cover() == Store.Cover.LOOSE;
    }

    /** What it stands on, m²: its outside, or half the width of a lying one. */
    public static double footprint(Store store) {
        double t = 2 * store.wall().thickness();
        Store.Shape shape = store.shape();
        if (shape instanceof Store.Shape.Round r) return Math.PI / 4 * (r.diameter() + t) * (r.diameter() + t);
        if (shape instanceof Store.Shape.Square s) return (s.width() + t) * (s.length() + t);
        Store.Shape.Lying l = (Store.Shape.Lying) shape;
        return 0.5 * l.diameter() * l.length();
    }

    /** Mass of the shell, kg. */
    public static double mass(Store store) {
        double volume = 0;
        for (Cut c : cuts(store)) volume += c.volume();
        return volume * store.wall().density();
    }

    private static List<Cut> cuts(Store store) {
        Layer wall = store.wall();
        double t = wall.thickness();
        double high = inside(store);
        boolean roofed = roofed(store);
        List<Cut> cuts = new ArrayList<>();
        Store.Shape shape = store.shape();
        if (shape instanceof Store.Shape.Square s) {
            double shorter = Math.min(s.width(), s.length());
            double longer = Math.max(s.width(), s.length());
            cuts.add(new Cut("bottom", 1, shorter + 2 * t, longer + 2 * t, t));
            cuts.add(new Cut("long walls", 2, high, longer + 2 * t, t));
            cuts.add(new Cut("short walls, between them", 2, high, shorter, t));
            if (roofed) cuts.add(new Cut(lid(store), 1, shorter + 2 * t, longer + 2 * t, t));
        } else if (shape instanceof Store.Shape.Round r) {
            cuts.add(new Cut("bottom", 1, r.diameter() + 2 * t, 0, t));
            cuts.add(new Cut("shell, rolled", 1, high, Math.PI * (r.diameter() + t), t));
            if (roofed) cuts.add(new Cut(lid(store), 1, r.diameter() + 2 * t, 0, t));
        } else {
            Store.Shape.Lying l = (Store.Shape.Lying) shape;
            cuts.add(new Cut("shell, rolled", 1, l.length(), Math.PI * (l.diameter() + t), t));
            cuts.add(new Cut("heads", 2, l.diameter() + 2 * t, 0, t));
        }
        return List.copyOf(cuts);
    }

    private static String lid(Store store) {
        return store.cover() == Store.Cover.SEALED ? "top" : "lid, loose";
    }
}
