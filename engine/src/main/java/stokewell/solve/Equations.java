package stokewell.solve;

/**
 * What the integrator integrates: {@code y_i' = f_i(t, y)} for most i, {@code 0 = f_i(t, y)} for the algebraic ones, and
 * pure sums {@code s_j' = g_j(t, y)} that nothing depends on (a ledger). Knows no heat, only equations.
 *
 * <p>One instance serves one run: implementations reuse their work space and allocate nothing in a call.
 */
public interface Equations {

    /** Number of unknowns y. */
    int size();

    /** Whether f_i is an algebraic equation, 0 = f_i. Its Jacobian diagonal is then never zero. */
    boolean algebraic(int i);

    /** Number of sums s. */
    int sums();

    /** Places of df/dy, square, every diagonal among them. */
    Pattern pattern();

    /** Places of dg/dy: sums() rows, size() columns. */
    Pattern sumPattern();

    /** Writes f(t, y) and g(t, y). */
    void rates(double t, double[] y, double[] f, double[] g);

    /** Writes df/dy and dg/dy along their patterns and the partial derivatives df/dt and dg/dt. */
    void linearize(double t, double[] y, double[] dfdy, double[] dgdy, double[] dfdt, double[] dgdt);

    /** The size of error in y_i that matters as little as one tolerance: the absolute part of the error weight; infinite leaves y_i out of the error norm. */
    double scale(int i);

    /** Number of switching functions. */
    int switches();

    /** Writes the switching functions; one that goes from negative to positive or zero is an event. Inactive ones stay negative. */
    void switching(double t, double[] y, double[] values);
}
