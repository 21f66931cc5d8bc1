package stokewell.show;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import stokewell.file.UnitSystem;
import stokewell.run.Event;
import stokewell.run.Night;
import stokewell.run.Season;
import stokewell.run.Trace;

/** The course of a run in a terminal: temperatures in dots, what ran and burnt in strips under them. */
public final class TerminalPlot {

    private static final int LEFT = 7;
    private static final int RIGHT = 14;
    private static final String BARS = " ▁▂▃▄▅▆▇█";

    /** One curve: a dot at every {@code every}-th column, two dots thick or one. */
    private record Curve(String name, float[] kelvin, int every, boolean thick) {}

    private final Trace trace;
    private final LocalDateTime start;
    private final Measure as;
    private final int wide;
    private final int high;
    private final List<String> lines = new ArrayList<>();

    private TerminalPlot(Trace trace, LocalDateTime start, UnitSystem units, int width, int height) {
        this.trace = trace;
        this.start = start;
        as = Measure.plain(units);
        wide = Math.max(16, Math.min(width, 400) - LEFT - RIGHT);
        high = Math.max(4, Math.min(height, 100) - 2);
    }

    /**
     * Room, store and outdoors over the night; under them the stove and when pump and fan ran.
     *
     * @param width  characters, at least 37
     * @param height lines of the plot with its axis, at least 6; the strips come on top of that
     */
    public static String night(Night night, UnitSystem units, int width, int height) {
        TerminalPlot plot = new TerminalPlot(night.trace(), night.weatherStart(), units, width, height);
        if (night.trace().size() < 2) return "";
        List<Curve> curves = new ArrayList<>();
        plot.curve(curves, "outdoors", "outdoors", 6, false);
        List<String> layers = layers(night.trace());
        if (!layers.isEmpty()) {
            plot.curve(curves, "store bottom", layers.get(layers.size() - 1), 3, false);
            plot.curve(curves, "store top", layers.get(0), 1, false);
        }
        plot.curve(curves, "ROOM", "room", 1, true);
        plot.draw(curves, night.limit());
        plot.hours();
        plot.stove();
        for (Night.Drive d : night.drives()) plot.drive(night, d.name());
        plot.loads(night);
        return plot.text();
    }

    /** Room, store and outdoors over the season, by days where there are more days than columns. */
    public static String season(Season season, UnitSystem units, int width, int height) {
        TerminalPlot plot = new TerminalPlot(season.trace(), season.weatherStart(), units, width, height);
        if (season.trace().size() < 2) return "";
        List<Curve> curves = new ArrayList<>();
        plot.curve(curves, "outdoors", "outdoors", 3, false);
        plot.curve(curves, "store mean", "store mean", 1, false);
        plot.curve(curves, "ROOM", "room", 1, true);
        plot.draw(curves, season.limit());
        plot.days();
        return plot.text();
    }

    /** Columns of the store's layers, top first. */
    static List<String> layers(Trace trace) {
        List<String> layers = new ArrayList<>();
        for (String name : trace.namesLike("store ")) if (!name.equals("store mean")) layers.add(name);
        return layers;
    }

    private void curve(List<Curve> curves, String name, String column, int every, boolean thick) {
        if (trace.has(column)) curves.add(new Curve(name, trace.column(column), every, thick));
    }

    private void draw(List<Curve> curves, double limit) {
        double low = as.scale(limit);
        double high1 = low;
        for (Curve c : curves) {
            for (int x = 0; x < 2 * wide; x++) {
                double k = mean(c.kelvin(), x, 2 * wide);
                if (Double.isNaN(k)) continue;
                low = Math.min(low, as.scale(k));
                high1 = Math.max(high1, as.scale(k));
            }
        }
        double step = Steps.nice((high1 - low) / Math.max(2, high / 3.0));
        low = Math.floor(low / step) * step;
        double top = Math.max(low + step, Math.ceil(high1 / step) * step);
        Dots dots = new Dots(wide, high);
        double perDot = (top - low) / (dots.down() - 1);
        for (int x = 0; x < dots.across(); x += 4) dots.dot(x, row(as.scale(limit), top, perDot));
        for (Curve c : curves) trail(dots, c, top, perDot);
        String[] right = names(curves, limit, top, perDot);
        int shown = Integer.MIN_VALUE;
        for (int r = 0; r < high; r++) {
            double upper = top - (4 * r - 0.5) * perDot;
            double lower = top - (4 * r + 3.5) * perDot;
            double tick = Math.floor(upper / step) * step;
            boolean has = tick > lower && r > shown;
            String mark =
                    has ? Plain.right(Numbers.bare(tick, 1), 4) + (r == 0 ? as.scaleUnit() + " |" : "  |") : "      |";
            if (has) shown = r;
            lines.add(mark + Plain.left(dots.row(r), wide) + right[r]);
        }
    }

    private static int row(double value, double top, double perDot) {
        return (int) Math.round((top - value) / perDot);
    }

    private void trail(Dots dots, Curve c, double top, double perDot) {
        int before = Integer.MIN_VALUE;
        for (int x = 0; x < dots.across(); x++) {
            double k = mean(c.kelvin(), x, dots.across());
            if (Double.isNaN(k)) {
                before = Integer.MIN_VALUE;
                continue;
            }
            int y = row(as.scale(k), top, perDot);
            if (x % c.every() == 0) {
                int from = before == Integer.MIN_VALUE || c.every() > 1 ? y : before + Integer.signum(y - before);
                dots.column(x, from, y);
                if (c.thick()) dots.column(x, from - 1, y - 1);
            }
            before = y;
        }
    }

