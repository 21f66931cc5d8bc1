package stokewell.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import stokewell.rig.Habit;
import stokewell.rig.Rig;
import stokewell.run.Replay;

/** The loads of wood behind the readings: those noted, and those that nobody noted but the stove showed. */
public final class Burns {

    /** A rise of the stove's sensor that only wood can make, K, in {@link #WITHIN} s. */
    private static final double RISE = 25;

    private static final double WITHIN = 2700;
    /** A rise belongs to a noted load from so long before it to so long after, s. */
    private static final double BEFORE = 5400;

    private static final double AFTER = 1800;

    private Burns() {}

    /**
     * Puts the loads together.
     *
     * @param noted what was written down
     * @param stove the stove's or the flue's sensor; null without one
     * @param rig   its habit gives the usual load, and the loads themselves where nothing else tells of any
     */
    public static List<Burn> of(
            List<Replay.Load> noted, Series stove, Rig rig, double from, double until, double secondOfDay) {
        List<Burn> all = new ArrayList<>();
        for (Replay.Load load : noted) {
            if (load.time() >= from && load.time() < until) all.add(new Burn(load.time(), load.mass(), true));
        }
        double usual = usual(noted, rig);
        if (stove != null) {
            for (double t : rises(stove)) {
                if (t < from || t >= until) continue;
                boolean known = all.stream().anyMatch(b -> t > b.time() - AFTER && t < b.time() + BEFORE);
                if (!known) all.add(new Burn(t, usual, false));
            }
        } else if (all.isEmpty() && rig.habit() instanceof Habit.Clock habit) {
            double midnight = from - ((secondOfDay + from) % 86400 + 86400) % 86400;
            for (double day = midnight; day < until; day += 86400) {
                for (Habit.Load load : habit.loads()) {
                    double t = day + load.at();
                    if (t >= from && t < until) all.add(new Burn(t, load.mass(), true));
                }
            }
        }
        all.sort(Comparator.comparingDouble(Burn::time));
        return List.copyOf(all);
    }

    /** The mass of one load: the middle one noted, or what the rig's habit says. */
    static double usual(List<Replay.Load> noted, Rig rig) {
        double[] masses = noted.stream().mapToDouble(Replay.Load::mass).sorted().toArray();
        if (masses.length > 0) return masses[masses.length / 2];
        if (rig.habit() instanceof Habit.Rule rule) return rule.mass();
        return ((Habit.Clock) rig.habit())
                .loads().stream().mapToDouble(Habit.Load::mass).average().orElse(5);
    }

    /** Where a series begins to climb as only a fire climbs: the low points before the rises. */
    static List<Double> rises(Series series) {
        List<Double> found = new ArrayList<>();
        double[] t = series.time();
        double[] v = series.value();
        int low = 0;
        boolean climbing = false;
        double top = Double.NEGATIVE_INFINITY;
        for (int i = 1; i < t.length; i++) {
            if (climbing) {
                top = Math.max(top, v[i]);
                // over when it has fallen well below its top, or rested
                if (v[i] < top - 0.4 * RISE) {
                    climbing = false;
                    low = i;
                }
                continue;
            }
            if (v[i] <= v[low] || t[i] - t[low] > WITHIN) {
                int back = i;
                for (int k = i; k >= 0 && t[i] - t[k] <= WITHIN; k--) if (v[k] < v[back]) back = k;
                low = back;
            }
            if (v[i] - v[low] > RISE) {
                found.add(t[low]);
                climbing = true;
                top = v[i];
            }
        }
        return found;
    }
}
