package stokewell.show;

import java.util.ArrayList;
import java.util.List;
import stokewell.rig.Contents;
import stokewell.rig.Emitter;
import stokewell.rig.Pickup;
import stokewell.rig.Rig;
import stokewell.rig.Safety;
import stokewell.rig.Store;
import stokewell.rig.Stove;
import stokewell.sheet.Height;
import stokewell.sheet.Parts;
import stokewell.show.Symbols.Way;
import stokewell.size.Plates;

/**
 * The rig from the side. Heights, tank and insulation to scale, sizes of the stove as far as the rig tells them; how far
 * things stand apart is the builder's.
 */
final class RigDrawing {

    private static final double LEFT = 158;
    private static final double RIGHT = 172;
    private static final double ABOVE = 14;
    private static final double BELOW = 52;
    private static final double BETWEEN = 92;
    private static final double EMITTERS = 96;

    private final Rig rig;
    private final Sizes sizes;
    private final double width;
    private final double high;
    private final double low;
    private final double scale;
    private final Drawing on;
    private final double floor;

    private double stoveLeft;
    private double stoveWide;
    private double tankLeft;
    private double tankWide;

    RigDrawing(Rig rig, Measure as, double width, double most) {
        this.rig = rig;
        sizes = new Sizes(as);
        this.width = width;
        high = top();
        low = rig.store() == null
                ? 0
                : Math.min(0, rig.store().elevation() - rig.store().base().thickness());
        double across = stoveAcross() + (rig.store() == null ? 0 : tankAcross());
        double room = width - LEFT - RIGHT - (rig.store() == null ? 0 : BETWEEN) - (piped().isEmpty() ? 0 : EMITTERS);
        scale = Math.min(room / across, (most - ABOVE - BELOW) / (high - low));
        floor = ABOVE + high * scale;
        on = new Drawing(width, floor - low * scale + BELOW, told());
    }

    private String told() {
        StringBuilder b = new StringBuilder("The rig from the side, to scale. Heights above the floor: ");
        for (Height h : Height.of(rig))
            b.append(h.what()).append(' ').append(sizes.tape(h.above())).append("; ");
        return b.append("all of them stand in the table of heights.").toString();
    }

    private double top() {
        double top = 0;
        for (Height h : Height.of(rig)) top = Math.max(top, h.above());
        if (rig.store() != null) {
            Store s = rig.store();
            top = Math.max(
                    top,
                    s.elevation()
                            + Plates.inside(s)
                            + s.wall().thickness()
                            + s.lid().thickness());
        }
        return top + 0.06;
    }

    /** Width of a stove with a square plan and this surface without its underside, m; a guess, told as one. */
    private double stoveAcross() {
        Stove s = rig.stove();
        double h = s.height();
        return Math.max(0.3, Math.min(1.5, -2 * h + Math.sqrt(4 * h * h + s.surface())));
    }

    private double tankAcross() {
        Store s = rig.store();
        return inner(s.shape()) + 2 * (s.wall().thickness() + s.jacket().thickness());
    }

    private static double inner(Store.Shape shape) {
        if (shape instanceof Store.Shape.Round r) return r.diameter();
        if (shape instanceof Store.Shape.Square q) return Math.max(q.width(), q.length());
        return ((Store.Shape.Lying) shape).length();
    }

    private List<Emitter> piped() {
        List<Emitter> piped = new ArrayList<>();
        for (Emitter e : rig.emitters()) if (Contents.circuit(e) != null) piped.add(e);
        return piped;
    }

    private double y(double above) {
        return floor - above * scale;
    }

    /** How many times smaller than life it is on paper. */
    double reduced() {
        return 96 / 0.0254 / scale;
    }

    Drawing drawing() {
        place();
        room();
        stove();
        if (rig.store() != null) tank();
        for (Pickup p : rig.pickups()) pickup(p);
        if (rig.loop() != null) loop();
        int i = 0;
        for (Emitter e : piped()) emitter(e, i++);
        tags();
        return on;
    }

