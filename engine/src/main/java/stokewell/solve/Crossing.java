package stokewell.solve;

/**
 * Finds the first switch in a step. The switching functions are looked at on the interpolant at a third and two thirds
 * and at the end; where a parabola through three of these looks rises above zero in between, there too, so that a
 * function that goes up and comes back within one step is seen unless it is very short.
 */
final class Crossing {

    /** A switch is placed when its function lies between 0 and this; the functions are of the order of kelvins. */
    static final double NEAR = 1e-9;

    private static final double[] AT = {0, 1.0 / 3, 2.0 / 3, 1};

    private final Equations equations;
    private final int switches;
    private final double[][] looks;
    private double[] probe;
    private final double[] point;
    private int which = -1;

    Crossing(Equations equations) {
        this.equations = equations;
        switches = equations.switches();
        looks = new double[AT.length][switches];
        probe = new double[switches];
        point = new double[equations.size()];
    }

    /** The first switch whose function is zero or more at the state, or -1. Steps are then searched from there. */
    int standing(State state) {
        if (switches == 0) return -1;
        equations.switching(state.t, state.y, looks[0]);
        return positive(looks[0]);
    }

    /** The end of this step is the start of the next. */
    void shift() {
        double[] first = looks[0];
        looks[0] = looks[3];
        looks[3] = first;
    }

    private int positive(double[] values) {
        for (int j = 0; j < switches; j++) if (values[j] >= 0) return j;
        return -1;
    }

    /** The switch found by the last search. */
    int which() {
        return which;
    }

    /** Where in the step, above 0 up to 1, the first switch is; NaN if there is none. */
    double search(Step step) {
        which = -1;
        if (switches == 0) return Double.NaN;
        int last = AT.length - 1;
        look(step, AT[last], looks[last]);
        if (far(looks[0], looks[last])) return Double.NaN;
        for (int k = 1; k < AT.length; k++) {
            if (k < last) look(step, AT[k], looks[k]);
            if (positive(looks[k]) >= 0) return refine(step, AT[k - 1], looks[k - 1], AT[k], looks[k]);
        }
        return between(step);
    }

    /** Whether every function stays further below zero at both ends of the step than the step moves it: no look inside. */
    private boolean far(double[] start, double[] end) {
        for (int j = 0; j < switches; j++) {
            double a = start[j];
            double b = end[j];
            if (!(Math.max(a, b) + Math.abs(b - a) < 0)) return false;
        }
        return true;
    }

    /** As {@link #search}, but past the end of the step, no farther than x. */
    double beyond(Step step, double x) {
        which = -1;
        double near = Math.min(x, 1.01);
        if (!(near > 1)) return Double.NaN;
        look(step, near, looks[1]);
        if (positive(looks[1]) >= 0) return refine(step, 1, looks[3], near, looks[1]);
        if (!(x > near)) return Double.NaN;
        look(step, x, looks[2]);
        if (positive(looks[2]) >= 0) return refine(step, near, looks[1], x, looks[2]);
        return Double.NaN;
    }

    private void look(Step step, double x, double[] values) {
        if (x == 1) {
            equations.switching(step.end(), step.yNew(), values);
        } else {
            step.interpolate(x, point);
            equations.switching(step.start() + x * step.length(), point, values);
        }
    }

    /** Looks where a parabola through three looks has its top above zero. */
    private double between(Step step) {
        double first = 2;
        for (int j = 0; j < switches; j++) {
            for (int k = 1; k < AT.length - 1; k++) {
                double a = looks[k - 1][j];
                double b = looks[k][j];
                double c = looks[k + 1][j];
                double bend = 2 * b - a - c;
                double tilt = (c - a) / 2;
                if (!(bend > 0) || !(b + tilt * tilt / (2 * bend) >= 0)) continue;
                double top = AT[k] + tilt / bend / 3;
                if (top > 0 && top < 1) first = Math.min(first, top);
            }
        }
        if (first > 1) return Double.NaN;
        look(step, first, probe);
        if (positive(probe) < 0) return Double.NaN;
        int k = first > AT[2] ? 2 : first > AT[1] ? 1 : 0;
        double[] high = looks[3];
        return refine(step, AT[k], looks[k], first, swap(high));
    }

    /** The probe, with another array put in its place. */
    private double[] swap(double[] other) {
        double[] found = probe;
        probe = other;
        looks[3] = found;
        return found;
    }

    /** The first switch between low, where all are below zero, and high, where one is not. */
    private double refine(Step step, double low, double[] atLow, double high, double[] atHigh) {
        double end = high;
        for (int j = 0; j < switches; j++) {
            if (!(atHigh[j] >= 0)) continue;
            which = j;
            end = root(step, j, low, atLow[j], end, atHigh);
        }
        return end;
    }

    /** Illinois's rule; leaves all values at the upper end of the last bracket, where switch j is at or above zero. */
    private double root(Step step, int j, double low, double atLow, double high, double[] atHigh) {
        double below = atLow;
        double above = atHigh[j];
        double from = low;
        double to = high;
        int side = 0;
        for (int turn = 0; turn < 60 && atHigh[j] > NEAR && to - from > 4e-16; turn++) {
            double aim = 0.5 * NEAR;
            double x = to - (to - from) * (above - aim) / (above - below);
            if (!(x > from && x < to) || turn > 20) x = 0.5 * (from + to);
            if (x == from || x == to) break;
            look(step, x, probe);
            double value = probe[j];
            if (value >= 0) {
                to = x;
                above = value;
                System.arraycopy(probe, 0, atHigh, 0, switches);
                if (side > 0) below = 0.5 * below;
                side = 1;
            } else {
                from = x;
                below = value;
                if (side < 0) above = 0.5 * (above - aim) + aim;
                side = -1;
            }
        }
        return to;
    }
}
