package stokewell.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

class StepFailureTest {

    /** y0' = 0, y1' = y1^2 from 1 is 1/(1 - t). */
    @Test
    void solutionThatRunsAwayIsNamedWithItsTime() {
        Problem problem = new Problem(2, 0, 1) {
            @Override
            public void rates(double t, double[] y, double[] f, double[] g) {
                f[0] = 0;
                f[1] = y[1] * y[1];
            }
        };
        State state = new State(0, new double[] {1, 1}, new double[0]);
        Integrator integrator = new Integrator(problem, Tolerances.absolute(1e-3));
        StepFailure failure = catchThrowableOfType(StepFailure.class, () -> integrator.advance(state, 2, Sink.NONE));
        assertThat(failure.time).isCloseTo(1, Offset.offset(1e-3)).isEqualTo(state.t);
        assertThat(failure.component).isEqualTo(1);
    }

    @Test
    void algebraicEquationWithoutSolutionIsNamed() {
        Problem problem = new Problem(2, 0, 1) {
            @Override
            public boolean algebraic(int i) {
                return i == 1;
            }

            @Override
            public void rates(double t, double[] y, double[] f, double[] g) {
                f[0] = 0;
                f[1] = 1 + y[1] * y[1];
            }
        };
        State state = new State(0, new double[] {1, 1}, new double[0]);
        assertThatThrownBy(() -> new Integrator(problem, Tolerances.absolute(1e-3)).restart(state))
                .isInstanceOfSatisfying(StepFailure.class, failure -> {
                    assertThat(failure.component).isEqualTo(1);
                });
    }

    /** Slopes so steep that their squares overflow leave no first step: named, not tried for ever. */
    @Test
    void slopesThatOverflowAreNamed() {
        Problem problem = new Problem(2, 0, 1) {
            @Override
            public void rates(double t, double[] y, double[] f, double[] g) {
                f[0] = 0;
                f[1] = 1e200 * y[1];
            }
        };
        State state = new State(0, new double[] {1, 1}, new double[0]);
        Integrator integrator = new Integrator(problem, Tolerances.absolute(1e-3));
        assertTimeoutPreemptively(
                Duration.ofSeconds(20),
                () -> assertThatThrownBy(() -> integrator.advance(state, 2, Sink.NONE))
                        .isInstanceOf(StepFailure.class));
    }
}
