package stokewell.solve;

import java.util.Arrays;
import java.util.BitSet;

/**
 * Solves A x = b for one fixed {@link Pattern} again and again. Everything that depends on the pattern alone is worked
 * out once: the order of elimination, where fill appears, and where every update lands. A factorisation is then one walk
 * along flat arrays, without search and without allocation.
 *
 * <p>Pivots are the diagonal, taken without interchange in the order of least Markowitz product (r-1)(c-1) of what is
 * left (Markowitz, Management Science 3 (1957) 255; on a symmetric pattern this is minimum degree), and among equals the
 * one that waits for the fewest others in a row. That is stable for
 * what it is meant for: matrices M/(h gamma) - J of heat networks, which are close to diagonally dominant. It is not a
 * solver for arbitrary matrices; a zero or non-finite pivot is reported, a merely small one is not.
 *
 * <p>Not thread-safe: the factors and the work space belong to the instance. The ordering takes about n^3/64 operations,
 * meant for n up to some hundreds.
 */
public final class SparseLu {

    /** What {@link #factor} returns when all pivots were good. */
    public static final int FACTORED = -1;

    private final int n;
    private final int places;
    /** order[k] is the row and column that is eliminated k-th. */
    private final int[] order;

    /**
     * A = L D U, L and U with ones on their diagonals: L column by column, then U column by column from the last one, so
     * that either sweep of a solution reads straight on, then the inverse of D.
     */
    private final double[] lu;

    private final int pivots;
    /** Row << 16 | column, in elimination order, of each entry of L and of U. */
    private final int[] lower;

    private final int[] upper;
    /** Where the column of pivot k ends in L, and its share of the updates. */
    private final int[] lowerEnd;

    private final int[] updateEnd;
    /** Place that changes, place in L and place in U of each update, in the order of the walk. */
    private int[] target = {};

    private int[] left = {};
    private int[] right = {};
    /** Where a place of the pattern goes in lu; where fill is; where the diagonal of each row of the caller's is. */
    private final int[] home;

    private final int[] fill;
    private final int[] diagonal;
    private final double[] work;

    /** @param pattern square, with every diagonal */
    public SparseLu(Pattern pattern) {
        n = pattern.rows();
        places = pattern.size();
        if (pattern.columns() != n) {
            throw new IllegalArgumentException(
                    "SparseLu: the pattern is " + n + " by " + pattern.columns() + ", not square");
        }
        for (int i = 0; i < n; i++) {
            if (pattern.place(i, i) < 0) {
                throw new IllegalArgumentException("SparseLu: row " + i + " of the pattern has no diagonal");
            }
        }
        order = leastMarkowitz(pattern);
        int[] rank = new int[n];
        for (int k = 0; k < n; k++) rank[order[k]] = k;
        work = new double[n];

        int[][] at = new int[n][n];
        for (int[] row : at) Arrays.fill(row, -1);
        BitSet[] filled = fillIn(pattern, rank);
        int size = 0;
        for (BitSet row : filled) size += row.cardinality();
        int[] entries = new int[size - n];
        lowerEnd = new int[n];
        int count = 0;
        for (int k = 0; k < n; k++) {
            for (int i = k + 1; i < n; i++) {
                if (!filled[i].get(k)) continue;
                at[i][k] = count;
                entries[count++] = i << 16 | k;
            }
            lowerEnd[k] = count;
        }
        lower = Arrays.copyOf(entries, count);
        for (int k = n - 1; k >= 0; k--) {
            for (int i = k - 1; i >= 0; i--) {
                if (!filled[i].get(k)) continue;
                at[i][k] = count;
                entries[count++] = i << 16 | k;
            }
        }
        upper = Arrays.copyOfRange(entries, lower.length, count);
        pivots = count;
        lu = new double[pivots + n];
        diagonal = new int[n];
        for (int k = 0; k < n; k++) {
            at[k][k] = pivots + k;
            diagonal[order[k]] = pivots + k;
        }

        home = new int[places];
        boolean[] given = new boolean[lu.length];
        for (int i = 0; i < n; i++) {
            for (int p = pattern.start()[i]; p < pattern.start()[i + 1]; p++) {
                home[p] = at[rank[i]][rank[pattern.column()[p]]];
                given[home[p]] = true;
            }
        }
        fill = missing(given);
        updateEnd = new int[n];
        plan(at);
    }

    /** Rows and columns, in the order in which they are eliminated. */
    private static int[] leastMarkowitz(Pattern pattern) {
        int n = pattern.rows();
        BitSet[] row = new BitSet[n];
        BitSet[] col = new BitSet[n];
        for (int i = 0; i < n; i++) {
            row[i] = new BitSet(n);
            col[i] = new BitSet(n);
        }
        for (int i = 0; i < n; i++) {
            for (int p = pattern.start()[i]; p < pattern.start()[i + 1]; p++) {
                row[i].set(pattern.column()[p]);
                col[pattern.column()[p]].set(i);
            }
        }
        int[] order = new int[n];
        int[] depth = new int[n];
        BitSet left = new BitSet(n);
        left.set(0, n);
        for (int k = 0; k < n; k++) {
            int best = -1;
            long least = Long.MAX_VALUE;
            for (int i = left.nextSetBit(0); i >= 0; i = left.nextSetBit(i + 1)) {
                long product = (row[i].cardinality() - 1L) * (col[i].cardinality() - 1L);
                long cost = product << 32 | depth[i];
                if (cost < least) {
                    least = cost;
                    best = i;
                }
            }
            order[k] = best;
            left.clear(best);
            BitSet across = row[best];
            BitSet down = col[best];
            across.clear(best);
            down.clear(best);
            for (int i = down.nextSetBit(0); i >= 0; i = down.nextSetBit(i + 1)) {
                depth[i] = Math.max(depth[i], depth[best] + 1);
                row[i].or(across);
                row[i].clear(best);
            }
            for (int j = across.nextSetBit(0); j >= 0; j = across.nextSetBit(j + 1)) {
                col[j].or(down);
                col[j].clear(best);
            }
        }
        return order;
    }

