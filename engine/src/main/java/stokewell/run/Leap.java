package stokewell.run;

import stokewell.network.Network;
import stokewell.solve.SparseLu;

/**
 * From what one day changes to what all further days like it would: for a linear rig y' = J y + drive with period T the change f of a
 * day is followed by e^(JT) f, e^(2JT) f and so on, together (1 − e^(JT))⁻¹ f. With z = −JT that is taken as
 * f + (z + z²/2)⁻¹ f: exact in its first two terms where a day is short against a node's memory, and f alone where it is long.
 *
 * <p>J is the mean over a day that was watched. Flows and the firebox gas, which have no memory, are solved with it; fuel,
 * sensors and water levels are held, their changes are no heat.
 */
final class Leap {

    private final Network network;
    private final int n;
    private final double[] now;
    private final double[] mean;
    private final double[] sums;
    private final double[] dfdt;
    private final double[] dgdt;
    private final SparseLu half;
    private final SparseLu whole;
    private double seconds;

    Leap(Network network) {
        this.network = network;
        n = network.size();
        now = new double[network.pattern().size()];
        mean = new double[network.pattern().size()];
        sums = new double[network.sumPattern().size()];
        dfdt = new double[n];
        dgdt = new double[network.sums()];
        half = new SparseLu(network.pattern());
        whole = new SparseLu(network.pattern());
    }

    private boolean heat(int i) {
        return network.capacity(i) > 0;
    }

    /** Takes in a moment that stands for this many seconds of the day. */
    void see(double t, double[] y, double lasting) {
        network.linearize(t, y, now, sums, dfdt, dgdt);
        for (int p = 0; p < now.length; p++) mean[p] += lasting * now[p];
        seconds += lasting;
    }

    /** Readies it when the day is over; false where the mean day cannot be solved. */
    boolean ready() {
        int[] start = network.pattern().start();
        double[] shift = new double[n];
        for (int i = 0; i < n; i++) {
            boolean held = !heat(i) && !network.algebraic(i);
            for (int p = start[i]; p < start[i + 1]; p++) mean[p] = held ? 0 : mean[p] / seconds;
            if (held) shift[i] = 1;
        }
        if (whole.factorShifted(shift, mean) != SparseLu.FACTORED) return false;
        for (int i = 0; i < n; i++) if (heat(i)) shift[i] = 2 / DayClock.DAY;
        return half.factorShifted(shift, mean) == SparseLu.FACTORED;
    }

    /** Overwrites the change of a day, zero but for heat nodes, with that of all days to come. */
    void carry(double[] change) {
        double[] z = change.clone();
        for (int i = 0; i < n; i++) z[i] *= 2 / DayClock.DAY;
        half.solve(z);
        for (int i = 0; i < n; i++) z[i] = heat(i) ? z[i] / DayClock.DAY : 0;
        whole.solve(z);
        for (int i = 0; i < n; i++) if (heat(i)) change[i] += z[i];
    }
}
