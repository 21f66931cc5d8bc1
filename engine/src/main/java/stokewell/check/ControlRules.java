package stokewell.check;

import static stokewell.check.Findings.say;

import stokewell.rig.Pickup;
import stokewell.rig.Switch;

/** What starts the pump: a hand, one sensor or two, where it sits, how late it is. */
final class ControlRules {

    private static final double NEVER = Double.POSITIVE_INFINITY;
    /** Under boiling at the hottest point, K: practice. */
    private static final double MARGIN = 12;
    /** A pump that starts colder than this chills the fire: tar. K */
    private static final double WARM = 333.15;

    private ControlRules() {}

    static void look(Subject s, Findings f) {
        controls(s, f);
        wayRound(s, f);
        sensor(s, f);
    }

    /** A thermostat at the fire's water that stops the pump where it should start it. */
    private static void wayRound(Subject s, Findings f) {
        if (!s.pumped()) return;
        for (Switch w : s.rig().switches()) {
            if (!w.drives().equals("pump")) continue;
            for (Switch.Thermostat t : new Switch.Thermostat[] {w.thermostat(), w.highLimit()}) {
                if (!HotLimits.wrongWayRound(t)) continue;
                f.stop(
                        "control.wayround",
                        say(
                                "The pump's thermostat is the wrong way round: it stops the pump at %s.",
                                Telling.degrees(t.off())),
                        "The hotter the coil, the surer its water stands still: it boils at every fire.",
                        say(
                                "Switch on at %s and off at %s; on a thermostat with two contacts take the one that closes on rise. Try it "
                                        + "with a kettle before the first fire.",
                                Telling.degrees(t.off()), Telling.degrees(t.on())),
                        "a pump that takes heat from a fire starts on rise: common practice, no source");
                return;
            }
        }
    }

    private static void controls(Subject s, Findings f) {
        control(s, f, Fault.SENSOR_OUT, "control.sensor", "If its sensor falls out of its well");
        control(s, f, Fault.STUCK_OFF, "control.stuck", "If the pump's thermostat sticks");
        if (!s.pumped()) return;
        boolean driven = s.rig().switches().stream().anyMatch(w -> w.drives().equals("pump"));
        String basis = "practice: a thermostat in charge, a gravity path behind it; a forgotten switch has cost a wall";
        if (Boolean.TRUE.equals(s.around().handSwitch()) || !driven) {
            f.stop(
                    "control.hand",
                    driven ? "The pump hangs on a hand switch." : "Nothing starts the pump but a hand.",
                    "It is forgotten once. A flick of the switch does not mend an overheat: it pumps steam-hot water into plastic and cold "
                            + "water into a boiling coil, and breaks both.",
                    "Let a thermostat on the coil's outlet start it, with no switch that takes it away. And: hot and stopped, do "
                            + "not start.",
                    basis);
        } else if (s.around().handSwitch() == null) {
            f.ask(
                    "control.hand",
                    "safety.surroundings.handSwitch: yes or no",
                    "Can a hand switch take the pump away from its thermostat?",
                    "It is forgotten once.",
                    basis);
        }
    }

    private static void control(Subject s, Findings f, Fault fault, String id, String begin) {
        Drill d = s.drill(fault);
        if (d == null) return;
        String basis =
                "practice: a second thermostat at 85 to 88 °C (185 to 190 °F), on a mountain 13 K (23 °F) below boiling, "
                        + "parallel to the first";
        if (d.firstBoil() < NEVER) {
            f.add(
                    d.level(),
                    id,
                    begin + " the coil boils " + Telling.later(d.firstBoil()) + ".",
                    "One sensor is all that stands between fire and steam.",
                    "Wire a second thermostat at " + Telling.degrees(HotLimits.second(s.rig()))
                            + " on the outlet in parallel, with its own sensor; clip the sensors and leave a slack loop of cable.",
                    basis);
        } else {
            f.fine(
                    id,
                    begin + " nothing boils.",
                    "The hottest water is at " + Telling.degrees(d.water().temperature()) + ".",
                    basis);
        }
    }

    /** Limit, place and slowness of the sensor that starts the pump. */
    private static void sensor(Subject s, Findings f) {
        if (!s.pumped()) return;
        for (Switch w : s.rig().switches()) {
            if (!w.drives().equals("pump")) continue;
            Switch.Thermostat limit = w.highLimit() != null ? w.highLimit() : w.thermostat();
            Switch.Sensor sensor = limit != null
                    ? limit.sensor()
                    : w.differential() == null ? null : w.differential().hot();
            if (sensor == null) continue;
            String basis = "the fastest rise that the greatest fire gives the still pickup, times the sensor's lag";
            boolean near = sensor.at() == Switch.Spot.OUTLET
                    || sensor.at() == Switch.Spot.PICKUP
                    || sensor.at() == Switch.Spot.STOVE;
            if (!near) {
                f.mend(
                        "control.place",
                        "The sensor that starts the pump sits far from the fire.",
                        "With the water at rest the coil boils before the pipe there is warm.",
                        "Put it on the coil's outlet, within a hand's breadth of the stove, lagged.",
                        basis);
            }
            double fastest = fastestRise(s);
            double rise = fastest * sensor.lag();
            double boil = s.saturation();
            double better = boil - MARGIN - rise;
            if (limit != null && limit.on() > limit.off() && sensor.at() != Switch.Spot.STOVE && limit.on() > better) {
                f.mend(
                        "control.limit",
                        "The pump starts at " + Telling.degrees(limit.on()) + ": too late.",
                        say(
                                "It boils at %s, and the water gains %.0f K while the sensor follows.",
                                Telling.degrees(boil), rise),
                        earlier(better, boil, fastest),
                        basis);
            } else if (limit != null && near) {
                f.fine(
                        "control.limit",
                        "The pump starts in time.",
                        say("The water gains %.0f K while the sensor follows.", rise),
                        basis);
            }
            return;
        }
    }

    /** What to set instead, or where no setting is early enough what sensor it takes. */
    private static String earlier(double better, double boil, double fastest) {
        if (better >= WARM)
            return "Set it to " + Telling.degrees(Math.floor((better - Subject.K) / 5) * 5 + Subject.K) + " or below.";
        double lag = Math.floor((boil - MARGIN - WARM) / fastest);
        String water = "a pickup that holds more water";
        if (lag < 1) return "No setting and no sensor is early enough: it takes " + water + ".";
        return "No setting is early enough for a sensor so slow: take one in the water itself that follows within "
                + Telling.span(lag) + ", set to " + Telling.degrees(WARM) + " or below; or " + water + ".";
    }

    /** K/s of the smallest pickup at the greatest heat, shared by area. */
    private static double fastestRise(Subject s) {
        double area = s.rig().pickups().stream().mapToDouble(Pickup::area).sum();
        double fastest = 0;
        for (Pickup p : s.rig().pickups()) {
            double capacity = p.volume() * 4.1e6 + p.metal() * 480;
            fastest = Math.max(fastest, s.greatestHeat() * p.area() / area / capacity);
        }
        return fastest;
    }
}
