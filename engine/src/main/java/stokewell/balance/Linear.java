package stokewell.balance;

import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Everything that is linear with coefficients that never change: p = p + A x + c. Plain conductances, the sun on a
 * wall, sensors that follow what they touch.
 *
 * <p>Each row's entries lie apart, first those that are first in their row, then the second ones: one walk without inner
 * loops, and no sum waits for the one before. A flow's two ends agree to rounding, not to the bit; the ledger's tolerance has
 * room for a million times that.
 */
final class Linear implements Part {

    private final TreeMap<Integer, TreeMap<Integer, Double>> coefficients = new TreeMap<>();
    private final TreeMap<Integer, Double> constants = new TreeMap<>();

    private int[] row = {};
    private int[] column = {};
    private double[] a = {};
    private int[] constantRow = {};
    private double[] c = {};
    private int[] slot = {};

    void add(int row, int column, double coefficient) {
        coefficients.computeIfAbsent(row, r -> new TreeMap<>()).merge(column, coefficient, Double::sum);
    }

    void constant(int row, double value) {
        constants.merge(row, value, Double::sum);
    }

    /** Lays all out flat and asks for the slots. */
    void seal(Wiring wiring) {
        int size = coefficients.values().stream().mapToInt(Map::size).sum();
        row = new int[size];
        column = new int[size];
        a = new double[size];
        slot = new int[size];
        List<Integer> rows = List.copyOf(coefficients.keySet());
        List<Iterator<Map.Entry<Integer, Double>>> left = rows.stream()
                .map(r -> coefficients.get(r).entrySet().iterator())
                .toList();
        for (int at = 0; at < size; ) {
            for (int r = 0; r < rows.size(); r++) {
                if (!left.get(r).hasNext()) continue;
                Map.Entry<Integer, Double> entry = left.get(r).next();
                row[at] = rows.get(r);
                column[at] = entry.getKey();
                a[at] = entry.getValue();
                slot[at] = wiring.slot(row[at], column[at]);
                at++;
            }
        }
        constantRow = constants.keySet().stream().mapToInt(Integer::intValue).toArray();
        c = constants.values().stream().mapToDouble(Double::doubleValue).toArray();
    }

    @Override
    public boolean steadySlopes() {
        return true;
    }

    @Override
    public void flows(double[] x, double[] p) {
        for (int k = 0; k < c.length; k++) p[constantRow[k]] += c[k];
        for (int k = 0; k < a.length; k++) p[row[k]] += a[k] * x[column[k]];
    }

    @Override
    public void slopes(double[] x, double[] v) {
        for (int k = 0; k < slot.length; k++) v[slot[k]] += a[k];
    }
}
