package stokewell.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/** A model that is dear to run is fitted with fewer runs, and to the same values. */
class AskedTest {

    private static final int ROWS = 200;

    /** Two tanks, one warming the other: four numbers, none of them linear. */
    private static final class Tanks implements Response {
        final AtomicInteger runs = new AtomicInteger();
        final boolean dear;

        Tanks(boolean dear) {
            this.dear = dear;
        }

        @Override
        public List<Unknown> unknowns() {
            return List.of(
                    new Unknown("one", "loss of the one", 0, 0.5, -2, 2, 0.1),
                    new Unknown("other", "loss of the other", 0, 0.5, -2, 2, 0.1),
                    new Unknown("between", "what passes between", 0, 0.5, -2, 2, 0.1),
                    new Unknown("room", "how much warmer the room is", 0, 3, -12, 12, 0.5));
        }

        @Override
        public double[] at(double[] p) {
            runs.incrementAndGet();
            double[] out = new double[2 * ROWS];
            double a = 70;
            double b = 20;
            double room = 15 + p[3];
            for (int i = 0; i < ROWS; i++) {
                out[i] = a;
                out[ROWS + i] = b;
                double pass = 0.02 * Math.exp(p[2]) * (a - b);
                a += -pass - 0.005 * Math.exp(p[0]) * (a - room);
                b += pass - 0.02 * Math.exp(p[1]) * (b - room);
                if (i % 60 == 0) a = 70;
            }
            return out;
        }

        @Override
        public boolean isDear() {
            return dear;
        }
    }

    @Test
    void mendedSlopesLeadToTheSameValuesInFewerRuns() {
        double[] truth = {0.4, -0.5, 0.3, 2};
        double[] value = new Tanks(false).at(truth);
        double[] time = new double[2 * ROWS];
        Random dice = new Random(2);
        for (int i = 0; i < value.length; i++) {
            time[i] = i % ROWS * 900.0;
            value[i] += 0.2 * dice.nextGaussian();
        }
        Observed o = new Observed(
                time,
                value,
                List.of(new Observed.Channel("a", 0, ROWS, 1, 0.1), new Observed.Channel("b", ROWS, 2 * ROWS, 1, 0.1)));
        Tanks fresh = new Tanks(false);
        Tanks mended = new Tanks(true);
        Estimate one = Estimator.of(fresh, o, done -> true);
        Estimate other = Estimator.of(mended, o, done -> true);
        for (int j = 0; j < truth.length; j++) {
            assertThat(other.value()[j]).isCloseTo(one.value()[j], within(0.3 * one.error(j)));
            assertThat(other.error(j)).isCloseTo(one.error(j), within(0.15 * one.error(j)));
            assertThat(other.value()[j]).isCloseTo(truth[j], within(4 * one.error(j)));
        }
        assertThat(mended.runs.get()).isLessThan(fresh.runs.get() * 3 / 4);
    }

    @Test
    void theShareDoneNeverFalls() {
        double[] last = {0};
        double[] value = new Tanks(false).at(new double[4]);
        double[] time = new double[2 * ROWS];
        for (int i = 0; i < time.length; i++) time[i] = i % ROWS * 900.0;
        Observed o = new Observed(time, value, List.of(new Observed.Channel("a", 0, ROWS, 1, 0.1)));
        Estimator.of(new Tanks(true), o, done -> {
            synchronized (last) {
                assertThat(done).isBetween(last[0], 1.0);
                last[0] = done;
            }
            return true;
        });
        assertThat(last[0]).isPositive();
    }
}
