package stokewell.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class SwitchTest {

    /** tau T' = 40 u - T, tau 5 h; u goes on below 18, off above 20. */
    private static final class Relay extends Problem {
        boolean on = true;

        Relay() {
            super(1, 1, 1);
        }

        @Override
        public void rates(double t, double[] y, double[] f, double[] g) {
            f[0] = ((on ? 40 : 0) - y[0]) / 18000;
            g[0] = f[0];
        }

        @Override
        public void linearize(double t, double[] y, double[] dfdy, double[] dgdy, double[] dfdt, double[] dgdt) {
            dfdy[0] = -1 / 18000.0;
            dgdy[0] = dfdy[0];
        }

        @Override
        public int switches() {
            return 2;
        }

        @Override
        public void switching(double t, double[] y, double[] values) {
            values[0] = on ? y[0] - 20 : -1;
            values[1] = on ? -1 : 18 - y[0];
        }
    }

    /**
     * From 18 on: on for 18000 ln(22/20) = 1715.58 s, off for 18000 ln(20/18) = 1896.49 s, in closed form.
     */
    @ParameterizedTest
    @EnumSource(Stepping.Cut.class)
    void relayKeepsItsPeriod(Stepping.Cut cut) {
        Relay relay = new Relay();
        Integrator integrator = new Integrator(
                relay,
                Tolerances.absolute(1e-5),
                Rosenbrock.RODAS4,
                Stepping.standard().withCut(cut));
        State state = new State(0, new double[] {18}, new double[1]);
        double on = 18000 * Math.log(22 / 20.0);
        double off = 18000 * Math.log(20 / 18.0);
        double expected = 0;
        for (int i = 0; i < 40; i++) {
            int which = integrator.advance(state, 1e9, Sink.NONE);
            expected += relay.on ? on : off;
            assertThat(which).isEqualTo(relay.on ? 0 : 1);
            assertThat(state.t).isCloseTo(expected, Offset.offset(0.01 * (1 + i / 2)));
            double over = relay.on ? state.y[0] - 20 : 18 - state.y[0];
            assertThat(over).isBetween(0.0, 1e-6);
            assertThat(state.sums[0]).isCloseTo(state.y[0] - 18, Offset.offset(1e-12));
            relay.on = !relay.on;
            integrator.restart(state);
        }
        assertThat(integrator.counters().events()).isEqualTo(40);
    }

    /** y'' = -9.8, v 20, restitution 0.9: impact k at (2 v0 / 9.8)(1 - 0.9^k)/0.1. */
    @Test
    void ballStrikesWhenItShould() {
        boolean[] falls = {false};
        Problem ball = new Problem(2, 0, 1) {
            @Override
            public void rates(double t, double[] y, double[] f, double[] g) {
                f[0] = y[1];
                f[1] = -9.8;
            }

            @Override
            public void linearize(double t, double[] y, double[] dfdy, double[] dgdy, double[] dfdt, double[] dgdt) {
                dfdy[1] = 1;
            }

            @Override
            public int switches() {
                return 2;
            }

            @Override
            public void switching(double t, double[] y, double[] values) {
                values[0] = falls[0] ? -y[0] : -1;
                values[1] = falls[0] ? -1 : -y[1];
            }
        };
        double[] impacts = {4.081633, 7.755102, 11.061224, 14.036735, 16.714694, 19.124857};
        Integrator integrator = new Integrator(ball, Tolerances.absolute(1e-6));
        State state = new State(0, new double[] {0, 20}, new double[0]);
        for (double impact : impacts) {
            assertThat(integrator.advance(state, 100, Sink.NONE)).isEqualTo(1);
            falls[0] = true;
            integrator.restart(state);
            assertThat(integrator.advance(state, 100, Sink.NONE)).isZero();
            assertThat(state.t).isCloseTo(impact, Offset.offset(2e-6));
            state.y[0] = 0;
            state.y[1] *= -0.9;
            falls[0] = false;
            integrator.restart(state);
        }
    }

    /** y = sin t looked at against 0.98: above it for only 0.4 s, well within one step. */
    @Test
    void briefVisitWithinAStepIsSeen() {
        Problem wave = new Sine(0.98);
        Integrator integrator = new Integrator(wave, Tolerances.absolute(0.01));
        State state = new State(0, new double[] {0, 1}, new double[0]);
        assertThat(integrator.advance(state, 3, Sink.NONE)).isZero();
        assertThat(state.t).isCloseTo(Math.asin(0.98), Offset.offset(0.05));
    }

    @Test
    void twoSwitchesAtOnceAreBothSeen() {
        Sine wave = new Sine(0.5, 0.5, 0.6);
        Integrator integrator = new Integrator(wave, Tolerances.absolute(1e-6));
        State state = new State(0, new double[] {0, 1}, new double[0]);
        List<Integer> seen = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            int which = integrator.advance(state, 3, Sink.NONE);
            seen.add(which);
            wave.off[which] = true;
            assertThat(state.t).isCloseTo(Math.asin(i < 2 ? 0.5 : 0.6), Offset.offset(1e-5));
        }
        assertThat(seen).containsExactlyInAnyOrder(0, 1, 2).endsWith(2);
        assertThat(integrator.advance(state, 3, Sink.NONE)).isEqualTo(-1);
        assertThat(state.t).isEqualTo(3);
    }

    @Test
    void switchAlreadyUpIsReportedAtOnce() {
        Integrator integrator = new Integrator(new Sine(0.5), Tolerances.absolute(1e-6));
        State state = new State(0, new double[] {0.5, 1}, new double[0]);
        assertThat(integrator.advance(state, 3, Sink.NONE)).isZero();
        assertThat(state.t).isZero();
    }

    private static final class Sine extends Problem {
        final double[] levels;
        final boolean[] off;

        Sine(double... levels) {
            super(2, 0, 1);
            this.levels = levels;
            off = new boolean[levels.length];
        }

        @Override
        public void rates(double t, double[] y, double[] f, double[] g) {
            f[0] = y[1];
            f[1] = -y[0];
        }

        @Override
        public void linearize(double t, double[] y, double[] dfdy, double[] dgdy, double[] dfdt, double[] dgdt) {
            dfdy[1] = 1;
            dfdy[2] = -1;
        }

        @Override
        public int switches() {
            return levels.length;
        }

        @Override
        public void switching(double t, double[] y, double[] values) {
            for (int j = 0; j < levels.length; j++) values[j] = off[j] ? -1 : y[0] - levels[j];
        }
    }
}
