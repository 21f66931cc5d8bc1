package stokewell.run;

import stokewell.balance.Wiring;
import stokewell.control.Latch;
import stokewell.loop.Circuit;
import stokewell.network.Driven;
import stokewell.network.Network;
import stokewell.network.Plant;
import stokewell.rig.Habit;
import stokewell.weather.Weather;

/**
 * The run of {@link Simulation} under another integrator: the same clock, person, latches and loads, so that two
 * integrators can be compared on the same rig. It stands in this package because the clock and the person do. It keeps
 * no ledger and records nothing but two temperatures at even times.
 */
public final class Other {

    /** An integrator from outside. */
    public interface Solver {

        /** Starts anew at t with y, all unknowns, the algebraic ones as good as the caller knows them. */
        void restart(double t, double[] y);

        /**
         * Goes on to a time, or to the first switch before it, never past stop.
         *
         * @return the switch, or -1
         */
        int advance(double until, double stop);

        double time();

        /** Fills in all unknowns. */
        void state(double[] y);
    }

    private final Plant plant;
    private final Network network;
    private final Stoker stoker;
    private final DayClock clock;
    private final double startOfDay;
    private final boolean[] running;
    private final double[] y;
    private final double[] values;
    private Solver solver;
    private double doorsOpen = Double.NaN;
    private double gainsNow = Double.NaN;
    private double airNow = Double.NaN;
    private long restarts;
    private long switched;

    public Other(Plant plant, double secondOfDay) {
        this.plant = plant;
        network = plant.network();
        stoker = new Stoker(plant);
        clock = new DayClock(plant);
        startOfDay = secondOfDay;
        running = new boolean[plant.driven().size()];
        int latches = plant.latches().size();
        int count = latches + 2;
        network.watch(new Network.Switching() {
            @Override
            public int count() {
                return count;
            }

            @Override
            public void values(double t, double[] x, double[] out) {
                for (int i = 0; i < latches; i++)
                    out[i] = plant.latches().get(i).toChange(x);
                out[count - 2] = stoker.ruleCalls(x, t, secondOfDay(t));
                out[count - 1] = stoker.coalsOnly(x);
            }
        });
        y = network.start();
        values = new double[count];
    }

    /** Sets a simulation of the engine down at a time with these states, as this one is by {@link #place}. */
    public static void place(Simulation sim, double t, double[] states) {
        sim.place(t, states);
    }

    /** Runs a simulation of the engine and samples it. */
    public static Trace run(Simulation sim, double until, double step) {
        Recorder recorder = sim.record(until, step);
        sim.run(until);
        return recorder.trace();
    }

    /** Runs a simulation of the engine, recording nothing. */
    public static void run(Simulation sim, double until) {
        sim.run(until);
    }

    /** A simulation that stands where a settled one stands; the settled one may be used again. */
    public static Simulation copy(Simulation settled, Plant plant, double secondOfDay, double tolerance) {
        Simulation sim = new Simulation(plant, secondOfDay, tolerance);
        sim.take(settled, settled.time());
        return sim;
    }

    /** The night from where a simulation stands. */
    public static Night night(Simulation sim, Weather weather, NightRun.Ask ask) {
        return NightRun.record(sim, weather, ask, "");
    }

    private double secondOfDay(double t) {
        double s = (startOfDay + t) % DayClock.DAY;
        return s < 0 ? s + DayClock.DAY : s;
    }

    /** Sets it down. */
    public void place(Solver with, double t, double[] states) {
        solver = with;
        System.arraycopy(states, 0, y, 0, y.length);
        double[] x = network.columns(t, y);
        for (int[] sensor : plant.sensors()) {
            y[sensor[0] - Wiring.OUTSIDE] = 0.5 * (x[sensor[1]] + x[sensor[2]]);
        }
        x = network.columns(t, y);
        for (Latch latch : plant.latches()) latch.settle(x);
        stoker.setAir(t, secondOfDay(t));
        actuate(t);
        restart(t);
    }

