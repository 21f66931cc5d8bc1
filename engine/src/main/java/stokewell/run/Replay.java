package stokewell.run;

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

    /** Where the replay stood when it ended and what it read on the way. */
    public record Played(double[][] read, double wood, Ledger ledger) {}

    private final Rig rig;
    private final Simulation sim;

    private Replay(Rig rig, Simulation sim) {
        this.rig = rig;
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
     * @param given     what the sensors say at that moment
     * @param floor     how much warmer floor and ground are than settled, K
     * @param tolerance error allowed in a temperature in one step, K
     * @param eased     as it was settled
     */
    public static Replay from(
            Rig rig,
            Weather weather,
            Simulation settled,
            double from,
            Given given,
            double floor,
            double tolerance,
            boolean eased) {
        Rig noted =
                rig.fired(new Habit.Clock(List.of(), Double.NaN), rig.stove().air());
        Simulation sim = new Simulation(
                compiled(noted, weather, eased), weather.start().toLocalTime().toSecondOfDay(), tolerance);
        sim.take(settled, from);
        Plant plant = sim.plant();
        double[] y = given.in(plant, sim.states());
        List<Wiring.State> states = plant.network().wiring().states();
        for (int i = 0; i < y.length; i++) {
            String name = states.get(i).name();
            boolean ground = name.contains("slab") || name.contains("soil") || name.equals("under store");
            if (ground || name.startsWith("floor 1")) y[i] += floor;
        }
        sim.replace(y);
        return new Replay(rig, sim);
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

    /**
     * Plays.
     *
     * @param loads in the order of their times
     * @param step  from one reading to the next, s; the first is at the start
     * @return for every probe its readings
     */
    public Played play(List<Load> loads, List<Probe> probes, double until, double step) {
        int count = (int) Math.floor((until - sim.time()) / step + 1e-9) + 1;
        double[][] read = new double[probes.size()][count];
        Reader reader = new Reader(sim, probes, read, step);
        sim.watch(reader::step);
        for (Load load : loads) {
            if (load.time() < sim.time() - 1e-6 || load.time() >= until) continue;
            sim.run(load.time());
            if (load.mass() > 0) sim.lay(load.mass());
        }
        sim.run(until);
        return new Played(read, sim.wood(), sim.ledger());
    }

    /** Reads the probes at even times. */
    private static final class Reader {
        private final Simulation sim;
        private final List<Probe> probes;
        private final double[][] read;
        private final double from;
        private final double step;
        private final double[] x;
        private int next;

        Reader(Simulation sim, List<Probe> probes, double[][] read, double step) {
            this.sim = sim;
            this.probes = probes;
            this.read = read;
            this.step = step;
            from = sim.time();
            x = sim.columns().clone();
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
