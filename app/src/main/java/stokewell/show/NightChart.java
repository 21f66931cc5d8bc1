package stokewell.show;

import java.util.List;
import stokewell.run.Event;
import stokewell.run.Night;
import stokewell.run.Trace;

/** The course of a night on paper: room and store, the fire, and what ran when, over one axis of hours. */
final class NightChart {

    private final Night night;
    private final Measure as;
    private final double width;
    private final boolean narrow;
    private final double size;
    private final double left;
    private final double right;
    private final double[] times;

    NightChart(Night night, Measure as, double width) {
        this.night = night;
        this.as = as;
        this.width = width;
        narrow = width < 600;
        size = narrow ? 11.5 : 13;
        left = narrow ? 34 : 44;
        right = narrow ? 84 : 120;
        times = new double[night.trace().size()];
        for (int i = 0; i < times.length; i++) times[i] = night.trace().time(i);
    }

    /** Temperatures over the fire over the strips. */
    Drawing course() {
        double temperatures = narrow ? 230 : 300;
        double fire = narrow ? 90 : 110;
        double strips = 20.0 * (night.drives().size() + 1) + 6;
        double top = 26;
        double gap = 34;
        double height = top + temperatures + gap + fire + 14 + strips + 2 * size + 14;
        Drawing on = new Drawing(width, height, title());
        if (times.length < 2) return on;
        Panel rooms = panel(on, top, temperatures);
        rooms(on, rooms);
        Panel stove = panel(on, top + temperatures + gap, fire);
        stove(stove);
        strips(on, top + temperatures + gap + fire + 14, strips);
        return on;
    }

    private String title() {
        return "Temperatures of room, store, outdoors and stove from "
                + Clock.dayAndHour(night.at(night.from())) + " to " + Clock.dayAndHour(night.at(night.until()))
                + ", with the hours of pump and fan and the loads of wood. "
                + "The lowest room of the night is "
                + as.room(night.lowestRoom().room()) + ".";
    }

    private Panel panel(Drawing on, double y, double h) {
        return new Panel(on, left, y, width - left - right, h, times[0], times[times.length - 1], size);
    }

    private double[] scale(String column) {
        float[] kelvin = night.trace().column(column);
        double[] shown = new double[kelvin.length];
        for (int i = 0; i < shown.length; i++) shown[i] = as.scale(kelvin[i]);
        return shown;
    }

    private static double last(double[] values) {
        return values[values.length - 1];
    }

    private void rooms(Drawing on, Panel panel) {
        Trace trace = night.trace();
        double[] room = scale("room");
        double[] outdoors = scale("outdoors");
        List<String> layers = TerminalPlot.layers(trace);
        double[] storeTop = layers.isEmpty() ? new double[0] : scale(layers.get(0));
        double[] storeBottom = layers.isEmpty() ? new double[0] : scale(layers.get(layers.size() - 1));
        double limit = as.scale(night.limit());
        panel.scaled(
                least(limit, room, outdoors, storeTop, storeBottom),
                most(limit, room, outdoors, storeTop, storeBottom),
                narrow ? 6 : 8,
                as.scaleUnit());
        panel.hours(night.weatherStart(), false);
        panel.level(limit, Ink.FIRE, 1.2, 7, 4);
        panel.curve(times, outdoors, Ink.FAINT, 1.4, 1.5, 3);
        if (!layers.isEmpty()) {
            panel.curve(times, storeBottom, Ink.WATER, 1.6, 5, 3);
            panel.curve(times, storeTop, Ink.WATER, 2);
            panel.name(last(storeTop), "store top", Ink.WATER, false);
            panel.name(last(storeBottom), "store bottom", Ink.WATER, false);
        }
        panel.curve(times, room, Ink.TEXT, 3);
        panel.name(last(room), "room", Ink.TEXT, true);
        panel.name(limit, narrow ? "limit" : "limit " + as.setting(night.limit()), Ink.FIRE, false);
        panel.name(last(outdoors), "outdoors", Ink.FAINT, false);
        hour(on, panel);
        panel.named();
    }

    /** A dot on the room at the hour that counts. */
    private void hour(Drawing on, Panel panel) {
        Night.Morning m = night.morning();
        if (!Double.isFinite(m.room())) return;
        double x = panel.across(m.time());
        double y = panel.up(as.scale(m.room()));
        on.area(new Trail().box(x - 4, y - 4, 8, 8), Ink.TEXT, 1);
        on.line(x, y, x, 17, Ink.TEXT, 0.8, 2, 2);
        String words = as.room(m.room()) + " at " + Clock.hour(night.at(m.time()));
        on.heavy(Math.min(width - 4, x + 40), 13, words, Ink.TEXT, size, Drawing.Anchor.END);
    }

