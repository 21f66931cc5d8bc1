package stokewell.fit;

import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.DoublePredicate;
import java.util.stream.IntStream;

/**
 * Asks a model and keeps what it said: answers, slopes by finite differences, and how far the work has come. All runs of one
 * set of slopes go side by side on the processors there are.
 *
 * <p>Where a run is dear, slopes that were tried near by are kept and mended by every answer that comes in (Broyden, Math.
 * Comp. 19 (1965) 577) instead of being tried anew.
 */
final class Asked {

    /** Slopes are kept within so much of what was not known before, of any unknown. */
    private static final double NEAR = 1;
    /** Answers nearer than this to each other tell of the roughness of the model, not of its slopes. */
    private static final double TOO_NEAR = 0.05;

    private final Response response;
    private final List<Unknown> unknowns;
    private final DoublePredicate goOn;
    private final AtomicInteger runs = new AtomicInteger();
    private final double expected;
    private double[] readAt;
    private double[] lastRead;
    private double[] triedAt;
    private double[] slopesAt;
    private double[] slopesRead;
    private double[][] slopes;
    private boolean[] known;
    private boolean mayTry = true;

    /** @param goOn told the share done, 0 to 1; returns false to stop */
    Asked(Response response, DoublePredicate goOn) {
        this.response = response;
        this.goOn = goOn;
        unknowns = response.unknowns();
        expected = 20 + 4.0 * unknowns.size();
    }

    int runs() {
        return runs.get();
    }

    /** What the model reads; null where it has no answer. The last answer is kept. */
    double[] read(double[] p) {
        if (Arrays.equals(p, readAt)) return lastRead;
        double[] answer = ask(p);
        readAt = p.clone();
        lastRead = answer;
        return answer;
    }

    private double[] ask(double[] p) {
        runs.incrementAndGet();
        tell();
        return response.at(p);
    }

    /** Tells the share done: it never falls, though many threads tell it. */
    private synchronized void tell() {
        if (!goOn.test(Math.min(0.99, runs.get() / expected))) throw new CancellationException("fit stopped");
    }

    /** A new round begins: slopes may be tried once more, if need be. */
    void round() {
        mayTry = true;
    }

    /** Slopes of every answer by every unknown, unknown by unknown; not to be changed. */
    double[][] slopes(double[] p) {
        if (Arrays.equals(p, slopesAt)) return slopes;
        double[] f = read(p);
        boolean enough = response.isDear() && slopes != null && f != null && (!mayTry || far(p, triedAt) < NEAR);
        if (enough) {
            mend(p, f);
        } else {
            mayTry = false;
            slopes = tried(p, f, false);
            triedAt = p.clone();
            slopesAt = p.clone();
            slopesRead = f;
        }
        return slopes;
    }

    /** Slopes by steps to both sides; where a run is dear and slopes are at hand near by, only the other side is tried. */
    double[][] slopesBothSides(double[] p) {
        if (!response.isDear() || slopes == null || far(p, triedAt) > NEAR) return tried(p, null, true);
        double[][] up = slopes(p);
        double[][] down = new double[p.length][];
        double[] f = read(p);
        IntStream.range(0, p.length).parallel().forEach(j -> down[j] = known[j] ? up[j] : below(p, f, j));
        for (int j = 0; j < p.length; j++) {
            if (known[j] || down[j].length == 0) continue;
            for (int i = 0; i < down[j].length; i++) down[j][i] = 0.5 * (down[j][i] + up[j][i]);
        }
        return down;
    }

    private double[] below(double[] p, double[] f, int j) {
        Unknown u = unknowns.get(j);
        double[] down = p.clone();
        down[j] = u.held(p[j] - u.step());
        double[] there = ask(down);
        if (there == null || f == null || down[j] == p[j]) return slopes[j].clone();
        double[] column = new double[there.length];
        for (int i = 0; i < column.length; i++) column[i] = (f[i] - there[i]) / (p[j] - down[j]);
        return column;
    }

    private double far(double[] p, double[] q) {
        double most = 0;
        for (int j = 0; j < p.length; j++) {
            most = Math.max(most, Math.abs(p[j] - q[j]) / unknowns.get(j).spread());
        }
        return most;
    }

    /** Steps are a good part of what is not known: switches make the model rough, and a small step would follow that. */
    private double[][] tried(double[] p, double[] f, boolean both) {
        double[][] columns = new double[p.length][];
        known = new boolean[p.length];
        IntStream.range(0, p.length).parallel().forEach(j -> {
            columns[j] = response.slope(j, p);
            known[j] = columns[j] != null;
            if (columns[j] == null) columns[j] = slope(p, f, j, both);
        });
        int rows = Arrays.stream(columns).mapToInt(c -> c.length).max().orElse(0);
        for (int j = 0; j < p.length; j++) columns[j] = Arrays.copyOf(columns[j], rows);
        return columns;
    }

    private double[] slope(double[] p, double[] f, int j, boolean both) {
        Unknown u = unknowns.get(j);
        double[] up = p.clone();
        up[j] = p[j] + u.step() > u.high() ? p[j] - u.step() : p[j] + u.step();
        double[] there = ask(up);
        double[] down = p.clone();
        if (both) down[j] = u.held(2 * p[j] - up[j]);
        double[] here = both ? ask(down) : f;
        if (there == null || here == null) return new double[0];
        double[] column = new double[there.length];
        for (int i = 0; i < column.length; i++) column[i] = (there[i] - here[i]) / (up[j] - down[j]);
        return column;
    }

    /** The slopes that are nearest to the old ones and lead from the old answer to the new one. */
    private void mend(double[] p, double[] f) {
        double square = 0;
        double[] along = new double[p.length];
        for (int j = 0; j < p.length; j++) {
            if (known[j]) continue;
            along[j] = (p[j] - slopesAt[j]) / unknowns.get(j).spread();
            square += along[j] * along[j];
        }
        if (slopesRead != null && square > TOO_NEAR * TOO_NEAR) {
            double[] missed = new double[f.length];
            for (int i = 0; i < f.length; i++) {
                missed[i] = f[i] - slopesRead[i];
                for (int j = 0; j < p.length; j++) missed[i] -= slopes[j][i] * (p[j] - slopesAt[j]);
            }
            double[][] mended = slopes.clone();
            for (int j = 0; j < p.length; j++) {
                if (along[j] == 0) continue;
                mended[j] = slopes[j].clone();
                double by = along[j] / square / unknowns.get(j).spread();
                for (int i = 0; i < f.length; i++) mended[j][i] += by * missed[i];
            }
            slopes = mended;
        }
        slopesAt = p.clone();
        slopesRead = f;
    }
}
