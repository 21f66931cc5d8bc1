package stokewell.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.junit.jupiter.api.Test;

class WhitenedTest {

    /** What one more column brings, against two regressions by orthogonal factors (Hipparchus), without it and with it. */
    @Test
    void theGainOfAColumnIsWhatARegressionWithItSaves() {
        int n = 60;
        Random dice = new Random(8);
        double[][] slopes = new double[2][n];
        double[] column = new double[n];
        double[] rest = new double[n];
        double[] time = new double[n];
        for (int i = 0; i < n; i++) {
            time[i] = i * 600.0;
            slopes[0][i] = 1;
            slopes[1][i] = i / 10.0;
            column[i] = i > 40 ? 1 : 0;
            rest[i] = 0.3 * slopes[1][i] + 0.8 * column[i] + 0.5 * dice.nextGaussian();
        }
        Observed o = new Observed(time, rest, List.of(new Observed.Channel("x", 0, n, 1, 0.1)));
        double far = 1e6;
        Whitened linear = new Whitened(
                o, new boolean[n], List.of(Disturbance.white(1)), rest, slopes, new double[2], new double[] {far, far});
        Whitened.Gain gain = linear.gain(column, far);
        double without = squares(rest, slopes[1]);
        double with = squares(rest, slopes[1], column);
        assertThat(gain.fall()).isCloseTo(without - with, within(1e-6));
        assertThat(gain.size()).isCloseTo(regression(rest, slopes[1], column).getEntry(2), within(1e-6));
        // a column that is no news brings nothing
        assertThat(linear.gain(slopes[1].clone(), 1).fall()).isCloseTo(0, within(1e-6));
    }

    private static double squares(double[] y, double[]... columns) {
        double norm = new ArrayRealVector(y)
                .subtract(with(y.length, columns).operate(regression(y, columns)))
                .getNorm();
        return norm * norm;
    }

    private static RealVector regression(double[] y, double[]... columns) {
        return new QRDecomposition(with(y.length, columns)).getSolver().solve(new ArrayRealVector(y));
    }

    /** Columns behind one of ones. */
    private static RealMatrix with(int rows, double[]... columns) {
        RealMatrix x = new Array2DRowRealMatrix(rows, columns.length + 1);
        for (int i = 0; i < rows; i++) {
            x.setEntry(i, 0, 1);
            for (int j = 0; j < columns.length; j++) x.setEntry(i, j + 1, columns[j][i]);
        }
        return x;
    }
}
