package stokewell.bench;

import java.util.ArrayList;
import java.util.List;
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
 * weather, warmed by measured heat. The knobs are those of {@code fit}, with its own first guesses.
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

    /** @param compared hours that are compared */
    EngineRoom(Rig rig, RoomLog log, int compared) {
        this.rig = rig;
        this.log = log;
        this.compared = compared;
        Site site = Compiler.site(rig);
        Hourly hourly = new Hourly(log.start().plusMinutes(30), log.outdoor(), log.wind())
                .withSun(new Hourly.Sun(log.sun(), java.util.Optional.empty(), java.util.Optional.empty(), 0));
        weather = Weather.of(hourly, site, Compiler.surfaces(rig));
        knobs = KNOBS.stream().filter(k -> Knob.of(rig).contains(k)).toList();
        for (Knob k : knobs) {
            unknowns.add(new Unknown(k.name(), k.words, 0, k.spread, -4 * k.spread, 4 * k.spread, 0.4 * k.spread));
        }
        usual = 3 * rig.room().floorArea();
        unknowns.add(new Unknown("gains", "heat that nobody measured, over 3 W/m2", 0.5, 1, -2, 6, 0.2));
        unknowns.add(new Unknown("floor", "floor warmer at first", 0, 2, -8, 8, 1));
    }

    @Override
    public List<Unknown> unknowns() {
        return unknowns;
    }

    /** The hours that are compared, as an estimator wants them. */
    Observed observed() {
        int n = compared - LEAD;
        double[] time = new double[n];
        double[] value = new double[n];
        for (int i = 0; i < n; i++) {
            time[i] = 3600.0 * (LEAD + i);
            value[i] = log.room()[LEAD + i];
        }
        return new Observed(time, value, List.of(new Observed.Channel("room", 0, n, 0.5, 0.1)));
    }

    @Override
    public double[] at(double[] p) {
        double[] all = run(p, -1);
        return all == null ? null : java.util.Arrays.copyOfRange(all, LEAD, compared);
    }

    /**
     * The room in the middle of every hour of the log; null where the engine cannot run it.
     *
     * @param anchor hour after which air and contents are set to what was read; -1 for none
     */
    double[] run(double[] p, int anchor) {
        Rig turned = rig;
        for (int j = 0; j < knobs.size(); j++) turned = knobs.get(j).turned(turned, Math.exp(p[j]));
        double gains = p[knobs.size()] * usual;
        Plant plant = Compiler.compile(turned, weather);
        Network network = plant.network();
        Integrator integrator = new Integrator(network, Tolerances.absolute(5e-3));
        double[] y = network.start();
        for (int i = 0; i < y.length; i++) {
            if (network.capacity(i) > 0) y[i] = log.room()[0];
        }
        State state = new State(0, y, new double[network.sums()]);
        try {
            // what walls and ground remember: the first day again and again
            for (int k = 0; k < WARM_UP; k++) {
                day(plant, integrator, state, gains, 24, null, -1);
                state = new State(0, state.y.clone(), new double[network.sums()]);
            }
            int room = Plant.state(plant.room());
            double off = log.room()[0] - state.y[room];
            for (int i = 0; i < state.y.length; i++) {
                String name = network.wiring().states().get(i).name();
                if (i == room || i == Plant.state(plant.contents())) state.y[i] += off;
                if (name.contains("slab") || name.contains("soil") || name.startsWith("floor 1")) {
                    state.y[i] += p[knobs.size() + 1];
                }
            }
            double[] out = new double[log.hours()];
            day(plant, integrator, state, gains, log.hours(), out, anchor);
            return out;
        } catch (StepFailure cannot) {
            return null;
        }
    }

    private void day(
            Plant plant, Integrator integrator, State state, double gains, int hours, double[] out, int anchor) {
        int room = Plant.state(plant.room());
        for (int h = 0; h < hours; h++) {
            plant.people().power(log.heat()[h] + gains);
            integrator.restart(state);
            // t = 0 is the middle of the first hour
            integrator.advance(state, 3600.0 * h, between -> {});
            if (out != null) out[h] = state.y[room];
            if (h == anchor) {
                double off = log.room()[h] - state.y[room];
                state.y[room] += off;
                state.y[Plant.state(plant.contents())] += off;
                integrator.restart(state);
            }
            integrator.advance(state, 3600.0 * h + 1800, between -> {});
        }
    }
}
