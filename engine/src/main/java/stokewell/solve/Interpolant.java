package stokewell.solve;

/** The solution between the two ends of one step, as exact as the step to about one order. Both ends are met exactly. */
public interface Interpolant {

    /** Where the step starts, s. */
    double start();

    /** Where the step ends, s. */
    double end();

    /** y_i at time t, start to end. */
    double value(int i, double t);

    /** s_j at time t, start to end. Linear invariants of y and s that the equations keep are kept here too. */
    double sum(int j, double t);
}
