package stokewell.fit;

/**
 * What a trace of the model is asked for where readings of a stretch of time are put together: its mean at the very instants at
 * which was read. A mean about the same middle is not enough: off by half a reading's distance it makes every fire look slow.
 *
 * @param first  step of the trace with the first weight
 * @param weight of each step from there on, sum 1
 */
record Stretch(int first, double[] weight) {

    /**
     * @param times in order, s
     * @param from  at which the trace begins, s
     * @param step  of the trace, s
     */
    static Stretch of(double[] times, double from, double step) {
        int first = (int) Math.max(0, Math.floor((times[0] - from) / step));
        int last = (int) Math.max(first, Math.floor((times[times.length - 1] - from) / step)) + 1;
        double[] weight = new double[last - first + 1];
        for (double t : times) {
            double along = Math.max(0, (t - from) / step - first);
            int k = (int) Math.floor(along);
            weight[k] += (1 - (along - k)) / times.length;
            weight[k + 1] += (along - k) / times.length;
        }
        return new Stretch(first, weight);
    }

    /** The mean of a trace; its end is held. */
    double of(double[] trace) {
        double sum = 0;
        for (int k = 0; k < weight.length; k++) sum += weight[k] * trace[Math.min(trace.length - 1, first + k)];
        return sum;
    }
}
