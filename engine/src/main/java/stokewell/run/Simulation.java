package stokewell.run;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import stokewell.balance.Wiring;
import stokewell.control.Latch;
import stokewell.loop.Circuit;
import stokewell.network.Network;
import stokewell.network.Plant;
import stokewell.rig.Habit;
import stokewell.solve.Counters;
import stokewell.solve.Integrator;
import stokewell.solve.Interpolant;
import stokewell.solve.Rosenbrock;
import stokewell.solve.State;
import stokewell.solve.StepFailure;
import stokewell.solve.Stepping;
import stokewell.solve.Tolerances;

/**
 * A compiled rig in motion: the state, the person at the stove, the latches, and the clock. Lands on everything that happens
 * by the clock, stops at every switch, and starts again from there.
 *
 * <p>Not thread-safe. A tick of the clock at the very start of a stretch is carried out, one at its very end is left to the
 * next stretch, so stretches may follow each other without doing anything twice.
 */
public final class Simulation {

    /** Error allowed in a temperature in one step, K. Holds the examples to 0.05 K, not every rig: docs/how-exact.md. */
    public static final double TOLERANCE = 2e-3;

    /** A switch read off the interpolant is as exact as one stepped up to: docs/speed.md. */
    private static final Stepping STEPPING = Stepping.standard().withCut(Stepping.Cut.INTERPOLATE);

    /** First step after wood is laid on, s: the fire stands still at first and then catches. */
    private static final double AFTER_LOAD = 5;

    /** First step after the fire is banked, s. */
    private static final double AFTER_BANKING = 9;

    private final Plant plant;
    private final Network network;
    private final Integrator integrator;
    private final Stoker stoker;
    private final DayClock clock;
    private final double startOfDay;
    private final List<Latch> latches;
    private final Drives drives;
    private final Books books;
    private final Filling filling;

    private State state;
    private List<Event> events;
    private Recorder recorder;
    private BiConsumer<Interpolant, double[]> watcher;
    private double doorsOpen = Double.NaN;
    private double gainsNow = Double.NaN;
    private double airNow = Double.NaN;

    /**
     * @param secondOfDay of the weather's start, t = 0
     * @param tolerance   error allowed in a temperature in one step, K
     */
    public Simulation(Plant plant, double secondOfDay, double tolerance) {
        this.plant = plant;
        network = plant.network();
        stoker = new Stoker(plant);
        clock = new DayClock(plant);
        startOfDay = secondOfDay;
        latches = plant.latches();
        drives = new Drives(plant.driven());
        books = new Books(plant);
        filling = new Filling(plant);
        int count = latches.size() + 2;
        network.watch(new Network.Switching() {
            @Override
            public int count() {
                return count;
            }

            @Override
            public void values(double t, double[] x, double[] out) {
                for (int i = 0; i < latches.size(); i++) out[i] = latches.get(i).toChange(x);
                out[count - 2] = stoker.ruleCalls(x, t, secondOfDay(t));
                out[count - 1] = stoker.coalsOnly(x);
            }
        });
        integrator = new Integrator(network, Tolerances.absolute(tolerance), Rosenbrock.RODAS4, STEPPING);
        state = new State(0, network.start(), new double[network.sums()]);
        events = new ArrayList<>();
    }

    /** The second of the day at time t. */
    double secondOfDay(double t) {
        double s = (startOfDay + t) % DayClock.DAY;
        return s < 0 ? s + DayClock.DAY : s;
    }

    /** Places the run at a time with these states; latches take what their readings say. */
    void place(double t, double[] y) {
        state = new State(t, y.clone(), new double[network.sums()]);
        double[] x = network.columns(t, state.y);
        for (int[] sensor : plant.sensors()) {
            state.y[sensor[0] - Wiring.OUTSIDE] = 0.5 * (x[sensor[1]] + x[sensor[2]]);
        }
        x = network.columns(t, state.y);
        for (Latch latch : latches) latch.settle(x);
        stoker.setAir(t, secondOfDay(t));
        actuate(t);
        start();
        begin();
    }

    /** Moves the clock back without touching the rig: a settled day begins again. */
    void rewind(double t) {
        stoker.shift(t - state.t);
        state.t = t;
        filling.full(state);
        // a filled loop has its pressure back
        if (plant.sealed() != null) start();
        begin();
    }

