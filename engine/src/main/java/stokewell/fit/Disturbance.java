package stokewell.fit;

import java.util.Arrays;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.PointValuePair;
import org.hipparchus.optim.SimpleValueChecker;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.noderiv.NelderMeadSimplex;
import org.hipparchus.optim.nonlinear.scalar.noderiv.SimplexOptimizer;

/**
 * How the readings of one sensor differ from a right model: something slow that the model does not know (a draught, a bench
 * moved in front of the sensor), which fades with a memory, and the sensor's own noise.
 *
 * <p>The slow part is a first-order autoregressive process of continuous time (Ornstein-Uhlenbeck), the noise is white. Both
 * are filtered out by a scalar Kalman filter (Kalman, J. Basic Eng. 82 (1960) 35), which turns residuals, at uneven times
 * too, into innovations that are independent and of unit size; the same filter whitens each column of a Jacobian. Least
 * squares on the innovations is generalised least squares, exactly, for n numbers in the time of n.
 *
 * @param noise    standard deviation of the white part, K
 * @param slow     standard deviation of the slow part, K
 * @param memory   time in which the slow part fades to 1/e, s
 */
public record Disturbance(double noise, double slow, double memory) {

    private static final double WINSOR = 3;

    /** Independent errors of one size. */
    public static Disturbance white(double size) {
        return new Disturbance(size, 0, 1);
    }

    /**
     * Whitens columns of numbers that belong to the same times.
     *
     * @param skip true where a row is left out; its whitened values are 0
     */
    public void whiten(double[] time, boolean[] skip, double[][] columns, int from, int until) {
        double[] state = new double[columns.length];
        double variance = slow * slow;
        double last = Double.NaN;
        for (int i = from; i < until; i++) {
            if (skip[i]) {
                for (double[] c : columns) c[i] = 0;
                continue;
            }
            double fade = Double.isNaN(last) ? 0 : Math.exp(-(time[i] - last) / memory);
            last = time[i];
            variance = fade * fade * variance + (1 - fade * fade) * slow * slow;
            double total = variance + noise * noise;
            double gain = variance / total;
            double scale = 1 / Math.sqrt(total);
            for (int c = 0; c < columns.length; c++) {
                double before = fade * state[c];
                double innovation = columns[c][i] - before;
                state[c] = before + gain * innovation;
                columns[c][i] = innovation * scale;
            }
            variance *= 1 - gain;
        }
    }

    /** Twice the negative logarithm of the likelihood, without its constant; large innovations count as {@value #WINSOR}. */
    double misfit(double[] time, boolean[] skip, double[] residual, int from, int until) {
        double state = 0;
        double variance = slow * slow;
        double last = Double.NaN;
        double sum = 0;
        for (int i = from; i < until; i++) {
            if (skip[i]) continue;
            double fade = Double.isNaN(last) ? 0 : Math.exp(-(time[i] - last) / memory);
            last = time[i];
            variance = fade * fade * variance + (1 - fade * fade) * slow * slow;
            double total = variance + noise * noise;
            double innovation = residual[i] - fade * state;
            double e2 = innovation * innovation / total;
            if (e2 > WINSOR * WINSOR) {
                innovation *= WINSOR / Math.sqrt(e2);
                e2 = WINSOR * WINSOR;
            }
            sum += Math.log(total) + e2;
            state = fade * state + variance / total * innovation;
            variance *= noise * noise / total;
        }
        return sum;
    }

    /**
     * The disturbance that makes residuals likeliest, held loosely to memories that shops have: 2 h, a factor of 3 either way
     * (common practice, no source), so that a short record does not take a drift for no information at all.
     *
     * @param least noise that the sensor has in any case, K
     */
    public static Disturbance of(double[] time, boolean[] skip, double[] residual, int from, int until, double least) {
        double[] kept = new double[until - from];
        int n = 0;
        for (int i = from; i < until; i++) if (!skip[i]) kept[n++] = Math.abs(residual[i]);
        if (n < 8) return white(Math.max(least, n == 0 ? 1 : kept[0]));
        Arrays.sort(kept, 0, n);
        double size = Math.max(least, 1.4826 * kept[n / 2]);
        SimplexOptimizer optimizer = new SimplexOptimizer(new SimpleValueChecker(1e-8, 1e-3));
        PointValuePair best = null;
        for (double share : new double[] {0.2, 0.7}) {
            double[] start = {Math.log(share * size), Math.log(size), Math.log(7200)};
            PointValuePair found = optimizer.optimize(
                    new MaxEval(600),
                    GoalType.MINIMIZE,
                    new ObjectiveFunction(p -> {
                        double far = (p[2] - Math.log(7200)) / Math.log(3);
                        double huge = Math.max(0, Math.abs(p[0]) - 12) + Math.max(0, Math.abs(p[1]) - 12);
                        return of(p, least).misfit(time, skip, residual, from, until) + far * far + huge * huge;
                    }),
                    new InitialGuess(start),
                    new NelderMeadSimplex(new double[] {0.7, 0.7, 0.7}));
            if (best == null || found.getValue() < best.getValue()) best = found;
        }
        return of(best.getPoint(), least);
    }

    private static Disturbance of(double[] p, double least) {
        double noise = Math.hypot(least, Math.exp(Math.max(-12, Math.min(12, p[0]))));
        return new Disturbance(
                noise, Math.exp(Math.max(-12, Math.min(12, p[1]))), Math.exp(Math.max(3, Math.min(14, p[2]))));
    }

    /** How many independent readings a record of so many at such a step is worth for a constant. */
    public double worth(int count, double step) {
        double r = Math.exp(-step / memory);
        double each = noise * noise + slow * slow * (1 + r) / (1 - r);
        return Math.max(1, count * (noise * noise + slow * slow) / each);
    }
}
