package stokewell.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresFactory;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.MultivariateJacobianFunction;
import org.hipparchus.util.Pair;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/**
 * The optimiser behind a fit on the 27 certified nonlinear problems of NIST, from both starts. What the table in
 * docs/saved-wood.md tells is printed with {@code -Dstrd=print}.
 */
class StrdTest {

    /** From the far start this ends elsewhere. */
    private static final Set<String> LOST_FAR = Set.of("MGH10");

    /**
     * With these the estimator, which takes a dozen steps and weighs large residuals down, strays from plain least squares:
     * Kirby2, MGH09 and Eckerle4 by that weighing (few rows, and errors of very different size that pass for spikes), MGH10 by
     * the steps.
     */
    private static final Set<String> STRAYS = Set.of("Kirby2", "MGH09", "MGH10", "Eckerle4");

    /**
     * The optimiser as the estimator makes it, slopes by central differences.
     *
     */
    private static double[] optimised(Strd s, double[] start) {
        MultivariateJacobianFunction f = point -> {
            double[] b = point.toArray();
            return new Pair<RealVector, RealMatrix>(new ArrayRealVector(s.predicted(b), false), slopes(s, b));
        };
        try {
            return new LevenbergMarquardtOptimizer()
                    .withInitialStepBoundFactor(2)
                    .withCostRelativeTolerance(1e-14)
                    .withParameterRelativeTolerance(1e-12)
                    .optimize(LeastSquaresFactory.create(
                            f, new ArrayRealVector(s.y()), new ArrayRealVector(start), null, 2000, 2000))
                    .getPoint()
                    .toArray();
        } catch (MathRuntimeException stuck) {
            return new double[start.length];
        }
    }

    private static RealMatrix slopes(Strd s, double[] b) {
        double[][] a = new double[s.y().length][b.length];
        for (int j = 0; j < b.length; j++) {
            double step = 1e-6 * Math.max(Math.abs(b[j]), 1e-10);
            double[] up = b.clone();
            double[] down = b.clone();
            up[j] += step;
            down[j] -= step;
            double[] high = s.predicted(up);
            double[] low = s.predicted(down);
            for (int i = 0; i < a.length; i++) a[i][j] = (high[i] - low[i]) / (up[j] - down[j]);
        }
        return new Array2DRowRealMatrix(a, false);
    }

    /** The whole estimator, as a fit calls it: rows far apart in time, almost nothing known before. */
    private static Estimate estimated(Strd s, double[] start) {
        Response response = new Response() {
            @Override
            public List<Unknown> unknowns() {
                List<Unknown> all = new ArrayList<>();
                for (int j = 0; j < start.length; j++) {
                    double size = Math.max(Math.abs(start[j]), Math.abs(s.certified()[j]));
                    all.add(new Unknown(
                            "b" + (j + 1), "parameter", start[j], 1e3 * size, -1e6 * size, 1e6 * size, 1e-6 * size));
                }
                return all;
            }

            @Override
            public double[] at(double[] p) {
                double[] out = s.predicted(p);
                for (double v : out) if (!Double.isFinite(v)) return null;
                return out;
            }
        };
        double[] time = new double[s.y().length];
        for (int i = 0; i < time.length; i++) time[i] = 1e9 * i;
        double error = Math.sqrt(s.squares() / (time.length - start.length));
        Observed o = new Observed(time, s.y(), List.of(new Observed.Channel("y", 0, time.length, error, 1e-3 * error)));
        try {
            return Estimator.of(response, o, done -> true);
        } catch (IllegalStateException | MathRuntimeException stuck) {
            return null;
        }
    }

    @Test
    void theFilesAreReadAsNistCertifiesThem() {
        for (String name : Strd.MODELS.keySet()) {
            Strd s = Strd.read(name);
            double sum = 0;
            double[] f = s.predicted(s.certified());
            for (int i = 0; i < f.length; i++) sum += Math.pow(s.y()[i] - f[i], 2);
            // Lanczos1 is rounded to 1e-11 and its certified sum of squares is 1.4e-25: below what eleven digits give
            if (name.equals("Lanczos1")) assertThat(sum).isLessThan(1e-18);
            else assertThat(sum / s.squares()).as(name).isCloseTo(1, within(1e-6));
        }
    }

    @Test
    void theOptimiserFindsTheCertifiedValues() {
        for (String name : Strd.MODELS.keySet()) {
            Strd s = Strd.read(name);
            if (!LOST_FAR.contains(name)) {
                assertThat(s.digits(optimised(s, s.starts()[0])))
                        .as(name + ", far start")
                        .isGreaterThan(5.9);
            }
            assertThat(s.digits(optimised(s, s.starts()[1])))
                    .as(name + ", near start")
                    .isGreaterThan(5.9);
        }
    }

    @Test
    void theWholeEstimatorStaysWithinTheCertifiedErrorFromANearStart() {
        for (String name : Strd.MODELS.keySet()) {
            if (STRAYS.contains(name)) continue;
            Strd s = Strd.read(name);
            Estimate e = estimated(s, s.starts()[1]);
            assertThat(s.away(e.value())).as(name).isLessThan(1.3);
        }
    }

    @Test
    @EnabledIfSystemProperty(named = "strd", matches = "print")
    void printsTheTable() {
        StringBuilder table = new StringBuilder();
        for (String name : Strd.MODELS.keySet()) {
            Strd s = Strd.read(name);
            table.append("| ")
                    .append(name)
                    .append(" | ")
                    .append(s.level().toLowerCase(Locale.ROOT))
                    .append(" |");
            for (double[] start : s.starts()) {
                table.append(String.format(Locale.ROOT, " %.1f |", s.digits(optimised(s, start))));
            }
            Estimate e = estimated(s, s.starts()[1]);
            table.append(
                    e == null
                            ? " none |"
                            : String.format(
                                    Locale.ROOT, " %.2f%s |", s.away(e.value()), e.settled() ? "" : ", not at rest"));
            table.append(System.lineSeparator());
        }
        System.out.println(table);
    }
}
