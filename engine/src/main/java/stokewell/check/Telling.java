package stokewell.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import stokewell.loop.Freezing;
import stokewell.matter.Water;
import stokewell.rig.Pickup;
import stokewell.rig.Pipe;
import stokewell.rig.Rig;
import stokewell.rig.Safety;

/** Makes a drill of what was watched: the loads on vent and relief, how bad it is, and the sentence. */
final class Telling {

    private static final double NEVER = Double.POSITIVE_INFINITY;
    private static final double K = 273.15;
    /** Minutes within which a person who is there cannot be counted on to act: common practice. */
    private static final double SOON = 30 * 60;

    private static final double STEEL = 480;

    private final Rig rig;
    private final Fault fault;
    private final Watch w;
    private final double start;
    private final List<Drill.Guard> guards;
    private final double air;
    private final double head;

    Telling(Rig rig, Fault fault, Watch w, double start, List<Drill.Guard> guards) {
        this.rig = rig;
        this.fault = fault;
        this.w = w;
        this.start = start;
        this.guards = guards;
        air = w.airPressure();
        head = Drills.head(rig);
    }

    Drill drill() {
        double latent = Water.latentHeat(Water.saturationTemperature(air + head));
        boolean boils = w.firstBoil() < NEVER;
        double steamPower = w.steamRate * latent;
        double needed = boils ? Math.max(steamPower, sealed() ? w.heat : w.heatAtBoiling) : 0;
        if (fault == Fault.RELIEF_FAILS && rig.safety().closed()) needed = Math.max(needed, w.heat);
        double fitted = rig.loop() == null ? Double.NaN : fitted();
        double pressure = rig.loop() == null ? Double.NaN : pressure(needed, boils);
        Level level = level(needed, fitted, pressure);
        List<Drill.Boils> list = new ArrayList<>();
        for (int i = 0; i < w.boils.length; i++) {
            list.add(new Drill.Boils(rig.pickups().get(i).name(), w.boils[i]));
        }
        return new Drill(
                fault,
                true,
                start,
                w.lasted,
                list,
                hottest(w.hottestWater, w.hottestWaterWhere, w.hottestWaterAfter),
                hottest(w.hottestMetal, w.hottestMetalWhere, w.hottestMetalAfter),
                pressure,
                w.steamRate,
                steamPower,
                w.heat,
                needed,
                fitted,
                w.waterLost,
                w.exposed,
                w.freezing,
                w.roomLowest,
                w.roomHighest,
                w.stove,
                w.storeTop > 0 ? w.storeTop : Double.NaN,
                w.draft,
                guards,
                level,
                sentence(boils, needed, fitted, pressure));
    }

    private static Drill.Hottest hottest(double temperature, String where, double after) {
        return temperature > 0
                ? new Drill.Hottest(temperature, where, after)
                : new Drill.Hottest(Double.NaN, "", Double.NaN);
    }

    /** Whether this fault shuts the coil off from its vent, or may. */
    private boolean sealed() {
        return switch (fault) {
            case VENT_BLOCKED -> !rig.safety().closed();
            case FROZEN_RUN -> w.freezing < NEVER;
            case VALVE_SHUT -> !Boolean.FALSE.equals(rig.safety().valveToOpen());
            default -> false;
        };
    }

    private boolean reliefReached() {
        Safety.ReliefValve r = rig.safety().relief();
        if (r == null) return false;
        // behind a shut valve or an ice plug only a relief at the stove itself counts
        boolean cutOff = fault == Fault.VALVE_SHUT || fault == Fault.FROZEN_RUN;
        if (!cutOff) return !Boolean.TRUE.equals(rig.safety().valveToOpen());
        return Boolean.TRUE.equals(r.atStove())
                && !Boolean.TRUE.equals(rig.safety().valveToOpen());
    }

    private double fitted() {
        if (sealed()) return reliefReached() ? Vented.valve(rig.safety().relief(), air) : 0;
        return Vented.fitted(rig, air, head, true);
    }

