package stokewell.solve;

import static org.assertj.core.api.Assertions.assertThat;

import org.assertj.core.data.Offset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

/**
 * The coefficients against the order conditions (Hairer and Wanner 1996, IV.7 table 7.1 and VI.4 table 4.1), and the
 * methods against solutions known in closed form.
 */
class RosenbrockTest {

    static final java.util.List<Rosenbrock> METHODS = Rosenbrock.ALL;

    @ParameterizedTest
    @FieldSource("METHODS")
    void coefficientsMeetTheOrderConditions(Rosenbrock method) {
        int s = method.stages();
        double[][] gamma = new double[s][];
        double[][] alpha = new double[s][];
        double[] unit = new double[s];
        for (int i = 0; i < s; i++) {
            unit[i] = 1;
            gamma[i] = method.slopeWeights(unit);
            unit[i] = 0;
            double[] row = new double[s];
            System.arraycopy(method.a()[i], 0, row, 0, i);
            alpha[i] = method.slopeWeights(row);
        }
        double[] b = method.slopeWeights(method.m());
        double[] at = new double[s];
        double[] beta = new double[s];
        for (int i = 0; i < s; i++) {
            double g = 0;
            for (int j = 0; j < s; j++) {
                at[i] += alpha[i][j];
                g += gamma[i][j];
            }
            beta[i] = at[i] + g;
            assertThat(at[i]).isCloseTo(method.alpha()[i], Offset.offset(1e-12));
            assertThat(g).isCloseTo(method.gammas()[i], Offset.offset(1e-12));
        }
        double[] all = new double[s];
        java.util.Arrays.fill(all, 1);
        double[][] full = new double[s][s];
        for (int i = 0; i < s; i++) for (int j = 0; j < s; j++) full[i][j] = alpha[i][j] + gamma[i][j];
        close(sum(b, all), 1);
        close(sum(b, beta), 1 / 2.0);
        close(sum(b, at, at), 1 / 3.0);
        close(sum(b, times(full, beta)), 1 / 6.0);
        if (method.order() < 4) return;
        close(sum(b, at, at, at), 1 / 4.0);
        close(sum(b, at, times(alpha, beta)), 1 / 8.0);
        close(sum(b, times(full, product(at, at))), 1 / 12.0);
        close(sum(b, times(full, times(full, beta))), 1 / 24.0);
        if (method.order() < 5) return;
        close(sum(b, at, at, at, at), 1 / 5.0);
        close(sum(b, at, at, times(alpha, beta)), 1 / 10.0);
        close(sum(b, at, times(alpha, product(at, at))), 1 / 15.0);
        close(sum(b, times(alpha, beta), times(alpha, beta)), 1 / 20.0);
        close(sum(b, times(full, times(full, times(full, beta)))), 1 / 120.0);
    }

    @ParameterizedTest
    @FieldSource("METHODS")
    void lastStageStandsAtTheNewPoint(Rosenbrock method) {
        int last = method.stages() - 1;
        assertThat(method.m()[last]).isEqualTo(1);
        for (int j = 0; j < last; j++) assertThat(method.a()[last][j]).isEqualTo(method.m()[j]);
    }

    /** y' = -2 (y^2 - cos^2 t) - sin t, y = cos t. With its ledger s' = y^2. */
    @ParameterizedTest
    @FieldSource("METHODS")
    void errorFallsWithTheOrderOnANonAutonomousEquation(Rosenbrock method) {
        Problem problem = new Problem(1, 1, 1) {
            @Override
            public void rates(double t, double[] y, double[] f, double[] g) {
                f[0] = -2 * (y[0] * y[0] - Math.cos(t) * Math.cos(t)) - Math.sin(t);
                g[0] = y[0] * y[0];
            }

            @Override
            public void linearize(double t, double[] y, double[] dfdy, double[] dgdy, double[] dfdt, double[] dgdt) {
                dfdy[0] = -4 * y[0];
                dgdy[0] = 2 * y[0];
                dfdt[0] = -4 * Math.cos(t) * Math.sin(t) - Math.cos(t);
                dgdt[0] = 0;
            }
        };
        double[][] error = new double[2][4];
        for (int k = 0; k < 2; k++) {
            int steps = 60 << k;
            Step step = new Step(problem, Tolerances.absolute(1), method);
            State state = new State(0, new double[] {1}, new double[1]);
            double h = 1.0 / steps;
            for (int i = 0; i < steps; i++) {
                step.from(state);
                step.attempt(h, state.t + h);
                double middle = state.t + 0.4 * h;
                error[k][2] = Math.max(error[k][2], Math.abs(step.value(0, middle) - Math.cos(middle)));
                error[k][3] = Math.max(error[k][3], Math.abs(step.sum(0, middle) - squares(middle)));
                step.finish(1, state);
            }
            error[k][0] = Math.abs(state.y[0] - Math.cos(1));
            error[k][1] = Math.abs(state.sums[0] - squares(1));
        }
        double ends = method.order();
        double between = method.order() == 3 ? 3 : 4;
        assertThat(rate(error, 0)).isGreaterThan(ends - 0.35);
        assertThat(rate(error, 1)).isGreaterThan(ends - 0.35);
        assertThat(rate(error, 2)).isGreaterThan(between - 0.4);
        assertThat(rate(error, 3)).isGreaterThan(between - 0.4);
    }

