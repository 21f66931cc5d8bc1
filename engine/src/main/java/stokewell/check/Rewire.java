package stokewell.check;

import java.util.List;
import java.util.function.UnaryOperator;
import stokewell.rig.Switch;

/** Switches with something wrong in them. */
final class Rewire {

    /** No thermostat reaches this, K. */
    private static final double OUT_OF_REACH = 699;

    private Rewire() {}

    /** All switches, those of the pump changed. */
    static List<Switch> pump(List<Switch> switches, UnaryOperator<Switch> change) {
        return switches.stream()
                .map(s -> s.drives().equals("pump") ? change.apply(s) : s)
                .toList();
    }

    /** All switches, those of everything but the pump changed. */
    static List<Switch> others(List<Switch> switches, UnaryOperator<Switch> change) {
        return switches.stream()
                .map(s -> s.drives().equals("pump") ? s : change.apply(s))
                .toList();
    }

    /** Its high limit never calls. */
    static Switch unlimited(Switch s) {
        return new Switch(
                s.drives(), s.thermostat(), s.differential(), s.lowLimit(), outOfReach(s.highLimit()), s.hours());
    }

    /** Its sensor lies in the room. */
    static Switch sensorOut(Switch s) {
        if (s.thermostat() != null) {
            Switch.Thermostat t = s.thermostat();
            Switch.Thermostat out = new Switch.Thermostat(inTheRoom(t.sensor()), t.on(), t.off());
            return new Switch(s.drives(), out, s.differential(), s.lowLimit(), s.highLimit(), s.hours());
        }
        if (s.differential() != null) {
            Switch.Differential d = s.differential();
            Switch.Differential out = new Switch.Differential(inTheRoom(d.hot()), d.cold(), d.on(), d.off());
            return new Switch(s.drives(), null, out, s.lowLimit(), s.highLimit(), s.hours());
        }
        return s;
    }

    /** It never calls. */
    static Switch stuckOff(Switch s) {
        if (s.thermostat() != null) {
            Switch.Thermostat never = outOfReach(s.thermostat());
            return new Switch(s.drives(), never, s.differential(), s.lowLimit(), s.highLimit(), s.hours());
        }
        if (s.differential() != null) {
            Switch.Differential d = s.differential();
            Switch.Differential never = new Switch.Differential(d.hot(), d.cold(), 100, 99);
            return new Switch(s.drives(), null, never, s.lowLimit(), s.highLimit(), s.hours());
        }
        return s;
    }

    private static Switch.Thermostat outOfReach(Switch.Thermostat t) {
        return t == null ? null : new Switch.Thermostat(t.sensor(), OUT_OF_REACH, OUT_OF_REACH - 1);
    }

    private static Switch.Sensor inTheRoom(Switch.Sensor s) {
        return new Switch.Sensor(Switch.Spot.ROOM, s.height(), "", s.lag());
    }
}
