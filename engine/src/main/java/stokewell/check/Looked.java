package stokewell.check;

import java.util.List;
import java.util.function.UnaryOperator;
import stokewell.rig.Rig;
import stokewell.run.Beside;
import stokewell.run.Given;
import stokewell.run.Hurry;
import stokewell.run.Moment;
import stokewell.run.Night;
import stokewell.run.NightRun;
import stokewell.run.Simulation;
import stokewell.run.Standing;
import stokewell.weather.Weather;

/**
 * A night, and what was found on its rig beside it: the rules, and the few drills that can forbid a fire. Quick enough to go
 * with every night; what every fault does is for {@link Drills} and a whole {@link Check}.
 *
 * @param standing what the rig settled to, for others to begin from
 */
public record Looked(Night night, Check check, Standing standing) {

    private static final double DAY = 86400;

    /**
     * Runs the night and looks at the rig on another thread meanwhile.
     *
     * @param timed may note how long the night itself took, the moment that it is done
     */
    public static Looked run(Rig rig, Weather weather, NightRun.Ask ask, Given given, UnaryOperator<Night> timed) {
        NightRun.Settled found = NightRun.settled(rig, weather, ask, Hurry.NONE);
        Simulation settled = found.simulation();
        Moment start = settled.moment();
        NightRun.Ask day = day(weather, ask, start.time());
        Beside<List<Drill>> drills = Beside.begin(
                () -> Drills.run(rig, weather, day, Drills.deciding(rig), start).drills());
        Night night = timed.apply(NightRun.run(weather, ask, given, found));
        return new Looked(night, Check.of(rig, night, drills.done()), found.standing());
    }

    /** The day whose worst moment the drills look for: from the night's start, as far as the weather reaches. */
    private static NightRun.Ask day(Weather weather, NightRun.Ask ask, double from) {
        boolean whole = weather.covers(from, from + DAY);
        return new NightRun.Ask(
                ask.from(),
                whole ? ask.from().plusDays(1) : ask.until(),
                ask.hour(),
                ask.evening(),
                ask.limit(),
                ask.step(),
                ask.tolerance());
    }
}
