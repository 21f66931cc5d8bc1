package stokewell.run;

import java.time.DayOfWeek;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import java.util.function.DoublePredicate;
import stokewell.network.Plant;
import stokewell.rig.Rig;
import stokewell.weather.Weather;

/** Runs a season: settles as a night does, then lives from autumn to spring hour by hour, month by month. */
public final class SeasonRun {

    private static final int MORNINGS = 10;
    /** The day of the week on whose evening somebody looks at the header and fills it: common practice, weekly. */
    private static final DayOfWeek TOP_UP = DayOfWeek.SATURDAY;

    private static final double BASE = 291.15;

    /**
     * What is asked of a season.
     *
     * @param hour      of the morning that counts
     * @param limit     room temperature that hours are counted against, K
     * @param step      of the trace, s
     * @param tolerance of a step, K
     */
    public record Ask(
            LocalDateTime from, LocalDateTime until, LocalTime hour, double limit, double step, double tolerance) {}

    private SeasonRun() {}

    /**
     * Runs.
     *
     * @param goOn told the share done, 0 to 1, after every day; returns false to stop
     * @throws CancellationException when it is stopped
     */
    public static Season run(Rig rig, Weather weather, Ask ask, DoublePredicate goOn) {
        return run(rig, weather, ask, goOn, month -> {});
    }

    /** As above. @param told each month as it ends */
    public static Season run(Rig rig, Weather weather, Ask ask, DoublePredicate goOn, Consumer<Season.Month> told) {
        NightRun.Ask start = new NightRun.Ask(
                ask.from(), ask.until(), ask.hour(), LocalTime.of(16, 0), ask.limit(), ask.step(), ask.tolerance());
        Simulation sim = NightRun.settled(rig, weather, start);
        double from = sim.time();
        double until = NightRun.seconds(weather, ask.until());
        Recorder recorder = sim.record(until, ask.step());
        List<Season.Month> months = new ArrayList<>();
        double woodBefore = 0;
        double toppedUp = 0;
        double monthBegan = from;
        double t = from;
        while (t < until - 1) {
            LocalDateTime now = weather.start().plusSeconds(Math.round(t));
            double next = Math.min(
                    until,
                    NightRun.seconds(weather, now.toLocalDate().plusDays(1).atStartOfDay()));
            sim.run(next);
            if (now.getDayOfWeek() == TOP_UP) toppedUp += sim.fillUp();
            YearMonth month = YearMonth.from(now);
            LocalDateTime then = weather.start().plusSeconds(Math.round(next));
            if (!YearMonth.from(then).equals(month) || next >= until - 1) {
                months.add(month(month, recorder.trace(), monthBegan, next, sim.wood() - woodBefore, ask.limit()));
                told.accept(months.get(months.size() - 1));
                woodBefore = sim.wood();
                monthBegan = next;
            }
            t = next;
            if (!goOn.test((t - from) / (until - from))) throw new CancellationException("season stopped at " + then);
        }
        Ledger ledger = sim.ledger();
        Trace trace = recorder.trace();
        float[] room = trace.column("room");
        double below = 0;
        for (float r : room) if (r < ask.limit()) below += trace.step();
        Plant plant = sim.plant();
        List<Night.Drive> drives = new ArrayList<>();
        for (int i = 0; i < plant.driven().size(); i++) {
            if (!plant.driven().get(i).moved()) continue;
            drives.add(new Night.Drive(plant.driven().get(i).name(), sim.starts(i), sim.runSeconds(i) / 3600));
        }
        return new Season(
                rig.name(),
                weather.start(),
                from,
                until,
                "settled to the mean day of the " + NightRun.REMEMBERED_DAYS + " days before, then the last "
                        + NightRun.LIVED_DAYS + " days as they were",
                List.copyOf(months),
                mornings(weather, trace, ask.hour(), plant.store().length > 0),
                ask.limit(),
                below / 3600,
                new Night.Boil(recorder.boilMargin, recorder.boilMarginTime, recorder.boilMarginWhere),
                recorder.boilingSeconds / 60,
                ledger.meter("steam lost"),
                ledger.meter("water evaporated"),
                toppedUp,
                sim.wood(),
                sim.loads(),
                recorder.flueSeconds > 0 ? recorder.flueBelowDewPoint / recorder.flueSeconds : 0,
                drives,
                ledger,
                trace,
                sim.counters(),
                0);
    }

    private static Season.Month month(
            YearMonth month, Trace trace, double from, double until, double wood, double limit) {
        int first = (int) Math.max(0, Math.ceil((from - trace.time(0)) / trace.step()));
        int last = (int) Math.min(trace.size() - 1.0, Math.floor((until - trace.time(0)) / trace.step()));
        double below = 0;
        double room = 0;
        double out = 0;
        double degreeDays = 0;
        int perDay = (int) Math.round(DayClock.DAY / trace.step());
        double dayOut = 0;
        int inDay = 0;
        for (int i = first; i < last; i++) {
            double r = trace.value("room", i);
            double o = trace.value("outdoors", i);
            if (r < limit) below += trace.step();
            room += r;
            out += o;
            dayOut += o;
            if (++inDay == perDay || i == last - 1) {
                degreeDays += Math.max(0, BASE - dayOut / inDay) * inDay / perDay;
                dayOut = 0;
                inDay = 0;
            }
        }
        int n = Math.max(1, last - first);
        return new Season.Month(
                month, (until - from) / DayClock.DAY, wood, below / 3600, room / n, out / n, degreeDays);
    }

    private static List<Season.Morning> mornings(Weather weather, Trace trace, LocalTime hour, boolean store) {
        double first = hour.toSecondOfDay() - weather.start().toLocalTime().toSecondOfDay();
        List<Season.Morning> all = new ArrayList<>();
        double days = Math.ceil((trace.time(0) - first) / DayClock.DAY);
        for (double t = first + days * DayClock.DAY; ; t += DayClock.DAY) {
            int i = (int) Math.round((t - trace.time(0)) / trace.step());
            if (i >= trace.size()) break;
            all.add(new Season.Morning(
                    t,
                    trace.value("room", i),
                    trace.value("outdoors", i),
                    store ? trace.value("store mean", i) : Double.NaN));
        }
        all.sort(Comparator.comparingDouble(Season.Morning::room));
        return List.copyOf(all.subList(0, Math.min(MORNINGS, all.size())));
    }
}
