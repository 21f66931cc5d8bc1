package stokewell.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What one sensor said.
 *
 * @param name  of the sensor
 * @param time  s on the clock of the weather, rising
 * @param value K
 */
public record Series(String name, double[] time, double[] value) {

    public Series {
        if (time.length != value.length) {
            throw new IllegalArgumentException(name + ": " + time.length + " times, " + value.length + " values");
        }
        for (int i = 1; i < time.length; i++) {
            if (!(time[i] > time[i - 1])) {
                throw new IllegalArgumentException(name + ": time does not rise after " + time[i - 1] + " s");
            }
        }
    }

    public int size() {
        return time.length;
    }

    /** The readings from one time to another, the second left out. */
    public Series between(double from, double until) {
        int a = place(from);
        int b = place(until);
        return new Series(name, Arrays.copyOfRange(time, a, b), Arrays.copyOfRange(value, a, b));
    }

    private int place(double t) {
        int found = Arrays.binarySearch(time, t);
        return found < 0 ? -found - 1 : found;
    }

    /** The readings of even stretches of time, one after another; stretches without a reading are left out. */
    public List<Series> stretches(double stretch) {
        List<Series> all = new ArrayList<>();
        int first = 0;
        for (int i = 1; i <= time.length; i++) {
            if (i < time.length && Math.floor(time[i] / stretch) == Math.floor(time[first] / stretch)) continue;
            all.add(new Series(name, Arrays.copyOfRange(time, first, i), Arrays.copyOfRange(value, first, i)));
            first = i;
        }
        return all;
    }

    /** Means over even stretches of time, each at the mean time of its readings. */
    public Series averaged(double stretch) {
        List<Series> parts = stretches(stretch);
        double[] t = parts.stream()
                .mapToDouble(s -> Arrays.stream(s.time).average().orElseThrow())
                .toArray();
        return new Series(name, t, parts.stream().mapToDouble(Series::mean).toArray());
    }

    /** The value at a time on the straight line between its neighbours; the ends are held. NaN without a reading. */
    public double at(double t) {
        if (time.length == 0) return Double.NaN;
        int b = place(t);
        if (b == 0) return value[0];
        if (b == time.length) return value[b - 1];
        double share = (t - time[b - 1]) / (time[b] - time[b - 1]);
        return value[b - 1] + share * (value[b] - value[b - 1]);
    }

    public double mean() {
        return Arrays.stream(value).average().orElse(Double.NaN);
    }

    /** Standard deviation. */
    public double spread() {
        double mean = mean();
        double sum = 0;
        for (double v : value) sum += (v - mean) * (v - mean);
        return Math.sqrt(sum / Math.max(1, value.length - 1));
    }

    /** The value that a share of the readings lies below. */
    public double quantile(double share) {
        if (value.length == 0) return Double.NaN;
        double[] sorted = value.clone();
        Arrays.sort(sorted);
        return sorted[(int) Math.min(sorted.length - 1.0, Math.floor(share * sorted.length))];
    }
}
