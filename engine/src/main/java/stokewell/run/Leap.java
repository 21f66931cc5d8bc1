package stokewell.run;

import stokewell.network.Network;
import stokewell.solve.SparseLu;

/**
 * Watches a day for its mean Jacobian, from which {@link Ahead} tells what further days would change. Flows and the firebox
 * gas, which have no memory, are solved with it; fuel, sensors and water levels are held, their changes are no heat.
 */
final class Leap {

    private final Network network;
    private final int n;
    private final double[] now;
    private final double[] mean;
    private final double[] sums;
    private final double[] dfdt;
    private final double[] dgdt;
    private double seconds;

    Leap(Network network) {
        this.network = network;
        n = network.size();
        now = new double[network.pattern().size()];
        mean = new double[network.pattern().size()];
        sums = new double[network.sumPattern().size()];
        dfdt = new double[n];
        dgdt = new double[network.sums()];
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

    /** What is known when the day is over; null where the mean day cannot be solved. */
    Ahead ahead() {
        int[] start = network.pattern().start();
        double[] shift = new double[n];
        boolean[] heat = new boolean[n];
        for (int i = 0; i < n; i++) {
            heat[i] = heat(i);
            boolean held = !heat[i] && !network.algebraic(i);
            for (int p = start[i]; p < start[i + 1]; p++) mean[p] = held ? 0 : mean[p] / seconds;
            if (held) shift[i] = 1;
        }
        SparseLu whole = new SparseLu(network.pattern());
        if (whole.factorShifted(shift, mean) != SparseLu.FACTORED) return null;
        for (int i = 0; i < n; i++) if (heat[i]) shift[i] = 2 / DayClock.DAY;
        SparseLu half = new SparseLu(network.pattern());
        return half.factorShifted(shift, mean) == SparseLu.FACTORED ? new Ahead(heat, half, whole) : null;
    }
}
