package stokewell.run;

import java.util.BitSet;
import stokewell.network.Network;
import stokewell.solve.Interpolant;

/**
 * How a rig stands at the start of a day that repeats, and how it stood on the days lived through since: a beginning for one
 * that is built the same and differs in its sizes or settings.
 */
public final class Standing {

    /** By days since it was settled; states that were not looked at are null. */
    private final double[][] lived;

    private final BitSet heat;
    private final Ahead ahead;

    private Standing(double[][] lived, BitSet heat, Ahead ahead) {
        this.lived = lived;
        this.heat = heat;
        this.ahead = ahead;
    }

    static Standing of(Simulation settled, Network network, Ahead ahead) {
        double[][] lived = new double[NightRun.LIVED_DAYS + 1][];
        lived[0] = settled.states().clone();
        return new Standing(lived, heat(network), ahead);
    }

    /** Whether a network has the same nodes, as far as can be told. */
    boolean fits(Network network) {
        return lived[0].length == network.size() && heat.equals(heat(network));
    }

    double[] states() {
        return lived[0].clone();
    }

    /** How days to come follow from one; null where that was not looked at. */
    Ahead ahead() {
        return ahead;
    }

    /** Notes the states after so many days. */
    void note(int days, double[] states) {
        lived[days] = states.clone();
    }

    /** Notes them where a step passes that time. */
    void note(int days, Interpolant step, double time) {
        if (time < step.start() || time >= step.end()) return;
        double[] y = new double[lived[0].length];
        for (int i = 0; i < y.length; i++) y[i] = step.value(i, time);
        lived[days] = y;
    }

    boolean knows(int days) {
        return lived[days] != null;
    }

    /**
     * The states after so many days of a rig that settled elsewhere: all that holds heat is as far from where it settled as
     * here.
     */
    double[] after(int days, double[] settled) {
        double[] y = lived[days].clone();
        for (int i = heat.nextSetBit(0); i >= 0; i = heat.nextSetBit(i + 1)) y[i] += settled[i] - lived[0][i];
        return y;
    }

    /** Takes over what another knows of the days since. */
    void follow(Standing other) {
        for (int d = 1; d < lived.length; d++)
            if (lived[d] == null && other.knows(d)) lived[d] = other.after(d, lived[0]);
    }

    /** Which nodes hold heat. */
    private static BitSet heat(Network network) {
        BitSet nodes = new BitSet(network.size());
        for (int i = 0; i < network.size(); i++) if (network.capacity(i) > 0) nodes.set(i);
        return nodes;
    }
}
