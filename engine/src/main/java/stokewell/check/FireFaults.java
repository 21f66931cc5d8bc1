package stokewell.check;

import static stokewell.check.Findings.say;
import static stokewell.check.Stage.HOUR;

import java.time.LocalDate;
import java.util.List;
import stokewell.network.Compiler;
import stokewell.network.Plant;
import stokewell.rig.Flue;
import stokewell.rig.Rig;
import stokewell.run.Simulation;
import stokewell.weather.DayRange;
import stokewell.weather.Site;
import stokewell.weather.Weather;

/** Faults of the fire itself: too much of it, and smoke that does not leave. */
final class FireFaults {

    private static final double WARM = 293.15;
    private static final double COALS = 0.3;
    /** What ice or a nest leaves of the cap. */
    private static final double LEFT = 0.25;

    private final Stage stage;
    private final Rig rig;

    FireFaults(Stage stage) {
        this.stage = stage;
        rig = stage.rig;
    }

    Drill overFire() {
        return told(
                Fault.OVER_FIRE,
                Follow.of(stage, stage.greatestFire(), 6 * HOUR).out(false),
                List.of());
    }

    Drill doubleLoad() {
        return stage.play(sim -> {
            double mass = stage.load();
            int raw = Plant.state(sim.plant().raw());
            sim.intervene(y -> y[raw] += mass);
            return told(Fault.DOUBLE_LOAD, Follow.of(stage, sim, 8 * HOUR).out(false), List.of());
        });
    }

    /** The greatest fire with the pump stopped: what vent and relief valve have to pass. */
    Drill reliefFails() {
        Simulation sim = Stage.stopPump(stage.greatestFire());
        Follow follow = Follow.of(stage, sim, 6 * HOUR);
        boolean open = stage.wet() && !rig.safety().closed();
        if (open) follow.through(rig.loop().header().vent());
        return told(Fault.RELIEF_FAILS, follow.out(false), List.of());
    }

    /** The store hot to its bottom: what the fire then brings has nowhere to go. */
    Drill storeFull() {
        return stage.play(sim -> {
            int[] layers = sim.plant().store();
            sim.intervene(y -> {
                double skip = rig.habit().skipAbove();
                double top = Math.max(
                        y[Plant.state(layers[0])], Double.isNaN(skip) ? 0 : Math.min(skip, stage.boiling() - 3));
                for (int layer : layers) y[Plant.state(layer)] = Math.max(top, y[Plant.state(layer)]);
            });
            stage.fill(sim);
            return told(Fault.STORE_FULL, Follow.of(stage, sim, 8 * HOUR).out(false), List.of());
        });
    }

    /** Tar burns in the chimney: its walls are held at the gas of the chimney test, and the fire draws on them. */
    Drill chimneyFire() {
        return stage.play(sim -> {
            Plant plant = sim.plant();
            Follow follow = Follow.of(stage, sim, 8 * HOUR);
            for (double t = 0; t < ChimneyFire.LASTS; t += 30) {
                sim.intervene(y -> {
                    for (int piece : plant.chimney()) y[Plant.state(piece)] = ChimneyFire.GAS;
                });
                follow.until(t + 30);
            }
            return told(Fault.CHIMNEY_FIRE, follow.out(false), List.of());
        });
    }

    /** What a cap of which a quarter is left costs: fire behind a shut door, and what the chimney takes at an open one. */
    Drill capBlocked() {
        Flue clear = rig.flue();
        double added = 1 / (LEFT * LEFT) - 1;
        Flue iced = new Flue(
                clear.diameter(),
                clear.connector(),
                clear.height(),
                clear.outdoors(),
                clear.insulation(),
                clear.mass(),
                Math.min(60, clear.lossFactors() + added));
        Watch with = Follow.of(stage, stage.fork(rig.flued(iced)), 8 * HOUR).out(false);
        double friction = 0.04 * (clear.height() + clear.connector()) / clear.diameter();
        double takes = Math.sqrt((clear.lossFactors() + friction) / (iced.lossFactors() + friction));
        String what = say(
                "At an opened door the chimney takes %.0f %% of the smoke that it takes when clear; the rest rolls into the room. Behind "
                        + "the shut door the stove comes to %s, and a slow fire makes tar and carbon monoxide.",
                100 * takes, Telling.degrees(with.stove));
        return new Telling(rig, Fault.CAP_BLOCKED, with, stage.start(), List.of())
                .saying(what)
                .drill();
    }

    Drill backdraft() {
        Site site = Compiler.site(rig);
        Weather mild = Weather.day(
                new DayRange(WARM - 1, WARM + 3), 0, 0, site, LocalDate.of(2023, 5, 1), Compiler.surfaces(rig));
        Simulation sim = stage.fork(stage.unfed(), mild);
        Plant plant = sim.plant();
        sim.intervene(y -> {
            y[Plant.state(plant.raw())] = 0;
            y[Plant.state(plant.fuelWater())] = 0;
            y[Plant.state(plant.volatiles())] = 0;
            y[Plant.state(plant.carbon())] = Math.max(COALS, y[Plant.state(plant.carbon())]);
            for (int piece : plant.chimney()) y[Plant.state(piece)] = WARM - 2;
            y[Plant.state(plant.body())] = Math.min(y[Plant.state(plant.body())], WARM + 30);
        });
        return told(Fault.BACKDRAFT, Follow.of(stage, sim, HOUR).out(true), List.of());
    }

    private Drill told(Fault fault, Watch w, List<Drill.Guard> guards) {
        return new Telling(rig, fault, w, stage.start(), guards).drill();
    }
}
