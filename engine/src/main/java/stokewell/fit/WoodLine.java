package stokewell.fit;

import java.util.List;
import org.hipparchus.distribution.continuous.TDistribution;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;

/**
 * Wood a day over what drives it: y = flat + slope max(0, x - bend), or a straight line where no bend shows.
 *
 * <p>The change-point model with three parameters for heating of ASHRAE Guideline 14 and of Kissock, Haberl and Claridge,
 * Inverse Modeling Toolkit, ASHRAE Trans. 109(2) (2003) 425. With x = -outdoor temperature, -bend is the base temperature of
 * the degree-days. Rows of several days are taken with the degree-days of each of their days.
 *
 * <p>Errors of neighbouring rows resemble each other. The covariance is that of least squares times n/n', with
 * n' = n (1 - rho)/(1 + rho) and rho the correlation of a residual with the next one (Reddy and Claridge, HVAC&R Research 6
 * (2000) 3, from memory). Rho of few residuals is too small by about (1 + 4 rho)/n (Marriott and Pope, Biometrika 41 (1954)
 * 390, from memory), which is put back; below 0 it counts as 0.
 *
 * @param flat       at x = bend, or at x = 0 on a straight line
 * @param bend       K; minus infinity on a straight line
 * @param parameters that were fitted
 * @param days       in all rows
 * @param mean       of y
 * @param error      standard deviation of the residuals of a row of average length
 * @param rho        see above
 * @param effective  n', see above
 * @param covariance of flat, slope and, where it was fitted, bend
 * @param explained  R squared
 */
