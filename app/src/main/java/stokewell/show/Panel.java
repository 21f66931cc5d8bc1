package stokewell.show;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;

/** One frame of a chart: time to the right, a quantity upwards, names at the ends of the curves. */
final class Panel {

    private static final double SPACE = 15;

    /** A name beside the frame, by the height it wants. */
    private record Name(double y, String text, Ink ink, boolean bold) {}

    private final Drawing on;
    private final double x;
    private final double y;
    private final double w;
    private final double h;
    private final double from;
    private final double until;
    private final double size;
    private final List<Name> names = new ArrayList<>();
    private double low;
    private double high = 1;

    Panel(Drawing on, double x, double y, double w, double h, double from, double until, double size) {
        this.on = on;
        this.x = x;
        this.y = y;
        this.w = w;
        this.h = h;
        this.from = from;
        this.until = until;
        this.size = size;
    }

    double across(double time) {
        return x + w * Math.max(0, Math.min(1, (time - from) / (until - from)));
    }

    double up(double value) {
        return y + h * (1 - (value - low) / (high - low));
    }

    double bottom() {
        return y + h;
    }

    /** Round ends and grid lines for values from low to high, with so many lines at most. */
    Panel scaled(double least, double most, int lines, String unit) {
        double step = Steps.nice(Math.max(1e-9, most - least) / lines);
        low = Math.floor(least / step + 1e-9) * step;
        high = Math.max(low + step, Math.ceil(most / step - 1e-9) * step);
        for (double v = low; v <= high + 0.01 * step; v += step) {
            boolean last = v + step > high + 0.01 * step;
            on.line(x, up(v), x + w, up(v), Ink.RULE, v == low ? 1 : 0.6);
            on.words(x - 6, up(v) + 0.35 * size, Numbers.bare(v, 3), Ink.FAINT, size, Drawing.Anchor.END);
            if (last) on.words(2, up(v) - 0.8 * size, unit, Ink.FAINT, size, Drawing.Anchor.START);
        }
        return this;
    }

    Panel curve(double[] times, double[] values, Ink ink, double thick, double... dash) {
        Trail trail = new Trail();
        boolean pen = false;
        for (int i = 0; i < values.length; i++) {
            if (!Double.isFinite(values[i])) {
                pen = false;
                continue;
            }
            double px = across(times[i]);
            double py = up(Math.max(low, Math.min(high, values[i])));
            if (pen) trail.line(px, py);
            else trail.move(px, py);
            pen = true;
        }
        on.along(trail, ink, thick, dash);
        return this;
    }

    /** Fills between two curves; both must be numbers throughout. */
    Panel between(double[] times, double[] lower, double[] upper, Ink ink, double opacity) {
        Trail trail = new Trail();
        for (int i = 0; i < times.length; i++) {
            if (i == 0) trail.move(across(times[i]), up(upper[i]));
            else trail.line(across(times[i]), up(upper[i]));
        }
        for (int i = times.length - 1; i >= 0; i--) trail.line(across(times[i]), up(lower[i]));
        on.area(trail.close(), ink, opacity);
        return this;
    }

    Panel level(double value, Ink ink, double thick, double... dash) {
        on.line(x, up(value), x + w, up(value), ink, thick, dash);
        return this;
    }

    Panel name(double value, String text, Ink ink, boolean bold) {
        if (Double.isFinite(value)) names.add(new Name(up(value), text, ink, bold));
        return this;
    }

    /** Writes the names, moved apart where they would touch. */
    Panel named() {
        names.sort((a, b) -> Double.compare(a.y(), b.y()));
        double[] at = new double[names.size()];
        double room = Math.max(SPACE, size + 2);
        for (int i = 0; i < at.length; i++) {
            at[i] = Math.max(names.get(i).y(), i == 0 ? y : at[i - 1] + room);
        }
        for (int i = at.length - 1; i >= 0; i--) {
            at[i] = Math.min(at[i], i == at.length - 1 ? y + h : at[i + 1] - room);
        }
        for (int i = 0; i < at.length; i++) {
            Name n = names.get(i);
            on.line(x + w, n.y(), x + w + 7, at[i], n.ink(), 0.8);
            if (n.bold()) on.heavy(x + w + 10, at[i] + 0.35 * size, n.text(), n.ink(), size, Drawing.Anchor.START);
            else on.words(x + w + 10, at[i] + 0.35 * size, n.text(), n.ink(), size, Drawing.Anchor.START);
        }
        return this;
    }

    /** Upright hairlines of the hours; the words under them only where wanted. */
    Panel hours(LocalDateTime start, boolean words) {
        double every = Steps.hours((until - from) / 3600 / (w / 52)) * 3600;
        double free = Double.NEGATIVE_INFINITY;
        for (double t : Steps.times(start, from, until, every)) {
            double px = across(t);
            on.line(px, y, px, y + h, Ink.RULE, 0.6);
            if (!words || px - 18 < free) continue;
            LocalDateTime at = start.plusSeconds(Math.round(t));
            on.words(px, y + h + size + 5, Clock.hour(at), Ink.FAINT, size, Drawing.Anchor.MIDDLE);
            if (at.getHour() == 0) {
                on.words(px, y + h + 2 * size + 8, Clock.day(at), Ink.FAINT, size, Drawing.Anchor.MIDDLE);
            }
            free = px + 22;
        }
        return this;
    }

    /** Upright hairlines at the first of every month, with its name under the month. */
    Panel months(LocalDateTime start) {
        List<Double> firsts = Steps.months(start, from, until);
        List<Double> begins = new ArrayList<>(firsts);
        if (begins.isEmpty() || begins.get(0) > from) begins.add(0, from);
        for (double t : firsts) on.line(across(t), y, across(t), y + h, Ink.RULE, 0.6);
        for (int i = 0; i < begins.size(); i++) {
            double a = across(begins.get(i));
            double b = i + 1 < begins.size() ? across(begins.get(i + 1)) : x + w;
            if (b - a < 2.2 * size) continue;
            String word =
                    Clock.month(start.plusSeconds(Math.round(begins.get(i))).getMonthValue());
            on.words(0.5 * (a + b), y + h + size + 5, word, Ink.FAINT, size, Drawing.Anchor.MIDDLE);
        }
        return this;
    }
}
