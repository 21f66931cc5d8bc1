package stokewell.file;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import stokewell.file.ReadingsGroup.Column;
import stokewell.file.ReadingsSeries.Jump;
import stokewell.file.ReadingsSeries.Tale;

/** Puts a group's rows in order of time, each time once, and tells what was in the way. */
final class ReadingsOrder {

    /** 2000-01-01 UTC: a log that is older was written before its clock was set. */
    private static final long FIRST = 946_684_800L;

    private static final int JUMPS = 50;

    private final String file;
    private final ReadingsGroup group;
    private final long last;
    private long[] moments;
    private int[] order = {};
    private int unset;
    private int unsetRow;
    private int kept;
    private final List<Jump> jumps = new ArrayList<>();

    private ReadingsOrder(String file, ReadingsGroup group, ReadingsClock clock, ReadingsAsk ask, List<String> told) {
        this.file = file;
        this.group = group;
        last = ask.now().getEpochSecond() + 86400;
        if (descending()) {
            group.reverse();
            told.add("the newest row stands first: read from its end");
        }
        moments = clock.moments(group.local, group.offset, group.row, group.size);
    }

    /** One series for each column that has a reading. */
    static List<ReadingsSeries> series(
            String file, ReadingsGroup group, ReadingsClock clock, ReadingsAsk ask, List<String> told) {
        ReadingsOrder order = new ReadingsOrder(file, group, clock, ask, told);
        order.dropUnset();
        order.findJumps();
        order.sort();
        List<ReadingsSeries> all = new ArrayList<>();
        for (Column column : group.columns) {
            if (column != null && (column.numbers > 0 || column.impossible > 0)) all.add(order.series(column));
        }
        return all;
    }

    private boolean descending() {
        int up = 0;
        int down = 0;
        for (int i = 1; i < group.size; i++) {
            if (group.local[i] > group.local[i - 1]) up++;
            if (group.local[i] < group.local[i - 1]) down++;
        }
        return down > 10 * up && down > 0;
    }

    private void dropUnset() {
        order = new int[group.size];
        for (int i = 0; i < group.size; i++) {
            if (moments[i] >= FIRST && moments[i] <= last) {
                order[kept++] = i;
            } else if (unset++ == 0) {
                unsetRow = group.row[i];
            }
        }
        if (kept == 0 && unset > 0) {
            throw new ReadingsFault(
                    file,
                    unsetRow,
                    "all its times are before the year 2000 or in the future, such as "
                            + ReadingsClock.wall(group.local[0]),
                    "The logger's clock was not set; or the dates are in another order: --dates");
        }
    }

    private void findJumps() {
        for (int k = 1; k < kept; k++) {
            long before = moments[order[k - 1]];
            long here = moments[order[k]];
            if (here < before && jumps.size() < JUMPS) jumps.add(new Jump(group.row[order[k]], before, here));
        }
    }

    /** By time, and rows of one time as they stand in the file. */
    private void sort() {
        if (jumps.isEmpty()) return;
        long least = Long.MAX_VALUE;
        for (int k = 0; k < kept; k++) least = Math.min(least, moments[order[k]]);
        // time and place in one number: from 2000 to 2200 is under 2^33 s, rows are under 2^31 and here under 2^30
        long[] keys = new long[kept];
        for (int k = 0; k < kept; k++) keys[k] = moments[order[k]] - least << 30 | order[k];
        Arrays.sort(keys);
        for (int k = 0; k < kept; k++) order[k] = (int) (keys[k] & (1 << 30) - 1);
    }

    private ReadingsSeries series(Column column) {
        long[] times = new long[column.numbers];
        double[] values = new double[column.numbers];
        int n = 0;
        int twice = 0;
        int differing = 0;
        int differRow = 0;
        for (int k = 0; k < kept; k++) {
            int i = order[k];
            double value = column.values[i];
            if (Double.isNaN(value)) continue;
            if (n > 0 && times[n - 1] == moments[i]) {
                if (values[n - 1] == value) twice++;
                else if (differing++ == 0) differRow = group.row[i];
                continue;
            }
            times[n] = moments[i];
            values[n++] = value;
        }
        if (column.impossible > column.numbers) throw wrongUnit(column);
        boolean all = n == times.length;
        return new ReadingsSeries(
                column.name,
                column.unit,
                all ? times : Arrays.copyOf(times, n),
                all ? values : Arrays.copyOf(values, n),
                new Tale(
                        group.size,
                        column.missing,
                        twice,
                        differing,
                        differRow,
                        column.impossible,
                        column.wrongRow,
                        column.wrong,
                        unset,
                        unsetRow,
                        List.copyOf(jumps)));
    }

    private ReadingsFault wrongUnit(Column column) {
        return new ReadingsFault(
                file,
                column.wrongRow,
                "most numbers of \"" + column.name + "\" cannot be a "
                        + column.unit.kind().word() + " in " + column.unit.symbol() + ", such as " + column.wrong,
                "Say the right unit: --map \"" + column.name + "=NAME:UNIT\"");
    }
}
