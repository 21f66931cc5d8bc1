package stokewell.bench;

import java.util.Arrays;
import stokewell.balance.Wiring;
import stokewell.loop.Circuit;
import stokewell.network.Network;
import stokewell.network.Plant;
import stokewell.solve.Pattern;

/**
 * The network as an ordinary differential equation, for CVODE: the algebraic unknowns z (the firebox gas, the flow of
 * each circuit) are solved for inside every evaluation, each alone since none hangs on another, and the Jacobian is that
 * of the reduced system, f_y − f_z g_z⁻¹ g_y, along a pattern that is laid out once.
 */
final class Reduced extends Sundials.Problem {

    private static final int TURNS = 60;

    private final Plant plant;
    private final Network network;
    private final int n;
    private final int[] full;
    private final double[] all;
    private final double[] rates;
    private final double[] sums;
    private final double[] sumSlopes;
    private final double[] slopes;
    private final double[] dfdt;
    private final double[] dgdt;
    private final double[] flows;
    private final int gas;
    private double gasSlope = -1;

    private final int[] directFrom;
    private final int[] directTo;
    /** For each product: the places of df_i/dz, dg/dz and dg/dy_j, and where it goes. */
    private final int[] chain;

    long gasTurns;

    Reduced(Plant plant) {
        this.plant = plant;
        network = plant.network();
        n = network.size();
        Pattern pattern = network.pattern();
        gas = plant.gas() - Wiring.OUTSIDE;
        int[] reduced = new int[n];
        int count = 0;
        for (int i = 0; i < n; i++) reduced[i] = network.algebraic(i) ? -1 : count++;
        full = new int[count];
        for (int i = 0; i < n; i++) if (reduced[i] >= 0) full[reduced[i]] = i;
        check(pattern, n - count);

        boolean[][] filled = new boolean[count][count];
        int products = 0;
        for (int i = 0; i < n; i++) {
            if (reduced[i] < 0) continue;
            filled[reduced[i]][reduced[i]] = true;
            for (int p = pattern.start()[i]; p < pattern.start()[i + 1]; p++) {
                int j = pattern.column()[p];
                if (reduced[j] >= 0) {
                    filled[reduced[i]][reduced[j]] = true;
                    continue;
                }
                for (int q = pattern.start()[j]; q < pattern.start()[j + 1]; q++) {
                    int c = pattern.column()[q];
                    if (c == j) continue;
                    filled[reduced[i]][reduced[c]] = true;
                    products++;
                }
            }
        }
        int[][] place = new int[count][count];
        columnStart = new int[count + 1];
        int at = 0;
        for (int j = 0; j < count; j++) {
            for (int i = 0; i < count; i++) if (filled[i][j]) place[i][j] = at++;
            columnStart[j + 1] = at;
        }
        row = new int[at];
        diagonal = new int[count];
        for (int j = 0; j < count; j++) {
            for (int i = 0; i < count; i++) if (filled[i][j]) row[place[i][j]] = i;
            diagonal[j] = place[j][j];
        }
        int[] from = new int[pattern.size()];
        int[] to = new int[pattern.size()];
        chain = new int[4 * products];
        int direct = 0;
        int link = 0;
        for (int i = 0; i < n; i++) {
            if (reduced[i] < 0) continue;
            for (int p = pattern.start()[i]; p < pattern.start()[i + 1]; p++) {
                int j = pattern.column()[p];
                if (reduced[j] >= 0) {
                    from[direct] = p;
                    to[direct++] = place[reduced[i]][reduced[j]];
                    continue;
                }
                for (int q = pattern.start()[j]; q < pattern.start()[j + 1]; q++) {
                    int c = pattern.column()[q];
                    if (c == j) continue;
                    chain[link++] = p;
                    chain[link++] = pattern.place(j, j);
                    chain[link++] = q;
                    chain[link++] = place[reduced[i]][reduced[c]];
                }
            }
        }
        directFrom = Arrays.copyOf(from, direct);
        directTo = Arrays.copyOf(to, direct);

        y = new double[count];
        f = new double[count];
        values = new double[at];
        g = new double[network.switches()];
        differential = new boolean[count];
        Arrays.fill(differential, true);
        scale = new double[count];
        for (int i = 0; i < count; i++) scale[i] = network.scale(full[i]);
        all = network.start();
        rates = new double[n];
        sums = new double[network.sums()];
        sumSlopes = new double[network.sumPattern().size()];
        slopes = new double[pattern.size()];
        dfdt = new double[n];
        dgdt = new double[network.sums()];
        flows = new double[Wiring.OUTSIDE + n];
    }

