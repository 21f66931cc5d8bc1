package stokewell.show;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Words beside a drawing, each with a fine line to its point: moved apart so that none stands on another. */
final class Tags {

    /** @param x @param y its point @param size told heavy @param what it is */
    private record Tag(double x, double y, String size, String what) {}

    private static final double GAP = 12.5;
    private static final double TYPE = 9.5;
    private static final int LONGEST = 20;

    private final double edge;
    private final boolean left;
    private final List<Tag> tags = new ArrayList<>();

    /**
     * @param edge where the words end that stand to the left of the drawing, or begin to its right
     * @param left whether they stand to the left
     */
    Tags(double edge, boolean left) {
        this.edge = edge;
        this.left = left;
    }

    /** Those at one height are told together, as far as there is room. */
    void add(double x, double y, String size, String what) {
        for (int i = 0; i < tags.size(); i++) {
            Tag t = tags.get(i);
            if (Math.abs(t.y - y) < 0.3 && t.what.length() + what.length() <= LONGEST) {
                tags.set(i, new Tag(t.x, t.y, size, t.what + ", " + what));
                return;
            }
        }
        tags.add(new Tag(x, y, size, what));
    }

    /** Draws them between two heights. */
    void draw(Drawing on, double top, double bottom) {
        tags.sort(Comparator.comparingDouble(Tag::y));
        double[] at = spread(tags.stream().mapToDouble(Tag::y).toArray(), top, bottom);
        for (int i = 0; i < at.length; i++) {
            Tag t = tags.get(i);
            double y = at[i];
            int way = left ? 1 : -1;
            on.along(
                    new Trail()
                            .move(edge + 3 * way, y)
                            .line(edge + 14 * way, t.y)
                            .line(t.x, t.y),
                    Ink.FAINT,
                    0.5,
                    1.5,
                    1.5);
            on.area(Symbols.circle(t.x, t.y, 1.6), Ink.TEXT, 1);
            String text = left ? t.what + "  " + t.size : t.size + "  " + t.what;
            on.words(edge, y + 3.2, text, Ink.TEXT, TYPE, left ? Drawing.Anchor.END : Drawing.Anchor.START);
        }
    }

    /** Heights moved apart as little as it takes: blocks of those that touch sit round their mean. */
    static double[] spread(double[] wanted, double top, double bottom) {
        int n = wanted.length;
        double gap = n > 1 ? Math.min(GAP, (bottom - top) / (n - 1)) : GAP;
        double[] sum = new double[n];
        int[] count = new int[n];
        int blocks = 0;
        for (int i = 0; i < n; i++) {
            sum[blocks] = wanted[i] - i * gap;
            count[blocks++] = 1;
            while (blocks > 1 && sum[blocks - 2] / count[blocks - 2] > sum[blocks - 1] / count[blocks - 1]) {
                sum[blocks - 2] += sum[blocks - 1];
                count[blocks - 2] += count[blocks - 1];
                blocks--;
            }
        }
        double[] at = new double[n];
        int i = 0;
        for (int b = 0; b < blocks; b++) {
            double base = sum[b] / count[b];
            base = Math.max(top, Math.min(bottom - (n - 1) * gap, base));
            for (int k = 0; k < count[b]; k++, i++) at[i] = base + i * gap;
        }
        return at;
    }
}
