package stokewell.run;

import java.time.Duration;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import stokewell.matter.Water;
import stokewell.network.Compiler;
import stokewell.network.Plant;
import stokewell.rig.Rig;
import stokewell.weather.Weather;

/**
 * Runs a night: settles the rig to the mean day of the weeks before, lives through the last days as they were, then
 * records.
 */
public final class NightRun {

    /** Days whose mean the rig is settled to. */
    public static final int REMEMBERED_DAYS = 21;

    /** Days lived through before the night, after settling. */
    public static final int LIVED_DAYS = 3;

    /** Days that differ by less than this are alike to a person, K. */
    private static final double TOLD = 0.05;

    /** Room left for a store below its own boiling that counts as full, K: common practice, no source. */
    private static final double FULL_BELOW_BOILING = 8;

    /**
     * What is asked of a night.
     *
     * @param from      start
     * @param until     end
     * @param hour      the hour of the morning that counts
     * @param evening   from when on the lowest room counts
     * @param limit     room temperature that hours are counted against, K
     * @param step      of the trace, s; 0 for none
     * @param tolerance of a step, K
     */
    public record Ask(
            LocalDateTime from,
            LocalDateTime until,
            LocalTime hour,
            LocalTime evening,
            double limit,
            double step,
            double tolerance) {}

    private static final String REPEATED = "repeated until nothing changes";

    private NightRun() {}

    /** Runs. The weather must have been made for {@link Compiler#surfaces} of the rig. */
    public static Night run(Rig rig, Weather weather, Ask ask) {
        return run(rig, weather, ask, Given.NOTHING);
    }

    /** Runs from the settled rig with some of it set as a person says it stands. */
    public static Night run(Rig rig, Weather weather, Ask ask, Given given) {
        return run(weather, ask, given, settled(rig, weather, ask, Hurry.NONE));
    }

    /** Runs from where a rig stands {@link #settled} at the start of the night; it is used up. */
    public static Night run(Weather weather, Ask ask, Given given, Settled settled) {
        Simulation sim = settled.simulation();
        String swing = settled.swing(ask);
        String start =
                swing.isEmpty() ? startWords(weather) : startWords(weather).replace(REPEATED, "repeated") + swing;
        if (!given.nothing()) {
            sim.replace(given.in(sim.plant(), sim.states()));
            start += "; then set as given";
        }
        return record(sim, weather, ask, start);
    }

    /**
     * Runs from a rig that has long stood without a fire: nothing is settled, everything stands as given.
     *
     * @param given must say all
     */
    public static Night cold(Rig rig, Weather weather, Ask ask, Given given) {
        Plant plant = Compiler.compile(rig, weather);
        Simulation sim = new Simulation(plant, weather.start().toLocalTime().toSecondOfDay(), ask.tolerance());
        sim.place(seconds(weather, ask.from()), given.in(plant, plant.network().start()));
        return record(sim, weather, ask, "cold: no fire for days, everything as given");
    }

    /** A simulation that stands, settled, at the start of the night. */
    public static Simulation settled(Rig rig, Weather weather, Ask ask) {
        return settled(rig, weather, ask, Hurry.NONE).simulation();
    }

    /**
     * Settled, and what others may begin from.
     *
     * @param simulation stands at the start of the night
     * @param standing   what the rig settled to
     * @param days       lived to come there
     * @param residual   change from day to day that is left, K, greatest over all that holds heat
     * @param mean       stands at the start of the day that was repeated
     */
    public record Settled(Simulation simulation, Standing standing, int days, double residual, Simulation mean) {

        /** Days that are lived to see how far they differ. */
        private static final int MORE = 6;

        /** Whether a day repeats itself as exactly as is asked of an answer. */
        public boolean exact() {
            return residual < Settle.SETTLED;
        }

