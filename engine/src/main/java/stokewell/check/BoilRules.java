package stokewell.check;

import static stokewell.check.Findings.say;

import java.util.StringJoiner;
import stokewell.rig.Pickup;
import stokewell.transfer.Boiling;

/** How near the water is to boiling: on a normal day, in a power cut, at the wall. */
final class BoilRules {

    private static final double NEVER = Double.POSITIVE_INFINITY;

    private BoilRules() {}

    static void look(Subject s, Findings f) {
        outage(s, f);
        normal(s, f);
        alone(s, f);
        full(s, f);
        bare(s, f);
        flux(s, f);
        furred(s, f);
    }

    private static void normal(Subject s, Findings f) {
        double margin = s.day().boil().margin();
        String where = s.day().boil().where();
        String basis = "practice: 10 to 15 K under boiling at the hottest point";
        String why =
                say("The least margin of the normal day is %.0f K (%.0f °F), in the %s.", margin, 1.8 * margin, where);
        if (margin <= 0) {
            f.stop(
                    "boil.normal",
                    say(
                            "The water boils on a normal day: %.0f minutes.",
                            s.day().boilingMinutes()),
                    why,
                    "Burn smaller loads, start the pump earlier, or give the store more water.",
                    basis);
        } else if (margin < 12) {
            f.mind("boil.normal", "The water comes near boiling on a normal day.", why, "Burn smaller loads.", basis);
        } else {
            f.fine("boil.normal", "Nothing boils on a normal day.", why, basis);
        }
    }

    private static void outage(Subject s, Findings f) {
        Drill d = s.drill(Fault.POWER_OUT);
        if (d == null) return;
        String basis =
                "gravity heat leak of a tenth of the output at least, on bare wide pipe: BS 8303, EN 12828 practice";
        StringJoiner buys = new StringJoiner(" ");
        for (Drill.Guard g : d.guards()) {
            if (g.byHand() || !Double.isNaN(g.pressureWithout())) continue;
            buys.add(say("Without %s: %s.", g.name(), after(g.without())));
        }
        if (d.firstBoil() == NEVER) {
            f.fine(
                    "boil.outage",
                    s.pumped()
                            ? "A power cut at the worst moment boils nothing."
                            : "It needs no power to carry its heat away.",
                    say(
                                    "The hottest water then is at %s. ",
                                    Telling.degrees(d.water().temperature()))
                            + buys,
                    basis);
            return;
        }
        String why = d.sentence() + (buys.length() > 0 ? " " + buys : " Nothing carries heat away without power.");
        f.add(
                d.level(),
                "boil.outage",
                "A power cut at the worst moment boils the coil " + Telling.later(d.firstBoil()) + ".",
                why,
                outageRemedy(s),
                basis);
    }

    private static String after(double seconds) {
        return seconds == NEVER ? "nothing boils either" : "boiling after " + Telling.span(seconds);
    }

    private static String outageRemedy(Subject s) {
        StringJoiner r = new StringJoiner("; ");
        if (s.waterTop() > s.highestPickup() && !Double.isNaN(s.rig().loop().checkValve())) {
            r.add("change the spring check valve for a flap that a few pascals open, or take it out");
        }
        double after = DumpRules.afterShut(s);
        r.add("put a radiator"
                + (Double.isNaN(after) ? "" : say(" for %.1f kW", after / 1000))
                + " on bare wide pipe above the stove, that runs by gravity with nothing that shuts");
        if (s.pumped() && s.safety().battery() == null) {
            double watts = s.rig().loop().pump().power();
            r.add(say("or keep the pump on a battery: %.0f Wh for 5 h", 5 * watts / 0.85));
        }
        return r + ". Try it once a year with a small fire.";
    }

    private static void alone(Subject s, Findings f) {
        Drill d = s.drill(Fault.PUMP_DEAD);
        if (d == null || d.firstBoil() == NEVER) return;
        f.add(
                d.level(),
                "boil.pump",
                "A pump that dies with the lights on boils the coil " + Telling.later(d.firstBoil()) + ".",
                d.sentence(),
                "What helps in a power cut helps here: a gravity path, a gravity radiator. A high limit that starts the fan cools "
                        + "the store, not the coil. Keep a spare pump, and unions with valves outside the safe path.",
                "a drill; the lights are on, so nobody notices");
        String basis =
                "practice: alarm at 90 °C (194 °F), on a mountain 10 K (18 °F) below boiling; independent of the controller";
        Boolean alarm = s.around().hotAlarm();
        if (Boolean.TRUE.equals(alarm)) return;
        String what = "A pump that dies with the lights on gives no sign until the coil boils, "
                + Telling.later(d.firstBoil()) + ".";
        if (alarm == null) {
            f.ask(
                    "boil.alarm",
                    "safety.surroundings.hotAlarm: yes or no",
                    "Does a loud alarm of its own watch the coil's outlet?",
                    what,
                    basis);
        } else {
            f.mend(
                    "boil.alarm",
                    "Nothing calls when the coil gets hot.",
                    what,
                    "Fit a loud alarm at " + Telling.degrees(HotLimits.alarm(s.rig())) + " at the outlet.",
                    basis);
        }
    }

