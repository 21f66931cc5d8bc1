package stokewell.check;

import stokewell.rig.Rig;
import stokewell.rig.Safety;
import stokewell.rig.Surroundings;

/**
 * How bad a drill is: the one rule for the drill and for the finding that answers it. A drill asks what happens when something
 * fails, a finding what must be done before a fire; so a drill is a stop only where a fire must not be lit on the rig as it
 * stands: where something that is there or missing lets the fault happen, not where it merely could.
 *
 * <p>Shut in, it bursts: a stop if a valve stands in the way, a question while nobody has said. Frozen: a stop if it stands cold
 * longer than it takes. More steam than its ways out pass: a stop. No way out of a closed loop: a stop. A vent that could
 * plug, with nothing behind it: mend. Metal bare, or boiling within half an hour: mend.
 */
final class Severity {

    /** Within this a person who is there cannot be counted on to act, s: common practice, no source. */
    static final double SOON = 30 * 60;

    private static final double NEVER = Double.POSITIVE_INFINITY;
    private static final double NO_DRAFT = 1;
    /** Heat that a loop which runs backwards may take in a night unsaid, J: 0.5 kWh, common practice. */
    private static final double NIGHT_LOSS = 1.8e6;

    private static final double LITTLE_DRAFT = 3;

    private Severity() {}

    /**
     * The level.
     *
     * @param needed   heat that must leave, W
     * @param fitted   what vent and relief pass, W; NaN not known
     * @param pressure Pa over the air's; infinite where nothing holds it
     */
    static Level of(Rig rig, Fault fault, Watch w, double needed, double fitted, double pressure) {
        Safety safety = rig.safety();
        boolean boils = w.firstBoil() < NEVER;
        switch (fault) {
            case BACKDRAFT -> {
                return draft(safety, w.draft);
            }
            case FROZEN_RUN -> {
                return frozen(safety, w.freezing);
            }
            case VALVE_SHUT -> {
                if (Boolean.TRUE.equals(safety.valveToOpen())) return Level.STOP;
                if (safety.valveToOpen() == null && !boils) return Level.MIND;
                // not said: the other drills tell what a stopped loop does; the question stands in the check
                if (safety.valveToOpen() == null) return boiling(w);
                if (boils && Boolean.TRUE.equals(safety.loopRises()) && passes(pressure, needed, fitted))
                    return Level.MIND;
            }
            // what may grow in it is no reason against a fire today
            case VENT_NARROW -> {
                return needed > fitted ? Level.MEND : boiling(w);
            }
            case LEAK -> {
                if (!boils) return Level.MIND;
                if (passes(pressure, needed, fitted))
                    return Boolean.FALSE.equals(watched(safety)) ? Level.MEND : Level.MIND;
            }
            // what is answered for is minded, not mended
            case AIR_LOCK -> {
                if (boils && Boolean.TRUE.equals(safety.loopRises()) && passes(pressure, needed, fitted))
                    return Level.MIND;
            }
            case LOW_WATER -> {
                if (boils && Boolean.TRUE.equals(watched(safety)) && passes(pressure, needed, fitted))
                    return Level.MIND;
            }
            // it may ice in any frost: whoever has no alarm is not told
            case CAP_BLOCKED -> {
                Surroundings a = safety.surroundings();
                return a != null && Boolean.FALSE.equals(a.monoxideAlarm()) ? Level.MEND : Level.MIND;
            }
            // a chimney fire that leaves the water alone still lights houses
            case FOULED, CHIMNEY_FIRE -> {
                return boils ? boiling(w) : Level.MIND;
            }
            case REVERSE_FLOW -> {
                return boils ? boiling(w) : w.drawn > NIGHT_LOSS ? Level.MIND : Level.FINE;
            }
            case VENT_BLOCKED -> {
                if (pressure == NEVER && !safety.closed()) return mayFreeze(rig) ? Level.STOP : Level.MEND;
            }
            default -> {}
        }
        if (pressure == NEVER) return Level.STOP;
        if (needed > fitted) return Level.STOP;
        if (fault == Fault.RELIEF_FAILS) return boils ? Level.MIND : Level.FINE;
        if (fault == Fault.DRY_REFILLED) return Level.MIND;
        return boiling(w);
    }