        /** Where the habit makes days that differ: by how much, in words; else nothing. */
        private String swing(Ask ask) {
            if (exact() || mean.plant() == simulation.plant()) return "";
            double origin = mean.time();
            double until = ask.hour().toSecondOfDay() - ask.from().toLocalTime().toSecondOfDay();
            Plant plant = mean.plant();
            double[] room = {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY};
            double[] store = room.clone();
            for (int day = 0; day < MORE; day++) {
                mean.run(origin + day * DayClock.DAY + (until > 0 ? until : until + DayClock.DAY));
                double[] x = mean.columns();
                spread(room, x[plant.room()]);
                if (plant.store().length > 0) spread(store, plant.storeMean(x));
            }
            if (room[1] - room[0] < TOLD && !(store[1] - store[0] >= TOLD)) return "";
            return String.format(
                            Locale.ROOT,
                            ". No two such days are alike, some load or switch always falls otherwise: in %d more of them the room was "
                                    + "%.1f to %.1f °C at %s",
                            MORE,
                            room[0] - 273.15,
                            room[1] - 273.15,
                            ask.hour())
                    + (plant.store().length == 0
                            ? ""
                            : String.format(
                                    Locale.ROOT, ", the store %.0f to %.0f °C", store[0] - 273.15, store[1] - 273.15));
        }

        private static void spread(double[] range, double value) {
            range[0] = Math.min(range[0], value);
            range[1] = Math.max(range[1], value);
        }
    }

    /**
     * As above, with less time: from where a rig that differs little has settled it takes fewer days and comes to nearly the
     * same. Where the day never quite repeats itself, what it comes to depends on where it began.
     *
     * @throws java.util.concurrent.CancellationException where no one waits any more
     */
    public static Settled settled(Rig rig, Weather weather, Ask ask, Hurry hurry) {
        double from = seconds(weather, ask.from());
        boolean repeats = weather.repeats() && weather.span() <= 1.5 * DayClock.DAY;
        int days = repeats ? 0 : LIVED_DAYS;
        double lived = from - days * DayClock.DAY;
        Weather mean = repeats ? weather : meanBefore(weather, lived);
        Plant settling = Compiler.compile(rig, mean);
        double secondOfDay = mean.start().toLocalTime().toSecondOfDay();
        double origin = repeats ? from : seconds(mean, weather.start().plusSeconds(Math.round(lived)));
        Simulation still = new Simulation(settling, secondOfDay, 2 * ask.tolerance());
        boolean known = hurry.near() != null && hurry.near().fits(settling.network());
        still.place(origin, known ? hurry.near().states() : settling.network().start());
        Settle.Found found = Settle.run(still, origin, known ? hurry : hurry.alone());
        Standing standing = Standing.of(still, settling.network(), found.ahead());
        // in a hurry the settled plant goes on where it stands
        Plant plant = known ? Compiler.under(settling, weather) : Compiler.compile(rig, weather);
        Simulation sim = new Simulation(plant, weather.start().toLocalTime().toSecondOfDay(), ask.tolerance());
        if (repeats) sim.take(still, from);
        else if (known) live(sim, still, from, hurry, standing);
        else live(sim, still, from, Hurry.NONE, standing);
        return new Settled(sim, standing, found.days(), found.residual(), still);
    }

    /** Lives through the days before a night; in a hurry only the last of them. */
    private static void live(Simulation sim, Simulation still, double from, Hurry hurry, Standing standing) {
        int day = Math.max(0, LIVED_DAYS - hurry.livedDays());
        boolean skips = hurry.near() != null && hurry.near().knows(day);
        if (!skips) day = 0;
        sim.take(still, from - (LIVED_DAYS - day) * DayClock.DAY);
        if (skips && day > 0) sim.replace(hurry.near().after(day, standing.states()));
        sim.watch((step, y) -> {
            for (int d = 1; d < LIVED_DAYS; d++) standing.note(d, step, from - (LIVED_DAYS - d) * DayClock.DAY);
        });
        sim.run(from);
        sim.watch((step, y) -> {});
        standing.note(LIVED_DAYS, sim.states());
        if (skips) standing.follow(hurry.near());
        sim.freshBooks();
    }

