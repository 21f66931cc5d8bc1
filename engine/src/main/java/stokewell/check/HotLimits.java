package stokewell.check;

import stokewell.matter.Water;
import stokewell.rig.Rig;
import stokewell.rig.Switch;

/** Temperatures at which something must ring, start or stay off: on a mountain they go down with the boiling point. K. */
public final class HotLimits {

    private static final double ALARM = 363.15;
    private static final double SECOND = 358.15;
    /** 200 °F. */
    private static final double RESTART = 366.483;

    private HotLimits() {}

    /** Where water boils in the open at the rig's height. */
    public static double boiling(Rig rig) {
        return Water.boilingPoint(rig.place().altitude());
    }

    /** The hot alarm: 90 °C, and on a mountain 10 K below boiling. Common practice, no source. */
    public static double alarm(Rig rig) {
        return Math.min(ALARM, boiling(rig) - 10);
    }

    /** A second thermostat that starts the pump: 85 °C, and on a mountain 13 K below boiling. Common practice, no source. */
    public static double second(Rig rig) {
        return Math.min(SECOND, boiling(rig) - 13);
    }

    /** Over this a pump that stood must stay off: 93 °C, and on a mountain 6.5 K below boiling. Common practice, no source. */
    public static double restart(Rig rig) {
        return Math.min(RESTART, boiling(rig) - 6.5);
    }

    /** Round pipes in cement screed, K (EN 1264-4, from memory). */
    public static final double SCREED = 273.15 + 55;

    /** Whether a thermostat of the loop's pump sits at the fire's water and stops the pump when that is hot. */
    public static boolean wrongWayRound(Switch.Thermostat t) {
        if (t == null || t.on() > t.off()) return false;
        return switch (t.sensor().at()) {
            case OUTLET, PICKUP, STOVE, SUPPLY -> true;
            default -> false;
        };
    }
}
