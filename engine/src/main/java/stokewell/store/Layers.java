package stokewell.store;

import stokewell.balance.Part;
import stokewell.balance.Wiring;
import stokewell.loop.Circuit;
import stokewell.loop.Steam;

/**
 * The water of a store as stacked layers, top first: flow from layer to layer as the circuits push it, and mixing where
 * colder water lies above warmer.
 *
 * <p>The flow through a boundary is the sum of all circuits that cross it, so that two opposing ones cancel before they
 * mix anything. Mixing is a large exchange that begins smoothly at zero inversion: no jump in the state.
 * Steam that a layer makes over its own boiling point rises into the layer above: mixing alone would leave layers below a
 * hot inlet kelvins above boiling.
 */
public final class Layers implements Part {

    private static final double BASE = 330;
    /** Inversion at which the exchange is fully there, K. */
    private static final double BLEND = 0.6;

    /**
     * A circuit that draws at one layer and gives back at another; layers are numbered from the top.
     *
     * @param flow  its mass flow's column
     * @param share column of the share of it that comes from the store; -1 where all of it does
     * @param inlet layer it gives to
     * @param draw  layer it draws from
     */
    public record Through(int flow, int share, int inlet, int draw) {}

    private final int[] node;
    private final double specificHeat;
    private final double mixing;
    private final double[] saturation;
    private final double venting;
    private final int[] flow;
    private final int[] share;
    private final double[] sign;
    private final int[] first;
    private final int[] group;
    private final double[] net;
    private final double[] plus;
    private final double[] plusSlope;
    private final int[] slots;
    private final int[] flowSlots;
    private final int[] shareSlots;

    /**
     * @param node         rows of the layers, top first
     * @param specificHeat of water, J/(kg K)
     * @param mixing       exchange between two inverted layers, W/K
     * @param saturation   of each layer at its depth, K
     * @param venting      steam into the layer above, W per kelvin over saturation
     */
    public Layers(
            Wiring wiring,
            int[] node,
            double specificHeat,
            double mixing,
            double[] saturation,
            double venting,
            java.util.List<Through> circuits) {
        this.node = node.clone();
        this.specificHeat = specificHeat;
        this.mixing = mixing;
        this.saturation = saturation.clone();
        this.venting = venting;
        int bounds = node.length - 1;
        first = new int[bounds + 1];
        int[] flows = new int[bounds * circuits.size()];
        int[] shares = new int[flows.length];
        double[] signs = new double[flows.length];
        int count = 0;
        for (int k = 0; k < bounds; k++) {
            for (Through c : circuits) {
                int high = Math.min(c.inlet, c.draw);
                int low = Math.max(c.inlet, c.draw);
                if (k >= high && k < low) {
                    flows[count] = c.flow;
                    shares[count] = c.share;
                    signs[count] = c.inlet < c.draw ? 1 : -1;
                    count++;
                }
            }
            first[k + 1] = count;
        }
        flow = java.util.Arrays.copyOf(flows, count);
        share = java.util.Arrays.copyOf(shares, count);
        sign = java.util.Arrays.copyOf(signs, count);
        // neighbouring boundaries crossed by the same circuits share one flow
        group = new int[bounds];
        int groups = 0;
        for (int k = 0; k < bounds; k++) {
            if (first[k] == first[k + 1]) group[k] = -1;
            else if (k > 0 && same(k - 1, k)) group[k] = group[k - 1];
            else group[k] = groups++;
        }
        net = new double[groups];
        plus = new double[groups];
        plusSlope = new double[groups];
        slots = new int[4 * bounds];
        flowSlots = new int[2 * count];
        shareSlots = new int[2 * count];
        for (int k = 0; k < bounds; k++) {
            slots[4 * k] = wiring.slot(node[k], node[k]);
            slots[4 * k + 1] = wiring.slot(node[k], node[k + 1]);
            slots[4 * k + 2] = wiring.slot(node[k + 1], node[k]);
            slots[4 * k + 3] = wiring.slot(node[k + 1], node[k + 1]);
            for (int c = first[k]; c < first[k + 1]; c++) {
                flowSlots[2 * c] = wiring.slot(node[k], flow[c]);
                flowSlots[2 * c + 1] = wiring.slot(node[k + 1], flow[c]);
                if (share[c] < 0) continue;
                shareSlots[2 * c] = wiring.slot(node[k], share[c]);
                shareSlots[2 * c + 1] = wiring.slot(node[k + 1], share[c]);
            }
        }
    }