    /** Mean of the samples that a column of dots stands for. */
    private static double mean(float[] values, int x, int across) {
        int n = values.length;
        int first = (int) ((long) x * n / across);
        int last = Math.max(first + 1, (int) ((long) (x + 1) * n / across));
        double sum = 0;
        int count = 0;
        for (int i = first; i < Math.min(n, last); i++) {
            if (!Float.isFinite(values[i])) continue;
            sum += values[i];
            count++;
        }
        return count > 0 ? sum / count : Double.NaN;
    }

    /** The names of the curves beside their ends, none over another and none past another. */
    private String[] names(List<Curve> curves, double limit, double top, double perDot) {
        record Name(double end, String words) {}
        List<Name> names = new ArrayList<>();
        for (Curve c : curves) {
            double end = c.kelvin()[c.kelvin().length - 1];
            if (Double.isFinite(end)) names.add(new Name(end, " " + c.name()));
        }
        names.add(new Name(limit, " limit"));
        names.sort(Comparator.comparingDouble((Name n) -> -n.end()));
        int[] rows = new int[names.size()];
        for (int i = 0; i < rows.length; i++)
            rows[i] = row(as.scale(names.get(i).end()), top, perDot) / 4;
        apart(rows);
        String[] right = new String[high];
        java.util.Arrays.fill(right, "");
        for (int i = 0; i < rows.length; i++)
            if (rows[i] >= 0) right[rows[i]] = names.get(i).words();
        return right;
    }

    /** Moves rows, given from the top down, apart by one at least and all together as little as can be (least squares). */
    private void apart(int[] rows) {
        int n = rows.length;
        double[] sum = new double[n];
        int[] count = new int[n];
        int blocks = 0;
        for (int i = 0; i < n; i++) {
            sum[blocks] = rows[i] - i;
            count[blocks++] = 1;
            while (blocks > 1 && sum[blocks - 2] / count[blocks - 2] > sum[blocks - 1] / count[blocks - 1]) {
                sum[blocks - 2] += sum[blocks - 1];
                count[blocks - 2] += count[blocks - 1];
                blocks--;
            }
        }
        for (int k = 0, i = 0; k < blocks; k++) {
            int moved = (int) Math.round(sum[k] / count[k]);
            for (int end = i + count[k]; i < end; i++) rows[i] = Math.max(i, Math.min(moved + i, high - n + i));
        }
    }

    private void hours() {
        double from = trace.time(0);
        double until = trace.time(trace.size() - 1);
        double every = Steps.hours((until - from) / 3600 / Math.max(2, wide / 8.0)) * 3600;
        axis(Steps.times(start, from, until, every), from, until, false);
    }

    private void days() {
        double from = trace.time(0);
        double until = trace.time(trace.size() - 1);
        axis(Steps.months(start, from, until), from, until, true);
    }

    private void axis(List<Double> times, double from, double until, boolean months) {
        StringBuilder rule = new StringBuilder(Plain.repeat('-', wide));
        StringBuilder words = new StringBuilder(Plain.repeat(' ', wide));
        int free = 0;
        for (double t : times) {
            int x = (int) Math.min(wide - 1L, Math.round((t - from) / (until - from) * (wide - 1)));
            LocalDateTime at = start.plusSeconds(Math.round(t));
            rule.setCharAt(x, '+');
            String word = months ? Clock.month(at.getMonthValue()) : Clock.hour(at);
            int begin = Math.max(0, Math.min(wide - word.length(), months ? x : x - 2));
            if (begin < free) continue;
            words.replace(begin, begin + word.length(), word);
            free = begin + word.length() + 1;
        }
        lines.add("      +" + rule);
        lines.add("       " + words.toString().stripTrailing());
    }

    private void stove() {
        if (!trace.has("stove")) return;
        float[] stove = trace.column("stove");
        double most = 0;
        double least = Double.POSITIVE_INFINITY;
        for (float k : stove) {
            most = Math.max(most, k);
            least = Math.min(least, k);
        }
        StringBuilder strip = new StringBuilder(wide);
        for (int x = 0; x < wide; x++) {
            double k = mean(stove, x, wide);
            double share = most > least ? (k - least) / (most - least) : 0;
            strip.append(BARS.charAt((int) Math.max(0, Math.min(8, Math.round(8 * share)))));
        }
        strip("stove", strip, "to " + as.hot(most));
    }

    private void drive(Night night, String name) {
        List<Running.Spell> spells = Running.spells(night, name);
        StringBuilder strip = new StringBuilder(wide);
        double span = night.until() - night.from();
        double hours = 0;
        for (int x = 0; x < wide; x++) {
            double from = night.from() + span * x / wide;
            double share = Running.share(spells, from, from + span / wide);
            strip.append(share <= 0 ? ' ' : BARS.charAt((int) Math.max(1, Math.round(8 * share))));
        }
        for (Running.Spell s : spells) hours += (s.until() - s.from()) / 3600;
        strip(name, strip, as.hours(hours));
    }

    private void loads(Night night) {
        StringBuilder strip = new StringBuilder(Plain.repeat(' ', wide));
        double span = night.until() - night.from();
        int count = 0;
        for (Event.Loaded l : Running.loads(night)) {
            int x = (int) Math.min(wide - 1L, Math.max(0, Math.round((l.time() - night.from()) / span * (wide - 1))));
            strip.setCharAt(x, '^');
            count++;
        }
        if (count > 0) strip("loads", strip, Integer.toString(count));
    }

    private void strip(String name, StringBuilder marks, String sum) {
        lines.add(Plain.left(Plain.name(name, LEFT - 1), LEFT) + marks + " " + sum);
    }

    private String text() {
        StringBuilder all = new StringBuilder();
        for (String line : lines) all.append(line.stripTrailing()).append('\n');
        return all.toString();
    }
}
