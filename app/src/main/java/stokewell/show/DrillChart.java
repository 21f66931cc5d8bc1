package stokewell.show;

import java.util.List;
import stokewell.check.Course;
import stokewell.check.Drill;
import stokewell.check.Level;
import stokewell.file.UnitSystem;

/**
 * All drills beside each other, on the same scales: the hottest pickup water against the time since the fault, its boiling
 * line, a mark where it boils, and how it goes without a protection that is there or with the air shut by hand.
 */
public final class DrillChart {

    private static final double FIRST = 30;
    private static final double LAST = 8 * 3600;
    private static final double COLD = 283.15;
    private static final double HOT = 413.15;
    private static final double[] TICKS = {60, 300, 1200, 3600, 4 * 3600};
    private static final String[] WORDS = {"1 min", "5", "20", "1 h", "4 h"};
    private static final double HIGH = 118;
    private static final double GAP = 26;
    private static final double HEAD = 38;

    private final List<Drill> drills;
    private final Measure as;
    private final double width;
    private final int columns;
    private final double size;

    DrillChart(List<Drill> drills, Measure as, double width) {
        this.drills = drills.stream().filter(Drill::possible).toList();
        this.as = as;
        this.width = width;
        boolean narrow = width < 600;
        columns = narrow ? 1 : 3;
        size = narrow ? 11.5 : 12.5;
    }

    Drawing drawing() {
        int rows = (drills.size() + columns - 1) / columns;
        double each = HEAD + HIGH + 20 + GAP;
        Drawing on = new Drawing(width, Math.max(1, rows) * each + 30, title());
        for (int i = 0; i < drills.size(); i++) {
            double wide = width / columns;
            panel(on, drills.get(i), (i % columns) * wide, Math.floorDiv(i, columns) * each, wide - GAP);
        }
        legend(on, Math.max(1, rows) * each + 8);
        return on;
    }

    private String title() {
        StringBuilder b = new StringBuilder("Temperature of the hottest pickup after each fault. ");
        for (Drill d : drills) {
            b.append(cap(d.fault().title())).append(": ").append(told(d)).append(". ");
        }
        return b.toString().strip();
    }

    static String cap(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }

    /** What a fault comes to, in three words. */
    static String end(Drill d) {
        if (d.flash() != null) return "flashes " + Numbers.of(d.flash().steam(), 1) + " kg of steam";
        if (d.withoutIce()) return "does not freeze; on ice, " + span(d.firstBoil());
        if (d.firstBoil() < Double.POSITIVE_INFINITY) return "boils in " + span(d.firstBoil());
        if (Double.isNaN(d.water().temperature())) return "no water";
        return "never boils";
    }

    /** When a drill first boils, for a column of its own. */
    public static String boils(Drill d) {
        return d.withoutIce() ? "no ice" : span(d.firstBoil());
    }

    /** A time as short as it can be told. */
    public static String span(double seconds) {
        if (!Double.isFinite(seconds)) return "never";
        if (seconds < 90) return Math.round(seconds) + " s";
        if (seconds < 5400) return Math.round(seconds / 60) + " min";
        return Numbers.of(seconds / 3600, 1) + " h";
    }

    private void panel(Drawing on, Drill d, double x, double y, double w) {
        double left = x + 30;
        double wide = w - 30;
        double top = y + HEAD;
        boolean bad = d.level() == Level.STOP || d.level() == Level.MEND;
        on.heavy(left, y + 14, cap(d.fault().title()), Ink.TEXT, size + 1, Drawing.Anchor.START);
        on.heavy(left + wide, y + 14, d.level().name(), bad ? Ink.DANGER : Ink.FAINT, size, Drawing.Anchor.END);
        on.words(left, y + 29, told(d) + beside(d), bad ? Ink.DANGER : Ink.FAINT, size, Drawing.Anchor.START);
        double step = as.us() ? 50 : 40;
        for (double mark = as.us() ? step : step / 2; as.kelvin(mark) <= HOT + 0.1; mark += step) {
            double py = up(top, as.kelvin(mark));
            on.line(left, py, left + wide, py, Ink.RULE, 0.6);
            on.words(left - 4, py + 0.35 * size, Numbers.of(mark, 0), Ink.FAINT, size - 1, Drawing.Anchor.END);
        }
        on.words(left - 4, top - 9, as.scaleUnit(), Ink.FAINT, size - 1, Drawing.Anchor.END);
        for (int k = 0; k < TICKS.length; k++) {
            double px = across(left, wide, TICKS[k]);
            on.line(px, top, px, top + HIGH, Ink.RULE, 0.6);
            on.words(px, top + HIGH + size + 2, WORDS[k], Ink.FAINT, size - 1, Drawing.Anchor.MIDDLE);
        }
        on.line(left, top + HIGH, left + wide, top + HIGH, Ink.TEXT, 1);
        curve(on, d.course(), d.course().boiling(), left, wide, top, Ink.FAINT, 1, 5, 3);
        for (Drill.Guard g : d.guards()) {
            Ink ink = g.byHand() ? Ink.TEXT : Ink.FIRE;
            if (g.byHand()) curve(on, g.course(), g.course().water(), left, wide, top, ink, 0.8, 1.5, 2.5);
            else curve(on, g.course(), g.course().water(), left, wide, top, ink, 1, 4, 3);
        }
        curve(on, d.course(), d.course().water(), left, wide, top, Ink.WATER, 2);
        mark(on, d, left, wide, top);
    }