    private static Weather meanBefore(Weather weather, double lived) {
        LocalDateTime until = weather.start().plusSeconds(Math.round(lived));
        for (int days = REMEMBERED_DAYS; days >= 1; days--) {
            double begin = lived - days * DayClock.DAY;
            if (weather.covers(begin, lived)) return weather.meanDay(until.minusDays(days), until);
        }
        LocalDateTime first = weather.start();
        return weather.meanDay(first, first.plusDays(1));
    }

    /** What {@link #settled} comes from, in words. */
    public static String startWords(Weather weather) {
        boolean repeats = weather.repeats() && weather.span() <= 1.5 * DayClock.DAY;
        return repeats
                ? "settled: this day and habit " + REPEATED
                : "settled to the mean day of the " + REMEMBERED_DAYS + " days before, then the last " + LIVED_DAYS
                        + " days as they were";
    }

    static double seconds(Weather weather, LocalDateTime moment) {
        return Duration.between(weather.start(), moment).toMillis() / 1000.0;
    }

    /** Records a night from where a simulation stands. */
    public static Night record(Simulation sim, Weather weather, Ask ask, String start) {
        double from = sim.time();
        double until = seconds(weather, ask.until());
        Recorder recorder = sim.record(until, ask.step());
        sim.run(until);
        return outcome(sim, recorder, weather, ask, from, until, start);
    }

    private static Night outcome(
            Simulation sim, Recorder recorder, Weather weather, Ask ask, double from, double until, String start) {
        Plant plant = sim.plant();
        Trace trace = recorder.trace();
        Ledger ledger = sim.ledger();
        double hour = lastAt(weather, ask.hour(), from, until);
        double evening = lastAt(weather, ask.evening(), from, Double.isNaN(hour) ? until : hour);
        boolean store = plant.store().length > 0;
        Night.Morning morning = new Night.Morning(
                hour,
                sampled(trace, "room", hour),
                store ? sampled(trace, "store mean", hour) : Double.NaN,
                store ? sampled(trace, "store 1", hour) : Double.NaN);
        float[] room = trace.column("room");
        float[] bed = trace.column("bed");
        double above = 0;
        Night.Lowest lowest = new Night.Lowest(Double.NaN, Double.POSITIVE_INFINITY);
        int burnt = -1;
        for (int i = 0; i < room.length; i++) {
            // the last sample ends the run and stands for no time of its own
            if (i < room.length - 1 && room[i] > ask.limit()) above += trace.step();
            boolean night = Double.isNaN(evening) || trace.time(i) >= evening;
            if (night && room[i] < lowest.room()) lowest = new Night.Lowest(trace.time(i), room[i]);
            if (bed[i] > 0.05 * Math.max(1, sim.wood() / Math.max(1, sim.loads()))) burnt = i;
        }
        double carried = Double.NaN;
        if (burnt >= 0 && burnt < room.length - 1) {
            carried = Double.POSITIVE_INFINITY;
            for (int i = burnt; i < room.length; i++) {
                if (room[i] < ask.limit()) {
                    carried = (trace.time(i) - trace.time(burnt)) / 3600;
                    break;
                }
            }
        }
        double released = ledger.meter("heat released");
        double intoWater = ledger.meter("fire to water");
        double share = released > 0 ? intoWater / released : 0;
        List<Night.ToBoil> toBoil = new ArrayList<>();
        for (int i = 0; i < plant.pickups().size(); i++) {
            toBoil.add(new Night.ToBoil(
                    plant.rig().pickups().get(i).name(), recorder.minutesToBoil[i], recorder.minutesToBoilTime[i]));
        }
        List<Night.Drive> drives = new ArrayList<>();
        for (int i = 0; i < plant.driven().size(); i++) {
            if (!plant.driven().get(i).moved()) continue;
            drives.add(new Night.Drive(plant.driven().get(i).name(), sim.starts(i), sim.runSeconds(i) / 3600));
        }
        List<Event> events = new ArrayList<>(sim.events());
        events.addAll(recorder.boilings);
        events.sort((a, b) -> Double.compare(a.time(), b.time()));
        return new Night(
                plant.rig().name(),
                weather.start(),
                from,
                until,
                start,
                morning,
                lowest,
                ask.limit(),
                above / 3600,
                carried,
                new Night.Boil(recorder.boilMargin, recorder.boilMarginTime, recorder.boilMarginWhere),
                recorder.boilingSeconds / 60,
                ledger.meter("steam lost"),
                ledger.meter("water evaporated"),
                plant.header() < 0 || plant.sealed() != null ? Double.NaN : sim.columns()[plant.header()],
                sim.wood(),
                sim.loads(),
                share,
                store ? charge(sim, trace, events, share) : null,
                toBoil,
                recorder.flueSeconds > 0 ? recorder.flueBelowDewPoint / recorder.flueSeconds : 0,
                recorder.hottestBody,
                drives,
                ledger,
                trace,
                events,
                sim.counters(),
                0);
    }

