package stokewell.check;

import java.util.Locale;
import stokewell.matter.Water;
import stokewell.rig.Pipe;
import stokewell.rig.Rig;

/** What happens, how long there is, what to do: one drill in plain words. */
final class Sentence {

    private static final double NEVER = Double.POSITIVE_INFINITY;
    private static final double K = 273.15;

    private final Rig rig;
    private final Fault fault;
    private final Watch w;
    private final double air;
    private final double head;
    private final Drill.Flashed flash;
    private final String said;

    /** @param said what the fault has said itself; empty for nothing */
    Sentence(Rig rig, Fault fault, Watch w, double head, Drill.Flashed flash, String said) {
        this.rig = rig;
        this.fault = fault;
        this.w = w;
        this.head = head;
        this.flash = flash;
        this.said = said;
        air = w.airPressure();
    }

    /** All of it. */
    String of(boolean boils, double needed, double fitted, double pressure) {
        String advice = burstsCold(boils, pressure)
                ? "Light no fire before a relief valve stands at the stove."
                : Advice.of(rig, fault, boils);
        if (!said.isEmpty()) return said + outlet(boils, needed, fitted, pressure) + " " + advice;
        String what = switch (fault) {
            case DRY_REFILLED -> flash();
            case FROZEN_RUN -> frozen();
            case BACKDRAFT -> backdraft();
            case CHIMNEY_FIRE -> tarFire(boils);
            case VENT_NARROW -> narrow(boils);
            default -> boils ? boiling() : stays();
        };
        return what + outlet(boils, needed, fitted, pressure) + " " + advice;
    }

    /** Whether water that nothing lets grow bursts a closed loop before it boils. */
    private boolean burstsCold(boolean boils, double pressure) {
        return !boils && pressure == NEVER && rig.safety().closed();
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
        String text = "The " + first + " boils " + Telling.later(least);
        text += w.waterLost < 0.2
                ? "."
                : String.format(
                        Locale.ROOT,
                        ", %.1f kg of water goes off as steam, at most %.0f kg/h.",
                        w.waterLost,
                        3600 * w.steamRate);
        if (w.exposed < NEVER) text += " Its metal is bare after " + Telling.span(w.exposed) + ".";
        return text;
    }

    private String stays() {
        if (w.boils.length == 0) {
            return "The stove reaches " + Telling.degrees(w.stove) + ".";
        }
        double after = w.lasted;
        return "Nothing boils in the " + Telling.span(after) + " that were followed: the hottest water is at "
                + Telling.degrees(w.hottestWater) + ", " + w.hottestWaterWhere + ".";
    }

    private String flash() {
        double saturation = Water.saturationTemperature(air);
        String text = String.format(
                Locale.ROOT,
                "Dry, the metal reaches %s; water let in then flashes to %.1f kg of steam, %.1f m³, within %s, at most %.0f kg/h",
                Telling.degrees(w.hottestMetal),
                flash.steam(),
                flash.steam() / Water.steamDensity(saturation),
                Telling.span(flash.lasts()),
                3600 * flash.peak());
        double passes = Vented.fitted(rig, air, head, true) / Water.latentHeat(saturation);
        if (Double.isNaN(passes) || flash.peak() <= passes) return text + ".";
        return text
                + String.format(
                        Locale.ROOT,
                        ", where its ways out pass %.0f kg/h: it throws scalding water and bursts what is weak.",
                        3600 * passes);
    }

    private String frozen() {
        if (w.freezing == NEVER) {
            return "Without a fire no water in the loop comes to its freezing point in " + Telling.span(w.coldSpell)
                    + " of this weather (room down to " + Telling.degrees(w.roomLowest) + ").";
        }
        String cold = "Left cold, the " + w.frozenWhere + " is at its freezing point after " + Telling.span(w.freezing)
                + " and plugged " + Telling.span(plug()) + " later.";
        double least = w.firstBoil();
        return cold + " A fire then bursts the shut-in coil by the growth of its water"
                + (least == NEVER ? "." : ", before it boils in " + Telling.span(least) + ".");
    }

    /** From the freezing point to a half-frozen pipe, s. */
    private double plug() {
        Pipe pipe = rig.loop().back().where() == Pipe.Where.OUTDOORS
                ? rig.loop().back()
                : rig.loop().supply();
        return new StillPipe(pipe).toPlug(Math.min(K - 1, Math.min(rig.weather().low(), w.roomLowest)));
    }

    private String narrow(boolean boils) {
        if (!boils) return stays();
        return boiling()
                + String.format(
                        Locale.ROOT,
                        " Through %.0f mm its steam presses %.2f bar on the water, which then boils at %s%s",
                        1000 * rig.loop().header().vent() / 3,
                        w.choked / 1e5,
                        Telling.degrees(Water.saturationTemperature(air + head + w.choked)),
                        w.choked > head ? ", and throws the coil's water out by the feed." : ".");
    }

    private String tarFire(boolean boils) {
        double room = Math.max(w.roomLowest, 283.15);
        double wall = ChimneyFire.wall(ChimneyFire.GAS, room);
        double diameter = rig.flue().diameter();
        String text = String.format(
                Locale.ROOT,
                "The flue at %s draws on the fire: %.1f kW into the water at most, the stove to %s. A bare connector comes to "
                        + "about %s and lights wood nearer than %.0f cm (%.0f in).",
                Telling.degrees(ChimneyFire.GAS),
                Math.max(0, w.heat) / 1000,
                Telling.degrees(w.stove),
                Telling.degrees(wall),
                100 * ChimneyFire.distance(wall, room, diameter, ChimneyFire.LIGHTS),
                ChimneyFire.distance(wall, room, diameter, ChimneyFire.LIGHTS) / 0.0254);
        return boils ? boiling() + " " + text : text;
    }

    private String backdraft() {
        return String.format(
                Locale.ROOT,
                "On a still day of 20 °C (68 °F) with a cold chimney over coals the draft is down to %.1f Pa%s",
                w.draft,
                w.draft < 1 ? ": smoke and carbon monoxide come into the room." : ".");
    }

    private String outlet(boolean boils, double needed, double fitted, double pressure) {
        if (fault == Fault.DRY_REFILLED || fault == Fault.FROZEN_RUN) return "";
        if (burstsCold(boils, pressure))
            return " But its water grows as it warms, the vessel is full and nothing lets it out: it bursts.";
        if (!boils) return "";
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
}
