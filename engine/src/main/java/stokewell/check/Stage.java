package stokewell.check;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import stokewell.loop.Circuit;
import stokewell.loop.PickupWater;
import stokewell.loop.Vent;
import stokewell.network.Compiler;
import stokewell.network.Driven;
import stokewell.network.Plant;
import stokewell.rig.Habit;
import stokewell.rig.Rig;
import stokewell.rig.Stove;
import stokewell.run.Moment;
import stokewell.run.Simulation;
import stokewell.weather.Weather;

/**
 * The scene of the drills: a rig that stands at the worst moment of its normal day, and what can be done to it there. Many
 * drills may play on it at once; each has its own simulation.
 */
final class Stage {

    /** Multiplies a loop's resistance so that nothing moves. */
    static final double STOPPED = 1e9;

    static final double MINUTE = 60;
    static final double HOUR = 3600;
    static final double DAY = 86400;

    /** A drill needs no more than this, K in a step. */
    private static final double TOLERANCE = 2e-2;

    private static final Habit NO_MORE_WOOD = new Habit.Clock(List.of(), Double.NaN);
    private static final Stove.Air WIDE_OPEN = new Stove.Air.Hand(1, 1);
    private static final Stove.Air SHUT = new Stove.Air.Hand(0, 0);

    final Rig rig;
    final Weather weather;
    private final double secondOfDay;
    private final double end;
    private final Queue<Simulation> spare = new ConcurrentLinkedQueue<>();
    private final Map<String, Still> once = new ConcurrentHashMap<>();
    private Moment worst;

    /** A run that more than one fault comes to, with what a hand can still do in it. */
    record Still(Watch watch, List<Drill.Guard> hands) {}

    Stage(Rig rig, Weather weather) {
        this.rig = rig;
        this.weather = weather;
        secondOfDay = weather.start().toLocalTime().toSecondOfDay();
        end = weather.repeats() ? Double.POSITIVE_INFINITY : weather.span();
    }

    /** Where every fault begins. */
    void begin(Moment moment) {
        worst = moment;
        once.clear();
    }

    /** Runs what more than one fault comes to, once. @param fault does it to a simulation that stands at the worst moment */
    Still once(String name, UnaryOperator<Simulation> fault) {
        return once.computeIfAbsent(
                name,
                n -> play(sim -> {
                    Watch watch = Follow.of(this, fault.apply(sim), 8 * HOUR).out(false);
                    List<Drill.Guard> hands = new ArrayList<>();
                    Guards.hands(this, hands, watch, fault);
                    return new Still(watch, List.copyOf(hands));
                }));
    }

    double start() {
        return worst.time();
    }

    /** How long a run may last before the weather ends, s. */
    double longest() {
        return end - start() - 1;
    }

    /** Where water boils in the open here, K. */
    double boiling() {
        return HotLimits.boiling(rig);
    }

    boolean wet() {
        return rig.loop() != null;
    }

    boolean pumped() {
        return wet() && rig.loop().pump() != null;
    }

    Simulation simulation(Rig variant, Weather air) {
        return new Simulation(Compiler.compile(variant, air), secondOfDay, TOLERANCE);
    }

    /** Plays on the rig as it is, at the worst moment; compiled simulations are used again. */
    <T> T play(Function<Simulation, T> part) {
        return play(worst, part);
    }

    /** Plays on the rig as it is, at another moment. */
    <T> T play(Moment moment, Function<Simulation, T> part) {
        Simulation sim = spare.poll();
        if (sim == null) sim = simulation(rig, weather);
        T done = part.apply(stand(sim, moment));
        spare.add(sim);
        return done;
    }

    /** A rig that differs, at the worst moment. */
    Simulation fork(Rig variant) {
        return stand(simulation(variant, weather), worst);
    }

    /** The same with other weather. */
    Simulation fork(Rig variant, Weather air) {
        return stand(simulation(variant, air), worst);
    }

    /** Puts a simulation back to the worst moment, with nothing tampered with. */
    Simulation again(Simulation sim) {
        return stand(sim, worst);
    }

    private static Simulation stand(Simulation sim, Moment moment) {
        sim.watch(null);
        for (Circuit c : sim.plant().circuits()) {
            c.resist(1);
            c.lifts(true);
        }
        press(sim.plant(), 0);
        sim.take(moment, moment.time());
        return sim;
    }

    /** Raises the boiling point of an open loop's water, in pickups and pipes, K. */
    static void press(Plant plant, double kelvin) {
        if (plant.loop() != null) plant.loop().raise(kelvin);
        for (PickupWater p : plant.pickups()) p.raise(kelvin);
        for (Vent v : plant.vents()) {
            if (Arrays.stream(plant.store()).noneMatch(n -> n == v.node())) v.raise(kelvin);
        }
    }

    // ---------------------------------------------------------------- what is done to it

    /** The same rig with no more wood put on. */
    Rig unfed() {
        return rig.fired(NO_MORE_WOOD, rig.stove().air());
    }

    /** The same with the air shut. */
    Rig shut() {
        return rig.fired(NO_MORE_WOOD, SHUT);
    }

    /** Stops pump and, if asked, fans. */
    static Simulation cutOff(Simulation sim, boolean fans) {
        if (fans) stopFans(sim);
        return stopPump(sim);
    }

    /** Stops all that needs power but the pump. */
    static void stopFans(Simulation sim) {
        for (Driven d : sim.plant().driven()) {
            if (d.relief() == null && !d.name().equals("pump")) sim.force(d.name(), false);
        }
    }

    /** Stops the pump. Steam that lifts water through a check valve is nothing to count on: with one, only warmth opens it. */
    static Simulation stopPump(Simulation sim) {
        if (!Double.isNaN(sim.plant().rig().loop().checkValve()))
            sim.plant().loop().lifts(false);
        sim.force("pump", false);
        return sim;
    }

    /** Nothing moves through the loop any more. */
    static Simulation resisted(Simulation sim) {
        sim.plant().loop().resist(STOPPED);
        sim.intervene(y -> {});
        return sim;
    }

    /** Weight of the largest load, kg. */
    double load() {
        return rig.habit() instanceof Habit.Rule r
                ? r.mass()
                : ((Habit.Clock) rig.habit())
                        .loads().stream().mapToDouble(Habit.Load::mass).max().orElse(0);
    }

    /** The bed filled up to a whole fresh load, and the air wide open. */
    Simulation greatestFire() {
        return fill(fork(rig.fired(rig.habit(), WIDE_OPEN)));
    }

    /** The bed filled up to a whole fresh load. */
    Simulation fill(Simulation sim) {
        Plant plant = sim.plant();
        double more = Math.max(0, load() - plant.fire().bed(sim.columns()));
        sim.intervene(y -> y[Plant.state(plant.raw())] += more);
        return sim;
    }

    /** Takes a share of the bed out of the stove, coals and all. */
    static Simulation draw(Simulation sim, double share) {
        Plant plant = sim.plant();
        int[] bed = {plant.raw(), plant.fuelWater(), plant.volatiles(), plant.carbon()};
        sim.intervene(y -> {
            for (int column : bed) y[Plant.state(column)] *= 1 - share;
        });
        return sim;
    }
}
