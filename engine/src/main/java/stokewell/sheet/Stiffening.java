package stokewell.sheet;

import java.util.ArrayList;
import java.util.List;
import stokewell.check.FlatWall;
import stokewell.rig.Contents;
import stokewell.rig.Rig;
import stokewell.rig.Store;
import stokewell.size.Plates;

/**
 * Upright stiffeners of one kind of flat wall.
 *
 * @param wall    which
 * @param panels  into how many panels they cut it; 0 where no number of them makes this plate do
 * @param span    width of a panel, m
 * @param modulus section modulus that each stiffener must have, m³; 0 where none is needed
 * @param bar     width of a flat bar on edge that has it, m; 0 where none is needed
 * @param gauge   thickness of that bar, m
 * @param length  of each, m
 */
public record Stiffening(
        String wall, int panels, double span, double modulus, double bar, double gauge, double length) {

    private static final double G = 9.80665;
    private static final double[] BARS = {0.03, 0.04, 0.05, 0.06, 0.08, 0.1, 0.12, 0.15};
    private static final double[] GAUGES = {0.006, 0.008, 0.01, 0.012};

    /** Stiffeners on one wall. */
    public int each() {
        return Math.max(0, panels - 1);
    }

    /** Whether a flat bar was found that does. */
    public boolean found() {
        return panels == 1 || panels > 1 && bar > 0;
    }

    /** Of the walls of a box of metal; none for another tank. */
    public static List<Stiffening> of(Rig rig) {
        Store store = rig.store();
        if (store == null || !Plates.metal(rig) || !(store.shape() instanceof Store.Shape.Square s)) return List.of();
        double over = over(rig);
        List<Stiffening> list = new ArrayList<>();
        double longer = Math.max(s.width(), s.length());
        double shorter = Math.min(s.width(), s.length());
        if (longer > shorter) {
            list.add(of("long walls", longer, s.height(), store, over));
            list.add(of("short walls", shorter, s.height(), store, over));
        } else {
            list.add(of("all four walls", longer, s.height(), store, over));
        }
        return List.copyOf(list);
    }

    /** Water level that presses on the top of a full tank, m. */
    private static double over(Rig rig) {
        Store store = rig.store();
        boolean pressed = store.cover() == Store.Cover.SEALED && store.coil() == null && rig.loop() != null;
        if (!pressed) return 0;
        return Math.max(0, rig.loop().header().level() - store.elevation() - Contents.depth(store.shape()));
    }

    static Stiffening of(String wall, double width, double height, Store store, double over) {
        boolean full = store.cover() == Store.Cover.SEALED;
        int panels = FlatWall.panels(width, height, store.wall().thickness(), over, full);
        if (panels == 0) return new Stiffening(wall, 0, 0, 0, 0, 0, 0);
        double span = width / panels;
        if (panels == 1) return new Stiffening(wall, 1, span, 0, 0, 0, 0);
        double z = bending(span, height, over) / FlatWall.ALLOWED;
        for (double bar : BARS) {
            for (double gauge : GAUGES) {
                // a bar more than twelve times as wide as thick folds over sideways before it yields
                if (bar <= 12 * gauge && gauge * bar * bar / 6 >= z) {
                    return new Stiffening(wall, panels, span, z, bar, gauge, Plates.inside(store));
                }
            }
        }
        return new Stiffening(wall, panels, span, z, 0, 0, Plates.inside(store));
    }

    /**
     * Greatest bending moment in an upright held at foot and top, N m: water rising to the bottom, {@code w h²/(9√3)} with w at
     * the foot, and a level standing over its top, {@code w h²/8}. Simple beam under triangular and even load, any beam table;
     * adding both greatest moments errs to the safe side, they lie at different heights.
     *
     * @param span   width of wall that leans on it, m
     * @param height m
     * @param over   water level above its top, m
     */
    static double bending(double span, double height, double over) {
        double foot = 1000 * G * height * span;
        double even = 1000 * G * over * span;
        return foot * height * height / (9 * Math.sqrt(3)) + even * height * height / 8;
    }
}
