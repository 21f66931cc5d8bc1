package stokewell.check;

import static stokewell.check.Findings.say;

import stokewell.loop.ExpansionTank;
import stokewell.matter.Water;
import stokewell.rig.Contents;
import stokewell.rig.Emitter;
import stokewell.rig.Pickup;
import stokewell.rig.Rig;
import stokewell.rig.Safety;
import stokewell.rig.Store;

/** The header of an open loop: how large, and where its overflow goes. */
public final class HeaderRules {

    private static final double COLD = 283.15;
    private static final double HOT = 363.15;
    private static final String RULE =
            "what the water grows, and 5 % of the content in all: common practice for open systems; one boiler maker asks 7 %";

    private HeaderRules() {}

    static void look(Subject s, Findings f) {
        if (s.safety().closed()) return;
        size(s, f);
        overflow(s, f);
        emitters(s, f);
    }

    /** Emitters whose middle stands over the water that is to fill them. */
    private static void emitters(Subject s, Findings f) {
        Store store = s.rig().store();
        boolean header = store.coil() == null && store.cover() == Store.Cover.SEALED;
        double level = header ? s.rig().loop().header().level() : store.elevation() + tall(store.shape());
        for (Emitter e : s.rig().emitters()) {
            if (!(e instanceof Emitter.Radiator r) || r.elevation() <= level) continue;
            f.mend(
                    "emitter.high",
                    say("The %s stands higher than the water that is to fill it.", r.name()),
                    say(
                            "Its middle is %s above the floor, the %s water %s: it stays full of air and gives nothing, whatever the night "
                                    + "says of it.",
                            metres(r.elevation()), header ? "header's" : "store's", metres(level)),
                    header
                            ? "Hang it lower, or the header higher."
                            : "Hang it lower; water in an open store rises no higher than it stands.",
                    "water finds its level");
        }
    }

    private static double tall(Store.Shape shape) {
        if (shape instanceof Store.Shape.Round r) return r.height();
        if (shape instanceof Store.Shape.Square q) return q.height();
        return ((Store.Shape.Lying) shape).diameter();
    }

    private static String metres(double m) {
        return say("%.2f m (%.1f ft)", m, m / 0.3048);
    }

    /** Water that stands under the header: the store's too where its lid is sealed and it is no coil's other side, m3. */
    static double content(Rig rig) {
        boolean apart = rig.store().cover() != Store.Cover.SEALED || rig.store().coil() != null;
        return apart ? Contents.loop(rig) : Contents.closedPart(rig);
    }

    /** What it grows from 10 to 90 C, m3. */
    static double grown(double content) {
        return ExpansionTank.expansion(content, Water.density(COLD), Water.density(HOT));
    }

    /** What a rig's open header must hold to its overflow, m3: the rule's least, and the growth over its cold water. */
    public static double holds(Rig rig) {
        double content = content(rig);
        double grown = grown(content);
        return Math.max(
                ExpansionTank.headerVolume(content, grown), rig.loop().header().water() + grown);
    }

    /**
     * How far a vent's end must stand over its header's water, m: 450 mm (common practice, no source), or 150 mm and 40 mm for
     * each metre from the lowest pickup to that water where that is more (Water Regulations Guide, G20.3, of gravity
     * systems; as plumbers quote it).
     */
    public static double ventRise(Rig rig) {
        double lowest =
                rig.pickups().stream().mapToDouble(Pickup::elevation).min().orElse(0);
        return Math.max(0.45, 0.15 + 0.04 * (rig.loop().header().level() - lowest));
    }

    private static void size(Subject s, Findings f) {
        double content = content(s.rig());
        double grown = grown(content);
        double least = holds(s.rig());
        Safety.OpenVent v = s.vent();
        double cold = s.rig().loop().header().water();
        String asked = say(
                "The header must hold %s or more to its overflow: its %s when cold, and %s free above them.",
                litres(least), litres(cold), litres(least - cold));
        String why = say(
                "%s of water grow by %s from 10 to 90 °C (50 to 194 °F); 5 %% of it are %s.",
                litres(content), litres(grown), litres(0.05 * content));
        if (Double.isNaN(v.headerHolds())) {
            f.ask("expansion.header", "safety.vent.headerHolds: " + litres(least), asked, why, RULE);
        } else if (v.headerHolds() < least) {
            f.mend(
                    "expansion.header",
                    "The header is too small for what the water grows.",
                    why + say(" It holds %s, %s of them when cold.", litres(v.headerHolds()), litres(cold)),
                    say(
                            "One of %s or more, or less water in it when cold: %s must be free above it.",
                            litres(least), litres(grown)),
                    RULE);
        } else {
            f.fine("expansion.header", "The header takes what the water grows.", asked + " " + why, RULE);
        }
        if (content < Contents.closedPart(s.rig()) && s.rig().store().coil() == null) {
            double own = grown(Contents.store(s.rig()));
            f.mind(
                    "expansion.store",
                    say("The store's own water grows by %s: leave so much dry wall above it.", litres(own)),
                    "Its lid is not sealed, so it runs over there and not into the header.",
                    "Fill it cold to a mark that leaves the room, with an overflow of its own.",
                    "density of water from 10 to 90 °C (50 to 194 °F)");
        }
    }

    private static void overflow(Subject s, Findings f) {
        Boolean runs = s.vent().overflow();
        String basis = "practice of open systems: an overflow as wide as the vent, seen, frost-free, without a valve";
        String why =
                "A boil or a pump that lifts too high throws it over: scalding water, at once, where people stand.";
        if (runs == null) {
            f.ask(
                    "expansion.overflow",
                    "safety.vent.overflow: yes or no",
                    "Where does the header's overflow go: downhill, wide, to where it scalds nobody?",
                    why,
                    basis);
        } else if (!runs) {
            f.mend(
                    "expansion.overflow",
                    "The header has no overflow that leads its water safely away.",
                    why,
                    "A pipe as wide as the vent, metal, downhill all the way, ending over a drain or a bucket where you see it, in the "
                            + "warm.",
                    basis);
        } else {
            f.fine("expansion.overflow", "The overflow leads its water safely away.", "As answered.", basis);
        }
    }

    private static String litres(double volume) {
        return say(volume < 0.0095 ? "%.1f L" : "%.0f L", 1000 * volume);
    }
}
