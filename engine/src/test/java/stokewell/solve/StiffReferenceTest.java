package stokewell.solve;

import static org.assertj.core.api.Assertions.assertThat;

import org.assertj.core.data.Offset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

/**
 * Known stiff problems against published end values: Mazzia and Magherini, Test Set for IVP Solvers, release 2.4,
 * University of Bari, 2008. Asked for 1e-7 relative, held to 100 times that.
 */
class StiffReferenceTest {

    static final java.util.List<Rosenbrock> METHODS = Rosenbrock.ALL;
    private static final double ASKED = 1e-7;
    private static final double HELD = 1e-5;

    @ParameterizedTest
    @FieldSource("METHODS")
    void robertson(Rosenbrock method) {
        Problem problem = new Problem(3, 1, 1, 1e-6, 1) {
            @Override
            public void rates(double t, double[] y, double[] f, double[] g) {
                f[0] = -0.04 * y[0] + 1e4 * y[1] * y[2];
                f[2] = 3e7 * y[1] * y[1];
                f[1] = -f[0] - f[2];
                g[0] = f[0] + f[1];
            }

            @Override
            public void linearize(double t, double[] y, double[] dfdy, double[] dgdy, double[] dfdt, double[] dgdt) {
                dfdy[0] = -0.04;
                dfdy[1] = 1e4 * y[2];
                dfdy[2] = 1e4 * y[1];
                dfdy[6] = 0;
                dfdy[7] = 6e7 * y[1];
                dfdy[8] = 0;
                for (int j = 0; j < 3; j++) {
                    dfdy[3 + j] = -dfdy[j] - dfdy[6 + j];
                    dgdy[j] = dfdy[j] + dfdy[3 + j];
                }
            }
        };
        State state = new State(0, new double[] {1, 0, 0}, new double[1]);
        Integrator integrator = new Integrator(problem, new Tolerances(ASKED, 1e-9), method, Stepping.standard());
        integrator.advance(state, 40, Sink.NONE);
        held(state, 0.715827069, 9.18553476e-6, 0.284163746);
        integrator = new Integrator(problem, new Tolerances(ASKED, 1e-16), method, Stepping.standard());
        state = new State(0, new double[] {1, 0, 0}, new double[1]);
        integrator.advance(state, 1e11, Sink.NONE);
        held(state, 0.2083340149701255e-7, 0.8333360770334713e-13, 0.9999999791665050);
        assertThat(state.y[0] + state.y[1] + state.y[2]).isCloseTo(1, Offset.offset(1e-12));
        assertThat(state.sums[0]).isCloseTo(-state.y[2], Offset.offset(1e-12));
    }

    @ParameterizedTest
    @FieldSource("METHODS")
    void hires(Rosenbrock method) {
        Problem problem = new Problem(8, 0, 1e-3) {
            @Override
            public void rates(double t, double[] y, double[] f, double[] g) {
                double bind = 280 * y[5] * y[7];
                f[0] = -1.71 * y[0] + 0.43 * y[1] + 8.32 * y[2] + 0.0007;
                f[1] = 1.71 * y[0] - 8.75 * y[1];
                f[2] = -10.03 * y[2] + 0.43 * y[3] + 0.035 * y[4];
                f[3] = 8.32 * y[1] + 1.71 * y[2] - 1.12 * y[3];
                f[4] = -1.745 * y[4] + 0.43 * y[5] + 0.43 * y[6];
                f[5] = -bind + 0.69 * y[3] + 1.71 * y[4] - 0.43 * y[5] + 0.69 * y[6];
                f[6] = bind - 1.81 * y[6];
                f[7] = -f[6];
            }
        };
        State state = State.of(problem, 0);
        state.y[0] = 1;
        state.y[7] = 0.0057;
        Integrator integrator = new Integrator(problem, new Tolerances(ASKED, ASKED), method, Stepping.standard());
        integrator.advance(state, 321.8122, Sink.NONE);
        held(
                state,
                0.7371312573325668e-3,
                0.1442485726316185e-3,
                0.5888729740967575e-4,
                0.1175651343283149e-2,
                0.2386356198831331e-2,
                0.6238968252742796e-2,
                0.2849998395185769e-2,
                0.2850001604814231e-2);
    }

