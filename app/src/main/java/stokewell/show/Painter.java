package stokewell.show;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import javax.imageio.ImageIO;

/** Paints a drawing with Java2D, in its light colours: for pictures and for paper. */
public final class Painter {

    /** Dots of a picture for each unit of a drawing. */
    private static final double SCALE = 1.5;

    private final Graphics2D on;
    private final Font plain;
    private final Font heavy;

    private Painter(Graphics2D on, Font plain, Font heavy) {
        this.on = on;
        this.plain = plain;
        this.heavy = heavy;
    }

    /** Paints with the drawing's corner at the origin of the graphics as it stands. */
    public static void paint(Drawing drawing, Graphics2D on) {
        paint(drawing, on, new Font(Font.SERIF, Font.PLAIN, 1), new Font(Font.SERIF, Font.BOLD, 1));
    }

    /** Paints with fonts of one's own, whatever their size. */
    static void paint(Drawing drawing, Graphics2D on, Font plain, Font heavy) {
        on.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        on.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        on.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        on.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        new Painter(on, plain, heavy).marks(drawing);
    }

    /** Writes a PNG, and leaves the stream open. Needs no display; sets {@code java.awt.headless} where nobody has. */
    static void png(Drawing drawing, OutputStream out) throws IOException {
        if (System.getProperty("java.awt.headless") == null) System.setProperty("java.awt.headless", "true");
        int wide = (int) Math.ceil(drawing.width() * SCALE);
        int high = (int) Math.ceil(drawing.height() * SCALE);
        BufferedImage image = new BufferedImage(wide, high, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        try {
            graphics.scale(SCALE, SCALE);
            paint(drawing, graphics);
        } finally {
            graphics.dispose();
        }
        ImageIO.setUseCache(false);
        if (!ImageIO.write(image, "png", out)) throw new IOException("this Java cannot write PNG");
        out.flush();
    }

    private void marks(Drawing drawing) {
        for (Drawing.Mark mark : drawing.marks()) {
            if (mark instanceof Drawing.Area a) {
                on.setColor(color(a.ink(), a.opacity()));
                on.fill(path(a.trail()));
            } else if (mark instanceof Drawing.Line l) {
                on.setColor(color(l.ink(), 1));
                on.setStroke(stroke(l));
                on.draw(path(l.trail()));
            } else if (mark instanceof Drawing.Words w) {
                words(w);
            } else if (mark instanceof Drawing.Inset i) {
                AffineTransform before = on.getTransform();
                on.translate(i.x(), i.y());
                marks(i.drawing());
                on.setTransform(before);
            }
        }
    }

    private void words(Drawing.Words w) {
        on.setColor(color(w.ink(), 1));
        Font font = (w.bold() ? heavy : plain).deriveFont((float) w.size());
        on.setFont(font);
        double wide = font.getStringBounds(w.text(), on.getFontRenderContext()).getWidth();
        double back = w.anchor() == Drawing.Anchor.END ? wide : w.anchor() == Drawing.Anchor.MIDDLE ? wide / 2 : 0;
        on.drawString(w.text(), (float) (w.x() - back), (float) w.y());
    }

    private static Color color(Ink ink, double opacity) {
        return new Color(ink.light() | (int) Math.round(255 * opacity) << 24, true);
    }

    private static BasicStroke stroke(Drawing.Line l) {
        float thick = (float) l.width();
        if (l.dash().length == 0) return new BasicStroke(thick, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
        float[] dash = new float[l.dash().length];
        for (int i = 0; i < dash.length; i++) dash[i] = (float) l.dash()[i];
        return new BasicStroke(thick, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, dash, 0);
    }

    private static Path2D path(Trail trail) {
        Path2D.Double path = new Path2D.Double();
        trail.walk((kind, p, i) -> {
            switch (kind) {
                case Trail.MOVE -> path.moveTo(p[i], p[i + 1]);
                case Trail.LINE -> path.lineTo(p[i], p[i + 1]);
                case Trail.CURVE -> path.curveTo(p[i], p[i + 1], p[i + 2], p[i + 3], p[i + 4], p[i + 5]);
                default -> path.closePath();
            }
        });
        return path;
    }
}
