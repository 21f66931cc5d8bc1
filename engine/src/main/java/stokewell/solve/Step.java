package stokewell.solve;

/**
 * One Rosenbrock step, tried as often as need be from one starting point, and the interpolant over it.
 *
 * <p>The sums are further rows of the same system, s' = g(t, y), but nothing depends on them. So their stages need no
 * matrix, and because they enter linearly they are wanted only as one weighted sum: with b = m Gamma,
 * {@code s_new = s + h (sum b_i g_i + dg/dy sum b_i U_i + h (sum b_i gamma_i) dg/dt)}, one product with dg/dy for a step
 * instead of one for a stage. This is the method itself, not an approximation of it; whatever linear invariant the full
 * system keeps is kept to rounding, at the end and on the interpolant. The same work space serves all steps.
 */
final class Step implements Interpolant {

    private final Equations equations;
    private final Rosenbrock method;
    private final int n;
    private final int sums;
    private final int stages;
    private final SparseLu lu;
    private final Pattern sumPattern;
    private final double[] mass;
    private final double[] scale;
    private final boolean relative;
    private final Tolerances tolerances;
    private final int weighted;

    /** The starting point and what is known there. */
    private double t;

    private final double[] y;
    private final double[] s;
    private final double[] f0;
    private final double[] jacobian;
    private final double[] sumJacobian;
    private final double[] dfdt;
    private final double[] dgdt;
    /** One over the error weights of an absolute tolerance; 0 where the unknown is left out. */
    private final double[] fixedWeight;

    /** The step last tried. */
    private double h;

    private double end;
    private final double[] shift;
    private final double[] argument;
    private final double[] f;
    private final double[][] u;
    private final double[][] g;
    private final double[] yNew;
    private final double[] sNew;

    private final double[][] sumWeights;
    private final double[] sumTimes;
    private final boolean[] repeatsFirst;
    private final boolean[] extendsPrevious;
    private final double[][] dense;
    private final double[][] sumDense;
    private final double[] total;
    private boolean denseReady;
    private boolean sumsReady;
    private boolean sumDenseReady;

    private int badPivot = -1;
    private long rates;
    private long jacobians;
    private long factorisations;
    private long solves;

    Step(Equations equations, Tolerances tolerances, Rosenbrock method) {
        this.equations = equations;
        this.method = method;
        this.tolerances = tolerances;
        n = equations.size();
        sums = equations.sums();
        stages = method.stages();
        lu = new SparseLu(equations.pattern());
        sumPattern = equations.sumPattern();
        mass = new double[n];
        scale = new double[n];
        fixedWeight = new double[n];
        int count = 0;
        for (int i = 0; i < n; i++) {
            mass[i] = equations.algebraic(i) ? 0 : 1;
            scale[i] = equations.scale(i);
            if (scale[i] < Double.POSITIVE_INFINITY) count++;
            fixedWeight[i] = 1 / (tolerances.absolute() * scale[i]);
        }
        weighted = Math.max(1, count);
        relative = tolerances.relative() > 0;
        y = new double[n];
        s = new double[sums];
        f0 = new double[n];
        jacobian = new double[equations.pattern().size()];
        sumJacobian = new double[sumPattern.size()];
        dfdt = new double[n];
        dgdt = new double[sums];
        shift = new double[n];
        argument = new double[n];
        f = new double[n];
        u = new double[stages][n];
        g = new double[stages][sums];
        yNew = new double[n];
        sNew = new double[sums];
        int powers = method.dense().length;
        dense = new double[powers][n];
        sumDense = new double[powers][sums];
        total = new double[n];
        sumWeights = new double[powers + 1][];
        sumTimes = new double[powers + 1];
        for (int k = 0; k <= powers; k++) {
            sumWeights[k] = method.slopeWeights(k == powers ? method.m() : method.dense()[k]);
            for (int i = 0; i < stages; i++) sumTimes[k] += sumWeights[k][i] * method.gammas()[i];
        }
        repeatsFirst = new boolean[stages];
        extendsPrevious = new boolean[stages];
        for (int i = 0; i < stages; i++) {
            repeatsFirst[i] = method.repeatsFirst(i);
            extendsPrevious[i] = method.extendsPrevious(i);
        }
    }

    /** Sets out from a state: rates and Jacobian there serve every try. */
    void from(State state) {
        t = state.t;
        System.arraycopy(state.y, 0, y, 0, n);
        System.arraycopy(state.sums, 0, s, 0, sums);
        equations.rates(t, y, f0, g[0]);
        equations.linearize(t, y, jacobian, sumJacobian, dfdt, dgdt);
        rates++;
        jacobians++;
    }

