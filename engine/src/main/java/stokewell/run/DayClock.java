package stokewell.run;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.TreeSet;
import stokewell.network.Plant;
import stokewell.rig.Habit;
import stokewell.rig.Rig;
import stokewell.rig.Room;
import stokewell.rig.Stove;
import stokewell.rig.Switch;

/** The seconds of a day at which something happens by the clock, and what stands at a second of the day. */
final class DayClock {

    static final double DAY = 86400;

    private final double[] ticks;
    private final Rig rig;

    DayClock(Plant plant) {
        rig = plant.rig();
        TreeSet<Double> seconds = new TreeSet<>();
        for (Room.Door d : rig.room().doors()) {
            for (Room.Opening o : d.opens()) add(seconds, o.at(), o.at() + o.lasting());
        }
        add(seconds, rig.room().gains().from(), rig.room().gains().until());
        for (Switch s : rig.switches())
            if (s.hours() != null) add(seconds, s.hours().from(), s.hours().until());
        if (rig.stove().air() instanceof Stove.Air.Clock c) c.settings().forEach(s -> add(seconds, s.at()));
        if (rig.habit() instanceof Habit.Clock c) c.loads().forEach(l -> add(seconds, l.at()));
        if (rig.habit() instanceof Habit.Rule r) add(seconds, r.from(), r.until());
        ticks = seconds.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static void add(TreeSet<Double> seconds, double... values) {
        for (double v : values) seconds.add(((v % DAY) + DAY) % DAY);
    }

    /** Seconds from a second of the day until the next tick, more than zero. */
    double untilNext(double secondOfDay) {
        for (double tick : ticks) if (tick > secondOfDay + 1e-6) return tick - secondOfDay;
        return (ticks.length == 0 ? DAY : ticks[0] + DAY) - secondOfDay;
    }

    /** Sum of area times root of height of the doors open, m2.5; a door's height is taken as 2 m or its area's root. */
    double doorsOpen(double secondOfDay) {
        double sum = 0;
        for (Room.Door d : rig.room().doors()) {
            for (Room.Opening o : d.opens()) {
                double end = (o.at() + o.lasting()) % DAY;
                boolean open = o.lasting() >= DAY || stokewell.network.Driven.within(o.at() % DAY, end, secondOfDay);
                if (open) {
                    sum += d.area() * Math.sqrt(Math.max(2, Math.sqrt(d.area())));
                    break;
                }
            }
        }
        return sum;
    }

    /** Heat from people and machines, W. */
    double gains(double secondOfDay) {
        Room.Gains g = rig.room().gains();
        return g.from() != g.until() && stokewell.network.Driven.within(g.from(), g.until(), secondOfDay)
                ? g.power()
                : 0;
    }

    /** The air setting of a clock list. */
    static double setting(Stove.Air.Clock clock, double secondOfDay) {
        List<Stove.Setting> sorted = new ArrayList<>(clock.settings());
        sorted.sort((a, b) -> Double.compare(a.at(), b.at()));
        Collections.reverse(sorted);
        for (Stove.Setting s : sorted) if (secondOfDay >= s.at() - 1e-6) return s.open();
        return sorted.get(0).open();
    }
}
