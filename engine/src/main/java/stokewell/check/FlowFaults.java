package stokewell.check;

import static stokewell.check.Stage.DAY;
import static stokewell.check.Stage.HOUR;
import static stokewell.check.Stage.MINUTE;
import static stokewell.check.Stage.cutOff;
import static stokewell.check.Stage.resisted;
import static stokewell.check.Stage.stopPump;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import stokewell.loop.Circuit;
import stokewell.network.Driven;
import stokewell.rig.Contents;
import stokewell.rig.Emitter;
import stokewell.rig.Rig;
import stokewell.rig.Safety;
import stokewell.rig.Switch;
import stokewell.run.Simulation;

/** Faults by which heat is no longer carried away: power, pump, fan, air, valves, sensors and thermostats. */
final class FlowFaults {

    private static final double LONG = 8 * HOUR;
    /** Flow that counts as circulation by warmth, kg/s. */
    private static final double CREEPS = 1e-3;

    private final Stage stage;
    private final Rig rig;

    FlowFaults(Stage stage) {
        this.stage = stage;
        rig = stage.rig;
    }

    Drill powerOut() {
        Simulation sim = stage.fork(stage.unfed());
        Watch with = powerOut(sim, LONG, true);
        List<Drill.Guard> guards = new ArrayList<>();
        if (battery() > 0) {
            String name = "battery for the pump, " + Telling.span(battery());
            guards.add(Guards.of(name, powerOut(stage.again(sim), LONG, false), with));
        }
        if (with.siphon > CREEPS) {
            Simulation stopped = cutOff(resisted(stage.again(sim)), true);
            guards.add(Guards.of("gravity circulation", follow(stopped, LONG).out(true), with));
        }
        for (Emitter e : rig.emitters()) {
            Emitter.Circuit c = Contents.circuit(e);
            if (c == null || c.pump() != null) continue;
            Simulation without = stage.again(sim);
            circuit(without, e).resist(Stage.STOPPED);
            guards.add(Guards.of(
                    e.name() + " by gravity",
                    follow(cutOff(without, true), LONG).out(true),
                    with));
        }
        if (Follow.passive(rig.safety()) != null) {
            Simulation without = cutOff(stage.again(sim), true);
            Watch hot = Follow.undischarged(stage, without, LONG).out(true);
            guards.add(Guards.of("thermal discharge valve", hot, with));
        }
        Guards.hands(stage, guards, with, s -> cutOff(s, true));
        return told(Fault.POWER_OUT, with, guards);
    }

    /** How long a battery runs the pump, s; 0 without one. */
    private double battery() {
        Safety.Battery b = rig.safety().battery();
        return b == null || !stage.pumped() ? 0 : b.gives() / rig.loop().pump().power();
    }

    private Watch powerOut(Simulation sim, double length, boolean battery) {
        if (!battery || battery() <= 0) return follow(cutOff(sim, true), length).out(true);
        Stage.stopFans(sim);
        Follow follow = follow(sim, length).until(Math.min(length, battery()));
        stopPump(sim);
        return follow.out(true);
    }

    /** The power cut at another moment, followed for a while: how the worst moment is looked for. */
    Watch powerTrial(Simulation sim, double length) {
        return powerOut(sim, length, true);
    }

    /** The same with the loop at rest. */
    Watch stoppedTrial(Simulation sim, double length) {
        return follow(resisted(sim), length).out(true);
    }

    Drill pumpDead() {
        Stage.Still still = stage.once("pump dead", Stage::stopPump);
        Watch with = still.watch();
        List<Drill.Guard> guards = new ArrayList<>();
        boolean limited = rig.switches().stream().anyMatch(s -> !s.drives().equals("pump") && s.highLimit() != null);
        if (limited) {
            Rig without = rig.switched(Rewire.others(rig.switches(), Rewire::unlimited));
            Watch hot = follow(stopPump(stage.fork(without)), LONG).out(false);
            guards.add(Guards.of("high limit that starts the fan", hot, with));
        }
        if (with.siphon > CREEPS) {
            Watch hot = stage.play(sim -> follow(resisted(stopPump(sim)), LONG).out(false));
            guards.add(Guards.of("gravity circulation", hot, with));
        }
        guards.addAll(still.hands());
        return told(Fault.PUMP_DEAD, with, guards);
    }

    /** Air or a valve: nothing moves through the loop. */
    Drill stopped(Fault fault) {
        Stage.Still still = stage.once("loop at rest", Stage::resisted);
        return told(fault, still.watch(), still.hands());
    }

    /** A check valve that nobody has tried: in a power cut the way by gravity is shut too. */
    Drill checkStuck() {
        Simulation sim = stage.fork(stage.unfed());
        Watch with = follow(cutOff(resisted(sim), true), LONG).out(true);
        List<Drill.Guard> guards = new ArrayList<>();
        Guards.hands(stage, guards, with, s -> cutOff(resisted(s), true));
        return told(Fault.CHECK_STUCK, with, guards);
    }

    Drill fanDead() {
        if (rig.emitters().isEmpty()) return Drill.impossible(Fault.FAN_DEAD, "This rig has no fan.");
        return stage.play(sim -> {
            for (Emitter e : rig.emitters()) sim.force(e.name(), false);
            return told(Fault.FAN_DEAD, follow(sim, DAY).whole(), List.of());
        });
    }

    Drill stuckOn() {
        return stage.play(sim -> {
            sim.force("pump", true);
            return told(Fault.STUCK_ON, follow(sim, 16 * HOUR).whole(), List.of());
        });
    }

    Drill sensorOut() {
        return switched(Fault.SENSOR_OUT, Rewire::sensorOut);
    }

    Drill stuckOff() {
        return switched(Fault.STUCK_OFF, Rewire::stuckOff);
    }

    /** A fault of the pump's own switch; what its high limit is worth is told beside it. */
    private Drill switched(Fault fault, UnaryOperator<Switch> rewire) {
        List<Switch> list = Rewire.pump(rig.switches(), rewire);
        if (list.equals(rig.switches())) return Drill.impossible(fault, "No thermostat drives the pump.");
        boolean limit = list.stream().anyMatch(s -> s.drives().equals("pump") && s.highLimit() != null);
        Simulation sim = stage.fork(rig.switched(list));
        Follow follow = follow(sim, LONG);
        // the sensor forgets slowly; once the pump stands for good, the loop stands with it
        for (int k = 1; k <= 40 && !limit && sim.plant().loop().pumping(); k++) follow.until(0.5 * k * MINUTE);
        if (!limit && !sim.plant().loop().pumping()) stopPump(sim);
        Watch with = follow.out(false);
        List<Drill.Guard> guards = new ArrayList<>();
        if (limit) {
            Simulation bare = stage.fork(rig.switched(Rewire.pump(list, Rewire::unlimited)));
            guards.add(Guards.of("high limit of the pump", follow(bare, LONG).out(false), with));
        }
        return told(fault, with, guards);
    }

    private static Circuit circuit(Simulation sim, Emitter emitter) {
        for (Driven d : sim.plant().driven()) if (d.name().equals(emitter.name())) return d.circuit();
        throw new IllegalStateException("no circuit of " + emitter.name());
    }

    private Follow follow(Simulation sim, double length) {
        return Follow.of(stage, sim, length);
    }

    private Drill told(Fault fault, Watch w, List<Drill.Guard> guards) {
        return new Telling(rig, fault, w, stage.start(), guards).drill();
    }
}
