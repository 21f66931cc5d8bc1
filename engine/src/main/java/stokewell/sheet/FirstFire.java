package stokewell.sheet;

import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import stokewell.rig.Habit;
import stokewell.rig.Rig;
import stokewell.run.Event;
import stokewell.run.Given;
import stokewell.run.Night;
import stokewell.run.NightRun;
import stokewell.run.Simulation;
import stokewell.run.Trace;
import stokewell.weather.Weather;

/**
 * The first small fire, run through: everything at one cold temperature, one small load, nothing more put on.
 *
 * @param mass  of the load, kg
 * @param cold  where everything starts, K
 * @param night the run, a sample each minute from the lighting on
 */
public record FirstFire(double mass, double cold, Night night) {

    /** A quarter of what goes on by habit, common practice: enough to move the water, too little to boil much. */
    private static final double SHARE = 0.25;

    private static final double LEAST = 1;
    private static final double COLD = 283.15;
    private static final int HOURS = 4;

    /** Lights it at a moment of the weather. */
    public static FirstFire run(Rig rig, Weather weather, LocalDateTime at) {
        double mass = Math.round(2 * Math.max(LEAST, SHARE * usual(rig))) / 2.0;
        double second = at.toLocalTime().toSecondOfDay();
        Habit once = new Habit.Clock(List.of(new Habit.Load(second, mass)), Double.NaN);
        Rig small = rig.fired(once, rig.stove().air());
        NightRun.Ask ask = new NightRun.Ask(
                at, at.plusHours(HOURS), LocalTime.of(7, 30), LocalTime.of(16, 0), COLD, 60, Simulation.TOLERANCE);
        return new FirstFire(mass, COLD, NightRun.cold(small, weather, ask, new Given(COLD, COLD, COLD, COLD)));
    }

    /** What goes on by habit at once, kg; from the firebox where the habit has no load. */
    static double usual(Rig rig) {
        if (rig.habit() instanceof Habit.Rule r) return r.mass();
        double most = 0;
        for (Habit.Load l : ((Habit.Clock) rig.habit()).loads()) most = Math.max(most, l.mass());
        // split wood lies at 130 to 200 kg in a cubic metre of firebox: common practice
        return most > 0 ? most : 150 * rig.stove().firebox();
    }

    /** Minutes from the lighting to the first start of a pump or fan; NaN where it never starts. */
    public double starts(String what) {
        for (Event e : night.events()) {
            if (e instanceof Event.Switched s && s.on() && s.what().equals(what)) return (s.time() - night.from()) / 60;
        }
        return Double.NaN;
    }

    /** The sample of a minute, or the last there is. */
    public int at(double minute) {
        Trace t = night.trace();
        return Math.max(0, Math.min(t.size() - 1, (int) Math.round(60 * minute / t.step())));
    }

    /** Minute of the greatest value of a column. */
    public double peak(String column) {
        float[] v = night.trace().column(column);
        int most = 0;
        for (int i = 1; i < v.length; i++) if (v[i] > v[most]) most = i;
        return most * night.trace().step() / 60;
    }
}
