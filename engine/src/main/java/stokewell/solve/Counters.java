package stokewell.solve;

/**
 * What a run has cost so far.
 *
 * @param steps          accepted steps
 * @param rejected       steps redone with a shorter length because of their error
 * @param rates          evaluations of {@link Equations#rates}
 * @param jacobians      evaluations of {@link Equations#linearize}
 * @param factorisations matrices factored
 * @param solves         systems solved with a factored matrix
 * @param events         switches found inside a step
 */
public record Counters(
        long steps, long rejected, long rates, long jacobians, long factorisations, long solves, long events) {}
