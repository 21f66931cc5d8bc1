package stokewell.run;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import stokewell.balance.Wiring;
import stokewell.network.Compiler;
import stokewell.network.Plant;
import stokewell.rig.Habit;
import stokewell.rig.Rig;
import stokewell.solve.Interpolant;
import stokewell.weather.Weather;

/**
 * Runs a rig through days that were: the loads as they were noted, the weather as it was measured, from the temperatures
 * that the sensors began with. What a model says that the sensors should have shown.
 */
public final class Replay {

    /** Wood laid on at a time of the run's clock, s; mass in kg as it went in. */
    public record Load(double time, double mass) {}

    /**
     * What a sensor would read: a weighted sum of columns, K.
     *
     * @param columns as in {@link stokewell.network.Network#columns}
     */
    public record Probe(String name, int[] columns, double[] weights) {

        double read(double[] x) {
            double sum = 0;
            for (int i = 0; i < columns.length; i++) sum += weights[i] * x[columns[i]];
            return sum;
        }
    }

    /**
     * A moment at which the rig is set to what its sensors say, so that errors do not pile up from day to day: the air and
     * what stands in it, and the store, whose layers are shifted along a straight line between the two sensors.
     *
     * @param room   K; NaN to leave it
     * @param top    K at layer {@code topLayer}; NaN to leave the store
     * @param bottom K at layer {@code bottomLayer}
     */
    public record Anchor(double time, double room, double top, int topLayer, double bottom, int bottomLayer) {

        void set(Plant plant, double[] y) {
            if (!Double.isNaN(room)) {
                double off = room - y[Plant.state(plant.room())];
                y[Plant.state(plant.room())] += off;
                y[Plant.state(plant.contents())] += off;
            }
            if (Double.isNaN(top) || plant.store().length == 0) return;
            double high = top - y[Plant.state(plant.store()[topLayer])];
            double low = bottom - y[Plant.state(plant.store()[bottomLayer])];
            for (int i = 0; i < plant.store().length; i++) {
                double along = topLayer == bottomLayer ? 0 : (i - topLayer) / (double) (bottomLayer - topLayer);
                double share = Math.max(0, Math.min(1, along));
                y[Plant.state(plant.store()[i])] += high + share * (low - high);
            }
        }
    }

    /**
     * What was read on the way, and the books.
     *
     * @param read   for every probe its readings, K
     * @param ledger since the last anchor or turn, or since the start
     */
    public record Played(double[][] read, Ledger ledger) {}

    /**
     * A rig that is another from a time on: a part fouled, a jacket taken off.
     *
     * @param rig the same in its parts
     */
    public record Turn(double time, Rig rig) {}

    private final Rig rig;
    private final Weather weather;
    private final double tolerance;
    private final boolean eased;
    private Simulation sim;

    private Replay(Rig rig, Weather weather, double tolerance, boolean eased, Simulation sim) {
        this.rig = rig;
        this.weather = weather;
        this.tolerance = tolerance;
        this.eased = eased;
        this.sim = sim;
    }

    /**
     * A rig that has settled to a mean day and its habit: what its walls and its ground remember when the readings begin.
     * Not to be run; many replays may begin from it at once.
     *
     * @param mean  a day that repeats, beginning at the hour at which the readings begin
     * @param eased whether the fans' thermostats are taken on the mean of their cycles
     */
    public static Simulation settled(Rig rig, Weather mean, boolean eased) {
        Simulation still = new Simulation(
                compiled(rig, mean, eased), mean.start().toLocalTime().toSecondOfDay(), 10 * Simulation.TOLERANCE);
        still.place(0, still.plant().network().start());
        Settle.run(still, 0);
        return still;
    }

    /**
     * Stands ready to play.
     *
     * @param settled   the same rig, its settings as they may, settled
     * @param from      s on the weather's clock
     * @param floor     how much warmer floor and ground are than settled, K
     * @param tolerance error allowed in a temperature in one step, K
     * @param eased     as it was settled
     */
    public static Replay from(
            Rig rig, Weather weather, Simulation settled, double from, double floor, double tolerance, boolean eased) {
        Simulation sim = simulation(rig, weather, tolerance, eased);
        sim.take(settled, from);
        Plant plant = sim.plant();
        double[] y = sim.states().clone();
        List<Wiring.State> states = plant.network().wiring().states();
        for (int i = 0; i < y.length; i++) {
            String name = states.get(i).name();
            boolean ground = name.contains("slab") || name.contains("soil") || name.equals("under store");
            if (ground || name.startsWith("floor 1")) y[i] += floor;
        }
        sim.replace(y);
        return new Replay(rig, weather, tolerance, eased, sim);
    }