    private void stove(Panel panel) {
        Trace trace = night.trace();
        double[] stove = scale("stove");
        double high = most(as.scale(273.15), stove);
        for (String name : trace.namesLike("water ")) high = most(high, scale(name));
        double boiling = boiling();
        panel.scaled(Math.min(as.scale(273.15), least(0, stove)), high, 3, as.scaleUnit());
        panel.hours(night.weatherStart(), false);
        if (!Double.isNaN(boiling) && as.scale(boiling) <= high) {
            panel.level(as.scale(boiling), Ink.DANGER, 1, 7, 4);
            panel.name(as.scale(boiling), narrow ? "boils" : "water boils", Ink.DANGER, false);
        }
        for (String name : trace.namesLike("water ")) {
            double[] water = scale(name);
            panel.curve(times, water, Ink.WATER, 0.9);
            panel.name(last(water), shortened(name), Ink.WATER, false);
        }
        panel.curve(times, stove, Ink.FIRE, 2);
        panel.name(last(stove), "stove", Ink.FIRE, true);
        panel.named();
    }

    /** About where the water boils, K, from the least margin and the hottest known water; NaN without water. */
    private double boiling() {
        Trace trace = night.trace();
        if (!trace.has("boil margin")) return Double.NaN;
        float[] margin = trace.column("boil margin");
        double found = Double.NaN;
        List<String> waters = trace.namesLike("water ");
        if (waters.isEmpty()) return found;
        for (String name : waters) {
            float[] water = trace.column(name);
            for (int i = 0; i < margin.length; i++) {
                double at = margin[i] + water[i];
                if (Double.isFinite(at) && !(at <= found)) found = at;
            }
        }
        return found;
    }

    private String shortened(String name) {
        return Plain.name(name, narrow ? 12 : 17);
    }

    private void strips(Drawing on, double top, double height) {
        Panel axis = panel(on, top, height);
        axis.hours(night.weatherStart(), true);
        double y = top + 3;
        double name = width - right + 10;
        for (Event.Loaded l : Running.loads(night)) {
            double x = axis.across(l.time());
            on.area(
                    new Trail()
                            .move(x - 5, y + 13)
                            .line(x + 5, y + 13)
                            .line(x, y + 3)
                            .close(),
                    Ink.FIRE,
                    1);
        }
        on.words(
                name,
                y + 12,
                night.loads() + (night.loads() == 1 ? " load" : " loads"),
                Ink.FIRE,
                size,
                Drawing.Anchor.START);
        for (Night.Drive d : night.drives()) {
            y += 20;
            on.line(left, y + 16, width - right, y + 16, Ink.RULE, 0.6);
            Trail ran = new Trail();
            for (Running.Spell s : Running.spells(night, d.name())) {
                double x = axis.across(s.from());
                ran.box(x, y + 4, Math.max(1, axis.across(s.until()) - x), 12);
            }
            on.area(ran, Ink.WATER, 1);
            String hours = narrow ? "" : " " + as.hours(d.hours());
            on.words(
                    name,
                    y + 14,
                    Plain.name(d.name(), narrow ? 12 : 11) + hours,
                    Ink.WATER,
                    size,
                    Drawing.Anchor.START);
        }
    }

    /** What the fire gives, what goes into water, what the emitter gives to the room, and what the store loses. */
    Drawing powers() {
        double h = narrow ? 170 : 200;
        Drawing on = new Drawing(
                width,
                26 + h + 2 * size + 14,
                "Power of the fire, into the water, from the store to the room, and the store's own losses, as means of "
                        + "a quarter of an hour");
        if (times.length < 2) return on;
        double[] fire = power("power heat released");
        double[] water = power("power fire to water");
        double[] given = power("power store's heat to room");
        double[] lost = power("power store to room");
        double[] down = power("power store to floor");
        for (int i = 0; i < lost.length; i++) if (i < down.length) lost[i] += down[i];
        Panel panel = panel(on, 26, h);
        double high = most(0, fire, water, given);
        double low = least(0, water, given);
        panel.scaled(low < -0.05 * high ? low : 0, high, 5, as.powerUnit());
        panel.hours(night.weatherStart(), true);
        if (fire.length > 0) {
            panel.between(times, new double[times.length], fire, Ink.FIRE, 0.16);
            panel.curve(times, fire, Ink.FIRE, 2);
        }
        panel.curve(times, lost, Ink.FAINT, 1.4, 1.5, 3);
        panel.curve(times, given, Ink.TEXT, 2);
        panel.curve(times, water, Ink.WATER, 2);
        peak(panel, fire, narrow ? "fire" : "fire releases", Ink.FIRE, true);
        peak(panel, water, "into water", Ink.WATER, false);
        peak(panel, given, narrow ? "to room" : "store to room", Ink.TEXT, false);
        peak(panel, lost, "store loses", Ink.FAINT, false);
        panel.named();
        return on;
    }

    private static void peak(Panel panel, double[] values, String name, Ink ink, boolean bold) {
        if (values.length > 0) panel.name(last(values), name, ink, bold);
    }