    /** Whether what boils finds its way out. */
    private static boolean passes(double pressure, double needed, double fitted) {
        return pressure < NEVER && !(needed > fitted);
    }

    private static Boolean watched(Safety safety) {
        return safety.surroundings() == null ? null : safety.surroundings().levelWatched();
    }

    private static Level boiling(Watch w) {
        if (w.exposed < NEVER || w.firstBoil() < SOON) return Level.MEND;
        return w.firstBoil() < NEVER || w.freezing < NEVER ? Level.MIND : Level.FINE;
    }

    private static Level draft(Safety safety, double draft) {
        if (draft >= LITTLE_DRAFT) return Level.FINE;
        Boolean alarm =
                safety.surroundings() == null ? null : safety.surroundings().monoxideAlarm();
        return draft < NO_DRAFT && Boolean.FALSE.equals(alarm) ? Level.MEND : Level.MIND;
    }

    /** Whether it is frozen when it is lit: not said is a question. */
    static Level frozen(Safety safety, double freezing) {
        if (freezing == NEVER) return Level.FINE;
        double stands = safety.surroundings() == null
                ? Double.NaN
                : safety.surroundings().coldAndFull();
        if (Double.isNaN(stands)) return Level.MIND;
        return stands >= freezing ? Level.STOP : Level.FINE;
    }

    private static boolean mayFreeze(Rig rig) {
        Safety.OpenVent vent = rig.safety().vent();
        return vent != null
                && Boolean.FALSE.equals(vent.warm())
                && rig.weather().low() < 273.15;
    }

    /** Ids of the findings that answer a fault. */
    static String[] answers(Fault fault) {
        return switch (fault) {
            case POWER_OUT -> new String[] {"boil.outage"};
            case PUMP_DEAD -> new String[] {"boil.pump"};
            case AIR_LOCK -> new String[] {"loop.air"};
            case VALVE_SHUT -> new String[] {"vent.valve", "loop.air"};
            case CHECK_STUCK -> new String[] {"loop.check", "boil.outage"};
            case FAN_DEAD -> new String[] {"store.fan"};
            case SENSOR_OUT -> new String[] {"control.sensor"};
            case STUCK_ON -> new String[] {"control.on"};
            case STUCK_OFF -> new String[] {"control.stuck"};
            case STORE_FULL -> new String[] {"store.full"};
            case OVER_FIRE -> new String[] {"fire.lighting"};
            case DOUBLE_LOAD -> new String[] {"fire.double"};
            case LOW_WATER -> new String[] {"water.level", "boil.dry"};
            case DRY_REFILLED -> new String[] {"boil.dry"};
            case FROZEN_RUN -> new String[] {"frost.run"};
            case LEAK -> new String[] {"water.level"};
            case VENT_NARROW -> new String[] {"vent.narrow", "boil.outage", "boil.pump", "loop.air"};
            case VENT_BLOCKED -> new String[] {"relief.second", "vent.frost"};
            case RELIEF_FAILS -> new String[] {"vent.bore", "relief.capacity", "relief.none"};
            case RELIEF_WEEPS -> new String[] {"boil.pump"};
            case FOULED -> new String[] {"boil.furred"};
            case REVERSE_FLOW -> new String[] {"loop.reverse"};
            case CHIMNEY_FIRE -> new String[] {"chimney.fire"};
            case CAP_BLOCKED -> new String[] {"chimney.cap", "air.monoxide"};
            case BACKDRAFT -> new String[] {"chimney.mild", "air.monoxide"};
        };
    }
}
