package stokewell.bench;

import java.lang.management.ManagementFactory;
import java.util.Arrays;

/** Processor time of this thread, native code included: what a shared machine does not spoil. */
final class Clock {

    private Clock() {}

    /** ns. */
    static long thread() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        int n = sorted.length;
        return n % 2 == 1 ? sorted[n / 2] : 0.5 * (sorted[n / 2 - 1] + sorted[n / 2]);
    }
}
