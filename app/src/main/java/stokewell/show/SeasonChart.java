package stokewell.show;

import stokewell.run.Season;
import stokewell.run.Trace;

/** A season on paper: the wood of its months, and its days. */
final class SeasonChart {

    private final Season season;
    private final CardFacts facts;
    private final Measure as;
    private final double width;
    private final boolean narrow;
    private final double size;
    private final double left;
    private final double right;

    SeasonChart(Season season, CardFacts facts, Measure as, double width) {
        this.season = season;
        this.facts = facts;
        this.as = as;
        this.width = width;
        narrow = width < 600;
        size = narrow ? 11.5 : 13;
        left = narrow ? 36 : 44;
        right = narrow ? 78 : 120;
    }

    /** A bar of wood for every month, with the hours below the limit under it. */
    Drawing months() {
        double h = 180;
        double top = 40;
        Drawing on = new Drawing(width, top + h + 3 * size + 24, "Wood of every month");
        int n = season.months().size();
        if (n == 0) return on;
        double most = 0;
        for (Season.Month m : season.months()) most = Math.max(most, m.wood());
        double each = (width - 2) / n;
        for (int i = 0; i < n; i++) {
            Season.Month m = season.months().get(i);
            double tall = most > 0 ? h * m.wood() / most : 0;
            double x = each * i;
            double middle = x + 0.5 * each;
            double bar = Math.min(80, 0.62 * each);
            on.box(middle - 0.5 * bar, top + h - tall, bar, tall, Ink.FIRE);
            String mass = narrow && n > 5 ? Numbers.of(as.massNumber(m.wood()), 0) : as.mass(m.wood(), 0);
            on.words(middle, top + h - tall - 5 - (narrow ? 0 : size + 2), mass, Ink.TEXT, size, Drawing.Anchor.MIDDLE);
            if (!narrow) {
                String stacked = facts.stack().told(m.wood(), facts.stackedDensity());
                on.words(middle, top + h - tall - 5, stacked, Ink.FAINT, size - 1, Drawing.Anchor.MIDDLE);
            }
            String name = Clock.month(m.month().getMonthValue());
            on.words(middle, top + h + size + 6, name, Ink.TEXT, size, Drawing.Anchor.MIDDLE);
            String below = Numbers.of(m.hoursBelow(), 0) + (narrow ? " h" : " h below");
            boolean some = m.hoursBelow() >= 0.5;
            on.words(middle, top + h + 2 * size + 11, some ? below : "", Ink.FAINT, size, Drawing.Anchor.MIDDLE);
        }
        on.line(0, top + h, width, top + h, Ink.TEXT, 1);
        return on;
    }

    /** Every day's coldest and warmest room, outdoors and store as means of the day, the limit. */
    Drawing days() {
        double h = narrow ? 220 : 300;
        Drawing on = new Drawing(
                width,
                26 + h + size + 14,
                "Room, store and outdoors on every day from " + Clock.date(season.at(season.from())) + " to "
                        + Clock.date(season.at(season.until())));
        Trace trace = season.trace();
        int perDay = (int) Math.max(1, Math.round(86400 / trace.step()));
        int days = trace.size() / perDay;
        if (days < 2) return on;
        double[] times = new double[days];
        for (int d = 0; d < days; d++) times[d] = trace.time(d * perDay) + 43200;
        double[] low = daily("room", days, perDay, -1);
        double[] high = daily("room", days, perDay, 1);
        double[] outdoors = daily("outdoors", days, perDay, 0);
        double[] store = trace.has("store mean") ? daily("store mean", days, perDay, 0) : new double[0];
        double limit = as.scale(season.limit());
        double least = limit;
        double most = limit;
        for (double[] all : new double[][] {low, high, outdoors, store}) {
            for (double v : all) {
                least = Math.min(least, v);
                most = Math.max(most, v);
            }
        }
        Panel panel = new Panel(on, left, 26, width - left - right, h, season.from(), season.until(), size);
        panel.scaled(least, most, narrow ? 6 : 8, as.scaleUnit()).months(season.weatherStart());
        panel.between(times, low, high, Ink.TEXT, 0.28);
        panel.curve(times, low, Ink.TEXT, 1.4);
        panel.curve(times, outdoors, Ink.FAINT, 1.2, 2, 2.5);
        panel.curve(times, store, Ink.WATER, 1.6);
        panel.level(limit, Ink.FIRE, 1.2, 7, 4);
        panel.name(high[days - 1], narrow ? "warmest" : "room, warmest", Ink.TEXT, false);
        panel.name(low[days - 1], narrow ? "room" : "room, coldest", Ink.TEXT, true);
        panel.name(outdoors[days - 1], "outdoors", Ink.FAINT, false);
        if (store.length > 0) panel.name(store[days - 1], "store", Ink.WATER, false);
        panel.name(limit, narrow ? "limit" : "limit " + as.setting(season.limit()), Ink.FIRE, false);
        panel.named();
        return on;
    }

    /** Least, mean or most of every day, on the user's scale. @param which below, at or above zero */
    private double[] daily(String column, int days, int perDay, int which) {
        float[] kelvin = season.trace().column(column);
        double[] shown = new double[days];
        for (int d = 0; d < days; d++) {
            double least = Double.POSITIVE_INFINITY;
            double most = Double.NEGATIVE_INFINITY;
            double sum = 0;
            for (int i = d * perDay; i < (d + 1) * perDay; i++) {
                least = Math.min(least, kelvin[i]);
                most = Math.max(most, kelvin[i]);
                sum += kelvin[i];
            }
            shown[d] = as.scale(which < 0 ? least : which > 0 ? most : sum / perDay);
        }
        return shown;
    }
}
