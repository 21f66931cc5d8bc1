package stokewell.check;

import static stokewell.check.Findings.say;

import stokewell.rig.Fuel;
import stokewell.rig.Pickup;
import stokewell.rig.Stove;

/** The fire and its chimney: runaway, draft, dew point and tar, sweeping. */
final class FireRules {

    /** Chimney above which a gust over-draws an unstabilised stove: practice, from owners' accounts. */
    private static final double TALL = 9;

    private static final double SHORT = 3.5;

    private FireRules() {}

    static void look(Subject s, Findings f) {
        overFire(s, f);
        offcuts(s, f);
        wet(s, f);
        draft(s, f);
        tar(s, f);
        sweep(s, f);
        chimneyFire(s, f);
    }

    private static void overFire(Subject s, Findings f) {
        Drill d = s.drill(Fault.OVER_FIRE);
        if (d == null) return;
        boolean boils = d.firstBoil() < Double.POSITIVE_INFINITY;
        String remedy =
                "Ring a timer at 8 minutes whenever the air or the lighting door is open, and write it on the start "
                        + "card. Shut the air, never the water.";
        String basis = "practice: an open lighting door has blown more relief valves than anything else";
        if (boils) {
            f.add(
                    d.level(),
                    "fire.lighting",
                    "With the air left wide open the water boils " + Telling.later(d.firstBoil())
                            + ", with the pump running.",
                    say("The fire then gives the water %.1f kW.", d.heat() / 1000),
                    remedy,
                    basis);
        } else if (s.rig().stove().air() instanceof Stove.Air.Damper) {
            f.fine(
                    "fire.lighting",
                    "A damper closes the air by itself.",
                    "Wide open, nothing boils while water moves.",
                    basis);
        } else {
            f.mind(
                    "fire.lighting",
                    "Nothing closes the air but your hand.",
                    "Left wide open the stove goes to " + Telling.degrees(d.stove()) + ".",
                    remedy,
                    basis);
        }
    }

    private static void offcuts(Subject s, Findings f) {
        if (s.rig().fuel().form() != Fuel.Form.OFFCUTS) return;
        Drill d = s.drill(Fault.OVER_FIRE);
        f.mind(
                "fuel.offcuts",
                "Thin dry offcuts burn three times as fast as splits.",
                d == null || !s.wet()
                        ? "A whole load of them runs away with the air shut."
                        : say("A whole load with the air open gives the water up to %.1f kW.", d.heat() / 1000),
                "Burn them as a quarter of a load at most, on top of splits, and stay with it.",
                "practice; furniture and pallet wood with the flaps shut has filled boiler rooms with steam");
    }

    private static void wet(Subject s, Findings f) {
        double w = s.rig().fuel().wetBasis();
        if (w <= 0.25) return;
        f.mend(
                "fuel.wet",
                say("The wood is %.0f %% water.", 100 * w),
                "Boiling that water takes only a few percent of the heat; what is lost is a bright fire. It smoulders, and the tar goes "
                        + "up the chimney.",
                "Split it, stack it off the ground under a lid for two summers, and burn what rings: below 20 %.",
                "net heating value of wet wood; practice");
    }

    private static void draft(Subject s, Findings f) {
        Drill mild = s.drill(Fault.BACKDRAFT);
        String basis = "EN 13384-1 in spirit: a chimney must draw on the mildest day it is used";
        if (mild != null && mild.draft() < 1) {
            f.add(
                    mild.level(),
                    "chimney.mild",
                    say("On a still day of 20 °C (68 °F) the cold chimney draws %.1f Pa over coals.", mild.draft()),
                    "Smoke and carbon monoxide come back into the room; with coals there is no smell.",
                    "Warm the flue with paper before lighting, and let coals burn out with the air open on such a day.",
                    basis);
        }
        Drill iced = s.drill(Fault.CAP_BLOCKED);
        if (iced != null && s.frostyWinter()) {
            f.add(
                    iced.level(),
                    "chimney.cap",
                    "Ice or a nest can shut the chimney's cap.",
                    iced.sentence(),
                    "Look up it from below or from afar before the first fire of autumn and in hard frost. A cap that runs over its whole "
                            + "width with a wide mesh ices last.",
                    "a drill; caps of outdoor chimneys in frost: practice");
        }
        if (s.rig().flue().height() > TALL) {
            f.mind(
                    "chimney.tall",
                    say("The chimney is %.0f m tall.", s.rig().flue().height()),
                    "In a gust or hard frost it pulls flames into the flue, and puffs back at an opened door.",
                    "Fit a draft stabiliser where code allows one with wood; never open a door that puffs.",
                    "practice; too much draft is a fault too");
        }
        if (s.rig().flue().height() < SHORT) {
            f.mind(
                    "chimney.short",
                    say("The chimney is %.1f m tall.", s.rig().flue().height()),
                    "It draws little over coals and on mild days.",
                    "Bring it 1 m (3 ft) through the roof and 0.6 m (2 ft) above anything within 3 m (10 ft).",
                    "NFPA 211");
        }
    }

