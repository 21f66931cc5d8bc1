package stokewell.show;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stokewell.check.HotLimits;
import stokewell.rig.Pickup;
import stokewell.rig.Rig;
import stokewell.run.Trace;
import stokewell.sheet.FirstFire;

/** Temperatures of the first small fire over its minutes, small beside a table. */
final class FirstFireChart {

    private static final double HEIGHT = 148;
    private static final double LEFT = 34;
    private static final double RIGHT = 68;
    private static final double TOP = 8;
    private static final double BOTTOM = 22;
    private static final double TYPE = 8.5;
    private static final int LAST = 180;
    private static final String ALARM = "shut the air";

    private final FirstFire fire;
    private final Rig rig;
    private final Measure as;
    private final double width;
    private final Drawing on;
    private final double low;
    private final double high;

    FirstFireChart(FirstFire fire, Rig rig, Measure as, double width) {
        this.fire = fire;
        this.rig = rig;
        this.as = as;
        this.width = width;
        low = 0;
        high = high();
        on = new Drawing(
                width, HEIGHT, "Temperatures of the first small fire over three hours, as in the table beside it.");
    }

    private double high() {
        Trace t = fire.night().trace();
        double most = HotLimits.alarm(rig);
        for (String c : columns()) for (float v : t.column(c)) most = Math.max(most, v);
        double step = as.us() ? 50 : 25;
        return low + step * Math.ceil((as.scale(most) - low) / step);
    }

    private List<String> columns() {
        List<String> all = new ArrayList<>(List.of("collar"));
        for (Pickup p : rig.pickups()) all.add("water " + p.name());
        if (rig.store() != null) all.add("store 1");
        return all;
    }

    private double x(double minute) {
        return LEFT + (width - LEFT - RIGHT) * minute / LAST;
    }

    private double y(double shown) {
        return HEIGHT - BOTTOM - (HEIGHT - TOP - BOTTOM) * (shown - low) / (high - low);
    }

    Drawing drawing() {
        grid();
        if (rig.loop() != null) {
            double alarm = y(as.scale(HotLimits.alarm(rig)));
            on.line(LEFT, alarm, width - RIGHT, alarm, Ink.DANGER, 1, 5, 3);
        }
        lines();
        return on;
    }

    private void grid() {
        for (double v = low; v <= high; v += as.us() ? 50 : 25) {
            on.line(LEFT, y(v), width - RIGHT, y(v), Ink.RULE, 0.6);
            on.words(LEFT - 4, y(v) + 3, Numbers.of(v, 0), Ink.TEXT, TYPE, Drawing.Anchor.END);
        }
        on.words(2, TOP + 14, as.scaleUnit(), Ink.FAINT, TYPE, Drawing.Anchor.START);
        for (int m = 0; m <= LAST; m += 60) {
            on.line(x(m), HEIGHT - BOTTOM, x(m), HEIGHT - BOTTOM + 3, Ink.TEXT, 0.8);
            on.words(x(m), HEIGHT - 9, m == 0 ? "0" : m + " min", Ink.TEXT, TYPE, Drawing.Anchor.MIDDLE);
        }
        on.line(LEFT, HEIGHT - BOTTOM, width - RIGHT, HEIGHT - BOTTOM, Ink.TEXT, 0.8);
    }

    private void lines() {
        Trace t = fire.night().trace();
        List<String> columns = columns();
        // the name of each end, the alarm among them: over the curves it could not be read
        Map<String, Double> tags = new LinkedHashMap<>();
        for (int c = 0; c < columns.size(); c++) {
            float[] v = t.column(columns.get(c));
            Trail trail = new Trail().move(x(0), y(as.scale(v[0])));
            for (int m = 2; m <= LAST; m += 2) trail.line(x(m), y(as.scale(v[fire.at(m)])));
            boolean flue = columns.get(c).equals("collar");
            boolean store = columns.get(c).equals("store 1");
            if (flue) on.along(trail, Ink.FIRE, 1.4, 5, 2);
            else if (store) on.along(trail, Ink.TEXT, 1.2, 1.5, 2);
            else on.along(trail, Ink.WATER, 1.8);
            tags.put(name(columns.get(c)), y(as.scale(v[fire.at(LAST)])) + 3);
        }
        if (rig.loop() != null) tags.put(ALARM, y(as.scale(HotLimits.alarm(rig))) + 3);
        List<String> order =
                tags.keySet().stream().sorted(Comparator.comparing(tags::get)).toList();
        double[] at = Tags.spread(order.stream().mapToDouble(tags::get).toArray(), TOP + 4, HEIGHT - BOTTOM);
        for (int i = 0; i < at.length; i++) {
            Ink ink = order.get(i).equals(ALARM) ? Ink.DANGER : Ink.TEXT;
            on.words(width - RIGHT + 4, at[i], order.get(i), ink, TYPE, Drawing.Anchor.START);
        }
    }

    private static String name(String column) {
        if (column.equals("collar")) return "flue";
        return column.equals("store 1") ? "store top" : Plain.name(column.substring("water ".length()), 12);
    }
}
