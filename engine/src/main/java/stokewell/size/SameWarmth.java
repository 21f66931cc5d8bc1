package stokewell.size;

import java.time.Duration;
import java.util.List;
import java.util.function.DoubleFunction;
import stokewell.rig.Habit;
import stokewell.rig.Rig;
import stokewell.rig.RigFault;
import stokewell.run.Hurry;
import stokewell.run.Ledger;
import stokewell.run.Night;
import stokewell.run.NightRun;
import stokewell.run.Standing;
import stokewell.solve.StepFailure;
import stokewell.weather.Weather;

/**
 * The wood that keeps a room as warm as it was, when something else of the rig has changed: all loads of the day so many times as
 * heavy that the room comes to the same mean. At fixed hours and weights a better wall burns no stick less and only makes the room
 * warmer; this is what it saves him who lays on less until it is as warm as before. It is looked for with no load
 * skipped, and must then hold with the habit's own limits.
 *
 * @param factor on every load
 * @param wood   laid on in the night then, kg
 */
public record SameWarmth(double factor, double wood) {

    private static final double LIGHTEST = 0.4;
    private static final double HEAVIEST = 2;
    /** Means that differ by less are as warm, K. */
    private static final double ALIKE = 0.02;
    /** The same where a load that is skipped would make more of it, K. */
    private static final double HELD = 0.1;
    /** Where the room does not feel the wood by so much, K for e times the wood, a thermostat holds it. */
    private static final double FELT = 1;

    private static final int MOST_RUNS = 6;

    /** Mean of the room over a night, K. */
    public static double room(Night night) {
        double sum = 0;
        float[] room = night.trace().column("room");
        for (float v : room) sum += v;
        return sum / room.length;
    }

    /**
     * Finds it.
     *
     * @param rig   as changed, loaded by the clock
     * @param night of it as it is, run by {@code ask} in that weather
     * @param near  where a rig like it had settled
     * @param room  mean that is wanted, K
     * @return null where the loads go by a rule, or no weight makes it so warm: a thermostat holds the room,
     *     or a load would be skipped
     */
    public static SameWarmth of(Rig rig, Weather weather, NightRun.Ask ask, Night night, Standing near, double room) {
        if (!(rig.habit() instanceof Habit.Clock clock) || night.wood() <= 0) return null;
        DoubleFunction<Night> run =
                log -> night(rig, times(clock, Math.exp(log), Double.NaN, Habit.WARMEST), weather, ask, near);
        try {
            double a = 0;
            double fa = room(skips(clock, ask, night) ? run.apply(a) : night) - room;
            if (Math.abs(fa) < ALIKE) return held(rig, clock, a, weather, ask, near, room);
            double b = fa > 0 ? -0.1 : 0.1;
            for (int k = 0; k < MOST_RUNS; k++) {
                double fb = room(run.apply(b)) - room;
                if (Math.abs(fb) < ALIKE) return held(rig, clock, b, weather, ask, near, room);
                double slope = (fb - fa) / (b - a);
                if (!(slope >= FELT)) return null;
                a = b;
                fa = fb;
                b -= fb / slope;
                if (!(b > Math.log(LIGHTEST) && b < Math.log(HEAVIEST))) return null;
            }
            return null;
        } catch (StepFailure | Ledger.LedgerFault | RigFault e) {
            // so much or so little wood is no rig that can be run
            return null;
        }
    }

    /** Whether a night may have had fewer loads than the clock tells; one of other than whole days may. */
    private static boolean skips(Habit.Clock clock, NightRun.Ask ask, Night night) {
        double days = Duration.between(ask.from(), ask.until()).toMinutes() / 1440.0;
        return night.loads() != clock.loads().size() * days;
    }

    /** The answer, where it holds with the limits that the habit has. */
    private static SameWarmth held(
            Rig rig, Habit.Clock clock, double log, Weather weather, NightRun.Ask ask, Standing near, double room) {
        double factor = Math.exp(log);
        Habit.Clock own = times(clock, factor, clock.skipAbove(), clock.skipRoomAbove());
        Night night = night(rig, own, weather, ask, near);
        return Math.abs(room(night) - room) < HELD ? new SameWarmth(factor, night.wood()) : null;
    }

    private static Night night(Rig rig, Habit habit, Weather weather, NightRun.Ask ask, Standing near) {
        Hurry hurry = new Hurry(near, Hurry.NONE.mostDays(), Hurry.NONE.livedDays(), () -> true);
        NightRun.Settled settled = NightRun.settled(rig.fired(habit, rig.stove().air()), weather, ask, hurry);
        return NightRun.record(settled.simulation(), weather, ask, NightRun.startWords(weather));
    }

    private static Habit.Clock times(Habit.Clock clock, double factor, double skipAbove, double skipRoomAbove) {
        List<Habit.Load> loads = clock.loads().stream()
                .map(l -> new Habit.Load(l.at(), factor * l.mass()))
                .toList();
        return new Habit.Clock(loads, skipAbove, skipRoomAbove);
    }
}