    private static double squares(double t) {
        return t / 2 + Math.sin(2 * t) / 4;
    }

    /** Between the ends an algebraic unknown is known to order 3 only. */
    @ParameterizedTest
    @FieldSource("METHODS")
    void errorFallsWithTheOrderOnAnAlgebraicUnknown(Rosenbrock method) {
        Problem problem = new Index1();
        double[][] error = new double[2][3];
        for (int k = 0; k < 2; k++) {
            int steps = 20 << k;
            Step step = new Step(problem, Tolerances.absolute(1), method);
            State state = new State(0, new double[] {2, Math.sqrt(2)}, new double[0]);
            double h = 2.0 / steps;
            for (int i = 0; i < steps; i++) {
                step.from(state);
                step.attempt(h, state.t + h);
                double middle = state.t + 0.4 * h;
                error[k][2] = Math.max(error[k][2], Math.abs(step.value(1, middle) - Math.sqrt(2 + Math.sin(middle))));
                step.finish(1, state);
            }
            error[k][0] = Math.abs(state.y[0] - 2 - Math.sin(2));
            error[k][1] = Math.abs(state.y[1] - Math.sqrt(2 + Math.sin(2)));
        }
        assertThat(rate(error, 0)).isGreaterThan(method.order() - 0.4);
        assertThat(rate(error, 1)).isGreaterThan(method.order() - 0.4);
        assertThat(rate(error, 2)).isGreaterThan(method.order() == 3 ? 2.6 : 2.9);
    }

    /** y = 2 + sin t, z = sqrt y, coupled both ways. */
    static final class Index1 extends Problem {
        Index1() {
            super(2, 0, 1);
        }

        @Override
        public boolean algebraic(int i) {
            return i == 1;
        }

        @Override
        public void rates(double t, double[] y, double[] f, double[] g) {
            f[0] = Math.cos(t) - (y[1] - Math.sqrt(2 + Math.sin(t))) * y[0];
            f[1] = y[0] - y[1] * y[1];
        }

        @Override
        public void linearize(double t, double[] y, double[] dfdy, double[] dgdy, double[] dfdt, double[] dgdt) {
            double root = Math.sqrt(2 + Math.sin(t));
            dfdy[0] = root - y[1];
            dfdy[1] = -y[0];
            dfdy[2] = 1;
            dfdy[3] = -2 * y[1];
            dfdt[0] = -Math.sin(t) + y[0] * Math.cos(t) / (2 * root);
            dfdt[1] = 0;
        }
    }

    private static double rate(double[][] error, int which) {
        return Math.log(error[0][which] / error[1][which]) / Math.log(2);
    }

    private static void close(double value, double expected) {
        assertThat(value).isCloseTo(expected, Offset.offset(2e-12));
    }

    private static double[] times(double[][] matrix, double[] v) {
        double[] out = new double[v.length];
        for (int i = 0; i < v.length; i++) for (int j = 0; j < v.length; j++) out[i] += matrix[i][j] * v[j];
        return out;
    }

    private static double[] product(double[] v, double[] w) {
        double[] out = new double[v.length];
        for (int i = 0; i < v.length; i++) out[i] = v[i] * w[i];
        return out;
    }

    private static double sum(double[]... factors) {
        double sum = 0;
        for (int i = 0; i < factors[0].length; i++) {
            double x = 1;
            for (double[] factor : factors) x *= factor[i];
            sum += x;
        }
        return sum;
    }
}
