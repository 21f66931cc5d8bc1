package stokewell.show;

import java.util.ArrayList;
import java.util.List;
import stokewell.check.Check;
import stokewell.check.Drill;
import stokewell.check.Drills;
import stokewell.check.Fault;
import stokewell.file.UnitSystem;

/** All drills of a rig on one page: the answer, the pictures beside each other, the table, then each fault in words. */
public final class DrillPage {

    private DrillPage() {}

    /** The whole file. Nothing in it asks for anything outside it. */
    public static String html(String rig, Drills.Outcome outcome, Check check, UnitSystem units) {
        Measure as = Measure.printed(units);
        Page page = new Page(rig + ", what happens when something fails");
        page.head(rig, "What fails at the worst moment of a normal day", moment(outcome));
        page.verdict(Stops.lead(check, sentence(outcome)));
        List<Cautions.Caution> cautions = new ArrayList<>();
        for (String text : Stops.told(check)) cautions.add(new Cautions.Caution(true, text));
        page.cautions(cautions);
        page.title(
                "Fault by fault",
                "All on the same scales, in " + as.scaleUnit()
                        + " against the time since the fault. A lozenge marks boiling.");
        page.figure(
                new DrillChart(outcome.drills(), as, Page.DESK).drawing(),
                new DrillChart(outcome.drills(), as, Page.PHONE).drawing());
        tables(page, outcome.drills(), as);
        guards(page, outcome.drills(), as);
        page.title("In words", "");
        List<NightFacts.Fact> words = new ArrayList<>();
        for (Drill d : outcome.drills()) {
            words.add(new NightFacts.Fact(
                    DrillChart.cap(d.fault().title()), cap(Spoken.in(d.fault().story(), units)) + ". " + d.sentence()));
        }
        page.facts(words);
        return page.end("A reckoning, not an approval: local code and a licensed person decide.");
    }

    private static String cap(String text) {
        return DrillChart.cap(text);
    }

    static String moment(Drills.Outcome outcome) {
        for (Drill d : outcome.drills()) {
            if (d.possible())
                return "Every fault begins at " + Clock.hour(outcome.day().at(d.start())) + ".";
        }
        return "";
    }

    /** The one sentence that leads: the power cut, or the worst of the rest. */
    static String sentence(Drills.Outcome outcome) {
        Drill power = outcome.of(Fault.POWER_OUT);
        Drill soonest = null;
        for (Drill d : outcome.drills()) {
            if (d.possible() && (soonest == null || d.firstBoil() < soonest.firstBoil())) soonest = d;
        }
        if (soonest == null || !Double.isFinite(soonest.firstBoil())) return "Nothing that was tried boils the water.";
        if (power != null && power.possible() && Double.isFinite(power.firstBoil())) {
            return "A power cut at the worst moment boils the water " + DrillChart.span(power.firstBoil()) + " later.";
        }
        return cap(soonest.fault().title()) + " at the worst moment boils the water "
                + DrillChart.span(soonest.firstBoil()) + " later"
                + (power != null && power.possible() ? "; a power cut does not." : ".");
    }

    /** Two tables rather than one: eleven columns fit no phone. */
    private static void tables(Page page, List<Drill> drills, Measure as) {
        String[] hot = {
            "fault", "level", "boils", "water " + as.scaleUnit(), "metal " + as.scaleUnit(), as.pressureUnit()
        };
        String[] wet = {
            "fault",
            "steam " + as.massUnit() + "/h",
            "lost " + as.massUnit(),
            "bare",
            "must go " + as.powerUnit(),
            "can go " + as.powerUnit()
        };
        List<String[]> heat = new ArrayList<>();
        List<String[]> water = new ArrayList<>();
        for (Drill d : drills) {
            String name = cap(d.fault().title());
            if (!d.possible()) {
                heat.add(new String[] {name, "-", "-", "-", "-", "-"});
                continue;
            }
            heat.add(new String[] {
                name,
                d.level().name(),
                DrillChart.boils(d),
                whole(as.scale(d.water().temperature())),
                whole(as.scale(d.metal().temperature())),
                d.pressure() == Double.POSITIVE_INFINITY ? "bursts" : tenth(as.pressureNumber(d.pressure()))
            });
            water.add(new String[] {
                name,
                whole(as.massNumber(3600 * d.steam())),
                tenth(as.massNumber(d.waterLost())),
                DrillChart.span(d.exposed()),
                tenth(as.powerNumber(d.reliefNeeded())),
                Double.isNaN(d.reliefFitted()) ? "not known" : tenth(as.powerNumber(d.reliefFitted()))
            });
        }
        page.title("How hot", "Most in each drill. Pressure is over the air's; never: not in the time followed.");
        page.table("drills", hot, heat);
        page.title("How much steam", "What must go is the heat that makes it; what can go is vent and relief.");
        page.table("drills", wet, water);
    }

    private static void guards(Page page, List<Drill> drills, Measure as) {
        List<String[]> there = new ArrayList<>();
        List<String[]> hands = new ArrayList<>();
        List<String[]> ways = new ArrayList<>();
        for (Drill d : drills) {
            for (Drill.Guard g : d.guards()) {
                if (!Double.isNaN(g.pressureWithout())) {
                    ways.add(new String[] {
                        cap(d.fault().title()) + ": " + g.name(),
                        pressed(g.pressureWithout(), as),
                        pressed(g.pressureWith(), as)
                    });
                    continue;
                }
                (g.byHand() ? hands : there).add(new String[] {
                    cap(d.fault().title()) + ": " + g.name(),
                    DrillChart.span(g.without()),
                    DrillChart.span(g.with()),
                    tenth(as.massNumber(g.steam()))
                });
            }
        }
        String kept = "water kept, " + as.massUnit();
        if (!there.isEmpty()) {
            page.title("What protects it", "The same drill without each thing that is there, and with it.");
            page.table("guards", new String[] {"protection", "boils without", "boils with", kept}, there);
        }
        if (!ways.isEmpty()) {
            page.title(
                    "What lets the pressure go", "It does not keep the water from boiling: it keeps the metal whole.");
            String unit = ", " + as.pressureUnit();
            page.table("guards", new String[] {"way out", "without" + unit, "with" + unit}, ways);
        }
        if (hands.isEmpty()) return;
        page.title(
                "What a hand can still do",
                "Shut the air, or draw the fire into a lidded metal pail. Never pour water.");
        page.table("guards", new String[] {"", "boils else", "boils then", kept}, hands);
    }

    private static String pressed(double pascal, Measure as) {
        return pascal == Double.POSITIVE_INFINITY ? "bursts" : Numbers.of(as.pressureNumber(pascal), 2);
    }

    private static String whole(double v) {
        return Double.isFinite(v) ? Numbers.of(v, 0) : "-";
    }

    private static String tenth(double v) {
        return Double.isFinite(v) ? Numbers.of(v, 1) : "-";
    }
}