    /** The columns that each row of L + U holds, in elimination order. */
    private BitSet[] fillIn(Pattern pattern, int[] rank) {
        BitSet[] filled = new BitSet[n];
        BitSet upper = new BitSet(n);
        for (int k = 0; k < n; k++) {
            BitSet row = new BitSet(n);
            int i = order[k];
            for (int p = pattern.start()[i]; p < pattern.start()[i + 1]; p++) row.set(rank[pattern.column()[p]]);
            for (int c = row.nextSetBit(0); c >= 0 && c < k; c = row.nextSetBit(c + 1)) {
                upper.clear();
                upper.or(filled[c]);
                upper.clear(0, c + 1);
                row.or(upper);
            }
            filled[k] = row;
        }
        return filled;
    }

    private static int[] missing(boolean[] given) {
        int[] found = new int[given.length];
        int count = 0;
        for (int p = 0; p < given.length; p++) if (!given[p]) found[count++] = p;
        return Arrays.copyOf(found, count);
    }

    /** Walks the elimination once, noting where each product lands. */
    private void plan(int[][] at) {
        int[] products = new int[48];
        int count = 0;
        for (int k = 0; k < n; k++) {
            for (int i = k + 1; i < n; i++) {
                if (at[i][k] < 0) continue;
                for (int j = k + 1; j < n; j++) {
                    if (at[k][j] < 0) continue;
                    if (count == products.length) products = Arrays.copyOf(products, 2 * count);
                    products[count++] = at[i][j];
                    products[count++] = at[i][k];
                    products[count++] = at[k][j];
                }
            }
            updateEnd[k] = count / 3;
        }
        target = new int[count / 3];
        left = new int[count / 3];
        right = new int[count / 3];
        for (int q = 0; q < target.length; q++) {
            target[q] = products[3 * q];
            left[q] = products[3 * q + 1];
            right[q] = products[3 * q + 2];
        }
    }

    /** Number of unknowns. */
    public int size() {
        return n;
    }

    /** Number of places in L + U, fill among them. */
    public int factorSize() {
        return lu.length;
    }

    /** Multiplications in one factorisation, without the scaling of L. */
    public int updates() {
        return target.length;
    }

    /**
     * Factors A.
     *
     * @param values A along the pattern; left as it is
     * @return {@link #FACTORED}, or the row whose pivot is zero or not finite; the factors are then of no use
     */
    public int factor(double[] values) {
        for (int p = 0; p < places; p++) lu[home[p]] = values[p];
        for (int p : fill) lu[p] = 0;
        return eliminate();
    }

    /**
     * Factors A = diag(shift) - J.
     *
     * @param shift    what stands on the diagonal before J is taken away
     * @param jacobian J along the pattern
     * @return as {@link #factor}
     */
    public int factorShifted(double[] shift, double[] jacobian) {
        for (int p = 0; p < places; p++) lu[home[p]] = -jacobian[p];
        for (int p : fill) lu[p] = 0;
        for (int i = 0; i < n; i++) lu[diagonal[i]] += shift[i];
        return eliminate();
    }

    /** Right-looking: all updates by pivot k are independent of each other, so that the processor overlaps them. */
    private int eliminate() {
        final double[] lu = this.lu;
        final int[] target = this.target;
        final int[] left = this.left;
        final int[] right = this.right;
        int p = 0;
        int q = 0;
        for (int k = 0; k < n; k++) {
            double inverse = 1 / lu[pivots + k];
            if (!(Math.abs(inverse) <= Double.MAX_VALUE) || inverse == 0) return order[k];
            lu[pivots + k] = inverse;
            for (int end = lowerEnd[k]; p < end; p++) lu[p] *= inverse;
            for (int end = updateEnd[k]; q < end; q++) lu[target[q]] -= lu[left[q]] * lu[right[q]];
        }
        int first = lower.length;
        for (int u = 0; u < upper.length; u++) lu[first + u] *= lu[pivots + (upper[u] >>> 16)];
        return FACTORED;
    }

    /**
     * Overwrites b with the solution of A x = b for the A last factored.
     *
     * <p>One walk along the entries of L and one along those of U, without inner loops: rows hold three or four entries
     * each, and a loop so short costs more in guessing its end than in its work.
     */
    public void solve(double[] b) {
        final double[] lu = this.lu;
        final double[] w = work;
        final int[] lower = this.lower;
        final int[] upper = this.upper;
        final int[] order = this.order;
        for (int k = 0; k < w.length; k++) w[k] = b[order[k]];
        for (int q = 0; q < lower.length; q++) {
            int at = lower[q];
            w[at >>> 16] -= lu[q] * w[at & 0xffff];
        }
        for (int k = 0; k < w.length; k++) w[k] *= lu[pivots + k];
        int first = lower.length;
        for (int q = 0; q < upper.length; q++) {
            int at = upper[q];
            w[at >>> 16] -= lu[first + q] * w[at & 0xffff];
        }
        for (int k = 0; k < w.length; k++) b[order[k]] = w[k];
    }
}