    private void check(Pattern pattern, int algebraic) {
        long mixed = plant.circuits().stream().filter(c -> c.mixing() != null).count();
        if (algebraic != plant.circuits().size() + mixed + 1) {
            throw new IllegalStateException("there are algebraic unknowns other than gas and flows");
        }
        for (int i = 0; i < n; i++) {
            if (!network.algebraic(i)) continue;
            for (int p = pattern.start()[i]; p < pattern.start()[i + 1]; p++) {
                int j = pattern.column()[p];
                if (j != i && network.algebraic(j)) {
                    throw new IllegalStateException("algebraic unknown " + i + " hangs on " + j);
                }
            }
        }
    }

    /** Sets the differential unknowns and finds the algebraic ones; false where they are not found. */
    private boolean complete(double t) {
        for (int i = 0; i < full.length; i++) all[full[i]] = y[i];
        double[] x = network.columns(t, all);
        for (Circuit circuit : plant.circuits()) {
            all[circuit.flowState() - Wiring.OUTSIDE] = circuit.standingFlow(x);
            if (circuit.mixing() == null) continue;
            all[circuit.mixing().share() - Wiring.OUTSIDE] = circuit.mixing().standing(x);
        }
        return findGas(x);
    }

    /** Secant steps from the last gas temperature, with the slope of the last Jacobian to begin with. */
    private boolean findGas(double[] x) {
        int column = plant.gas();
        double z = all[gas];
        double r = residual(x, z);
        for (int turn = 0; turn < TURNS; turn++) {
            double step = -r / gasSlope;
            if (!(Math.abs(step) < 1e4)) return false;
            double next = z + step;
            x[column] = next;
            if (Math.abs(step) < 1e-6) {
                all[gas] = next;
                return true;
            }
            double after = residual(x, next);
            double slope = (after - r) / step;
            if (slope < 0) gasSlope = slope;
            z = next;
            r = after;
        }
        return false;
    }

    private double residual(double[] x, double z) {
        gasTurns++;
        int column = plant.gas();
        x[column] = z;
        flows[column] = 0;
        plant.fire().flows(x, flows);
        return flows[column];
    }

    @Override
    boolean rates(double t) {
        rateCalls++;
        if (!complete(t)) return false;
        network.rates(t, all, rates, sums);
        for (int i = 0; i < full.length; i++) f[i] = rates[full[i]];
        return true;
    }

    @Override
    boolean jacobian(double t) {
        jacobianCalls++;
        if (!complete(t)) return false;
        network.linearize(t, all, slopes, sumSlopes, dfdt, dgdt);
        Arrays.fill(values, 0);
        for (int k = 0; k < directFrom.length; k++) values[directTo[k]] = slopes[directFrom[k]];
        for (int k = 0; k < chain.length; k += 4) {
            values[chain[k + 3]] -= slopes[chain[k]] / slopes[chain[k + 1]] * slopes[chain[k + 2]];
        }
        return true;
    }

    @Override
    void switching(double t) {
        switchCalls++;
        for (int i = 0; i < full.length; i++) all[full[i]] = y[i];
        network.switching(t, all, g);
    }

    @Override
    void take(double t, double[] from) {
        System.arraycopy(from, 0, all, 0, n);
        for (int i = 0; i < full.length; i++) y[i] = all[full[i]];
    }

    @Override
    void give(double t, double[] out) {
        if (!complete(t)) throw new IllegalStateException("no gas temperature at " + t + " s");
        System.arraycopy(all, 0, out, 0, n);
    }
}
