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

    /** Shares of what goes on by habit that are tried until the pump starts: the first fire must show that it does. */
    private static final double[] SHARES = {0.25, 0.4, 0.6};

    private static final double LEAST = 1;
    private static final double COLD = 283.15;
    private static final int HOURS = 4;

    /** Lights it at a moment of the weather. */
    public static FirstFire run(Rig rig, Weather weather, LocalDateTime at) {
        boolean pumped = rig.loop() != null && rig.loop().pump() != null;
        FirstFire fire = null;
        for (double share : SHARES) {
            fire = run(rig, weather, at, Math.round(2 * Math.max(LEAST, share * usual(rig))) / 2.0);
            if (!pumped || fire.starts("pump") < HOURS * 60) break;
        }
        return fire;
    }

    private static FirstFire run(Rig rig, Weather weather, LocalDateTime at, double mass) {
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

    /** Whether the pump ran at any moment after one minute and up to another. */
    public boolean ranSince(double after, double until) {
        boolean on = false;
        for (Event e : night.events()) {
            if (!(e instanceof Event.Switched s) || !s.what().equals("pump")) continue;
            double minute = (s.time() - night.from()) / 60;
            if (minute > until) break;
            if (s.on() && minute > after || on && minute > after) return true;
            on = s.on();
        }
        return on;
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
