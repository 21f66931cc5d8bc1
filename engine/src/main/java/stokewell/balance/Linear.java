package stokewell.balance;

import java.util.Map;
import java.util.TreeMap;

/**
 * Everything that is linear with coefficients that never change: p = p + A x + c, row by row. Plain conductances, the sun on a
 * wall, sensors that follow what they touch.
 *
 * <p>One sparse product beats adding flow by flow to both of its ends: each row is summed in a register and written once.
 * A flow's two ends then agree to rounding, not to the bit; the ledger's tolerance has room for a million times that.
 */
final class Linear implements Part {

    private final TreeMap<Integer, TreeMap<Integer, Double>> coefficients = new TreeMap<>();
    private final TreeMap<Integer, Double> constants = new TreeMap<>();

    private int[] row = {};
    private int[] start = {0};
    private int[] column = {};
    private double[] a = {};
    private double[] c = {};
    private int[] slot = {};

    void add(int row, int column, double coefficient) {
        coefficients.computeIfAbsent(row, r -> new TreeMap<>()).merge(column, coefficient, Double::sum);
    }

    void constant(int row, double value) {
        coefficients.computeIfAbsent(row, r -> new TreeMap<>());
        constants.merge(row, value, Double::sum);
    }

    /** Lays all out flat and asks for the slots. */
    void seal(Wiring wiring) {
        int rows = coefficients.size();
        int size = coefficients.values().stream().mapToInt(Map::size).sum();
        row = new int[rows];
        start = new int[rows + 1];
        c = new double[rows];
        column = new int[size];
        a = new double[size];
        slot = new int[size];
        int r = 0;
        int at = 0;
        for (Map.Entry<Integer, TreeMap<Integer, Double>> line : coefficients.entrySet()) {
            row[r] = line.getKey();
            c[r] = constants.getOrDefault(line.getKey(), 0.0);
            for (Map.Entry<Integer, Double> entry : line.getValue().entrySet()) {
                column[at] = entry.getKey();
                a[at] = entry.getValue();
                slot[at] = wiring.slot(row[r], column[at]);
                at++;
            }
            start[++r] = at;
        }
    }

    @Override
    public boolean steadySlopes() {
        return true;
    }

    @Override
    public void flows(double[] x, double[] p) {
        int from = start[0];
        for (int r = 0; r < row.length; r++) {
            int to = start[r + 1];
            double sum = c[r];
            for (int k = from; k < to; k++) sum += a[k] * x[column[k]];
            p[row[r]] += sum;
            from = to;
        }
    }

    @Override
    public void slopes(double[] x, double[] v) {
        for (int k = 0; k < slot.length; k++) v[slot[k]] += a[k];
    }
}