    /** What this simulation has come to. */
    public Moment moment() {
        return new Moment(state, latches, stoker.memory());
    }

    /** Takes over everything another simulation has come to; see {@link #take(Moment, double)}. */
    public void take(Simulation other, double t) {
        take(other.moment(), t);
    }

    /**
     * Takes over a moment of another simulation. Its rig must be the same in its parts; settings, habit and places of sensors
     * may differ, and latches then take what their readings say.
     */
    public void take(Moment other, double t) {
        state = new State(t, other.states(), new double[network.sums()]);
        drives.free();
        for (int i = 0; i < latches.size(); i++) latches.get(i).set(other.closed(i));
        filling.full(state);
        stoker.take(other.stoker(), t - other.time());
        plant.exchange().doors(clock.doorsOpen(secondOfDay(t)));
        plant.people().power(clock.gains(secondOfDay(t)));
        stoker.setAir(t, secondOfDay(t));
        double[] x = network.columns(t, state.y);
        for (Latch latch : latches) latch.settle(x);
        actuate(t);
        start();
        begin();
    }

    /** Finds every unknown that must balance at once, after the states were given anew. */
    private void start() {
        findFlows();
        integrator.restart(state);
    }

    /**
     * Goes on after a switch or a banked fire: pumps change the flows at once; nothing else jumps, so only they are found anew.
     */
    private void goOn(double longest) {
        findFlows();
        integrator.forget(longest);
    }

    /** Goes on after wood was laid on: kindling changes the fire's gas at once too. */
    private void goOnLoaded() {
        start();
        integrator.forget(AFTER_LOAD);
    }

    private void findFlows() {
        double[] x = network.columns(state.t, state.y);
        for (Circuit circuit : plant.circuits()) {
            state.y[circuit.flowState() - Wiring.OUTSIDE] = circuit.standingFlow(x);
        }
    }

    /** Fills the loop up as somebody does who looks once a week. Returns the water that it took, kg. */
    double fillUp() {
        double water = filling.weekly(state);
        if (water > 0.1) {
            events.add(new Event.ToppedUp(state.t, water));
            integrator.forget(AFTER_LOAD);
        }
        return water;
    }

    /** Closes the books so far and starts new ones. */
    void freshBooks() {
        ledger();
        begin();
    }

    /** Replaces the heat held by the rig, keeping fuel, latches and clock. */
    void replace(double[] y) {
        System.arraycopy(y, 0, state.y, 0, y.length);
        double[] x = network.columns(state.t, state.y);
        for (Latch latch : latches) latch.settle(x);
        actuate(state.t);
        start();
        begin();
    }

    /** Starts a new ledger here. */
    private void begin() {
        Arrays.fill(state.sums, 0);
        books.open(state);
        drives.begin(state.t);
        events = new ArrayList<>();
        recorder = null;
    }

    /** Records from here on. */
    Recorder record(double until, double step) {
        recorder = new Recorder(plant, state.t, until, step);
        recorder.begin(state.sums);
        for (int i = 0; i < drives.count(); i++) recorder.running(i, drives.running(i));
        return recorder;
    }

    /** Holds something driven running or still, whatever its switch calls for, until the simulation takes over another. */
    public void force(String what, boolean on) {
        drives.force(what, on);
        actuate(state.t);
        start();
    }

    /** Puts a hand on the states: wood added, water gone. The books no longer close across it. */
    public void intervene(Consumer<double[]> hand) {
        hand.accept(state.y);
        actuate(state.t);
        start();
        begin();
    }

    /** Shows every accepted step to a watcher, with the states at its end. */
    public void watch(BiConsumer<Interpolant, double[]> other) {
        watcher = other;
    }

    /** Runs to a time. */
    public void run(double until) {
        boolean tick = true;
        while (state.t < until - 1e-6) {
            double now = secondOfDay(state.t);
            if (tick) tick(now);
            double next = Math.min(until, state.t + clock.untilNext(now));
            next = Math.min(next, stoker.looksAgain(state.t));
            int fired = advance(next);
            tick = fired < 0;
            if (fired >= 0) happen(fired);
        }
        drives.count(state.t);
    }

