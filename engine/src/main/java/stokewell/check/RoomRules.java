package stokewell.check;

import static stokewell.check.Findings.say;

import stokewell.building.Leakage;
import stokewell.matter.Air;
import stokewell.rig.Surroundings;

/** The room: vapours and garages first, then carbon monoxide, combustion air, clearances, who watches. */
final class RoomRules {

    /** Depression of a room in which a stove with a natural draft still draws, Pa: 4 Pa, EN 13384-1 practice. */
    private static final double DEPRESSION = 4;
    /** Unlisted stove to a wall that can burn: 36 in; to a shielded one 12 in; bare connector 18 in (NFPA 211). */
    private static final double CLEAR = 0.914;

    private static final double SHIELDED = 0.305;
    private static final double CONNECTOR = 0.457;
    private static final String NFPA = "NFPA 211 for unlisted stoves; a listed stove goes by its plate";

    private RoomRules() {}

    static void look(Subject s, Findings f) {
        monoxide(s, f);
        air(s, f);
        stoveAir(s, f);
        dust(s, f);
        clearances(s, f);
        watched(s, f);
        wiring(s, f);
    }

    /** What is asked before anything is sized. */
    static void vapours(Subject s, Findings f) {
        Surroundings a = s.around();
        String basis = "NFPA 211: no solid-fuel fire in a garage, nor where flammable vapours are; insurers follow it";
        if (a.flammables() == null) {
            f.ask(
                    "vapours.present",
                    "safety.surroundings.flammables: yes or no",
                    "Are fuel, solvents, spray or other flammable vapours ever in this room?",
                    "A vapour finds the fire in seconds. This is asked before anything is sized. Ask the insurer too, in writing.",
                    basis);
        } else if (a.flammables()) {
            f.stop(
                    "vapours.present",
                    "Flammable vapours come into the room of the fire.",
                    "A vapour lights at the stove within seconds, also at the coals of yesterday.",
                    "Take them out for good, or keep the fire in another room. A finishing day is a day without fire and coals: "
                            + "the store can carry its heat.",
                    basis);
        } else {
            f.fine("vapours.present", "No flammable vapours in the room.", "As answered.", basis);
        }
        if (a.garage() == null) {
            f.ask(
                    "vapours.garage",
                    "safety.surroundings.garage: yes or no",
                    "Is the stove in a garage, or in a room open to one?",
                    "Petrol (gasoline) vapour lies on the floor and runs to the fire; most codes forbid it and insurers pay nothing.",
                    basis);
        } else if (a.garage()) {
            f.stop(
                    "vapours.garage",
                    "The stove stands in a garage or in a room open to one.",
                    "Petrol (gasoline) vapour lies on the floor and runs to the fire; most codes forbid it and insurers pay nothing.",
                    "Put stove and fire in another building and bring only hot water over.",
                    basis);
        }
    }

    private static void monoxide(Subject s, Findings f) {
        String basis = "EN 50291 alarm; in the UK the law where a solid-fuel stove stands";
        String place =
                "It mixes with the air: put the alarm where its own sheet says, 1 to 3 m from the stove, high or at "
                        + "breathing height, not low.";
        Boolean alarm = s.around().monoxideAlarm();
        if (alarm == null) {
            f.ask(
                    "air.monoxide",
                    "safety.surroundings.monoxideAlarm: yes or no",
                    "Is there a carbon monoxide alarm in the room?",
                    "Coals make the most of it, without smoke or smell. " + place,
                    basis);
        } else if (!alarm) {
            f.mend(
                    "air.monoxide",
                    "There is no carbon monoxide alarm.",
                    "Coals make the most of it, without smoke or smell.",
                    "Fit one before the next fire. " + place,
                    basis);
        } else {
            f.fine("air.monoxide", "A carbon monoxide alarm is there.", place, basis);
        }
    }