    /** Runs; fills the room's and the store's mean temperature from the first sample on. */
    public void run(double from, double until, double step, double[] room, double[] store) {
        double t = from;
        boolean tick = true;
        int next = 0;
        while (true) {
            if (next < room.length && t >= from + next * step - 1e-6) {
                sample(t, next, room, store);
                next++;
            }
            if (t >= until - 1e-6) return;
            if (tick) tick(t);
            double stop = Math.min(until, t + clock.untilNext(secondOfDay(t)));
            double pause = stoker.looksAgain(t);
            if (pause > t + 1e-6) stop = Math.min(stop, pause);
            int fired = -1;
            while (t < stop - 1e-6) {
                double goal = Math.min(stop, from + next * step);
                if (goal <= t + 1e-6) goal = stop;
                fired = solver.advance(goal, stop);
                t = solver.time();
                if (fired >= 0) break;
                if (next < room.length && t < stop - 1e-6) {
                    sample(t, next, room, store);
                    next++;
                }
            }
            solver.state(y);
            tick = fired < 0;
            if (fired >= 0) {
                happen(t, fired);
                settleSwitches(t);
                restart(t);
            }
        }
    }

    private void settleSwitches(double t) {
        for (int turn = 0; turn < 8; turn++) {
            network.switching(t, y, values);
            int standing = -1;
            for (int i = values.length - 1; i >= 0; i--) if (values[i] >= 0) standing = i;
            if (standing < 0) return;
            happen(t, standing);
        }
    }

    private void sample(double t, int at, double[] room, double[] store) {
        solver.state(y);
        double[] x = network.columns(t, y);
        room[at] = x[plant.room()];
        store[at] = plant.storeMean(x);
    }

    private void restart(double t) {
        double[] x = network.columns(t, y);
        for (Circuit circuit : plant.circuits()) {
            y[circuit.flowState() - Wiring.OUTSIDE] = circuit.standingFlow(x);
        }
        solver.restart(t, y);
        restarts++;
    }

    private void tick(double t) {
        double now = secondOfDay(t);
        double doors = clock.doorsOpen(now);
        double gains = clock.gains(now);
        boolean changed = doors != doorsOpen || gains != gainsNow;
        doorsOpen = doors;
        gainsNow = gains;
        plant.exchange().doors(doors);
        plant.people().power(gains);
        if (plant.rig().habit() instanceof Habit.Clock c) {
            for (Habit.Load load : c.loads()) {
                double apart = Math.abs(load.at() - now);
                if (Math.min(apart, DayClock.DAY - apart) < 1e-3) {
                    load(t, load.mass());
                    changed = true;
                }
            }
        }
        double open = stoker.setAir(t, now);
        changed |= Double.compare(open, airNow) != 0;
        airNow = open;
        changed |= actuate(t);
        network.switching(t, y, values);
        for (double v : values) changed |= v >= 0;
        if (!changed) return;
        settleSwitches(t);
        restart(t);
    }

    private void load(double t, double wanted) {
        double[] x = network.columns(t, y);
        if (stoker.leavesOut(x, wanted, t, event -> {})) return;
        if (stoker.drowned(x)) {
            stoker.rake(y, x);
            x = network.columns(t, y);
        }
        stoker.load(y, x, t, Math.min(wanted, stoker.fits(x)));
        stoker.setAir(t, secondOfDay(t));
    }

    private void happen(double t, int fired) {
        switched++;
        int latches = plant.latches().size();
        if (fired < latches) {
            plant.latches().get(fired).change();
            actuate(t);
        } else if (fired == latches) {
            load(t, ((Habit.Rule) plant.rig().habit()).mass());
        } else {
            stoker.bank();
            stoker.setAir(t, secondOfDay(t));
        }
    }

    private boolean actuate(double t) {
        double now = secondOfDay(t);
        boolean changed = false;
        for (int i = 0; i < running.length; i++) {
            Driven d = plant.driven().get(i);
            boolean on = d.called(now);
            d.run(on);
            if (on == running[i]) continue;
            changed = true;
            running[i] = on;
        }
        return changed;
    }

    /** How often the solver was started anew. */
    public long restarts() {
        return restarts;
    }

    /** How many switches were found. */
    public long switched() {
        return switched;
    }
}
