package stokewell.balance;

/**
 * Something that makes heat or mass flow between the rows of a rig. A part reads the columns {@code x} (signals, then
 * states) and adds what flows into the rows {@code p} (accounts, meters, then states): W for a heat node and an
 * account, the rate of change itself for any other state, the residual for an algebraic one.
 *
 * <p>What leaves one row enters another: a part that subtracts q from a node adds q to a node or to an account, and the
 * slopes likewise. That is what makes the ledger close to rounding. No call allocates.
 */
public interface Part {

    /** Adds the flows at x. */
    void flows(double[] x, double[] p);

    /** Adds the derivatives of those flows into the slots that the part asked {@link Wiring} for. */
    void slopes(double[] x, double[] v);

    /** Whether the slopes are the same at every x and in every mode, so that they need be asked for only once. */
    default boolean steadySlopes() {
        return false;
    }
}
