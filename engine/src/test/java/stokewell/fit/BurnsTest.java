package stokewell.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import stokewell.rig.Rigs;
import stokewell.run.Replay;

class BurnsTest {

    @Test
    void aBurnThatNobodyNotedIsFound() {
        double[] time = new double[288];
        double[] value = new double[288];
        for (int i = 0; i < 288; i++) {
            time[i] = 300 * i;
            value[i] = 290 + hump(time[i] - 3 * 3600) + hump(time[i] - 12 * 3600);
        }
        List<Burn> burns = Burns.of(
                List.of(new Replay.Load(3 * 3600, 6)), new Series("stove", time, value), Rigs.pumped(), 0, 86400, 0);
        assertThat(burns).hasSize(2);
        assertThat(burns.get(0).noted()).isTrue();
        assertThat(burns.get(1).noted()).isFalse();
        assertThat(burns.get(1).time()).isCloseTo(12 * 3600, within(1200.0));
        assertThat(burns.get(1).mass()).isEqualTo(6);
    }

    private static double hump(double t) {
        return t < 0 ? 0 : 120 * (t / 3600) * Math.exp(1 - t / 3600);
    }
}