    /** Means of a quarter of an hour, in the user's unit; empty without such a column. */
    private double[] power(String column) {
        if (!night.trace().has(column)) return new double[0];
        float[] watts = night.trace().column(column);
        int half = (int) Math.max(0, Math.round(450 / night.trace().step()) - 1);
        double[] shown = new double[watts.length];
        for (int i = 0; i < shown.length; i++) {
            double sum = 0;
            int count = 0;
            for (int j = Math.max(0, i - half); j <= Math.min(shown.length - 1, i + half); j++) {
                if (!Float.isFinite(watts[j])) continue;
                sum += watts[j];
                count++;
            }
            shown[i] = count > 0 ? as.powerNumber(sum / count) : 0;
        }
        return shown;
    }

    /** The store's layers over time, the top at the top, coloured by their temperature; null without a store. */
    Drawing layers() {
        List<String> names = TerminalPlot.layers(night.trace());
        if (names.isEmpty() || times.length < 2) return null;
        double h = narrow ? 130 : 160;
        double legend = 46;
        Drawing on = new Drawing(
                width,
                14 + h + 2 * size + 14 + legend,
                "The store's layers over time, the top at the top, coloured by temperature");
        float[][] layers = new float[names.size()][];
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int k = 0; k < layers.length; k++) {
            layers[k] = night.trace().column(names.get(k));
            for (float v : layers[k]) {
                low = Math.min(low, as.scale(v));
                high = Math.max(high, as.scale(v));
            }
        }
        double step = Steps.nice(Math.max(1, high - low) / 5);
        low = Math.floor(low / step) * step;
        high = Math.max(low + step, Math.ceil(high / step) * step);
        Panel panel = panel(on, 14, h);
        cells(on, panel, layers, h, low, high);
        panel.hours(night.weatherStart(), true);
        on.words(left - 6, 14 + size, "top", Ink.FAINT, size, Drawing.Anchor.END);
        on.words(left - 6, 14 + h, "base", Ink.FAINT, size, Drawing.Anchor.END);
        legend(on, 14 + h + 2 * size + 18, low, high, step);
        return on;
    }

    private static final int SHADES = 64;

    private void cells(Drawing on, Panel panel, float[][] layers, double h, double low, double high) {
        int columns = Math.min(times.length - 1, narrow ? 72 : 144);
        Trail[] shades = new Trail[SHADES];
        for (int s = 0; s < SHADES; s++) shades[s] = new Trail();
        double thick = h / layers.length;
        for (int k = 0; k < layers.length; k++) {
            int begun = 0;
            int shade = shade(layers[k], 0, columns, low, high);
            for (int c = 1; c <= columns; c++) {
                int next = c < columns ? shade(layers[k], c, columns, low, high) : -1;
                if (next == shade) continue;
                double a = panel.across(time(begun, columns));
                double b = panel.across(time(c, columns));
                shades[shade].box(a, 14 + k * thick, b - a + (c < columns ? 0.5 : 0), thick + 0.5);
                begun = c;
                shade = next;
            }
        }
        for (int s = 0; s < SHADES; s++) on.area(shades[s], Ink.plain(Warmth.rgb((s + 0.5) / SHADES)), 1);
    }

    private double time(int column, int columns) {
        return times[0] + (times[times.length - 1] - times[0]) * column / columns;
    }

    private int shade(float[] layer, int column, int columns, double low, double high) {
        int i = (int) Math.round((column + 0.5) * (layer.length - 1) / columns);
        double share = (as.scale(layer[i]) - low) / (high - low);
        return (int) Math.max(0, Math.min(SHADES - 1, Math.floor(SHADES * share)));
    }

    private void legend(Drawing on, double y, double low, double high, double step) {
        double w = Math.min(360, width - left - right);
        for (int s = 0; s < SHADES; s++) {
            Ink ink = Ink.plain(Warmth.rgb((s + 0.5) / SHADES));
            on.box(left + w * s / SHADES, y, w / SHADES + 0.5, 12, ink);
        }
        for (double v = low; v <= high + 0.01 * step; v += step) {
            double x = left + w * (v - low) / (high - low);
            on.line(x, y + 12, x, y + 16, Ink.FAINT, 1);
            boolean last = v + step > high + 0.01 * step;
            String words = Numbers.bare(v, 1) + (last ? " " + as.scaleUnit() : "");
            on.words(x, y + 18 + size, words, Ink.FAINT, size, Drawing.Anchor.MIDDLE);
        }
    }

    private static double least(double start, double[]... all) {
        double least = start;
        for (double[] values : all) for (double v : values) if (Double.isFinite(v)) least = Math.min(least, v);
        return least;
    }

    private static double most(double start, double[]... all) {
        double most = start;
        for (double[] values : all) for (double v : values) if (Double.isFinite(v)) most = Math.max(most, v);
        return most;
    }
}
