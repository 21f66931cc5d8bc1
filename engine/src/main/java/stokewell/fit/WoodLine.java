package stokewell.fit;

import java.util.List;
import org.hipparchus.distribution.continuous.TDistribution;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;

/**
 * Wood a day over what drives it: y = flat + slope max(0, x - bend), or a straight line where no bend shows; and where the sun
 * was measured and shows, so much less for each W/m2 of it.
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
 * <p>The sun is taken in as one more regressor where it earns its place: where it saves wood and its t, neighbours' likeness in
 * it, lies beyond the 95 % of Student's on both sides (stricter than a rise of the adjusted R squared, t beyond 1, or a fall of
 * Akaike's criterion, about 1.4; near the rule of thumb of published practice, 2, from memory); or, shown or not, where the line
 * is to be carried to rows with another sun, by a quarter of the standard deviation that the rows have of it: to leave it out there
 * because it does not show would take what is not known for nothing.
 *
 * @param flat       at x = bend, or at x = 0 on a straight line
 * @param bend       K; minus infinity on a straight line
 * @param bent       whether the bend was fitted
 * @param sun        for each W/m2 of sun, below 0 where it shows; 0 where the sun is not in the line
 * @param meanSun    of the rows, W/m2; 0 where the sun is not in the line
 * @param parameters that were fitted
 * @param days       in all rows
 * @param mean       of y
 * @param error      standard deviation of the residuals of a row of average length
 * @param rho        see above
 * @param effective  n', see above
 * @param covariance of flat, slope and, where they were fitted, bend and sun
 * @param explained  R squared
 */
