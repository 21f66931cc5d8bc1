package stokewell.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class SparseLuTest {

    @Property(tries = 300)
    void solvesAnyDiagonallyDominantSystem(
            @ForAll @IntRange(min = 1, max = 70) int n,
            @ForAll @IntRange(min = 0, max = 6) int more,
            @ForAll long seed) {
        Random random = new Random(seed);
        Pattern pattern = Problem.where(n, p -> random.nextDouble() < (double) more / n);
        double[] a = new double[pattern.size()];
        double[] x = new double[n];
        double[] b = new double[n];
        for (int i = 0; i < n; i++) x[i] = random.nextGaussian();
        for (int i = 0; i < n; i++) {
            double sum = 0.1;
            for (int p = pattern.start()[i]; p < pattern.start()[i + 1]; p++) {
                a[p] = random.nextGaussian();
                sum += Math.abs(a[p]);
            }
            a[pattern.place(i, i)] = random.nextBoolean() ? sum : -sum;
            for (int p = pattern.start()[i]; p < pattern.start()[i + 1]; p++) b[i] += a[p] * x[pattern.column()[p]];
        }
        SparseLu lu = new SparseLu(pattern);
        double[] answer = b.clone();
        assertThat(lu.factor(a)).isEqualTo(SparseLu.FACTORED);
        lu.solve(answer);
        for (int i = 0; i < n; i++) assertThat(Math.abs(answer[i] - x[i])).isLessThan(1e-10);

        double[] shift = new double[n];
        for (int i = 0; i < n; i++) {
            int p = pattern.place(i, i);
            shift[i] = a[p] / 3;
            a[p] -= shift[i];
        }
        for (int p = 0; p < a.length; p++) a[p] = -a[p];
        assertThat(lu.factorShifted(shift, a)).isEqualTo(SparseLu.FACTORED);
        lu.solve(b);
        for (int i = 0; i < n; i++) assertThat(Math.abs(b[i] - x[i])).isLessThan(1e-10);
    }

    @Test
    void tridiagonalMatrixHasNoFill() {
        int n = 50;
        Pattern pattern = Problem.where(n, p -> Math.abs(p / n - p % n) == 1);
        assertThat(new SparseLu(pattern).factorSize()).isEqualTo(3 * n - 2);
    }

    @Test
    void starIsEliminatedFromItsTips() {
        int n = 50;
        Pattern pattern = Problem.where(n, p -> p / n == 0 || p % n == 0);
        assertThat(new SparseLu(pattern).factorSize()).isEqualTo(3 * n - 2);
    }

    @Test
    void zeroPivotIsReportedByItsRow() {
        SparseLu lu = new SparseLu(Problem.full(3, 3));
        assertThat(lu.factor(new double[] {1, 2, 3, 2, 4, 6, 1, 0, 1})).isEqualTo(1);
        assertThat(lu.factor(new double[] {1, 0, 0, 0, Double.NaN, 0, 0, 0, 1})).isEqualTo(1);
        assertThat(lu.factor(new double[] {1, 0, 0, 0, 2, 0, 0, 0, 1})).isEqualTo(SparseLu.FACTORED);
    }

    @Test
    void patternWithoutADiagonalIsRefused() {
        Pattern pattern = new Pattern(2, 2, new int[] {0, 2, 3}, new int[] {0, 1, 0});
        assertThatThrownBy(() -> new SparseLu(pattern)).hasMessageContaining("row 1");
    }
}