    private static void air(Subject s, Findings f) {
        Surroundings a = s.around();
        String basis = "EN 13384-1 practice: not over " + (int) DEPRESSION + " Pa of suction in the room";
        if (Double.isNaN(a.exhaust())) {
            f.ask(
                    "air.exhaust",
                    "safety.surroundings.exhaust: 0 or its flow",
                    "Does a fan, a dryer or a dust collector throw air outdoors from this room?",
                    "It pulls the smoke back down the chimney, worst over coals.",
                    basis);
            return;
        }
        if (a.exhaust() == 0) return;
        double open = (Double.isNaN(a.airOpening()) ? 0 : 0.6 * a.airOpening()) + leak(s);
        double speed = a.exhaust() / Math.max(open, 1e-6);
        double suction = 0.5 * Air.density(293.15, s.air()) * speed * speed;
        double needed = a.exhaust() / (0.6 * Math.sqrt(2 * DEPRESSION / Air.density(293.15, s.air())));
        if (suction > DEPRESSION) {
            f.mend(
                    "air.exhaust",
                    say("Fans throw out %.0f m³/h and pull the room %.0f Pa down.", 3600 * a.exhaust(), suction),
                    "The chimney has a few pascals over coals: the smoke comes back into the room.",
                    say(
                            "Never run them with fire or coals; or give the room an opening of %.0f cm² that cannot be shut.",
                            1e4 * needed),
                    basis);
        } else {
            f.fine(
                    "air.exhaust",
                    "Fans that throw air out do not pull the chimney back.",
                    say("%.1f Pa.", suction),
                    basis);
        }
    }

    /** Leaks of the room as one sharp nozzle, m2. */
    private static double leak(Subject s) {
        double volume = s.rig().room().length()
                * s.rig().room().width()
                * s.rig().room().height();
        return Leakage.areaFrom(3600 * s.rig().room().leakage().at50Pa(), volume, Air.density(293.15, s.air()));
    }

    private static void clearances(Subject s, Findings f) {
        Surroundings a = s.around();
        double needed = Boolean.TRUE.equals(a.shielded()) ? SHIELDED : CLEAR;
        clearance(f, "clearance.stove", "clearance", "the stove", a.clearance(), needed);
        clearance(
                f,
                "clearance.connector",
                "connectorClearance",
                "the bare connector",
                a.connectorClearance(),
                CONNECTOR);
    }

    private static void clearance(Findings f, String id, String entry, String what, double has, double needed) {
        String inches = say("%.0f cm (%.0f in)", 100 * needed, needed / 0.0254);
        String why = "Wood that is warmed for seasons lights at ever lower temperatures.";
        if (Double.isNaN(has)) {
            f.ask(
                    id,
                    "safety.surroundings." + entry,
                    "How far is " + what + " from anything that can burn?",
                    why + " It should be " + inches + ".",
                    NFPA);
        } else if (has < needed) {
            f.add(
                    has < needed / 3 ? Level.STOP : Level.MEND,
                    id,
                    say(
                            has < 0.1
                                    ? "From %s to what can burn it is only %.1f cm."
                                    : "From %s to what can burn it is only %.0f cm.",
                            what,
                            100 * has),
                    why,
                    "Move it to " + inches
                            + ", or shield the wall with metal and 25 mm of air behind; hold a palm on the wall "
                            + "in full fire: if you cannot, it is too hot.",
                    NFPA);
        } else {
            f.fine(id, say("%.0f cm from %s to what can burn.", 100 * has, what), inches + " is asked.", NFPA);
        }
    }

    private static void watched(Subject s, Findings f) {
        Surroundings a = s.around();
        Drill dead = s.drill(Fault.PUMP_DEAD);
        if (dead == null || dead.firstBoil() == Double.POSITIVE_INFINITY) return;
        String minutes = Telling.span(dead.firstBoil());
        String basis =
                "practice: an alarm of its own at 90 °C (194 °F), on a mountain 10 K (18 °F) below boiling, on the coil's outlet";
        String alarm = "A loud alarm at the coil's outlet, at " + Telling.degrees(HotLimits.alarm(s.rig()))
                + ", on its own battery, wakes someone; a passive path does not need anyone.";
        if (Double.isNaN(a.unwatched())) {
            f.ask(
                    "watch.unwatched",
                    "safety.surroundings.unwatched: 2 h",
                    "How long does the fire burn with nobody near?",
                    "If the pump dies with the lights on, nobody notices, and the coil boils in " + minutes + ".",
                    basis);
        } else if (a.unwatched() > dead.firstBoil() && !Boolean.TRUE.equals(a.hotAlarm())) {
            f.mend(
                    "watch.unwatched",
                    say("The fire burns unwatched for %s and nothing calls.", Telling.span(a.unwatched())),
                    "If the pump dies with the lights on, the coil boils in " + minutes + ".",
                    alarm,
                    basis);
        }
    }

