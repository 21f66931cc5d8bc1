package stokewell.solve;

/**
 * Brings the algebraic unknowns to 0 = f(t, y) with the others held, by damped Newton steps. Used after a discontinuity.
 * The block is solved in the pattern of the whole: rows that are not algebraic become y_i = y_i.
 */
final class AlgebraicStart {

    private static final double TIGHT = 1e-11;
    private static final int TURNS = 50;

    private final Equations equations;
    private final int n;
    private final boolean[] algebraic;
    private final double[] size;
    private final SparseLu lu;
    private final double[] f;
    private final double[] g;
    private final double[] matrix;
    private final double[] sumMatrix;
    private final double[] dfdt;
    private final double[] dgdt;
    private final double[] change;
    private final double[] next;
    private final double[] trial;
    private boolean any;
    private long rates;
    private long factorisations;
    private long solves;

    AlgebraicStart(Equations equations) {
        this.equations = equations;
        n = equations.size();
        algebraic = new boolean[n];
        size = new double[n];
        for (int i = 0; i < n; i++) {
            algebraic[i] = equations.algebraic(i);
            any |= algebraic[i];
            double scale = equations.scale(i);
            size[i] = scale < Double.POSITIVE_INFINITY ? scale : 1;
        }
        lu = any ? new SparseLu(equations.pattern()) : null;
        f = new double[n];
        g = new double[equations.sums()];
        matrix = new double[equations.pattern().size()];
        sumMatrix = new double[equations.sumPattern().size()];
        dfdt = new double[n];
        dgdt = new double[equations.sums()];
        change = new double[n];
        next = new double[n];
        trial = new double[n];
    }

    /** Changes the algebraic part of y. */
    void solve(State state) {
        if (!any) return;
        double t = state.t;
        double[] y = state.y;
        equations.rates(t, y, f, g);
        rates++;
        for (int turn = 0; turn < TURNS; turn++) {
            factor(t, y);
            newton(change);
            double length = measure(change, y);
            double damp = 1;
            while (true) {
                for (int i = 0; i < n; i++) trial[i] = algebraic[i] ? y[i] + damp * change[i] : y[i];
                equations.rates(t, trial, f, g);
                rates++;
                newton(next);
                if (measure(next, trial) <= (1 - damp / 4) * length || length <= TIGHT) break;
                damp /= 2;
                if (!(damp > 1e-4)) throw new StepFailure(t, 0, worst(), StepFailure.Reason.ALGEBRAIC);
            }
            System.arraycopy(trial, 0, y, 0, n);
            if (damp == 1 && measure(next, y) <= TIGHT) {
                for (int i = 0; i < n; i++) if (algebraic[i]) y[i] += next[i];
                return;
            }
        }
        throw new StepFailure(t, 0, worst(), StepFailure.Reason.ALGEBRAIC);
    }

    private void factor(double t, double[] y) {
        equations.linearize(t, y, matrix, sumMatrix, dfdt, dgdt);
        Pattern pattern = equations.pattern();
        for (int i = 0; i < n; i++) {
            if (algebraic[i]) continue;
            for (int p = pattern.start()[i]; p < pattern.start()[i + 1]; p++) {
                matrix[p] = pattern.column()[p] == i ? 1 : 0;
            }
        }
        factorisations++;
        int bad = lu.factor(matrix);
        if (bad >= 0) throw new StepFailure(t, 0, bad, StepFailure.Reason.SINGULAR);
    }

    private void newton(double[] out) {
        for (int i = 0; i < n; i++) out[i] = algebraic[i] ? -f[i] : 0;
        lu.solve(out);
        solves++;
    }

    /** Largest change relative to the unknown and its scale. */
    private double measure(double[] change, double[] y) {
        double most = 0;
        for (int i = 0; i < n; i++) {
            if (!algebraic[i]) continue;
            double x = Math.abs(change[i]) / (Math.abs(y[i]) + size[i]);
            if (!(x <= most)) most = x;
        }
        return most;
    }

    private int worst() {
        int worst = -1;
        double most = -1;
        for (int i = 0; i < n; i++) {
            if (!algebraic[i]) continue;
            double x = Math.abs(next[i]) / (Math.abs(trial[i]) + size[i]);
            if (!(x <= most)) {
                most = x;
                worst = i;
            }
        }
        return worst;
    }

    long rates() {
        return rates;
    }

    /** As many as Jacobians. */
    long factorisations() {
        return factorisations;
    }

    long solves() {
        return solves;
    }
}
