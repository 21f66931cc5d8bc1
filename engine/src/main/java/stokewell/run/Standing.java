package stokewell.run;

import java.util.BitSet;
import stokewell.network.Network;

/**
 * How a rig stands at the start of a day that repeats: a beginning for one that is built the same and differs in its sizes or
 * settings.
 */
public final class Standing {

    private final double[] states;
    private final BitSet heat;

    private Standing(double[] states, BitSet heat) {
        this.states = states;
        this.heat = heat;
    }

    static Standing of(Simulation settled, Network network) {
        return new Standing(settled.states().clone(), heat(network));
    }

    /** Whether a network has the same nodes, as far as can be told. */
    boolean fits(Network network) {
        return states.length == network.size() && heat.equals(heat(network));
    }

    double[] states() {
        return states.clone();
    }

    /** Which nodes hold heat. */
    private static BitSet heat(Network network) {
        BitSet nodes = new BitSet(network.size());
        for (int i = 0; i < network.size(); i++) if (network.capacity(i) > 0) nodes.set(i);
        return nodes;
    }
}
