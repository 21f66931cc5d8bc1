package stokewell.check;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import stokewell.network.Compiler;
import stokewell.rig.Rig;
import stokewell.run.Ledger;
import stokewell.run.Moment;
import stokewell.run.Night;
import stokewell.run.NightRun;
import stokewell.run.Simulation;
import stokewell.solve.StepFailure;
import stokewell.weather.Weather;

/**
 * Runs drills: settles the rig, lives through a normal day, finds its worst moments, and lets one thing fail there.
 *
 * <p>The worst moment is searched for: the moments of least minutes to boil, most heat into water, hottest store, hottest
 * pickup and largest bed are each tried with the power cut, or where none of them boils with the loop at rest, and the one
 * that boils soonest (or, where none does, grows hottest) is where every fault begins. Drills run side by side, each in a simulation of its own; which comes first changes
 * nothing.
 */
public final class Drills {

    /**
     * The faults of a rig that show how great its fire can become and whether it freezes: no other drill can make a stop that
     * the rules do not see without it, see {@link Severity}.
     */
    public static Set<Fault> deciding(Rig rig) {
        if (rig.loop() == null) return EnumSet.noneOf(Fault.class);
        Set<Fault> faults = EnumSet.of(Fault.OVER_FIRE, Fault.DOUBLE_LOAD, Fault.RELIEF_FAILS);
        // while nobody has said how long it stands cold it is a question, however soon it freezes
        if (Severity.frozen(rig.safety(), 0) == Level.STOP) faults.add(Fault.FROZEN_RUN);
        return faults;
    }

    /** What a day and its drills came to. @param day the normal day @param drills one a fault, in the faults' order */
    public record Outcome(Night day, List<Drill> drills) {
        public Outcome {
            drills = List.copyOf(drills);
        }

        /** The drill of a fault, or null if it was not run. */
        public Drill of(Fault fault) {
            for (Drill d : drills) if (d.fault() == fault) return d;
            return null;
        }

        /** The same with the drills of these faults alone. */
        public Outcome only(Collection<Fault> faults) {
            return new Outcome(
                    day, drills.stream().filter(d -> faults.contains(d.fault())).toList());
        }
    }

    private static final double NEVER = Double.POSITIVE_INFINITY;
    /** Between looks at the trace for the worst moment, s. */
    private static final double LOOK = 120;
    /** How long a moment is tried when the worst is looked for, s. */
    private static final double TRIAL = 1.5 * Stage.HOUR;

    private final Stage stage;
    private final FlowFaults flow;
    private final FireFaults fire;
    private final WaterFaults water;
    private final QuietFaults quiet;

    private Drills(Rig rig, Weather weather) {
        stage = new Stage(rig, weather);
        flow = new FlowFaults(stage);
        fire = new FireFaults(stage);
        water = new WaterFaults(stage);
        quiet = new QuietFaults(stage);
    }

    /**
     * Runs.
     *
     * @param weather made for {@link Compiler#surfaces} of the rig
     * @param ask     the normal day: it should last a day at least
     */
    public static Outcome run(Rig rig, Weather weather, NightRun.Ask ask, Collection<Fault> faults) {
        return run(rig, weather, ask, faults, NightRun.settled(rig, weather, ask));
    }

    /** Runs from a simulation that stands settled at the start of the day; it is left as it is. */
    public static Outcome run(
            Rig rig, Weather weather, NightRun.Ask ask, Collection<Fault> faults, Simulation settled) {
        return run(rig, weather, ask, faults, settled.moment(), drill -> {});
    }

    /** Runs from a settled moment at the start of the day. */
    public static Outcome run(Rig rig, Weather weather, NightRun.Ask ask, Collection<Fault> faults, Moment settled) {
        return run(rig, weather, ask, faults, settled, drill -> {});
    }

    /** As above. @param told each drill as it ends, one at a time, in no order; what it throws ends the run */
    public static Outcome run(
            Rig rig,
            Weather weather,
            NightRun.Ask ask,
            Collection<Fault> faults,
            Moment settled,
            Consumer<Drill> told) {
        Drills drills = new Drills(rig, weather);
        NightRun.Ask fine = new NightRun.Ask(
                ask.from(), ask.until(), ask.hour(), ask.evening(), ask.limit(), LOOK, ask.tolerance());
        Simulation day = drills.stage.simulation(rig, weather);
        day.take(settled, settled.time());
        Night night = NightRun.record(day, weather, fine, "settled: the normal day");
        drills.findWorst(settled, night);
        List<Fault> asked = List.copyOf(faults.isEmpty() ? EnumSet.noneOf(Fault.class) : EnumSet.copyOf(faults));
        List<Drill> list = asked.parallelStream()
                .map(fault -> {
                    Drill drill = drills.tried(fault);
                    synchronized (drills) {
                        told.accept(drill);
                    }
                    return drill;
                })
                .toList();
        return new Outcome(night, list);
    }

