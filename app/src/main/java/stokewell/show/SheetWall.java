package stokewell.show;

import static stokewell.show.SheetMarkup.words;

import java.util.ArrayList;
import java.util.List;
import stokewell.check.Drill;
import stokewell.check.Fault;
import stokewell.check.HotLimits;
import stokewell.file.UnitSystem;
import stokewell.rig.Contents;
import stokewell.rig.Rig;
import stokewell.rig.Safety;
import stokewell.rig.Store;
import stokewell.sheet.Parts;
import stokewell.sheet.SheetFacts;
import stokewell.size.Plates;
import stokewell.size.Weights;

/** The page for the wall: what to do when it goes wrong, labels and the sign to cut out, cautions, whom to ask. */
final class SheetWall {

    private static final double NEVER = Double.POSITIVE_INFINITY;

    private final SheetFacts facts;
    private final Rig rig;
    private final Measure as;
    private final Sizes sizes;

    SheetWall(SheetFacts facts, Measure as) {
        this.facts = facts;
        this.as = as;
        rig = facts.rig();
        sizes = new Sizes(as);
    }

    void write(SheetMarkup page) {
        page.section("For the wall", true);
        page.open("cut");
        page.title("What to do");
        page.points("", rig.loop() == null ? dry() : wet());
        page.words(
                "",
                "Fire service, and the address to read out: __________________________   Who knows this rig: ________________");
        page.shut();
        if (rig.loop() != null) sign(page);
        page.title("Labels to cut out and tie on");
        page.table("labels", List.of(words("label", 45), words("goes on", 0)), labels());
        page.title("Numbers that a licensed person should confirm before a fire is lit");
        page.table(
                "", List.of(words("what", 40), words("reckoned here", 0), words("confirmed by, date", 19)), confirm());
        page.title("Cautions");
        page.points("", cautions());
    }

    private static String[] point(String title, String... texts) {
        String[] p = new String[texts.length + 1];
        p[0] = title;
        System.arraycopy(texts, 0, p, 1, texts.length);
        return p;
    }

    private List<String[]> dry() {
        return List.of(
                point(
                        "Before lighting.",
                        "Look up the flue. Test the carbon monoxide alarm. No spray, no solvent, no fuel in the room."),
                roar(),
                alarm(),
                coals());
    }

    private List<String[]> wet() {
        List<String[]> list = new ArrayList<>();
        boolean closed = rig.safety().closed();
        list.add(point(
                "Before lighting.",
                closed
                        ? "Gauge at its mark, no valve shut."
                        : "Water at the mark in the header, vent breathes, no valve shut.",
                "Nothing was below freezing since water last moved; if it was, or you do not know: DO NOT LIGHT.",
                rig.loop().pump() == null ? "" : "Pump turns.",
                "Store has room. Alarms tested. No spray, no solvent, no fuel in the room."));
        if (rig.loop().pump() != null) list.add(point("The pump stops.", soon(Fault.PUMP_DEAD), hot()));
        list.add(point(
                "The power fails.",
                soon(Fault.POWER_OUT),
                rig.loop().pump() == null ? "Shut the air, put no wood on." : hot()));
        list.add(
                point(
                        "It boils or bangs.",
                        (closed ? "Keep away from the relief valve's outlet." : "Keep away from vent and relief.")
                                + " Shut the air, leave the door shut, open windows and doors of the room. Open nothing that is hot, take nothing apart."));
        list.add(
                point(
                        "Water is lost.",
                        bare(),
                        "Let the fire die. Never let water into a hot dry pickup: it flashes to steam. Fill when it is hand-warm, usually the next day, after the leak is found."));
        list.add(
                point(
                        "It may be frozen.",
                        frost(),
                        "Light nothing, not even a small fire. Warm the room by other means until "
                                + (closed
                                        ? "every pipe is well above freezing, see that water moves, then look for leaks."
                                        : "every pipe, the vent and the header are well above freezing, see that the vent breathes and that water moves, then look for leaks.")));
        list.add(roar());
        list.add(alarm());
        list.add(coals());
        return list;
    }