    private double pressure(double needed, boolean boils) {
        if (sealed() || rig.safety().closed()) {
            // water shut in all round bursts its walls as it warms, long before it boils
            boolean shutIn = sealed() && fault != Fault.VENT_BLOCKED;
            if (!boils && !shutIn) return w.gauge;
            if (!reliefReached()) return NEVER;
            return boils ? Vented.valvePressure(rig.safety().relief(), needed, air) : w.gauge;
        }
        return head + Vented.ventLoss(rig.loop().header().vent(), w.steamRate, air);
    }

    private Level level(double needed, double fitted, double pressure) {
        if (pressure == NEVER) return Level.STOP;
        if (needed > 0 && needed > fitted) return Level.STOP;
        if (fault == Fault.BACKDRAFT) return w.draft < 1 ? Level.MEND : w.draft < 3 ? Level.MIND : Level.FINE;
        if (w.exposed < NEVER && fault != Fault.DRY_REFILLED) return Level.MEND;
        if (fault == Fault.FROZEN_RUN && w.freezing == NEVER) return Level.FINE;
        if (w.firstBoil() < SOON) return Level.MEND;
        if (w.firstBoil() < NEVER || w.freezing < NEVER || fault == Fault.DRY_REFILLED) return Level.MIND;
        return Level.FINE;
    }

    // ---------------------------------------------------------------- words

    private String sentence(boolean boils, double needed, double fitted, double pressure) {
        String what = switch (fault) {
            case DRY_REFILLED -> flash();
            case FROZEN_RUN -> frozen();
            case BACKDRAFT -> backdraft();
            case FAN_DEAD, STUCK_ON, DOUBLE_LOAD, OVER_FIRE -> boils ? boiling() : stays();
            default -> boils ? boiling() : stays();
        };
        return what + outlet(boils, needed, fitted, pressure) + " " + act(boils);
    }

    private String boiling() {
        String first = "";
        double least = NEVER;
        for (int i = 0; i < w.boils.length; i++) {
            if (w.boils[i] < least) {
                least = w.boils[i];
                first = rig.pickups().get(i).name();
            }
        }
        String text = "The " + first + " boils " + span(least) + " later";
        text += w.waterLost < 0.2
                ? "."
                : String.format(
                        Locale.ROOT,
                        ", %.1f kg of water goes off as steam, at most %.0f kg/h.",
                        w.waterLost,
                        3600 * w.steamRate);
        if (w.exposed < NEVER) text += " Its metal is bare after " + span(w.exposed) + ".";
        return text;
    }

    private String stays() {
        if (w.boils.length == 0) {
            return "The stove reaches " + degrees(w.stove) + ".";
        }
        double after = w.lasted;
        return "Nothing boils in the " + span(after) + " that were followed: the hottest water is at "
                + degrees(w.hottestWater) + ", " + w.hottestWaterWhere + ".";
    }

    private String flash() {
        double mass = 0;
        for (Pickup p : rig.pickups()) mass += p.metal();
        double hot = w.hottestMetal;
        double saturation = Water.saturationTemperature(air);
        double perKg = Water.latentHeat(saturation) + 4190 * (saturation - 283.15);
        double steam = Math.max(0, mass * STEEL * (hot - saturation) / perKg);
        return String.format(
                Locale.ROOT,
                "Dry, the metal reaches %s; water let in then flashes to as much as %.1f kg of steam, %.1f m³, at once.",
                degrees(hot),
                steam,
                steam / Water.steamDensity(saturation));
    }

    private String frozen() {
        if (w.freezing == NEVER) {
            return "Without a fire no water in the loop comes to its freezing point in " + span(w.coldSpell)
                    + " of this weather (room down to " + degrees(w.roomLowest) + ").";
        }
        String cold = "Left cold, the " + w.frozenWhere + " is at its freezing point after " + span(w.freezing)
                + " and plugged " + span(plug()) + " later.";
        double least = w.firstBoil();
        return cold + " A fire then bursts the shut-in coil by the growth of its water"
                + (least == NEVER ? "." : ", before it boils in " + span(least) + ".");
    }