    /**
     * Tries a step.
     *
     * @param h   its length, s
     * @param end where it ends, s: t + h but for rounding
     * @return the weighted error, 1 at the tolerance; infinite or not a number where the step cannot be taken
     */
    double attempt(double h, double end) {
        this.h = h;
        this.end = end;
        denseReady = false;
        sumsReady = false;
        sumDenseReady = false;
        double diagonal = 1 / (h * method.gamma());
        for (int i = 0; i < n; i++) shift[i] = mass[i] * diagonal;
        factorisations++;
        badPivot = lu.factorShifted(shift, jacobian);
        if (badPivot >= 0) return Double.POSITIVE_INFINITY;
        for (int stage = 0; stage < stages; stage++) stage(stage);
        double[] last = u[stages - 1];
        for (int i = 0; i < n; i++) yNew[i] = argument[i] + last[i];
        return norm(last, yNew);
    }

    private void stage(int stage) {
        double[] k = u[stage];
        double[] rate = f0;
        if (stage > 0 && repeatsFirst[stage]) {
            System.arraycopy(g[0], 0, g[stage], 0, sums);
        } else if (stage > 0) {
            rate = f;
            if (extendsPrevious[stage]) {
                double[] before = u[stage - 1];
                for (int i = 0; i < n; i++) argument[i] += before[i];
            } else {
                combine(argument, method.a()[stage], u, stage, n);
                for (int i = 0; i < n; i++) argument[i] += y[i];
            }
            double alpha = method.alpha()[stage];
            equations.rates(alpha == 1 ? end : t + alpha * h, argument, f, g[stage]);
            rates++;
        }
        if (stage == 0) {
            System.arraycopy(rate, 0, k, 0, n);
        } else {
            combine(k, method.c()[stage], u, stage, n);
            double perStep = 1 / h;
            for (int i = 0; i < n; i++) k[i] = rate[i] + perStep * mass[i] * k[i];
        }
        double byTime = method.gammas()[stage] * h;
        if (byTime != 0) for (int i = 0; i < n; i++) k[i] += byTime * dfdt[i];
        lu.solve(k);
        solves++;
    }

    /** out = sum over j below count of w_j v_j, in one pass for up to six terms. */
    private static void combine(double[] out, double[] w, double[][] v, int count, int length) {
        switch (count) {
            case 1 -> {
                double[] v0 = v[0];
                double w0 = w[0];
                for (int i = 0; i < length; i++) out[i] = w0 * v0[i];
            }
            case 2 -> {
                double[] v0 = v[0];
                double[] v1 = v[1];
                double w0 = w[0];
                double w1 = w[1];
                for (int i = 0; i < length; i++) out[i] = w0 * v0[i] + w1 * v1[i];
            }
            case 3 -> {
                double[] v0 = v[0];
                double[] v1 = v[1];
                double[] v2 = v[2];
                double w0 = w[0];
                double w1 = w[1];
                double w2 = w[2];
                for (int i = 0; i < length; i++) out[i] = w0 * v0[i] + w1 * v1[i] + w2 * v2[i];
            }
            default -> {
                double[] v0 = v[0];
                double[] v1 = v[1];
                double[] v2 = v[2];
                double[] v3 = v[3];
                double w0 = w[0];
                double w1 = w[1];
                double w2 = w[2];
                double w3 = w[3];
                for (int i = 0; i < length; i++) out[i] = w0 * v0[i] + w1 * v1[i] + w2 * v2[i] + w3 * v3[i];
                for (int j = 4; j < count; j++) {
                    double[] more = v[j];
                    double by = w[j];
                    for (int i = 0; i < length; i++) out[i] += by * more[i];
                }
            }
        }
    }

    /** Root mean square of e over the error weights at the start and at other. */
    private double norm(double[] e, double[] other) {
        double sum = 0;
        if (relative) {
            for (int i = 0; i < n; i++) {
                double weight = tolerances.absolute() * scale[i]
                        + tolerances.relative() * Math.max(Math.abs(y[i]), Math.abs(other[i]));
                double x = e[i] / weight;
                sum += x * x;
            }
        } else {
            for (int i = 0; i < n; i++) {
                double x = e[i] * fixedWeight[i];
                sum += x * x;
            }
        }
        return Math.sqrt(sum / weighted);
    }

    /** The unknown with the largest weighted error in the step last tried, or the first that is not finite. */
    int worst() {
        if (badPivot >= 0) return badPivot;
        int worst = -1;
        double most = 0;
        for (int i = 0; i < n; i++) {
            if (!Double.isFinite(yNew[i])) return i;
            double x = Math.abs(u[stages - 1][i]) / scale[i];
            if (x > most) {
                most = x;
                worst = i;
            }
        }
        return worst;
    }

    /** Whether the step last tried failed for a pivot. */
    boolean singular() {
        return badPivot >= 0;
    }

