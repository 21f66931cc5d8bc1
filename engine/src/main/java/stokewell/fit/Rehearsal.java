package stokewell.fit;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import stokewell.rig.Fuel;
import stokewell.rig.Rig;
import stokewell.run.Replay;
import stokewell.run.Simulation;
import stokewell.weather.Weather;

/**
 * Invents the readings of a rig whose truth is known, with the faults that loggers and shops have: to see whether a fit finds
 * the truth again, and what a set of sensors could tell before anybody buys them.
 */
public final class Rehearsal {

    /**
     * How the readings are spoilt.
     *
     * @param noise    white, of the sensors, K
     * @param slow     of the room's slow error, that no model knows, K; hot places have {@link #HOT_SHARE} times as much
     * @param memory   of that, s
     * @param offset   standard deviation of each sensor's offset, K
     * @param step     between readings, s
     * @param weighing standard deviation of each load's weight, as a share
     * @param seed     of the dice
     */
    public record Spoilt(
            double noise, double slow, double memory, double offset, double step, double weighing, long seed) {}

    /** Slow error of a store or a pipe over that of a room. */
    public static final double HOT_SHARE = 1.5;

    /** What the sensors of an invented shop said, and what each of them reads too much, K. */
    public record Invented(Readings readings, Map<Spot, Double> offsets, List<Replay.Load> laid) {}

    /**
     * Something that goes wrong.
     *
     * @param time  from when
     * @param rig   the true rig with it
     * @param heat  heat of the wood from then on, over what it was
     * @param spot  whose sensor comes out of its well; null for none
     * @param share of the way to the room's temperature that it reads then
     */
    public record Fault(double time, Rig rig, double heat, Spot spot, double share) {}

    private Rehearsal() {}

    /** The rig fired with wood that holds so much water, over dry wood. */
    public static Rig wetted(Rig rig, double moisture) {
        return Altered.of(
                rig, "fuel", (Fuel f) -> new Fuel(f.species(), moisture, Fuel.Basis.DRY, f.form(), f.stackSolid()));
    }

    /**
     * Invents.
     *
     * @param truth   the rig as it really is
     * @param loads   as they are noted
     * @param heat    true heat of the wood over that of the noted weight
     * @param settled the true rig, settled
     */
    public static Invented readings(
            Rig truth,
            Weather weather,
            Simulation settled,
            List<Replay.Load> loads,
            double heat,
            List<Spot> spots,
            double from,
            double until,
            Spoilt spoilt) {
        return readings(truth, weather, settled, loads, heat, spots, from, until, spoilt, null);
    }

    /** As {@link #readings(Rig, Weather, Simulation, List, double, List, double, double, Spoilt)}, with a fault or null. */
    public static Invented readings(
            Rig truth,
            Weather weather,
            Simulation settled,
            List<Replay.Load> loads,
            double heat,
            List<Spot> spots,
            double from,
            double until,
            Spoilt spoilt,
            Fault fault) {
        Random dice = new Random(spoilt.seed());
        List<Replay.Load> laid = new ArrayList<>();
        for (Replay.Load l : loads) {
            double off = Math.exp(spoilt.weighing() * dice.nextGaussian());
            double later = fault != null && l.time() >= fault.time() ? fault.heat() : 1;
            laid.add(new Replay.Load(l.time(), l.mass() * heat * off * later));
        }
        Replay replay = Replay.from(truth, weather, settled, from, 0, Simulation.TOLERANCE, false);
        List<Spot> inside = spots.stream().filter(s -> s != Spot.OUTDOOR).toList();
        List<Replay.Probe> probes = Probing.of(inside).of(replay.plant());
        List<Replay.Turn> turns = fault == null ? List.of() : List.of(new Replay.Turn(fault.time(), fault.rig()));
        double[][] read = replay.play(laid, List.of(), turns, probes, until, spoilt.step())
                .read();
        if (fault != null && fault.spot() != null) loosen(read, inside, fault, from, spoilt.step());
        Map<Spot, Series> at = new EnumMap<>(Spot.class);
        Map<Spot, Double> offsets = new EnumMap<>(Spot.class);
        for (int s = 0; s < inside.size(); s++) {
            Spot spot = inside.get(s);
            boolean hot = spot != Spot.ROOM && spot != Spot.SLAB;
            double slow = spoilt.slow() * (hot ? HOT_SHARE : 1);
            double offset = spoilt.offset() * dice.nextGaussian();
            offsets.put(spot, offset);
            at.put(spot, spoil(spot.words, read[s], from, slow, offset, spoilt, dice));
        }
        if (spots.contains(Spot.OUTDOOR)) {
            double[] out = new double[read.length == 0 ? 0 : read[0].length];
            for (int i = 0; i < out.length; i++) out[i] = weather.temperatureAt(from + i * spoilt.step());
            at.put(Spot.OUTDOOR, spoil(Spot.OUTDOOR.words, out, from, 0, 0, spoilt, dice));
        }
        return new Invented(new Readings(at, loads, from, until), offsets, laid);
    }

    private static void loosen(double[][] read, List<Spot> inside, Fault fault, double from, double step) {
        double[] loose = read[inside.indexOf(fault.spot())];
        double[] room = read[inside.indexOf(Spot.ROOM)];
        for (int i = 0; i < loose.length; i++) {
            if (from + i * step >= fault.time()) loose[i] += fault.share() * (room[i] - loose[i]);
        }
    }

    private static Series spoil(
            String name, double[] right, double from, double slow, double offset, Spoilt spoilt, Random dice) {
        double[] time = new double[right.length];
        double[] value = new double[right.length];
        double fade = Math.exp(-spoilt.step() / spoilt.memory());
        double drift = slow * dice.nextGaussian();
        for (int i = 0; i < right.length; i++) {
            time[i] = from + i * spoilt.step();
            value[i] = right[i] + offset + drift + spoilt.noise() * dice.nextGaussian();
            drift = fade * drift + Math.sqrt(1 - fade * fade) * slow * dice.nextGaussian();
        }
        return new Series(name, time, value);
    }
}
