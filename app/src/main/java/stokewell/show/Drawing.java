package stokewell.show;

import java.util.ArrayList;
import java.util.List;

/**
 * A drawing of lines, areas and words, in units of a CSS pixel from the top left. Told as SVG for a page, painted for
 * paper and pictures: one picture, whatever it is shown on.
 */
public final class Drawing {

    /** Where a word stands by its point. */
    public enum Anchor {
        START("start"),
        MIDDLE("middle"),
        END("end");

        final String word;

        Anchor(String word) {
            this.word = word;
        }
    }

    /** What is on the paper, in the order that it was put there. */
    sealed interface Mark {}

    /** A filled area. */
    record Area(Trail trail, Ink ink, double opacity) implements Mark {}

    /** A drawn line. */
    record Line(Trail trail, Ink ink, double width, double[] dash) implements Mark {}

    /** Words on one line; y is their baseline. */
    record Words(double x, double y, String text, Ink ink, double size, Anchor anchor, boolean bold) implements Mark {}

    /** Another drawing, set down at a place. */
    record Inset(double x, double y, Drawing drawing) implements Mark {}

    private final double width;
    private final double height;
    private final String title;
    private final List<Mark> marks = new ArrayList<>();

    /** @param title what the drawing shows, in a sentence, for those who cannot see it */
    public Drawing(double width, double height, String title) {
        this.width = width;
        this.height = height;
        this.title = title;
    }

    /** Width of the paper. */
    public double width() {
        return width;
    }

    /** Height of the paper. */
    public double height() {
        return height;
    }

    List<Mark> marks() {
        return marks;
    }

    /** Fills an area. @param opacity 0 to 1 */
    public Drawing area(Trail trail, Ink ink, double opacity) {
        if (!trail.isEmpty()) marks.add(new Area(trail, ink, opacity));
        return this;
    }

    /** Fills a rectangle. */
    public Drawing box(double x, double y, double w, double h, Ink ink) {
        return area(new Trail().box(x, y, w, h), ink, 1);
    }

    /** Draws along a trail. @param dash lengths on and off; none for a whole line */
    public Drawing along(Trail trail, Ink ink, double thick, double... dash) {
        if (!trail.isEmpty()) marks.add(new Line(trail, ink, thick, dash));
        return this;
    }

    /** Draws a straight line. */
    public Drawing line(double x1, double y1, double x2, double y2, Ink ink, double thick, double... dash) {
        return along(new Trail().move(x1, y1).line(x2, y2), ink, thick, dash);
    }

    /** Writes words. */
    public Drawing words(double x, double y, String text, Ink ink, double size, Anchor anchor) {
        if (!text.isEmpty()) marks.add(new Words(x, y, text, ink, size, anchor, false));
        return this;
    }

    /** Writes heavy words. */
    public Drawing heavy(double x, double y, String text, Ink ink, double size, Anchor anchor) {
        if (!text.isEmpty()) marks.add(new Words(x, y, text, ink, size, anchor, true));
        return this;
    }

    /** Sets another drawing down with its corner here. */
    public Drawing inset(double x, double y, Drawing drawing) {
        marks.add(new Inset(x, y, drawing));
        return this;
    }

    /** What the drawing shows. */
    public String title() {
        return title;
    }

    /**
     * As an SVG element to stand in a page: scales with its place, colours by the page's variables or the light ones. Its looks
     * are attributes and no inline styles, which a page with a strict content policy may forbid.
     */
    public String svg() {
        StringBuilder out = new StringBuilder(8192);
        out.append("<svg viewBox=\"0 0 ");
        number(out, width).append(' ');
        number(out, height).append("\" role=\"img\" class=\"made\"><title>");
        Escape.into(out, title);
        out.append("</title>\n");
        write(out);
        return out.append("</svg>\n").toString();
    }

    private void write(StringBuilder out) {
        for (Mark mark : marks) {
            if (mark instanceof Area a) area(out, a);
            else if (mark instanceof Line l) line(out, l);
            else if (mark instanceof Words w) words(out, w);
            else if (mark instanceof Inset i) {
                out.append("<g transform=\"translate(");
                number(out, i.x()).append(' ');
                number(out, i.y()).append(")\">\n");
                i.drawing().write(out);
                out.append("</g>\n");
            }
        }
    }

    private static void area(StringBuilder out, Area a) {
        out.append("<path fill=\"").append(a.ink().css());
        if (a.opacity() < 1) number(out.append("\" fill-opacity=\""), a.opacity(), 2);
        out.append("\" d=\"");
        trail(out, a.trail());
        out.append("\"/>\n");
    }

    private static void line(StringBuilder out, Line l) {
        out.append("<path fill=\"none\" stroke=\"").append(l.ink().css()).append("\" stroke-width=\"");
        number(out, l.width(), 2);
        if (l.dash().length > 0) {
            out.append("\" stroke-dasharray=\"");
            for (double d : l.dash()) number(out, d).append(' ');
        }
        out.append("\" stroke-linejoin=\"round\" d=\"");
        trail(out, l.trail());
        out.append("\"/>\n");
    }

    private static void words(StringBuilder out, Words w) {
        out.append("<text x=\"");
        number(out, w.x()).append("\" y=\"");
        number(out, w.y()).append("\" text-anchor=\"").append(w.anchor().word);
        number(out.append("\" fill=\"").append(w.ink().css()).append("\" font-size=\""), w.size());
        if (w.bold()) out.append("\" font-weight=\"bold");
        out.append("\">");
        Escape.into(out, w.text());
        out.append("</text>\n");
    }

    private static void trail(StringBuilder out, Trail trail) {
        trail.walk((kind, points, at) -> {
            switch (kind) {
                case Trail.MOVE -> points(out.append('M'), points, at, 2);
                case Trail.LINE -> points(out.append('L'), points, at, 2);
                case Trail.CURVE -> points(out.append('C'), points, at, 6);
                default -> out.append('Z');
            }
        });
    }

    private static void points(StringBuilder out, double[] points, int at, int count) {
        for (int i = 0; i < count; i++) {
            if (i > 0) out.append(' ');
            number(out, points[at + i]);
        }
    }

    private static StringBuilder number(StringBuilder out, double value) {
        return number(out, value, 1);
    }

    private static StringBuilder number(StringBuilder out, double value, int decimals) {
        return out.append(Numbers.bare(value, decimals));
    }
}
