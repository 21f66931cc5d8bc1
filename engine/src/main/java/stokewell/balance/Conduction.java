package stokewell.balance;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** All plain conductances of a rig, as flat arrays. */
final class Conduction implements Part {

    private final List<int[]> ends = new ArrayList<>();
    private final List<Double> values = new ArrayList<>();
    private final List<int[]> meteredEnds = new ArrayList<>();
    private final List<Double> meteredValues = new ArrayList<>();
    private final List<int[]> outsideEnds = new ArrayList<>();
    private final List<Double> outsideValues = new ArrayList<>();
    private final List<int[]> fixedEnds = new ArrayList<>();
    private final List<double[]> fixedValues = new ArrayList<>();

    private int[] a = {};
    private int[] b = {};
    private double[] g = {};
    private int[] slotsOf = {};
    private int[] meterOf = {};
    private int[] meterSlots = {};
    private int metered;
    private int[] node = {};
    private int[] account = {};
    private int[] signal = {};
    private double[] gOut = {};
    private int[] outSlots = {};
    private int[] fixedNode = {};
    private int[] fixedAccount = {};
    private double[] gFixed = {};
    private double[] fixedTemperature = {};
    private int[] fixedSlots = {};

    void between(Wiring wiring, int a, int b, double conductance) {
        ends.add(new int[] {a, b, wiring.slot(a, a), wiring.slot(a, b), wiring.slot(b, a), wiring.slot(b, b)});
        values.add(conductance);
    }

    void metered(Wiring wiring, int a, int b, int meter, double conductance) {
        meteredEnds.add(new int[] {
            a,
            b,
            meter,
            wiring.slot(a, a),
            wiring.slot(a, b),
            wiring.slot(b, a),
            wiring.slot(b, b),
            wiring.slot(meter, a),
            wiring.slot(meter, b)
        });
        meteredValues.add(conductance);
    }

    void outside(Wiring wiring, int node, int account, int signal, double conductance) {
        outsideEnds.add(new int[] {
            node,
            account,
            signal,
            wiring.slot(node, node),
            wiring.slot(node, signal),
            wiring.slot(account, node),
            wiring.slot(account, signal)
        });
        outsideValues.add(conductance);
    }

    void fixed(Wiring wiring, int node, int account, double temperature, double conductance) {
        fixedEnds.add(new int[] {node, account, wiring.slot(node, node), wiring.slot(account, node)});
        fixedValues.add(new double[] {conductance, temperature});
    }

    /** Lays all out flat, the metered ones first. */
    void seal() {
        List<int[]> all = new ArrayList<>();
        List<Double> conductances = new ArrayList<>(meteredValues);
        for (int[] m : meteredEnds) all.add(new int[] {m[0], m[1], m[3], m[4], m[5], m[6]});
        all.addAll(ends);
        conductances.addAll(values);
        metered = meteredEnds.size();
        meterOf = column(meteredEnds, 2);
        meterSlots = tail(meteredEnds, 7);
        a = column(all, 0);
        b = column(all, 1);
        g = conductances.stream().mapToDouble(Double::doubleValue).toArray();
        slotsOf = tail(all, 2);
        node = column(outsideEnds, 0);
        account = column(outsideEnds, 1);
        signal = column(outsideEnds, 2);
        gOut = outsideValues.stream().mapToDouble(Double::doubleValue).toArray();
        outSlots = tail(outsideEnds, 3);
        fixedNode = column(fixedEnds, 0);
        fixedAccount = column(fixedEnds, 1);
        fixedSlots = tail(fixedEnds, 2);
        gFixed = fixedValues.stream().mapToDouble(v -> v[0]).toArray();
        fixedTemperature = fixedValues.stream().mapToDouble(v -> v[1]).toArray();
    }

    private static int[] column(List<int[]> rows, int i) {
        return rows.stream().mapToInt(r -> r[i]).toArray();
    }

    private static int[] tail(List<int[]> rows, int from) {
        return rows.stream().flatMapToInt(r -> Arrays.stream(r, from, r.length)).toArray();
    }

    @Override
    public void flows(double[] x, double[] p) {
        for (int e = 0; e < metered; e++) {
            double q = g[e] * (x[a[e]] - x[b[e]]);
            p[a[e]] -= q;
            p[b[e]] += q;
            p[meterOf[e]] += q;
        }
        for (int e = metered; e < g.length; e++) {
            double q = g[e] * (x[a[e]] - x[b[e]]);
            p[a[e]] -= q;
            p[b[e]] += q;
        }
        for (int e = 0; e < gOut.length; e++) {
            double q = gOut[e] * (x[node[e]] - x[signal[e]]);
            p[node[e]] -= q;
            p[account[e]] += q;
        }
        for (int e = 0; e < gFixed.length; e++) {
            double q = gFixed[e] * (x[fixedNode[e]] - fixedTemperature[e]);
            p[fixedNode[e]] -= q;
            p[fixedAccount[e]] += q;
        }
    }

    @Override
    public void slopes(double[] x, double[] v) {
        for (int e = 0, s = 0; e < g.length; e++, s += 4) {
            double c = g[e];
            v[slotsOf[s]] -= c;
            v[slotsOf[s + 1]] += c;
            v[slotsOf[s + 2]] += c;
            v[slotsOf[s + 3]] -= c;
        }
        for (int e = 0; e < metered; e++) {
            v[meterSlots[2 * e]] += g[e];
            v[meterSlots[2 * e + 1]] -= g[e];
        }
        for (int e = 0, s = 0; e < gOut.length; e++, s += 4) {
            double c = gOut[e];
            v[outSlots[s]] -= c;
            v[outSlots[s + 1]] += c;
            v[outSlots[s + 2]] += c;
            v[outSlots[s + 3]] -= c;
        }
        for (int e = 0, s = 0; e < gFixed.length; e++, s += 2) {
            v[fixedSlots[s]] -= gFixed[e];
            v[fixedSlots[s + 1]] += gFixed[e];
        }
    }
}