    private static String[] roar() {
        return point(
                "A roar in the chimney.",
                "Shut air inlets and door, get everyone out, call. No fire again before it is inspected.");
    }

    private static String[] alarm() {
        return point("The carbon monoxide alarm rings.", "Out, all of you, door open behind you. Then call.");
    }

    private static String[] coals() {
        return point("Coals and ash.", "Lidded metal pail, outdoors, off wood, four days.");
    }

    private String soon(Fault fault) {
        Drill d = facts.drills().of(fault);
        if (d == null || !d.possible()) return "";
        if (d.firstBoil() == NEVER)
            return "At the worst moment nothing boils in the " + as.hours(d.lasted() / 3600) + " that were followed.";
        String text = "At the worst moment it boils " + as.minutes(d.firstBoil() / 60) + " later.";
        return d.exposed() == NEVER ? text : text + " Its metal is bare after " + as.minutes(d.exposed() / 60) + ".";
    }

    private String hot() {
        return "Shut the air, leave the door shut, put no wood on, throw no water on it. Do not start the pump again while the pickup is over "
                + as.hot(HotLimits.restart(rig)) + ".";
    }

    private String bare() {
        Drill d = facts.drills().of(Fault.POWER_OUT);
        return d == null || !d.possible() || d.exposed() == NEVER
                ? ""
                : "After " + as.minutes(d.exposed() / 60) + " of boiling at the worst moment metal is bare.";
    }

    private String frost() {
        Drill d = facts.drills().of(Fault.FROZEN_RUN);
        if (d == null || !d.possible() || d.freezing() == NEVER) return "";
        return "Left cold and full in this weather the first water freezes after " + span(d.freezing()) + ".";
    }

    private String span(double seconds) {
        return seconds > 48 * 3600 ? Numbers.of(seconds / 86400, 1) + " days" : as.minutes(seconds / 60);
    }

    private static void sign(SheetMarkup page) {
        page.open("cut");
        page.words("sign", "DO NOT LIGHT");
        page.words("why", "\u25a1\u00a0EMPTY   \u25a1\u00a0MAY BE FROZEN   \u25a1\u00a0BEING WORKED ON");
        page.words(
                "",
                "Hang it on the stove's door whenever one of these is so. A fire on a frozen or dry pickup bursts it. Off only by: ______________ date: ________");
        page.shut();
    }

    private List<List<String>> labels() {
        List<List<String>> rows = new ArrayList<>();
        if (rig.loop() != null) {
            rows.add(List.of("HOT: TO THE STORE \u2192", "hot pipe, at the stove and at the store"));
            rows.add(List.of("COOL: TO THE STOVE \u2192", "cool pipe, at the store and at the pump"));
            if (!rig.safety().closed()) {
                rows.add(List.of("OPEN VENT: never close, no valve, no cap", "vent, at the stove and at its open end"));
                rows.add(List.of("COLD FEED: no valve", "feed from the header"));
            }
            if (rig.safety().relief() != null)
                rows.add(List.of("RELIEF OUTLET: steam without warning, keep clear", "relief valve's pipe"));
            rows.add(List.of("DRAIN: never while the fire is hot", "each drain cock"));
            if (rig.loop().pump() != null)
                rows.add(List.of("PUMP: hot and stopped? Do not start it", "pump and its switch"));
        }
        int sensors = Parts.of(rig).sensors().size();
        if (sensors > 0)
            rows.add(List.of(
                    "SENSOR 1" + (sensors > 1 ? " to " + sensors : ""),
                    "each sensor's cable, at both ends, as in the list of parts"));
        if (rows.isEmpty()) rows.add(List.of("AIR: shut it first", "air inlet"));
        return rows;
    }

