package stokewell.solve;

/**
 * How steps are chosen, beside their error.
 *
 * @param longest longest step, s; infinite for none
 * @param growth  most that a step may be longer than the one before, above 1
 * @param restart how long the first step after a restart is
 * @param cut     how a step is ended at a switch
 */
public record Stepping(double longest, double growth, Restart restart, Cut cut) {

    /** How long the first step after a restart is. The very first step of a run always goes by CURVATURE. */
    public enum Restart {
        /** As long as the controller had last planned before the discontinuity. */
        REMEMBERED,
        /** From y', y'' = J y' + df/dt at the start: time constant and height of the transient that begins. */
        CURVATURE,
        /** The shorter of the two. */
        SHORTER
    }

    /** How a step is ended at a switch. */
    public enum Cut {
        /** Read off the step's interpolant: costs nothing, exact to one order less. */
        INTERPOLATE,
        /** The step is done again up to the switch, then its end trimmed on the interpolant: costs one step. */
        REPEAT
    }

    public Stepping {
        if (!(longest > 0)) throw new IllegalArgumentException("Stepping: longest is " + longest + ", allowed above 0");
        if (!(growth > 1)) throw new IllegalArgumentException("Stepping: growth is " + growth + ", allowed above 1");
    }

    /** No longest step, growth 6, restart by the shorter, cut by repeating. */
    public static Stepping standard() {
        return new Stepping(Double.POSITIVE_INFINITY, 6, Restart.SHORTER, Cut.REPEAT);
    }

    public Stepping withLongest(double longest) {
        return new Stepping(longest, growth, restart, cut);
    }

    public Stepping withRestart(Restart restart) {
        return new Stepping(longest, growth, restart, cut);
    }

    public Stepping withCut(Cut cut) {
        return new Stepping(longest, growth, restart, cut);
    }
}
