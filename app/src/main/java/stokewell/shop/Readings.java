package stokewell.shop;

import java.util.Arrays;

/** Readings of one sensor, in the order of their times, no time twice. */
public final class Readings {

    private final long[] times;
    private final double[] values;

    /**
     * Takes the arrays as its own.
     *
     * @param times  s since 1970, each later than the one before
     * @param values SI, all finite
     */
    public Readings(long[] times, double[] values) {
        if (times.length != values.length) {
            throw new IllegalArgumentException(times.length + " times, but " + values.length + " values");
        }
        for (int i = 0; i < times.length; i++) {
            if (i > 0 && times[i] <= times[i - 1]) {
                throw new IllegalArgumentException(
                        "reading " + i + " at " + times[i] + " s is not after the one before");
            }
            if (!Double.isFinite(values[i])) throw new IllegalArgumentException("reading " + i + " is " + values[i]);
        }
        this.times = times;
        this.values = values;
    }

    public int size() {
        return times.length;
    }

    /** s since 1970. */
    public long time(int i) {
        return times[i];
    }

    /** SI. */
    public double value(int i) {
        return values[i];
    }

    /** All times, s since 1970: a copy. */
    public long[] times() {
        return times.clone();
    }

    /** All values, SI: a copy. */
    public double[] values() {
        return values.clone();
    }

    /** The array itself, for what stands in this package and only looks. */
    long[] bareTimes() {
        return times;
    }

    double[] bareValues() {
        return values;
    }

    /** Those from one place to before another. */
    public Readings slice(int from, int to) {
        return new Readings(Arrays.copyOfRange(times, from, to), Arrays.copyOfRange(values, from, to));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Readings r && Arrays.equals(times, r.times) && Arrays.equals(values, r.values);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(times) + Arrays.hashCode(values);
    }

    @Override
    public String toString() {
        return times.length + " readings" + (times.length == 0 ? "" : " from " + times[0] + " s");
    }
}
