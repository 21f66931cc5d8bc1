package stokewell.show;

import java.util.List;
import stokewell.fit.Saving;
import stokewell.fit.WoodLine;
import stokewell.fit.WoodLoad;
import stokewell.fit.WoodRow;

/** Wood a day over what drives it, before and after: each row a mark, each period its line, the one before with its band. */
final class SavedChart {

    private static final int PIECES = 60;

    private final Saving s;
    private final Measure as;
    private final double width;
    private final boolean narrow;
    private final double size;

    SavedChart(Saving s, Measure as, double width) {
        this.s = s;
        this.as = as;
        this.width = width;
        narrow = width < 600;
        size = narrow ? 11.5 : 13;
    }

    Drawing scatter() {
        double tall = narrow ? 230 : 340;
        double left = narrow ? 34 : 48;
        double right = narrow ? 58 : 84;
        double top = 30;
        String what = s.comfort() ? "room less outdoors" : "outdoors";
        Drawing on = new Drawing(
                width, top + tall + 3.6 * size, "Wood a day over " + what + ", before (rings) and after (full marks)");
        double least = Math.min(low(s.rowsBefore()), low(s.rowsAfter()));
        double most = Math.max(high(s.rowsBefore()), high(s.rowsAfter()));
        double margin = 0.04 * (most - least) + 0.1;
        least -= margin;
        most += margin;
        Panel panel = new Panel(on, left, top, width - left - right, tall, least, most, size);
        double highest = 0;
        for (WoodRow r : s.rowsBefore()) highest = Math.max(highest, wood(r.perDay()));
        for (WoodRow r : s.rowsAfter()) highest = Math.max(highest, wood(r.perDay()));
        highest = Math.max(highest, wood(s.line().at(most) + s.line().band(most, Saving.SURE)));
        panel.scaled(0, highest, 6, as.massUnit() + " a day");
        across(on, panel, least, most, top, what);
        lines(panel, least, most);
        for (WoodRow r : s.rowsBefore()) ring(on, panel.across(r.mean()), panel.up(wood(r.perDay())), Ink.FIRE);
        for (WoodRow r : s.rowsAfter()) {
            on.area(disc(panel.across(r.mean()), panel.up(wood(r.perDay()))), Ink.WATER, 0.85);
        }
        panel.named();
        return on;
    }

    private void lines(Panel panel, double least, double most) {
        double[] x = new double[PIECES + 1];
        double[] line = new double[PIECES + 1];
        double[] low = new double[PIECES + 1];
        double[] high = new double[PIECES + 1];
        double[] after = new double[PIECES + 1];
        WoodLine own = s.afterLine();
        for (int i = 0; i <= PIECES; i++) {
            x[i] = least + (most - least) * i / PIECES;
            double band = wood(s.line().band(x[i], Saving.SURE));
            line[i] = Math.max(0, wood(s.line().at(x[i])));
            low[i] = Math.max(0, line[i] - band);
            high[i] = Math.max(0, line[i] + band);
            boolean far = own == null || x[i] < low(s.rowsAfter()) || x[i] > high(s.rowsAfter());
            after[i] = far ? Double.NaN : Math.max(0, wood(own.at(x[i])));
        }
        panel.between(x, low, high, Ink.FIRE, 0.12);
        panel.curve(x, line, Ink.FIRE, 1.6);
        panel.name(line[PIECES], "before", Ink.FIRE, false);
        if (own == null) return;
        panel.curve(x, after, Ink.WATER, 1.8, 7, 3);
        for (int i = PIECES; i >= 0; i--) {
            if (!Double.isFinite(after[i])) continue;
            panel.name(after[i], "after", Ink.WATER, true);
            break;
        }
    }

    /** Upright hairlines with numbers of the user's scale; outdoors the cold is to the right. */
    private void across(Drawing on, Panel panel, double least, double most, double top, String what) {
        double a = shown(least);
        double b = shown(most);
        double step = Steps.nice(Math.abs(b - a) / (narrow ? 5 : 9));
        for (double v = Math.ceil(Math.min(a, b) / step) * step; v <= Math.max(a, b); v += step) {
            double px = panel.across(hidden(v));
            on.line(px, top, px, panel.bottom(), Ink.RULE, 0.6);
            on.words(px, panel.bottom() + size + 5, Numbers.bare(v, 2), Ink.FAINT, size, Drawing.Anchor.MIDDLE);
        }
        String unit = s.comfort() ? as.differenceUnit() : as.scaleUnit();
        on.words(
                0.5 * width,
                panel.bottom() + 2.4 * size + 6,
                what + ", " + unit + (s.comfort() ? "" : ", colder to the right"),
                Ink.FAINT,
                size,
                Drawing.Anchor.MIDDLE);
    }

    private double shown(double x) {
        return s.comfort() ? as.differenceNumber(x) : as.scale(273.15 - x);
    }

    private double hidden(double v) {
        return s.comfort() ? v / as.differenceNumber(1) : 273.15 - as.kelvin(v);
    }

    private double wood(double joules) {
        return as.massNumber(joules / WoodLoad.TOLD_HEAT);
    }

    private void ring(Drawing on, double x, double y, Ink ink) {
        on.along(disc(x, y), ink, 1.3);
    }

    private Trail disc(double x, double y) {
        return Symbols.circle(x, y, narrow ? 2.6 : 3.4);
    }

    private static double low(List<WoodRow> rows) {
        return rows.stream().mapToDouble(WoodRow::mean).min().orElse(0);
    }

    private static double high(List<WoodRow> rows) {
        return rows.stream().mapToDouble(WoodRow::mean).max().orElse(1);
    }
}
