package stokewell.check;

import static stokewell.check.Findings.say;

import java.util.LinkedHashMap;
import java.util.Map;
import stokewell.rig.Contents;
import stokewell.rig.Emitter;
import stokewell.rig.Pipe;

/** Frost: a room that freezes, a rig that stands cold, pipes outdoors. */
final class FrostRules {

    private static final double NEVER = Double.POSITIVE_INFINITY;
    /** Water that has come to rest in a pipe in use, K. */
    private static final double STANDS = 313.15;

    private FrostRules() {}

    static void look(Subject s, Findings f) {
        frostyNight(s, f);
        frost(s, f);
        outdoors(s, f);
    }

    /** A normal night in which the room itself freezes. */
    private static void frostyNight(Subject s, Findings f) {
        double lowest = lowestHour(s);
        if (!s.wet() || s.safety().closed() || s.rig().loop().glycol() > 0 || !(lowest < Subject.K)) return;
        f.mend(
                "frost.night",
                "The room freezes on a normal night: " + Telling.degrees(lowest) + ".",
                "Header, cold feed and vent stand still in it. A vent that is plugged with ice makes a sealed pot of an open rig.",
                "Keep the room above freezing, or bring header, feed and vent into a warm corner behind insulation, and see before "
                        + "every fire that the vent breathes.",
                "a run of the normal day; explosions of frozen coils");
    }

    /** The room's coldest hour on the mean, K: a door that stands open for minutes freezes no header. */
    private static double lowestHour(Subject s) {
        float[] room = s.day().trace().column("room");
        int hour = Math.max(1, (int)
                Math.round(3600 / (s.day().trace().time(1) - s.day().trace().time(0))));
        double sum = 0;
        double lowest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < room.length; i++) {
            sum += room[i] - (i >= hour ? room[i - hour] : 0);
            if (i >= hour - 1) lowest = Math.min(lowest, sum / hour);
        }
        return lowest;
    }

    private static void frost(Subject s, Findings f) {
        Drill d = s.drill(Fault.FROZEN_RUN);
        if (d == null || d.freezing() == NEVER) {
            if (d != null)
                f.fine("frost.run", "It does not freeze in the weather given.", d.sentence(), "a run without fire");
            return;
        }
        double stands = s.around().coldAndFull();
        String after = Telling.span(d.freezing());
        String basis = "safety alerts after explosions of frozen back boilers and coils; relief at the stove itself";
        Level level = Severity.frozen(s.safety(), d.freezing());
        if (level == Level.MIND) {
            f.ask(
                    "frost.run",
                    "safety.surroundings.coldAndFull: 12 h",
                    "How long does the rig stand cold and full in frost at the longest?",
                    "Without a fire the first water freezes after " + after + ". A fire on a frozen coil bursts it.",
                    basis);
        } else if (level == Level.STOP) {
            f.stop(
                    "frost.run",
                    "It may be frozen when you light it: it stands cold for " + Telling.span(stands)
                            + " and freezes after " + after + ".",
                    d.sentence(),
                    "Drain it, or fill the loop with 30 % or more of propylene glycol behind a coil, or keep the room above "
                            + "freezing. Hang the sign: frozen or not sure, do not light. Relief at the stove itself.",
                    basis);
        } else {
            f.fine(
                    "frost.run",
                    "It is fired again before it freezes.",
                    "It freezes after " + after + " and stands cold for " + Telling.span(stands)
                            + ". Not sure? Do not light: warm the room first.",
                    basis);
        }
    }

    private static void outdoors(Subject s, Findings f) {
        double low = s.rig().weather().low();
        if (!s.frostyWinter()) return;
        Map<String, Pipe> all = new LinkedHashMap<>();
        if (s.rig().loop().glycol() <= 0) {
            all.put("hot pipe", s.rig().loop().supply());
            all.put("cool pipe", s.rig().loop().back());
        }
        // what an emitter carries is the store's own water
        for (Emitter e : s.rig().emitters()) {
            Emitter.Circuit c = Contents.circuit(e);
            if (c == null) continue;
            all.put(e.name() + ", hot pipe", c.supply());
            all.put(e.name() + ", cool pipe", c.back());
        }
        all.values().removeIf(p -> p.where() != Pipe.Where.OUTDOORS);
        if (all.isEmpty()) return;
        String first = "";
        double soonest = Double.POSITIVE_INFINITY;
        for (var p : all.entrySet()) {
            double plugged =
                    new StillPipe(p.getValue()).toFreezing(STANDS, low) + new StillPipe(p.getValue()).toPlug(low);
            if (plugged >= soonest) continue;
            soonest = plugged;
            first = p.getKey();
        }
        StillPipe pipe = new StillPipe(all.get(first));
        f.mend(
                "frost.outdoors",
                "Water pipes run outdoors in frost: " + String.join("; ", all.keySet()) + ".",
                say(
                        "In a night of %s still water of %s in the %s is at its freezing point in %s and plugged %s later.",
                        Telling.degrees(low),
                        Telling.degrees(STANDS),
                        first,
                        Telling.span(pipe.toFreezing(STANDS, low)),
                        Telling.span(pipe.toPlug(low))),
                "Bring them inside or bury them under the frost, lag them, and let them drain when they stand. 30 % glycol or more helps "
                        + "only behind a coil that keeps it apart from the store.",
                "freezing of a still pipe by its own heat loss: lumped water, then a shell of ice from the wall");
    }
}
