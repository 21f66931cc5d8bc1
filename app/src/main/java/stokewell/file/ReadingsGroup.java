package stokewell.file;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Rows that run through time together: all of a table with a column a sensor, or those of one sensor. */
final class ReadingsGroup {

    /** One column of a group. */
    static final class Column {
        final String name;
        final ReadingsHeading heading;
        /** Null until known. */
        SensorUnit unit;

        /** Whether it is called as a temperature is. */
        final boolean warm;

        /** Whether words in it do not make the file a broken one, as long as no number was seen. */
        final boolean lenient;

        double[] values = new double[256];
        int numbers;
        int missing;
        int impossible;
        int wrongRow;
        double wrong;
        int textRow;
        String text = "";

        Column(String name, ReadingsHeading heading, SensorUnit unit, boolean warm, boolean lenient) {
            this.name = name;
            this.heading = heading;
            this.unit = unit;
            this.warm = warm;
            this.lenient = lenient;
        }
    }

    final List<Column> columns = new ArrayList<>();
    long[] local = new long[256];
    int[] offset = new int[256];
    int[] row = new int[256];
    int size;

    /** Begins a row. */
    void row(long wall, int ahead, int line) {
        if (size == local.length) {
            int more = (int) Math.min(Integer.MAX_VALUE - 16, 2L * size);
            local = Arrays.copyOf(local, more);
            offset = Arrays.copyOf(offset, more);
            row = Arrays.copyOf(row, more);
        }
        local[size] = wall;
        offset[size] = ahead;
        row[size++] = line;
    }

    /** Puts a value into the row just begun; NaN for none. */
    void put(Column column, double value) {
        if (column.values.length < size) column.values = Arrays.copyOf(column.values, local.length);
        column.values[size - 1] = value;
    }

    /** Takes the last row back, if it is that one. */
    void dropRow(int line) {
        if (size > 0 && row[size - 1] == line) size--;
    }

    /** Turns the order of the rows round. */
    void reverse() {
        for (int i = 0, k = size - 1; i < k; i++, k--) {
            long t = local[i];
            local[i] = local[k];
            local[k] = t;
            int o = offset[i];
            offset[i] = offset[k];
            offset[k] = o;
            int r = row[i];
            row[i] = row[k];
            row[k] = r;
            for (Column c : columns) {
                if (c == null) continue;
                double v = c.values[i];
                c.values[i] = c.values[k];
                c.values[k] = v;
            }
        }
    }
}
