package stokewell.check;

import static stokewell.check.Findings.say;

import java.util.List;
import stokewell.matter.Glycol;
import stokewell.rig.Contents;
import stokewell.rig.Loop;
import stokewell.rig.Pipe;

/** The loop: does it circulate, where does air stay, does it run backwards; its glycol. */
final class FlowRules {

    /** Backward flow that counts, kg/s. */
    private static final double BACKWARDS = 8e-4;

    private FlowRules() {}

    static void look(Subject s, Findings f) {
        slope(s, f);
        air(s, f);
        ports(s, f);
        level(s, f);
        checkValve(s, f);
        reverse(s, f);
        glycol(s, f);
    }

    private static double supplyHeight(Subject s) {
        double depth = Contents.depth(s.rig().store().shape());
        double share =
                s.coilInStore() ? s.rig().store().coil().top() : s.rig().store().supplyPort();
        return s.rig().store().elevation() + share * depth;
    }

    private static void slope(Subject s, Findings f) {
        double lift = supplyHeight(s) - s.highestPickup();
        String basis = "a hot riser that climbs all the way, 2 % or more: practice of gravity heating";
        if (lift > 0.2) {
            f.fine(
                    "loop.rise",
                    say("The store's hot port stands %.1f m above the fire.", lift),
                    "Warm water can rise to it.",
                    basis);
        } else if (s.pumped()) {
            f.mind(
                    "loop.rise",
                    say("The hot pipe ends %.1f m %s the fire.", Math.abs(lift), lift < 0 ? "below" : "above"),
                    "Nothing circulates by itself, and air stays at the high point.",
                    "Vent the high point by hand or float, and give the coil a gravity radiator of its own above it.",
                    basis);
        } else {
            f.stop(
                    "loop.rise",
                    say(
                            "A loop without a pump whose store is %.1f m %s its fire.",
                            Math.abs(lift), lift < 0 ? "below" : "above"),
                    "Warm water does not sink: the coil boils at every fire.",
                    "Raise the store above the fire, or fit a pump with its guards.",
                    basis);
        }
    }

    private static void air(Subject s, Findings f) {
        Drill d = s.drill(Fault.AIR_LOCK);
        if (d == null) return;
        String basis = "rising pipe, a vent at each high point, 0.6 m/s to purge: practice";
        if (d.firstBoil() == Double.POSITIVE_INFINITY) {
            f.fine("loop.air", "Air in the loop boils nothing.", d.sentence(), basis);
            return;
        }
        String what = "Air in the loop, or one shut valve, boils the coil " + Telling.later(d.firstBoil()) + ".";
        String why = (s.pumped() ? "The pump hums and moves nothing, and gravity" : "Gravity")
                + " stops too. It comes at the first filling, after a top-up, after boiling.";
        String watch = "Coil over 25 K (45 °F) above the store" + (s.pumped() ? " with the pump on" : "")
                + ": air or a shut valve, shut the air of the stove.";
        Boolean rises = s.safety().loopRises();
        if (rises == null) {
            f.ask(
                    d.level(),
                    "loop.air",
                    "safety.loopRises: yes or no",
                    what + " Does every pipe rise to a vent, with no valve that a hand can shut?",
                    why + " " + watch,
                    basis);
        } else if (!rises) {
            f.add(
                    d.level(),
                    "loop.air",
                    what,
                    why,
                    "Let every pipe rise to a vent; purge at 0.6 m/s; no valve in the loop that a hand can shut. "
                            + watch,
                    basis);
        } else {
            f.mind(
                    "loop.air",
                    what,
                    why + " As answered, its pipes rise to a vent and nothing in it shuts.",
                    "Bleed and purge at 0.6 m/s after every filling, and see it move before the fire is large. "
                            + watch,
                    basis);
        }
    }

    private static void ports(Subject s, Findings f) {
        var store = s.rig().store();
        if (s.coilInStore()) return;
        double depth = Contents.depth(store.shape());
        if (store.supplyPort() <= store.returnPort()) {
            f.mend(
                    "loop.ports",
                    "The hot inlet of the store is not above its cool outlet.",
                    "The loop draws its own hot water back, and gravity works against the pump.",
                    "Hot in near the top, cool out near the bottom.",
                    "stratified stores: practice");
            return;
        }
        boolean open = store.cover() != stokewell.rig.Store.Cover.SEALED;
        double under = (1 - store.supplyPort()) * depth;
        if (open && under < 0.15) {
            f.mend(
                    "loop.level",
                    say("The hot inlet lies %.0f mm under the water of a store that can lose level.", 1000 * under),
                    "Once it is bare the gravity loop breaks and the pump draws air; it is lost in weeks and noticed at once.",
                    "Put it 150 mm (6 in) below the lowest level, mark that level, and read it weekly in mm.",
                    "ports 150 mm under the lowest level: practice");
        }
    }

