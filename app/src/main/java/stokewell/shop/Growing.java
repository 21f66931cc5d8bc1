package stokewell.shop;

import java.util.Arrays;

/** Readings while they are being gathered. */
final class Growing {

    private long[] times = new long[512];
    private double[] values = new double[512];
    private int size;

    void add(long time, double value) {
        if (size == times.length) {
            times = Arrays.copyOf(times, 2 * size);
            values = Arrays.copyOf(values, 2 * size);
        }
        times[size] = time;
        values[size++] = value;
    }

    /** Those of a span. */
    void add(Readings more, long from, long until) {
        for (int i = 0; i < more.size(); i++) {
            if (more.time(i) >= from && more.time(i) < until) add(more.time(i), more.value(i));
        }
    }

    int size() {
        return size;
    }

    /** Longer than {@link #size}. */
    long[] times() {
        return times;
    }

    double[] values() {
        return values;
    }

    Readings readings() {
        return new Readings(Arrays.copyOf(times, size), Arrays.copyOf(values, size));
    }
}
