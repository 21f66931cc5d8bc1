package stokewell.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.junit.jupiter.api.Test;

class DisturbanceTest {

    /** The filter against the dense covariance matrix of the same process, factored by a general library (Hipparchus). */
    @Test
    void whiteningByTheFilterIsThatByTheFullCovarianceMatrix() {
        Disturbance d = new Disturbance(0.2, 0.7, 5000);
        double[] time = {0, 300, 900, 4000, 4300, 20000, 20100};
        int n = time.length;
        Random dice = new Random(4);
        double[] r = new double[n];
        for (int i = 0; i < n; i++) r[i] = dice.nextGaussian();
        RealMatrix v = new Array2DRowRealMatrix(n, n);
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                double slow = 0.49 * Math.exp(-Math.abs(time[i] - time[j]) / 5000);
                v.setEntry(i, j, slow + (i == j ? 0.04 : 0));
            }
        }
        CholeskyDecomposition factor = new CholeskyDecomposition(v);
        double[] whole = new double[n];
        for (int i = 0; i < n; i++) {
            double sum = r[i];
            for (int j = 0; j < i; j++) sum -= factor.getL().getEntry(i, j) * whole[j];
            whole[i] = sum / factor.getL().getEntry(i, i);
        }
        double misfit = Math.log(factor.getDeterminant());
        for (double w : whole) misfit += w * w;
        assertThat(d.misfit(time, new boolean[n], r, 0, n)).isCloseTo(misfit, within(1e-9));
        double[] column = r.clone();
        d.whiten(time, new boolean[n], new double[][] {column}, 0, n);
        // the order of elimination is the order of time in both, so the whitened numbers agree one by one
        assertThat(column).containsExactly(whole, within(1e-12));
    }
}