public record WoodLine(
        double flat,
        double slope,
        double bend,
        boolean bent,
        double sun,
        double meanSun,
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
    /** The same of the sun. */
    private static final double SURE_OF_SUN = 0.95;
    /** Share of the scatter of the sun from which another mean counts as another sun. */
    private static final double OTHER_SUN = 0.25;
    /** Fewer rows are not asked for the sun. */
    private static final int ROWS_FOR_SUN = 12;

    /** Fits line and bend; the bend is taken only where it shows. */
    public static WoodLine of(List<WoodRow> rows) {
        return searched(rows, false);
    }

    /**
     * Fits a line with its bend given.
     *
     * @param bend minus infinity for a straight line
     */
    public static WoodLine of(List<WoodRow> rows, double bend) {
        return given(rows, bend, false);
    }

    /**
     * Fits with the sun in the line where it earns its place.
     *
     * @param bend NaN to find it
     * @param more sun of the rows to which it is to be carried, W/m2 in the mean
     */
    static WoodLine withSun(List<WoodRow> rows, double bend, double more) {
        WoodLine plain = Double.isNaN(bend) ? of(rows) : of(rows, bend);
        if (rows.size() < ROWS_FOR_SUN || !hasSun(rows)) return plain;
        WoodLine sunny = Double.isNaN(bend) ? searched(rows, true) : given(rows, bend, true);
        return sunny.showsSun() || Math.abs(more) > OTHER_SUN * sunScatter(rows) ? sunny : plain;
    }

    /** The same form fitted to other rows. */
    WoodLine alike(List<WoodRow> other) {
        return given(other, bend, sun != 0 && other.size() >= ROWS_FOR_SUN && hasSun(other));
    }

    private static double sunScatter(List<WoodRow> rows) {
        double mean = rows.stream().mapToDouble(WoodRow::sun).average().orElse(0);
        return Math.sqrt(
                rows.stream().mapToDouble(r -> square(r.sun() - mean)).average().orElse(0));
    }

    static boolean hasSun(List<WoodRow> rows) {
        return rows.stream().allMatch(r -> Double.isFinite(r.sun()));
    }

    private static WoodLine given(List<WoodRow> rows, double bend, boolean sunny) {
        return fitted(rows, bend, line(rows, bend, sunny), false, sunny);
    }

    private static WoodLine searched(List<WoodRow> rows, boolean sunny) {
        WoodLine straight = given(rows, Double.NEGATIVE_INFINITY, sunny);
        if (rows.size() < 8) return straight;
        double[] x = rows.stream().mapToDouble(WoodRow::mean).sorted().toArray();
        double low = x[Math.min(x.length - 1, 2)];
        double high = x[(int) (0.7 * (x.length - 1))];
        double best = Double.NaN;
        double least = Double.POSITIVE_INFINITY;
        for (int k = 0; k <= TRIES; k++) {
            double bend = low + (high - low) * k / TRIES;
            Coefficients line = line(rows, bend, sunny);
            if (line.slope() > 0 && line.left() < least) {
                least = line.left();
                best = bend;
            }
        }
        if (Double.isNaN(best)) return straight;
        WoodLine bent = fitted(rows, best, line(rows, best, sunny), true, sunny);
        double n = Math.max(4, bent.effective);
        double gain = (sum(straight) - sum(bent)) * n / bent.rows / (bent.error * bent.error);
        double needed = quantile(Math.max(1, n - bent.parameters), SURE_OF_BEND);
        return gain > needed * needed ? bent : straight;
    }

    private static double sum(WoodLine l) {
        return l.error * l.error * (l.rows - l.parameters);
    }

    /** A line, and the sum of squares that it leaves. */
    private record Coefficients(double flat, double slope, double sun, double left) {}

    /** Weighted least squares about the means. */
    private static Coefficients line(List<WoodRow> rows, double bend, boolean sunny) {
        int n = rows.size();
        double[] x = new double[n];
        double w = 0;
        double mx = 0;
        double my = 0;
        double ms = 0;
        for (int i = 0; i < n; i++) {
            WoodRow r = rows.get(i);
            x[i] = r.beyond(bend);
            w += r.days();
            mx += r.days() * x[i];
            my += r.days() * r.perDay();
            ms += sunny ? r.days() * r.sun() : 0;
        }
        mx /= w;
        my /= w;
        ms /= w;
        double xx = 0;
        double xy = 0;
        double yy = 0;
        double xs = 0;
        double ss = 0;
        double sy = 0;
        for (int i = 0; i < n; i++) {
            WoodRow r = rows.get(i);
            double light = sunny ? r.sun() - ms : 0;
            xx += r.days() * square(x[i] - mx);
            xy += r.days() * (x[i] - mx) * (r.perDay() - my);
            yy += r.days() * square(r.perDay() - my);
            xs += r.days() * (x[i] - mx) * light;
            ss += r.days() * light * light;
            sy += r.days() * light * (r.perDay() - my);
        }
        double apart = xx * ss - xs * xs;
        if (!sunny || apart <= 1e-9 * xx * ss) {
            double slope = xx > 0 ? xy / xx : 0;
            return new Coefficients(my - slope * mx, slope, 0, yy - slope * xy);
        }
        double slope = (xy * ss - sy * xs) / apart;
        double sun = (sy * xx - xy * xs) / apart;
        return new Coefficients(my - slope * mx - sun * ms, slope, sun, yy - slope * xy - sun * sy);
    }

    private static WoodLine fitted(List<WoodRow> rows, double bend, Coefficients line, boolean bent, boolean sunny) {
        int n = rows.size();
        int parameters = 2 + (bent ? 1 : 0) + (sunny ? 1 : 0);
        double w = rows.stream().mapToDouble(WoodRow::days).sum();
        double mean = 0;
        double meanSun = 0;
        for (WoodRow r : rows) {
            mean += r.days() * r.perDay() / w;
            meanSun += sunny ? r.days() * r.sun() / w : 0;
        }
        double scale = n / w;
        double[] residual = new double[n];
        double squares = 0;
        double all = 0;
        RealMatrix normal = new Array2DRowRealMatrix(parameters, parameters);
        for (int i = 0; i < n; i++) {
            WoodRow r = rows.get(i);
            double said = line.flat() + line.slope() * r.beyond(bend) + (sunny ? line.sun() * r.sun() : 0);
            residual[i] = (r.perDay() - said) * Math.sqrt(scale * r.days());
            squares += square(residual[i]);
            all += scale * r.days() * square(r.perDay() - mean);
            double[] g = gradient(r, bend, line.slope(), bent, sunny);
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
                line.flat(),
                line.slope(),
                bend,
                bent,
                line.sun(),
                meanSun,
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

    private static double[] gradient(WoodRow r, double bend, double slope, boolean bent, boolean sunny) {
        double[] g = new double[2 + (bent ? 1 : 0) + (sunny ? 1 : 0)];
        g[0] = 1;
        g[1] = r.beyond(bend);
        if (bent) g[2] = -slope * r.share(bend);
        if (sunny) g[g.length - 1] = r.sun();
        return g;
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

    /** Whether the sun is in the line. */
    public boolean sunny() {
        return sun != 0;
    }

    /** Whether the sun shows in it: whether more sun surely goes with less wood. */
    public boolean showsSun() {
        return sunny() && sun < -quantile(freedom(), SURE_OF_SUN) * sunError();
    }

    private double sunError() {
        return Math.sqrt(covariance.getEntry(parameters - 1, parameters - 1));
    }

    /** What it says for a row. */
    public double at(WoodRow row) {
        return flat + slope * row.beyond(bend) + (sunny() ? sun * row.sun() : 0);
    }

    /** What it says at one driving difference, K, and the mean sun of its rows. */
    public double at(double x) {
        return at(new WoodRow(0, new double[] {x}, 0, meanSun));
    }

    /** Variance of what the line itself, without scatter, says in the mean of some rows. */
    public double variance(List<WoodRow> some) {
        double[] sum = new double[parameters];
        double w = 0;
        for (WoodRow r : some) {
            double[] g = gradient(r, bend, slope, bent, sunny());
            for (int a = 0; a < parameters; a++) sum[a] += r.days() * g[a];
            w += r.days();
        }
        double v = 0;
        for (int a = 0; a < parameters; a++) {
            for (int b = 0; b < parameters; b++) v += sum[a] * sum[b] * covariance.getEntry(a, b) / (w * w);
        }
        return v;
    }

    /** Half the band of a single row of average length, under the mean sun, with a probability. */
    public double band(double x, double probability) {
        WoodRow one = new WoodRow(0, new double[] {x}, 0, meanSun);
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
