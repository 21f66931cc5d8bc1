package stokewell.check;

import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import stokewell.run.Night;
import stokewell.run.Trace;

/** Moments of a normal day that may be the worst for a failure: what the search tries. */
final class Moments {

    /** Closer together than this they are one, s. */
    private static final double APART = 240;
    /** Nothing needs following with less on the grate, kg. */
    private static final double FIRE = 0.3;

    private Moments() {}

    /** In order of time; at least one. */
    static Iterable<Double> of(Night night) {
        Trace trace = night.trace();
        TreeSet<Double> times = new TreeSet<>();
        for (String name : trace.namesLike("minutes to boil")) add(times, trace, name, v -> -v);
        for (String name : trace.namesLike("water ")) add(times, trace, name, v -> v);
        for (String name : new String[] {"power fire to water", "store 1", "bed", "stove", "power heat released"}) {
            add(times, trace, name, v -> v);
        }
        if (times.isEmpty()) times.add(trace.time(0));
        double last = Double.NEGATIVE_INFINITY;
        TreeSet<Double> thinned = new TreeSet<>();
        for (double t : times) {
            if (t - last < APART) continue;
            thinned.add(t);
            last = t;
        }
        return thinned;
    }

    private static void add(TreeSet<Double> times, Trace trace, String name, DoubleUnaryOperator badness) {
        if (!trace.has(name)) return;
        float[] column = trace.column(name);
        float[] bed = trace.column("bed");
        int at = -1;
        double worst = Double.NEGATIVE_INFINITY;
        // not the very end: the run stands there already
        for (int i = 0; i + 1 < column.length; i++) {
            if (bed[i] < FIRE || !Float.isFinite(column[i])) continue;
            double bad = badness.applyAsDouble(column[i]);
            if (bad > worst) {
                worst = bad;
                at = i;
            }
        }
        if (at >= 0) times.add(trace.time(at));
    }
}
