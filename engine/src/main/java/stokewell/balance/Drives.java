package stokewell.balance;

import java.util.ArrayList;
import java.util.List;

/** Everything that a signal brings into a node by a fixed factor, such as the sun on a wall, as flat arrays. */
final class Drives implements Part {

    private final List<int[]> places = new ArrayList<>();
    private final List<Double> factors = new ArrayList<>();
    private int[] node = {};
    private int[] account = {};
    private int[] signal = {};
    private double[] factor = {};
    private int[] nodeSlot = {};
    private int[] accountSlot = {};

    void add(Wiring wiring, int node, int account, int signal, double factor) {
        places.add(new int[] {node, account, signal, wiring.slot(node, signal), wiring.slot(account, signal)});
        factors.add(factor);
    }

    void seal() {
        node = column(0);
        account = column(1);
        signal = column(2);
        nodeSlot = column(3);
        accountSlot = column(4);
        factor = factors.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private int[] column(int i) {
        return places.stream().mapToInt(r -> r[i]).toArray();
    }

    @Override
    public void flows(double[] x, double[] p) {
        for (int i = 0; i < factor.length; i++) {
            double q = factor[i] * x[signal[i]];
            p[node[i]] += q;
            p[account[i]] -= q;
        }
    }

    @Override
    public void slopes(double[] x, double[] v) {
        for (int i = 0; i < factor.length; i++) {
            v[nodeSlot[i]] += factor[i];
            v[accountSlot[i]] -= factor[i];
        }
    }
}