    /**
     * A first step by the transient that sets in: from y' and y'' = J y' + df/dt its time constant tau = |y'|/|y''| and
     * its height |y'|^2/|y''| in tolerances, and the step whose error, about height (h/tau)^order / 1000, is one
     * tolerance. Algebraic unknowns are taken to stand still. Infinite at rest.
     */
    double curvatureStep() {
        double[] slope = argument;
        for (int i = 0; i < n; i++) slope[i] = mass[i] * f0[i];
        Pattern pattern = equations.pattern();
        int[] start = pattern.start();
        int[] column = pattern.column();
        for (int i = 0; i < n; i++) {
            double sum = dfdt[i];
            for (int p = start[i]; p < start[i + 1]; p++) sum += jacobian[p] * slope[column[p]];
            total[i] = mass[i] * sum;
        }
        double first = norm(slope, y);
        double second = norm(total, y);
        if (!(second > 0)) return first > 0 ? 1 / first : Double.POSITIVE_INFINITY;
        if (!(first > 0)) return 1 / Math.sqrt(second);
        double tau = first / second;
        double height = first * tau;
        return tau * Math.pow(1000 / height, 1.0 / method.order());
    }

    private void readyDense() {
        if (denseReady) return;
        denseReady = true;
        for (int k = 0; k < dense.length; k++) combine(dense[k], method.dense()[k], u, stages, n);
    }

    /** y at t + x h. */
    void interpolate(double x, double[] out) {
        readyDense();
        double left = 1 - x;
        double bow = x * left;
        switch (dense.length) {
            case 1 -> {
                double[] d0 = dense[0];
                for (int i = 0; i < n; i++) out[i] = left * y[i] + x * yNew[i] + bow * d0[i];
            }
            case 2 -> {
                double[] d0 = dense[0];
                double[] d1 = dense[1];
                for (int i = 0; i < n; i++) out[i] = left * y[i] + x * yNew[i] + bow * (d0[i] + x * d1[i]);
            }
            default -> {
                double[] d0 = dense[0];
                double[] d1 = dense[1];
                double[] d2 = dense[2];
                for (int i = 0; i < n; i++) {
                    out[i] = left * y[i] + x * yNew[i] + bow * (d0[i] + x * (d1[i] + x * d2[i]));
                }
            }
        }
    }

    /** The sums at t + x h. */
    void interpolateSums(double x, double[] out) {
        readySums();
        if (x == 1) {
            System.arraycopy(sNew, 0, out, 0, sums);
            return;
        }
        readySumDense();
        for (int j = 0; j < sums; j++) out[j] = sumAt(x, j);
    }

    private double sumAt(double x, int j) {
        double bend = 0;
        for (int k = sumDense.length - 1; k >= 0; k--) bend = sumDense[k][j] + x * bend;
        return (1 - x) * s[j] + x * (sNew[j] + (1 - x) * bend);
    }

    private void readySums() {
        if (sumsReady) return;
        sumsReady = true;
        weighSums(sNew, dense.length);
        for (int j = 0; j < sums; j++) sNew[j] += s[j];
    }

    private void readySumDense() {
        if (sumDenseReady) return;
        sumDenseReady = true;
        for (int k = 0; k < dense.length; k++) weighSums(sumDense[k], k);
    }

    /** out = h (sum w_i g_i + dg/dy sum w_i U_i + h (sum w_i gamma_i) dg/dt), w the slope weights asked for. */
    private void weighSums(double[] out, int which) {
        combine(total, sumWeights[which], u, stages, n);
        combine(out, sumWeights[which], g, stages, sums);
        double time = h * sumTimes[which];
        int[] start = sumPattern.start();
        int[] column = sumPattern.column();
        for (int j = 0; j < sums; j++) {
            double sum = out[j] + time * dgdt[j];
            int to = start[j + 1];
            for (int p = start[j]; p < to; p++) sum += sumJacobian[p] * total[column[p]];
            out[j] = h * sum;
        }
    }

    /** Ends the step at t + x h and writes the state there. */
    void finish(double x, State state) {
        if (x == 1) {
            System.arraycopy(yNew, 0, state.y, 0, n);
        } else {
            interpolate(x, state.y);
            end = t + x * h;
        }
        interpolateSums(x, state.sums);
        state.t = end;
    }

    /** y at the end of the step. */
    double[] yNew() {
        return yNew;
    }

    /** Length of the step last tried, s; not shortened by a cut. */
    double length() {
        return h;
    }

    @Override
    public double start() {
        return t;
    }

    @Override
    public double end() {
        return end;
    }

    @Override
    public double value(int i, double time) {
        readyDense();
        double x = (time - t) / h;
        double bend = 0;
        for (int k = dense.length - 1; k >= 0; k--) bend = dense[k][i] + x * bend;
        return (1 - x) * y[i] + x * (yNew[i] + (1 - x) * bend);
    }

    @Override
    public double sum(int j, double time) {
        readySums();
        readySumDense();
        return sumAt((time - t) / h, j);
    }

    Counters count(long steps, long rejected, long events, AlgebraicStart start) {
        return new Counters(
                steps,
                rejected,
                rates + start.rates(),
                jacobians + start.factorisations(),
                factorisations + start.factorisations(),
                solves + start.solves(),
                events);
    }
}
