package stokewell.fit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.RealMatrix;

/** Errors of estimates whose channels do not err apart from each other. */
final class Sandwich {

    /** Rows of channels this near belong together, s. */
    private static final double TOGETHER = 7200;

    private final Observed observed;
    private final boolean[] skip;

    Sandwich(Observed observed, boolean[] skip) {
        this.observed = observed;
        this.skip = skip;
    }

    /**
     * The covariance once the channels err together: a heavier load than noted warms room and store alike, and three sensors
     * that err as one tell less than three. The middle of the sandwich takes the correlation of the channels' innovations at
     * the same time as it is found (White, Econometrica 50 (1982) 1); no error may shrink by it.
     */
    RealMatrix together(RealMatrix covariance, double[][] columns, double[] e) {
        int n = columns.length;
        int channels = observed.channels().size();
        List<Map<Long, Integer>> places = new ArrayList<>();
        for (Observed.Channel c : observed.channels()) {
            Map<Long, Integer> place = new HashMap<>();
            for (int i = c.from(); i < c.until(); i++) if (!skip[i]) place.put(stretch(i), i);
            places.add(place);
        }
        RealMatrix between = new Array2DRowRealMatrix(n, n);
        for (int a = 0; a < channels; a++) {
            for (int b = 0; b < a; b++) {
                double ab = 0;
                double aa = 0;
                double bb = 0;
                for (Map.Entry<Long, Integer> at : places.get(a).entrySet()) {
                    Integer other = places.get(b).get(at.getKey());
                    if (other == null) continue;
                    ab += e[at.getValue()] * e[other];
                    aa += e[at.getValue()] * e[at.getValue()];
                    bb += e[other] * e[other];
                }
                double r = aa > 0 && bb > 0 ? ab / Math.sqrt(aa * bb) : 0;
                for (Map.Entry<Long, Integer> at : places.get(a).entrySet()) {
                    Integer other = places.get(b).get(at.getKey());
                    if (other == null) continue;
                    for (int i = 0; i < n; i++) {
                        for (int j = 0; j < n; j++) {
                            double both = columns[i][at.getValue()] * columns[j][other]
                                    + columns[j][at.getValue()] * columns[i][other];
                            between.addToEntry(i, j, r * both);
                        }
                    }
                }
            }
        }
        RealMatrix wide = covariance.add(covariance.multiply(between).multiply(covariance));
        RealMatrix scale = new Array2DRowRealMatrix(n, n);
        for (int j = 0; j < n; j++) {
            double ratio = wide.getEntry(j, j) / covariance.getEntry(j, j);
            scale.setEntry(j, j, Math.sqrt(Math.max(1, ratio)));
        }
        return scale.multiply(covariance).multiply(scale);
    }

    private long stretch(int row) {
        return (long) Math.floor(observed.time()[row] / TOGETHER);
    }
}
