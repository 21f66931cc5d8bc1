package stokewell.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;

/**
 * The linear problem about a fit: whitened rest, whitened slopes, and what was known before. Asked what one more column would
 * bring, everything else fitted anew.
 */
final class Whitened {

    /** Innovations count as no more, in standard deviations: one bad hour is no change. */
    private static final double MOST = 3.5;

    private final Observed observed;
    private final boolean[] skip;
    private final List<Disturbance> disturbances;
    private final double[] rest;
    private final double[][] slopes;
    private final RealMatrix inverse;
    private final double[] gradient;

    /**
     * @param rest   read less modelled
     * @param slopes of the rows by each unknown
     * @param off    of each unknown from what was known before
     * @param spread of that
     */
    Whitened(
            Observed observed,
            boolean[] skip,
            List<Disturbance> disturbances,
            double[] rest,
            double[][] slopes,
            double[] off,
            double[] spread) {
        this.observed = observed;
        this.skip = skip;
        this.disturbances = disturbances;
        this.rest = white(rest);
        for (int i = 0; i < rest.length; i++) this.rest[i] = Math.max(-MOST, Math.min(MOST, this.rest[i]));
        int n = slopes.length;
        this.slopes = new double[n][];
        for (int j = 0; j < n; j++) this.slopes[j] = white(slopes[j]);
        RealMatrix information = new Array2DRowRealMatrix(n, n);
        gradient = new double[n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) information.setEntry(i, j, dot(this.slopes[i], this.slopes[j]));
            information.addToEntry(i, i, 1 / (spread[i] * spread[i]));
            gradient[i] = dot(this.slopes[i], this.rest) - off[i] / (spread[i] * spread[i]);
        }
        inverse =
                new CholeskyDecomposition(information, 1e-10, 1e-14).getSolver().getInverse();
    }

    /** Disturbances that make a rest likeliest. */
    static List<Disturbance> disturbances(Observed o, boolean[] skip, double[] rest) {
        List<Disturbance> all = new ArrayList<>();
        for (Observed.Channel c : o.channels()) {
            all.add(Disturbance.of(o.time(), skip, rest, c.from(), c.until(), c.least()));
        }
        return all;
    }

    /** Squared misfit of a rest under its disturbances. */
    static double misfit(Observed o, boolean[] skip, List<Disturbance> disturbances, double[] rest) {
        double sum = 0;
        for (int c = 0; c < disturbances.size(); c++) {
            Observed.Channel channel = o.channels().get(c);
            sum += disturbances.get(c).misfit(o.time(), skip, rest, channel.from(), channel.until());
        }
        return sum;
    }

    private double[] white(double[] column) {
        double[] white = Arrays.copyOf(column, observed.rows());
        for (int c = 0; c < disturbances.size(); c++) {
            Observed.Channel channel = observed.channels().get(c);
            disturbances.get(c).whiten(observed.time(), skip, new double[][] {white}, channel.from(), channel.until());
        }
        return white;
    }

    /** Innovations, those that stand far off held in. */
    double[] rest() {
        return rest;
    }

    /** What one more column brings. */
    record Gain(double score, double information) {

        double size() {
            return score / information;
        }

        /** What the squared misfit falls by. */
        double fall() {
            return score * score / information;
        }
    }

    /** @param spread what was known before of the size of the column */
    Gain gain(double[] column, double spread) {
        double[] white = white(column);
        double[] along = new double[slopes.length];
        for (int j = 0; j < along.length; j++) along[j] = dot(slopes[j], white);
        double[] solved = inverse.operate(along);
        double score = dot(white, rest);
        double information = dot(white, white) + 1 / (spread * spread);
        for (int j = 0; j < along.length; j++) {
            score -= solved[j] * gradient[j];
            information -= solved[j] * along[j];
        }
        return new Gain(score, Math.max(1e-12, information));
    }

    /** The step of all unknowns to the least misfit. */
    double[] step() {
        return inverse.operate(new ArrayRealVector(gradient)).toArray();
    }

    /** Standard error of unknown j. */
    double error(int j) {
        return Math.sqrt(inverse.getEntry(j, j));
    }

    static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) sum += a[i] * b[i];
        return sum;
    }
}
