package stokewell.show;

import java.util.ArrayList;
import java.util.List;
import stokewell.rig.Contents;
import stokewell.rig.Emitter;
import stokewell.rig.Pickup;
import stokewell.rig.Pipe;
import stokewell.rig.Rig;
import stokewell.rig.Switch;
import stokewell.sheet.Parts;
import stokewell.show.Symbols.Way;

/** The loop as a diagram: what follows what, which way the water goes, where sensors sit; nothing to scale. */
final class LoopDiagram {

    private static final double HOT = 74;
    private static final double BLOCK = 24;
    private static final double TYPE = 9;

    private final Rig rig;
    private final Sizes sizes;
    private final Measure as;
    private final Drawing on;
    private final double width;
    private final double cool;
    private final double fire = 118;
    private final double tankLeft;
    private final double tankRight;
    private final List<Emitter> piped = new ArrayList<>();
    private final List<double[]> placed = new ArrayList<>();

    LoopDiagram(Rig rig, Measure as, double width) {
        this.rig = rig;
        this.width = width;
        sizes = new Sizes(as);
        this.as = as;
        for (Emitter e : rig.emitters()) if (Contents.circuit(e) != null) piped.add(e);
        int rows = Math.max(rig.pickups().size() + 1, piped.size() * 2);
        cool = HOT + Math.max(84, rows * (BLOCK + 6));
        tankLeft = width * (piped.isEmpty() ? 0.7 : 0.53);
        tankRight = tankLeft + 92;
        on = new Drawing(width, cool + 40, "The loop as a diagram, not to scale: " + told());
    }

    private String told() {
        StringBuilder b = new StringBuilder("cool water from the store");
        if (rig.loop().pump() != null) b.append(" through the pump");
        b.append(" to ");
        for (Pickup p : rig.pickups()) b.append(p.name()).append(", then ");
        b.append("hot to the store; ");
        b.append(rig.safety().closed() ? "closed, with an expansion vessel" : "an open vent rises from the hot pipe");
        for (Emitter e : rig.emitters()) b.append("; ").append(e.name()).append(" draws from the store");
        return b.append('.').toString();
    }

    Drawing drawing() {
        ring();
        if (rig.safety().closed()) vessel();
        else header();
        pickups();
        tank();
        for (int i = 0; i < piped.size(); i++) circuit(i);
        sensors();
        return on;
    }

    private void ring() {
        on.along(new Trail().move(fire, HOT + 20).line(fire, HOT).line(tankLeft, HOT), Ink.FIRE, 2.2);
        on.along(new Trail().move(tankLeft, cool).line(fire, cool).line(fire, cool - 20), Ink.WATER, 2.2);
        double mid = (fire + tankLeft) / 2;
        Symbols.arrow(on, tankLeft - 16, HOT, Way.RIGHT, Ink.FIRE);
        Symbols.arrow(on, fire + 26, cool, Way.LEFT, Ink.WATER);
        words(fire + 76, HOT - 6, "hot: " + pipe(rig.loop().supply()), Drawing.Anchor.START);
        words(mid + 24, cool + 22, "cool: " + pipe(rig.loop().back()), Drawing.Anchor.MIDDLE);
        if (rig.loop().pump() != null) {
            Symbols.pump(on, mid + 40, cool, Way.LEFT);
            words(mid + 40, cool - 13, "pump", Drawing.Anchor.MIDDLE);
        }
        if (!Double.isNaN(rig.loop().checkValve())) {
            Symbols.check(on, mid - 10, cool, Way.LEFT);
            words(mid - 10, cool - 13, "check", Drawing.Anchor.MIDDLE);
        }
        on.line(fire + 50, cool, fire + 50, cool + 11, Ink.WATER, 1.6);
        on.line(fire + 45, cool + 11, fire + 55, cool + 11, Ink.TEXT, 1.6);
        words(fire + 44, cool + 22, "drain", Drawing.Anchor.END);
        if (rig.safety().relief() != null) {
            Symbols.relief(on, fire + 52, HOT - 7);
            words(fire + 46, HOT - 10, "relief", Drawing.Anchor.END);
        }
    }

