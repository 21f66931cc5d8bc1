package stokewell.check;

/** How a flat steel wall of a tank is to be divided so that it carries its water: the rule of {@code store.wall}. */
public final class FlatWall {

    /** Yield of structural steel S235 (EN 10025-2), Pa. */
    static final double YIELD = 235e6;

    /** Two thirds of yield, what a wall may see, Pa. */
    public static final double ALLOWED = YIELD * 2 / 3;

    private static final double STEEL = 200e9;
    private static final int MOST = 12;

    private FlatWall() {}

    /**
     * Least number of even panels into which upright stiffeners must cut a wall; 1 where it needs none, 0 where no number
     * up to twelve does.
     *
     * @param width     m
     * @param height    of the water, m
     * @param thickness m
     * @param over      water level above its top, m
     * @param roofed    whether a plate holds its top edge
     */
    public static int panels(double width, double height, double thickness, double over, boolean roofed) {
        double top = Subject.waterPressure(over);
        double bottom = Subject.waterPressure(over + height);
        for (int n = 1; n <= MOST; n++) {
            if (holds(width / n, height, thickness, top, bottom, roofed)) return n;
        }
        return 0;
    }

    /** Whether a panel keeps below two thirds of yield and bends less than a hundredth of its width. */
    static boolean holds(double span, double height, double thick, double top, double bottom, boolean roofed) {
        Plate p = worst(span, height, thick, top, bottom, roofed);
        return p.stress() < ALLOWED && p.deflection() < span / 100;
    }

    /** Real edges lie between hinged and held: the greater stress of both, the greater deflection of both. */
    static Plate worst(double span, double height, double thick, double top, double bottom, boolean roofed) {
        Plate.Edge rim = roofed ? Plate.Edge.SIMPLE : Plate.Edge.FREE;
        Plate hinged = Plate.of(span, height, thick, STEEL, top, bottom, Plate.Edge.SIMPLE, rim);
        Plate held = Plate.of(span, height, thick, STEEL, top, bottom, Plate.Edge.CLAMPED, rim);
        return new Plate(Math.max(hinged.deflection(), held.deflection()), Math.max(hinged.stress(), held.stress()));
    }
}
