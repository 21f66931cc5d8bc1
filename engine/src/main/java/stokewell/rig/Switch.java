package stokewell.rig;

import static stokewell.rig.Dimension.CLOCK;
import static stokewell.rig.Dimension.SHARE;
import static stokewell.rig.Dimension.TEMPERATURE;
import static stokewell.rig.Dimension.TEMPERATURE_DIFFERENCE;
import static stokewell.rig.Dimension.TIME;

/**
 * What drives a pump or a fan. It runs while all of thermostat, differential, low limit and hours allow it, and always
 * while the high limit calls. A switch with nothing in it never runs.
 */
public record Switch(
        @Entry(says = "pump, or the name of an emitter.") String drives,

        @Entry(orElse = Entry.ABSENT, says = "On and off by one temperature.")
        Thermostat thermostat,

        @Entry(orElse = Entry.ABSENT, says = "On and off by the difference of two temperatures.")
        Differential differential,

        @Entry(orElse = Entry.ABSENT, says = "Never runs unless this one allows it.")
        Thermostat lowLimit,

        @Entry(orElse = Entry.ABSENT, says = "Always runs when this one calls.")
        Thermostat highLimit,

        @Entry(orElse = Entry.ABSENT, says = "Runs only between these hours.")
        Hours hours) {

    public Switch {
        Entries.check(Switch.class, "switch", drives);
    }

    /** A switch on one temperature. With on above off it calls when hot; with on below off it calls when cold. */
    public record Thermostat(
            @Entry(says = "Which temperature.") Sensor sensor,

            @Entry(is = TEMPERATURE, low = 223.15, high = 700.15, says = "Switches on here.")
            double on,

            @Entry(is = TEMPERATURE, low = 223.15, high = 700.15, says = "Switches off here.")
            double off) {

        public Thermostat {
            Entries.check(Thermostat.class, "thermostat", sensor, on, off);
            if (Math.abs(on - off) < 0.05) {
                throw new RigFault("thermostat", "off", "on and off are the same", "leave a gap of a degree or more");
            }
        }
    }

    /** A switch on a difference: on when hot minus cold is above the one, off when below the other. */
    public record Differential(
            @Entry(says = "The hot point.") Sensor hot,
            @Entry(says = "The cool point.") Sensor cold,

            @Entry(is = TEMPERATURE_DIFFERENCE, low = 0.1, high = 100, orElse = "7 K", says = "Switches on here.")
            double on,

            @Entry(is = TEMPERATURE_DIFFERENCE, low = -20, high = 100, orElse = "3 K", says = "Switches off here.")
            double off) {

        public Differential {
            Entries.check(Differential.class, "differential", hot, cold, on, off);
            if (on <= off)
                throw new RigFault("differential", "on", "it switches on below where it goes off", "swap them");
        }
    }

    /** A sensor and where it sits. */
    public record Sensor(
            @Entry(says = "outlet (of the last pickup), pickup, supply, back, store, room, stove or outdoors.")
            Spot at,

            @Entry(is = SHARE, low = 0, high = 1, orElse = "90 %", says = "Height in the store, for a store sensor.")
            double height,

            @Entry(orElse = "", says = "Which pickup, for a pickup sensor; the last one if left out.")
            String of,

            @Entry(is = TIME, low = 1, high = 7200, orElse = "30 s", says = "How slowly it follows.")
            double lag) {

        public Sensor {
            Entries.check(Sensor.class, "sensor", at, height, of, lag);
        }
    }

    /** Places where a sensor can sit. */
    public enum Spot {
        OUTLET,
        PICKUP,
        SUPPLY,
        BACK,
        STORE,
        ROOM,
        STOVE,
        OUTDOORS
    }

    /** A span of the day; it may run over midnight. */
    public record Hours(
            @Entry(is = CLOCK, low = 0, high = 86400, says = "From.")
            double from,

            @Entry(is = CLOCK, low = 0, high = 86400, says = "Until.")
            double until) {

        public Hours {
            Entries.check(Hours.class, "hours", from, until);
        }
    }
}
