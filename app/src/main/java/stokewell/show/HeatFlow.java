package stokewell.show;

import java.util.ArrayList;
import java.util.List;
import stokewell.run.Ledger;

/**
 * Where the heat went, as bands as wide as their heat: from what brought it through the fire and the shop to where it
 * ended. Every band's width is true; what the fire gave to water and to the room is by the inner meter of the water.
 */
final class HeatFlow {

    private static final double BAR = 10;
    private static final double APART = 5;
    /** Share of all heat that is too little to draw. */
    private static final double NOTHING = 1e-3;

    private final HeatBook book;
    private final double intoWater;
    private final Measure as;
    private final double width;
    private final boolean narrow;
    private final double size;
    private final double row;

    HeatFlow(Ledger ledger, Measure as, double width) {
        book = new HeatBook(ledger);
        intoWater = Math.max(0, ledger.meter("fire to water"));
        this.as = as;
        this.width = width;
        narrow = width < 600;
        size = narrow ? 11.5 : 13;
        row = narrow ? 30 : 19;
    }

    Drawing drawing() {
        List<HeatBook.Flow> fuel = new ArrayList<>();
        List<HeatBook.Flow> others = new ArrayList<>();
        for (HeatBook.Flow f : book.in()) {
            if (book.share(f) < NOTHING) continue;
            if (f.name().equals(HeatBook.WOOD) || f.name().equals(HeatBook.EMBERS_FOUND)) fuel.add(f);
            else others.add(f);
        }
        List<HeatBook.Flow> up = new ArrayList<>();
        List<HeatBook.Flow> ends = new ArrayList<>();
        for (HeatBook.Flow f : book.out()) {
            if (book.share(f) < NOTHING) continue;
            boolean fires = f.name().equals("smoke")
                    || f.name().equals("flue gas")
                    || f.name().equals(HeatBook.EMBERS_LEFT);
            if (fires) up.add(f);
            else ends.add(f);
        }
        if (sum(fuel) <= sum(up)) {
            others.addAll(0, fuel);
            fuel.clear();
            ends.addAll(0, up);
            up.clear();
        }
        return draw(fuel, book.above(others, 0.006), up, book.above(ends, 0.006));
    }

    private static double sum(List<HeatBook.Flow> flows) {
        double sum = 0;
        for (HeatBook.Flow f : flows) sum += f.heat();
        return sum;
    }

    private Drawing draw(
            List<HeatBook.Flow> fuel, List<HeatBook.Flow> others, List<HeatBook.Flow> up, List<HeatBook.Flow> ends) {
        List<HeatBook.Flow> sources = new ArrayList<>(fuel);
        sources.addAll(others);
        List<HeatBook.Flow> all = new ArrayList<>(up);
        all.addAll(ends);
        double scale = book.total() > 0 ? (narrow ? 230 : 250) / book.total() : 0;
        double tall = Math.max(300, Math.max(slots(sources, scale), slots(all, scale)));
        double top = 22;
        Drawing on = new Drawing(width, tall + top + 16, title());
        if (scale == 0) return on;
        double x1 = narrow ? 108 : 236;
        double x4 = width - (narrow ? 112 : 206);
        double x2 = x1 + 0.3 * (x4 - x1);
        double x3 = x1 + 0.66 * (x4 - x1);
        double[] sourceAt = stack(sources, scale, top, tall);
        double[] endAt = stack(all, scale, top, tall);
        boolean fire = !fuel.isEmpty();
        double fireAt = fire ? sourceAt[0] : top;
        double burnt = sum(fuel);
        double rest = fire ? burnt - sum(up) : 0;
        double shop = rest + sum(others);
        double shopAt =
                Math.max(top + sum(up) * scale * 0.6, 0.5 * (top + tall - shop * scale) + 0.2 * sum(up) * scale);
        double y = fireAt;
        for (int i = 0; i < fuel.size(); i++) {
            double thick = fuel.get(i).heat() * scale;
            on.area(new Trail().band(x1 + BAR, sourceAt[i], x2, y, thick), Ink.FIRE, 0.35);
            y += thick;
        }
        y = fireAt;
        for (int i = 0; i < up.size(); i++) {
            double thick = up.get(i).heat() * scale;
            on.area(new Trail().band(x2 + BAR, y, x4, endAt[i], thick), Ink.FIRE, 0.22);
            y += thick;
        }
        double in = shopAt;
        if (fire) {
            double wet = Math.min(intoWater, rest);
            on.area(new Trail().band(x2 + BAR, y, x3, in, wet * scale), Ink.WATER, 0.55);
            on.area(
                    new Trail().band(x2 + BAR, y + wet * scale, x3, in + wet * scale, (rest - wet) * scale),
                    Ink.FIRE,
                    0.35);
            in += rest * scale;
            on.box(x2, fireAt, BAR, burnt * scale, Ink.FIRE);
            on.words(x2 + BAR / 2, fireAt - 6, "fire", Ink.FIRE, size, Drawing.Anchor.MIDDLE);
            if (!narrow) inner(on, x2, x3, y, shopAt, wet, rest - wet, scale);
        }
        for (int i = 0; i < others.size(); i++) {
            double thick = others.get(i).heat() * scale;
            on.area(new Trail().band(x1 + BAR, sourceAt[fuel.size() + i], x3, in, thick), Ink.FAINT, 0.35);
            in += thick;
        }
        on.box(x3, shopAt, BAR, shop * scale, Ink.TEXT);
        on.words(
                x3 + BAR / 2,
                shopAt + shop * scale + size + 4,
                narrow || intoWater == 0 ? "room" : "store and room",
                Ink.TEXT,
                size,
                Drawing.Anchor.MIDDLE);
        double outward = shopAt;
        for (int i = 0; i < ends.size(); i++) {
            double thick = ends.get(i).heat() * scale;
            on.area(new Trail().band(x3 + BAR, outward, x4, endAt[up.size() + i], thick), Ink.FAINT, 0.28);
            outward += thick;
        }
        for (int i = 0; i < sources.size(); i++) {
            Ink ink = i < fuel.size() ? Ink.FIRE : Ink.FAINT;
            on.box(x1, sourceAt[i], BAR, Math.max(1, sources.get(i).heat() * scale), ink);
        }
        for (int i = 0; i < all.size(); i++) {
            on.box(x4, endAt[i], BAR, Math.max(1, all.get(i).heat() * scale), i < up.size() ? Ink.FIRE : Ink.TEXT);
        }
        labels(on, sources, sourceAt, scale, x1 - 6, Drawing.Anchor.END);
        labels(on, all, endAt, scale, x4 + BAR + 6, Drawing.Anchor.START);
        return on;
    }

