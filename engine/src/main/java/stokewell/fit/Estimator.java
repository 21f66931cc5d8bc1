package stokewell.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import java.util.function.DoublePredicate;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.exception.MathRuntimeException;
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
 * unknown.
 */
public final class Estimator {

    private static final double HUBER = 2.5;
    private static final double SPIKE = 6;
    private static final int MOST_ROUNDS = 6;
    private static final double HOPELESS = 1e3;
    /**
     * First step of the optimiser at most, in lengths of the start. Of the 54 starts of NIST's nonlinear problems 10 solves all; 2
     * loses one (MGH10 far), 100 another (BoxBOD far). A dear model has good slopes by then and takes the whole step.
     */
    private static final double FIRST_STEP = 10;

    private static final double FIRST_STEP_DEAR = 100;
    /** A fit rests when a round moves no value by more than this share of its own standard error. */
    private static final double REST = 0.3;

    private final Observed observed;
    private final List<Unknown> unknowns;
    private final Asked asked;
    private final boolean dear;
    private List<Disturbance> disturbances;
    private final double[] weight;
    private final boolean[] skip;
    private final boolean[] hidden;
    /** Slopes that the last fit stepped by, whitened, what was known before below them. */
    private double[][] stepped;

    private Estimator(Response response, Observed observed, DoublePredicate goOn) {
        this.observed = observed;
        unknowns = response.unknowns();
        asked = new Asked(response, goOn);
        dear = response.isDear();
        skip = new boolean[observed.rows()];
        hidden = new boolean[observed.rows()];
        weight = new double[observed.rows()];
        stepped = new double[0][];
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
        double[] before =
                response.unknowns().stream().mapToDouble(Unknown::before).toArray();
        return new Estimator(response, observed, goOn).run(before, Double.POSITIVE_INFINITY, p -> {});
    }

    /** As {@link #of(Response, Observed, DoublePredicate)}, from values that may be near. */
    public static Estimate of(Response response, Observed observed, double[] start, DoublePredicate goOn) {
        return new Estimator(response, observed, goOn).run(start, Double.POSITIVE_INFINITY, p -> {});
    }

    /**
     * Estimates twice: from what was read before a time, then, from there, from all.
     *
     * @param start values that are near
     * @param atCut told the first values
     */
    static Estimate of(
            Response response,
            Observed observed,
            double[] start,
            double cut,
            Consumer<double[]> atCut,
            DoublePredicate goOn) {
        return new Estimator(response, observed, goOn).run(start, cut, atCut);
    }

    /** Values that are near, to begin from, with no word on their errors. */
    static double[] near(Response response, Observed observed, double[] start, DoublePredicate goOn) {
        return new Estimator(response, observed, goOn).rounds(start, false).p();
    }

    /** Values after some rounds. */
    private record Rounds(double[] p, int count, boolean settled) {}

    private Estimate run(double[] start, double cut, Consumer<double[]> atCut) {
        Rounds all;
        int before = 0;
        if (cut < Double.POSITIVE_INFINITY) {
            for (int i = 0; i < skip.length; i++) hidden[i] = observed.time()[i] >= cut;
            System.arraycopy(hidden, 0, skip, 0, skip.length);
            Rounds part = rounds(start, true);
            atCut.accept(part.p().clone());
            Arrays.fill(hidden, false);
            before = part.count();
            all = rounds(part.p(), true);
        } else {
            all = rounds(start, false);
        }
        double[] fitted = asked.read(all.p());
        return conclude(all.p(), Arrays.copyOf(fitted, observed.rows()), before + all.count(), all.settled());
    }

    /** @param known whether the disturbances have been estimated */
    private Rounds rounds(double[] start, boolean known) {
        double[] p = start.clone();
        boolean settled = false;
        int round = 0;
        for (; round < MOST_ROUNDS && !settled; round++) {
            boolean weighed = known || round > 0;
            if (weighed) reweigh(asked.read(p));
            asked.round();
            double[] next = fit(p, dear ? 3 : round == 0 ? 8 : 4);
            double furthest = furthest(p, next);
            p = next;
            if (asked.read(p) == null) throw new IllegalStateException("the model has no answer for its own best fit");
            settled = weighed && furthest < REST;
        }
        return new Rounds(p, round, settled);
    }