    private boolean same(int a, int b) {
        if (first[a + 1] - first[a] != first[b + 1] - first[b]) return false;
        for (int i = first[a], j = first[b]; i < first[a + 1]; i++, j++) {
            if (flow[i] != flow[j] || sign[i] != sign[j]) return false;
        }
        return true;
    }

    private void flowsThrough(double[] x, boolean slopes) {
        int last = -1;
        for (int k = 0; k < group.length; k++) {
            int g = group[k];
            if (g < 0 || g == last) continue;
            last = g;
            double m = 0;
            for (int c = first[k]; c < first[k + 1]; c++) m += sign[c] * part(x, c) * x[flow[c]];
            net[g] = m;
            plus[g] = Circuit.forward(m);
            if (slopes) plusSlope[g] = Circuit.forwardSlope(m);
        }
    }

    /** How much of a circuit's flow comes through the store. */
    private double part(double[] x, int c) {
        return share[c] < 0 ? 1 : x[share[c]];
    }

    private static double exchange(double inversion) {
        if (inversion <= 0) return 0;
        if (inversion >= BLEND) return inversion;
        double u = inversion / BLEND;
        return inversion * u * u * (3 - 2 * u);
    }

    private static double exchangeSlope(double inversion) {
        if (inversion <= 0) return 0;
        if (inversion >= BLEND) return 1;
        double u = inversion / BLEND;
        return u * u * (9 - 8 * u);
    }

    @Override
    public void flows(double[] x, double[] p) {
        flowsThrough(x, false);
        double above = x[node[0]];
        for (int k = 0; k < group.length; k++) {
            double below = x[node[k + 1]];
            double q = below > above ? -mixing * exchange(below - above) : 0;
            double over = below - saturation[k + 1];
            if (over > 0) q -= venting * Steam.ramp(over);
            int g = group[k];
            if (g >= 0) q += specificHeat * (plus[g] * (above - BASE) - (plus[g] - net[g]) * (below - BASE));
            p[node[k]] -= q;
            p[node[k + 1]] += q;
            above = below;
        }
    }

    @Override
    public void slopes(double[] x, double[] v) {
        flowsThrough(x, true);
        double above = x[node[0]];
        for (int k = 0, s = 0; k < group.length; k++, s += 4) {
            double below = x[node[k + 1]];
            double mix = below > above ? mixing * exchangeSlope(below - above) : 0;
            double dAbove = mix;
            double dBelow = -mix;
            double over = below - saturation[k + 1];
            if (over > 0) dBelow -= venting * Steam.rampSlope(over);
            int g = group[k];
            if (g >= 0) {
                dAbove += specificHeat * plus[g];
                dBelow -= specificHeat * (plus[g] - net[g]);
                double dm = specificHeat * (plusSlope[g] * (above - BASE) - (plusSlope[g] - 1) * (below - BASE));
                for (int c = first[k]; c < first[k + 1]; c++) {
                    double byFlow = sign[c] * part(x, c) * dm;
                    v[flowSlots[2 * c]] -= byFlow;
                    v[flowSlots[2 * c + 1]] += byFlow;
                    if (share[c] < 0) continue;
                    double byShare = sign[c] * x[flow[c]] * dm;
                    v[shareSlots[2 * c]] -= byShare;
                    v[shareSlots[2 * c + 1]] += byShare;
                }
            }
            v[slots[s]] -= dAbove;
            v[slots[s + 1]] -= dBelow;
            v[slots[s + 2]] += dAbove;
            v[slots[s + 3]] += dBelow;
            above = below;
        }
    }
}