    private void place() {
        stoveWide = stoveAcross() * scale;
        tankWide = rig.store() == null ? 0 : tankAcross() * scale;
        double between = rig.store() == null ? 0 : BETWEEN;
        double emitters = piped().isEmpty() ? 0 : EMITTERS;
        double spare = width - LEFT - RIGHT - stoveWide - tankWide - between - emitters;
        stoveLeft = LEFT + Math.max(0, spare) * 0.4;
        tankLeft = stoveLeft + stoveWide + between + Math.max(0, spare) * 0.2;
    }

    private void room() {
        double left = LEFT - 8;
        double right = width - RIGHT + 8;
        on.line(left, floor, right, floor, Ink.TEXT, 1.6);
        for (double x = left; x < right - 4; x += 9) on.line(x, floor + 5, x + 5, floor, Ink.TEXT, 0.5);
        if (rig.room().height() * scale + ABOVE <= floor + 1) {
            on.line(left, y(rig.room().height()), right, y(rig.room().height()), Ink.FAINT, 0.7, 6, 4);
        }
    }

    private void stove() {
        Stove s = rig.stove();
        double top = y(s.height());
        double flue = rig.flue().diameter() * scale;
        double x = stoveLeft + stoveWide * 0.28;
        double up = ABOVE - 6;
        on.box(x - flue / 2, up, flue, top - up, Symbols.WHITE);
        on.line(x - flue / 2, up, x - flue / 2, top, Ink.TEXT, 1.1);
        on.line(x + flue / 2, up, x + flue / 2, top, Ink.TEXT, 1.1);
        on.along(
                new Trail()
                        .move(x - flue / 2 - 4, up + 5)
                        .line(x - 2, up + 1)
                        .line(x + 2, up + 9)
                        .line(x + flue / 2 + 4, up + 5),
                Ink.TEXT,
                0.8);
        double legs = Math.min(14, 0.12 * s.height() * scale);
        Trail body = new Trail().box(stoveLeft, top, stoveWide, s.height() * scale - legs);
        on.area(body, Ink.FIRE, 0.13).along(body, Ink.TEXT, 1.5);
        on.line(stoveLeft + 5, floor - legs, stoveLeft + 5, floor, Ink.TEXT, 2.5);
        on.line(stoveLeft + stoveWide - 5, floor - legs, stoveLeft + stoveWide - 5, floor, Ink.TEXT, 2.5);
    }

    private void pickup(Pickup p) {
        if (p.kind() == Pickup.Kind.BOX) {
            double wide = Math.min(stoveWide * 0.52, Math.sqrt(p.area()) * scale);
            double tall = Math.max(6, Math.min(0.5, p.volume() / p.area()) * scale);
            Trail box = new Trail().box(stoveLeft + stoveWide - wide, y(p.elevation()) - tall / 2, wide, tall);
            on.area(box, Symbols.WHITE, 1).area(box, Ink.WATER, 0.35).along(box, Ink.TEXT, 1.2);
        } else if (p.kind() == Pickup.Kind.JACKET) {
            double tall = Math.min(rig.stove().height() * 0.75, Math.sqrt(p.area())) * scale;
            double thick = Math.max(6, p.volume() / p.area() * scale);
            Trail box = new Trail().box(stoveLeft + stoveWide - thick - 3, y(p.elevation()) - tall / 2, thick, tall);
            on.area(box, Symbols.WHITE, 1).area(box, Ink.WATER, 0.35).along(box, Ink.TEXT, 1.2);
        } else {
            double tall = Math.min(0.4, rig.stove().height() * 0.45) * scale;
            double mid = y(p.elevation());
            on.along(
                    Symbols.turns(
                            stoveLeft + stoveWide * 0.45, stoveLeft + stoveWide - 7, mid - tall / 2, mid + tall / 2, 3),
                    Ink.WATER,
                    Math.max(2, p.bore() * scale));
        }
    }

