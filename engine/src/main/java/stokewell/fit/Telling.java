package stokewell.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.DoublePredicate;
import java.util.stream.IntStream;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.RealMatrix;

/** What the readings tell of single numbers, and what other readings would. */
final class Telling {

    /** Where a number is held, in half widths of its interval. */
    private static final double[] HELD = {-2, -1, 1, 2};

    /** A sensor that nobody has yet errs as the others do: 0.1 K of noise and a slow error of 3 h, K. Common practice. */
    private static final double NOISE = 0.1;

    private static final double SLOW = 0.45;
    private static final double SLOW_PIPE = 1.5;
    private static final double MEMORY = 3 * 3600;
    /** An interval that shrinks less is not worth the wire. */
    private static final double WORTH = 0.8;

    private final ShopModel model;
    private final Estimate estimate;
    private final Estimate wide;

    /**
     * @param estimate of least squares
     * @param wide     the same, widened
     */
    Telling(ShopModel model, Estimate estimate, Estimate wide) {
        this.model = model;
        this.estimate = estimate;
        this.wide = wide;
    }

    /** The curves of some knobs; the runs go side by side. */
    List<Profile> profiles(List<Knob> knobs, DoublePredicate goOn) {
        double best = misfit(estimate.predicted());
        double bestKnown = estimate.known(estimate.value());
        List<Profile> profiles = new ArrayList<>();
        for (Knob knob : knobs) {
            int j = model.knobs().indexOf(knob);
            if (j < 0) continue;
            double half = wide.half(j, Fitting.SURE);
            double[] factor = new double[HELD.length + 1];
            double[] rise = new double[HELD.length + 1];
            double[] told = new double[HELD.length + 1];
            factor[2] = Math.exp(estimate.value()[j]);
            IntStream.range(0, HELD.length).parallel().forEach(k -> {
                if (!goOn.test(0.5)) throw new CancellationException("fit stopped");
                int at = k < 2 ? k : k + 1;
                double value = model.unknowns().get(j).held(estimate.value()[j] + HELD[k] * half);
                double[] least = least(j, value);
                factor[at] = Math.exp(value);
                told[at] = Math.max(0, (least[0] - best) / Fitting.DULL);
                // what was known before is no less true for a model that errs
                rise[at] = Math.max(0, told[at] + least[1] - bestKnown);
            });
            profiles.add(
                    new Profile(knob, factor, rise, told, crossing(factor, rise, 1, 0), crossing(factor, rise, 3, 4)));
        }
        return List.copyOf(profiles);
    }

    /** Where the root of the rise, a straight line between points, comes to the 90 % interval's. */
    private static double crossing(double[] factor, double[] rise, int near, int far) {
        double wanted = Math.sqrt(Profile.RISE);
        double a = Math.sqrt(rise[near]);
        double b = Math.sqrt(rise[far]);
        if (b < wanted) return far == 0 ? 0 : Double.POSITIVE_INFINITY;
        double x;
        double middle = Math.log(factor[2]);
        if (a >= wanted) x = middle + (Math.log(factor[near]) - middle) * wanted / a;
        else {
            double share = (wanted - a) / (b - a);
            x = Math.log(factor[near]) + share * (Math.log(factor[far]) - Math.log(factor[near]));
        }
        return Math.exp(x);
    }

    /** Least misfit of the readings with unknown j held, and what was known before of the others there. */
    private double[] least(int j, double value) {
        int n = estimate.value().length;
        double[] p = estimate.value().clone();
        double by = (value - p[j]) / estimate.covariance().getEntry(j, j);
        for (int i = 0; i < n; i++) {
            double moved = p[i] + by * estimate.covariance().getEntry(i, j);
            p[i] = i == j ? value : estimate.unknowns().get(i).held(moved);
        }
        double[] least = {Double.POSITIVE_INFINITY, 0};
        for (int turn = 0; turn < 2; turn++) {
            double[] f = model.at(p);
            if (f == null) break;
            double misfit = misfit(f);
            double known = estimate.known(p);
            if (misfit / Fitting.DULL + known < least[0] / Fitting.DULL + least[1] || turn == 0) {
                least[0] = misfit;
                least[1] = known;
            }
            if (turn == 1) break;
            double[] step = step(p, f, j);
            int k = 0;
            for (int i = 0; i < n; i++) {
                if (i == j) continue;
                p[i] = estimate.unknowns().get(i).held(p[i] + step[k++]);
            }
        }
        return least;
    }

