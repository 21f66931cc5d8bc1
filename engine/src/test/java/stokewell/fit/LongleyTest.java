package stokewell.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresFactory;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.MultivariateJacobianFunction;
import org.hipparchus.util.Pair;
import org.junit.jupiter.api.Test;

/** The two ways of linear least squares in a fit on NIST's Longley, whose six regressors nearly say the same. */
class LongleyTest {

    private static final int UNKNOWNS = Published.LONGLEY_CERTIFIED.length;

    /** Residual standard deviation, certified. */
    private static final double RESIDUAL = 304.854073561965;

    private static double[][] columns() {
        double[][] columns = new double[UNKNOWNS][Published.LONGLEY.length];
        Arrays.fill(columns[0], 1);
        for (int i = 0; i < Published.LONGLEY.length; i++) {
            for (int j = 1; j < UNKNOWNS; j++) columns[j][i] = Published.LONGLEY[i][j];
        }
        return columns;
    }

    private static double[] y() {
        return Arrays.stream(Published.LONGLEY).mapToDouble(row -> row[0]).toArray();
    }

    /** Digits of the worst one that agree with a certified column: NIST's log relative error. */
    private static double digits(double[] found, int column) {
        double worst = 15;
        for (int j = 0; j < UNKNOWNS; j++) {
            double right = Published.LONGLEY_CERTIFIED[j][column];
            double off = Math.abs(found[j] - right) / Math.abs(right);
            worst = Math.min(worst, off == 0 ? 15 : -Math.log10(off));
        }
        return worst;
    }

    @Test
    void theOptimiserOfAFitSolvesIt() {
        RealMatrix slopes = new Array2DRowRealMatrix(columns(), false).transpose();
        MultivariateJacobianFunction line = p -> new Pair<RealVector, RealMatrix>(slopes.operate(p), slopes);
        double[] found = new LevenbergMarquardtOptimizer()
                .withInitialStepBoundFactor(10)
                .withCostRelativeTolerance(1e-14)
                .withParameterRelativeTolerance(1e-14)
                .optimize(LeastSquaresFactory.create(
                        line, new ArrayRealVector(y()), new ArrayRealVector(UNKNOWNS), null, 2000, 2000))
                .getPoint()
                .toArray();
        // measured 11.5: its decomposition is orthogonal
        assertThat(digits(found, 0)).isGreaterThan(10);
    }

    @Test
    void theLinearStepOfTheSearchForChangesSolvesItWithItsErrors() {
        double[] time = new double[Published.LONGLEY.length];
        for (int i = 0; i < time.length; i++) time[i] = 1e9 * i;
        Observed rows = new Observed(time, y(), List.of(new Observed.Channel("y", 0, time.length, 1, 1)));
        double[] far = new double[UNKNOWNS];
        Arrays.fill(far, 1e12);
        // so large that no row stands off and is held in
        double size = 1e6;
        Whitened w = new Whitened(
                rows,
                new boolean[time.length],
                List.of(Disturbance.white(size)),
                y(),
                columns(),
                new double[UNKNOWNS],
                far);
        double[] errors = new double[UNKNOWNS];
        for (int j = 0; j < UNKNOWNS; j++) errors[j] = w.error(j) / size * RESIDUAL;
        // measured 4.2 and 5.4: normal equations lose twice the digits of the problem's condition, 4.6, and a change
        // needs two
        assertThat(digits(w.step(), 0)).isGreaterThan(4);
        assertThat(digits(errors, 1)).isGreaterThan(5);
    }
}