    private static void wiring(Subject s, Findings f) {
        if (s.rig().switches().isEmpty()) return;
        String basis =
                "practice of wiring near water: residual-current breaker, drip loops, one earth bond, local code";
        Surroundings a = s.around();
        answered(
                f,
                a.breaker(),
                "breaker",
                new String[] {
                    "wiring.breaker",
                    "Are pump and fan on a residual-current breaker?",
                    "Pump and fan are not on a residual-current breaker.",
                    "A wet pump with an earth fault kills.",
                    "Have one fitted by a licensed person."
                },
                basis);
        answered(
                f,
                a.cablesClear(),
                "cablesClear",
                new String[] {
                    "wiring.cables",
                    "Do cables and plugs keep clear of hot pipe and stove, and out from under water that may drip?",
                    "Cables lie on hot pipe or where water drips.",
                    "Common cable softens from 70 °C (158 °F) on; a leak runs along it into the plug.",
                    "Keep them 30 cm (12 in) from stove and bare flue, off the hot pipe, with a loop that drips before the plug, and "
                            + "the controller above the tank's rim, not under it."
                },
                basis);
        answered(
                f,
                a.bonded(),
                "bonded",
                new String[] {
                    "wiring.bond",
                    "Are pump, pipes and stove bonded to one earth?",
                    "Pump, pipes and stove are not bonded to one earth.",
                    "Plastic pipe and rubber joints leave metal parts at different voltages when something fails; stray current also "
                            + "eats the metal.",
                    "One bond across them, by a licensed person."
                },
                basis);
    }

    /** A question that should be answered with yes. @param texts id, question, what no means, why, what to do */
    private static void answered(Findings f, Boolean answer, String entry, String[] texts, String basis) {
        if (answer == null) {
            f.ask(texts[0], "safety.surroundings." + entry + ": yes or no", texts[1], texts[3], basis);
        } else if (!answer) {
            f.mend(texts[0], texts[2], texts[3], texts[4], basis);
        }
    }

    /** Whether the room gives the stove its air without being pulled down. */
    private static void stoveAir(Subject s, Findings f) {
        Surroundings a = s.around();
        double flow = s.greatest("air", 0) / Air.density(293.15, s.air());
        if (!(flow > 0)) return;
        double open = (Double.isNaN(a.airOpening()) ? 0 : 0.6 * a.airOpening()) + leak(s);
        double speed = flow / Math.max(open, 1e-6);
        double suction = 0.5 * Air.density(293.15, s.air()) * speed * speed;
        String basis = "EN 13384-1 practice: not over " + (int) DEPRESSION + " Pa of suction in the room";
        String why = say(
                "At its hardest it draws %.0f m³/h; leaks and openings give that at %.1f Pa.", 3600 * flow, suction);
        if (suction > DEPRESSION) {
            double needed = flow / (0.6 * Math.sqrt(2 * DEPRESSION / Air.density(293.15, s.air())));
            f.mend(
                    "air.stove",
                    "The room is too tight for the stove's air.",
                    why,
                    say(
                            "An opening of %.0f cm² (%.0f in²) by the stove that cannot be shut, screened against mice.",
                            1e4 * needed, 1e4 * needed / 6.4516),
                    basis);
        } else {
            f.fine("air.stove", "The room gives the stove its air.", why, basis);
        }
    }

    private static void dust(Subject s, Findings f) {
        if (!(s.around().exhaust() > 0)) return;
        f.mind(
                "air.dust",
                "Where a collector runs there is dust.",
                "A cloud of fine dust explodes, a layer thicker than a coin smoulders; 1 mm on fins halves their heat.",
                "A filter before the air tubes, cleaned monthly; no sanding with a fire or coals; the collector's pipe earthed.",
                "practice of wood shops; NFPA 664 in spirit");
    }
}
