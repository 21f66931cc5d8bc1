package stokewell.check;

import static stokewell.check.Findings.say;

/** The heat leak that needs no power: how much it must carry, and how long a finned pipe that makes. */
final class DumpRules {

    /** A metre of finned pipe by gravity, W: common practice, 0.2 to 0.35 kW; half of what it gives on a pump. */
    static final double METRE = 270;

    private static final double LEAST_METRE = 200;
    private static final double MOST_METRE = 350;

    private DumpRules() {}

    /** Heat that the fire gives the water in the hour after its air was shut, a mean, W; NaN where nothing boils. */
    static double afterShut(Subject s) {
        double most = Double.NaN;
        for (Fault fault : new Fault[] {Fault.POWER_OUT, Fault.PUMP_DEAD}) {
            Drill d = s.drill(fault);
            if (d == null) continue;
            for (Drill.Guard g : d.guards()) {
                if (g.byHand() && g.name().startsWith(Guards.AIR_SHUT) && !(g.heat() <= most)) most = g.heat();
            }
        }
        return most;
    }

    static void look(Subject s, Findings f) {
        String basis =
                "what the fire still gives in the hour after its air is shut; a tenth of the output is the least that codes ask; "
                        + "finned pipe by gravity gives 0.27 kW/m, from 0.2 to 0.35 kW/m: practice";
        Drill out = s.drill(Fault.POWER_OUT);
        if (out == null) return;
        double after = afterShut(s);
        if (Double.isNaN(after)) {
            if (out.firstBoil() < Double.POSITIVE_INFINITY) return;
            f.fine(
                    "boil.dump",
                    "It needs no other heat leak.",
                    "In a power cut it carries its heat away as it is.",
                    basis);
            return;
        }
        double tenth = 0.1 * s.greatestHeat();
        double asked = Math.max(after, tenth);
        f.mind(
                "boil.dump",
                say(
                        "A heat leak by gravity takes %.0f m of finned pipe (%.0f to %.0f m).",
                        Math.ceil(asked / METRE), Math.ceil(asked / MOST_METRE), Math.ceil(asked / LEAST_METRE)),
                say(
                        "With its air shut the fire still gives the water %.1f kW, the mean of an hour, which takes %.0f m. A tenth of "
                                + "its greatest %.1f kW takes %.0f m%s.",
                        after / 1000,
                        Math.ceil(after / METRE),
                        s.greatestHeat() / 1000,
                        Math.ceil(tenth / METRE),
                        after > tenth ? ": too little for this fire" : ", the least that is asked"),
                "Hang it above the stove on bare pipe of 28 mm (1 in) or wider that rises all the way, with no valve, or one that opens "
                        + "when its power goes.",
                basis);
    }
}