    /**
     * The longest of the steps of a round, each in standard errors of its own value: what was known before may be so wide
     * that a step which is short against it is long against what the readings tell.
     */
    private double furthest(double[] before, double[] after) {
        int n = before.length;
        RealMatrix information = new Array2DRowRealMatrix(n, n);
        for (double[] row : stepped) {
            for (int i = 0; i < n; i++) for (int j = 0; j < n; j++) information.addToEntry(i, j, row[i] * row[j]);
        }
        double furthest = 0;
        try {
            // scaled to ones on the diagonal: unknowns may be of very different size
            RealMatrix scaled = new Array2DRowRealMatrix(n, n);
            double[] size = new double[n];
            for (int i = 0; i < n; i++) size[i] = 1 / Math.sqrt(information.getEntry(i, i));
            for (int i = 0; i < n; i++) {
                for (int j = 0; j < n; j++) scaled.setEntry(i, j, size[i] * size[j] * information.getEntry(i, j));
            }
            RealMatrix inverse =
                    new CholeskyDecomposition(scaled, 1e-10, 1e-14).getSolver().getInverse();
            for (int j = 0; j < n; j++) {
                double error = size[j] * Math.sqrt(inverse.getEntry(j, j));
                furthest = Math.max(furthest, Math.abs(after[j] - before[j]) / error);
            }
            return furthest;
        } catch (MathRuntimeException singular) {
            return Double.POSITIVE_INFINITY;
        }
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
                double[] f = asked.read(p);
                if (f == null) {
                    Arrays.fill(out, HOPELESS);
                } else {
                    double[] r = observed.less(f);
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
                double[][] columns = copy(asked.slopes(p));
                whiten(columns);
                double[][] a = new double[rows][p.length];
                for (int j = 0; j < p.length; j++) {
                    for (int i = 0; i < observed.rows(); i++) a[i][j] = columns[j][i];
                    a[observed.rows() + j][j] = 1 / unknowns.get(j).spread();
                }
                stepped = a;
                return new Array2DRowRealMatrix(a, false);
            }
        };
        LeastSquaresProblem problem = LeastSquaresFactory.create(
                whitened,
                new ArrayRealVector(rows),
                new ArrayRealVector(start),
                null,
                (iteration, before, after) -> {
                    double change = before.getCost() - after.getCost();
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
                    .withInitialStepBoundFactor(dear ? FIRST_STEP_DEAR : FIRST_STEP)
                    .withCostRelativeTolerance(dear ? 1e-4 : 1e-6)
                    .withParameterRelativeTolerance(dear ? 1e-3 : 1e-5)
                    .optimize(problem)
                    .getPoint()
                    .toArray();
        } catch (MathIllegalStateException stuck) {
            throw new IllegalStateException("the fit does not come to rest: " + stuck.getMessage(), stuck);
        }
    }

    private double[][] copy(double[][] columns) {
        double[][] copies = new double[columns.length][];
        for (int j = 0; j < copies.length; j++) copies[j] = Arrays.copyOf(columns[j], observed.rows());
        return copies;
    }

    private void whiten(double[]... columns) {
        for (int c = 0; c < disturbances.size(); c++) {
            Observed.Channel channel = observed.channels().get(c);
            disturbances.get(c).whiten(observed.time(), skip, columns, channel.from(), channel.until());
        }
        for (double[] column : columns) for (int i = 0; i < column.length; i++) column[i] *= weight[i];
    }

    /** Spikes out, disturbances anew, large innovations weighed down. */
    private void reweigh(double[] fitted) {
        double[] r = observed.less(fitted);
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
        for (int i = 0; i < off.length; i++) {
            boolean spike = off[i] > SPIKE * usual && off[i] > 4 * c.least();
            skip[c.from() + i] = spike || hidden[c.from() + i];
        }
    }

    private Estimate conclude(double[] p, double[] fitted, int rounds, boolean settled) {
        double[][] raw = asked.slopesBothSides(p);
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
        double worth = worth();
        double used = 0;
        for (int j = 0; j < n; j++) {
            double spread = unknowns.get(j).spread();
            used += Math.max(0, 1 - covariance.getEntry(j, j) / (spread * spread));
        }
        double freedom = Math.max(3, worth - used);
        RealMatrix honest = new Sandwich(observed, skip)
                .together(covariance, columns, innovations(fitted))
                .scalarMultiply(Math.min(2, worth / freedom));
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
                asked.runs(),
                settled);
    }

    private double[] innovations(double[] fitted) {
        double[] e = observed.less(fitted);
        whiten(e);
        return e;
    }

    /** How many independent readings all channels are worth together. */
    private double worth() {
        double worth = 0;
        for (int c = 0; c < disturbances.size(); c++) {
            Observed.Channel channel = observed.channels().get(c);
            int count = channel.until() - channel.from();
            if (count < 2) continue;
            double step = (observed.time()[channel.until() - 1] - observed.time()[channel.from()]) / (count - 1);
            worth += disturbances.get(c).worth(count, step);
        }
        return worth;
    }
}
