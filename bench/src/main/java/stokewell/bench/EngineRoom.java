package stokewell.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import stokewell.fit.Knob;
import stokewell.fit.Observed;
import stokewell.fit.Response;
import stokewell.fit.Unknown;
import stokewell.network.Compiler;
import stokewell.network.Network;
import stokewell.network.Plant;
import stokewell.rig.Rig;
import stokewell.solve.Integrator;
import stokewell.solve.State;
import stokewell.solve.StepFailure;
import stokewell.solve.Tolerances;
import stokewell.weather.Hourly;
import stokewell.weather.Site;
import stokewell.weather.Weather;

/**
 * The building part of a rig as the model of a fit: its room with walls, roof, floor, leaks, glass and contents in measured
 * weather, warmed by measured heat. The knobs are those of {@code fit}, with its own first guesses. Heat of pipes in a slab goes
 * into the slab, as much of it as the readings say, and the slab's own sensor is compared beside the room's.
 */
final class EngineRoom implements Response {

    private static final List<Knob> KNOBS =
            List.of(Knob.WALLS, Knob.LEAKAGE, Knob.CONTENTS, Knob.FLOOR, Knob.SLAB, Knob.SUN);
    /** Compared from here on; before, the room still remembers how it was begun, h. */
    static final int LEAD = 8;

    private static final int WARM_UP = 4;

    private final Rig rig;
    private final RoomLog log;
    private final int compared;
    private final Weather weather;
    private final List<Knob> knobs;
    private final List<Unknown> unknowns = new ArrayList<>();
    private final double usual;
    private final int gains;
    private final int floor;
    private final int heat;
    private final int share;
    private final int electricity;
    private final int offset;

    /** @param compared hours that are compared */
    EngineRoom(Rig rig, RoomLog log, int compared) {
        this.rig = rig;
        this.log = log;
        this.compared = compared;
        Site site = Compiler.site(rig);
        Hourly hourly = new Hourly(log.start().plusMinutes(30), log.outdoor(), log.wind())
                .withSun(new Hourly.Sun(log.sun(), Optional.empty(), Optional.empty(), 0));
        weather = Weather.of(hourly, site, Compiler.surfaces(rig));
        knobs = KNOBS.stream().filter(k -> Knob.of(rig).contains(k)).toList();
        for (Knob k : knobs) {
            unknowns.add(new Unknown(k.name(), k.words, 0, k.spread, -4 * k.spread, 4 * k.spread, 0.4 * k.spread));
        }
        usual = 3 * rig.room().floorArea();
        gains = unknown(new Unknown("gains", "heat that nobody measured, over 3 W/m2", 0.5, 1, -2, 6, 0.2));
        floor = unknown(new Unknown("floor", "floor warmer at first", 0, 2, -8, 8, 1));
        if (log.hasSlab()) {
            heat = unknown(new Unknown("heat", "true heat over what was reckoned", 0, 0.5, -2, 2, 0.1));
            share = unknown(new Unknown("share", "of the heat that goes into the slab", 0.8, 0.2, 0, 1, 0.1));
            electricity = unknown(
                    new Unknown("electricity", "share of the electricity that warms the room", 0.7, 0.3, 0, 1, 0.1));
            offset = unknown(new Unknown("offset", "what the slab's sensor reads too much", 0, 1, -4, 4, 0.3));
        } else {
            heat = -1;
            share = -1;
            electricity = -1;
            offset = -1;
        }
    }

    private int unknown(Unknown u) {
        unknowns.add(u);
        return unknowns.size() - 1;
    }

    @Override
    public List<Unknown> unknowns() {
        return unknowns;
    }

    /** The hours that are compared, as an estimator wants them: of the room, then of the slab. */
    Observed observed() {
        int n = compared - LEAD;
        int all = log.hasSlab() ? 2 * n : n;
        double[] time = new double[all];
        double[] value = new double[all];
        for (int i = 0; i < all; i++) {
            int hour = LEAD + i % n;
            time[i] = 3600.0 * hour;
            value[i] = i < n ? log.room()[hour] : log.slab()[hour];
        }
        List<Observed.Channel> channels = new ArrayList<>(List.of(new Observed.Channel("room", 0, n, 0.5, 0.1)));
        if (log.hasSlab()) channels.add(new Observed.Channel("slab", n, all, 0.5, 0.1));
        return new Observed(time, value, channels);
    }

