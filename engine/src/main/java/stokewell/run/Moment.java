package stokewell.run;

import java.util.List;
import stokewell.control.Latch;
import stokewell.solve.State;

/**
 * What a simulation had come to at a time: states, latches, the stoker's memory. Never changes, so many simulations may take
 * it over at once.
 */
public final class Moment {

    private final double time;
    private final double[] y;
    private final boolean[] closed;
    private final Stoker.Memory stoker;

    Moment(State state, List<Latch> latches, Stoker.Memory stoker) {
        time = state.t;
        y = state.y.clone();
        closed = new boolean[latches.size()];
        for (int i = 0; i < closed.length; i++) closed[i] = latches.get(i).closed();
        this.stoker = stoker;
    }

    /** When it was, s. */
    public double time() {
        return time;
    }

    double[] states() {
        return y.clone();
    }

    boolean closed(int latch) {
        return closed[latch];
    }

    Stoker.Memory stoker() {
        return stoker;
    }
}
