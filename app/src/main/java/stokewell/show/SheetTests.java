package stokewell.show;

import static stokewell.show.SheetMarkup.number;
import static stokewell.show.SheetMarkup.words;

import java.util.ArrayList;
import java.util.List;
import stokewell.check.HotLimits;
import stokewell.rig.Pickup;
import stokewell.rig.Rig;
import stokewell.rig.Store;
import stokewell.rig.Switch;
import stokewell.run.Trace;
import stokewell.sheet.FirstFire;
import stokewell.sheet.SheetFacts;
import stokewell.size.Weights;

/** Setpoints with their reasons, the tests before the first fire, and that fire minute by minute. */
final class SheetTests {

    private static final double G = 9.80665;
    /** Least pressure of a leak test over the air's, Pa: common practice for open boxes, no source. */
    private static final double LEAST_TEST = 1e5;
    /** Test over working pressure: common practice of water tests, no source. */
    private static final double OVER = 1.5;

    private static final String BOXES = "\u25a1\u00a0pass  \u25a1\u00a0fail";
    private static final int[] MINUTES = {0, 5, 10, 15, 20, 30, 45, 60, 90, 120, 180};

    private final SheetFacts facts;
    private final Rig rig;
    private final Measure as;
    private final Sizes sizes;
    private final List<List<String>> tests = new ArrayList<>();

    SheetTests(SheetFacts facts, Measure as) {
        this.facts = facts;
        this.as = as;
        rig = facts.rig();
        sizes = new Sizes(as);
    }

    void write(SheetMarkup page, double width) {
        page.section("What to set and what to test", false);
        page.title("Setpoints, each with its reason");
        List<List<String>> rows = new ArrayList<>();
        for (Setpoints.Line l : Setpoints.of(facts, as)) rows.add(List.of(l.what(), l.setting(), l.why()));
        page.table("", List.of(words("what", 28), words("setting", 24), words("why", 0)), rows);
        all();
        page.title("Tests before the first fire: no fire until every box says pass");
        page.table("tests", List.of(words("test", 41), words("passes if", 0), number("result", 14)), tests);
        if (facts.stops() == 0) firstFire(page, width);
        else {
            page.title("First small fire");
            page.words("alarm", "There is none: the check found a stop. Change the rig, print a new sheet.");
        }
    }

    private void test(String what, String passes) {
        tests.add(List.of((tests.size() + 1) + "  " + what, passes, BOXES));
    }

    private void all() {
        if (rig.loop() != null) water();
        room();
    }

    private void water() {
        boolean closed = rig.safety().closed();
        test(
                "Follow every pipe with a finger.",
                closed
                        ? "It rises from the pickup to a vent at each high point with no dip, and between the fire and the relief valve "
                                + "there is nothing that shuts."
                        : "It rises from pickup to vent with no dip, and between the fire and the open vent there is nothing that shuts.");
        test(
                "Leak test of pickups and pipes, cold, with water, before the tank is joined. " + pressure(),
                "Nothing drips, the gauge stands still. Never with air: it bursts.");
        test(
                "Fill from the bottom, slowly, vents open; count what goes in.",
                "It takes " + sizes.volume(Weights.water(rig))
                        + ", 5 % more or less. Then it stands a night and the "
                        + (closed ? "gauge" : "level") + " has not moved.");
        if (closed) closedTests();
        else {
            test(
                    "Pour " + (as.us() ? "a quart" : "a litre") + " into the vent's open end; blow through it.",
                    "It runs in at once, and the vent breathes. The header's lid lies loose, its overflow is clear.");
        }
        if (rig.safety().relief() != null) {
            test(
                    "Lift the relief valve's lever with the loop under pressure.",
                    "Water comes full from the outlet, downhill, where it hurts nobody; let go, it stops by itself.");
        }
        if (rig.loop().pump() != null) pump();
        sensors();
        test(
                "Hot alarm's sensor in water of " + as.hot(HotLimits.alarm(rig)) + ", a good thermometer beside it.",
                "It is heard at the far end of the shop with the machines running, and with the mains off.");
    }

    private String pressure() {
        double lowest =
                rig.pickups().stream().mapToDouble(Pickup::elevation).min().orElse(0);
        double works = rig.safety().closed() && rig.safety().relief() != null
                ? rig.safety().relief().opens()
                : 1000 * G * Math.max(0, rig.loop().header().level() - lowest);
        double test = Math.max(LEAST_TEST, OVER * works);
        String tank = rig.store().shape() instanceof Store.Shape.Square
                        || !rig.safety().closed()
                ? " The tank itself is only filled to the brim."
                : "";
        return sizes.pressure(test) + " for 30 minutes: half as much again as the " + sizes.pressure(works)
                + " it works at, and at least " + sizes.pressure(LEAST_TEST) + "." + tank;
    }

    private void closedTests() {
        double fill = rig.safety().vessel() == null
                ? Double.NaN
                : rig.safety().vessel().fill();
        test("Gauge of the closed loop, filled and cold.", "It stands at " + sizes.pressure(fill) + " for a day.");
        if (rig.store().coil() == null)
            test(
                    "Read the pressure stamped on the tank, then the whole loop with it, cold, with water, to the relief valve's pressure.",
                    "The stamp is not below the valve's pressure, and nothing drips or bulges in 30 minutes. No stamp: it is not to be filled under pressure.");
    }

