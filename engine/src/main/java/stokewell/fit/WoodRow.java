package stokewell.fit;

/**
 * A day, or some days put together, as a regression takes them.
 *
 * @param place   count of its kind from the first: neighbours differ by one
 * @param driving what drives the wood on each of its days, K
 * @param perDay  what was burnt, a day: any unit
 * @param sun     mean of its days, W/m2; NaN where it was not measured
 */
public record WoodRow(int place, double[] driving, double perDay, double sun) {

    /** Without the sun. */
    public WoodRow(int place, double[] driving, double perDay) {
        this(place, driving, perDay, Double.NaN);
    }

    /** How many days it holds. */
    public int days() {
        return driving.length;
    }

    /** Mean of what drives it, K. */
    public double mean() {
        double sum = 0;
        for (double d : driving) sum += d;
        return sum / driving.length;
    }

    /** Mean of what drives it beyond a bend, K; all of it where there is none. */
    double beyond(double bend) {
        if (Double.isInfinite(bend)) return mean();
        double sum = 0;
        for (double d : driving) sum += Math.max(0, d - bend);
        return sum / driving.length;
    }

    /** Share of its days that lie beyond a bend. */
    double share(double bend) {
        int n = 0;
        for (double d : driving) if (d > bend) n++;
        return n / (double) driving.length;
    }
}