    @Override
    public double[] at(double[] p) {
        Run all = run(p, -1);
        if (all == null) return null;
        int n = compared - LEAD;
        double[] out = Arrays.copyOf(
                Arrays.copyOfRange(all.room(), LEAD, compared), observed().rows());
        for (int i = n; i < out.length; i++) out[i] = all.slab()[LEAD + i - n];
        return out;
    }

    /** The middle of every hour: room, and what the slab's sensor would read; empty where there is none. */
    record Run(double[] room, double[] slab) {}

    /**
     * Runs through the hours of the log; null where the engine cannot.
     *
     * @param anchor hour after which air, contents and slab are set to what was read; -1 for none
     */
    Run run(double[] p, int anchor) {
        Rig turned = rig;
        for (int j = 0; j < knobs.size(); j++) turned = knobs.get(j).turned(turned, Math.exp(p[j]));
        Heated heated = new Heated(Compiler.compile(turned, weather), p);
        Network network = heated.plant.network();
        double[] y = network.start();
        for (int i = 0; i < y.length; i++) {
            if (network.capacity(i) > 0) y[i] = log.room()[0];
        }
        State state = new State(0, y, new double[network.sums()]);
        try {
            // what walls and ground remember: the first day again and again
            for (int k = 0; k < WARM_UP; k++) {
                heated.play(state, 24, null, -1);
                state = new State(0, state.y.clone(), new double[network.sums()]);
            }
            heated.set(state, 0);
            for (int i = 0; i < state.y.length; i++) {
                String name = network.wiring().states().get(i).name();
                boolean read = log.hasSlab() && name.endsWith(" slab");
                if (!read && (name.contains("slab") || name.contains("soil") || name.startsWith("floor 1"))) {
                    state.y[i] += p[floor];
                }
            }
            Run out = new Run(new double[log.hours()], new double[log.hasSlab() ? log.hours() : 0]);
            heated.play(state, log.hours(), out, anchor);
            return out;
        } catch (StepFailure cannot) {
            return null;
        }
    }

    /** A plant with the log's heat. */
    private final class Heated {
        private final Plant plant;
        private final double[] p;
        private final Underfloor pipes;
        private final Integrator integrator;
        private final int air;
        private final int contents;
        private final int[] slabs;

        Heated(Plant plant, double[] p) {
            this.plant = plant;
            this.p = p;
            pipes = new Underfloor(plant.network());
            integrator = new Integrator(pipes, Tolerances.absolute(5e-3));
            air = Plant.state(plant.room());
            contents = Plant.state(plant.contents());
            slabs = Underfloor.slabs(plant.network());
        }

        void play(State state, int hours, Run out, int anchor) {
            for (int h = 0; h < hours; h++) {
                warm(h);
                integrator.restart(state);
                // t = 0 is the middle of the first hour
                integrator.advance(state, 3600.0 * h, between -> {});
                if (out != null) {
                    out.room()[h] = state.y[air];
                    if (log.hasSlab()) out.slab()[h] = state.y[slabs[0]] + p[offset];
                }
                if (h == anchor) {
                    set(state, h);
                    integrator.restart(state);
                }
                integrator.advance(state, 3600.0 * h + 1800, between -> {});
            }
        }

        private void warm(int hour) {
            double all = log.heat()[hour] * (log.hasSlab() ? Math.exp(p[heat]) : 1);
            double under = log.hasSlab() ? p[share] * all : 0;
            pipes.power(under);
            double electric = log.hasSlab() ? p[electricity] * log.gains()[hour] : 0;
            plant.people().power(all - under + electric + p[gains] * usual);
        }

        /** To what was read in an hour. */
        void set(State state, int hour) {
            double off = log.room()[hour] - state.y[air];
            state.y[air] += off;
            state.y[contents] += off;
            if (!log.hasSlab()) return;
            for (int i : slabs) state.y[i] = log.slab()[hour] - p[offset];
        }
    }
}
