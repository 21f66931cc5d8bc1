package stokewell.weather;

import java.util.Arrays;

/**
 * Several uniform cubic B-splines on the same knots, evaluated together.
 *
 * <p>Between knots {@code i} and {@code i + 1} a curve is the sum of the four control values {@code i - 1 .. i + 2}
 * with the B-spline weights: twice continuously differentiable, inside the range of the four. Control values lie one
 * knot after another, curve by curve, with one before and two behind, so that an evaluation needs no wrap inside its
 * loop and allocates nothing. Not periodic curves are mirrored at their ends and held outside.
 */
final class Curves {

    /** Pole of the cubic B-spline prefilter. Source: Unser, Aldroubi and Eden (1993). */
    private static final double POLE = Math.sqrt(3) - 2;

    private final double step;
    private final int knots;
    private final boolean periodic;
    private final int count;
    private final double[] control;

    /**
     * @param step between knots, s
     * @param values control values, one array of length {@code knots} per curve
     */
    Curves(double step, boolean periodic, int knots, double[]... values) {
        this.step = step;
        this.periodic = periodic;
        this.knots = knots;
        count = values.length;
        control = new double[(knots + 3) * count];
        for (int row = 0; row < knots + 3; row++) {
            for (int c = 0; c < count; c++) {
                control[row * count + c] = values[c][inside(row - 1)];
            }
        }
    }

    private int inside(int knot) {
        if (periodic) {
            return Math.floorMod(knot, knots);
        }
        int mirrored = Math.abs(knot);
        return mirrored < knots ? mirrored : 2 * (knots - 1) - mirrored;
    }

    /** Control values of the periodic curve that goes through the values. */
    static double[] through(double[] values, boolean periodic) {
        int n = values.length;
        if (periodic) {
            return throughPeriodic(values);
        }
        double[] mirrored = new double[2 * n - 2];
        for (int i = 0; i < mirrored.length; i++) {
            mirrored[i] = values[i < n ? i : mirrored.length - i];
        }
        return Arrays.copyOf(throughPeriodic(mirrored), n);
    }

    private static double[] throughPeriodic(double[] f) {
        int n = f.length;
        double all = 1 - Math.pow(POLE, n);
        double[] y = new double[n];
        double sum = 0;
        double power = 1;
        for (int k = 0; k < n; k++, power *= POLE) {
            sum += power * 6 * f[(n - k) % n];
        }
        y[0] = sum / all;
        for (int i = 1; i < n; i++) {
            y[i] = 6 * f[i] + POLE * y[i - 1];
        }
        double[] c = new double[n];
        sum = 0;
        power = 1;
        for (int k = 0; k < n; k++, power *= POLE) {
            sum += power * y[(n - 1 + k) % n];
        }
        c[n - 1] = -POLE * sum / all;
        for (int i = n - 2; i >= 0; i--) {
            c[i] = POLE * (c[i + 1] - y[i]);
        }
        return c;
    }

    /** @param s from the first knot */
    void at(double s, double[] out, int first) {
        double x = place(s);
        int i = (int) x;
        double u = x - i;
        double v = 1 - u;
        blend(
                i,
                v * v * v / 6,
                (4 + u * u * (3 * u - 6)) / 6,
                (4 + v * v * (3 * v - 6)) / 6,
                u * u * u / 6,
                out,
                first);
    }

    /** Rates of change, per second. */
    void slopeAt(double s, double[] out, int first) {
        double x = place(s);
        int i = (int) x;
        double u = x - i;
        double v = 1 - u;
        double scale = 1 / (2 * step);
        boolean held = !periodic && (s < 0 || s > (knots - 1) * step);
        double on = held ? 0 : scale;
        blend(i, -v * v * on, u * (3 * u - 4) * on, v * (4 - 3 * v) * on, u * u * on, out, first);
    }

    private double place(double s) {
        double x = s / step;
        if (!periodic) {
            return Math.min(Math.max(x, 0), knots - 1);
        }
        x -= knots * Math.floor(x / knots);
        return x < knots ? Math.max(x, 0) : 0;
    }

    private void blend(int i, double a, double b, double c, double d, double[] out, int first) {
        int at = i * count;
        for (int k = 0; k < count; k++, at++) {
            out[first + k] = a * control[at]
                    + b * control[at + count]
                    + c * control[at + 2 * count]
                    + d * control[at + 3 * count];
        }
    }

    /**
     * The mean day: control values of the same time of day averaged. The splines are linear in their control values,
     * so this is the mean of the curves themselves.
     *
     * @param firstKnot first knot of the span, any integer in a periodic set
     */
    Curves meanDay(int firstKnot, int days) {
        int perDay = (int) Math.round(86400 / step);
        double[][] mean = new double[count][perDay];
        for (int day = 0; day < days; day++) {
            for (int k = 0; k < perDay; k++) {
                int row = inside(firstKnot + day * perDay + k) + 1;
                for (int c = 0; c < count; c++) {
                    mean[c][k] += control[row * count + c] / days;
                }
            }
        }
        return new Curves(step, true, perDay, mean);
    }

    double step() {
        return step;
    }

    int knots() {
        return knots;
    }

    /** Length of the period, or from the first knot to the last, s. */
    double span() {
        return step * (periodic ? knots : knots - 1);
    }

    int count() {
        return count;
    }

    boolean periodic() {
        return periodic;
    }
}
