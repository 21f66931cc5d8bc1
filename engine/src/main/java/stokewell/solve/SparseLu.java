package stokewell.solve;

import java.util.Arrays;
import java.util.BitSet;

/**
 * Solves A x = b for one fixed {@link Pattern} again and again. Everything that depends on the pattern alone is worked
 * out once: the order of elimination, where fill appears, and where every update lands. A factorisation is then one walk
 * along flat arrays, without search and without allocation.
 *
 * <p>Pivots are the diagonal, taken without interchange in the order of least Markowitz product (r-1)(c-1) of what is
 * left (Markowitz, Management Science 3 (1957) 255; on a symmetric pattern this is minimum degree). That is stable for
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
    /** Rows in elimination order; each holds L left of the diagonal, 1/pivot on it, U right of it. */
    private final int[] start;

    private final int[] diagonal;
    private final int[] column;
    /** As column, in the caller's numbering. */
    private final int[] unknown;

    private final double[] lu;
    /** Where a place of the pattern goes in lu; where fill is; where each update lands, in the order of the walk. */
    private final int[] home;

    private final int[] fill;
    private int[] target = {};
    private int[] left = {};
    private int[] right = {};
    /** Entries of L, column by column, and where the share of pivot k ends among them and among the updates. */
    private int[] lower = {};

    private final int[] scaleEnd;
    private final int[] updateEnd;
    /** diagonalHome[i] is the place in lu of the diagonal of row i in the caller's numbering. */
    private final int[] diagonalHome;

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

        BitSet[] filled = fillIn(pattern, rank);
        start = new int[n + 1];
        for (int k = 0; k < n; k++) start[k + 1] = start[k] + filled[k].cardinality();
        column = new int[start[n]];
        unknown = new int[start[n]];
        diagonal = new int[n];
        for (int k = 0, p = 0; k < n; k++) {
            for (int c = filled[k].nextSetBit(0); c >= 0; c = filled[k].nextSetBit(c + 1)) {
                if (c == k) diagonal[k] = p;
                unknown[p] = order[c];
                column[p++] = c;
            }
        }
        lu = new double[start[n]];

        home = new int[places];
        boolean[] given = new boolean[start[n]];
        for (int i = 0; i < n; i++) {
            for (int p = pattern.start()[i]; p < pattern.start()[i + 1]; p++) {
                home[p] = find(rank[i], rank[pattern.column()[p]]);
                given[home[p]] = true;
            }
        }
        fill = missing(given);
        diagonalHome = new int[n];
        for (int k = 0; k < n; k++) diagonalHome[order[k]] = diagonal[k];
        scaleEnd = new int[n];
        updateEnd = new int[n];
        plan();
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
        BitSet left = new BitSet(n);
        left.set(0, n);
        for (int k = 0; k < n; k++) {
            int best = -1;
            long least = Long.MAX_VALUE;
            for (int i = left.nextSetBit(0); i >= 0; i = left.nextSetBit(i + 1)) {
                long product = (row[i].cardinality() - 1L) * (col[i].cardinality() - 1L);
                if (product < least) {
                    least = product;
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

    /** Walks the elimination once, noting which entries each pivot scales and where each product lands. */
    private void plan() {
        int[] below = new int[lu.length];
        int[] products = new int[16];
        int count = 0;
        int scaled = 0;
        for (int k = 0; k < n; k++) {
            for (int i = k + 1; i < n; i++) {
                int p = find(i, k);
                if (p < 0) continue;
                below[scaled++] = p;
                for (int u = diagonal[k] + 1; u < start[k + 1]; u++) {
                    if (count + 3 > products.length) products = Arrays.copyOf(products, 2 * products.length);
                    products[count] = find(i, column[u]);
                    products[count + 1] = p;
                    products[count + 2] = u;
                    count += 3;
                }
            }
            scaleEnd[k] = scaled;
            updateEnd[k] = count / 3;
        }
        lower = Arrays.copyOf(below, scaled);
        target = new int[count / 3];
        left = new int[count / 3];
        right = new int[count / 3];
        for (int q = 0; q < target.length; q++) {
            target[q] = products[3 * q];
            left[q] = products[3 * q + 1];
            right[q] = products[3 * q + 2];
        }
    }

    private int find(int row, int col) {
        return Arrays.binarySearch(column, start[row], start[row + 1], col);
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
        for (int i = 0; i < n; i++) lu[diagonalHome[i]] += shift[i];
        return eliminate();
    }

    /** Right-looking: all updates by pivot k are independent of each other, so that the processor overlaps them. */
    private int eliminate() {
        final double[] lu = this.lu;
        final int[] lower = this.lower;
        final int[] target = this.target;
        final int[] left = this.left;
        final int[] right = this.right;
        int p = 0;
        int q = 0;
        for (int k = 0; k < n; k++) {
            int pivot = diagonal[k];
            double inverse = 1 / lu[pivot];
            if (!(Math.abs(inverse) <= Double.MAX_VALUE) || inverse == 0) return order[k];
            lu[pivot] = inverse;
            for (int end = scaleEnd[k]; p < end; p++) lu[lower[p]] *= inverse;
            for (int end = updateEnd[k]; q < end; q++) lu[target[q]] -= lu[left[q]] * lu[right[q]];
        }
        return FACTORED;
    }

    /** Overwrites b with the solution of A x = b for the A last factored. */
    public void solve(double[] b) {
        final double[] lu = this.lu;
        final int[] start = this.start;
        final int[] diagonal = this.diagonal;
        final int[] column = this.unknown;
        final int[] order = this.order;
        for (int k = 0; k < n; k++) {
            int end = diagonal[k];
            int p = start[k];
            if (p == end) continue;
            int i = order[k];
            double sum = b[i];
            for (; p < end; p++) sum -= lu[p] * b[column[p]];
            b[i] = sum;
        }
        for (int k = n - 1; k >= 0; k--) {
            int i = order[k];
            int pivot = diagonal[k];
            int end = start[k + 1];
            double sum = b[i];
            for (int p = pivot + 1; p < end; p++) sum -= lu[p] * b[column[p]];
            b[i] = sum * lu[pivot];
        }
    }
}
