package stokewell.shop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;
import stokewell.file.SensorKind;

/** Faults put into a good log are found, and a good log has none. */
class DoubtsTest {

    private static final long START = 1_700_000_000L;

    /** A store over ten days: fires by day, cooling by night, a tenth of a degree in the last digit. Seeded. */
    private static double[] store(Random random) {
        double[] values = new double[2880];
        double t = 330;
        for (int i = 0; i < values.length; i++) {
            boolean fire = i % 288 > 96 && i % 288 < 200;
            t += fire ? 0.15 + 0.1 * random.nextGaussian() : -(t - 290) * 0.0035;
            values[i] = Math.rint((t + 0.05 * random.nextGaussian()) * 10) / 10;
        }
        return values;
    }

    private static Readings every5(double[] values) {
        long[] times = new long[values.length];
        for (int i = 0; i < times.length; i++) times[i] = START + 300L * i;
        return new Readings(times, values);
    }

    @Test
    void aGoodLogRaisesNoDoubt() {
        for (int seed = 0; seed < 50; seed++) {
            Doubts doubts = Doubts.of(SensorKind.TEMPERATURE, every5(store(new Random(seed))));
            assertThat(doubts)
                    .isEqualTo(new Doubts(300, true, java.util.List.of(), java.util.List.of(), java.util.List.of()));
        }
    }

    @Test
    void spikesOfOneAndTwoReadingsAreFound() {
        for (int seed = 0; seed < 50; seed++) {
            double[] values = store(new Random(seed));
            values[500] += 25;
            values[900] = 233.15;
            values[901] = 233.15;
            Readings log = every5(values);
            Doubts doubts = Doubts.of(SensorKind.TEMPERATURE, log);
            assertThat(doubts.spikes())
                    .containsExactly(new Doubts.Stretch(500, 500, 0), new Doubts.Stretch(900, 901, 300));
            assertThat(doubts.sound(log).size()).isEqualTo(2877);
        }
    }

    /** An opened door, a first fire: quick, but no spike. */
    @Test
    void aStepIsNoSpike() {
        double[] values = store(new Random(1));
        for (int i = 1000; i < 2000; i++) values[i] -= 20;
        assertThat(Doubts.of(SensorKind.TEMPERATURE, every5(values)).spikes()).isEmpty();
    }

    @Test
    void aStuckSensorIsFoundAndASteadyRoomIsNot() {
        double[] values = store(new Random(1));
        for (int i = 1000; i < 1200; i++) values[i] = values[1000];
        Readings log = every5(values);
        Doubts doubts = Doubts.of(SensorKind.TEMPERATURE, log);
        assertThat(doubts.stuck()).singleElement().satisfies(s -> {
            assertThat(s.first()).isBetween(998, 1000);
            assertThat(s.last()).isBetween(1199, 1201);
        });
        assertThat(doubts.sound(log).size()).isBetween(2670, 2690);
        double[] coarse = new double[2880];
        for (int i = 0; i < coarse.length; i++) coarse[i] = 290 + (i / 100) % 3;
        assertThat(Doubts.of(SensorKind.TEMPERATURE, every5(coarse)).stuck()).isEmpty();
        double[] dead = new double[2880];
        java.util.Arrays.fill(dead, 300);
        assertThat(Doubts.of(SensorKind.TEMPERATURE, every5(dead)).stuck()).hasSize(1);
    }

    @Test
    void gapsAreMeasuredAgainstTheUsualStep() {
        Growing log = new Growing();
        for (int i = 0; i < 1000; i++) if (i != 300 && (i < 500 || i >= 600)) log.add(START + 60L * i, 290 + i % 7);
        Doubts doubts = Doubts.of(SensorKind.TEMPERATURE, log.readings());
        assertThat(doubts.step()).isEqualTo(60);
        assertThat(doubts.gaps()).extracting(Doubts.Stretch::seconds).containsExactly(120L, 101 * 60L);
        assertThat(Doubts.of(SensorKind.TEMPERATURE, log.readings().slice(0, 1)).gaps())
                .isEmpty();
    }
}