    /** A moment that was tried: soonest boiling and hottest water after it. */
    private record Tried(Moment moment, double boils, double hottest) {

        boolean worseThan(Tried other) {
            if (other == null || boils < other.boils) return true;
            return boils == NEVER && other.boils == NEVER && hottest > other.hottest;
        }
    }

    private void findWorst(Moment settled, Night night) {
        Simulation day = stage.simulation(stage.rig, stage.weather);
        day.take(settled, settled.time());
        stage.begin(settled);
        List<Moment> moments = new ArrayList<>();
        for (double t : Moments.of(night)) {
            day.run(t);
            moments.add(day.moment());
        }
        if (!stage.wet()) return;
        Tried worst = worst(moments, flow::powerTrial);
        // what carries its heat without power is tried with the loop at rest
        if (worst.boils == NEVER) worst = worst(moments, flow::stoppedTrial);
        stage.begin(worst.moment);
    }

    private Tried worst(List<Moment> moments, BiFunction<Simulation, Double, Watch> trial) {
        List<Tried> tried = moments.parallelStream()
                .map(m -> {
                    Watch w = stage.play(m, sim -> trial.apply(sim, TRIAL));
                    return new Tried(m, w.firstBoil(), w.hottestWater);
                })
                .toList();
        Tried worst = null;
        for (Tried t : tried) if (t.worseThan(worst)) worst = t;
        return worst;
    }

    /** One drill that cannot be reckoned must not take the others away, and counts as not passed. */
    private Drill tried(Fault fault) {
        try {
            return drill(fault);
        } catch (StepFailure | Ledger.LedgerFault e) {
            return Drill.unreckoned(fault, e.getMessage());
        }
    }

    private Drill drill(Fault fault) {
        boolean ofTheFire = fault == Fault.OVER_FIRE
                || fault == Fault.DOUBLE_LOAD
                || fault == Fault.BACKDRAFT
                || fault == Fault.CHIMNEY_FIRE
                || fault == Fault.CAP_BLOCKED;
        if (!stage.wet() && !ofTheFire) return Drill.impossible(fault, "This rig has no water.");
        if ((fault == Fault.VENT_BLOCKED || fault == Fault.VENT_NARROW)
                && stage.rig.safety().closed()) {
            return Drill.impossible(fault, "This rig is closed and has no vent.");
        }
        if (fault == Fault.RELIEF_WEEPS
                && !(stage.rig.safety().closed() && stage.rig.safety().relief() != null)) {
            return Drill.impossible(fault, "This rig has no pressure for a relief valve to lose.");
        }
        if (fault == Fault.CHECK_STUCK && Double.isNaN(stage.rig.loop().checkValve())) {
            return Drill.impossible(fault, "This loop has no check valve.");
        }
        boolean ofThePump = fault == Fault.PUMP_DEAD
                || fault == Fault.SENSOR_OUT
                || fault == Fault.STUCK_ON
                || fault == Fault.STUCK_OFF;
        if (ofThePump && !stage.pumped()) {
            return Drill.impossible(fault, "This rig has no pump: it circulates by itself.");
        }
        return switch (fault) {
            case POWER_OUT -> flow.powerOut();
            case PUMP_DEAD -> flow.pumpDead();
            case AIR_LOCK, VALVE_SHUT -> flow.stopped(fault);
            case CHECK_STUCK -> flow.checkStuck();
            case FAN_DEAD -> flow.fanDead();
            case SENSOR_OUT -> flow.sensorOut();
            case STUCK_ON -> flow.stuckOn();
            case STUCK_OFF -> flow.stuckOff();
            case STORE_FULL -> fire.storeFull();
            case OVER_FIRE -> fire.overFire();
            case DOUBLE_LOAD -> fire.doubleLoad();
            case LOW_WATER -> water.lowWater();
            case DRY_REFILLED -> water.dryRefilled();
            case FROZEN_RUN -> water.frozenRun();
            case LEAK -> quiet.leak();
            case VENT_NARROW -> water.ventNarrow();
            case VENT_BLOCKED -> water.ventBlocked();
            case RELIEF_FAILS -> fire.reliefFails();
            case RELIEF_WEEPS -> quiet.reliefWeeps();
            case FOULED -> quiet.fouled();
            case REVERSE_FLOW -> quiet.reverseFlow();
            case CHIMNEY_FIRE -> fire.chimneyFire();
            case CAP_BLOCKED -> fire.capBlocked();
            case BACKDRAFT -> fire.backdraft();
        };
    }
}