    /** With nobody at the stove but the loads that are laid. */
    private static Simulation simulation(Rig rig, Weather weather, double tolerance, boolean eased) {
        Rig noted =
                rig.fired(new Habit.Clock(List.of(), Double.NaN), rig.stove().air());
        return new Simulation(
                compiled(noted, weather, eased), weather.start().toLocalTime().toSecondOfDay(), tolerance);
    }

    private static Plant compiled(Rig rig, Weather weather, boolean eased) {
        return eased ? Compiler.compileEased(rig, weather) : Compiler.compile(rig, weather);
    }

    /** The plant that is played; for making probes. */
    public Plant plant() {
        return sim.plant();
    }

    /** The rig as it was given. */
    public Rig rig() {
        return rig;
    }

    /** As {@link #play(List, List, List, List, double, double)} with a rig that stays what it is. */
    public Played play(List<Load> loads, List<Anchor> anchors, List<Probe> probes, double until, double step) {
        return play(loads, anchors, List.of(), probes, until, step);
    }

    /**
     * Plays.
     *
     * @param loads   in the order of their times
     * @param anchors in the order of their times
     * @param turns   in the order of their times
     * @param step  from one reading to the next, s; the first is at the start
     * @return for every probe its readings
     */
    public Played play(
            List<Load> loads, List<Anchor> anchors, List<Turn> turns, List<Probe> probes, double until, double step) {
        int count = (int) Math.floor((until - sim.time()) / step + 1e-9) + 1;
        double[][] read = new double[probes.size()][count];
        Reader reader = new Reader(sim.time(), sim.columns(), probes, read, step);
        sim.watch(reader::step);
        List<Deed> deeds = new ArrayList<>();
        for (Anchor anchor : anchors) {
            deeds.add(new Deed(anchor.time(), () -> sim.intervene(y -> anchor.set(sim.plant(), y))));
        }
        for (Turn turn : turns) deeds.add(new Deed(turn.time(), () -> turn(turn.rig(), reader)));
        for (Load load : loads) {
            if (load.mass() > 0 && load.time() < until) deeds.add(new Deed(load.time(), () -> sim.lay(load.mass())));
        }
        // what falls on the same moment is done in the order above
        deeds.sort(Comparator.comparingDouble(Deed::time));
        for (Deed deed : deeds) {
            if (deed.time() < sim.time() - 1e-6 || deed.time() > until) continue;
            sim.run(deed.time());
            deed.what().run();
        }
        sim.run(until);
        return new Played(read, sim.ledger());
    }

    /** Something done at a time. */
    private record Deed(double time, Runnable what) {}

    private void turn(Rig other, Reader reader) {
        Simulation next = simulation(other, weather, tolerance, eased);
        next.take(sim, sim.time());
        // nobody fills up a header because a part has fouled
        next.replace(sim.states());
        sim = next;
        sim.watch(reader::step);
    }

    /** Reads the probes at even times. */
    private static final class Reader {
        private final List<Probe> probes;
        private final double[][] read;
        private final double from;
        private final double step;
        private final double[] x;
        private int next;

        Reader(double from, double[] columns, List<Probe> probes, double[][] read, double step) {
            this.from = from;
            this.probes = probes;
            this.read = read;
            this.step = step;
            x = columns.clone();
            for (int p = 0; p < probes.size(); p++) read[p][0] = probes.get(p).read(x);
            next = 1;
        }

        void step(Interpolant between, double[] atEnd) {
            int count = read.length == 0 ? 0 : read[0].length;
            while (next < count && from + next * step <= between.end() + 1e-9) {
                double t = Math.min(from + next * step, between.end());
                for (int p = 0; p < probes.size(); p++) {
                    Probe probe = probes.get(p);
                    for (int c : probe.columns()) x[c] = between.value(c - Wiring.OUTSIDE, t);
                    read[p][next] = probe.read(x);
                }
                next++;
            }
        }
    }
}