    private void inner(
            Drawing on, double x2, double x3, double y, double shopAt, double wet, double dry, double scale) {
        double middle = 0.5 * (x2 + BAR + x3);
        double at = 0.5 * (y + shopAt);
        if (wet * scale > 16) {
            on.words(
                    middle,
                    at + 0.5 * wet * scale + 5,
                    "into water " + as.energy(wet, book.total()),
                    Ink.TEXT,
                    size,
                    Drawing.Anchor.MIDDLE);
        }
        if (dry * scale > 16) {
            double from = at + wet * scale;
            on.words(
                    middle,
                    from + 0.5 * dry * scale + 5,
                    "stove to room " + as.energy(dry, book.total()),
                    Ink.TEXT,
                    size,
                    Drawing.Anchor.MIDDLE);
        }
    }

    /** Height of the bars under each other, each with room for its words. */
    private double slots(List<HeatBook.Flow> flows, double scale) {
        double sum = 0;
        for (HeatBook.Flow f : flows) sum += Math.max(row, f.heat() * scale + APART);
        return sum;
    }

    /** Tops of the bars, each in the middle of its slot, spread over the height. */
    private double[] stack(List<HeatBook.Flow> flows, double scale, double top, double tall) {
        double gap = flows.size() < 2 ? 0 : Math.min(24, (tall - slots(flows, scale)) / (flows.size() - 1));
        double[] at = new double[flows.size()];
        double y = top;
        for (int i = 0; i < at.length; i++) {
            double thick = flows.get(i).heat() * scale;
            double slot = Math.max(row, thick + APART);
            at[i] = y + 0.5 * (slot - thick);
            y += slot + gap;
        }
        return at;
    }

    private void labels(
            Drawing on, List<HeatBook.Flow> flows, double[] bars, double scale, double x, Drawing.Anchor anchor) {
        for (int i = 0; i < bars.length; i++) {
            HeatBook.Flow f = flows.get(i);
            double middle = bars[i] + 0.5 * f.heat() * scale;
            String amount = as.energy(f.heat(), book.total()) + (narrow ? " " : "  ") + Numbers.percent(book.share(f));
            if (narrow) {
                on.words(x, middle - 1, brief(f.name()), Ink.TEXT, size, anchor);
                on.words(x, middle + size, amount, Ink.FAINT, size, anchor);
            } else {
                on.words(x, middle + 5, brief(f.name()) + "  " + amount, Ink.TEXT, size, anchor);
            }
        }
    }

    private String brief(String name) {
        return switch (name) {
            case HeatBook.KEPT -> "kept";
            case HeatBook.DRAWN -> "drawn";
            case HeatBook.EMBERS_LEFT -> "embers left";
            case HeatBook.EMBERS_FOUND -> narrow ? "embers" : HeatBook.EMBERS_FOUND;
            case "people and machines" -> narrow ? "people" : "people, machines";
            default -> Plain.name(name, narrow ? 14 : 22);
        };
    }

    private String title() {
        StringBuilder words = new StringBuilder("Where the heat went: ");
        int told = 0;
        for (HeatBook.Flow f : book.out()) {
            if (told++ == 5) break;
            words.append(told > 1 ? ", " : "").append(f.name()).append(' ').append(Numbers.percent(book.share(f)));
        }
        return words.toString();
    }
}