    private static Problem vanDerPol(double a, double b) {
        return new Problem(2, 0, 1, a) {
            @Override
            public void rates(double t, double[] y, double[] f, double[] g) {
                f[0] = y[1];
                f[1] = a * (1 - y[0] * y[0]) * y[1] - b * y[0];
            }

            @Override
            public void linearize(double t, double[] y, double[] dfdy, double[] dgdy, double[] dfdt, double[] dgdt) {
                dfdy[0] = 0;
                dfdy[1] = 1;
                dfdy[2] = -2 * a * y[0] * y[1] - b;
                dfdy[3] = a * (1 - y[0] * y[0]);
            }
        };
    }

    @ParameterizedTest
    @FieldSource("METHODS")
    void vanDerPolWithMu1000(Rosenbrock method) {
        State state = new State(0, new double[] {2, 0}, new double[0]);
        Integrator integrator =
                new Integrator(vanDerPol(1000, 1), new Tolerances(ASKED, 1e-9), method, Stepping.standard());
        integrator.advance(state, 2000, Sink.NONE);
        held(state, 1.706167732170469, -0.8928097010248125e-3);
    }

    @ParameterizedTest
    @FieldSource("METHODS")
    void vanDerPolWithEpsilonOneMillionth(Rosenbrock method) {
        State state = new State(0, new double[] {2, 0}, new double[0]);
        Integrator integrator =
                new Integrator(vanDerPol(1e6, 1e6), new Tolerances(ASKED, 1e-12), method, Stepping.standard());
        integrator.advance(state, 2, Sink.NONE);
        held(state, 1.706167732170483, -0.8928097010247975);
    }

    @ParameterizedTest
    @FieldSource("METHODS")
    void oregonator(Rosenbrock method) {
        Problem problem = new Problem(3, 0, 1) {
            @Override
            public void rates(double t, double[] y, double[] f, double[] g) {
                f[0] = 77.27 * (y[1] + y[0] * (1 - 8.375e-6 * y[0] - y[1]));
                f[1] = (y[2] - (1 + y[0]) * y[1]) / 77.27;
                f[2] = 0.161 * (y[0] - y[2]);
            }
        };
        State state = new State(0, new double[] {1, 2, 3}, new double[0]);
        Integrator integrator = new Integrator(problem, new Tolerances(ASKED, ASKED), method, Stepping.standard());
        integrator.advance(state, 360, Sink.NONE);
        held(state, 1.000814870318523, 1228.178521549917, 132.0554942846706);
    }

    /** Kaps: exact solution exp(-2t), exp(-t) however stiff. */
    @ParameterizedTest
    @FieldSource("METHODS")
    void kaps(Rosenbrock method) {
        Problem problem = new Problem(2, 0, 1) {
            @Override
            public void rates(double t, double[] y, double[] f, double[] g) {
                f[0] = -(1e6 + 2) * y[0] + 1e6 * y[1] * y[1];
                f[1] = y[0] - y[1] - y[1] * y[1];
            }

            @Override
            public void linearize(double t, double[] y, double[] dfdy, double[] dgdy, double[] dfdt, double[] dgdt) {
                dfdy[0] = -(1e6 + 2);
                dfdy[1] = 2e6 * y[1];
                dfdy[2] = 1;
                dfdy[3] = -1 - 2 * y[1];
            }
        };
        State state = new State(0, new double[] {1, 1}, new double[0]);
        Integrator integrator = new Integrator(problem, new Tolerances(ASKED, ASKED), method, Stepping.standard());
        integrator.advance(state, 1, Sink.NONE);
        held(state, Math.exp(-2), Math.exp(-1));
    }

    private static void held(State state, double... expected) {
        for (int i = 0; i < expected.length; i++) {
            assertThat(state.y[i]).as("y%d", i + 1).isCloseTo(expected[i], Offset.offset(HELD * Math.abs(expected[i])));
        }
    }
}
