package stokewell.size;

import java.time.Duration;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
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
        if (!(rig.habit() instanceof Habit.Clock habit) || night.wood() <= 0) return null;
        boolean whole = night.loads() == loads(habit, ask);
        if (whole && Math.abs(room(night) - room) < ALIKE) return new SameWarmth(1, night.wood());
        Habit.Clock free = habit.unskipped();
        Function<Habit.Clock, Night> run = other -> night(rig, other, weather, ask, near);
        try {
            double excess = room(whole ? night : run.apply(free)) - room;
            double factor = factor(log -> room(run.apply(free.times(Math.exp(log)))) - room, excess);
            if (Double.isNaN(factor)) return null;
            Night lighter = run.apply(habit.times(factor));
            return Math.abs(room(lighter) - room) < HELD ? new SameWarmth(factor, lighter.wood()) : null;
        } catch (StepFailure | Ledger.LedgerFault | RigFault e) {
            // so much or so little wood is no rig that can be run
            return null;
        }
    }

    /** Loads that the clock tells in the hours asked for. */
    private static double loads(Habit.Clock habit, NightRun.Ask ask) {
        return habit.loads().size() * Duration.between(ask.from(), ask.until()).toMinutes() / 1440.0;
    }

    /**
     * By secants.
     *
     * @param excess of the room by the factor's logarithm, K
     * @param as     it is, K
     * @return NaN where there is none
     */
    private static double factor(DoubleUnaryOperator excess, double as) {
        double a = 0;
        double fa = as;
        double b = fa > 0 ? -0.1 : 0.1;
        for (int k = 0; k < MOST_RUNS && b > Math.log(LIGHTEST) && b < Math.log(HEAVIEST); k++) {
            double fb = excess.applyAsDouble(b);
            if (Math.abs(fb) < ALIKE) return Math.exp(b);
            double slope = (fb - fa) / (b - a);
            if (!(slope >= FELT)) return Double.NaN;
            a = b;
            fa = fb;
            b -= fb / slope;
        }
        return Double.NaN;
    }

    private static Night night(Rig rig, Habit habit, Weather weather, NightRun.Ask ask, Standing near) {
        Hurry hurry = new Hurry(near, Hurry.NONE.mostDays(), Hurry.NONE.livedDays(), () -> true);
        NightRun.Settled settled = NightRun.settled(rig.fired(habit, rig.stove().air()), weather, ask, hurry);
        return NightRun.record(settled.simulation(), weather, ask, NightRun.startWords(weather));
    }
}
