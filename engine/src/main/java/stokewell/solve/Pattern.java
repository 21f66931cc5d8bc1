package stokewell.solve;

/**
 * Where a sparse matrix may hold numbers: row by row, columns ascending in each row.
 *
 * @param rows    number of rows
 * @param columns number of columns
 * @param start   start[i] .. start[i+1]-1 are the places of row i; length rows + 1
 * @param column  the column of each place
 */
public record Pattern(int rows, int columns, int[] start, int[] column) {

    /** How many places there are. */
    public int size() {
        return column.length;
    }

    /** The place of (row, column), or -1 where the matrix holds a structural zero. */
    public int place(int row, int col) {
        int low = start[row];
        int high = start[row + 1] - 1;
        while (low <= high) {
            int middle = (low + high) >>> 1;
            if (column[middle] == col) return middle;
            if (column[middle] < col) low = middle + 1;
            else high = middle - 1;
        }
        return -1;
    }
}