    private static void tar(Subject s, Findings f) {
        double share = s.day().flueBelowDew();
        String basis = "dew point of wood's flue gas, 45 to 50 °C at usual air; EN 13384-1 asks a wall above it";
        String why =
                say("For %.0f %% of the burning time the flue's top is below the dew point of the smoke.", 100 * share);
        if (share > 0.2) {
            f.mend(
                    "chimney.dew",
                    "Tar and water run in the chimney on a normal day.",
                    why,
                    "Burn smaller and brighter loads, dry wood, insulate the outdoor part of the chimney.",
                    basis);
        } else if (share > 0.03) {
            f.mind(
                    "chimney.dew",
                    "The chimney's top is below the dew point at times.",
                    why,
                    "Burn one hot fire a day.",
                    basis);
        } else {
            f.fine("chimney.dew", "The chimney stays above the dew point.", why, basis);
        }
        for (Pickup p : s.rig().pickups()) {
            if (p.kind() == Pickup.Kind.BOX) continue;
            double coldest = coldestWater(s, p.name());
            if (coldest < 328.15) {
                f.mind(
                        "return.cold",
                        say("Water comes into the fire as cold as %s.", Telling.degrees(coldest)),
                        "Metal in the fire below 55 °C (130 °F) sweats and gathers tar; that insulates it and can burn. Turning "
                                + "the store down makes it worse.",
                        "Brush it weekly, or mix the return up to 55 °C with a thermostatic valve that cannot shut the loop.",
                        "boiler makers' usual least return of 55 °C; a changed setpoint changes this too");
                return;
            }
        }
    }

    private static void chimneyFire(Subject s, Findings f) {
        Drill d = s.drill(Fault.CHIMNEY_FIRE);
        if (d == null) return;
        double room = 293.15;
        double wall = ChimneyFire.wall(ChimneyFire.GAS, room);
        double diameter = s.rig().flue().diameter();
        double lights = ChimneyFire.distance(wall, room, diameter, ChimneyFire.LIGHTS);
        double chars = ChimneyFire.distance(wall, room, diameter, ChimneyFire.BEARS);
        double has = s.around().connectorClearance();
        boolean near = has < lights;
        String boils = d.firstBoil() == Double.POSITIVE_INFINITY
                ? "The water does not boil in it."
                : "The coil boils " + Telling.span(d.firstBoil()) + " after it begins.";
        f.add(
                near ? Level.MEND : d.level() == Level.FINE ? Level.MIND : d.level(),
                "chimney.fire",
                near
                        ? say("In a chimney fire the bare connector lights wood %.0f cm away.", 100 * has)
                        : "A chimney fire makes the bare connector glow.",
                say(
                        "At %s of gas its wall is at about %s: wood nearer than %.0f cm (%.0f in) lights, nearer than %.0f cm (%.0f in) "
                                + "chars. %s",
                        Telling.degrees(ChimneyFire.GAS),
                        Telling.degrees(wall),
                        100 * lights,
                        lights / 0.0254,
                        100 * chars,
                        chars / 0.0254,
                        boils),
                "Sweep it before it can burn; a liner made for chimney fires; wood 46 cm (18 in) from a bare connector, or shielded. "
                        + "When it roars: air and door shut, out, call.",
                "gas of the chimney test UL 103 HT (from memory) through a thin wall; 12.5 kW/m² lights wood, 4 chars it (usual figures, "
                        + "from memory)");
    }

    private static double coldestWater(Subject s, String pickup) {
        var t = s.day().trace();
        String name = "water " + pickup;
        if (!t.has(name)) return Double.NaN;
        float[] water = t.column(name);
        float[] bed = t.column("bed");
        float[] heat = t.has("power fire to water") ? t.column("power fire to water") : bed;
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        for (float h : heat) most = Math.max(most, h);
        for (int i = 0; i < water.length; i++) {
            if (bed[i] > 0.3 && heat[i] > 0.3 * most) least = Math.min(least, water[i]);
        }
        return least;
    }

    private static void sweep(Subject s, Findings f) {
        double wood = s.day().wood() / Math.max(1, (s.day().until() - s.day().from()) / 86400);
        if (wood <= 0) return;
        double share = s.day().flueBelowDew();
        int weeks = share > 0.2 ? 3 : share > 0.03 ? 6 : 12;
        f.mind(
                "chimney.sweep",
                say(
                        "At %.0f kg of wood a day look up the chimney every %d weeks, after %.0f kg.",
                        wood, weeks, 7 * weeks * wood),
                "Deposits of 3 mm (1/8 in) burn; a chimney fire also boils the coil.",
                "Sweep at 3 mm and before each season. In a chimney fire shut air inlets and doors, get out, call; touch a stack "
                        + "damper only if the stove's maker says so.",
                "sweeps' rule of up to four times a season for wood; NFPA 211 yearly inspection");
    }
}