    private double[] step(double[] p, double[] f, int held) {
        int n = p.length;
        double[][] slopes = new double[n - 1][];
        double[] off = new double[n - 1];
        double[] spread = new double[n - 1];
        int k = 0;
        for (int i = 0; i < n; i++) {
            if (i == held) continue;
            Unknown u = estimate.unknowns().get(i);
            slopes[k] = estimate.jacobian()[i];
            off[k] = p[i] - u.before();
            spread[k++] = u.spread();
        }
        return new Whitened(
                        model.observed(),
                        estimate.skipped(),
                        estimate.disturbances(),
                        model.observed().less(f),
                        slopes,
                        off,
                        spread)
                .step();
    }

    private double misfit(double[] f) {
        return Whitened.misfit(
                model.observed(),
                estimate.skipped(),
                estimate.disturbances(),
                model.observed().less(f));
    }

    /** For every knob the sensor that would tell most, and as many days again, where they are worth it. */
    List<Advice> advice(List<Knob> knobs) {
        RealMatrix information = inverse(estimate.covariance());
        List<Advice> all = new ArrayList<>();
        List<RealMatrix> with = new ArrayList<>();
        for (int c = 0; c < model.extra().size(); c++) with.add(inverse(information.add(extra(c))));
        RealMatrix twice = twice(information);
        for (Knob knob : knobs) {
            int j = model.knobs().indexOf(knob);
            if (j < 0) continue;
            List<Advice> own = new ArrayList<>();
            double now = wide.half(j, Fitting.SURE);
            for (int c = 0; c < with.size(); c++) {
                if (model.extra().get(c).isPipe() && !ofTheLoop(knob)) continue;
                own.add(new Advice(knob, model.extra().get(c), now, now * shrunk(with.get(c), j)));
            }
            own.add(new Advice(knob, null, now, now * shrunk(twice, j)));
            own.sort(Comparator.comparingDouble(Advice::after));
            own.stream().filter(a -> a.after() < WORTH * a.before()).limit(2).forEach(all::add);
        }
        return List.copyOf(all);
    }

    /**
     * The covariance with as much from the readings again. Errors that were widened for channels that err together may stand
     * wider than what was known before: there the readings count for nothing, never for less.
     */
    private RealMatrix twice(RealMatrix information) {
        int n = information.getRowDimension();
        RealMatrix spread = new Array2DRowRealMatrix(n, n);
        for (int i = 0; i < n; i++)
            spread.setEntry(i, i, estimate.unknowns().get(i).spread());
        RealMatrix scaled = spread.multiply(information).multiply(spread);
        // an inverse is symmetric but for its last digits
        EigenDecompositionSymmetric parts =
                new EigenDecompositionSymmetric(scaled.add(scaled.transpose()).scalarMultiply(0.5));
        RealMatrix left = new Array2DRowRealMatrix(n, n);
        for (int i = 0; i < n; i++) {
            double all = parts.getEigenvalues()[i];
            left.setEntry(i, i, 1 / (all + Math.max(0, all - 1)));
        }
        RealMatrix along = spread.multiply(parts.getV());
        return along.multiply(left).multiplyTransposed(along);
    }

    /** A pipe's sensor leaps with the pump: its slopes by other numbers are mostly the moment of a switch, and promise too much. */
    private static boolean ofTheLoop(Knob knob) {
        return knob == Knob.PUMP || knob == Knob.PICKUP || knob == Knob.BURN;
    }

    private double shrunk(RealMatrix covariance, int j) {
        return Math.sqrt(covariance.getEntry(j, j) / estimate.covariance().getEntry(j, j));
    }

    /** What a sensor at a place that has none would add to the information. */
    private RealMatrix extra(int c) {
        int n = estimate.value().length;
        Spot spot = model.extra().get(c);
        Disturbance d = new Disturbance(NOISE, spot.isPipe() ? SLOW_PIPE : SLOW, MEMORY);
        double[] time = model.extraTimes();
        int from = model.observed().rows() + c * time.length;
        double[][] columns = new double[n + 1][];
        for (int i = 0; i < n; i++) columns[i] = Arrays.copyOfRange(estimate.jacobian()[i], from, from + time.length);
        columns[n] = new double[time.length];
        Arrays.fill(columns[n], 1);
        d.whiten(time, new boolean[time.length], columns, 0, time.length);
        // its own offset is one more unknown, taken out
        double offset = Whitened.dot(columns[n], columns[n]) + 1 / (spot.offsetSpread() * spot.offsetSpread());
        RealMatrix more = new Array2DRowRealMatrix(n, n);
        for (int i = 0; i < n; i++) {
            for (int k = 0; k < n; k++) {
                double along = Whitened.dot(columns[i], columns[n]) * Whitened.dot(columns[k], columns[n]) / offset;
                more.setEntry(i, k, Whitened.dot(columns[i], columns[k]) - along);
            }
        }
        return more;
    }

    private static RealMatrix inverse(RealMatrix m) {
        return new CholeskyDecomposition(m, 1e-8, 1e-18).getSolver().getInverse();
    }
}