    private void header() {
        double x = fire + 26;
        Trail tank = new Trail().box(x, 16, 50, 26);
        on.along(new Trail().move(fire, HOT).line(fire, 7).line(x + 14, 7).line(x + 14, 13), Ink.FIRE, 1.6);
        on.area(tank, Symbols.WHITE, 1)
                .area(new Trail().box(x, 29, 50, 13), Ink.WATER, 0.2)
                .along(tank, Ink.TEXT, 1.2);
        words(x + 56, 26, "header " + sizes.volume(Parts.of(rig).header()), Drawing.Anchor.START);
        words(
                x + 56,
                37,
                "loose lid, " + sizes.volume(rig.loop().header().water()) + " in it when cold",
                Drawing.Anchor.START);
        words(fire - 6, 26, "open vent " + sizes.gauge(rig.loop().header().vent()), Drawing.Anchor.END);
        on.heavy(fire - 6, 37, "NO VALVE", Ink.DANGER, TYPE, Drawing.Anchor.END);
        double feed = x + 42;
        on.along(new Trail().move(feed, 42).line(feed, cool), Symbols.WHITE, 4);
        on.line(feed, 42, feed, cool, Ink.WATER, 1.3, 4, 2);
        words(feed + 5, HOT + 20, "cold feed,", Drawing.Anchor.START);
        words(feed + 5, HOT + 31, "no valve", Drawing.Anchor.START);
    }

    private void vessel() {
        Trail ring = Symbols.circle(fire + 24, cool - 30, 12);
        on.line(fire + 24, cool, fire + 24, cool - 18, Ink.WATER, 1.6);
        on.area(ring, Symbols.WHITE, 1).along(ring, Ink.TEXT, 1.2);
        on.line(fire + 12, cool - 30, fire + 36, cool - 30, Ink.TEXT, 0.8);
        words(
                fire + 40,
                cool - 27,
                "vessel " + sizes.volume(rig.safety().vessel().volume()),
                Drawing.Anchor.START);
    }

    /** The first that the water meets stands lowest. */
    private void pickups() {
        int n = rig.pickups().size();
        double step = (cool - HOT - 16) / n;
        on.line(fire, HOT + 8, fire, cool - 8, Ink.TEXT, 2.2);
        for (int i = 0; i < n; i++) {
            double y = pickupY(i, step);
            Trail box = new Trail().box(14, y - BLOCK / 2, fire - 14 + 14, BLOCK);
            on.area(box, Symbols.WHITE, 1).area(box, Ink.FIRE, 0.13).along(box, Ink.TEXT, 1.3);
            on.heavy(
                    fire - 40,
                    y + 3,
                    Plain.name(rig.pickups().get(i).name(), 16),
                    Ink.TEXT,
                    TYPE + 0.5,
                    Drawing.Anchor.MIDDLE);
        }
    }

    private double pickupY(int i, double step) {
        return cool - 8 - step * (i + 0.5);
    }

    private void tank() {
        double top = HOT - 12;
        Trail box = new Trail().box(tankLeft, top, tankRight - tankLeft, cool + 12 - top);
        on.area(box, Ink.WATER, 0.14).along(box, Ink.TEXT, 1.6);
        double mid = (tankLeft + tankRight) / 2;
        if (rig.store().coil() != null) {
            on.along(Symbols.turns(tankLeft + 12, tankRight - 12, HOT, cool, 4), Ink.FIRE, 1.4);
            on.box(mid - 26, (HOT + cool) / 2 - 15, 52, 28, Symbols.WHITE);
        }
        on.heavy(mid, (HOT + cool) / 2 - 4, "store", Ink.TEXT, TYPE + 1.5, Drawing.Anchor.MIDDLE);
        words(mid, (HOT + cool) / 2 + 9, sizes.volume(rig.store().shape().content()), Drawing.Anchor.MIDDLE);
        double y = (HOT + cool) / 2 + 28;
        for (Emitter e : rig.emitters()) {
            if (!(e instanceof Emitter.AirTubes t)) continue;
            Symbols.fan(on, tankRight + 16, y, 9);
            on.line(tankLeft + 8, y, tankRight + 7, y, Ink.TEXT, 1, 3, 2);
            words(tankRight + 30, y - 2, Plain.name(t.name(), 20), Drawing.Anchor.START);
            words(tankRight + 30, y + 9, t.count() + " air tubes", Drawing.Anchor.START);
            y += 24;
        }
    }

