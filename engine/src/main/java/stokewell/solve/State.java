package stokewell.solve;

/** Where a run is: the one thing that {@link Integrator#advance} changes. Callers may change y and sums between two calls. */
public final class State {

    /** Time, s. */
    public double t;

    public final double[] y;
    public final double[] sums;

    public State(double t, double[] y, double[] sums) {
        this.t = t;
        this.y = y;
        this.sums = sums;
    }

    /** At time t, all zero, as long as the equations ask. */
    public static State of(Equations equations, double t) {
        return new State(t, new double[equations.size()], new double[equations.sums()]);
    }
}