    private static void full(Subject s, Findings f) {
        var c = s.day().charge();
        if (c == null || Double.isNaN(c.roomLeft())) return;
        String basis = "an energy balance of the normal day; practice: stop feeding in time";
        String why = say(
                "At the tightest load of the day the store still takes %.0f kWh, the fire will still bring %.0f kWh, if nothing is drawn.",
                c.roomLeft() / 3.6e6, c.coming() / 3.6e6);
        if (c.roomLeft() < c.coming()) {
            f.mend(
                    "store.full",
                    "The tightest load of the day does not fit into the store any more.",
                    why,
                    "Stop feeding earlier, or skip a load when the store's top is hot; no pump can cool into a full store.",
                    basis);
        } else {
            f.fine("store.full", "The store has room for every load.", why, basis);
        }
        Drill fan = s.drill(Fault.FAN_DEAD);
        if (fan != null && fan.firstBoil() < NEVER) {
            f.add(
                    fan.level(),
                    "store.fan",
                    "With the fan dead the store fills up and boils " + Telling.later(fan.firstBoil()) + ".",
                    fan.sentence(),
                    "Skip loads by the store's top temperature; let a high limit call.",
                    basis);
        }
    }

    private static void bare(Subject s, Findings f) {
        Drill worst = null;
        for (Drill d : s.drills()) {
            // a leak is answered by the level that is watched
            if (d.fault() == Fault.DRY_REFILLED || d.fault() == Fault.LEAK || d.exposed() == NEVER) continue;
            if (worst == null || d.exposed() < worst.exposed()) worst = d;
        }
        Drill dry = s.drill(Fault.DRY_REFILLED);
        String flash = dry == null ? "" : dry.sentence();
        String basis = "never restart a pump or add water to a hot dry coil: every boiler code; wait 24 h";
        if (worst != null) {
            f.mend(
                    "boil.dry",
                    "After " + worst.fault().title() + " metal is bare in " + Telling.span(worst.exposed()) + ".",
                    flash,
                    (s.safety().closed()
                                    ? "An alarm on low pressure."
                                    : "A header that holds more, and an alarm on low level.")
                            + " Dry, red or ticking: fire out, nothing in, wait until "
                            + "the next day.",
                    basis);
        } else if (dry != null) {
            f.mind(
                    "boil.dry",
                    "Never start the pump and never add water once the coil is hot and dry.",
                    flash,
                    "Put it on the wall beside the stove.",
                    basis);
        }
    }

    private static void flux(Subject s, Findings f) {
        double area = s.rig().pickups().stream().mapToDouble(Pickup::area).sum();
        double flux = s.greatestHeat() / area;
        double critical = Boiling.criticalFlux(s.saturation());
        String basis = "Zuber's critical flux of still water at saturation";
        String why = say(
                "The greatest fire puts %.0f kW/m² on the metal; water lifts off at %.0f kW/m².",
                flux / 1000, critical / 1000);
        if (flux > 0.5 * critical) {
            f.mend(
                    "boil.flux",
                    "Steam can lift the water off the metal.",
                    why,
                    "Spread the heat over more area.",
                    basis);
        } else {
            f.fine("boil.flux", "Water stays on the metal as long as there is water.", why, basis);
        }
        Drill over = s.drill(Fault.OVER_FIRE);
        if (over != null && over.firstBoil() == NEVER && over.metal().temperature() > s.saturation() + 2) {
            f.mind(
                    "boil.wall",
                    "In a hard fire bubbles form on the pickup's wall while its water is below boiling.",
                    "The metal reaches " + Telling.degrees(over.metal().temperature())
                            + ": it ticks, knocks and gathers scale.",
                    "More flow, soft water, or less area in the flame. Do not throttle the water: a throttled coil boils.",
                    "nucleate boiling at a wall above saturation (Rohsenow)");
        }
    }

    private static void furred(Subject s, Findings f) {
        Drill d = s.drill(Fault.FOULED);
        if (d == null) return;
        f.add(
                d.level(),
                "boil.furred",
                "Soot on the coil and lime in it take its heat unseen.",
                d.sentence(),
                "Brush it weekly; note how many degrees the store gains in an hour of full fire, and compare each month.",
                "a drill: 3 mm (1/8 in) of soot at 0.1 W/m·K, 2 mm (1/16 in) of lime at 0.8 W/m·K; practice");
    }
}