    private void circuit(int i) {
        Emitter e = piped.get(i);
        Emitter.Circuit c = Contents.circuit(e);
        double step = (cool + 12 - (HOT - 12)) / piped.size();
        double y = HOT - 12 + step * (i + 0.5);
        double right = width - 4;
        double left = right - 104;
        on.line(tankRight, y - 12, left, y - 12, Ink.FIRE, 1.8);
        on.line(tankRight, y + 12, left, y + 12, Ink.WATER, 1.8);
        Symbols.arrow(on, left - 8, y - 12, Way.RIGHT, Ink.FIRE);
        Symbols.arrow(on, tankRight + 10, y + 12, Way.LEFT, Ink.WATER);
        double mid = (tankRight + left) / 2;
        boolean mixed = e instanceof Emitter.FloorLoop f && f.mixed();
        words(mid, y - (mixed ? 24 : 17), brief(c.supply()), Drawing.Anchor.MIDDLE);
        if (mixed) mixing(mid - 24, y);
        if (c.pump() != null) Symbols.pump(on, mid + 16, mixed ? y - 12 : y + 12, mixed ? Way.RIGHT : Way.LEFT);
        if (!Double.isNaN(c.checkValve())) Symbols.check(on, mid - 12, y + 12, Way.LEFT);
        Trail box = new Trail().box(left, y - 19, right - left, 38);
        on.area(box, Symbols.WHITE, 1).along(box, Ink.TEXT, 1.3);
        on.heavy((left + right) / 2, y - 1, Plain.name(e.name(), 18), Ink.TEXT, TYPE + 0.5, Drawing.Anchor.MIDDLE);
        words((left + right) / 2, y + 11, kind(e), Drawing.Anchor.MIDDLE);
    }

    /** Cool water from behind the floor into the hot before its pump. */
    private void mixing(double x, double y) {
        on.line(x, y + 12, x, y - 6, Ink.WATER, 1.8);
        Symbols.mixing(on, x, y - 12, Way.RIGHT);
    }

    private String kind(Emitter e) {
        if (e instanceof Emitter.FanCoil) return "fan coil";
        if (!(e instanceof Emitter.FloorLoop f)) return "radiator";
        return f.mixed() ? "slab, mixed to " + as.setting(f.mixedTo()) : "pipe in the slab";
    }

    private void sensors() {
        int n = rig.pickups().size();
        double step = (cool - HOT - 16) / n;
        int i = 0;
        for (Switch.Sensor s : Parts.of(rig).sensors()) {
            String number = String.valueOf(++i);
            switch (s.at()) {
                case OUTLET -> sensor(fire + 18, HOT, number);
                case SUPPLY -> sensor(tankLeft - 32, HOT, number);
                case BACK -> sensor(tankLeft - 16, cool, number);
                case PICKUP -> sensor(fire - 2, pickupY(which(s, n), step), number);
                case STORE -> sensor(tankLeft + 10, cool + 8 - s.height() * (cool - HOT + 16), number);
                case STOVE -> sensor(8, HOT - 4, number);
                case ROOM -> room(width - 150, number, "in the room");
                case OUTDOORS -> room(width - 76, number, "outdoors");
            }
        }
    }

    /** Beside those that already sit there. */
    private void sensor(double x, double y, String number) {
        double free = x;
        for (int i = 0; i < placed.size(); i++) {
            double[] p = placed.get(i);
            if (Math.abs(p[0] - free) < 15 && Math.abs(p[1] - y) < 15) {
                free = p[0] + 16;
                i = -1;
            }
        }
        placed.add(new double[] {free, y});
        Symbols.sensor(on, free, y, number);
    }

    private void room(double x, String number, String where) {
        sensor(x, 12, number);
        words(x + 10, 15, where, Drawing.Anchor.START);
    }

    private int which(Switch.Sensor s, int n) {
        for (int k = 0; k < n; k++) if (rig.pickups().get(k).name().equals(s.of())) return k;
        return n - 1;
    }

    private String pipe(Pipe p) {
        return brief(p) + ", " + p.elbows() + (p.elbows() == 1 ? " elbow" : " elbows");
    }

    private String brief(Pipe p) {
        return sizes.run(p.length()) + ", bore " + sizes.gauge(p.bore());
    }

    private void words(double x, double y, String text, Drawing.Anchor anchor) {
        on.words(x, y, text, Ink.TEXT, TYPE, anchor);
    }
}
