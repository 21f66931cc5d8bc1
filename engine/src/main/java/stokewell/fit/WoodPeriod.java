package stokewell.fit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * One of the two periods of a comparison, day by day.
 *
 * @param days     from the day of the first load to that of the last, none left out
 * @param loads    of these days
 * @param watched  whether a sensor would have seen a fire that nobody noted
 */
public record WoodPeriod(List<WoodDay> days, List<WoodLoad> loads, boolean watched) {

    /** Hour at which a day begins, s. */
    static final double MORNING = 5 * 3600;

    private static final double DAY = 86400;
    private static final int HOURS_ENOUGH = 18;
    /** So many days in a row without a load are taken for days that nobody noted, where no sensor sees the fire. */
    private static final int SILENT = 4;
    /** Above this nobody need light a fire, K. */
    private static final double WARM = 288.15;
    /** A store that climbs so far within so long is being fired, K and s. */
    private static final double STORE_RISE = 8;

    private static final double STORE_WITHIN = 6 * 3600;
    /** The same of a stove or a flue; loggers that read once an hour see it, too. */
    private static final double STOVE_RISE = 25;

    private static final double STOVE_WITHIN = 2 * 3600;
    /** A load explains a rise from so long before it to so long after, s. */
    private static final double EXPLAINS = 8 * 3600;

    private static final double LATE = 1800;

    public WoodPeriod {
        days = List.copyOf(days);
        loads = List.copyOf(loads);
    }

    /**
     * Puts a period together.
     *
     * @param from    s since 1970, standard time of the place
     * @param until   where it ends
     * @param loads   in the order of their times
     * @param outdoor temperature, K
     * @param indoor  temperature, K; null without a sensor
     * @param sun     on the horizontal, W/m2; null where it was not measured
     * @param fire    a sensor that shows a fire: stove, flue or store; null without one
     * @param store   whether that is the store's
     * @param moisture to take for loads whose moisture was not measured
     */
    public static WoodPeriod of(
            double from,
            double until,
            List<WoodLoad> loads,
            Series outdoor,
            Series indoor,
            Series sun,
            Series fire,
            boolean store,
            double moisture) {
        List<WoodLoad> own =
                loads.stream().filter(l -> l.time() >= from && l.time() < until).toList();
        List<WoodDay> days = new ArrayList<>();
        if (own.isEmpty()) return new WoodPeriod(days, own, fire != null);
        long first = day(own.get(0).time());
        long last = day(own.get(own.size() - 1).time());
        // a day that the period cuts is none
        if (from > first * DAY + MORNING + 1) first++;
        if (until < (last + 1) * DAY + MORNING - 1) last--;
        double[] heat = new double[(int) Math.max(0, last - first + 1)];
        int[] count = new int[heat.length];
        for (WoodLoad l : own) {
            int d = (int) (day(l.time()) - first);
            if (d < 0 || d >= heat.length) continue;
            heat[d] += l.heat(moisture);
            count[d]++;
        }
        boolean[] unnoted = unnoted(fire, store, own, first, heat.length);
        for (int d = 0; d < heat.length; d++) {
            double begin = (first + d) * DAY + MORNING;
            double out = mean(outdoor, begin);
            double in = indoor == null ? Double.NaN : mean(indoor, begin);
            WoodDay.Flaw flaw = unnoted[d]
                    ? WoodDay.Flaw.UNNOTED
                    : Double.isNaN(out) || indoor != null && Double.isNaN(in) ? WoodDay.Flaw.UNREAD : WoodDay.Flaw.NONE;
            double light = sun == null ? Double.NaN : mean(sun, begin);
            days.add(new WoodDay(LocalDate.ofEpochDay(first + d), heat[d], count[d], out, in, light, flaw));
        }
        if (fire == null) silence(days);
        return new WoodPeriod(days, own, fire != null);
    }

    private static long day(double time) {
        return (long) Math.floor((time - MORNING) / DAY);
    }

