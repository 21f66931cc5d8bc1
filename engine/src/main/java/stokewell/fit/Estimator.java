package stokewell.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.DoublePredicate;
import java.util.stream.IntStream;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresFactory;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresProblem;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.ValueAndJacobianFunction;
import org.hipparchus.util.Pair;

/**
 * Robust generalised least squares with what was known before.
 *
 * <p>Rounds: the model is fitted by Levenberg and Marquardt (Hipparchus, after MINPACK) to whitened residuals; the
 * disturbance of each channel is estimated anew from what is left over ({@link Disturbance}); spikes are left out; large
 * innovations are weighed down (Huber, Ann. Math. Stat. 35 (1964) 73, at 2.5). What was known before enters as one row an
 * unknown. Slopes by finite differences, all runs of one point side by side on the processors there are.
 */
public final class Estimator {

    private static final double HUBER = 2.5;
    private static final double SPIKE = 6;
    private static final int MOST_ROUNDS = 5;
    private static final double HOPELESS = 1e3;

    private final Response response;
    private final Observed observed;
    private final List<Unknown> unknowns;
    private final DoublePredicate goOn;
    private final AtomicInteger runs = new AtomicInteger();
    private List<Disturbance> disturbances;
    private double[] weight;
    private final boolean[] skip;
    private double done;
    private double[] slopesAt;
    private double[][] lastSlopes;
    private double[] readAt;
    private double[] lastRead;

    private Estimator(Response response, Observed observed, DoublePredicate goOn) {
        this.response = response;
        this.observed = observed;
        this.goOn = goOn;
        unknowns = response.unknowns();
        skip = new boolean[observed.rows()];
        weight = new double[observed.rows()];
        Arrays.fill(weight, 1);
        disturbances = new ArrayList<>();
        for (Observed.Channel c : observed.channels()) disturbances.add(Disturbance.white(c.error()));
    }

    /**
     * Estimates.
     *
     * @param goOn told the share done, 0 to 1; returns false to stop
     * @throws CancellationException when it is stopped
     */
    public static Estimate of(Response response, Observed observed, DoublePredicate goOn) {
        return new Estimator(response, observed, goOn).run();
    }

    private Estimate run() {
        double[] p = unknowns.stream().mapToDouble(Unknown::before).toArray();
        boolean settled = false;
        int round = 0;
        double[] fitted = null;
        for (; round < MOST_ROUNDS && !settled; round++) {
            done = round / (double) MOST_ROUNDS;
            double[] next = fit(p, round == 0 ? 6 : 3);
            double furthest = 0;
            for (int j = 0; j < next.length; j++) {
                furthest = Math.max(
                        furthest, Math.abs(next[j] - p[j]) / unknowns.get(j).spread());
            }
            p = next;
            fitted = read(p);
            if (fitted == null) throw new IllegalStateException("the model has no answer for its own best fit");
            settled = round >= 1 && furthest < 0.1;
            if (!settled) reweigh(fitted);
        }
        return conclude(p, fitted, round, settled);
    }

    /** What the model reads; the last answer is kept. */
    private double[] read(double[] p) {
        synchronized (runs) {
            if (Arrays.equals(p, readAt)) return lastRead;
        }
        if (!goOn.test(Math.min(0.99, done))) throw new CancellationException("fit stopped");
        runs.incrementAndGet();
        double[] answer = response.at(p);
        synchronized (runs) {
            readAt = p.clone();
            lastRead = answer;
        }
        return answer;
    }

    /** One fit with the disturbances as they stand. */
    private double[] fit(double[] start, int most) {
        int rows = observed.rows() + unknowns.size();
        ValueAndJacobianFunction whitened = new ValueAndJacobianFunction() {
            @Override
            public Pair<RealVector, RealMatrix> value(RealVector point) {
                return new Pair<>(computeValue(point.toArray()), computeJacobian(point.toArray()));
            }

            @Override
            public RealVector computeValue(double[] p) {
                double[] out = new double[rows];
                double[] f = read(p);
                if (f == null) {
                    Arrays.fill(out, HOPELESS);
                } else {
                    double[] r = residual(f);
                    whiten(r);
                    for (int i = 0; i < r.length; i++) out[i] = -r[i];
                    for (int j = 0; j < p.length; j++) {
                        Unknown u = unknowns.get(j);
                        out[r.length + j] = (p[j] - u.before()) / u.spread();
                    }
                }
                return new ArrayRealVector(out, false);
            }

            @Override
            public RealMatrix computeJacobian(double[] p) {
                double[][] columns = copy(slopes(p, false));
                whiten(columns);
                double[][] a = new double[rows][p.length];
                for (int j = 0; j < p.length; j++) {
                    for (int i = 0; i < observed.rows(); i++) a[i][j] = columns[j][i];
                    a[observed.rows() + j][j] = 1 / unknowns.get(j).spread();
                }
                return new Array2DRowRealMatrix(a, false);
            }
        };
        double[] last = {Double.POSITIVE_INFINITY};
        LeastSquaresProblem problem = LeastSquaresFactory.create(
                whitened,
                new ArrayRealVector(rows),
                new ArrayRealVector(start),
                null,
                (iteration, before, after) -> {
                    double change = before.getCost() - after.getCost();
                    last[0] = after.getCost();
                    return iteration >= most || change < 1e-3 * after.getCost() / Math.sqrt(rows);
                },
                200,
                200,
                true,
                point -> {
                    double[] q = point.toArray();
                    for (int j = 0; j < q.length; j++) q[j] = unknowns.get(j).held(q[j]);
                    return new ArrayRealVector(q, false);
                });
        try {
            return new LevenbergMarquardtOptimizer()
                    .withInitialStepBoundFactor(2)
                    .withCostRelativeTolerance(1e-6)
                    .withParameterRelativeTolerance(1e-5)
                    .optimize(problem)
                    .getPoint()
                    .toArray();
        } catch (MathIllegalStateException stuck) {
            throw new IllegalStateException("the fit does not come to rest: " + stuck.getMessage(), stuck);
        }
    }