    /** From the freezing point to a half-frozen pipe, s. */
    private double plug() {
        Pipe pipe = rig.loop().back().where() == Pipe.Where.OUTDOORS
                ? rig.loop().back()
                : rig.loop().supply();
        double outer = pipe.bore() + 2 * pipe.wall();
        double ua = pipe.insulation() > 0
                ? pipe.length()
                        * stokewell.transfer.Conduction.pipeLoss(
                                outer / 2, pipe.insulation(), pipe.insulationConductivity(), 9)
                : pipe.length() * Math.PI * outer * 10;
        double around = Math.min(-1, Math.min(rig.weather().low(), w.roomLowest) - K);
        return Freezing.timeToIce(0.5, pipe.volume() * 1000, pipe.length(), ua, around);
    }

    private String backdraft() {
        return String.format(
                Locale.ROOT,
                "On a still day of 20 °C (68 °F) with a cold chimney over coals the draft is down to %.1f Pa%s",
                w.draft,
                w.draft < 1 ? ": smoke and carbon monoxide come into the room." : ".");
    }

    private String outlet(boolean boils, double needed, double fitted, double pressure) {
        if (!boils || fault == Fault.DRY_REFILLED || fault == Fault.FROZEN_RUN) return "";
        if (pressure == NEVER) {
            return fault == Fault.VALVE_SHUT && rig.safety().valveToOpen() == null
                    ? " If that valve stands between the coil and its vent, nothing holds the pressure: it bursts within a minute."
                    : " Nothing holds the pressure: it bursts.";
        }
        if (needed > fitted) {
            return String.format(
                    Locale.ROOT,
                    " Vent and relief pass %.0f kW of the %.0f kW that must go.",
                    fitted / 1000,
                    needed / 1000);
        }
        return "";
    }

    private String act(boolean boils) {
        return switch (fault) {
            case POWER_OUT, PUMP_DEAD, SENSOR_OUT, STUCK_OFF ->
                boils
                        ? "Shut the air, leave the door shut, put no wood on; do not start the pump while it is over 93 °C (200 °F)."
                        : "Shut the air and put no wood on.";
            case AIR_LOCK ->
                "Shut the air; let it go cold, then bleed the high points."
                        + (rig.loop().pump() == null ? "" : " The pump hums all the while.");
            case VALVE_SHUT ->
                "Shut the air and keep away; open nothing that is hot. Take the handles off every such valve.";
            case FAN_DEAD -> boils ? "Stop feeding." : "Stop feeding before the store is full; mend the fan.";
            case STUCK_ON -> "Nothing is in danger but the heat: a pump that runs with the fire out cools the store.";
            case OVER_FIRE -> "Shut the air, not the water. Set a timer whenever the air is open to light.";
            case DOUBLE_LOAD -> "Take nothing out; shut the air half and keep the fan on.";
            case LOW_WATER -> "Let the fire die. Fill only when the coil is hand-warm.";
            case DRY_REFILLED ->
                "Never let water into a hot dry coil: take the fire away and wait until it is hand-warm, usually the next day.";
            case FROZEN_RUN ->
                "Never light a fire on a rig that may be frozen: warm the room by other means first, then see that the vent breathes.";
            case VENT_BLOCKED ->
                "Before every first fire see that the vent breathes; a relief valve at the stove is the second way out.";
            case RELIEF_FAILS ->
                "The valve must be rated for the greatest fire, at the stove, with nothing that shuts.";
            case BACKDRAFT ->
                "Warm the flue first with paper, open a window, run no fan that blows outdoors; a carbon monoxide alarm must be there.";
        };
    }

    /** A temperature as both kinds of reader read it. */
    static String degrees(double kelvin) {
        return String.format(Locale.ROOT, "%.0f °C (%.0f °F)", kelvin - K, 1.8 * (kelvin - K) + 32);
    }

    /** A length of time in words. */
    static String span(double seconds) {
        if (seconds == NEVER) return "never";
        if (seconds < 90) return Math.round(seconds) + " s";
        if (seconds < 5400) return Math.round(seconds / 60) + " min";
        if (seconds < 48 * 3600) return String.format(Locale.ROOT, "%.1f h", seconds / 3600);
        return String.format(Locale.ROOT, "%.1f days", seconds / 86400);
    }
}