    /** Whether somebody sees that water goes, before nothing circulates any more. */
    private static void level(Subject s, Findings f) {
        Boolean watched = s.around().levelWatched();
        Drill low = s.drill(Fault.LOW_WATER);
        boolean closed = s.safety().closed();
        String basis = closed
                ? "the gauge of a closed loop read every week; a tray and a floor alarm under a store"
                : "weekly level in mm and its trend; a tray and a floor alarm under a store";
        String why = (closed
                        ? "Leaks take it down unseen; then air comes in at the top and nothing circulates."
                        : "Leaks and evaporation take it down unseen; insulation soaks, then the coil runs dry.")
                + (low == null || low.firstBoil() == Double.POSITIVE_INFINITY
                        ? ""
                        : " Lit like that, it boils " + Telling.later(low.firstBoil()) + ".");
        if (watched == null) {
            f.ask(
                    low == null || low.level().compareTo(Level.MIND) > 0 ? Level.MIND : low.level(),
                    "water.level",
                    "safety.surroundings.levelWatched: yes or no",
                    closed ? "Is it noticed in time when the pressure falls?" : "Is a low water level noticed in time?",
                    why,
                    basis);
        } else if (!watched) {
            f.mend(
                    "water.level",
                    closed ? "Nobody sees the pressure fall." : "Nobody sees the water level fall.",
                    why,
                    closed
                            ? "A gauge where you pass it, read every week, and a switch that rings below its mark; do not light below it."
                            : "A sight glass or a float with a light, read every week; do not light below the mark.",
                    basis);
        }
    }

    private static void checkValve(Subject s, Findings f) {
        double opens = s.rig().loop().checkValve();
        if (Double.isNaN(opens)) return;
        double lift = Math.max(0, supplyHeight(s) - s.highestPickup());
        double pull = 9.81 * lift * 25;
        if (opens > 0.3 * pull) {
            f.mind(
                    "loop.check",
                    say("The check valve asks %.0f Pa; warm water pulls about %.0f Pa.", opens, pull),
                    "It kills the gravity path, and stuck shut it does so silently: found out only in a power cut.",
                    "A swing flap in the safe direction, or a heat trap, stops the backward flow at night and leaves gravity its "
                            + "way. Try it without power once a year at a small fire.",
                    "buoyancy of 40 K over that height");
        }
    }

    /** Warm water of the store that goes backwards through a cold pickup at night. */
    private static void reverse(Subject s, Findings f) {
        float[] flow = s.day().trace().has("loop flow") ? s.day().trace().column("loop flow") : new float[0];
        double backwards = 0;
        int samples = 0;
        for (float m : flow) {
            if (m > -BACKWARDS) continue;
            backwards += m;
            samples++;
        }
        if (samples < 0.1 * flow.length || samples == 0) {
            freed(s, f);
            return;
        }
        f.mind(
                "loop.reverse",
                say(
                        "The loop runs backwards for %.0f %% of the day, %.0f L/h on average.",
                        100.0 * samples / flow.length, -3600 * backwards / samples),
                "The store heats the stove and its chimney, all night, and nobody sees it.",
                "A heat trap (a loop of pipe that dips) or a flap in the safe direction; never a spring check valve in the only gravity "
                        + "path. Look in the morning whether the return pipe is warm.",
                "the run's own flow; thermosyphon practice");
    }

    /** It does not run backwards as it is: what keeps it from that, and what it would cost. */
    private static void freed(Subject s, Findings f) {
        Drill d = s.drill(Fault.REVERSE_FLOW);
        if (d == null) return;
        String basis = "a drill: the same night without its check valve";
        if (d.level() == Level.FINE) {
            f.fine("loop.reverse", "The loop does not run backwards at night.", d.sentence(), basis);
        } else {
            f.add(
                    d.level(),
                    "loop.reverse",
                    Double.isNaN(s.rig().loop().checkValve())
                            ? "At night the store's heat goes back into stove and chimney."
                            : "Only the check valve keeps the store's heat out of the chimney at night.",
                    d.sentence(),
                    "A heat trap (a loop of pipe that dips) or a flap in the safe direction. Look in the morning whether the return pipe "
                            + "is warm.",
                    basis);
        }
    }

    private static void glycol(Subject s, Findings f) {
        double g = s.rig().loop().glycol();
        if (g <= 0) return;
        if (g < 0.25) {
            f.mend(
                    "glycol.weak",
                    say("%.0f %% of glycol is too little.", 100 * g),
                    "Below 25 % it feeds bacteria and its inhibitor is too thin.",
                    "Take 30 % or more, or none.",
                    "makers of inhibited propylene glycol");
        }
        if (Glycol.freezingPoint(g) > s.rig().weather().low() + 3 && outdoors(s)) {
            f.mend(
                    "glycol.frost",
                    say("This mix freezes at %s.", Telling.degrees(Glycol.freezingPoint(g))),
                    "The pipes outdoors see "
                            + Telling.degrees(s.rig().weather().low()) + ".",
                    "Mix it for 5 K below the coldest night.",
                    "freezing points of propylene glycol and water");
        }
        f.mind(
                "glycol.cooked",
                "Glycol that stands in a boiling coil turns to acid.",
                "Above 120 °C (250 °F) it breaks." + cooked(s),
                "Test it every year and after each overheat; change it when it is below pH 7.",
                "makers of inhibited propylene glycol");
    }

    /** The hottest metal that its fluid touches when nothing moves. */
    private static String cooked(Subject s) {
        Drill worst = null;
        for (Fault fault : List.of(Fault.POWER_OUT, Fault.PUMP_DEAD, Fault.AIR_LOCK)) {
            Drill d = s.drill(fault);
            boolean hotter = d != null
                    && (worst == null || d.metal().temperature() > worst.metal().temperature());
            if (hotter) worst = d;
        }
        if (worst == null) return "";
        return say(
                " When it stands still (%s) the coil's metal comes to %s, its fluid to %s.",
                worst.fault().title(),
                Telling.degrees(worst.metal().temperature()),
                Telling.degrees(worst.water().temperature()));
    }

    private static boolean outdoors(Subject s) {
        Loop l = s.rig().loop();
        return l.supply().where() == Pipe.Where.OUTDOORS || l.back().where() == Pipe.Where.OUTDOORS;
    }
}
