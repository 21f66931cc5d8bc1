package stokewell.check;

import static stokewell.check.Findings.say;

import stokewell.rig.Metal;
import stokewell.rig.Room;
import stokewell.rig.Store;
import stokewell.size.Plates;
import stokewell.size.Weights;

/** The store as a thing of weight and walls. */
final class StoreRules {

    private static final double STEEL = 200e9;
    /** Timber floors of houses in the US: 40 psf. */
    private static final double HOUSE_FLOOR = 1900;

    private StoreRules() {}

    static void look(Subject s, Findings f) {
        weight(s, f);
        headroom(s, f);
        if (s.rig().store().shape() instanceof Store.Shape.Square q) walls(s, f, q);
    }

    private static void weight(Subject s, Findings f) {
        Store store = s.rig().store();
        double mass = Weights.store(s.rig());
        double area = Plates.footprint(store);
        double load = 9.80665 * mass / area;
        double good = s.around().floorGoodFor();
        boolean slab = s.rig().room().floor() instanceof Room.Floor.Slab;
        String why = say(
                "%.0f kg on %.2f m²: %.1f kPa (%.0f psf). A timber floor is made for %.1f kPa (%.0f psf).",
                mass, area, load / 1000, load / 47.88, HOUSE_FLOOR / 1000, HOUSE_FLOOR / 47.88);
        String basis = "1 m of water is 9.8 kPa; house floors 1.9 kPa (40 psf): building codes";
        if (store.standing() == Store.Standing.EARTH) return;
        if (!Double.isNaN(good) && good < load) {
            f.stop(
                    "store.weight",
                    "The floor does not carry the store.",
                    why + say(" This one is good for %.1f kPa (%.0f psf).", good / 1000, good / 47.88),
                    "Stand it on the ground, on a slab 100 mm wider all round, never on joists; spread it with steel and have it "
                            + "checked.",
                    basis);
        } else if (Double.isNaN(good) && !slab) {
            f.mend(
                    "store.weight",
                    "The store stands on boards, and nothing is known of what they carry.",
                    why,
                    "Have someone who can reckon it say what the floor carries (safety.surroundings.floorGoodFor), or stand "
                            + "it on the ground.",
                    basis);
        } else if (Double.isNaN(good)) {
            f.mind(
                    "store.weight",
                    "Is the slab good for the store?",
                    why,
                    "100 mm with mesh on firm ground usually is; foam under it at a third of its short-term strength.",
                    basis);
        } else {
            f.fine("store.weight", "The floor carries the store.", why, basis);
        }
    }

    private static void headroom(Subject s, Findings f) {
        double top = s.waterTop() + s.rig().store().lid().thickness();
        double ceiling = s.rig().room().height();
        if (top <= ceiling) return;
        f.mend(
                "store.headroom",
                say("The store ends at %.2f m, above the ceiling at %.2f m.", top, ceiling),
                "It does not fit, and a header that is to stand over it would be outside.",
                "Make it lower and wider, or lay it down.",
                "heights in the rig file");
    }

    private static void walls(Subject s, Findings f, Store.Shape.Square q) {
        Store store = s.rig().store();
        Metal metal = s.materials().tank();
        if (metal == Metal.PLASTIC || metal == Metal.RUBBER) return;
        double thick = store.wall().thickness();
        if (thick <= 0 || store.wall().density() < 2000) return;
        boolean full = store.cover() == Store.Cover.SEALED;
        double over = full && s.wet() && !s.coilInStore() ? over(s) : 0;
        double top = Subject.waterPressure(over);
        double bottom = Subject.waterPressure(over + q.height());
        double apart = s.materials().stiffeners();
        double span = Math.max(q.width(), q.length());
        if (!Double.isNaN(apart)) span = Math.min(span, apart);
        Plate plate = FlatWall.worst(span, q.height(), thick, top, bottom, full);
        double mean = 0.5 * (top + bottom);
        double skin = skin(span, thick, mean);
        double total = mean * Math.max(q.width(), q.length()) * q.height();
        String panel = say(
                "The water pushes %.0f kN on the long wall. A panel of %.2f m by %.2f m of %.1f mm ",
                total / 1000, span, q.height(), 1000 * thick);
        String why = panel
                + (plate.deflection() > 0.5 * thick
                        ? say(
                                "is too thin to stand by bending (that would take %.0f MPa): held at its edges it bellies out some %.0f mm "
                                        + "like a skin, at %.0f MPa, and pulls its seams.",
                                plate.stress() / 1e6, 1000 * mean * span * span / (8 * skin * thick), skin / 1e6)
                        : say("bends %.1f mm, with %.0f MPa.", 1000 * plate.deflection(), plate.stress() / 1e6));
        String basis = "thin plates under water, Timoshenko and Woinowsky-Krieger; S235 steel, two thirds of yield";
        if (plate.stress() > FlatWall.ALLOWED || plate.deflection() > span / 100) {
            double enough = enough(q.height(), thick, top, bottom, full, span);
            f.add(
                    skin > FlatWall.ALLOWED ? Level.STOP : Level.MEND,
                    "store.wall",
                    "The flat wall is too thin for its water.",
                    why,
                    s.safety().closed() && full && !s.coilInStore()
                            ? "No stiffener makes a pressure vessel of it: keep it vented, or take a stamped round one."
                            : Double.isNaN(enough)
                                    ? "Take thicker plate, or a round tank."
                                    : say(
                                            "Weld stiffeners on every %.0f mm, or take thicker plate, or a round tank.",
                                            1000 * enough),
                    basis);
        } else {
            f.fine("store.wall", "The flat walls carry their water.", why + " Flat walls must stay vented.", basis);
        }
    }

    /** What stands on the lid of a store that is part of the loop, as a height of water, m. */
    private static double over(Subject s) {
        return s.safety().closed()
                ? s.safety().vessel().fill() / Subject.waterPressure(1)
                : Math.max(0, s.rig().loop().header().level() - s.waterTop());
    }

    /**
     * Stress of a long strip whose edges cannot come in, by its pull alone, Pa: cylindrical bending of a thin plate,
     * {@code (E p² a² / (24 (1−ν²) t²))^⅓}. What a wall that bends far past its thickness comes to if its corners hold.
     */
    static double skin(double span, double thick, double pressure) {
        return Math.cbrt(STEEL * pressure * pressure * span * span / (24 * (1 - 0.09) * thick * thick));
    }

    /** The widest spacing of upright stiffeners that carries it, m; NaN if none does. */
    private static double enough(double height, double thick, double top, double bottom, boolean roofed, double from) {
        for (int parts = 2; parts <= 8; parts++) {
            double span = from / parts;
            if (FlatWall.holds(span, height, thick, top, bottom, roofed)) return span;
        }
        return Double.NaN;
    }
}