    /** Mean of a day by its hours; NaN where too few were read. */
    private static double mean(Series s, double begin) {
        Series hours = s.between(begin, begin + DAY).averaged(3600);
        return hours.size() < HOURS_ENOUGH ? Double.NaN : hours.mean();
    }

    private static boolean[] unnoted(Series fire, boolean store, List<WoodLoad> loads, long first, int count) {
        boolean[] days = new boolean[count];
        if (fire == null) return days;
        List<Climb> climbs = store ? climbs(fire, STORE_RISE, STORE_WITHIN) : climbs(fire, STOVE_RISE, STOVE_WITHIN);
        for (Climb c : climbs) {
            boolean known = loads.stream().anyMatch(l -> l.time() > c.from() - EXPLAINS && l.time() < c.seen() + LATE);
            int d = (int) (day(c.seen()) - first);
            if (!known && d >= 0 && d < count) days[d] = true;
        }
        return days;
    }

    /** A climb: where it began, and where it was too much to be anything else, s. */
    record Climb(double from, double seen) {}

    /**
     * Where a sensor climbs as only a fire makes it climb: so many K within so many s. {@link Burns#rises} looks for the low
     * point where a model's burn is to begin; here a slow sensor on store or flue must do, and only the day counts.
     */
    static List<Climb> climbs(Series s, double rise, double within) {
        List<Climb> found = new ArrayList<>();
        double[] t = s.time();
        double[] v = s.value();
        int open = 0;
        double quietUntil = Double.NEGATIVE_INFINITY;
        for (int i = 1; i < t.length; i++) {
            while (t[i] - t[open] > within) open++;
            int low = open;
            for (int k = open; k <= i; k++) if (v[k] <= v[low]) low = k;
            if (v[i] - v[low] <= rise) continue;
            // one fire climbs for hours: it is told once
            if (t[low] > quietUntil) found.add(new Climb(t[low], t[i]));
            quietUntil = t[i] + within;
            open = i;
        }
        return found;
    }

    /** Cold days in a row without a load, where nothing would have seen a fire. */
    private static void silence(List<WoodDay> days) {
        for (int i = 0; i < days.size(); ) {
            int end = i;
            while (end < days.size()
                    && days.get(end).loads() == 0
                    && !(days.get(end).outdoor() > WARM)) end++;
            if (end - i >= SILENT) {
                for (int k = i; k < end; k++) {
                    WoodDay d = days.get(k);
                    days.set(k, new WoodDay(d.date(), 0, 0, d.outdoor(), d.indoor(), d.sun(), WoodDay.Flaw.SILENT));
                }
            }
            i = Math.max(end, i + 1);
        }
    }

    /** How many days have a flaw. */
    public int count(WoodDay.Flaw flaw) {
        int n = 0;
        for (WoodDay d : days) if (d.flaw() == flaw) n++;
        return n;
    }

    /** Days with wood noted among those that count. */
    public double firedShare() {
        int n = 0;
        for (WoodDay d : days) if (d.flaw() == WoodDay.Flaw.NONE && d.loads() > 0) n++;
        return n / (double) Math.max(1, count(WoodDay.Flaw.NONE));
    }

    /**
     * Rows of so many days, counted from the first; a row with fewer than seven tenths of its days is left out.
     *
     * @param comfort whether the room's temperature counts
     */
    List<WoodRow> rows(int length, boolean comfort) {
        List<WoodRow> rows = new ArrayList<>();
        for (int from = 0; from + length <= days.size(); from += length) {
            List<WoodDay> good = days.subList(from, from + length).stream()
                    .filter(d -> d.flaw() == WoodDay.Flaw.NONE)
                    .toList();
            if (good.isEmpty() || good.size() < 0.7 * length) continue;
            double[] driving =
                    good.stream().mapToDouble(d -> d.driving(comfort)).toArray();
            double heat = good.stream().mapToDouble(WoodDay::heat).sum();
            double sun = good.stream().mapToDouble(WoodDay::sun).sum() / good.size();
            rows.add(new WoodRow(from / length, driving, heat / good.size(), sun));
        }
        return rows;
    }
}