    private void pump() {
        float[] flow = facts.drills().day().trace().column("loop flow");
        double most = 0;
        for (float f : flow) most = Math.max(most, f);
        test(
                "Run the pump cold; bleed until it is silent.",
                "The arrow on its body points to the stove, the water moves that way"
                        + (most > 0 ? ", about " + sizes.flow(most / 1000) + " of it" : "") + ", no air is heard.");
        test(
                "Pull the plug while it runs.",
                rig.safety().battery() == null
                        ? "It stops, and nothing that must shut or open needs power. A check valve's flap hangs free."
                        : "The battery keeps it running, for as long as the sheet's power-cut number counts on.");
    }

    private void sensors() {
        test(
                "Every sensor in melting ice, then in boiling water.",
                "It reads " + as.hot(273.15) + " and " + as.hot(HotLimits.boiling(rig)) + ", " + as.difference(1, 0)
                        + " more or less; its clip holds when you pull the cable.");
        for (Switch s : rig.switches()) {
            if (!s.drives().equals("pump")) continue;
            Switch.Thermostat t = s.highLimit() != null ? s.highLimit() : s.lowLimit();
            if (t == null) continue;
            test(
                    "The pump's sensor in a cup of water that you warm, then cool.",
                    "The pump starts at " + as.setting(t.on()) + " and stops at " + as.setting(t.off())
                            + (s.differential() == null ? "." : ", the cool sensor being colder."));
            return;
        }
    }

    private void room() {
        test(
                "Press the test buttons: carbon monoxide alarm"
                        + (rig.switches().isEmpty() ? "." : ", residual-current breaker."),
                "Alarm is heard, breaker trips.");
        test(
                "Look up the flue; hold a strip of burning paper in it, dust collector and fans on, door shut.",
                "You see daylight, and the flame is drawn up.");
        test(
                "Measure from stove and bare connector to all that burns.",
                "At least " + sizes.tape(0.914) + " and " + sizes.tape(0.457)
                        + ", or what the stove's plate or your code says.");
    }

    private void firstFire(SheetMarkup page, double width) {
        FirstFire f = facts.firstFire();
        page.title("First small fire: one load of " + sizes.mass(f.mass()) + ", everything at " + as.hot(f.cold())
                + ", run through beforehand");
        Trace t = f.night().trace();
        List<SheetMarkup.Column> head =
                new ArrayList<>(List.of(number("min", 0), number("flue", 0), number("stove", 0)));
        List<String> columns = new ArrayList<>(List.of("collar", "stove"));
        for (Pickup p : rig.pickups()) {
            if (columns.size() > 4) break;
            head.add(number(Plain.name(p.name(), 12), 0));
            columns.add("water " + p.name());
        }
        if (rig.store() != null) {
            head.add(number("store top", 0));
            columns.add("store 1");
        }
        boolean pump = t.has("runs pump") && rig.loop() != null && rig.loop().pump() != null;
        if (pump) head.add(words("pump", 0));
        head.add(words("yours", 0));
        List<List<String>> rows = new ArrayList<>();
        for (int minute : MINUTES) {
            int i = f.at(minute);
            List<String> row = new ArrayList<>(List.of(String.valueOf(minute)));
            for (String c : columns) row.add(as.hot(t.value(c, i)));
            if (pump) row.add(ran(f, minute));
            row.add("");
            rows.add(row);
        }
        page.open("pair");
        page.open("most");
        page.table("minutes", head, rows);
        page.shut();
        page.open("least");
        page.words("", expect(f));
        page.figure("", new FirstFireChart(f, rig, as, 0.375 * width).drawing());
        page.words(
                "note",
                "Heat into a home-made pickup is known to a factor of two or three before it is measured: times may be half or twice as long. Write yours beside; they are what the next sheet is made from.");
        page.shut();
        page.open("clear").shut();
        page.shut();
    }

    private static String ran(FirstFire f, int minute) {
        return f.ranSince(minute <= 0 ? 0 : before(minute), minute) ? "runs" : "";
    }

    private static int before(int minute) {
        int last = 0;
        for (int m : MINUTES) if (m < minute) last = m;
        return last;
    }

    private String expect(FirstFire f) {
        if (rig.loop() == null) return "No water is in it. The door stays shut; curing paint smokes: open the windows.";
        StringBuilder b = new StringBuilder();
        if (rig.loop().pump() != null) {
            double starts = f.starts("pump");
            if (Double.isNaN(starts)) {
                b.append("With so small a fire the pump does not start. ");
            } else {
                b.append("The pump starts at about ")
                        .append(Numbers.of(starts, 0))
                        .append(" min. It passes if that is between ");
                b.append(Numbers.of(starts / 2, 0)).append(" and ").append(Numbers.of(2 * starts, 0));
                b.append(" min; at ")
                        .append(Numbers.of(2 * starts, 0))
                        .append(" min without it, shut the air and find out why. ");
            }
        } else {
            b.append(
                    "The water must move by itself: the pipe from the pickup to the store grows warm along its whole length. If the pickup is hot and the pipe a stride away stays cold, there is air or a dip: shut the air. ");
        }
        b.append("Shut the air at once if any pickup is over ").append(as.hot(HotLimits.alarm(rig)));
        b.append(", if it knocks or hisses, if smoke comes in. Then let it die; do not douse it, add no water. ")
                .append(BOXES);
        return b.toString();
    }
}