    private void tank() {
        Store s = rig.store();
        double jacket = s.jacket().thickness() * scale;
        double wall = Math.max(1.3, s.wall().thickness() * scale);
        double inside = y(s.elevation() + Plates.inside(s));
        double bottom = y(s.elevation());
        double lid = s.lid().thickness() * scale;
        double base = s.base().thickness() * scale;
        Trail wrap = new Trail().box(tankLeft, inside - lid - wall, tankWide, bottom - inside + lid + 2 * wall);
        on.area(wrap, Ink.RULE, 0.45).along(wrap, Ink.FAINT, 0.7);
        if (base > 0) {
            Trail under = new Trail().box(tankLeft + jacket, bottom + wall, tankWide - 2 * jacket, base);
            on.area(under, Ink.RULE, 0.8).along(under, Ink.FAINT, 0.7);
        }
        stand(s, bottom + wall + base, jacket);
        Trail shell = new Trail().box(tankLeft + jacket, inside, tankWide - 2 * jacket, bottom - inside);
        on.area(shell, Symbols.WHITE, 1);
        double water = y(s.elevation() + Contents.depth(s.shape()));
        on.area(new Trail().box(tankLeft + jacket, water, tankWide - 2 * jacket, bottom - water), Ink.WATER, 0.16);
        on.along(shell, Ink.TEXT, wall);
        for (Emitter e : rig.emitters()) if (e instanceof Emitter.AirTubes t) tubes(s, t, jacket);
        if (s.coil() != null) {
            on.along(
                    Symbols.turns(
                            tankLeft + jacket + 8,
                            tankLeft + tankWide - jacket - 8,
                            inStore(s.coil().top()),
                            inStore(s.coil().bottom()),
                            6),
                    Ink.FIRE,
                    Math.max(1.5, s.coil().bore() * scale));
        }
        dimensions(s, jacket);
    }

    private void stand(Store s, double from, double jacket) {
        if (floor - from < 2) return;
        for (double share : new double[] {0.06, 0.5, 0.94}) {
            double x = tankLeft + jacket + share * (tankWide - 2 * jacket);
            Trail block = new Trail().box(x - 7, from, 14, floor - from);
            on.area(block, Symbols.WHITE, 1).along(block, Ink.TEXT, 1);
        }
    }

    private void tubes(Store s, Emitter.AirTubes t, double jacket) {
        double r = Math.max(1.5, t.bore() / 2 * scale);
        double inside = tankWide - 2 * jacket - 4 * r;
        double span = inStore(t.bottom()) - inStore(t.top());
        int rows =
                (int) Math.max(1, Math.min(t.count(), Math.round(Math.sqrt(t.count() * span / Math.max(1, inside)))));
        int each = (int) Math.ceil((double) t.count() / rows);
        int left = t.count();
        for (int row = 0; row < rows; row++) {
            double y =
                    rows == 1 ? inStore(0.5 * (t.top() + t.bottom())) : inStore(t.bottom()) - span * row / (rows - 1);
            for (int k = 0; k < each && left > 0; k++, left--) {
                double x = tankLeft + jacket + 2 * r + inside * (each == 1 ? 0.5 : (double) k / (each - 1));
                Trail ring = Symbols.circle(x, y, r);
                on.area(ring, Symbols.WHITE, 1).along(ring, Ink.TEXT, 0.7);
            }
        }
    }

    private double inStore(double share) {
        return y(rig.store().elevation() + share * Contents.depth(rig.store().shape()));
    }

    private void dimensions(Store s, double jacket) {
        double y = Math.max(floor, y(low)) + 16;
        dimension(tankLeft + jacket, tankLeft + tankWide - jacket, y, sizes.tape(inner(s.shape())) + " inside");
        dimension(tankLeft, tankLeft + tankWide, y + 19, sizes.tape(tankAcross()) + " over its jacket");
    }

    private void dimension(double from, double to, double y, String text) {
        on.line(from, y, to, y, Ink.TEXT, 0.6);
        on.line(from, y - 4, from, y + 4, Ink.TEXT, 0.6);
        on.line(to, y - 4, to, y + 4, Ink.TEXT, 0.6);
        on.words((from + to) / 2, y + 10.5, text, Ink.TEXT, 9, Drawing.Anchor.MIDDLE);
    }

