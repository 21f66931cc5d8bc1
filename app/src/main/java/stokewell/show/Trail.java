package stokewell.show;

import java.util.Arrays;

/** A way over the paper: lines and curves, as many pieces as it takes. */
public final class Trail {

    static final byte MOVE = 0;
    static final byte LINE = 1;
    static final byte CURVE = 2;
    static final byte CLOSE = 3;

    private byte[] steps = new byte[16];
    private double[] points = new double[64];
    private int stepCount;
    private int pointCount;

    private Trail step(byte kind, double... at) {
        if (stepCount == steps.length) steps = Arrays.copyOf(steps, 2 * stepCount);
        if (pointCount + at.length > points.length) points = Arrays.copyOf(points, 2 * points.length);
        steps[stepCount++] = kind;
        for (double p : at) points[pointCount++] = p;
        return this;
    }

    /** Begins a piece. */
    public Trail move(double x, double y) {
        return step(MOVE, x, y);
    }

    /** Straight on. */
    public Trail line(double x, double y) {
        return step(LINE, x, y);
    }

    /** A cubic curve by its two handles and its end. */
    public Trail curve(double x1, double y1, double x2, double y2, double x, double y) {
        return step(CURVE, x1, y1, x2, y2, x, y);
    }

    /** Back to where the piece began. */
    public Trail close() {
        return step(CLOSE);
    }

    /** A closed rectangle. */
    public Trail box(double x, double y, double w, double h) {
        return move(x, y).line(x + w, y).line(x + w, y + h).line(x, y + h).close();
    }

    /** A band between two upright edges, level at both. */
    public Trail band(double x1, double y1, double x2, double y2, double thick) {
        double m = 0.5 * (x1 + x2);
        move(x1, y1).curve(m, y1, m, y2, x2, y2).line(x2, y2 + thick);
        return curve(m, y2 + thick, m, y1 + thick, x1, y1 + thick).close();
    }

    boolean isEmpty() {
        return stepCount == 0;
    }

    /** Told piece by piece. */
    void walk(Walker walker) {
        int p = 0;
        for (int i = 0; i < stepCount; i++) {
            walker.step(steps[i], points, p);
            p += steps[i] == CLOSE ? 0 : steps[i] == CURVE ? 6 : 2;
        }
    }

    /** Who follows a trail: the kind of a step, and where its points begin. */
    interface Walker {
        void step(byte kind, double[] points, int at);
    }
}
