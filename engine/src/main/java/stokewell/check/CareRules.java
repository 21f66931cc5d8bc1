package stokewell.check;

import static stokewell.check.Findings.say;

import stokewell.matter.Water;

/** What no part of the rig does by itself: proving it, reading it, coals and ash, those who do not know it. */
final class CareRules {

    private CareRules() {}

    static void look(Subject s, Findings f) {
        if (s.wet()) {
            proving(s, f);
            gauges(s, f);
        }
        coals(s, f);
        visitors(s, f);
        cold(s, f);
    }

    private static void proving(Subject s, Findings f) {
        String watched = Telling.degrees(HotLimits.alarm(s.rig()));
        f.mind(
                "care.proving",
                "Before the first fire, and after any work on it: a proving run.",
                s.pumped()
                        ? "Pumps have been left unplugged after a changed controller, found out by steam."
                        : "Air left in after work stops a gravity loop.",
                s.pumped()
                        ? "Warm the sensor in a cup of hot water: pump on, pipes warm, vent breathes. Then a small fire, watched to "
                                + watched + ". Once a year the same with the plug out."
                        : "A small fire, watched to " + watched + ": the far pipe must warm within minutes.",
                "practice after accounts of owners");
    }

    private static void gauges(Subject s, Findings f) {
        f.mind(
                "care.gauges",
                "Two thermometers that agree may both be wrong.",
                "Strapped on and bare they read 2 to 10 K (4 to 18 °F) low; the margins here are not wider.",
                say(
                        "Try each in ice water and in boiling water, which is %s here; then lag it.",
                        Telling.degrees(Water.saturationTemperature(s.air()))),
                "ice point and boiling point; practice");
    }

    private static void coals(Subject s, Findings f) {
        Boolean out = s.around().coalsOut();
        String basis = "fire services: ash holds embers four days and more, and gives off carbon monoxide";
        String why =
                "Coals live for four days in ash; carried out in a hurry through a shop of wood they have burnt it.";
        if (out == null) {
            f.ask(
                    "care.coals",
                    "safety.surroundings.coalsOut: yes or no",
                    "Is there a place outdoors, with a lidded metal pail, for coals and ash?",
                    why,
                    basis);
        } else if (!out) {
            f.mend(
                    "care.coals",
                    "There is no place for coals and ash.",
                    why,
                    "A lidded metal pail on stone, outdoors, 3 m (10 ft) from anything; not in the compost. Choose it in daylight: it is "
                            + "also where a drawn fire goes.",
                    basis);
        }
    }

    private static void visitors(Subject s, Findings f) {
        f.mind(
                "care.visitors",
                "Others will touch it: children, guests, who thaws the place for you.",
                "Friends who lit a stove to thaw a frozen house were blown through the room.",
                "The start card beside the stove, tags on the valves, the sign on the door, and a door that locks.",
                "accounts of accidents");
    }

    private static void cold(Subject s, Findings f) {
        Drill d = s.drill(Fault.FAN_DEAD);
        if (d == null || !(d.roomLowest() < Subject.K + 1)) return;
        f.mind(
                "frost.goods",
                say("With the fan dead the room comes down to %s.", Telling.degrees(d.roomLowest())),
                "What cannot freeze in it does: glue, paint, wet clay, water in a hose.",
                "A thermometer that calls at 4 °C (39 °F), and a small heater on it.",
                "a drill");
    }
}