    private static double[][] copy(double[][] columns) {
        double[][] copies = new double[columns.length][];
        for (int j = 0; j < copies.length; j++) copies[j] = columns[j].clone();
        return copies;
    }

    private double[] residual(double[] f) {
        double[] r = new double[f.length];
        for (int i = 0; i < r.length; i++) r[i] = observed.value()[i] - f[i];
        return r;
    }

    private void whiten(double[]... columns) {
        for (int c = 0; c < disturbances.size(); c++) {
            Observed.Channel channel = observed.channels().get(c);
            disturbances.get(c).whiten(observed.time(), skip, columns, channel.from(), channel.until());
        }
        for (double[] column : columns) for (int i = 0; i < column.length; i++) column[i] *= weight[i];
    }

    /**
     * Slopes of every row by every unknown; the runs go side by side. Steps are large, a good part of what is not known:
     * switches make the model rough, and a small step would follow the roughness.
     *
     * @param both to both sides
     */
    private double[][] slopes(double[] p, boolean both) {
        if (!both && Arrays.equals(p, slopesAt)) return lastSlopes;
        double[] f = both ? new double[0] : read(p);
        double[][] columns = new double[p.length][];
        IntStream.range(0, p.length).parallel().forEach(j -> columns[j] = slope(p, f, j, both));
        if (!both) {
            slopesAt = p.clone();
            lastSlopes = columns;
        }
        return columns;
    }

    private double[] slope(double[] p, double[] f, int j, boolean both) {
        double[] known = response.slope(j, p);
        if (known != null) return known;
        Unknown u = unknowns.get(j);
        double[] up = p.clone();
        up[j] = p[j] + u.step() > u.high() ? p[j] - u.step() : p[j] + u.step();
        double[] there = read(up);
        double[] down = p.clone();
        if (both) down[j] = u.held(2 * p[j] - up[j]);
        double[] here = both ? read(down) : f;
        double[] column = new double[observed.rows()];
        if (there == null || here == null) return column;
        for (int i = 0; i < column.length; i++) column[i] = (there[i] - here[i]) / (up[j] - down[j]);
        return column;
    }

    /** Spikes out, disturbances anew, large innovations weighed down. */
    private void reweigh(double[] fitted) {
        double[] r = residual(fitted);
        List<Disturbance> fresh = new ArrayList<>();
        for (Observed.Channel c : observed.channels()) {
            spikes(r, c);
            fresh.add(Disturbance.of(observed.time(), skip, r, c.from(), c.until(), c.least()));
        }
        disturbances = fresh;
        Arrays.fill(weight, 1);
        double[] e = r.clone();
        whiten(e);
        for (int i = 0; i < e.length; i++) weight[i] = Math.abs(e[i]) <= HUBER ? 1 : Math.sqrt(HUBER / Math.abs(e[i]));
    }

    /** A spike stands off from the middle of its neighbours by far more than they do from each other. */
    private void spikes(double[] r, Observed.Channel c) {
        int reach = 3;
        double[] off = new double[c.until() - c.from()];
        for (int i = c.from(); i < c.until(); i++) {
            int a = Math.max(c.from(), i - reach);
            int b = Math.min(c.until(), i + reach + 1);
            double[] near = Arrays.copyOfRange(r, a, b);
            Arrays.sort(near);
            off[i - c.from()] = Math.abs(r[i] - near[near.length / 2]);
        }
        double[] sorted = off.clone();
        Arrays.sort(sorted);
        if (sorted.length == 0) return;
        double usual = Math.max(c.least(), 1.4826 * sorted[sorted.length / 2]);
        for (int i = 0; i < off.length; i++) skip[c.from() + i] = off[i] > SPIKE * usual && off[i] > 4 * c.least();
    }

    private Estimate conclude(double[] p, double[] fitted, int rounds, boolean settled) {
        double[][] raw = slopes(p, true);
        double[][] columns = copy(raw);
        whiten(columns);
        int n = p.length;
        RealMatrix information = new Array2DRowRealMatrix(n, n);
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                double sum = 0;
                for (int k = 0; k < columns[i].length; k++) sum += columns[i][k] * columns[j][k];
                if (i == j)
                    sum += 1 / (unknowns.get(j).spread() * unknowns.get(j).spread());
                information.setEntry(i, j, sum);
                information.setEntry(j, i, sum);
            }
        }
        RealMatrix covariance =
                new CholeskyDecomposition(information, 1e-12, 1e-14).getSolver().getInverse();
        double worth = 0;
        for (int c = 0; c < disturbances.size(); c++) {
            Observed.Channel channel = observed.channels().get(c);
            int count = channel.until() - channel.from();
            if (count < 2) continue;
            double step = (observed.time()[channel.until() - 1] - observed.time()[channel.from()]) / (count - 1);
            worth += disturbances.get(c).worth(count, step);
        }
        double used = 0;
        for (int j = 0; j < n; j++) {
            double spread = unknowns.get(j).spread();
            used += Math.max(0, 1 - covariance.getEntry(j, j) / (spread * spread));
        }
        double freedom = Math.max(3, worth - used);
        RealMatrix honest = covariance.scalarMultiply(Math.min(2, worth / freedom));
        return new Estimate(
                List.copyOf(unknowns),
                p,
                honest,
                List.copyOf(disturbances),
                fitted,
                skip.clone(),
                raw,
                columns,
                freedom,
                rounds,
                runs.get(),
                settled);
    }
}
