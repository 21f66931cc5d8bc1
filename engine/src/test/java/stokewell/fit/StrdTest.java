package stokewell.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * The optimiser behind a fit on the 27 certified nonlinear problems of NIST, from both starts.
 * {@code bench/run fit strd} prints the table of docs/saved-wood.md.
 */
class StrdTest {

    /**
     * With these the estimator, which takes a dozen steps and weighs large residuals down, strays from plain least squares:
     * Kirby2, MGH09 and Eckerle4 by that weighing (few rows, and errors of very different size that pass for spikes), MGH10 by
     * the steps.
     */
    private static final Set<String> STRAYS = Set.of("Kirby2", "MGH09", "MGH10", "Eckerle4");

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
            assertThat(s.digits(s.optimised(s.starts()[0])))
                    .as(name + ", far start")
                    .isGreaterThan(5.9);
            assertThat(s.digits(s.optimised(s.starts()[1])))
                    .as(name + ", near start")
                    .isGreaterThan(5.9);
        }
    }

    @Test
    void theWholeEstimatorStaysWithinTheCertifiedErrorFromANearStart() {
        for (String name : Strd.MODELS.keySet()) {
            if (STRAYS.contains(name)) continue;
            Strd s = Strd.read(name);
            Estimate e = s.estimated(s.starts()[1]);
            assertThat(s.away(e.value())).as(name).isLessThan(1.3);
        }
    }
}
