package stokewell.run;

import java.util.concurrent.CancellationException;
import stokewell.balance.Wiring;
import stokewell.network.Network;

/**
 * Finds the state that a rig comes to when the same day repeats: slab, ground and walls remember weeks, so a night that
 * starts cold tells a wrong story.
 *
 * <p>Solves y = P(y), P one simulated day, over the heat nodes: what a day changes is carried on to all days to come as if the
 * rig were linear ({@link Leap}), and what that misses is mended by Anderson acceleration (Walker and Ni, SIAM J. Numer.
 * Anal. 49 (2011) 1715). So five to ten days do what would else take a year. Fuel, latches and
 * sensors are carried from day to day. Where rules make the day jump (a load more or less), the residual does not go to
 * zero; then the best day found is taken and its residual told.
 */
final class Settle {

    /** Change from day to day that counts as settled, K, greatest over the heat nodes. */
    static final double SETTLED = 0.004;

    private static final int DEPTH = 6;
    static final int MOST = 40;
    private static final double COLDEST = 213;
    private static final double HOTTEST = 420;

    /** What was found. @param ahead how days to come follow from one, for the next that settles; null where not looked at */
    record Found(int days, double residual, Ahead ahead) {}

    private Settle() {}

    /** Settles with all the time it takes. */
    static Found run(Simulation sim, double from) {
        return run(sim, from, Hurry.NONE);
    }

    /**
     * Settles a simulation placed at time t, t = start of the repeated day. Leaves it there.
     *
     * @param from  start of the day on the run's clock, s
     * @param hurry how many days it may take, and whether anyone still waits
     * @throws CancellationException where no one waits any more
     */
    static Found run(Simulation sim, double from, Hurry hurry) {
        Network network = sim.plant().network();
        int n = network.size();
        int heat = 0;
        int[] node = new int[n];
        for (int i = 0; i < n; i++) if (network.capacity(i) > 0) node[heat++] = i;
        double[][] dx = new double[DEPTH][heat];
        double[][] df = new double[DEPTH][heat];
        double[] x = new double[heat];
        double[] f = new double[heat];
        double[] lastX = new double[heat];
        double[] lastF = new double[heat];
        double[] best = null;
        double bestResidual = Double.POSITIVE_INFINITY;
        int held = 0;
        int days = 0;
        // known already where a rig like it has settled: then the first day is carried on at once
        Ahead ahead = hurry.near() == null ? null : hurry.near().ahead();
        int first = ahead == null ? 2 : 1;
        double[] change = new double[n];
        while (days < hurry.mostDays()) {
            if (!hurry.goOn().getAsBoolean()) throw new CancellationException("no one waits for this any more");
            double[] before = sim.states().clone();
            Leap leap = days == 1 && first == 2 ? new Leap(network) : null;
            if (leap != null) sim.watch((step, y) -> leap.see(step.end(), y, step.end() - step.start()));
            sim.run(from + DayClock.DAY);
            if (leap != null) {
                sim.watch((step, y) -> {});
                ahead = leap.ahead();
            }
            sim.rewind(from);
            days++;
            double[] after = sim.states().clone();
            double residual = 0;
            for (int k = 0; k < heat; k++) {
                x[k] = before[node[k]];
                f[k] = after[node[k]] - x[k];
                residual = Math.max(residual, Math.abs(f[k]));
            }
            if (residual < bestResidual) {
                bestResidual = residual;
                best = after;
            }
            if (residual < SETTLED) return new Found(days, residual, ahead);
            if (ahead != null) {
                for (int k = 0; k < heat; k++) change[node[k]] = f[k];
                ahead.carry(change);
                for (int k = 0; k < heat; k++) f[k] = change[node[k]];
            }
            if (days > first) {
                int slot = held % DEPTH;
                for (int k = 0; k < heat; k++) {
                    dx[slot][k] = x[k] - lastX[k];
                    df[slot][k] = f[k] - lastF[k];
                }
                held++;
            }
            System.arraycopy(x, 0, lastX, 0, heat);
            System.arraycopy(f, 0, lastF, 0, heat);
            if (days < first) continue;
            double[] gamma = leastSquares(df, f, Math.min(held, DEPTH));
            double[] next = after.clone();
            for (int k = 0; k < heat; k++) {
                double step = f[k];
                for (int j = 0; j < gamma.length; j++) step -= gamma[j] * (dx[j][k] + df[j][k]);
                // no node may leap further than a season could move it
                step = Math.max(-15, Math.min(15, step));
                // a fire may stand in the stove when the day begins: what the day itself leaves is never too hot
                double hottest = Math.max(HOTTEST, after[node[k]]);
                next[node[k]] = Math.max(COLDEST, Math.min(hottest, x[k] + step));
            }
            sim.replace(next);
        }
        // in a hurry nobody sees whether the last step was good: it is taken where it was well aimed from the first day
        // on
        if (first == 2 && best != null) sim.replace(best);
        return new Found(days, bestResidual, ahead);
    }

    /** Normal equations with a little ridge: the columns are few and the answer only a guess. */
    private static double[] leastSquares(double[][] columns, double[] f, int m) {
        double[][] a = new double[m][m + 1];
        double trace = 0;
        for (int i = 0; i < m; i++) {
            for (int j = 0; j < m; j++) a[i][j] = dot(columns[i], columns[j]);
            a[i][m] = dot(columns[i], f);
            trace += a[i][i];
        }
        for (int i = 0; i < m; i++) a[i][i] += 1e-10 * trace + 1e-30;
        for (int i = 0; i < m; i++) {
            int pivot = i;
            for (int r = i + 1; r < m; r++) if (Math.abs(a[r][i]) > Math.abs(a[pivot][i])) pivot = r;
            double[] swap = a[i];
            a[i] = a[pivot];
            a[pivot] = swap;
            for (int r = i + 1; r < m; r++) {
                double factor = a[r][i] / a[i][i];
                for (int c = i; c <= m; c++) a[r][c] -= factor * a[i][c];
            }
        }
        double[] gamma = new double[m];
        for (int i = m - 1; i >= 0; i--) {
            double sum = a[i][m];
            for (int c = i + 1; c < m; c++) sum -= a[i][c] * gamma[c];
            gamma[i] = sum / a[i][i];
        }
        return gamma;
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) sum += a[i] * b[i];
        return sum;
    }

    /** Index of a column among the states. */
    static int state(int column) {
        return column - Wiring.OUTSIDE;
    }
}