    /**
     * Goes on to a time or a switch. Where bubbles and a check valve make the flow change a thousandfold within a hundredth
     * of a kelvin, a step may leave it off its balance of pressures further than the next one can mend: then the flow is
     * found anew and the run goes on from there. A failure after no further step is a failure.
     */
    private int advance(double until) {
        double failed = Double.NEGATIVE_INFINITY;
        while (true) {
            try {
                return integrator.advance(state, until, this::stepped);
            } catch (StepFailure failure) {
                if (state.t <= failed) throw failure;
                failed = state.t;
                start();
                integrator.anew();
            }
        }
    }

    private void stepped(Interpolant between) {
        if (recorder != null) recorder.step(between, state.y);
        if (watcher != null) watcher.accept(between, state.y);
    }

    /** What the clock brings; the integrator starts anew only where something has changed. */
    private void tick(double now) {
        double doors = clock.doorsOpen(now);
        double gains = clock.gains(now);
        boolean changed = doors != doorsOpen || gains != gainsNow;
        boolean loaded = false;
        doorsOpen = doors;
        gainsNow = gains;
        plant.exchange().doors(doors);
        plant.people().power(gains);
        if (plant.rig().habit() instanceof Habit.Clock c) {
            for (Habit.Load load : c.loads()) {
                double apart = Math.abs(load.at() - now);
                if (Math.min(apart, DayClock.DAY - apart) < 1e-3) {
                    load(load.mass());
                    loaded = true;
                }
            }
        }
        double open = stoker.setAir(state.t, now);
        changed |= Double.compare(open, airNow) != 0;
        airNow = open;
        changed |= actuate(state.t);
        if (loaded) goOnLoaded();
        else if (changed) goOn(Double.POSITIVE_INFINITY);
    }

    /** Lays on wood that was noted, whatever the habit says and the firebox is reckoned to hold. */
    void lay(double mass) {
        lay(network.columns(state.t, state.y), mass);
        goOnLoaded();
    }

    private void lay(double[] x, double mass) {
        books.wood(mass, stoker.load(state.y, x, state.t, mass));
        stoker.setAir(state.t, secondOfDay(state.t));
        events.add(new Event.Loaded(state.t, mass));
    }

    private void load(double wanted) {
        double[] x = network.columns(state.t, state.y);
        if (stoker.leavesOut(x, wanted, state.t, events::add)) return;
        if (stoker.drowned(x)) {
            double bed = plant.fire().bed(x) - x[plant.raw()];
            books.raked(stoker.rake(state.y, x));
            events.add(new Event.RakedOut(state.t, bed));
            x = network.columns(state.t, state.y);
        }
        lay(x, Math.min(wanted, stoker.fits(x)));
    }

    private void happen(int fired) {
        if (fired < latches.size()) {
            latches.get(fired).change();
            actuate(state.t);
            goOn(Double.POSITIVE_INFINITY);
        } else if (fired == latches.size()) {
            load(((Habit.Rule) plant.rig().habit()).mass());
            goOnLoaded();
        } else {
            stoker.bank();
            events.add(new Event.AirSet(state.t, stoker.setAir(state.t, secondOfDay(state.t))));
            goOn(AFTER_BANKING);
        }
    }

    /** Runs and stops what the latches and hours say; true if anything changed. */
    private boolean actuate(double t) {
        return drives.actuate(t, secondOfDay(t), (i, on) -> {
            events.add(new Event.Switched(t, plant.driven().get(i).name(), on));
            if (recorder != null) recorder.running(i, on);
        });
    }

    /** The books since the run was placed, checked. */
    public Ledger ledger() {
        return books.ledger(state);
    }

    /** Time now, s. */
    public double time() {
        return state.t;
    }

    /** States now; not to be changed. */
    public double[] states() {
        return state.y;
    }

    /** Columns now. */
    public double[] columns() {
        return network.columns(state.t, state.y);
    }

    /** The plant in motion. */
    public Plant plant() {
        return plant;
    }

    List<Event> events() {
        return events;
    }

    double wood() {
        return books.wood();
    }

    int loads() {
        return books.loads();
    }

    int starts(int driven) {
        return drives.starts(driven);
    }

    double runSeconds(int driven) {
        return drives.seconds(driven);
    }

    /** What the integrator has done so far. */
    public Counters counters() {
        return integrator.counters();
    }
}
