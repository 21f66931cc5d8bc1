package stokewell.solve;

import java.util.function.IntPredicate;

/** A small system for tests: full pattern, Jacobian by hand or by central differences, no sums or switches unless asked. */
abstract class Problem implements Equations {

    private final int n;
    private final int sums;
    private final double[] scale;

    Problem(int n, int sums, double... scale) {
        this.n = n;
        this.sums = sums;
        this.scale = scale;
    }

    static Pattern full(int rows, int columns) {
        int[] start = new int[rows + 1];
        int[] column = new int[rows * columns];
        for (int i = 0; i < rows; i++) {
            start[i + 1] = start[i] + columns;
            for (int j = 0; j < columns; j++) column[start[i] + j] = j;
        }
        return new Pattern(rows, columns, start, column);
    }

    static Pattern where(int n, IntPredicate holds) {
        int[] start = new int[n + 1];
        int[] column = new int[n * n];
        int count = 0;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) if (i == j || holds.test(i * n + j)) column[count++] = j;
            start[i + 1] = count;
        }
        return new Pattern(n, n, start, java.util.Arrays.copyOf(column, count));
    }

    @Override
    public int size() {
        return n;
    }

    @Override
    public boolean algebraic(int i) {
        return false;
    }

    @Override
    public int sums() {
        return sums;
    }

    @Override
    public Pattern pattern() {
        return full(n, n);
    }

    @Override
    public Pattern sumPattern() {
        return full(sums, n);
    }

    @Override
    public double scale(int i) {
        return scale.length == 1 ? scale[0] : scale[i];
    }

    @Override
    public int switches() {
        return 0;
    }

    @Override
    public void switching(double t, double[] y, double[] values) {}

    /** By complex-step-like central differences of relative width 1e-6; rows full. */
    @Override
    public void linearize(double t, double[] y, double[] dfdy, double[] dgdy, double[] dfdt, double[] dgdt) {
        double[] up = new double[n];
        double[] down = new double[n];
        double[] gUp = new double[sums];
        double[] gDown = new double[sums];
        double[] x = y.clone();
        for (int j = 0; j < n; j++) {
            double d = 1e-6 * Math.max(Math.abs(y[j]), 1e-3);
            x[j] = y[j] + d;
            rates(t, x, up, gUp);
            x[j] = y[j] - d;
            rates(t, x, down, gDown);
            x[j] = y[j];
            for (int i = 0; i < n; i++) dfdy[i * n + j] = (up[i] - down[i]) / (2 * d);
            for (int i = 0; i < sums; i++) dgdy[i * n + j] = (gUp[i] - gDown[i]) / (2 * d);
        }
        double d = 1e-4;
        rates(t + d, y, up, gUp);
        rates(t - d, y, down, gDown);
        for (int i = 0; i < n; i++) dfdt[i] = (up[i] - down[i]) / (2 * d);
        for (int i = 0; i < sums; i++) dgdt[i] = (gUp[i] - gDown[i]) / (2 * d);
    }
}