    private String told(Drill d) {
        return Spoken.in(end(d), as.us() ? UnitSystem.US : UnitSystem.SI);
    }

    private String beside(Drill d) {
        if (d.withoutIce()) return "";
        if (d.pressure() == Double.POSITIVE_INFINITY) return ", nothing holds it";
        if (Double.isFinite(d.exposed())) return ", bare " + span(d.exposed());
        return d.waterLost() > 0.2 ? ", " + as.mass(d.waterLost(), 1) + " lost" : "";
    }

    private static double across(double left, double wide, double seconds) {
        double t = Math.max(FIRST, Math.min(LAST, seconds));
        return left + wide * Math.log(t / FIRST) / Math.log(LAST / FIRST);
    }

    private static double up(double top, double kelvin) {
        double t = Math.max(COLD, Math.min(HOT, kelvin));
        return top + HIGH * (1 - (t - COLD) / (HOT - COLD));
    }

    private static void curve(
            Drawing on,
            Course course,
            float[] values,
            double left,
            double wide,
            double top,
            Ink ink,
            double thick,
            double... dash) {
        Trail trail = new Trail();
        boolean pen = false;
        double drawn = -9;
        for (int i = 0; i < course.size(); i++) {
            double px = across(left, wide, course.after()[i]);
            boolean late = course.after()[i] > LAST;
            if (late || pen && px - drawn < 0.7 && i + 1 < course.size()) continue;
            drawn = px;
            if (pen) trail.line(px, up(top, values[i]));
            else trail.move(px, up(top, values[i]));
            pen = true;
        }
        on.along(trail, ink, thick, dash);
    }

    /** A lozenge where it boils. */
    private static void mark(Drawing on, Drill d, double left, double wide, double top) {
        double after = d.firstBoil();
        Course c = d.course();
        if (!(after <= LAST) || c.size() == 0) return;
        double at = c.boiling()[0];
        for (int i = 0; i < c.size(); i++) if (c.after()[i] <= after) at = c.boiling()[i];
        double px = across(left, wide, after);
        double py = up(top, at);
        on.area(
                new Trail()
                        .move(px, py - 6)
                        .line(px + 6, py)
                        .line(px, py + 6)
                        .line(px - 6, py)
                        .close(),
                Ink.DANGER,
                1);
        on.line(px, py, px, top + HIGH, Ink.DANGER, 0.8, 2, 2);
    }

    private void legend(Drawing on, double y) {
        double x = 30;
        x = key(on, x, y, Ink.WATER, 2, "hottest water of a pickup");
        if (columns == 1) {
            x = 30;
            y += 16;
        }
        x = key(on, x, y, Ink.FAINT, 1, "where it boils, marked", 5, 3);
        if (columns == 1) return;
        x = key(on, x, y, Ink.FIRE, 1, "without a protection that is there", 4, 3);
        key(on, x, y, Ink.TEXT, 0.8, "air shut, or fire drawn, by hand", 1.5, 2.5);
    }

    private double key(Drawing on, double x, double y, Ink ink, double thick, String text, double... dash) {
        on.line(x, y - 4, x + 24, y - 4, ink, thick, dash);
        on.words(x + 30, y, text, Ink.FAINT, size, Drawing.Anchor.START);
        return x + 30 + 6.0 * text.length() + 18;
    }
}
