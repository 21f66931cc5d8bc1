package stokewell.matter;

import java.util.function.DoubleUnaryOperator;

/**
 * A function drawn once on even spacing and read many times: piecewise cubic, value and slope continuous.
 *
 * <p>Slopes at the nodes are five-point differences, so that the error falls with the fourth power of the spacing:
 * water from 0 to 150 °C in 75 intervals keeps every property to 1e-5 of itself. Beyond its ends the curve goes on
 * straight. Immutable; reading allocates nothing.
 */
public final class Curve {

    private final double low;
    private final double perInterval;
    private final int intervals;
    /** Four coefficients of each interval, rising powers of the place inside it, 0 to 1. */
    private final double[] cubic;

    private Curve(double low, double perInterval, int intervals, double[] cubic) {
        this.low = low;
        this.perInterval = perInterval;
        this.intervals = intervals;
        this.cubic = cubic;
    }

    /**
     * Draws f from low to high.
     *
     * @param f         smooth and finite on the whole range
     * @param low       where the curve begins
     * @param high      where it ends, above low
     * @param intervals how many cubics, 4 or more
     */
    public static Curve of(DoubleUnaryOperator f, double low, double high, int intervals) {
        if (!(high > low) || intervals < 4) {
            throw new IllegalArgumentException(
                    "a curve needs low < high and at least 4 intervals, not " + low + ", " + high + ", " + intervals);
        }
        double[] value = new double[intervals + 1];
        for (int i = 0; i <= intervals; i++) {
            value[i] = f.applyAsDouble(low + (high - low) * i / intervals);
            if (!Double.isFinite(value[i])) {
                throw new IllegalArgumentException(
                        "the function is not finite in the curve's range, at " + (low + (high - low) * i / intervals));
            }
        }
        double[] cubic = new double[4 * intervals];
        double left = slope(value, 0);
        for (int i = 0; i < intervals; i++) {
            double right = slope(value, i + 1);
            double rise = value[i + 1] - value[i];
            cubic[4 * i] = value[i];
            cubic[4 * i + 1] = left;
            cubic[4 * i + 2] = 3 * rise - 2 * left - right;
            cubic[4 * i + 3] = left + right - 2 * rise;
            left = right;
        }
        return new Curve(low, intervals / (high - low), intervals, cubic);
    }

    /** Value at x. */
    public double at(double x) {
        double s = (x - low) * perInterval;
        int k = 4 * interval(s);
        double t = s - k / 4;
        if (s < 0) {
            return cubic[0] + s * cubic[1];
        }
        if (s > intervals) {
            double end = cubic[k] + cubic[k + 1] + cubic[k + 2] + cubic[k + 3];
            return end + (s - intervals) * (cubic[k + 1] + 2 * cubic[k + 2] + 3 * cubic[k + 3]);
        }
        return cubic[k] + t * (cubic[k + 1] + t * (cubic[k + 2] + t * cubic[k + 3]));
    }

    /** Derivative at x: that of {@link #at} exactly. */
    public double slope(double x) {
        double s = (x - low) * perInterval;
        int k = 4 * interval(s);
        double t = Math.max(0, Math.min(s, intervals)) - k / 4;
        return perInterval * (cubic[k + 1] + t * (2 * cubic[k + 2] + 3 * t * cubic[k + 3]));
    }

    private int interval(double s) {
        return Math.max(0, Math.min((int) s, intervals - 1));
    }

    /** Derivative per interval at node i, by Lagrange's formulas on the five nearest nodes. */
    private static double slope(double[] v, int i) {
        int n = v.length - 1;
        if (i == 0) {
            return (-25 * v[0] + 48 * v[1] - 36 * v[2] + 16 * v[3] - 3 * v[4]) / 12;
        }
        if (i == 1) {
            return (-3 * v[0] - 10 * v[1] + 18 * v[2] - 6 * v[3] + v[4]) / 12;
        }
        if (i == n - 1) {
            return (3 * v[n] + 10 * v[n - 1] - 18 * v[n - 2] + 6 * v[n - 3] - v[n - 4]) / 12;
        }
        if (i == n) {
            return (25 * v[n] - 48 * v[n - 1] + 36 * v[n - 2] - 16 * v[n - 3] + 3 * v[n - 4]) / 12;
        }
        return (v[i - 2] - 8 * v[i - 1] + 8 * v[i + 1] - v[i + 2]) / 12;
    }
}