    private void loop() {
        Pickup first = rig.pickups().get(0);
        Pickup last = rig.pickups().get(rig.pickups().size() - 1);
        double outletX = stoveLeft + stoveWide - 6;
        double outlet = y(last.elevation()) - (last.kind() == Pickup.Kind.BOX ? 0 : 8);
        double inlet = y(first.elevation()) + (first.kind() == Pickup.Kind.BOX ? 4 : 10);
        double riser = stoveLeft + stoveWide + 16;
        double down = tankLeft - 18;
        Store.Coil coil = rig.store().coil();
        double hot = inStore(coil != null ? coil.top() : rig.store().supplyPort());
        double cool = inStore(coil != null ? coil.bottom() : rig.store().returnPort());
        double wall = tankLeft + rig.store().jacket().thickness() * scale + (coil == null ? 0 : 8);
        double head = rig.safety().closed() ? Math.min(hot, outlet) : header(riser, down, Math.min(hot, outlet), inlet);
        on.along(new Trail().move(outletX, outlet).line(riser, outlet).line(riser, head), Ink.FIRE, 2.4);
        on.along(new Trail().move(riser, hot).line(wall, hot), Ink.FIRE, 2.4);
        if (hot > outlet) on.line(riser, outlet, riser, hot, Ink.FIRE, 2.4);
        Symbols.arrow(on, (riser + tankLeft) / 2 - 14, hot, Way.RIGHT, Ink.FIRE);
        on.along(new Trail().move(wall, cool).line(down, cool).line(down, inlet).line(outletX, inlet), Ink.WATER, 2.4);
        double mid = (riser + down) / 2;
        Symbols.arrow(on, stoveLeft + stoveWide + 9, inlet, Way.LEFT, Ink.WATER);
        if (rig.loop().pump() != null) Symbols.pump(on, mid + 10, inlet, Way.LEFT);
        if (!Double.isNaN(rig.loop().checkValve())) Symbols.check(on, mid - 12, inlet, Way.LEFT);
        if (rig.safety().relief() != null) Symbols.relief(on, riser, Math.min(outlet, hot) - 12);
        if (rig.safety().closed()) {
            Trail vessel = Symbols.circle(down, cool - 26, 11);
            on.line(down, cool, down, cool - 16, Ink.WATER, 1.6);
            on.area(vessel, Symbols.WHITE, 1).along(vessel, Ink.TEXT, 1.3);
            on.line(down - 11, cool - 26, down + 11, cool - 26, Ink.TEXT, 0.8);
        }
    }

    /** Header, open vent and cold feed; where the riser ends. */
    private double header(double riser, double down, double joins, double inlet) {
        double side = Math.cbrt(Math.max(1e-3, Parts.of(rig).header())) * scale;
        double level = y(rig.loop().header().level());
        double end = y(rig.loop().header().level() + Parts.rise(rig));
        double x = Math.max(riser + 8, Math.min(down - side * 0.5, riser + 14));
        double wide = Math.max(14, Math.min(side, BETWEEN));
        double tall = Math.max(14, side);
        double share = Math.min(
                0.8, rig.loop().header().water() / Math.max(1e-3, Parts.of(rig).header()));
        double top = level - tall * (1 - share);
        Trail tank = new Trail().box(x, top, wide, tall);
        double feed = Math.min(x + wide - 5, down);
        Safety.OpenVent vent = rig.safety().vent();
        boolean fed = vent == null || !(vent.coldFeed() == 0);
        if (fed) {
            on.along(new Trail().move(feed, top + tall).line(feed, inlet), Symbols.WHITE, 3.4);
            on.line(feed, top + tall, feed, inlet, Ink.WATER, 1.2, 4, 2);
        }
        on.area(tank, Symbols.WHITE, 1);
        on.area(new Trail().box(x, level, wide, top + tall - level), Ink.WATER, 0.2);
        on.along(tank, Ink.TEXT, 1.3);
        double over = x + wide * 0.35;
        on.along(
                new Trail().move(riser, joins).line(riser, end).line(over, end).line(over, Math.min(end + 9, top - 2)),
                Ink.FIRE,
                1.5);
        return joins;
    }

