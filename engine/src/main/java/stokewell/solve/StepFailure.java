package stokewell.solve;

/** The integrator cannot go on. Holds facts; the edge says which node and why. */
public final class StepFailure extends RuntimeException {

    /** Why. */
    public enum Reason {
        /** The error stays too large however short the step. */
        STEP_TOO_SHORT,
        /** A pivot of the step's matrix is zero or not finite. */
        SINGULAR,
        /** Rates, Jacobian or solution are infinite or not a number. */
        NOT_FINITE,
        /** The algebraic equations found no solution after a discontinuity. */
        ALGEBRAIC
    }

    /** Time at which the step starts, s. */
    public final double time;
    /** Length of the step last tried, s. */
    public final double step;
    /** The unknown that is worst; -1 where none stands out. */
    public final int component;

    public final Reason reason;

    public StepFailure(double time, double step, int component, Reason reason) {
        super("at t = " + time + " s, step " + step + " s, unknown " + component + ": " + reason);
        this.time = time;
        this.step = step;
        this.component = component;
        this.reason = reason;
    }
}