    private List<List<String>> confirm() {
        List<List<String>> rows = new ArrayList<>();
        if (rig.loop() != null) {
            double heat = 0;
            for (Drill d : facts.drills().drills()) if (d.possible() && d.heat() > heat) heat = d.heat();
            ask(
                    rows,
                    "greatest heat into the water, what vent or relief must carry",
                    sizes.power(heat) + ", " + as.mass(3600 * heat / 2.257e6, 0) + "/h of steam");
            ask(rows, "boiling in a power cut at the worst moment", minutes(facts.powerCut()));
            if (!rig.safety().closed()) {
                ask(
                        rows,
                        "open vent",
                        "bore " + sizes.gauge(rig.loop().header().vent()) + ", its end " + sizes.tape(Parts.rise(rig))
                                + " over the header's water");
                ask(
                        rows,
                        "header",
                        sizes.volume(Parts.of(rig).header()) + " for " + sizes.volume(Weights.water(rig)) + " in all");
            }
            if (rig.safety().closed()) vessel(rows);
            if (rig.safety().relief() != null)
                ask(rows, "relief valve", sizes.pressure(rig.safety().relief().opens()) + rated());
        }
        if (rig.store() != null) {
            double weight = Weights.store(rig);
            ask(
                    rows,
                    "load of the full tank on what it stands on",
                    sizes.mass(weight) + " on " + sizes.area(Plates.footprint(rig.store())) + ": "
                            + sizes.load(9.80665 * weight / Plates.footprint(rig.store())));
            if (rig.store().shape() instanceof Store.Shape.Square && Plates.metal(rig))
                ask(
                        rows,
                        "flat walls and their stiffeners",
                        sizes.gauge(rig.store().wall().thickness()) + " plate under "
                                + sizes.tape(Contents.depth(rig.store().shape())) + " of water");
        }
        ask(
                rows,
                "chimney and clearances",
                "flue " + sizes.cut(rig.flue().diameter()) + ", "
                        + sizes.run(rig.flue().height()) + "; stove " + sizes.tape(0.914) + ", bare connector "
                        + sizes.tape(0.457) + " from all that burns");
        ask(rows, "fire in this room at all: permit, insurer in writing, vapours, garage", "not for this sheet to say");
        if (!rig.switches().isEmpty())
            ask(rows, "wiring of pump, fan, alarms: residual-current breaker, earth bond", "to local code");
        return rows;
    }

    private void vessel(List<List<String>> rows) {
        Safety.Vessel v = rig.safety().vessel();
        ask(
                rows,
                "expansion vessel",
                sizes.volume(v.volume()) + " for " + sizes.volume(Contents.closedPart(rig)) + " of water; gas "
                        + sizes.pressure(v.precharge()) + ", filled cold to " + sizes.pressure(v.fill()));
        if (rig.store() != null && rig.store().coil() == null)
            ask(rows, "the tank under pressure: stamp, inspection", "not for this sheet to say");
    }

    private String rated() {
        double r = rig.safety().relief().rated();
        return Double.isNaN(r) ? ", its rated heat not known" : ", rated " + sizes.power(r);
    }

    private static void ask(List<List<String>> rows, String what, String number) {
        rows.add(List.of(what, number, "\u25a1"));
    }

    private String minutes(double minutes) {
        return minutes == NEVER ? "never in the time followed" : as.minutes(minutes);
    }

    private List<String[]> cautions() {
        List<String[]> list = new ArrayList<>();
        for (Cautions.Caution c :
                Cautions.found(facts.drills().day(), List.of(), as.us() ? UnitSystem.US : UnitSystem.SI)) {
            list.add(point(c.danger() ? "DANGER" : "", c.text()));
        }
        if (rig.loop() != null) {
            list.add(
                    point(
                            "",
                            "No galvanised metal and no solder in the fire: zinc fumes, solder melts. No plastic near it. Never test with compressed air. A relief valve that weeps is replaced, never capped."));
            if (!rig.safety().closed())
                list.add(point(
                        "",
                        "This loop is open. Close it nowhere: a valve, a cap or ice in the vent makes a bomb of it."));
        }
        list.add(point("", Cautions.DECIDES));
        return list;
    }
}
