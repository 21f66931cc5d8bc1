package stokewell.file;

import java.util.List;

/** What a file holds of one sensor: readings in order of time, no time twice, and what had to be said about them. */
public final class ReadingsSeries {

    private final String name;
    private final SensorUnit unit;
    private final long[] times;
    private final double[] values;
    private final Tale tale;

    /**
     * What was found on the way.
     *
     * @param rows       rows that have this sensor
     * @param missing    of them, those with no number
     * @param twice      readings that stand there more than once, the same each time; one is kept
     * @param differing  readings whose time stands there more than once with another value; the first is kept
     * @param differRow  the first such row
     * @param impossible numbers that cannot be a reading of this kind, left out
     * @param wrongRow   the first such row
     * @param wrong      what stands there, as written
     * @param unset      rows with a time before 2000 or in the future, left out
     * @param unsetRow   the first such row
     * @param jumps      where the log goes back in time
     */
    public record Tale(
            int rows,
            int missing,
            int twice,
            int differing,
            int differRow,
            int impossible,
            int wrongRow,
            double wrong,
            int unset,
            int unsetRow,
            List<Jump> jumps) {}

    /**
     * A row that is earlier than the one before it.
     *
     * @param row  of the file
     * @param from s since 1970 of the row before
     * @param to   s since 1970 of the row
     */
    public record Jump(int row, long from, long to) {}

    ReadingsSeries(String name, SensorUnit unit, long[] times, double[] values, Tale tale) {
        this.name = name;
        this.unit = unit;
        this.times = times;
        this.values = values;
        this.tale = tale;
    }

    public String name() {
        return name;
    }

    /** In which it was written; the values are SI. */
    public SensorUnit unit() {
        return unit;
    }

    public Tale tale() {
        return tale;
    }

    public int size() {
        return times.length;
    }

    /** s since 1970. Not a copy: do not write to it. */
    public long[] times() {
        return times;
    }

    /** SI. Not a copy: do not write to it. */
    public double[] values() {
        return values;
    }
}
