package stokewell.check;

import static stokewell.check.Findings.say;
import static stokewell.check.Stage.HOUR;
import static stokewell.check.Stage.MINUTE;

import java.util.List;
import stokewell.loop.SealedLoop;
import stokewell.network.Plant;
import stokewell.rig.Loop;
import stokewell.rig.Pickup;
import stokewell.rig.Rig;
import stokewell.run.Simulation;

/** Faults that make no noise: a leak, a furred coil, a loop that runs backwards at night. */
final class QuietFaults {

    private static final double NEVER = Double.POSITIVE_INFINITY;
    /** A seam that runs: two drops a second and more, 6 L/h in kg/s. */
    private static final double LEAK = 6.0 / 3600;
    /** A drip of a drop in five seconds, 1 L a day in kg/s. */
    private static final double DRIP = 1.0 / 86400;
    /** Three millimetres of soot at 0.1 W/(m K), m2 K/W: halves what bare steel takes from a flame, as stove practice says. */
    private static final double SOOT = 0.03;
    /** Two millimetres of lime at 0.8 W/(m K), m2 K/W: common practice, no source. */
    private static final double LIME = 0.0025;

    private final Stage stage;
    private final Rig rig;

    QuietFaults(Stage stage) {
        this.stage = stage;
        rig = stage.rig;
    }

    /** The level falls until the header is empty, or a closed loop has no pressure left; then nothing circulates any more. */
    Drill leak() {
        return stage.play(sim -> {
            Plant plant = sim.plant();
            SealedLoop sealed = plant.sealed();
            int header = Plant.state(plant.header());
            double water = sealed == null ? sim.states()[header] : spare(sealed, sim);
            Follow follow = Follow.of(stage, sim, 48 * HOUR);
            double after = 0;
            boolean left = water > 0;
            while (left && after < 40 * HOUR) {
                sim.intervene(y -> {
                    if (sealed != null) y[Plant.state(sealed.letOut())] += LEAK * 10 * MINUTE;
                    else y[header] -= Math.min(Math.max(0, y[header]), LEAK * 10 * MINUTE);
                });
                after += 10 * MINUTE;
                follow.until(after);
                left = sealed == null ? sim.states()[header] > 0.01 : spare(sealed, sim) > 0;
            }
            if (!left) {
                sim.intervene(y -> y[header] = 0);
                Stage.resisted(sim);
            }
            Watch w = follow.fires(after);
            String what = left
                    ? say(
                            "At 6 L/h the %s after %s.",
                            sealed == null ? "header still holds water" : "loop still has pressure",
                            Telling.span(after))
                    : say(
                            sealed == null
                                    ? "At 6 L/h the header is empty after %s; then nothing circulates."
                                    : "At 6 L/h the gauge stands at zero after %s; then air comes in at the top and nothing circulates.",
                            Telling.span(after));
            what += w.firstBoil() == NEVER
                    ? " Nothing boils in the day that follows."
                    : say(" The water boils %s after the leak began.", Telling.span(w.firstBoil()));
            what += say(
                    " A drip of 0.04 L/h takes %s, and wet insulation is the first sign.", Telling.span(water / DRIP));
            return told(Fault.LEAK, w, List.of(), what);
        });
    }

    /** Water that a closed loop can lose before its gauge stands at zero, kg. */
    private static double spare(SealedLoop sealed, Simulation sim) {
        return Math.max(0, sealed.letOutFor(sim.columns(), 0) - sim.states()[Plant.state(sealed.letOut())]);
    }

    /** The pump stops on a loop whose pressure has dripped away, beside the same with its pressure. */
    Drill reliefWeeps() {
        Watch firm = stage.once("pump dead", Stage::stopPump).watch();
        return stage.play(sim -> {
            SealedLoop sealed = sim.plant().sealed();
            int letOut = Plant.state(sealed.letOut());
            double before = sim.states()[letOut];
            double gauge = sealed.gauge(sim.columns());
            double gone = spare(sealed, sim);
            sim.intervene(y -> y[letOut] = before + gone);
            Watch w = Follow.of(stage, Stage.stopPump(sim), 8 * HOUR).out(false);
            String what = say(
                    "%.1f kg of water have dripped out and no pressure is left: water that stood under %.1f bar boils at %s again. ",
                    gone, gauge / 1e5, Telling.degrees(stage.boiling()));
            what += boils(w, firm);
            return told(Fault.RELIEF_WEEPS, w, List.of(), what);
        });
    }

    private static String boils(Watch w, Watch firm) {
        if (w.firstBoil() == NEVER) return "With the pump stopped nothing boils all the same.";
        String with = firm.firstBoil() == NEVER ? "never" : Telling.span(firm.firstBoil());
        return say("With the pump stopped it boils %s; with its pressure: %s.", Telling.later(w.firstBoil()), with);
    }

    /** A day with soot on the fire side, beside the same day without. */
    Drill fouled() {
        List<Pickup> furred = rig.pickups().stream()
                .map(p -> new Pickup(
                        p.name(),
                        p.kind(),
                        p.area(),
                        p.volume(),
                        p.metal(),
                        p.bore(),
                        p.length(),
                        p.elevation(),
                        Math.min(0.1, p.fouling() + SOOT),
                        p.kind() == Pickup.Kind.BOX ? 1 / (1 / p.contact() + SOOT) : p.contact()))
                .toList();
        Watch clean = stage.play(sim -> Follow.of(stage, sim, Stage.DAY).whole());
        Watch w = Follow.of(stage, stage.fork(rig.pickedUp(furred)), Stage.DAY).whole();
        double lost = clean.energy > 0 ? 1 - w.energy / clean.energy : 0;
        double area = rig.pickups().stream().mapToDouble(Pickup::area).sum();
        String what = say(
                "Soot takes %.0f %% of the heat that the water got in a day: %.1f kWh instead of %.1f kWh, and the store ends at %s instead "
                        + "of %s. Lime inside lets the metal stand %.0f K hotter at the hardest fire.",
                100 * lost,
                w.energy / 3.6e6,
                clean.energy / 3.6e6,
                Telling.degrees(w.storeMean),
                Telling.degrees(clean.storeMean),
                LIME * clean.heat / area);
        return told(Fault.FOULED, w, List.of(), what);
    }

    /** The night with nothing that stops the loop from running backwards, beside the night as the rig is. */
    Drill reverseFlow() {
        Loop l = rig.loop();
        Loop free = new Loop(l.supply(), l.back(), l.pump(), Double.NaN, l.glycol(), l.header());
        Watch w = night(stage.fork(stage.unfed().plumbed(free)));
        String what = say(
                "From the worst moment on, no more wood: until %s later the cold pickup draws %.1f kWh out of the water, up the chimney.",
                Telling.span(w.lasted), w.drawn / 3.6e6);
        if (!Double.isNaN(l.checkValve())) {
            Watch kept = night(stage.fork(stage.unfed()));
            what += say(
                    " With its check valve it is %.1f kWh: the store ends at %s instead of %s.",
                    kept.drawn / 3.6e6, Telling.degrees(kept.storeMean), Telling.degrees(w.storeMean));
        } else {
            what += say(" The store ends at %s.", Telling.degrees(w.storeMean));
        }
        return told(Fault.REVERSE_FLOW, w, List.of(), what);
    }

    private Watch night(Simulation sim) {
        return Follow.of(stage, sim, 16 * HOUR).whole();
    }

    private Drill told(Fault fault, Watch w, List<Drill.Guard> guards, String what) {
        return new Telling(rig, fault, w, stage.start(), guards).saying(what).drill();
    }
}
