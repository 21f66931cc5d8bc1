package stokewell.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;

/** The statistics of a fit on a model that costs nothing: a tank that cools, with a slow error that no model knows. */
class EstimatorTest {

    private static final int ROWS = 240;
    private static final double STEP = 1800;

    /** A tank cools by e^p towards a room of 15 + q, from 70. */
    private static final class Cooling implements Response {
        @Override
        public List<Unknown> unknowns() {
            return List.of(
                    new Unknown("rate", "how fast it cools", 0, 0.5, -2, 2, 0.01),
                    new Unknown("room", "how much warmer the room is", 0, 3, -12, 12, 0.01));
        }

        @Override
        public double[] at(double[] p) {
            double[] out = new double[ROWS];
            for (int i = 0; i < ROWS; i++) {
                double room = 15 + p[1];
                out[i] = room + (70 - room) * Math.exp(-i * STEP * Math.exp(p[0]) / (40 * 3600.0));
            }
            return out;
        }
    }

    private static Observed read(double[] truth, double noise, double slow, double memory, Random dice) {
        double[] value = new Cooling().at(truth);
        double[] time = new double[ROWS];
        double fade = Math.exp(-STEP / memory);
        double drift = slow * dice.nextGaussian();
        for (int i = 0; i < ROWS; i++) {
            time[i] = i * STEP;
            value[i] += drift + noise * dice.nextGaussian();
            drift = fade * drift + Math.sqrt(1 - fade * fade) * slow * dice.nextGaussian();
        }
        return new Observed(time, value, List.of(new Observed.Channel("tank", 0, ROWS, 1, 0.02)));
    }

    @Test
    void nineIntervalsOfTenHoldTheTruthUnderASlowError() {
        int held = 0;
        int count = 0;
        int heldIfWhite = 0;
        for (int run = 0; run < 300; run++) {
            Random dice = new Random(run);
            double[] truth = {0.5 * dice.nextGaussian(), 3 * dice.nextGaussian()};
            truth[0] = Math.max(-1, Math.min(1, truth[0]));
            Observed o = read(truth, 0.1, 0.4, 2.5 * 3600, dice);
            Estimate e = Estimator.of(new Cooling(), o, done -> true);
            double white = whiteHalf(e, o);
            for (int j = 0; j < 2; j++) {
                count++;
                if (Math.abs(e.value()[j] - truth[j]) <= e.half(j, 0.9)) held++;
            }
            if (Math.abs(e.value()[0] - truth[0]) <= white) heldIfWhite++;
        }
        assertThat(held / (double) count).isBetween(0.85, 0.95);
        // the same errors taken for independent ones would promise far too much: the test can fail
        assertThat(heldIfWhite / 300.0).isLessThan(0.7);
    }

    /** Half the interval of the rate that plain least squares would tell. */
    private static double whiteHalf(Estimate e, Observed o) {
        double ss = 0;
        double aa = 0;
        double ab = 0;
        double bb = 0;
        for (int i = 0; i < ROWS; i++) {
            ss += Math.pow(o.value()[i] - e.predicted()[i], 2);
            aa += e.jacobian()[0][i] * e.jacobian()[0][i];
            ab += e.jacobian()[0][i] * e.jacobian()[1][i];
            bb += e.jacobian()[1][i] * e.jacobian()[1][i];
        }
        return 1.645 * Math.sqrt(ss / (ROWS - 2) * bb / (aa * bb - ab * ab));
    }

    @Test
    void spikesAreLeftOut() {
        double[] truth = {0.3, 1};
        Observed clean = read(truth, 0.1, 0, 3600, new Random(1));
        double[] spiked = clean.value().clone();
        for (int i = 10; i < ROWS; i += 30) spiked[i] += 60;
        Observed o = new Observed(clean.time(), spiked, clean.channels());
        Estimate e = Estimator.of(new Cooling(), o, done -> true);
        assertThat(e.value()[0]).isCloseTo(truth[0], within(0.02));
        assertThat(e.skipped()[10]).isTrue();
        assertThat(e.skipped()[11]).isFalse();
    }

    @Test
    void whatTheReadingsDoNotTellStaysAsItWasKnown() {
        Response deaf = new Response() {
            @Override
            public List<Unknown> unknowns() {
                return List.of(
                        new Cooling().unknowns().get(0),
                        new Cooling().unknowns().get(1),
                        new Unknown("nothing", "moves nothing", 0, 0.5, -2, 2, 0.1));
            }

            @Override
            public double[] at(double[] p) {
                return new Cooling().at(p);
            }
        };
        Estimate e = Estimator.of(deaf, read(new double[] {0.2, -1}, 0.1, 0.2, 7200, new Random(3)), done -> true);
        assertThat(e.told(2)).isLessThan(0.01);
        assertThat(e.value()[2]).isCloseTo(0, within(1e-6));
        assertThat(e.told(0)).isGreaterThan(0.9);
    }

    @Test
    void aFitCanBeStopped() {
        Observed o = read(new double[] {0, 0}, 0.1, 0, 3600, new Random(1));
        assertThatThrownBy(() -> Estimator.of(new Cooling(), o, done -> false))
                .isInstanceOf(CancellationException.class);
    }
}
