package stokewell.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** The model's mean against readings put together: of one truth both must say the same, whatever the logger's step. */
class StretchTest {

    private static double truth(double t) {
        return 40 + t / 600;
    }

    @Test
    void aSteadyRiseReadAtAnyStepIsSaidAlikeByTheModel() {
        double[] trace = new double[200];
        for (int k = 0; k < trace.length; k++) trace[k] = truth(1000 + 300 * k);
        for (double step : new double[] {60, 300, 420, 900, 3600}) {
            double[] time = new double[(int) (50000 / step)];
            double[] value = new double[time.length];
            for (int i = 0; i < time.length; i++) {
                time[i] = 1000 + 7 + i * step;
                value[i] = truth(time[i]);
            }
            for (Series part : new Series("", time, value).stretches(7200)) {
                assertThat(Stretch.of(part.time(), 1000, 300).of(trace))
                        .as("every %.0f s", step)
                        .isCloseTo(part.mean(), within(1e-9));
            }
        }
    }

    @Test
    void anInstantIsOnTheLineBetweenSteps() {
        double[] trace = {1, 2, 4};
        assertThat(Stretch.of(new double[] {450}, 0, 300).of(trace)).isCloseTo(3, within(1e-12));
        assertThat(Stretch.of(new double[] {0, 600}, 0, 300).of(trace)).isCloseTo(2.5, within(1e-12));
    }
}