public record WoodLine(
        double flat,
        double slope,
        double bend,
        int parameters,
        int rows,
        int days,
        double mean,
        double error,
        double rho,
        double effective,
        RealMatrix covariance,
        double explained) {

    private static final int TRIES = 80;
    /** How sure it must be that there is a bend. */
    private static final double SURE_OF_BEND = 0.95;

    /** Fits line and bend; the bend is taken only where it shows. */
    public static WoodLine of(List<WoodRow> rows) {
        WoodLine straight = of(rows, Double.NEGATIVE_INFINITY);
        if (rows.size() < 8) return straight;
        double[] x = rows.stream().mapToDouble(WoodRow::mean).sorted().toArray();
        double low = x[Math.min(x.length - 1, 2)];
        double high = x[(int) (0.7 * (x.length - 1))];
        double best = Double.NaN;
        double least = Double.POSITIVE_INFINITY;
        for (int k = 0; k <= TRIES; k++) {
            double bend = low + (high - low) * k / TRIES;
            double[] line = line(rows, bend);
            if (line[1] > 0 && line[2] < least) {
                least = line[2];
                best = bend;
            }
        }
        if (Double.isNaN(best)) return straight;
        double[] line = line(rows, best);
        WoodLine bent = fitted(rows, best, line[0], line[1], 3);
        double n = Math.max(4, bent.effective);
        double gain = (sum(straight) - sum(bent)) * n / bent.rows / (bent.error * bent.error);
        double needed = quantile(Math.max(1, n - 3), SURE_OF_BEND);
        return gain > needed * needed ? bent : straight;
    }

    private static double sum(WoodLine l) {
        return l.error * l.error * (l.rows - l.parameters);
    }

    /**
     * Fits a line with its bend given.
     *
     * @param bend minus infinity for a straight line
     */
    public static WoodLine of(List<WoodRow> rows, double bend) {
        double[] line = line(rows, bend);
        return fitted(rows, bend, line[0], line[1], 2);
    }

    /** Flat part, slope, and the sum of squares that is left, by weighted least squares about the means. */
    private static double[] line(List<WoodRow> rows, double bend) {
        int n = rows.size();
        double[] x = new double[n];
        double w = 0;
        double mx = 0;
        double my = 0;
        for (int i = 0; i < n; i++) {
            WoodRow r = rows.get(i);
            x[i] = r.beyond(bend);
            w += r.days();
            mx += r.days() * x[i];
            my += r.days() * r.perDay();
        }
        mx /= w;
        my /= w;
        double xx = 0;
        double xy = 0;
        double yy = 0;
        for (int i = 0; i < n; i++) {
            WoodRow r = rows.get(i);
            xx += r.days() * square(x[i] - mx);
            xy += r.days() * (x[i] - mx) * (r.perDay() - my);
            yy += r.days() * square(r.perDay() - my);
        }
        double slope = xx > 0 ? xy / xx : 0;
        return new double[] {my - slope * mx, slope, yy - slope * xy};
    }

    private static WoodLine fitted(List<WoodRow> rows, double bend, double flat, double slope, int parameters) {
        int n = rows.size();
        double w = rows.stream().mapToDouble(WoodRow::days).sum();
        double mean = 0;
        for (WoodRow r : rows) mean += r.days() * r.perDay() / w;
        double scale = n / w;
        double[] residual = new double[n];
        double squares = 0;
        double all = 0;
        RealMatrix normal = new Array2DRowRealMatrix(parameters, parameters);
        for (int i = 0; i < n; i++) {
            WoodRow r = rows.get(i);
            residual[i] = (r.perDay() - flat - slope * r.beyond(bend)) * Math.sqrt(scale * r.days());
            squares += square(residual[i]);
            all += scale * r.days() * square(r.perDay() - mean);
            double[] g = gradient(r, bend, slope, parameters);
            for (int a = 0; a < parameters; a++) {
                for (int b = 0; b < parameters; b++) normal.addToEntry(a, b, scale * r.days() * g[a] * g[b]);
            }
        }
        double rho = memory(rows, residual);
        double effective = Math.max(parameters + 1.0, n * (1 - rho) / (1 + rho));
        double error = Math.sqrt(squares / Math.max(1, n - parameters));
        LUDecomposition lu = new LUDecomposition(normal, 1e-300);
        RealMatrix covariance = lu.getSolver().isNonSingular()
                ? lu.getSolver().getInverse().scalarMultiply(error * error * n / effective)
                : new Array2DRowRealMatrix(parameters, parameters).scalarAdd(Double.POSITIVE_INFINITY);
        return new WoodLine(
                flat,
                slope,
                bend,
                parameters,
                n,
                (int) w,
                mean,
                error,
                rho,
                effective,
                covariance,
                all > 0 ? 1 - squares / all : 0);
    }

    private static double[] gradient(WoodRow r, double bend, double slope, int parameters) {
        double[] g = {1, r.beyond(bend), -slope * r.share(bend)};
        return parameters == 3 ? g : new double[] {g[0], g[1]};
    }

    /** Correlation of each residual with the next, where there is a next. */
    private static double memory(List<WoodRow> rows, double[] residual) {
        double own = 0;
        double next = 0;
        int pairs = 0;
        for (int i = 0; i < residual.length; i++) {
            own += square(residual[i]);
            if (i == 0 || rows.get(i).place() != rows.get(i - 1).place() + 1) continue;
            next += residual[i] * residual[i - 1];
            pairs++;
        }
        if (pairs < 4 || own == 0) return 0;
        double r = next / pairs / (own / residual.length);
        return Math.max(0, Math.min(0.9, (r * pairs + 1) / Math.max(1, pairs - 4)));
    }

    /** What it says for a row. */
    public double at(WoodRow row) {
        return flat + slope * row.beyond(bend);
    }

    /** What it says at one driving difference, K. */
    public double at(double x) {
        return flat + slope * (Double.isInfinite(bend) ? x : Math.max(0, x - bend));
    }

    /** Variance of what the line itself, without scatter, says in the mean of some rows. */
    public double variance(List<WoodRow> some) {
        double[] sum = new double[parameters];
        double w = 0;
        for (WoodRow r : some) {
            double[] g = gradient(r, bend, slope, parameters);
            for (int a = 0; a < parameters; a++) sum[a] += r.days() * g[a];
            w += r.days();
        }
        double v = 0;
        for (int a = 0; a < parameters; a++) {
            for (int b = 0; b < parameters; b++) v += sum[a] * sum[b] * covariance.getEntry(a, b) / (w * w);
        }
        return v;
    }

    /** Half the band of a single row of average length with a probability. */
    public double band(double x, double probability) {
        WoodRow one = new WoodRow(0, new double[] {x}, 0);
        return quantile(freedom(), probability) * Math.sqrt(error * error + variance(List.of(one)));
    }

    /** Root mean square error over the mean, with n - p below the root. */
    public double cvRmse() {
        return error / mean;
    }

    /** Degrees of freedom that the errors leave. */
    public double freedom() {
        return Math.max(1, effective - parameters);
    }

    /** Student's t to either side that holds a probability. */
    static double quantile(double freedom, double probability) {
        return new TDistribution(freedom).inverseCumulativeProbability(0.5 + probability / 2);
    }

    private static double square(double x) {
        return x * x;
    }
}
