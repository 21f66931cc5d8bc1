package stokewell.bench;

import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.fitting.leastsquares.MultivariateJacobianFunction;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.stat.regression.OLSMultipleLinearRegression;
import org.apache.commons.math3.util.Pair;

/**
 * The plainest model of a room, T[k+1] = a T[k] + b Tout[k] + c heat[k] + d sun[k] + e, fitted by Apache Commons Math 3.6.1:
 * by regression of each hour on the one before, or so that the whole run fits.
 */
final class FirstOrder {

    private FirstOrder() {}

    /** Coefficients by ordinary least squares, one hour ahead. */
    static double[] hourAhead(RoomLog log) {
        boolean heated = heated(log);
        int n = log.hours() - 1;
        double[] y = new double[n];
        double[][] x = new double[n][];
        for (int k = 0; k < n; k++) {
            y[k] = log.room()[k + 1] - log.outdoor()[k];
            double t = log.room()[k] - log.outdoor()[k];
            double sun = log.sun()[k] / 100;
            x[k] = heated ? new double[] {t, log.warmth(k) / 1000, sun} : new double[] {t, sun};
        }
        OLSMultipleLinearRegression ols = new OLSMultipleLinearRegression();
        ols.newSampleData(y, x);
        double[] b = ols.estimateRegressionParameters();
        return heated ? b : new double[] {b[0], b[1], 0, b[2]};
    }

    private static boolean heated(RoomLog log) {
        for (int h = 1; h < log.hours(); h++) if (log.warmth(h) != log.warmth(0)) return true;
        return false;
    }

    /** Coefficients by nonlinear least squares on the whole run. */
    static double[] wholeRun(RoomLog log) {
        double[] start = hourAhead(log);
        start[1] = Math.min(start[1], 0.999);
        boolean heated = heated(log);
        int free = heated ? 5 : 4;
        double[] first = java.util.Arrays.copyOf(heated ? start : new double[] {start[0], start[1], start[3]}, free);
        first[free - 1] = log.room()[0] - 273.15;
        MultivariateJacobianFunction f = point -> {
            double[] p = point.toArray();
            double[] now = run(p, heated, log);
            RealMatrix slopes = new Array2DRowRealMatrix(now.length, free);
            for (int j = 0; j < free; j++) {
                double[] up = p.clone();
                double step = 1e-5 * Math.max(1e-2, Math.abs(p[j]));
                up[j] += step;
                double[] there = run(up, heated, log);
                for (int i = 0; i < now.length; i++) slopes.setEntry(i, j, (there[i] - now[i]) / step);
            }
            return new Pair<RealVector, RealMatrix>(new ArrayRealVector(now), slopes);
        };
        double[] best = new LevenbergMarquardtOptimizer()
                .optimize(new LeastSquaresBuilder()
                        .start(first)
                        .model(f)
                        .target(log.room())
                        .maxEvaluations(2000)
                        .maxIterations(2000)
                        .build())
                .getPoint()
                .toArray();
        return heated ? best : new double[] {best[0], best[1], 0, best[2], best[3]};
    }

    private static double[] run(double[] p, boolean heated, RoomLog log) {
        double[] all = heated ? p : new double[] {p[0], p[1], 0, p[2], p[3]};
        return predicted(all, 273.15 + all[4], log);
    }

    /** Runs on from a room temperature by weather and heat alone. */
    static double[] predicted(double[] b, double from, RoomLog log) {
        double[] out = new double[log.hours()];
        double t = from;
        for (int k = 0; k < out.length; k++) {
            out[k] = t;
            t = log.outdoor()[k]
                    + b[0]
                    + Math.min(1.02, b[1]) * (t - log.outdoor()[k])
                    + b[2] * log.warmth(k) / 1000
                    + b[3] * log.sun()[k] / 100;
        }
        return out;
    }
}
