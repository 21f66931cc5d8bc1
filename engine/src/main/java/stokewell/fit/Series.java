package stokewell.fit;

import java.util.Arrays;

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

    /** Means over even stretches of time, each at the mean time of its readings; stretches without a reading are left out. */
    public Series averaged(double stretch) {
        double[] t = new double[time.length];
        double[] v = new double[time.length];
        int n = 0;
        for (int i = 0; i < time.length; ) {
            double box = Math.floor(time[i] / stretch);
            double sumT = 0;
            double sumV = 0;
            int first = i;
            while (i < time.length && Math.floor(time[i] / stretch) == box) {
                sumT += time[i];
                sumV += value[i++];
            }
            t[n] = sumT / (i - first);
            v[n++] = sumV / (i - first);
        }
        return new Series(name, Arrays.copyOf(t, n), Arrays.copyOf(v, n));
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
