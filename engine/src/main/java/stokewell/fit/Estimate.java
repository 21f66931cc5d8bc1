package stokewell.fit;

import java.util.List;
import org.hipparchus.linear.RealMatrix;

/**
 * What least squares found.
 *
 * @param unknowns     what was estimated
 * @param value        of each
 * @param covariance   of the estimates, what was known before taken in
 * @param disturbances of each channel
 * @param predicted    what the model reads with these values
 * @param skipped      rows taken for spikes and left out
 * @param jacobian     slopes of the rows, not whitened, row by row
 * @param whitened     the same, whitened and weighted
 * @param freedom      degrees of freedom of the intervals
 * @param rounds       how often the disturbances were estimated anew
 * @param runs         how often the model was asked
 * @param settled      whether the last round no longer changed anything that matters
 */
public record Estimate(
        List<Unknown> unknowns,
        double[] value,
        RealMatrix covariance,
        List<Disturbance> disturbances,
        double[] predicted,
        boolean[] skipped,
        double[][] jacobian,
        double[][] whitened,
        double freedom,
        int rounds,
        int runs,
        boolean settled) {

    /** Standard error of unknown j. */
    public double error(int j) {
        return Math.sqrt(Math.max(0, covariance.getEntry(j, j)));
    }

    /** Half the width of the interval that holds unknown j with a probability. */
    public double half(int j, double probability) {
        return quantile(probability) * error(j);
    }

    /** Standard errors to either side that hold a probability. */
    public double quantile(double probability) {
        return WoodLine.quantile(Math.max(3, freedom), probability);
    }

    /** How much of what was not known before the readings have told: 0 nothing, 1 all. */
    public double told(int j) {
        double before = unknowns.get(j).spread();
        return Math.max(0, 1 - covariance.getEntry(j, j) / (before * before));
    }

    /** How far values lie from what was known before, as a squared misfit. */
    double known(double[] p) {
        double sum = 0;
        for (int j = 0; j < p.length; j++) {
            Unknown u = unknowns.get(j);
            sum += Math.pow((p[j] - u.before()) / u.spread(), 2);
        }
        return sum;
    }

    /** Correlation of two estimates. */
    public double correlation(int i, int j) {
        return covariance.getEntry(i, j) / (error(i) * error(j));
    }

    /** Place of an unknown by its name; -1 where it was not estimated. */
    public int place(String name) {
        for (int j = 0; j < unknowns.size(); j++) if (unknowns.get(j).name().equals(name)) return j;
        return -1;
    }

    /** The same with every error so many times as large, but never more than was not known before the readings. */
    public Estimate widened(double times) {
        int n = value.length;
        RealMatrix wide = covariance.copy();
        double[] by = new double[n];
        for (int j = 0; j < n; j++) {
            by[j] = Math.max(1, Math.min(times, unknowns.get(j).spread() / error(j)));
        }
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) wide.setEntry(i, j, by[i] * by[j] * covariance.getEntry(i, j));
        }
        return new Estimate(
                unknowns,
                value,
                wide,
                disturbances,
                predicted,
                skipped,
                jacobian,
                whitened,
                freedom,
                rounds,
                runs,
                settled);
    }
}