    private void emitter(Emitter e, int i) {
        Emitter.Circuit c = Contents.circuit(e);
        double wall = tankLeft + tankWide - rig.store().jacket().thickness() * scale;
        double hot = inStore(c.draw());
        double cool = inStore(c.giveBack());
        double right = tankLeft + tankWide;
        double down = right + 9 + (piped().size() > 2 ? 16 : 20) * i;
        double x = right + 46;
        double wide = EMITTERS - 52;
        double y = e instanceof Emitter.Radiator r
                ? y(r.elevation())
                : e instanceof Emitter.FloorLoop ? floor + 5 : 0.5 * (hot + cool) - 30 + 60 * i;
        double tall = e instanceof Emitter.FloorLoop ? 0 : 26;
        on.along(
                new Trail()
                        .move(wall, hot)
                        .line(down, hot)
                        .line(down, y - tall / 4)
                        .line(x, y - tall / 4),
                Ink.FIRE,
                1.6);
        double back = down + 4;
        on.along(
                new Trail()
                        .move(wall, cool)
                        .line(back, cool)
                        .line(back, y + tall / 4 + (tall == 0 ? 4 : 0))
                        .line(x, y + tall / 4 + (tall == 0 ? 4 : 0)),
                Ink.WATER,
                1.6);
        if (e instanceof Emitter.FloorLoop) {
            for (int k = 0; k < 6; k++) {
                Trail ring = Symbols.circle(x + 4 + k * 8, floor + 9, 2.6);
                on.area(ring, Symbols.WHITE, 1).along(ring, Ink.WATER, 1.2);
            }
        } else {
            Trail box = new Trail().box(x, y - tall / 2, wide, tall);
            on.area(box, Symbols.WHITE, 1).along(box, Ink.TEXT, 1.3);
            if (e instanceof Emitter.FanCoil) Symbols.fan(on, x + wide / 2, y, 9);
            else
                for (double k = x + 5; k < x + wide; k += 6)
                    on.line(k, y - tall / 2 + 3, k, y + tall / 2 - 3, Ink.TEXT, 0.6);
        }
        if (e instanceof Emitter.FloorLoop f && f.mixed()) {
            double valve = hot + 0.35 * (cool - hot);
            on.along(new Trail().move(back, cool).line(back, valve).line(down, valve), Ink.WATER, 1.6);
            Symbols.mixing(on, down, valve, Way.DOWN);
            if (c.pump() != null) Symbols.pump(on, down, 0.5 * (valve + cool), Way.DOWN);
        } else if (c.pump() != null) {
            Symbols.pump(on, back, (cool + Math.min(floor, y)) / 2, y > cool ? Way.UP : Way.DOWN);
        }
    }

    private void tags() {
        Tags left = new Tags(LEFT - 12, true);
        Tags right = new Tags(width - RIGHT + 12, false);
        double store = tankLeft + tankWide;
        for (Height h : Height.of(rig)) {
            double y = y(h.above());
            String size = sizes.tape(h.above());
            switch (h.on()) {
                case ROOM -> left.add(LEFT - 8, y, size, h.what());
                case STOVE -> left.add(stoveLeft, y, size, Plain.name(h.what(), 24));
                case HEADER -> left.add(stoveLeft + stoveWide + 14, y, size, h.what());
                case STORE -> right.add(store, y, size, Plain.name(h.what(), 24));
                case EMITTER -> right.add(store + EMITTERS - 8, y, size, Plain.name(h.what(), 24));
            }
        }
        left.draw(on, ABOVE, floor - 4);
        right.draw(on, ABOVE, floor - 4);
        String flue = "flue " + sizes.cut(rig.flue().diameter()) + ", "
                + sizes.run(rig.flue().height()) + " high";
        on.words(LEFT - 12, floor + 14, flue, Ink.TEXT, 9, Drawing.Anchor.END);
    }
}
