package stokewell.check;

import static stokewell.check.Stage.DAY;
import static stokewell.check.Stage.HOUR;

import java.util.ArrayList;
import java.util.List;
import stokewell.loop.PickupWater;
import stokewell.network.Plant;
import stokewell.rig.Rig;
import stokewell.run.Simulation;

/** Faults of the water itself: too little of it, none, ice, and no way out for its steam. */
final class WaterFaults {

    /** How long a cold rig is followed, s. */
    private static final double COLD_SPELL = 14 * DAY;

    private final Stage stage;
    private final Rig rig;

    WaterFaults(Stage stage) {
        this.stage = stage;
        rig = stage.rig;
    }

    Drill lowWater() {
        return stage.play(sim -> {
            Watch with = follow(emptied(Stage.resisted(sim)), 8 * HOUR).out(false);
            List<Drill.Guard> guards = new ArrayList<>();
            Guards.hands(stage, guards, with, s -> emptied(Stage.resisted(s)));
            return told(Fault.LOW_WATER, with, guards);
        });
    }

    private static Simulation emptied(Simulation sim) {
        int header = Plant.state(sim.plant().header());
        sim.intervene(y -> y[header] = 0);
        return sim;
    }

    Drill dryRefilled() {
        return stage.play(sim -> {
            Plant plant = Stage.resisted(sim).plant();
            sim.intervene(y -> {
                y[Plant.state(plant.header())] = 0;
                for (int w : plant.wet()) y[Plant.state(w)] = 0;
            });
            return told(Fault.DRY_REFILLED, follow(sim, 2 * HOUR).out(false), List.of());
        });
    }

    /** Left cold until it freezes; then a fire on a coil that is plugged with ice. */
    Drill frozenRun() {
        Simulation cold = Stage.cutOff(stage.fork(stage.unfed()), true);
        Watch frozen = follow(cold, COLD_SPELL).untilFrozen();
        return stage.play(sim -> {
            Simulation lit = stage.fill(Stage.resisted(sim));
            Plant plant = lit.plant();
            lit.intervene(y -> {
                for (PickupWater p : plant.pickups()) {
                    y[Plant.state(p.water())] = 273.15;
                    y[Plant.state(p.wall())] = 273.15;
                }
            });
            Watch fire = follow(lit, 3 * HOUR).out(false);
            fire.coldSpell = frozen.lasted;
            fire.freezing = frozen.freezing;
            fire.frozenWhere = frozen.frozenWhere;
            fire.roomLowest = frozen.roomLowest;
            return told(Fault.FROZEN_RUN, fire, List.of());
        });
    }

    /** A third of the vent's bore is left; its steam presses on the water and raises where it boils. */
    Drill ventNarrow() {
        return stage.play(sim -> {
            double bore = rig.loop().header().vent() / 3;
            Watch with = follow(Stage.stopPump(sim), 8 * HOUR).through(bore).out(false);
            return told(Fault.VENT_NARROW, with, List.of());
        });
    }

    Drill ventBlocked() {
        Stage.Still still = stage.once("pump dead", Stage::stopPump);
        return told(Fault.VENT_BLOCKED, still.watch(), still.hands());
    }

    private Follow follow(Simulation sim, double length) {
        return Follow.of(stage, sim, length);
    }

    private Drill told(Fault fault, Watch w, List<Drill.Guard> guards) {
        return new Telling(rig, fault, w, stage.start(), guards).drill();
    }
}