    /** Room left in the store against what the fire will still bring, from the trace. */
    private static Night.Charge charge(Simulation sim, Trace trace, List<Event> events, double share) {
        Plant plant = sim.plant();
        double boiling = Water.boilingPoint(plant.rig().place().altitude());
        double full = boiling - FULL_BELOW_BOILING;
        double capacity = 0;
        for (double c : plant.storeCapacity()) capacity += c;
        double perLoad =
                sim.loads() == 0 ? 0 : sim.wood() / sim.loads() * plant.fire().netHeat() * share;
        float[] bed = trace.column("bed");
        float[] mean = trace.column("store mean");
        double[] loads = events.stream()
                .filter(e -> e instanceof Event.Loaded)
                .mapToDouble(Event::time)
                .toArray();
        double lastSafe = Double.NaN;
        boolean always = true;
        Night.Charge tightest = new Night.Charge(Double.NaN, Double.NaN, Double.NaN, full, Double.NaN);
        int next = 0;
        for (int i = 0; i < bed.length; i++) {
            double left = capacity * (full - mean[i]);
            double coming = bed[i] * plant.fire().netHeat() * share;
            if (left - coming - perLoad >= 0) lastSafe = trace.time(i);
            else always = false;
            double loaded = Double.NaN;
            // the sample after it: that at its own moment may not have seen it yet
            while (next < loads.length && loads[next] <= trace.time(i) - 0.5 * trace.step()) loaded = loads[next++];
            if (!Double.isNaN(loaded) && !(tightest.roomLeft() - tightest.coming() <= left - coming))
                tightest = new Night.Charge(loaded, left, coming, full, Double.NaN);
        }
        return new Night.Charge(
                tightest.time(),
                tightest.roomLeft(),
                tightest.coming(),
                full,
                always ? Double.POSITIVE_INFINITY : lastSafe);
    }

    private static double sampled(Trace trace, String column, double time) {
        if (Double.isNaN(time) || trace.size() == 0) return Double.NaN;
        int i = (int) Math.round((time - trace.time(0)) / trace.step());
        return trace.value(column, Math.max(0, Math.min(trace.size() - 1, i)));
    }

    /** The last time in a stretch at which the clock shows an hour; NaN if it does not. */
    private static double lastAt(Weather weather, LocalTime hour, double from, double until) {
        double origin = weather.start().toLocalTime().toSecondOfDay();
        double t = hour.toSecondOfDay() - origin;
        double days = Math.floor((until - t) / DayClock.DAY);
        double last = t + days * DayClock.DAY;
        return last >= from && last <= until ? last : Double.NaN;
    }
}
